package lanewright.sheets.figure;

import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Crosses and letters along wires and buried lines. */
final class Lettering {

    private static final double NOTE = Type.NOTE;

    private final Land land;
    private final LandView view;
    private final Places places;

    Lettering(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    /** Crosses along a wire and letters along wires and buried lines: they read without colour. */
    void draw(Pen pen) {
        for (Land.Feature feature : land.features()) {
            if (isLettered(feature)) {
                boolean wire = feature.role() == Role.WIRE;
                Outline line = view.outline(feature);
                if (wire) {
                    along(line, 7, 14, (x, y) -> cross(pen, x, y));
                }
                along(line, 14, 42, (x, y) -> letter(pen, wire ? "W" : "B", x, y));
                places.keepOff(line);
            }
        }
    }

    static boolean isLettered(Land.Feature feature) {
        return feature.role() == Role.WIRE || feature.role() == Role.BURIED;
    }

    private void letter(Pen pen, String text, double x, double y) {
        var words =
                new Mark.Words(Role.TEXT, text, x, y + NOTE * 0.3, NOTE, true, Anchor.MIDDLE, 0);
        if (view.box().inset(2).holds(x, y) && places.take(words)) {
            Places.plate(pen, words);
            pen.add(words);
        }
    }

    static void cross(Pen pen, double x, double y) {
        pen.line(Role.WIRE, x - 2.2, y - 2.2, x + 2.2, y + 2.2);
        pen.line(Role.WIRE, x - 2.2, y + 2.2, x + 2.2, y - 2.2);
    }

    @FunctionalInterface
    private interface At {
        void place(double x, double y);
    }

    /** Places along a line, the first after some length and then at equal distances, pt. */
    private static void along(Outline line, double first, double step, At at) {
        double next = first;
        double gone = 0;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            double length = Math.hypot(dx, dy);
            while (length > 0 && next <= gone + length) {
                double part = (next - gone) / length;
                at.place(line.x(i - 1) + part * dx, line.y(i - 1) + part * dy);
                next += step;
            }
            gone += length;
        }
    }
}
