package lanewright.sheets.page;

import lanewright.measure.UnitSystem;

/**
 * A size of paper, pt.
 *
 * @param width across
 * @param height down
 */
public record Paper(double width, double height) {

    /** Letter, 8.5 by 11 in (ANSI/ASME Y14.1, size A). */
    static final Paper LETTER = new Paper(612, 792);

    /** A4, 210 by 297 mm (ISO 216). */
    static final Paper A4 = new Paper(595.28, 841.89);

    /** The paper in the drawer where {@code units} are used, upright. */
    public static Paper of(UnitSystem units) {
        return units == UnitSystem.US ? LETTER : A4;
    }

    /** The same paper lying on its long side. */
    public Paper lying() {
        return new Paper(Math.max(width, height), Math.min(width, height));
    }
}
