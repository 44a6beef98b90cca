package lanewright.planner.document;

/**
 * How the lane fits what is at its two ends.
 *
 * @param road the public road, at the start
 * @param far the other end
 * @param roadDitch what is known of the road's own ditch
 */
public record EndsPart(End road, End far, RoadDitch roadDitch) {

    /**
     * One end. What is not known is NaN.
     *
     * @param height of what is there at the alignment, m above the datum; NaN to take the ground's
     * @param grade of what is there, along the lane, rise over run, positive uphill up-station
     * @param crossSlope of what is there, rise over run, positive falling to the right looking
     *     up-station
     * @param over length over which the lane's own cross slope goes over into it, m
     */
    public record End(double height, double grade, double crossSlope, double over) {
        /** Checks the ranges. */
        public End {
            if (Math.abs(grade) > 0.4 || Math.abs(crossSlope) > 0.25) {
                throw new IllegalArgumentException(
                        "the grade must be within 40 % and the cross slope within 25 %");
            }
            if (!(over >= 0 && over <= 300)) {
                throw new IllegalArgumentException("the change-over must be 0 to 300 m long");
            }
        }
    }

    /** What is known of the public road's own ditch. */
    public enum RoadDitch {
        /** Look for it in the ground, and ask if none is found. */
        NOT_KNOWN,
        /** There is none; the owner has looked. */
        NONE,
        /** It is there, and a pipe carries its water under the lane. */
        PIPED
    }
}
