package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;

/**
 * Barrels side by side, all alike and at one height.
 *
 * @param barrel each
 * @param inlet how water gets in
 * @param length along the barrel, m
 * @param slope fall of the barrel, rise over run, zero or more
 * @param barrels how many
 * @param open part of each inlet that is not blocked, over zero and at most 1
 */
public record Culvert(
        Barrel barrel, Inlet inlet, double length, double slope, int barrels, double open) {

    /** More than this side by side is a bridge. */
    private static final int MOST_BARRELS = 12;

    /**
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Culvert {
        Check.positive("length of a barrel, m,", length);
        Check.notRising(slope);
        if (barrels < 1 || barrels > MOST_BARRELS) {
            throw new IllegalArgumentException(
                    "a culvert has 1 to "
                            + MOST_BARRELS
                            + " barrels, was "
                            + barrels
                            + "; give how many lie side by side");
        }
        if (!(open > 0 && open <= 1)) {
            throw new IllegalArgumentException(
                    "the open part of an inlet must be over 0 and at most 1, was "
                            + open
                            + "; treat a closed one as wholly blocked");
        }
    }

    /** With clear inlets. */
    public Culvert(Barrel barrel, Inlet inlet, double length, double slope, int barrels) {
        this(barrel, inlet, length, slope, barrels, 1);
    }

    /** The same with every inlet open by this part of its area and width. */
    public Culvert withOpen(double part) {
        return new Culvert(barrel, inlet, length, slope, barrels, part);
    }
}
