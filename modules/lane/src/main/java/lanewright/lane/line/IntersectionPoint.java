package lanewright.lane.line;

/**
 * A point where two tangents of the alignment meet, or one of its ends.
 *
 * @param x local easting, m
 * @param y local northing, m
 * @param radius radius of the arc that joins the tangents, m, zero for a sharp angle or an end
 */
public record IntersectionPoint(double x, double y, double radius) {
    /** Checks the ranges. */
    public IntersectionPoint {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !(radius >= 0 && radius <= 1e5)) {
            throw new IllegalArgumentException(
                    "intersection point must be finite with a radius of 0 to 100,000 m, was "
                            + x
                            + ", "
                            + y
                            + ", "
                            + radius);
        }
    }
}
