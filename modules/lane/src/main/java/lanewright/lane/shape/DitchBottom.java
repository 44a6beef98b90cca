package lanewright.lane.shape;

/**
 * A ditch bottom with a grade of its own, straight from one end of its stretch to the other.
 *
 * @param start height of the bottom where the stretch begins, m above the datum
 * @param end height of the bottom where it ends, m above the datum
 */
public record DitchBottom(double start, double end) {
    /** Checks that both are finite. */
    public DitchBottom {
        if (!Double.isFinite(start) || !Double.isFinite(end)) {
            throw new IllegalArgumentException(
                    "ditch bottom must be finite, was " + start + " to " + end);
        }
    }
}
