package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Rising;

/**
 * One storm at a crossing whose inlet is clear, half or wholly blocked: what goes through, what
 * goes over the lane, and how, both at one headwater. Where water has a lower way out than the lane
 * it stops there, and what does not go through goes that way.
 *
 * @param share how far the inlet is blocked
 * @param headwater depth above the inlet invert, m
 * @param through discharge through the barrels, m³/s
 * @param over discharge that goes over the lane or another way, m³/s
 * @param overDepth still water over the lowest place of the crest, m
 * @param overSpeed speed there on the crest, m/s
 * @param overAt where that is, m along the crest; also told where nothing goes over
 * @param elsewhere whether it goes another way than over the lane
 */
public record Blocked(
        Share share,
        double headwater,
        double through,
        double over,
        double overDepth,
        double overSpeed,
        double overAt,
        boolean elsewhere) {

    /** How far an inlet is blocked. */
    public enum Share {
        /** Clean. */
        CLEAR("clear", 1),
        /** Half its area and width. */
        HALF("half blocked", 0.5),
        /** Nothing gets in. */
        WHOLLY("wholly blocked", 0);

        private final String words;
        private final double open;

        Share(String words, double open) {
            this.words = words;
            this.open = open;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * Splits a storm between barrels and crest.
     *
     * @param culvert with clear inlets
     * @param tailwater depth above the outlet invert, m
     * @param crest of the lane, heights above the inlet invert
     * @param wayOut height above the inlet invert at which water goes another way than over the
     *     lane, m, over zero; infinite where it has none. As much is taken to find room there as
     *     comes
     * @param discharge of the storm, m³/s, over zero
     * @throws IllegalArgumentException if a figure is out of range, or the crest is not higher than
     *     the inlet invert, or the other way out is not
     */
    public static Blocked of(
            Culvert culvert,
            double tailwater,
            Overtopping crest,
            double wayOut,
            double discharge,
            Share share) {
        Check.positive("discharge, m³/s,", discharge);
        if (crest.lowest() <= 0) {
            throw new IllegalArgumentException(
                    "the crest lies "
                            + crest.lowest()
                            + " m above the inlet invert; lay the pipe lower than the lane");
        }
        if (!(wayOut > 0)) {
            throw new IllegalArgumentException(
                    "the other way out lies "
                            + wayOut
                            + " m above the inlet invert; where it lies no higher no water comes to the"
                            + " pipe");
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
        if (headwater > wayOut) {
            double less =
                    share == Share.WHOLLY
                            ? 0
                            : Math.min(
                                    through,
                                    new Performance(culvert.withOpen(share.open), tailwater)
                                            .discharge(wayOut));
            return new Blocked(share, wayOut, less, discharge - less, 0, 0, crest.lowestAt(), true);
        }
        return new Blocked(
                share,
                headwater,
                through,
                over,
                Math.max(0, headwater - crest.lowest()),
                crest.speed(headwater),
                crest.lowestAt(),
                false);
    }

    private static double through(Performance barrels, Overtopping crest, double discharge) {
        if (barrels.depth(discharge) <= crest.lowest()) {
            return discharge;
        }
        return Rising.where(
                through -> through + crest.discharge(barrels.depth(through)), discharge, discharge);
    }
}
