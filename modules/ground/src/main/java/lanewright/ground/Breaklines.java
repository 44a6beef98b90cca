package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Makes breaklines fit for triangulating: a shot nearly on a line becomes part of it, and where two
 * lines cross both get a vertex. Without this a shot two micrometres off a line bends it, and of
 * two lines that cross one is lost.
 */
final class Breaklines {

    /**
     * Heights of two lines at their crossing may differ by this before it is said, m. Our choice: 2
     * in.
     */
    static final double CROSSING_STEP = 0.05;

    /** Cutting makes new neighbours; this many rounds settle any real survey. */
    private static final int ROUNDS = 12;

    private final Points points;
    private final double tolerance;
    private final List<Finding> findings;
    private Set<Long> segments = new LinkedHashSet<>();

    Breaklines(Points points, double tolerance, List<Finding> findings) {
        this.points = points;
        this.tolerance = tolerance;
        this.findings = findings;
    }

    /** Adds a chain of point numbers. */
    void add(int[] chain) {
        for (int i = 1; i < chain.length; i++) {
            put(segments, chain[i - 1], chain[i]);
        }
    }

    /** Pairs of point numbers, none crossing and none passing a point within the tolerance. */
    int[] settle() {
        boolean changed = !segments.isEmpty();
        for (int round = 0; changed && round < ROUNDS; round++) {
            points.index();
            boolean moved = throughNearPoints();
            changed = atCrossings() || moved;
        }
        int[] pairs = new int[2 * segments.size()];
        int at = 0;
        for (long segment : segments) {
            pairs[at++] = low(segment);
            pairs[at++] = high(segment);
        }
        return pairs;
    }

    private boolean throughNearPoints() {
        Set<Long> cut = new LinkedHashSet<>();
        for (long segment : segments) {
            int a = low(segment);
            int b = high(segment);
            List<double[]> on = points.near(a, b, tolerance);
            on.sort((p, q) -> Double.compare(p[0], q[0]));
            int from = a;
            for (double[] point : on) {
                put(cut, from, (int) point[1]);
                from = (int) point[1];
            }
            put(cut, from, b);
        }
        boolean changed = !cut.equals(segments);
        segments = cut;
        return changed;
    }

    private boolean atCrossings() {
        long[] all = segments.stream().mapToLong(Long::longValue).toArray();
        STRtree tree = new STRtree();
        for (int i = 0; i < all.length; i++) {
            tree.insert(envelope(all[i]), i);
        }
        List<List<double[]>> cuts = new ArrayList<>(Collections.nCopies(all.length, null));
        boolean changed = false;
        for (int i = 0; i < all.length; i++) {
            @SuppressWarnings("unchecked") // the tree holds what was put in above
            List<Integer> near = tree.query(envelope(all[i]));
            Collections.sort(near);
            for (int j : near) {
                if (j > i && cross(all[i], all[j])) {
                    int vertex = crossing(all[i], all[j]);
                    note(cuts, i, all[i], vertex);
                    note(cuts, j, all[j], vertex);
                    changed = true;
                }
            }
        }
        if (changed) {
            segments = split(all, cuts);
        }
        return changed;
    }

    private void note(List<List<double[]>> cuts, int i, long segment, int vertex) {
        List<double[]> list = cuts.get(i);
        if (list == null) {
            list = new ArrayList<>();
            cuts.set(i, list);
        }
        double dx = points.x(vertex) - points.x(low(segment));
        double dy = points.y(vertex) - points.y(low(segment));
        list.add(new double[] {dx * dx + dy * dy, vertex});
    }

    private static Set<Long> split(long[] all, List<List<double[]>> cuts) {
        Set<Long> made = new LinkedHashSet<>();
        for (int i = 0; i < all.length; i++) {
            int from = low(all[i]);
            List<double[]> list = cuts.get(i);
            if (list != null) {
                list.sort((p, q) -> Double.compare(p[0], q[0]));
                for (double[] cut : list) {
                    put(made, from, (int) cut[1]);
                    from = (int) cut[1];
                }
            }
            put(made, from, high(all[i]));
        }
        return made;
    }

    private boolean cross(long one, long other) {
        int a = low(one);
        int b = high(one);
        int c = low(other);
        int d = high(other);
        if (a == c || a == d || b == c || b == d) {
            return false;
        }
        return points.side(a, b, c) * Math.signum(points.side(a, b, d)) < 0
                && points.side(c, d, a) * Math.signum(points.side(c, d, b)) < 0;
    }

    private int crossing(long one, long other) {
        int a = low(one);
        int b = high(one);
        int c = low(other);
        int d = high(other);
        double sideC = points.side(a, b, c);
        double sideD = points.side(a, b, d);
        double part = sideC / (sideC - sideD);
        double sideA = points.side(c, d, a);
        double sideB = points.side(c, d, b);
        double partOne = sideA / (sideA - sideB);
        double x = points.x(c) + part * (points.x(d) - points.x(c));
        double y = points.y(c) + part * (points.y(d) - points.y(c));
        double height = points.z(c) + part * (points.z(d) - points.z(c));
        double heightOne = points.z(a) + partOne * (points.z(b) - points.z(a));
        double step = Math.abs(height - heightOne);
        if (step > CROSSING_STEP) {
            findings.add(
                    new Finding(
                            "breaklines-cross",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.map(x, y),
                            Saying.of(
                                    "Two breaklines cross here at heights {} apart; halfway between is used",
                                    Quantity.height(step)),
                            Quantity.height(step),
                            Quantity.height(CROSSING_STEP),
                            "rule of this program",
                            Saying.plain(
                                    "Check both lines; shoot the crossing, or end one line before it")));
        }
        return points.addOrFind(x, y, (height + heightOne) / 2, tolerance);
    }

