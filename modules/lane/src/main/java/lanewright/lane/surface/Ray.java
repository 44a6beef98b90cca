package lanewright.lane.surface;

import lanewright.lane.shape.LaneAt;

/**
 * A line right across the lane with what was found along it.
 *
 * @param station m along the alignment
 * @param x local easting of the alignment, m
 * @param y local northing of the alignment, m
 * @param dx easting per metre of offset to the right
 * @param dy northing per metre of offset to the right
 * @param lane what the lane is there
 * @param left the left side
 * @param right the right side
 */
record Ray(
        double station,
        double x,
        double y,
        double dx,
        double dy,
        LaneAt lane,
        Flank left,
        Flank right) {

    Flank flank(boolean toRight) {
        return toRight ? right : left;
    }

    /** Easting of a place on one side, m. */
    double x(boolean toRight, double out) {
        return x + (toRight ? out : -out) * dx;
    }

    /** Northing of a place on one side, m. */
    double y(boolean toRight, double out) {
        return y + (toRight ? out : -out) * dy;
    }

    /** True if both have the same strips on a side, so that strip leads to strip. */
    boolean leadsTo(Ray next, boolean toRight) {
        Flank here = flank(toRight);
        Flank there = next.flank(toRight);
        return here.kind() == there.kind()
                && here.strips() == there.strips()
                && here.layers() == there.layers()
                && lane.typical().bed() == next.lane.typical().bed();
    }

    /** True if the same shape leads on to both sides of the next ray. */
    boolean leadsTo(Ray next) {
        return lane.typical().equals(next.lane.typical())
                && leadsTo(next, true)
                && leadsTo(next, false);
    }

    /** The same shape at another place. */
    Ray movedTo(Ray other) {
        return new Ray(other.station, other.x, other.y, other.dx, other.dy, lane, left, right);
    }
}
