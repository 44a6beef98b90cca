package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import lanewright.desktop.look.Pixels;
import lanewright.desktop.look.Theme;
import lanewright.ground.Ground;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * Paints shading and contours of what is seen, away from the screen. However many points the ground
 * has, the work depends on the pixels only: heights are asked on a raster of the board, and each
 * pixel tells from height and slope how near a contour passes.
 */
final class Terrain implements AutoCloseable {

    /** Pixels between two heights that are asked. */
    private static final int STEP = 2;

    /** Contours should keep this far apart on ordinary ground, px. */
    private static final double APART = 13;

    /** Slopes are shown this much steeper, so that gentle land has a shape. */
    private static final double EXAGGERATED = 2.5;

    /** Light from the north-west, 45 degrees high: the custom of printed maps. */
    private static final double LIGHT = Math.sqrt(0.5);

    private static final double[] STEPS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};

    /**
     * A painted piece of land.
     *
     * @param view what it shows
     * @param pixels what is seen
     * @param step height between contours, in shown units
     * @param labels heights to write along the heavy contours
     */
    record Painted(View view, Pixels pixels, double step, List<Label> labels) {}

    /** A height on a contour: where, and how the contour runs there, degrees clockwise. */
    record Label(double x, double y, double height, double turn) {}

    private record Order(Ground ground, View view, UnitSystem units, Theme theme) {}

    /**
     * Heights on a raster that stays where it is while the land is moved, so that only those are
     * asked that come into sight.
     *
     * @param base the view that the raster began with: its left top is pixel 0, 0
     * @param order what was asked for
     * @param sx pixel at the left of the board
     * @param sy pixel at its top
     * @param left column of the raster at the left of the board, in steps from pixel 0
     * @param top row at its top, likewise
     * @param across columns
     * @param down rows
     * @param z heights in shown units, row by row
     * @param goesOn whether it is the raster before, moved
     */
    @SuppressWarnings("ArrayRecordComponent") // seen by one thread only
    private record Raster(
            View base,
            Order order,
            int sx,
            int sy,
            int left,
            int top,
            int across,
            int down,
            float[] z,
            boolean goesOn) {}

    private final Consumer<Painted> ready;
    private final Object lock = new Object();
    private final Thread thread;
    private @Nullable Order order;
    private @Nullable Raster raster;
    private @Nullable Painted last;
    private volatile boolean closed;

    /**
     * A painter.
     *
     * @param ready is handed what was painted, on the painter's thread
     */
    Terrain(Consumer<Painted> ready) {
        this.ready = ready;
        thread = new Thread(this::work, "lanewright-terrain");
        thread.setDaemon(true);
        thread.start();
    }

    /** Asks for a view to be painted; an earlier one that is not yet painted is dropped. */
    void ask(Ground ground, View view, UnitSystem units, Theme theme) {
        synchronized (lock) {
            order = new Order(ground, view, units, theme);
            lock.notifyAll();
        }
    }

    private void work() {
        while (!closed) {
            Order next;
            synchronized (lock) {
                next = order;
                while (next == null) {
                    try {
                        lock.wait();
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                        return;
                    }
                    next = order;
                }
                order = null;
            }
            ready.accept(paint(next));
        }
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
    }

    private Painted paint(Order next) {
        Raster before = raster;
        Raster now = asked(next, before);
        double metre = metre(next);
        double perStep = STEP / next.view().scale() / metre;
        double step = step(now.z(), now.across(), now.down(), next.units());
        Painted old = last;
        boolean goesOn =
                old != null
                        && before != null
                        && now.goesOn()
                        && before.order().theme() == next.theme()
                        && old.step() == step;
        Pixels pixels = pixels(now, perStep, step, goesOn ? before : null, old);
        var painted = new Painted(next.view(), pixels, step, labels(now, step));
        raster = now;
        last = painted;
        return painted;
    }

    private static double metre(Order order) {
        return order.units() == UnitSystem.US ? 0.3048 : 1;
    }

    /** The heights in sight; those that were in sight before are taken over. */
    @SuppressWarnings("ReferenceEquality") // the same ground is the same object
    private static Raster asked(Order next, @Nullable Raster before) {
        View view = next.view();
        View base = view;
        Raster known = null;
        if (before != null
                && before.order().ground() == next.ground()
                && before.order().units() == next.units()
                && before.base().scale() == view.scale()
                && isWhole(before.base().px(view.east(0)))
                && isWhole(before.base().py(view.north(0)))) {
            base = before.base();
            known = before;
        }
        int sx = (int) Math.rint(base.px(view.east(0)));
        int sy = (int) Math.rint(base.py(view.north(0)));
        int left = Math.floorDiv(sx, STEP);
        int top = Math.floorDiv(sy, STEP);
        int across = (int) Math.max(2, view.width()) / STEP + 3;
        int down = (int) Math.max(2, view.height()) / STEP + 3;
        double metre = metre(next);
        float[] z = new float[across * down];
        for (int row = 0; row < down; row++) {
            double north = base.north((top + row) * STEP);
            int from = 0;
            int to = 0;
            int knownRow = known == null ? -1 : top + row - known.top();
            if (known != null && knownRow >= 0 && knownRow < known.down()) {
                from = Math.max(0, Math.min(across, known.left() - left));
                to = Math.max(from, Math.min(across, known.left() + known.across() - left));
                System.arraycopy(
                        known.z(),
                        knownRow * known.across() + from + left - known.left(),
                        z,
                        row * across + from,
                        to - from);
            }
            for (int column = 0; column < across; column++) {
                if (column == from) {
                    column = to;
                }
                if (column < across) {
                    double east = base.east((left + column) * STEP);
                    z[row * across + column] =
                            (float) (next.ground().heightAt(east, north) / metre);
                }
            }
        }
        return new Raster(base, next, sx, sy, left, top, across, down, z, known != null);
    }

    private static boolean isWhole(double px) {
        return Math.abs(px - Math.rint(px)) < 1e-3 && Math.abs(px) < 1e8;
    }

    /** What is seen of the heights; what was painted before is taken over. */
    private static Pixels pixels(
            Raster now,
            double perStep,
            double step,
            @Nullable Raster before,
            @Nullable Painted old) {
        View view = now.order().view();
        int columns = (int) Math.max(2, view.width());
        int rows = (int) Math.max(2, view.height());
        var pixels = new Pixels(columns, rows);
        var paint = new Colours(now.order().theme());
        for (int row = 0; row < rows; row++) {
            int from = 0;
            int to = 0;
            if (before != null && old != null) {
                int oldRow = row + now.sy() - before.sy();
                if (oldRow >= 0 && oldRow < old.pixels().rows()) {
                    int right = before.sx() + old.pixels().columns() - now.sx();
                    from = Math.max(0, Math.min(columns, before.sx() - now.sx()));
                    to = Math.max(from, Math.min(columns, right));
                    pixels.take(
                            old.pixels(),
                            oldRow * old.pixels().columns() + from + now.sx() - before.sx(),
                            row * columns + from,
                            to - from);
                }
            }
            for (int column = 0; column < columns; column++) {
                if (column == from) {
                    column = to;
                }
                if (column < columns) {
                    pixels.set(
                            row * columns + column, pixel(now, column, row, perStep, step, paint));
                }
            }
        }
        return pixels;
    }

    /** The height between contours that leaves them apart on ground of middling slope. */
    private static double step(float[] z, int across, int down, UnitSystem units) {
        double sum = 0;
        int count = 0;
        for (int row = 0; row + 1 < down; row += 4) {
            for (int column = 0; column + 1 < across; column += 4) {
                int at = row * across + column;
                double slope = Math.hypot(z[at + 1] - z[at], z[at + across] - z[at]) / STEP;
                if (Double.isFinite(slope)) {
                    sum += slope;
                    count++;
                }
            }
        }
        double mean = count == 0 ? 0 : sum / count;
        for (double step : STEPS) {
            if (units == UnitSystem.US && step < 0.5 && step != 0.1) {
                continue;
            }
            if (step >= mean * APART) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    private static int pixel(
            Raster of, int px, int py, double perStep, double step, Colours paint) {
        int x = of.sx() + px - of.left() * STEP;
        int y = of.sy() + py - of.top() * STEP;
        double fx = (x % STEP) / (double) STEP;
        double fy = (y % STEP) / (double) STEP;
        int across = of.across();
        int at = y / STEP * across + x / STEP;
        float[] z = of.z();
        double a = z[at];
        double b = z[at + 1];
        double c = z[at + across];
        double d = z[at + across + 1];
        double height =
                a * (1 - fx) * (1 - fy) + b * fx * (1 - fy) + c * (1 - fx) * fy + d * fx * fy;
        if (Double.isNaN(height)) {
            return paint.nothing();
        }
        double east = ((b - a) * (1 - fy) + (d - c) * fy);
        double south = ((c - a) * (1 - fx) + (d - b) * fx);
        double e = east / perStep * EXAGGERATED;
        double s = south / perStep * EXAGGERATED;
        double light = ((e + s) * LIGHT + 1) * LIGHT / Math.sqrt(1 + e * e + s * s);
        double nearest = Math.rint(height / step);
        double perPixel = Math.hypot(east, south) / STEP;
        double away = Math.abs(height - nearest * step) / Math.max(perPixel, step / 1000);
        boolean heavy = Math.abs(nearest % 5) < 0.5;
        double half = heavy ? 0.9 : 0.5;
        double ink = Math.max(0, Math.min(1, half + 0.5 - away)) * (heavy ? 0.85 : 0.6);
        return paint.land(light, ink);
    }

    /** Colours of the land. */
    private static final class Colours {
        private final boolean dark;

        Colours(Theme theme) {
            dark = theme == Theme.DARK;
        }

        int nothing() {
            return dark ? 0x20262A : 0xFBFAF6;
        }

        int land(double light, double ink) {
            double shade = Math.max(0, Math.min(1, light));
            double red = dark ? 30 + 34 * shade : 205 + 43 * shade;
            double green = dark ? 35 + 34 * shade : 199 + 46 * shade;
            double blue = dark ? 38 + 32 * shade : 184 + 51 * shade;
            double inkRed = dark ? 178 : 128;
            double inkGreen = dark ? 166 : 114;
            double inkBlue = dark ? 134 : 84;
            return mixed(red, inkRed, ink) << 16
                    | mixed(green, inkGreen, ink) << 8
                    | mixed(blue, inkBlue, ink);
        }

        private static int mixed(double under, double over, double part) {
            return (int) Math.round(under * (1 - part) + over * part) & 255;
        }
    }

    /**
     * At most one height in each patch of the land, on the heavy contour nearest its middle. The
     * patches stay where they are while the land is moved.
     */
    private static List<Label> labels(Raster of, double step) {
        List<Label> labels = new ArrayList<>();
        int patch = 220 / STEP;
        for (int top = firstPatch(of.top(), patch); top + 3 < of.down(); top += patch) {
            for (int left = firstPatch(of.left(), patch); left + 3 < of.across(); left += patch) {
                int best = nearestContour(of, left, top, patch, 5 * step);
                if (best >= 0) {
                    labels.add(label(of, best, 5 * step));
                }
            }
        }
        return labels;
    }

    /** Where the first patch begins that reaches into a raster, counted from its left or top. */
    private static int firstPatch(int begin, int patch) {
        return patch / 3 - Math.floorMod(begin, patch);
    }

    private static int nearestContour(Raster of, int left, int top, int patch, double heavy) {
        float[] z = of.z();
        int best = -1;
        double bestAway = Double.POSITIVE_INFINITY;
        int lastRow = Math.min(top + patch / 2, of.down() - 1);
        int lastColumn = Math.min(left + patch / 2, of.across() - 1);
        for (int row = Math.max(0, top); row < lastRow; row++) {
            for (int column = Math.max(0, left); column < lastColumn; column++) {
                int at = row * of.across() + column;
                double low = Math.min(z[at], z[at + 1]);
                double high = Math.max(z[at], z[at + 1]);
                if (Math.floor(high / heavy) * heavy >= low && high > low) {
                    double away = Math.hypot(row - top - patch / 4.0, column - left - patch / 4.0);
                    if (away < bestAway) {
                        bestAway = away;
                        best = at;
                    }
                }
            }
        }
        return best;
    }

    private static Label label(Raster of, int at, double heavy) {
        float[] z = of.z();
        double east = z[at + 1] - z[at];
        double south = z[at + of.across()] - z[at];
        double turn = Math.toDegrees(Math.atan2(-east, south));
        turn = turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn;
        double height = Math.floor(Math.max(z[at], z[at + 1]) / heavy) * heavy;
        return new Label(
                of.base().east((of.left() + at % of.across()) * STEP),
                of.base().north((of.top() + at / of.across()) * STEP),
                height,
                Double.isNaN(turn) ? 0 : turn);
    }
}
