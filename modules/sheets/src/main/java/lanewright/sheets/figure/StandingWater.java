package lanewright.sheets.figure;

/**
 * Water that sits beside or under the lane.
 *
 * @param from station, m
 * @param to station, m, not before {@code from}
 * @param leftmost least offset of its edge, m
 * @param rightmost greatest offset of its edge, m
 * @param bottom lowest height, m
 * @param level height of the water when it spills, m
 * @param words what is said of it
 */
public record StandingWater(
        double from,
        double to,
        double leftmost,
        double rightmost,
        double bottom,
        double level,
        String words) {

    /** The same water with other words, none if they are blank. */
    public StandingWater saying(String other) {
        return new StandingWater(from, to, leftmost, rightmost, bottom, level, other);
    }
}
