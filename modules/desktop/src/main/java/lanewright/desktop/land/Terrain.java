package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
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
     * @param columns of its pixels
     * @param rows of its pixels
     * @param pixels ARGB, row by row
     * @param step height between contours, in shown units
     * @param labels heights to write along the heavy contours
     */
    @SuppressWarnings("ArrayRecordComponent") // made once, shown once, never changed
    record Painted(
            View view, int columns, int rows, int[] pixels, double step, List<Label> labels) {}

    /** A height on a contour: where, and how the contour runs there, degrees clockwise. */
    record Label(double x, double y, double height, double turn) {}

    private record Order(Ground ground, View view, UnitSystem units, Theme theme, long number) {}

    private final Consumer<Painted> ready;
    private final Object lock = new Object();
    private final AtomicLong newest = new AtomicLong();
    private final Thread thread;
    private @Nullable Order order;
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
            order = new Order(ground, view, units, theme, newest.incrementAndGet());
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
            Painted painted = paint(next);
            if (painted != null) {
                ready.accept(painted);
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
    }

    private @Nullable Painted paint(Order next) {
        View view = next.view();
        int columns = (int) Math.max(2, view.width());
        int rows = (int) Math.max(2, view.height());
        int across = columns / STEP + 2;
        int down = rows / STEP + 2;
        double metre = next.units() == UnitSystem.US ? 0.3048 : 1;
        float[] z = new float[across * down];
        for (int row = 0; row < down; row++) {
            if (newest.get() != next.number()) {
                return null;
            }
            double north = view.north(row * STEP);
            for (int column = 0; column < across; column++) {
                z[row * across + column] =
                        (float) (next.ground().heightAt(view.east(column * STEP), north) / metre);
            }
        }
        double perStep = STEP / view.scale() / metre;
        double step = step(z, across, down, next.units());
        int[] pixels = new int[columns * rows];
        var paint = new Pixels(next.theme());
        for (int row = 0; row < rows; row++) {
            if (newest.get() != next.number()) {
                return null;
            }
            for (int column = 0; column < columns; column++) {
                pixels[row * columns + column] =
                        pixel(z, across, column, row, perStep, step, paint);
            }
        }
        return new Painted(view, columns, rows, pixels, step, labels(z, across, down, step, view));
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
            float[] z, int across, int px, int py, double perStep, double step, Pixels paint) {
        int column = px / STEP;
        int row = py / STEP;
        double fx = (px % STEP) / (double) STEP;
        double fy = (py % STEP) / (double) STEP;
        int at = row * across + column;
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
    private static final class Pixels {
        private final boolean dark;

        Pixels(Theme theme) {
            dark = theme == Theme.DARK;
        }

        int nothing() {
            return dark ? 0xFF20262A : 0xFFFBFAF6;
        }

        int land(double light, double ink) {
            double shade = Math.max(0, Math.min(1, light));
            double red = dark ? 30 + 34 * shade : 205 + 43 * shade;
            double green = dark ? 35 + 34 * shade : 199 + 46 * shade;
            double blue = dark ? 38 + 32 * shade : 184 + 51 * shade;
            double inkRed = dark ? 178 : 128;
            double inkGreen = dark ? 166 : 114;
            double inkBlue = dark ? 134 : 84;
            return 0xFF000000
                    | mixed(red, inkRed, ink) << 16
                    | mixed(green, inkGreen, ink) << 8
                    | mixed(blue, inkBlue, ink);
        }

        private static int mixed(double under, double over, double part) {
            return (int) Math.round(under * (1 - part) + over * part) & 255;
        }
    }

    /** At most one height in each patch of the board, on the heavy contour nearest its middle. */
    private static List<Label> labels(float[] z, int across, int down, double step, View view) {
        List<Label> labels = new ArrayList<>();
        int patch = 220 / STEP;
        for (int top = patch / 3; top + 3 < down; top += patch) {
            for (int left = patch / 3; left + 3 < across; left += patch) {
                int best = -1;
                double bestAway = Double.POSITIVE_INFINITY;
                for (int row = top; row < Math.min(top + patch / 2, down - 1); row++) {
                    for (int column = left;
                            column < Math.min(left + patch / 2, across - 1);
                            column++) {
                        int at = row * across + column;
                        double low = Math.min(z[at], z[at + 1]);
                        double high = Math.max(z[at], z[at + 1]);
                        double heavy = 5 * step;
                        if (Math.floor(high / heavy) * heavy >= low && high > low) {
                            double away =
                                    Math.hypot(
                                            row - top - patch / 4.0, column - left - patch / 4.0);
                            if (away < bestAway) {
                                bestAway = away;
                                best = at;
                            }
                        }
                    }
                }
                if (best >= 0) {
                    labels.add(label(z, across, best, 5 * step, view));
                }
            }
        }
        return labels;
    }

    private static Label label(float[] z, int across, int at, double heavy, View view) {
        double east = z[at + 1] - z[at];
        double south = z[at + across] - z[at];
        double turn = Math.toDegrees(Math.atan2(-east, south));
        turn = turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn;
        double height = Math.floor(Math.max(z[at], z[at + 1]) / heavy) * heavy;
        return new Label(
                view.east((at % across) * STEP),
                view.north((at / across) * STEP),
                height,
                Double.isNaN(turn) ? 0 : turn);
    }
}
