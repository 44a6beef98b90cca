package lanewright.planner.run;

import java.util.List;

/**
 * What one sheet says about how it is drawn, for the outcome: told by whoever drew it, since the
 * paper is known only there.
 *
 * @param number of the sheet, from 1
 * @param name as the list on the cover has it
 * @param width of the paper, m
 * @param height of the paper, m
 * @param drawn its scales, axes, contours and the like
 */
public record DrawnSheet(int number, String name, double width, double height, List<Said> drawn) {

    /** Checks the number and the size, and copies the list. */
    public DrawnSheet {
        if (number < 1 || !(width > 0 && height > 0)) {
            throw new IllegalArgumentException(
                    "sheet " + number + " of " + width + " m by " + height + " m");
        }
        drawn = List.copyOf(drawn);
    }

    /**
     * One thing that is said.
     *
     * @param what it marks
     * @param words as they stand on the sheet
     * @param values the figures in the words, in SI
     */
    public record Said(String what, String words, List<Double> values) {
        /** Copies the list. */
        public Said {
            values = List.copyOf(values);
        }
    }
}
