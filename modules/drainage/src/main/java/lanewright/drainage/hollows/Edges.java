package lanewright.drainage.hollows;

import java.util.Arrays;

/**
 * Saddles: pairs of cells side by side, over which water of one root's land can come to another's.
 * Ordered by height, then by the height of the lower cell, then by the lower and by the higher
 * number of the two cells; no two are equal, so that every choice among them is the only one. So
 * water that comes over a cell from which several ways lead down takes the lowest, and which it
 * takes hangs on numbers only where ground is equally high.
 */
final class Edges {

    /** In place of a cell and a tile: out of the survey. */
    static final int OUTSIDE = -1;

    private double[] heights;
    private double[] lows;
    private int[] cells;
    private int[] others;
    private int[] tiles;
    private int[] roots;
    private int[] otherTiles;
    private int[] otherRoots;
    private int size;

    Edges() {
        this(64);
    }

    private Edges(int room) {
        heights = new double[room];
        lows = new double[room];
        cells = new int[room];
        others = new int[room];
        tiles = new int[room];
        roots = new int[room];
        otherTiles = new int[room];
        otherRoots = new int[room];
    }

    int size() {
        return size;
    }

    /** The higher of the two cells, m. */
    double height(int edge) {
        return heights[edge];
    }

    /** The cell of the lower number. */
    int cell(int edge) {
        return cells[edge];
    }

    /** The cell of the higher number, or {@link #OUTSIDE}. */
    int other(int edge) {
        return others[edge];
    }

    int tile(int edge) {
        return tiles[edge];
    }

    /** Root of the first cell, by its number in the tile. */
    int root(int edge) {
        return roots[edge];
    }

    int otherTile(int edge) {
        return otherTiles[edge];
    }

    int otherRoot(int edge) {
        return otherRoots[edge];
    }

    int add(
            double height,
            double low,
            int cell,
            int other,
            int tile,
            int root,
            int otherTile,
            int otherRoot) {
        if (size == heights.length) {
            grow();
        }
        put(size, height, low, cell, other, tile, root, otherTile, otherRoot);
        return size++;
    }

    private void grow() {
        int more = Math.max(64, 2 * size);
        heights = Arrays.copyOf(heights, more);
        lows = Arrays.copyOf(lows, more);
        cells = Arrays.copyOf(cells, more);
        others = Arrays.copyOf(others, more);
        tiles = Arrays.copyOf(tiles, more);
        roots = Arrays.copyOf(roots, more);
        otherTiles = Arrays.copyOf(otherTiles, more);
        otherRoots = Arrays.copyOf(otherRoots, more);
    }

    private void put(
            int at,
            double height,
            double low,
            int cell,
            int other,
            int tile,
            int root,
            int otherTile,
            int otherRoot) {
        heights[at] = height;
        lows[at] = low;
        cells[at] = cell;
        others[at] = other;
        tiles[at] = tile;
        roots[at] = root;
        otherTiles[at] = otherTile;
        otherRoots[at] = otherRoot;
    }

    void clear() {
        size = 0;
    }

    boolean isBefore(int edge, Edges of, int second) {
        return isBefore(heights[edge], lows[edge], cells[edge], others[edge], of, second);
    }

    private static boolean isBefore(
            double z, double low, int cell, int other, Edges of, int second) {
        if (z != of.heights[second]) {
            return z < of.heights[second];
        }
        if (low != of.lows[second]) {
            return low < of.lows[second];
        }
        if (cell != of.cells[second]) {
            return cell < of.cells[second];
        }
        // Out of the survey comes after all cells.
        return Integer.compareUnsigned(other, of.others[second]) < 0;
    }

    /** Numbers of all edges from the lowest up. */
    int[] sorted() {
        int[] from = new int[size];
        for (int i = 0; i < size; i++) {
            from[i] = i;
        }
        int[] to = new int[size];
        for (int run = 1; run < size; run *= 2) {
            for (int start = 0; start < size; start += 2 * run) {
                int middle = Math.min(size, start + run);
                int end = Math.min(size, start + 2 * run);
                int left = start;
                int right = middle;
                for (int i = start; i < end; i++) {
                    boolean fromRight =
                            left == middle
                                    || (right < end && isBefore(from[right], this, from[left]));
                    to[i] = from[fromRight ? right++ : left++];
                }
            }
            int[] spare = from;
            from = to;
            to = spare;
        }
        return from;
    }

    /** Only the chosen ones, in the order given. */
    Edges chosen(int[] which, int count) {
        var kept = new Edges(count);
        for (int i = 0; i < count; i++) {
            int edge = which[i];
            kept.add(
                    heights[edge],
                    lows[edge],
                    cells[edge],
                    others[edge],
                    tiles[edge],
                    roots[edge],
                    otherTiles[edge],
                    otherRoots[edge]);
        }
        return kept;
    }

    /** The lowest edge of each pair of roots. */
    static final class Lowest {
        private final Edges edges = new Edges();
        private long[] keys = new long[1024];
        private int[] slots = new int[1024];

        void clear() {
            Arrays.fill(keys, 0);
            edges.clear();
        }

        Edges edges() {
            return edges;
        }

        /**
         * Takes an edge if it is the lowest of its pair so far.
         *
         * @param pair the same for the same two roots, never zero
         */
        void take(
                long pair,
                double height,
                double low,
                int cell,
                int other,
                int tile,
                int root,
                int otherTile,
                int otherRoot) {
            int mask = keys.length - 1;
            int at = start(pair, mask);
            while (keys[at] != 0) {
                if (keys[at] == pair) {
                    int known = slots[at];
                    if (isBefore(height, low, cell, other, edges, known)) {
                        edges.put(
                                known, height, low, cell, other, tile, root, otherTile, otherRoot);
                    }
                    return;
                }
                at = (at + 1) & mask;
            }
            keys[at] = pair;
            slots[at] = edges.add(height, low, cell, other, tile, root, otherTile, otherRoot);
            if (2 * edges.size() > keys.length) {
                grow();
            }
        }

        private void grow() {
            long[] oldKeys = keys;
            int[] oldSlots = slots;
            keys = new long[2 * oldKeys.length];
            slots = new int[keys.length];
            int mask = keys.length - 1;
            for (int i = 0; i < oldKeys.length; i++) {
                if (oldKeys[i] != 0) {
                    int at = start(oldKeys[i], mask);
                    while (keys[at] != 0) {
                        at = (at + 1) & mask;
                    }
                    keys[at] = oldKeys[i];
                    slots[at] = oldSlots[i];
                }
            }
        }

        private static int start(long pair, int mask) {
            long mixed = pair * 0x9E3779B97F4A7C15L;
            return (int) (mixed >>> 40) & mask;
        }
    }
}
