package lanewright.drainage.hollows;

import java.util.Arrays;

/**
 * How much of a tile lies under each pool. For every root the levels are kept at which the water
 * over its land becomes another pool's, as far as they can matter; a cell counts to the first that
 * lies over it. If all levels are still the same after a change elsewhere, so is everything here.
 */
final class Wet {

    private final int[] starts;
    private double[] levels = new double[64];
    private int[] counts = new int[0];
    private double[] depths = new double[0];

    private Wet(int roots) {
        starts = new int[roots + 1];
    }

    static Wet of(Terrain terrain, int tile, Tile here, Roots roots, Nest nest) {
        var wet = new Wet(here.rootCount());
        double[] z = terrain.tile(tile);
        for (int root = 0; root < here.rootCount(); root++) {
            wet.starts[root + 1] = wet.starts[root];
            int pool = first(z, root, tile, here, roots, nest);
            while (pool != Nest.NONE) {
                wet.add(root, nest.level(pool));
                pool = nest.level(pool) > here.top()[root] ? Nest.NONE : nest.parent(pool);
            }
        }
        int size = wet.starts[here.rootCount()];
        wet.levels = Arrays.copyOf(wet.levels, size);
        wet.counts = new int[size];
        wet.depths = new double[size];
        if (size > 0) {
            wet.count(z, here);
        }
        return wet;
    }

    /** The first pool over a root's land, or none. */
    private static int first(double[] z, int root, int tile, Tile here, Roots roots, Nest nest) {
        int leaf = roots.leaf(roots.number(tile, root));
        double low = z[here.rootCells()[root]];
        if (!(low < nest.top(leaf))) {
            return Nest.NONE;
        }
        int pool = nest.pool(leaf);
        while (!(low < nest.level(pool))) {
            pool = nest.parent(pool);
        }
        return pool;
    }

    private void add(int root, double level) {
        int at = starts[root + 1]++;
        if (at == levels.length) {
            levels = Arrays.copyOf(levels, 2 * at);
        }
        levels[at] = level;
    }

    private void count(double[] z, Tile here) {
        double[] tops = new double[here.rootCount()];
        for (int root = 0; root < tops.length; root++) {
            tops[root] =
                    starts[root] == starts[root + 1]
                            ? Double.NEGATIVE_INFINITY
                            : levels[starts[root + 1] - 1];
        }
        char[] roots = here.roots();
        for (int cell = 0; cell < z.length; cell++) {
            int root = roots[cell];
            if (z[cell] < tops[root]) {
                int at = starts[root];
                while (!(z[cell] < levels[at])) {
                    at++;
                }
                counts[at]++;
                depths[at] += levels[at] - z[cell];
            }
        }
    }

    /** Whether the tile would come out the same now. */
    boolean holds(Terrain terrain, int tile, Tile here, Roots roots, Nest nest) {
        double[] z = terrain.tile(tile);
        for (int root = 0; root < here.rootCount(); root++) {
            int at = starts[root];
            int end = starts[root + 1];
            int pool = first(z, root, tile, here, roots, nest);
            while (pool != Nest.NONE) {
                if (at == end || levels[at] != nest.level(pool)) {
                    return false;
                }
                at++;
                pool = nest.level(pool) > here.top()[root] ? Nest.NONE : nest.parent(pool);
            }
            if (at != end) {
                return false;
            }
        }
        return true;
    }

    /** Adds what lies under each pool and under none of its parts. */
    void addTo(
            int[] cells,
            double[] depth,
            Terrain terrain,
            int tile,
            Tile here,
            Roots roots,
            Nest nest) {
        double[] z = terrain.tile(tile);
        for (int root = 0; root < here.rootCount(); root++) {
            if (starts[root] == starts[root + 1]) {
                continue;
            }
            int pool = first(z, root, tile, here, roots, nest);
            for (int at = starts[root]; at < starts[root + 1]; at++) {
                cells[pool] += counts[at];
                depth[pool] += depths[at];
                pool = nest.parent(pool);
            }
        }
    }
}
