package lanewright.survey.read;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Points that stand at one place. Of many at one place each is told once, beside one that stands
 * for the place, so that a heap of points costs no more than any others.
 */
final class Twins {

    /** A cell with more points than this is searched by finer squares. */
    private static final int CROWDED = 64;

    private final Cells cells;
    private final double distance;
    private long[] pairs = new long[16];
    private int count;

    private Twins(Cells cells, double distance) {
        this.cells = cells;
        this.distance = distance;
    }

    /**
     * Pairs of points that lie closer to each other than {@code distance}, m, by the number of the
     * lower one and then of the other.
     */
    static long[] of(Cells cells, double distance) {
        var twins = new Twins(cells, distance);
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                twins.cell(column, row);
            }
        }
        long[] found = Arrays.copyOf(twins.pairs, twins.count);
        Arrays.sort(found);
        return found;
    }

    /** The lower-numbered point of a pair. */
    static int first(long pair) {
        return (int) (pair >> 32);
    }

    /** The other point of a pair. */
    static int second(long pair) {
        return (int) pair;
    }

    private void cell(int column, int row) {
        int from = cells.from(column, row);
        int to = cells.to(column, row);
        if (to - from > CROWDED) {
            crowded(from, to);
        } else {
            for (int k = from + 1; k < to; k++) {
                firstNear(k, from, k);
            }
        }
        for (int k = from; k < to; k++) {
            ahead(k, column, row);
        }
    }

    /** Looks into the neighbouring cells that were not visited yet, if they are near enough. */
    private void ahead(int k, int column, int row) {
        double x = cells.x(k);
        double y = cells.y(k);
        boolean east = cells.column(x + distance) > column;
        boolean west = cells.column(x - distance) < column;
        boolean north = cells.row(y + distance) > row;
        if (east) {
            whole(k, column + 1, row);
        }
        if (north) {
            whole(k, column, row + 1);
            if (east) {
                whole(k, column + 1, row + 1);
            }
            if (west) {
                whole(k, column - 1, row + 1);
            }
        }
    }

    private void whole(int k, int column, int row) {
        firstNear(k, cells.from(column, row), cells.to(column, row));
    }

    private void firstNear(int k, int from, int to) {
        for (int other = from; other < to; other++) {
            if (near(k, other)) {
                add(k, other);
                return;
            }
        }
    }

    private boolean near(int k, int other) {
        double dx = cells.x(k) - cells.x(other);
        double dy = cells.y(k) - cells.y(other);
        return dx * dx + dy * dy < distance * distance;
    }

    /**
     * Sorts points into squares so small that any two in one square are twins; only squares two
     * steps away can hold another.
     */
    private void crowded(int from, int to) {
        double square = 0.7 * distance;
        Map<Long, Integer> standing = new HashMap<>();
        for (int k = from; k < to; k++) {
            long column = (long) Math.floor((cells.x(k) - cells.x(from)) / square);
            long row = (long) Math.floor((cells.y(k) - cells.y(from)) / square);
            boolean found = false;
            for (int step = 0; step < 25 && !found; step++) {
                Integer other = standing.get(key(column + step % 5 - 2, row + step / 5 - 2));
                if (other != null && near(k, other)) {
                    add(k, other);
                    found = true;
                }
            }
            if (!found) {
                standing.put(key(column, row), k);
            }
        }
    }

    private static long key(long column, long row) {
        return column * 0x1_0000_0001L + row;
    }

    private void add(int k, int other) {
        int a = cells.point(k);
        int b = cells.point(other);
        if (count == pairs.length) {
            pairs = Arrays.copyOf(pairs, 2 * count);
        }
        pairs[count++] = ((long) Math.min(a, b) << 32) | Math.max(a, b);
    }
}
