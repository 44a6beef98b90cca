package lanewright.drainage.channel;

/**
 * Check dams that step a ditch down (US Army, subcourse EN5465, Drainage, chapter 4).
 *
 * @param spacing from dam to dam along the ditch, m; infinite where none are needed
 * @param tooClose closer than {@link #CLOSEST}: a lining costs less
 */
public record CheckDams(double spacing, boolean tooClose) {

    /** Closer than this (50 ft) dams cost more than a lining, m. */
    public static final double CLOSEST = 50 * Imperial.FOOT;

    /**
     * Spacing {@code H / (A − B)}.
     *
     * @param height from the ditch bottom to the crest of a dam, m
     * @param slope the ditch as it lies, rise over run
     * @param wanted slope of the bed between the dams, rise over run; zero for level pools
     * @throws IllegalArgumentException if a figure is out of range, or the wanted slope is not the
     *     gentler
     */
    public static CheckDams of(double height, double slope, double wanted) {
        Check.positive("height of a check dam, m,", height);
        Check.falling(slope);
        Check.notRising(wanted);
        if (wanted >= slope) {
            throw new IllegalArgumentException(
                    "the ditch falls "
                            + slope
                            + " and shall fall "
                            + wanted
                            + "; check dams only make a ditch gentler, leave them out");
        }
        double spacing = height / (slope - wanted);
        return new CheckDams(spacing, spacing < CLOSEST);
    }
}
