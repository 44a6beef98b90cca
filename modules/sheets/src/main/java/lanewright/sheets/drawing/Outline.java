package lanewright.sheets.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A line through points of the page, open or closed. Points (1/72 in), x right, y down. */
public final class Outline {

    private final double[] xs;
    private final double[] ys;
    private final boolean closed;

    private Outline(double[] xs, double[] ys, boolean closed) {
        for (int i = 0; i < xs.length; i++) {
            if (!Double.isFinite(xs[i]) || !Double.isFinite(ys[i])) {
                throw new IllegalArgumentException("outline point " + i + " is not finite");
            }
        }
        this.xs = xs;
        this.ys = ys;
        this.closed = closed;
    }

    /** An open line; {@code xy} holds x and y in turn. */
    public static Outline open(double... xy) {
        return of(xy, false);
    }

    /** A closed line; {@code xy} holds x and y in turn, the first point not repeated. */
    public static Outline closed(double... xy) {
        return of(xy, true);
    }

    private static Outline of(double[] xy, boolean closed) {
        if (xy.length < 4 || (xy.length & 1) != 0) {
            throw new IllegalArgumentException(
                    "an outline needs pairs, two at least, had " + xy.length + " numbers");
        }
        double[] xs = new double[xy.length / 2];
        double[] ys = new double[xy.length / 2];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = xy[2 * i];
            ys[i] = xy[2 * i + 1];
        }
        return new Outline(xs, ys, closed);
    }

    /** The four sides of a box. */
    public static Outline box(double x, double y, double width, double height) {
        return closed(x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** A circle of so many chords. */
    public static Outline circle(double x, double y, double radius, int chords) {
        double[] xs = new double[chords];
        double[] ys = new double[chords];
        for (int i = 0; i < chords; i++) {
            double turn = 2 * Math.PI * i / chords;
            xs[i] = x + radius * StrictMath.cos(turn);
            ys[i] = y + radius * StrictMath.sin(turn);
        }
        return new Outline(xs, ys, true);
    }

    /** Number of points. */
    public int size() {
        return xs.length;
    }

    /** x of point {@code i}, pt from the left. */
    public double x(int i) {
        return xs[i];
    }

    /** y of point {@code i}, pt from the top. */
    public double y(int i) {
        return ys[i];
    }

    /** True if the last point joins the first. */
    public boolean isClosed() {
        return closed;
    }

    /** The box whose sides it is; null if it is another line. */
    public @Nullable Box asBox() {
        boolean box =
                closed
                        && xs.length == 4
                        && xs[0] == xs[3]
                        && xs[1] == xs[2]
                        && ys[0] == ys[1]
                        && ys[2] == ys[3]
                        && xs[1] >= xs[0]
                        && ys[2] >= ys[1];
        return box ? new Box(xs[0], ys[0], xs[1] - xs[0], ys[2] - ys[1]) : null;
    }

    /** The same line moved. */
    public Outline moved(double dx, double dy) {
        double[] x = xs.clone();
        double[] y = ys.clone();
        for (int i = 0; i < x.length; i++) {
            x[i] += dx;
            y[i] += dy;
        }
        return new Outline(x, y, closed);
    }

    /** Collects points one at a time. */
    public static final class Builder {
        private final List<Double> xy = new ArrayList<>();

        /** Adds a point. */
        public Builder to(double x, double y) {
            xy.add(x);
            xy.add(y);
            return this;
        }

        /** Points so far. */
        public int size() {
            return xy.size() / 2;
        }

        /** The open line through the points; two at least. */
        public Outline open() {
            return Outline.open(flat());
        }

        /** The closed line through the points; two at least. */
        public Outline closed() {
            return Outline.closed(flat());
        }

        private double[] flat() {
            return xy.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
