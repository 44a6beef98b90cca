package lanewright.sheets.drawing;

import java.util.List;

/**
 * What words on the paper say about how a thing is drawn: a scale, a mark on an axis, the height of
 * a contour. Carried by the words themselves, so that what is painted and what the outcome says of
 * the page cannot differ.
 *
 * @param use what the words mark
 * @param words the whole of what is said, also where it stands on several lines
 * @param values the figures in it, in SI where they have a unit
 */
public record Gauge(Use use, String words, List<Double> values) {

    /** What a gauge marks. */
    public enum Use {
        /** Number of the sheet, and how many there are. */
        SHEET,
        /** Numbers of the sheets that follow, in their order. */
        CONTENTS,
        /** Lengths on the ground for one on the paper. */
        SCALE,
        /** Length of the bar from its beginning, m. */
        SCALE_BAR,
        /** Height between two contours, m. */
        CONTOUR_STEP,
        /** Height of a contour, m. */
        CONTOUR,
        /** Height along an axis, m. */
        HEIGHT,
        /** Depth of water along an axis, m. */
        DEPTH,
        /** Water that comes along an axis, m³/s. */
        FLOW,
        /** Distance along the lane, m. */
        STATION,
        /** How many times larger heights are drawn than lengths. */
        STRETCH
    }

    /** Copies the list. */
    public Gauge {
        values = List.copyOf(values);
        if (words.isBlank() || values.isEmpty()) {
            throw new IllegalArgumentException("a gauge says something with a figure in it");
        }
    }

    /** A gauge of one figure. */
    public static Gauge of(Use use, String words, double value) {
        return new Gauge(use, words, List.of(value));
    }
}
