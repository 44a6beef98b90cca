package lanewright.sheets.figure;

import java.util.ArrayList;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Warning triangles on a map. */
final class LandWarnings {

    private static final double NOTE = Type.NOTE;

    /** Warnings nearer to each other than this share a triangle, pt. */
    private static final double SAME_PLACE = 14;

    /** Blanks as wide as a triangle. */
    private static final String TRIANGLE_ROOM = "     ";

    private final Land land;
    private final LandView view;
    private final Places places;

    LandWarnings(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    /**
     * Warning triangles with the numbers of their findings: beside the place, not on it. Those of
     * one place share a triangle.
     *
     * @return whether there was any to draw
     */
    boolean draw(Pen pen) {
        boolean any = false;
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
                look(pen, x, y, numbers.toString());
                any = true;
            }
        }
        return any;
    }

    private void look(Pen pen, double x, double y, String numbers) {
        Mark.Words words =
                places.find(
                        Role.TEXT,
                        TRIANGLE_ROOM + (numbers.isBlank() ? " " : numbers).strip() + " ",
                        x,
                        y,
                        NOTE,
                        true,
                        LandDrawing.FARTHEST);
        if (words == null) {
            pen.look(x, y, 9);
            return;
        }
        Box plate = Places.box(words);
        places.lead(pen, x, y, plate);
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
