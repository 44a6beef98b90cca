package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Rising;

/**
 * One storm at a crossing whose inlet is clear, half or wholly blocked: what goes through, what
 * goes over the lane, and how, both at one headwater.
 *
 * @param share how far the inlet is blocked
 * @param headwater depth above the inlet invert, m
 * @param through discharge through the barrels, m³/s
 * @param over discharge over the lane, m³/s
 * @param overDepth still water over the lowest place of the crest, m
 * @param overSpeed speed there on the crest, m/s
 * @param overAt where that is, m along the crest; also told where nothing goes over
 */
public record Blocked(
        Share share,
        double headwater,
        double through,
        double over,
        double overDepth,
        double overSpeed,
        double overAt) {

    /** How far an inlet is blocked. */
    public enum Share {
        /** Clean. */
        CLEAR(1),
        /** Half its area and width. */
        HALF(0.5),
        /** Nothing gets in. */
        WHOLLY(0);

        private final double open;

        Share(double open) {
            this.open = open;
        }
    }

    /**
     * Splits a storm between barrels and crest.
     *
     * @param culvert with clear inlets
     * @param tailwater depth above the outlet invert, m
     * @param crest of the lane, heights above the inlet invert
     * @param discharge of the storm, m³/s, over zero
     * @throws IllegalArgumentException if a figure is out of range, or the crest is not higher than
     *     the inlet invert
     */
    public static Blocked of(
            Culvert culvert, double tailwater, Overtopping crest, double discharge, Share share) {
        Check.positive("discharge, m³/s,", discharge);
        if (crest.lowest() <= 0) {
            throw new IllegalArgumentException(
                    "the crest lies "
                            + crest.lowest()
                            + " m above the inlet invert; lay the pipe lower than the lane");
        }
        double through =
                share == Share.WHOLLY
                        ? 0
                        : through(
                                new Performance(culvert.withOpen(share.open), tailwater),
                                crest,
                                discharge);
        double over = discharge - through;
        double headwater =
                over > 0
                        ? crest.level(over)
                        : new Performance(culvert.withOpen(share.open), tailwater).depth(through);
        return new Blocked(
                share,
                headwater,
                through,
                over,
                Math.max(0, headwater - crest.lowest()),
                crest.speed(headwater),
                crest.lowestAt());
    }

    private static double through(Performance barrels, Overtopping crest, double discharge) {
        if (barrels.depth(discharge) <= crest.lowest()) {
            return discharge;
        }
        return Rising.where(
                through -> through + crest.discharge(barrels.depth(through)), discharge, discharge);
    }
}
