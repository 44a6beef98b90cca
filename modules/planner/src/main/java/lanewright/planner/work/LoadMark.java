package lanewright.planner.work;

/**
 * One mark beside the lane where a load of stone stops, where the next one starts, or both. It
 * stands outside all stone, so that it is there for every layer.
 *
 * @param layer role of the layer
 * @param stops number of the load that stops here, zero at the beginning of the layer
 * @param starts number of the load that starts here, zero at the end of the layer
 * @param station m along the alignment
 * @param offset of the mark from the alignment, m, positive right
 * @param x local easting, m
 * @param y local northing, m
 */
public record LoadMark(
        String layer, int stops, int starts, double station, double offset, double x, double y) {}
