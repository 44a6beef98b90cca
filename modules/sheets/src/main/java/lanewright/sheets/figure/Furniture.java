package lanewright.sheets.figure;

import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Scale bar and north arrow of a map, in corners where they hide least. */
final class Furniture {

    private static final double NOTE = Type.NOTE;

    private final Land land;
    private final LandView view;
    private final Places places;

    Furniture(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    /** Scale bar and north arrow: drawn last, but first to take their room. */
    Pen drawn() {
        var pen = new Pen();
        double bar = view.scale().bar() * view.scale().points();
        double words = Face.of(false).width(view.scale().words(), NOTE);
        double wide =
                Math.max(bar + Face.of(false).width(view.scale().barWords(), NOTE) / 2, words) + 18;
        Box plate = corner(wide, 40, false);
        double left = plate.x() + 8;
        pen.fill(Role.PLATE, plate).frame(Role.FRAME, plate);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE, view.scale().words(), view.scale().one()),
                left,
                plate.y() + 11,
                Anchor.START);
        double base = plate.bottom() - 5;
        pen.line(Role.TICK, left, base, left + bar, base);
        for (int i = 0; i <= 2; i++) {
            pen.line(Role.TICK, left + bar * i / 2, base - 4, left + bar * i / 2, base);
        }
        put(pen, Gauge.of(Gauge.Use.SCALE_BAR, "0", 0), left, base - 7, Anchor.START);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE_BAR, view.scale().barWords(), view.scale().bar()),
                left + bar,
                base - 7,
                Anchor.MIDDLE);
        Box north = corner(24, 44, true);
        double x = north.middle();
        double y = north.y() + 8;
        pen.fill(Role.PLATE, north).frame(Role.FRAME, north);
        pen.line(Role.TICK, x, y, x, y + 20);
        pen.area(Role.TICK, Outline.closed(x, y - 4, x + 4, y + 7, x - 4, y + 7));
        pen.words(Role.NOTE, "N", x, y + 31, NOTE, Anchor.MIDDLE);
        places.keepOff(plate);
        places.keepOff(north);
        return pen;
    }

    /** The corner in which a box hides least of what is to be seen. */
    private Box corner(double wide, double tall, boolean up) {
        double gap = 5;
        double left = view.box().x() + gap;
        double right = view.box().right() - gap - wide;
        double top = view.box().y() + gap;
        double bottom = view.box().bottom() - gap - tall;
        Box[] corners =
                up
                        ? new Box[] {
                            new Box(right, top, wide, tall), new Box(left, top, wide, tall)
                        }
                        : new Box[] {
                            new Box(left, bottom, wide, tall), new Box(right, bottom, wide, tall)
                        };
        return hidden(corners[1]) < hidden(corners[0]) ? corners[1] : corners[0];
    }

    private int hidden(Box plate) {
        int hidden = 0;
        for (Land.Feature feature : land.features()) {
            if (LandLines.isPlainToSee(feature.role())) {
                for (int i = 0; i < feature.x().length; i++) {
                    hidden +=
                            plate.inset(-4).holds(view.x(feature.x()[i]), view.y(feature.y()[i]))
                                    ? 1
                                    : 0;
                }
            }
        }
        return hidden;
    }

    private static void put(Pen pen, Gauge gauge, double x, double y, Anchor anchor) {
        pen.gauge(gauge, x, y, NOTE, false, anchor);
    }
}
