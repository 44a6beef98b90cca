package lanewright.lane.shape;

import java.util.List;

/**
 * The shape that the lane is given across, the same over a stretch of stations.
 *
 * @param width travelled width at the top of the stone, m, over zero, half each side
 * @param fall which way it falls
 * @param crossSlope rise over run of the travelled way, positive falling outward (crown) or to the
 *     shed side
 * @param bed how the stone sits
 * @param layers stone, from the top down; may be empty
 * @param subgradeFall cross slope of the subgrade under the stone, rise over run, falling the same
 *     way as the travelled way; NaN means parallel to it. The thickness of each layer but the
 *     lowest is as stated; the lowest is thicker away from the alignment if the subgrade is steeper
 * @param left the left side
 * @param right the right side
 * @param strip whether topsoil is stripped inside the limits; false builds up on top
 * @param topsoilBack thickness of topsoil put back on slopes outside the stone, m, zero or more
 * @param topsoilInDitch whether topsoil is put back in ditch bottoms too
 */
public record TypicalSection(
        double width,
        CrossFall fall,
        double crossSlope,
        Bed bed,
        List<Layer> layers,
        double subgradeFall,
        SideShape left,
        SideShape right,
        boolean strip,
        double topsoilBack,
        boolean topsoilInDitch) {
    /** Checks the ranges. */
    public TypicalSection {
        layers = List.copyOf(layers);
        if (!(width > 0 && width <= 50)) {
            throw new IllegalArgumentException(
                    "width must be over 0 and at most 50 m, was " + width);
        }
        if (!(Math.abs(crossSlope) <= 0.25)) {
            throw new IllegalArgumentException(
                    "cross slope must be within 25 %, was " + crossSlope);
        }
        if (!(Double.isNaN(subgradeFall) || Math.abs(subgradeFall) <= 0.25)) {
            throw new IllegalArgumentException(
                    "subgrade fall must be within 25 %, was " + subgradeFall);
        }
        if (!(topsoilBack >= 0 && topsoilBack <= 2)) {
            throw new IllegalArgumentException(
                    "topsoil put back must be 0 to 2 m, was " + topsoilBack);
        }
    }

    /** Outward fall of the travelled way on the left, rise over run. */
    public double leftFall() {
        return fall == CrossFall.SHED_RIGHT ? -crossSlope : crossSlope;
    }

    /** Outward fall of the travelled way on the right, rise over run. */
    public double rightFall() {
        return fall == CrossFall.SHED_LEFT ? -crossSlope : crossSlope;
    }

    /** Outward fall of the subgrade under the stone on the left, rise over run. */
    public double leftUnder() {
        return Double.isNaN(subgradeFall)
                ? leftFall()
                : fall == CrossFall.SHED_RIGHT ? -subgradeFall : subgradeFall;
    }

    /** Outward fall of the subgrade under the stone on the right, rise over run. */
    public double rightUnder() {
        return Double.isNaN(subgradeFall)
                ? rightFall()
                : fall == CrossFall.SHED_LEFT ? -subgradeFall : subgradeFall;
    }

    /** Compacted thickness of all stone at the alignment, m. */
    public double stoneThickness() {
        double sum = 0;
        for (Layer layer : layers) {
            sum += layer.thickness();
        }
        return sum;
    }
}
