package lanewright.drainage.hollows;

import java.util.Arrays;

/**
 * The roots of all tiles, numbered through, and the pit to which each leads at last. What leads out
 * of the survey without filling anything has leaf zero, {@link #OPEN}.
 */
final class Roots {

    /** The leaf of all land that drains by itself. */
    static final int OPEN = 0;

    private static final int UNKNOWN = -1;

    private final Layout layout;
    private final Tile[] tiles;
    private final int[] base;
    private final int[] leaves;
    private int[] pits;
    private int leafCount;

    private Roots(Layout layout, Tile[] tiles) {
        this.layout = layout;
        this.tiles = tiles;
        base = new int[tiles.length + 1];
        for (int tile = 0; tile < tiles.length; tile++) {
            base[tile + 1] = base[tile] + tiles[tile].rootCount();
        }
        leaves = new int[base[tiles.length]];
        pits = new int[leaves.length + 1];
    }

    static Roots of(Layout layout, Tile[] tiles) {
        var roots = new Roots(layout, tiles);
        roots.find();
        return roots;
    }

    int count() {
        return leaves.length;
    }

    /** How many leaves, the open one included. */
    int leafCount() {
        return leafCount;
    }

    /** Number of a tile's root among all. */
    int number(int tile, int root) {
        return base[tile] + root;
    }

    int first(int tile) {
        return base[tile];
    }

    /** Number of the root that a cell with land runs to. */
    int of(int cell) {
        int tile = layout.tile(cell);
        return base[tile] + tiles[tile].roots()[layout.local(cell)];
    }

    /** Leaf of a root. */
    int leaf(int root) {
        return leaves[root];
    }

    /** The pit of a leaf that is not open. */
    int pit(int leaf) {
        return pits[leaf];
    }

    private void find() {
        leafCount = 1;
        for (int tile = 0; tile < tiles.length; tile++) {
            Tile here = tiles[tile];
            for (int root = 0; root < here.rootCount(); root++) {
                int at = base[tile] + root;
                switch (here.targets()[root]) {
                    case Tile.LEAVES -> leaves[at] = OPEN;
                    case Tile.PIT -> {
                        pits[leafCount] = layout.cell(tile, here.rootCells()[root]);
                        leaves[at] = leafCount++;
                    }
                    default -> leaves[at] = UNKNOWN;
                }
            }
        }
        pits = Arrays.copyOf(pits, leafCount);
        int[] way = new int[64];
        for (int tile = 0; tile < tiles.length; tile++) {
            for (int root = 0; root < tiles[tile].rootCount(); root++) {
                int count = 0;
                int at = base[tile] + root;
                int target = tiles[tile].targets()[root];
                while (leaves[at] == UNKNOWN) {
                    if (count == way.length) {
                        way = Arrays.copyOf(way, 2 * count);
                    }
                    way[count++] = at;
                    int other = layout.tile(target);
                    int otherRoot = tiles[other].roots()[layout.local(target)];
                    at = base[other] + otherRoot;
                    target = tiles[other].targets()[otherRoot];
                }
                int leaf = leaves[at];
                while (count > 0) {
                    leaves[way[--count]] = leaf;
                }
            }
        }
    }
}
