package lanewright.drainage.hollows;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * How much of a tile lies under each pool. A cell counts to the first pool that stands over it; the
 * cells of one root's land that count to one pool are kept together, with the lowest of them. As
 * long as over that lowest cell the first pool still stands as high, and none stands over the
 * lowest dry one, all comes out the same, whatever changed elsewhere.
 */
final class Wet {

    private final int[] starts;
    private final double[] dry;
    private double[] lows = new double[64];
    private double[] levels = new double[64];
    private int[] counts = new int[64];
    private double[] depths = new double[64];
    private int size;

    private Wet(int roots) {
        starts = new int[roots + 1];
        dry = new double[roots];
        Arrays.fill(dry, Double.POSITIVE_INFINITY);
    }

    static Wet of(Terrain terrain, int tile, Tile here, Roots roots, Nest nest) {
        var wet = new Wet(here.rootCount());
        int base = roots.first(tile);
        double[] tops = new double[here.rootCount()];
        for (int root = 0; root < tops.length; root++) {
            tops[root] = nest.top(roots.leaf(base + root));
        }
        double[] sorted = wet.sorted(terrain.tile(tile), here, tops);
        int from = 0;
        for (int root = 0; root < tops.length; root++) {
            int end = from + wet.starts[root + 1];
            wet.starts[root] = wet.size;
            if (from < end) {
                Arrays.sort(sorted, from, end);
                wet.gather(sorted, from, end, nest.pool(roots.leaf(base + root)), nest);
            }
            from = end;
        }
        wet.starts[tops.length] = wet.size;
        wet.trim();
        return wet;
    }

    /** Heights of all wet cells by root; their numbers go into {@code starts}, one place on. */
    private double[] sorted(double[] z, Tile here, double[] tops) {
        if (tops.length == 0) {
            return new double[0]; // no land
        }
        char[] roots = here.roots();
        for (int cell = 0; cell < z.length; cell++) {
            int root = roots[cell];
            if (z[cell] < tops[root]) {
                starts[root + 1]++;
            } else if (z[cell] < dry[root]) {
                dry[root] = z[cell];
            }
        }
        int[] next = new int[tops.length + 1];
        for (int root = 0; root < tops.length; root++) {
            next[root + 1] = next[root] + starts[root + 1];
        }
        double[] sorted = new double[next[tops.length]];
        if (sorted.length > 0) {
            for (int cell = 0; cell < z.length; cell++) {
                int root = roots[cell];
                if (z[cell] < tops[root]) {
                    sorted[next[root]++] = z[cell];
                }
            }
        }
        return sorted;
    }

    private void gather(double[] sorted, int from, int end, int first, Nest nest) {
        int pool = first;
        int at = from;
        while (at < end) {
            pool = nest.over(pool, sorted[at]);
            double level = nest.level(pool);
            double low = sorted[at];
            int start = at;
            double depth = 0;
            while (at < end && sorted[at] < level) {
                depth += level - sorted[at++];
            }
            add(low, level, at - start, depth);
        }
    }

    private void add(double low, double level, int count, double depth) {
        if (size == lows.length) {
            lows = Arrays.copyOf(lows, 2 * size);
            levels = Arrays.copyOf(levels, 2 * size);
            counts = Arrays.copyOf(counts, 2 * size);
            depths = Arrays.copyOf(depths, 2 * size);
        }
        lows[size] = low;
        levels[size] = level;
        counts[size] = count;
        depths[size++] = depth;
    }

    private void trim() {
        lows = Arrays.copyOf(lows, size);
        levels = Arrays.copyOf(levels, size);
        counts = Arrays.copyOf(counts, size);
        depths = Arrays.copyOf(depths, size);
    }

    /**
     * The pools that the parts count to.
     *
     * @return null if the tile would not come out the same now
     */
    int @Nullable [] pools(int tile, Roots roots, Nest nest) {
        int[] pools = new int[size];
        int base = roots.first(tile);
        for (int root = 0; root < dry.length; root++) {
            int leaf = roots.leaf(base + root);
            double top = nest.top(leaf);
            if (dry[root] < top) {
                return null;
            }
            int pool = nest.pool(leaf);
            for (int at = starts[root]; at < starts[root + 1]; at++) {
                if (!(lows[at] < top)) {
                    return null;
                }
                pool = nest.over(pool, lows[at]);
                if (nest.level(pool) != levels[at]) {
                    return null;
                }
                pools[at] = pool;
            }
        }
        return pools;
    }

    /** Adds what lies under each pool and under none of its parts. */
    void addTo(int[] pools, int[] cells, double[] depth) {
        for (int at = 0; at < size; at++) {
            cells[pools[at]] += counts[at];
            depth[pools[at]] += depths[at];
        }
    }
}
