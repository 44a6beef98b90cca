package lanewright.planner.work;

/**
 * One stake on the lane itself, at its line or at an edge of the travelled way. Stripping destroys
 * it, so it is set from the offset stakes once the earth is shaped. Heights are NaN where no
 * benchmark is named.
 *
 * @param kind what it marks
 * @param station m along the alignment
 * @param offset from the alignment, m, positive right
 * @param x local easting, m
 * @param y local northing, m
 * @param ground height of the ground as it was, m above the datum
 * @param finished height of the finished surface, m above the datum
 * @param up height of the finished surface over that ground, m: over zero fill, under zero cut
 * @param rod reading of a rod held on the finished surface, m, NaN without an instrument
 */
public record LaneMark(
        Kind kind,
        double station,
        double offset,
        double x,
        double y,
        double ground,
        double finished,
        double up,
        double rod) {

    /** What a stake on the lane marks. */
    public enum Kind {
        /** The lane's own line. */
        CENTRE("centre"),
        /** The left edge of the travelled way. */
        LEFT_EDGE("left edge"),
        /** The right edge of the travelled way. */
        RIGHT_EDGE("right edge");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
