package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Lines of equal height, exact on the triangles, higher ground on their left. A vertex that lies
 * exactly at the height of a contour counts as lying above it, so every contour is one simple line,
 * closed or from rim to rim; a flat at that height is passed along the side where ground falls, and
 * a hilltop that only just reaches it makes none.
 */
public final class Contours {

    /** More levels than this make no picture that anyone can read. */
    private static final int MOST_LEVELS = 2000;

    /** Levels traced from one look at all triangles. */
    private static final int AT_ONCE = 32;

    private final Mesh mesh;
    private final Progress progress;
    private final List<Contour> contours = new ArrayList<>();
    private double[] x = new double[256];
    private double[] y = new double[256];
    private int size;

    private Contours(Mesh mesh, Progress progress) {
        this.mesh = mesh;
        this.progress = progress;
    }

    /**
     * Contours at every multiple of an interval.
     *
     * @param ground the ground
     * @param interval between heights, m, over zero
     * @param progress told of the work, and asked whether to go on
     * @throws IllegalArgumentException if there would be over 2,000 heights
     */
    public static List<Contour> of(Ground ground, double interval, Progress progress) {
        if (!(interval > 0)) {
            throw new IllegalArgumentException("interval must be over 0 m, was " + interval);
        }
        return new Contours(ground.mesh(), progress).trace(interval);
    }

    private List<Contour> trace(double interval) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < 3 * mesh.solid; s++) {
            low = Math.min(low, mesh.z[mesh.corner[s]]);
            high = Math.max(high, mesh.z[mesh.corner[s]]);
        }
        if (mesh.solid == 0) {
            return List.of();
        }
        long first = (long) Math.ceil(low / interval);
        long last = (long) Math.floor(high / interval);
        if (last - first > MOST_LEVELS) {
            throw new IllegalArgumentException(
                    "over " + MOST_LEVELS + " contours at an interval of " + interval + " m");
        }
        for (long from = first; from <= last; from += AT_ONCE) {
            progress.report(
                    (double) (from - first) / Math.max(1, last - first), "tracing contours");
            progress.check();
            levels(from, (int) Math.min(AT_ONCE, last - from + 1), interval);
        }
        return contours;
    }

    /**
     * Traces some levels, each from the list of triangles that can hold it: going through all
     * triangles for every level would take most of the time.
     */
    private void levels(long from, int count, double interval) {
        int[] begin = new int[count + 1];
        int[] triangles = new int[0];
        for (int pass = 0; pass < 2; pass++) {
            for (int t = 0; t < mesh.solid; t++) {
                double a = mesh.z[mesh.corner[3 * t]];
                double b = mesh.z[mesh.corner[3 * t + 1]];
                double c = mesh.z[mesh.corner[3 * t + 2]];
                // A level more at both ends than the exact test below will find, for rounding.
                double low = Math.floor(Math.min(a, Math.min(b, c)) / interval) - from;
                double high = Math.floor(Math.max(a, Math.max(b, c)) / interval) + 1 - from;
                for (int k = (int) Math.max(0, low); k <= Math.min(count - 1, high); k++) {
                    if (pass == 0) {
                        begin[k + 1]++;
                    } else {
                        triangles[begin[k]++] = t;
                    }
                }
            }
            if (pass == 0) {
                for (int k = 0; k < count; k++) {
                    begin[k + 1] += begin[k];
                }
                triangles = new int[begin[count]];
            }
        }
        // Now begin[k] is where level k ends.
        BitSet seen = new BitSet(mesh.solid);
        for (int k = 0; k < count; k++) {
            double height = (from + k) * interval;
            seen.clear();
            for (int i = k == 0 ? 0 : begin[k - 1]; i < begin[k]; i++) {
                int t = triangles[i];
                if (!seen.get(t) && out(t, height) >= 0) {
                    follow(t, height, seen);
                }
            }
        }
    }

    private boolean above(int t, int k, double height) {
        return mesh.z[mesh.corner[3 * t + k]] >= height;
    }

    /**
     * The side by which a contour leaves a triangle with the higher ground on its left; -1 without
     * one.
     */
    private int out(int t, double height) {
        boolean a = above(t, 0, height);
        boolean b = above(t, 1, height);
        boolean c = above(t, 2, height);
        if (!b && c) {
            return 0;
        }
        if (!c && a) {
            return 1;
        }
        return !a && b ? 2 : -1;
    }

    /** The side by which it comes in. */
    private int in(int t, double height) {
        boolean a = above(t, 0, height);
        boolean b = above(t, 1, height);
        boolean c = above(t, 2, height);
        if (b && !c) {
            return 0;
        }
        if (c && !a) {
            return 1;
        }
        return 2;
    }

    private void follow(int start, double height, BitSet seen) {
        int first = start;
        for (int t = start; ; ) {
            int before = mesh.neighbour[3 * t + in(t, height)];
            if (!mesh.isSolid(before)) {
                first = t;
                break;
            }
            if (before == start) {
                first = start;
                break;
            }
            t = before;
        }
        size = 0;
        add(first, in(first, height), height);
        boolean closed = false;
        for (int t = first; ; ) {
            seen.set(t);
            int side = out(t, height);
            int next = mesh.neighbour[3 * t + side];
            if (next == first) {
                closed = true;
                break;
            }
            add(t, side, height);
            if (!mesh.isSolid(next)) {
                break;
            }
            t = next;
        }
        if (closed && size > 1 && x[size - 1] == x[0] && y[size - 1] == y[0]) {
            size--;
        }
        if (size > 1) {
            contours.add(
                    new Contour(height, Arrays.copyOf(x, size), Arrays.copyOf(y, size), closed));
        }
    }

    private void add(int t, int k, double height) {
        int p = mesh.corner[3 * t + Mesh.next(k)];
        int q = mesh.corner[3 * t + Mesh.last(k)];
        int a = Math.min(p, q);
        int b = Math.max(p, q);
        double part = (height - mesh.z[a]) / (mesh.z[b] - mesh.z[a]);
        double px = mesh.x[a] + part * (mesh.x[b] - mesh.x[a]);
        double py = mesh.y[a] + part * (mesh.y[b] - mesh.y[a]);
        if (size > 0 && x[size - 1] == px && y[size - 1] == py) {
            return;
        }
        if (size == x.length) {
            x = Arrays.copyOf(x, 2 * size);
            y = Arrays.copyOf(y, 2 * size);
        }
        x[size] = px;
        y[size] = py;
        size++;
    }
}
