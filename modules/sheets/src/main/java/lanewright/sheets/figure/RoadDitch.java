package lanewright.sheets.figure;

import lanewright.lane.section.SectionLine;

/**
 * The public road's own ditch where the lane crosses it, as ground.
 *
 * @param station of its lowest place on the lane's line, m, negative before the lane begins
 * @param along the ground along the lane's line about it: stations, where a section has offsets,
 *     and heights, m
 * @param across the ground square to the line through its lowest place: offsets and heights, m;
 *     empty before the lane begins
 */
public record RoadDitch(double station, SectionLine along, SectionLine across) {

    /** Height of its lowest place on the lane's line, m. */
    double bottom() {
        return along.at(station);
    }
}
