package lanewright.lane.line;

/**
 * A point where two grades of the profile meet, or one of its ends.
 *
 * @param station m along the alignment
 * @param height of the tangents' meeting point, m above the datum
 * @param curve length in plan of the parabola centred on it, m, zero for a break or an end
 */
public record VerticalPoint(double station, double height, double curve) {
    /** Checks the ranges. */
    public VerticalPoint {
        if (!Double.isFinite(station)
                || !Double.isFinite(height)
                || !(curve >= 0 && curve <= 1e5)) {
            throw new IllegalArgumentException(
                    "vertical point must be finite with a curve of 0 m or more, was "
                            + station
                            + ", "
                            + height
                            + ", "
                            + curve);
        }
    }
}
