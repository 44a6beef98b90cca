package lanewright.lane.line;

/**
 * A circular arc of the alignment with the elements by which it is set out.
 *
 * <p>T = R tan(Δ/2), L = R Δ, LC = 2 R sin(Δ/2), E = R (sec(Δ/2) − 1), M = R (1 − cos(Δ/2)); the
 * letters are those of every surveying text.
 *
 * @param point index of its intersection point, zero the first point of the alignment
 * @param from station where it leaves the tangent behind, m
 * @param to station where it meets the tangent ahead, m
 * @param radius R, m
 * @param deflection Δ, change of direction, radians, positive to the right
 */
public record Arc(int point, double from, double to, double radius, double deflection) {

    /** T, from either end of the arc to the intersection point, m. */
    public double tangent() {
        return radius * StrictMath.tan(half());
    }

    /** L, along the arc, m. */
    public double length() {
        return radius * Math.abs(deflection);
    }

    /** LC, straight from end to end, m. */
    public double chord() {
        return 2 * radius * StrictMath.sin(half());
    }

    /** E, from the intersection point to the middle of the arc, m. */
    public double external() {
        return radius * (1 / StrictMath.cos(half()) - 1);
    }

    /** M, from the middle of the chord to the middle of the arc, m. */
    public double middleOrdinate() {
        return radius * (1 - StrictMath.cos(half()));
    }

    /**
     * Angle at the start of the arc from the tangent to a point on it, radians, zero or more: half
     * the arc up to there over the radius.
     *
     * @param station m, on the arc
     */
    public double deflectionTo(double station) {
        return (within(station) - from) / (2 * radius);
    }

    /**
     * Straight distance from the start of the arc to a point on it, m.
     *
     * @param station m, on the arc
     */
    public double chordTo(double station) {
        return 2 * radius * StrictMath.sin(deflectionTo(station));
    }

    private double half() {
        return Math.abs(deflection) / 2;
    }

    private double within(double station) {
        if (!(station >= from && station <= to)) {
            throw new IllegalArgumentException(
                    "station " + station + " is not on the arc from " + from + " to " + to);
        }
        return station;
    }
}
