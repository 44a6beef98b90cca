package lanewright.sheets.paint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanewright.sheets.drawing.Outline;

/**
 * Cuts the lines of a pattern where they leave an area. For a painter whose own clipping is slow:
 * some paint the whole of what they paint on once more for each area that is not a box.
 */
public final class Trim {

    /**
     * Directions closer than this are one, so that the rounding of a pattern's lines does not
     * count.
     */
    private static final double SAME_WAY = 1e-6;

    private final double[] x0;
    private final double[] y0;
    private final double[] x1;
    private final double[] y1;
    private final Map<Long, Strips> strips = new HashMap<>();
    private double[] cuts = new double[8];

    private Trim(List<Outline> rings) {
        int edges = rings.stream().mapToInt(Outline::size).sum();
        x0 = new double[edges];
        y0 = new double[edges];
        x1 = new double[edges];
        y1 = new double[edges];
        int n = 0;
        for (Outline ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                int next = (i + 1) % ring.size();
                x0[n] = ring.x(i);
                y0[n] = ring.y(i);
                x1[n] = ring.x(next);
                y1[n] = ring.y(next);
                n++;
            }
        }
    }

    /**
     * The parts of lines that lie between rings, even-odd.
     *
     * @param rings closed lines; one that is open is closed by a straight line
     * @param lines what is cut, open or closed; quick if they run in few directions
     * @return straight pieces
     */
    public static List<Outline> within(List<Outline> rings, List<Outline> lines) {
        var trim = new Trim(rings);
        var kept = new ArrayList<Outline>();
        for (Outline line : lines) {
            int sides = line.isClosed() ? line.size() : line.size() - 1;
            for (int i = 0; i < sides; i++) {
                int next = (i + 1) % line.size();
                trim.side(line.x(i), line.y(i), line.x(next), line.y(next), kept);
            }
        }
        return kept;
    }

    /** Cuts one straight side where the endless line that it lies on crosses an edge. */
    private void side(double ax, double ay, double bx, double by, List<Outline> kept) {
        double dx = bx - ax;
        double dy = by - ay;
        Strips near = along(dx, dy);
        int strip = near.at(ax + dx / 2, ay + dy / 2);
        int found = 0;
        boolean inside = false;
        for (int n = near.first[strip]; n < near.first[strip + 1]; n++) {
            int i = near.edges[n];
            double fromA = dx * (y0[i] - ay) - dy * (x0[i] - ax);
            double toB = dx * (y1[i] - ay) - dy * (x1[i] - ax);
            // A corner on the line belongs to the edges on one side of it, so counts even or odd.
            if (fromA < 0 == toB < 0) {
                continue;
            }
            double k = fromA / (fromA - toB);
            double cx = x0[i] + k * (x1[i] - x0[i]);
            double cy = y0[i] + k * (y1[i] - y0[i]);
            double at = Math.abs(dx) > Math.abs(dy) ? (cx - ax) / dx : (cy - ay) / dy;
            if (at <= 0) {
                inside = !inside;
            } else if (at < 1) {
                if (found == cuts.length) {
                    cuts = Arrays.copyOf(cuts, 2 * found);
                }
                cuts[found++] = at;
            }
        }
        Arrays.sort(cuts, 0, found);
        double from = 0;
        for (int i = 0; i <= found; i++) {
            double to = i < found ? cuts[i] : 1;
            if (inside && to > from) {
                kept.add(Outline.open(ax + from * dx, ay + from * dy, ax + to * dx, ay + to * dy));
            }
            inside = !inside;
            from = to;
        }
    }

    private Strips along(double dx, double dy) {
        double turn = StrictMath.atan2(dy, dx);
        long way = Math.round((turn < 0 ? turn + Math.PI : turn) / SAME_WAY);
        return strips.computeIfAbsent(way, none -> new Strips(dx, dy));
    }

    /** The edges by strips that run one way: a line of that way meets only those of its strip. */
    private final class Strips {

        /** Strips are no thinner than this, pt. */
        private static final double THIN = 1;

        /** Nor more than this. */
        private static final int MOST = 1024;

        /**
         * An edge counts for strips that it comes this near, pt: more than {@link #SAME_WAY} does.
         */
        private static final double NEAR = 0.05;

        private final double acrossX;
        private final double acrossY;
        private final double least;
        private final double wide;
        private final int[] first;
        private final int[] edges;

        Strips(double dx, double dy) {
            double far = Math.hypot(dx, dy);
            acrossX = -dy / far;
            acrossY = dx / far;
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < x0.length; i++) {
                low = Math.min(low, across(x0[i], y0[i]));
                high = Math.max(high, across(x0[i], y0[i]));
            }
            least = low;
            wide = Math.max(THIN, (high - low) / MOST);
            int count = strip(high) + 1;
            first = new int[count + 1];
            for (int i = 0; i < x0.length; i++) {
                for (int k = from(i); k <= to(i); k++) {
                    first[k + 1]++;
                }
            }
            for (int k = 0; k < count; k++) {
                first[k + 1] += first[k];
            }
            edges = new int[first[count]];
            int[] next = first.clone();
            for (int i = 0; i < x0.length; i++) {
                for (int k = from(i); k <= to(i); k++) {
                    edges[next[k]++] = i;
                }
            }
        }

        private double across(double x, double y) {
            return acrossX * x + acrossY * y;
        }

        private int strip(double across) {
            return (int) Math.max(0, (across - least) / wide);
        }

        private int from(int i) {
            return strip(Math.min(across(x0[i], y0[i]), across(x1[i], y1[i])) - NEAR);
        }

        private int to(int i) {
            double most = Math.max(across(x0[i], y0[i]), across(x1[i], y1[i])) + NEAR;
            return Math.min(first.length - 2, strip(most));
        }

        /** The strip of a place; beyond the area the one at its edge, which will do. */
        int at(double x, double y) {
            return Math.min(first.length - 2, strip(across(x, y)));
        }
    }
}
