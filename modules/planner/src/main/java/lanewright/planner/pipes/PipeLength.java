package lanewright.planner.pipes;

/**
 * How long a pipe is ordered: from where one foreslope meets the line of its invert to where the
 * other does, with what its ends add to that, up to a length that is sold.
 *
 * @param feet from foot to foot along the barrel, m
 * @param atInlet how far it goes on beyond the foot at its inlet, m: over zero where it sticks out,
 *     zero where it is cut to the slope, negative where it ends at a headwall in the slope
 * @param atOutlet the same at its outlet, before the length is rounded up, m
 * @param soldBy pipe is sold in multiples of this, m
 * @param isCut whether what is left over of the sold length is cut off; else it sticks out at the
 *     outlet
 */
public record PipeLength(
        double feet, double atInlet, double atOutlet, double soldBy, boolean isCut) {

    /** A length is not rounded up for less than this part of what it is sold by. */
    private static final double ROUNDING = 1e-6;

    /** A pipe whose ends stick out so far beyond each foot, m. */
    public PipeLength(double feet, double beyond, double soldBy) {
        this(feet, beyond, beyond, soldBy, false);
    }

    /**
     * A pipe that ends at the faces of headwalls, where each foreslope comes down to the top of its
     * wall. Where a wall would stand under the travelled way it stands at the foot.
     *
     * @param way from foot to foot
     * @param wall height of the walls over the invert, m
     */
    static PipeLength walled(double feet, PipeWay way, double wall, double soldBy) {
        double in = way.reaches(wall, true) * way.slant();
        double out = way.reaches(wall, false) * way.slant();
        return new PipeLength(
                feet, Double.isNaN(in) ? 0 : -in, Double.isNaN(out) ? 0 : -out, soldBy, true);
    }

    /** Length of the barrel between its headwalls or, with other ends, from foot to foot, m. */
    public double walls() {
        return feet + Math.min(0, atInlet) + Math.min(0, atOutlet);
    }

    /** Foot to foot with both ends, m. */
    public double wanted() {
        return feet + atInlet + atOutlet;
    }

    /** The same up to a sold length, m. */
    public double ordered() {
        return Math.ceil(wanted() / soldBy - ROUNDING) * soldBy;
    }

    /** What is cut off of the length that is ordered, m. */
    public double waste() {
        return isCut ? ordered() - wanted() : 0;
    }

    /** How far the pipe as it lies goes on beyond the foot at its outlet, m. */
    public double after() {
        return ordered() - waste() - feet - atInlet;
    }
}
