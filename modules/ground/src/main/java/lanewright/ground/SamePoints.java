package lanewright.ground;

import java.util.Arrays;

/** Finds shots that stand for the same point. */
final class SamePoints {

    private SamePoints() {}

    /** For each point the first one with the very same coordinates, itself if it is the first. */
    static int[] exact(double[] x, double[] y) {
        int n = x.length;
        int[] first = new int[n];
        int size = Integer.highestOneBit(Math.max(16, n)) * 4;
        int[] table = new int[size];
        Arrays.fill(table, -1);
        for (int i = 0; i < n; i++) {
            int at = hash(x[i], y[i]) & (size - 1);
            while (table[at] >= 0 && (x[table[at]] != x[i] || y[table[at]] != y[i])) {
                at = (at + 1) & (size - 1);
            }
            if (table[at] < 0) {
                table[at] = i;
            }
            first[i] = table[at];
        }
        return first;
    }

    private static int hash(double x, double y) {
        // Minus zero equals zero, so it must hash like it.
        long bits = Double.doubleToLongBits(x + 0.0) * 31 + Double.doubleToLongBits(y + 0.0);
        bits *= 0x9E3779B97F4A7C15L;
        return (int) (bits >>> 32);
    }

    /** Numbers of the points that stand for themselves. */
    static int[] survivors(int[] merged) {
        int count = 0;
        for (int i = 0; i < merged.length; i++) {
            if (merged[i] == i) {
                count++;
            }
        }
        int[] survivors = new int[count];
        int at = 0;
        for (int i = 0; i < merged.length; i++) {
            if (merged[i] == i) {
                survivors[at++] = i;
            }
        }
        return survivors;
    }

    /** Mean height of all shots that each survivor stands for. */
    static void meanHeights(double[] z, int[] merged, int[] number, double[] heights) {
        int[] shots = new int[heights.length];
        for (int i = 0; i < z.length; i++) {
            int to = number[merged[i]];
            heights[to] += z[i];
            shots[to]++;
        }
        for (int i = 0; i < heights.length; i++) {
            if (shots[i] > 1) {
                heights[i] /= shots[i];
            }
        }
    }

    /**
     * Pairs of vertices nearer to each other than the tolerance. Nearest neighbours always share a
     * side of a Delaunay triangle, so looking at the sides finds them.
     */
    static int[] close(Triangulation made, double tolerance) {
        int[] found = new int[0];
        for (int s = 0; s < made.corner.length; s++) {
            int t = s / 3;
            int a = made.corner[3 * t + Mesh.next(s % 3)];
            int b = made.corner[3 * t + Mesh.last(s % 3)];
            double dx = made.x[a] - made.x[b];
            double dy = made.y[a] - made.y[b];
            if (dx * dx + dy * dy < tolerance * tolerance) {
                found = Arrays.copyOf(found, found.length + 2);
                found[found.length - 2] = a;
                found[found.length - 1] = b;
            }
        }
        return found;
    }

    /** Lets the lower-numbered shot of each close pair stand for the other. */
    static void join(int[] merged, int[] survivors, int[] renumbered, int[] close) {
        int[] survey = new int[renumbered.length];
        Arrays.fill(survey, -1);
        for (int i = 0; i < survivors.length; i++) {
            survey[renumbered[i]] = survivors[i];
        }
        for (int i = 0; i < close.length; i += 2) {
            int a = survey[close[i]];
            int b = survey[close[i + 1]];
            if (a >= 0 && b >= 0) {
                int low = Math.min(root(merged, a), root(merged, b));
                int high = Math.max(root(merged, a), root(merged, b));
                merged[high] = low;
            }
        }
        for (int i = 0; i < merged.length; i++) {
            merged[i] = root(merged, i);
        }
    }

    private static int root(int[] merged, int i) {
        int at = i;
        while (merged[at] != at) {
            at = merged[at];
        }
        return at;
    }
}
