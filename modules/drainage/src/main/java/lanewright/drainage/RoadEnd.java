package lanewright.drainage;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.pond.GivenPipe;
import org.jspecify.annotations.Nullable;

/**
 * The end of the lane at the public road, and how much of it falls to either end.
 *
 * @param ditch the low line that crosses the lane's beginning, or null if none was found
 * @param searchedFrom first station at which the ground was known, m, zero or less if the survey
 *     reaches back to the road; NaN if the ground is not known here at all
 * @param searchedTo last station at which the ground was known, m
 * @param fallingToRoad length of lane from the road up to the first crest, m; zero if the lane
 *     falls away from the road
 */
public record RoadEnd(
        @Nullable RoadDitch ditch,
        double searchedFrom,
        double searchedTo,
        double fallingToRoad,
        double fallingToEnd) {

    /**
     * A low line across the beginning of the lane.
     *
     * @param station m, negative if it lies before the lane begins
     * @param x local easting, m
     * @param y local northing, m
     * @param depth below the lower of its two banks, m
     * @param bottom height of its lowest place on the lane's line, m
     * @param pipe the pipe of the plan that crosses the lane there, or null
     * @param entrance the pipe that would lead its water under the lane, or null where that cannot
     *     be worked out: the ditch lies before the lane, or the ground beside is not known
     */
    public record RoadDitch(
            double station,
            double x,
            double y,
            double depth,
            double bottom,
            @Nullable GivenPipe pipe,
            @Nullable CulvertLine entrance) {}
}
