package lanewright.ground;

import java.util.Arrays;

/**
 * Finds shots that stand for the same point. In the order of the survey, each shot joins the first
 * earlier one that stands for itself and lies within the tolerance; if there is none it stands for
 * itself. So any two that are left lie further apart than the tolerance.
 */
final class SamePoints {

    /** Cells are this many tolerances wide: wide enough that most shots need one cell only. */
    private static final double TOLERANCES_PER_CELL = 16;

    private final double[] x;
    private final double[] y;
    private final double tolerance;
    private final double perCell;
    private final int[] head;
    private final int[] next;
    private final int mask;

    private SamePoints(double[] x, double[] y, double tolerance) {
        this.x = x;
        this.y = y;
        this.tolerance = tolerance;
        this.perCell = 1 / (tolerance * TOLERANCES_PER_CELL);
        this.mask = Integer.highestOneBit(Math.max(8, x.length)) * 2 - 1;
        this.head = new int[mask + 1];
        this.next = new int[x.length];
    }

    /** For each point the one that stands for it. */
    static int[] merge(double[] x, double[] y, double tolerance) {
        return new SamePoints(x, y, tolerance).merge();
    }

    private int[] merge() {
        Arrays.fill(head, -1);
        int[] first = new int[x.length];
        for (int i = 0; i < x.length; i++) {
            long column = cell(x[i]);
            long row = cell(y[i]);
            int found = find(i);
            first[i] = found < 0 ? i : found;
            if (found < 0) {
                int at = hash(column, row);
                next[i] = head[at];
                head[at] = i;
            }
        }
        return first;
    }

    private int find(int i) {
        long left = cell(x[i] - tolerance);
        long right = cell(x[i] + tolerance);
        long bottom = cell(y[i] - tolerance);
        long top = cell(y[i] + tolerance);
        int found = -1;
        for (long row = bottom; row <= top; row++) {
            for (long column = left; column <= right; column++) {
                for (int j = head[hash(column, row)]; j >= 0; j = next[j]) {
                    double dx = x[i] - x[j];
                    double dy = y[i] - y[j];
                    if (dx * dx + dy * dy <= tolerance * tolerance && (found < 0 || j < found)) {
                        found = j;
                    }
                }
            }
        }
        return found;
    }

    private long cell(double at) {
        return (long) Math.floor(at * perCell);
    }

    private int hash(long column, long row) {
        long mixed = (column * 0x9E3779B97F4A7C15L + row) * 0xD1B54A32D192ED03L;
        return (int) (mixed >>> 40) & mask;
    }

    /** Numbers of the points that stand for themselves. */
    static int[] survivors(int[] first) {
        int count = 0;
        int[] survivors = new int[first.length];
        for (int i = 0; i < first.length; i++) {
            if (first[i] == i) {
                survivors[count++] = i;
            }
        }
        return Arrays.copyOf(survivors, count);
    }
}
