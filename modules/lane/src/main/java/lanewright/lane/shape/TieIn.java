package lanewright.lane.shape;

/**
 * How an end of the lane fits what is already there. What is not known is NaN.
 *
 * @param height height of what is there at the alignment, m above the datum, or NaN
 * @param grade its grade along the lane, rise over run, positive uphill up-station, or NaN
 * @param crossSlope its fall across, one plane, rise over run, positive falling to the right
 *     looking up-station, or NaN
 * @param over length over which the lane's own cross slope goes over into it, straight, m, zero or
 *     more
 */
public record TieIn(double height, double grade, double crossSlope, double over) {
    /** Checks the ranges. */
    public TieIn {
        if (Double.isInfinite(height)
                || Math.abs(grade) > 1
                || Math.abs(crossSlope) > 0.25
                || !(over >= 0 && over <= 1000)) {
            throw new IllegalArgumentException(
                    "tie-in must have a grade within 100 %, a cross slope within 25 % and a length"
                            + " of 0 to 1000 m, was "
                            + height
                            + ", "
                            + grade
                            + ", "
                            + crossSlope
                            + ", "
                            + over);
        }
    }
}
