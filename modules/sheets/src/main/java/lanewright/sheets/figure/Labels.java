package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/**
 * Words about places in a drawing, gathered first: every place gets its dot, all dots are kept free
 * of words, and then the words are put in the order in which they came.
 */
final class Labels {

    /** Half the size of a dot, pt. */
    private static final double DOT = 1;

    private final Places places;
    private final double farthest;
    private final List<Said> said = new ArrayList<>();

    private record Said(String words, double x, double y, boolean bold) {}

    /**
     * Labels among what is kept free already.
     *
     * @param farthest that words may stand from what they speak of, pt
     */
    Labels(Places places, double farthest) {
        this.places = places;
        this.farthest = farthest;
    }

    /** Words about a place on the page. */
    void say(String words, double x, double y, boolean bold) {
        said.add(new Said(words, x, y, bold));
    }

    /** Draws them all. */
    void draw(Pen pen) {
        for (Said one : said) {
            pen.area(Role.TICK, Outline.circle(one.x(), one.y(), DOT, 8));
            places.keepOff(new Box(one.x() - DOT, one.y() - DOT, 2 * DOT, 2 * DOT));
        }
        for (Said one : said) {
            places.put(
                    pen, Role.TEXT, one.words(), one.x(), one.y(), Type.NOTE, one.bold(), farthest);
        }
    }
}