    private Envelope envelope(long segment) {
        return new Envelope(
                points.x(low(segment)), points.x(high(segment)),
                points.y(low(segment)), points.y(high(segment)));
    }

    private static void put(Set<Long> segments, int a, int b) {
        if (a != b) {
            segments.add(((long) Math.min(a, b) << 32) | Math.max(a, b));
        }
    }

    private static int low(long segment) {
        return (int) (segment >> 32);
    }

    private static int high(long segment) {
        return (int) segment;
    }

    /** Points of a survey while breaklines are being settled: they may grow in number. */
    static final class Points {
        private double[] x;
        private double[] y;
        private double[] z;
        private int count;
        private int[] head = new int[0];
        private int[] next = new int[0];
        private double left;
        private double bottom;
        private double cell;
        private int columns;
        private int rows;

        Points(double[] x, double[] y, double[] z) {
            this.x = x;
            this.y = y;
            this.z = z;
            this.count = x.length;
        }

        double x(int i) {
            return x[i];
        }

        double y(int i) {
            return y[i];
        }

        double z(int i) {
            return z[i];
        }

        double[] xs() {
            return Arrays.copyOf(x, count);
        }

        double[] ys() {
            return Arrays.copyOf(y, count);
        }

        double[] zs() {
            return Arrays.copyOf(z, count);
        }

        int size() {
            return count;
        }

        double side(int a, int b, int v) {
            return Side.of(x[a], y[a], x[b], y[b], x[v], y[v]);
        }

        int add(double px, double py, double pz) {
            if (count == x.length) {
                x = Arrays.copyOf(x, count + count / 8 + 64);
                y = Arrays.copyOf(y, x.length);
                z = Arrays.copyOf(z, x.length);
            }
            x[count] = px;
            y[count] = py;
            z[count] = pz;
            return count++;
        }

        /**
         * The point already there within the tolerance, or a new one. Points added since indexing
         * are looked at too.
         */
        int addOrFind(double px, double py, double pz, double tolerance) {
            int column = column(px);
            int row = row(py);
            for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
                for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
                    for (int i = head[r * columns + c]; i >= 0; i = next[i]) {
                        if (near(i, px, py, tolerance)) {
                            return i;
                        }
                    }
                }
            }
            for (int i = next.length; i < count; i++) {
                if (near(i, px, py, tolerance)) {
                    return i;
                }
            }
            return add(px, py, pz);
        }

        private boolean near(int i, double px, double py, double tolerance) {
            double dx = x[i] - px;
            double dy = y[i] - py;
            return dx * dx + dy * dy <= tolerance * tolerance;
        }

        void index() {
            double right = Double.NEGATIVE_INFINITY;
            double top = Double.NEGATIVE_INFINITY;
            left = Double.POSITIVE_INFINITY;
            bottom = Double.POSITIVE_INFINITY;
            for (int i = 0; i < count; i++) {
                left = Math.min(left, x[i]);
                right = Math.max(right, x[i]);
                bottom = Math.min(bottom, y[i]);
                top = Math.max(top, y[i]);
            }
            double wide = Math.max(right - left, 1e-3);
            double high = Math.max(top - bottom, 1e-3);
            cell = Math.max(Math.sqrt(wide * high / count), Math.max(wide, high) / 4000);
            columns = (int) (wide / cell) + 1;
            rows = (int) (high / cell) + 1;
            head = new int[columns * rows];
            next = new int[count];
            Arrays.fill(head, -1);
            for (int i = count - 1; i >= 0; i--) {
                int at = row(y[i]) * columns + column(x[i]);
                next[i] = head[at];
                head[at] = i;
            }
        }

        private int column(double px) {
            return Math.max(0, Math.min(columns - 1, (int) ((px - left) / cell)));
        }

        private int row(double py) {
            return Math.max(0, Math.min(rows - 1, (int) ((py - bottom) / cell)));
        }

        /**
         * Points between the ends of a segment and within the tolerance of it: part of the way, and
         * number.
         */
        List<double[]> near(int a, int b, double tolerance) {
            List<double[]> found = new ArrayList<>();
            double dx = x[b] - x[a];
            double dy = y[b] - y[a];
            double length = Math.sqrt(dx * dx + dy * dy);
            int steps = (int) (length / cell) + 1;
            Set<Integer> seen = new LinkedHashSet<>();
            for (int s = 0; s <= steps; s++) {
                int column = column(x[a] + dx * s / steps);
                int row = row(y[a] + dy * s / steps);
                for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
                    for (int c = Math.max(0, column - 1);
                            c <= Math.min(columns - 1, column + 1);
                            c++) {
                        seen.add(r * columns + c);
                    }
                }
            }
            for (int at : seen) {
                for (int i = head[at]; i >= 0; i = next[i]) {
                    double along = ((x[i] - x[a]) * dx + (y[i] - y[a]) * dy) / (length * length);
                    double off = Math.abs((x[i] - x[a]) * dy - (y[i] - y[a]) * dx) / length;
                    if (i != a && i != b && along > 0 && along < 1 && off <= tolerance) {
                        found.add(new double[] {along, i});
                    }
                }
            }
            return found;
        }
    }
}
