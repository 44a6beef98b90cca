package lanewright.drainage.hollows;

/**
 * A way of water from cell to cell below ground, as through a pipe. Once it stands high enough at
 * either end, water passes to the lower one.
 *
 * @param from the cell in which it goes in
 * @param to the cell in which it comes out, or {@link Hollow#OUTSIDE} for out of the survey
 * @param height how high water must stand at the upper end to pass, m, finite
 */
public record Passage(int from, int to, double height) {

    /** Checks that it leads somewhere. */
    public Passage {
        if (from < 0 || from == to || Double.isNaN(height) || Double.isInfinite(height)) {
            throw new IllegalArgumentException(
                    "a passage from cell " + from + " to " + to + " at " + height + " m");
        }
    }
}
