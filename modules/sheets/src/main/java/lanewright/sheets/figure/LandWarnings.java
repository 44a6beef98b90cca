package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** Warning triangles on a map. */
final class LandWarnings {

    private static final double NOTE = Type.NOTE;

    /** Warnings nearer to each other than this share a triangle, pt. */
    private static final double SAME_PLACE = 14;

    /** Blanks as wide as a triangle. */
    private static final String TRIANGLE_ROOM = "     ";

    private final Land land;
    private final LandView view;

    LandWarnings(Land land, LandView view) {
        this.land = land;
        this.view = view;
    }

    /**
     * Warning triangles with the numbers of their findings: beside the place, not on it. Those of
     * one place share a triangle.
     */
    List<LandLabels.Asked> asked() {
        var asked = new ArrayList<LandLabels.Asked>();
        var left = new ArrayList<>(land.looks());
        while (!left.isEmpty()) {
            Land.Look first = left.remove(0);
            double x = view.x(first.x());
            double y = view.y(first.y());
            var numbers = new StringBuilder(first.words());
            for (var it = left.iterator(); it.hasNext(); ) {
                Land.Look other = it.next();
                if (Math.hypot(view.x(other.x()) - x, view.y(other.y()) - y) < SAME_PLACE) {
                    if (!other.words().isBlank()) {
                        numbers.append(numbers.isEmpty() ? "" : " · ").append(other.words());
                    }
                    it.remove();
                }
            }
            if (view.box().holds(x, y)) {
                asked.add(look(x, y, numbers.toString()));
            }
        }
        return asked;
    }

    private static LandLabels.Asked look(double x, double y, String numbers) {
        return new LandLabels.Asked(
                Role.TEXT,
                TRIANGLE_ROOM + (numbers.isBlank() ? " " : numbers).strip() + " ",
                x,
                y,
                true,
                (pen, words, places) -> draw(pen, x, y, numbers, words, places));
    }

    private static void draw(
            Pen pen,
            double x,
            double y,
            String numbers,
            Mark.@Nullable Words words,
            Places places) {
        if (words == null) {
            pen.look(x, y, 9);
            return;
        }
        places.lead(pen, x, y, Places.box(words));
        pen.area(Role.TICK, Outline.circle(x, y, 1.4, 8));
        Places.plate(pen, words);
        pen.look(words.start() + 5, words.y() - NOTE * 0.3, 9);
        pen.bold(
                Role.TEXT,
                numbers,
                words.start() + Face.of(true).width(TRIANGLE_ROOM, NOTE),
                words.y(),
                NOTE,
                Anchor.START);
    }
}
