package lanewright.survey.read;

/** How far numbers are believed. */
final class Limits {

    /**
     * Lowest and highest height that is believed, m. Dry land lies between the shore of the Dead
     * Sea, about 440 m below the sea, and the top of Everest, 8,849 m above it (from memory).
     */
    static final double LOWEST = -500;

    static final double HIGHEST = 9000;

    /**
     * Largest coordinate that is believed, m: more than twice the way round the earth, since some
     * systems write the number of the zone in front of the easting.
     */
    static final double FARTHEST = 1e8;

    /** Most points that are read from all files together: what fits in the memory promised. */
    static final int MOST_POINTS = 4_000_000;

    private Limits() {}

    static boolean heightExists(double metres) {
        return metres >= LOWEST && metres <= HIGHEST;
    }

    static boolean placeExists(double metres) {
        return Math.abs(metres) <= FARTHEST;
    }
}
