package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import lanewright.desktop.look.Type;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/**
 * A picture with two axes: metres along or across to the right, heights up.
 *
 * @param box where it lies on the board, px
 * @param a0 metres at its left side
 * @param a1 metres at its right side
 * @param z0 height at its foot, m
 * @param z1 height at its top, m
 */
record Frame(Box box, double a0, double a1, double z0, double z1) {

    private static final double FOOT = 0.3048;

    double x(double a) {
        return box.x() + (a - a0) / (a1 - a0) * box.width();
    }

    double y(double z) {
        return box.bottom() - (z - z0) / (z1 - z0) * box.height();
    }

    double along(double px) {
        return a0 + (px - box.x()) / box.width() * (a1 - a0);
    }

    double height(double py) {
        return z0 + (box.bottom() - py) / box.height() * (z1 - z0);
    }

    /** How much more heights are drawn than lengths. */
    double stretch() {
        return box.height() / (z1 - z0) / (box.width() / (a1 - a0));
    }

    /** The same words for a stretch everywhere: to a half. */
    String stretchWords() {
        double half = Math.rint(stretch() * 2) / 2;
        return half <= 1
                ? "heights and lengths to one scale"
                : "heights stretched "
                        + Words.fixed(half, half == Math.rint(half) ? 0 : 1)
                        + " times";
    }

    /** Words without their last parts, as many as there is no room for; the first part stays. */
    static String fitting(String words, boolean bold, double size, double room) {
        String fit = words;
        while (Face.of(bold).width(fit, size) > room && fit.contains(" · ")) {
            fit = fit.substring(0, fit.lastIndexOf(" · "));
        }
        return fit;
    }

    Outline line(List<double[]> places) {
        double[] xy = new double[2 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            xy[2 * i] = x(places.get(i)[0]);
            xy[2 * i + 1] = y(places.get(i)[1]);
        }
        return Outline.open(xy);
    }

    /** Grid and numbers of the heights, at the left. */
    void heights(Pen pen, UnitSystem units) {
        double metre = units == UnitSystem.US ? FOOT : 1;
        double step = nice((z1 - z0) / metre / Math.max(2, box.height() / 46));
        for (double shown = Math.ceil(z0 / metre / step) * step;
                shown * metre <= z1;
                shown += step) {
            double y = y(shown * metre);
            pen.line(Role.GRID, box.x(), y, box.right(), y);
            pen.words(
                    Role.NOTE,
                    Words.fixed(shown, step < 1 ? 1 : 0),
                    box.x() - 5,
                    y + 4,
                    Type.NOTE,
                    Anchor.END);
        }
    }

    /** Grid and numbers of stations, along the foot. */
    void stations(Pen pen, UnitSystem units) {
        double metre = units == UnitSystem.US ? FOOT : 1;
        double step = nice((a1 - a0) / metre / Math.max(2, box.width() / 90));
        for (double shown = 0; shown * metre <= a1 + 1e-9; shown += step) {
            double x = x(shown * metre);
            pen.line(Role.GRID, x, box.y(), x, box.bottom());
            pen.words(
                    Role.NOTE,
                    Words.of(Quantity.station(shown * metre), units),
                    x,
                    box.bottom() + 14,
                    Type.NOTE,
                    Anchor.MIDDLE);
        }
    }

    /** Grid and numbers of offsets, along the foot. */
    void offsets(Pen pen, UnitSystem units) {
        double metre = units == UnitSystem.US ? FOOT : 1;
        double step = nice((a1 - a0) / metre / Math.max(2, box.width() / 52));
        for (double shown = Math.ceil(a0 / metre / step) * step;
                shown * metre <= a1;
                shown += step) {
            double x = x(shown * metre);
            pen.line(Role.GRID, x, box.y(), x, box.bottom());
            pen.words(
                    Role.NOTE,
                    Words.fixed(Math.abs(shown), step < 1 ? 1 : 0),
                    x,
                    box.bottom() + 14,
                    Type.NOTE,
                    Anchor.MIDDLE);
        }
    }

    /** 1, 2 or 5 times a power of ten, not under {@code least}. */
    private static double nice(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double each : new double[] {1, 2, 5, 10}) {
            if (each * power >= least * 0.999) {
                return each * power;
            }
        }
        return 10 * power;
    }

    /** Places words on plates where nothing else was placed before. */
    static final class Room {
        private final Box box;
        private final List<Box> taken = new ArrayList<>();

        Room(Box box) {
            this.box = box;
        }

        void block(Box other) {
            taken.add(other);
        }

        boolean put(Pen pen, Role role, String words, double x, double y, boolean bold) {
            double half = Face.of(bold).width(words, Type.NOTE) / 2 + 3;
            double middle = Math.max(box.x() + half, Math.min(box.right() - half, x));
            Box plate = new Box(middle - half, y - 11, 2 * half, 15);
            if (plate.y() < box.y() || plate.bottom() > box.bottom()) {
                return false;
            }
            for (Box other : taken) {
                if (plate.x() < other.right()
                        && other.x() < plate.right()
                        && plate.y() < other.bottom()
                        && other.y() < plate.bottom()) {
                    return false;
                }
            }
            taken.add(plate);
            pen.fill(Role.PLATE, plate);
            pen.words(role, words, middle, y, Type.NOTE, bold, Anchor.MIDDLE, 0);
            return true;
        }
    }
}
