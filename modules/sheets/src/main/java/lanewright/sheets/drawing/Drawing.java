package lanewright.sheets.drawing;

import java.util.List;

/**
 * A finished drawing, of one page or less.
 *
 * @param width pt
 * @param height pt
 * @param marks in the order in which they are painted
 */
public record Drawing(double width, double height, List<Mark> marks) {
    /** Checks the size and copies the list. */
    public Drawing {
        if (!(width > 0 && width <= 5000 && height > 0 && height <= 5000)) {
            throw new IllegalArgumentException(
                    "a drawing is 1 to 5000 pt wide and high, was " + width + " by " + height);
        }
        marks = List.copyOf(marks);
    }
}
