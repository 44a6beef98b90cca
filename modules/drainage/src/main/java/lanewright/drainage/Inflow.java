package lanewright.drainage;

import lanewright.drainage.along.Side;

/**
 * Water of the land that meets the lane.
 *
 * @param station where it enters the limits of work, m
 * @param side the side that it comes from
 * @param x local easting, m
 * @param y local northing, m
 * @param drained area of the surveyed land that drains through this place, m²
 * @param isLeast whether some of that land lies at the survey's rim, so that more may drain here
 *     from beyond it
 */
public record Inflow(
        double station, Side side, double x, double y, double drained, boolean isLeast) {}
