package lanewright.planner.pipes;

/**
 * How long a pipe is ordered: from where one foreslope meets the line of its invert to where the
 * other does, with what it goes on beyond both, up to a length that is sold.
 *
 * @param feet from foot to foot along the barrel, m
 * @param beyond what it goes on beyond each foot, m
 * @param soldBy pipe is sold in multiples of this, m
 */
public record PipeLength(double feet, double beyond, double soldBy) {

    /** A length is not rounded up for less than this part of what it is sold by. */
    private static final double ROUNDING = 1e-6;

    /** Foot to foot with both ends, m. */
    public double wanted() {
        return feet + 2 * beyond;
    }

    /** The same up to a sold length, m. */
    public double ordered() {
        return Math.ceil(wanted() / soldBy - ROUNDING) * soldBy;
    }

    /** How far the ordered pipe goes on beyond the foot at its outlet, m. */
    public double after() {
        return ordered() - feet - beyond;
    }
}
