package lanewright.lane.shape;

/**
 * What the lane is at one station, before it meets any ground. Falls are outward: rise over run,
 * positive where the surface falls going away from the alignment.
 *
 * @param height finished surface at the alignment, m above the datum
 * @param typical the typical section that holds
 * @param leftFall fall of the travelled way on the left
 * @param rightFall fall of the travelled way on the right
 * @param leftUnder fall of the subgrade under the stone on the left
 * @param rightUnder fall of the subgrade under the stone on the right
 * @param leftBottom height of the left ditch bottom where it has its own grade, m, else NaN
 * @param rightBottom height of the right ditch bottom where it has its own grade, m, else NaN
 */
public record LaneAt(
        double height,
        TypicalSection typical,
        double leftFall,
        double rightFall,
        double leftUnder,
        double rightUnder,
        double leftBottom,
        double rightBottom) {

    /** The same lane at another height, nothing else changed. */
    public LaneAt raised(double newHeight) {
        return new LaneAt(
                newHeight,
                typical,
                leftFall,
                rightFall,
                leftUnder,
                rightUnder,
                leftBottom,
                rightBottom);
    }
}
