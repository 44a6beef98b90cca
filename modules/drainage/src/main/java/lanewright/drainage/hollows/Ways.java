package lanewright.drainage.hollows;

import java.util.Arrays;

/**
 * The steepest of the eight drops from every cell of a tile, a diagonal being longer by the root of
 * two (D8: O'Callaghan and Mark, The extraction of drainage networks from digital elevation data,
 * 1984). Of equally steep ones the first, counting from east by north.
 */
final class Ways {

    /** Beyond the eight directions: nothing near is lower. */
    static final int PIT = 8;

    /** A cell at the survey's edge from which nothing near is lower: water leaves the survey. */
    static final int OUT = 9;

    /** No land. */
    static final int NONE = 10;

    /** Nothing near is lower and something is as high: {@link Flats} will tell. */
    static final int FLAT = 11;

    /** Nothing near is lower, and a {@link Passage} leads on. */
    static final int THROUGH = 12;

    /** Which way, without the mark below. */
    static final int MASK = 15;

    /** Marks a cell at the survey's edge. */
    static final int RIM = 16;

    private static final double DIAGONAL = Math.sqrt(0.5);

    private final Terrain terrain;
    private final Layout layout;
    private final int wide;
    private final double[] near;

    /** Memory for one thread. */
    Ways(Terrain terrain) {
        this.terrain = terrain;
        this.layout = terrain.layout();
        wide = layout.side() + 2;
        near = new double[wide * wide];
    }

    /** The ways of a tile, by the numbers of its cells. */
    byte[] of(int tile) {
        boolean whole = gather(tile);
        int high = layout.rowsOf(tile);
        int side = layout.side();
        byte[] ways = new byte[high << layout.shift()];
        for (int row = 0; row < high; row++) {
            int at = (row + 1) * wide + 1;
            int out = row << layout.shift();
            for (int column = 0; column < side; column++) {
                ways[out + column] = (byte) way(at + column, whole);
            }
        }
        return ways;
    }

    /** The way from one cell, as {@link #of} has it. */
    static int way(Terrain terrain, int cell) {
        double z = terrain.height(cell);
        if (Double.isNaN(z)) {
            return NONE;
        }
        int way = -1;
        double best = 0;
        boolean rim = false;
        boolean level = false;
        for (int d = 0; d < 8; d++) {
            int other = terrain.layout().neighbour(cell, d);
            double height = other < 0 ? Double.NaN : terrain.height(other);
            rim |= Double.isNaN(height);
            level |= height == z;
            double drop = d % 2 == 0 ? z - height : (z - height) * DIAGONAL;
            if (drop > best) {
                best = drop;
                way = d;
            }
        }
        if (way < 0) {
            way = rim ? OUT : level ? FLAT : PIT;
        }
        return rim ? way | RIM : way;
    }

    private int way(int at, boolean whole) {
        double z = near[at];
        double east = near[at + 1];
        double northEast = near[at + wide + 1];
        double north = near[at + wide];
        double northWest = near[at + wide - 1];
        double west = near[at - 1];
        double southWest = near[at - wide - 1];
        double south = near[at - wide];
        double southEast = near[at - wide + 1];
        int way = -1;
        double best = 0;
        double drop = z - east;
        if (drop > best) {
            best = drop;
            way = 0;
        }
        drop = (z - northEast) * DIAGONAL;
        if (drop > best) {
            best = drop;
            way = 1;
        }
        drop = z - north;
        if (drop > best) {
            best = drop;
            way = 2;
        }
        drop = (z - northWest) * DIAGONAL;
        if (drop > best) {
            best = drop;
            way = 3;
        }
        drop = z - west;
        if (drop > best) {
            best = drop;
            way = 4;
        }
        drop = (z - southWest) * DIAGONAL;
        if (drop > best) {
            best = drop;
            way = 5;
        }
        drop = z - south;
        if (drop > best) {
            best = drop;
            way = 6;
        }
        drop = (z - southEast) * DIAGONAL;
        if (drop > best) {
            way = 7;
        }
        if (whole && way >= 0) {
            return way;
        }
        if (Double.isNaN(z)) {
            return NONE;
        }
        // One missing neighbour makes the sum of all missing.
        boolean rim =
                !whole
                        && Double.isNaN(
                                east + northEast + north + northWest + west + southWest + south
                                        + southEast);
        if (way < 0) {
            boolean level =
                    z == east
                            || z == northEast
                            || z == north
                            || z == northWest
                            || z == west
                            || z == southWest
                            || z == south
                            || z == southEast;
            way = rim ? OUT : level ? FLAT : PIT;
        }
        return rim ? way | RIM : way;
    }

    /** Copies the tile and a cell on each side; tells whether all of that is land. */
    private boolean gather(int tile) {
        int side = layout.side();
        Arrays.fill(near, Double.NaN);
        for (int north = -1; north <= 1; north++) {
            for (int east = -1; east <= 1; east++) {
                int other = layout.tileBeside(tile, east, north);
                if (other < 0) {
                    continue;
                }
                double[] z = terrain.tile(other);
                int high = layout.rowsOf(other);
                int first = north < 0 ? high - 1 : 0;
                int last = north > 0 ? 0 : high - 1;
                int from = east < 0 ? side - 1 : 0;
                int count = east == 0 ? side : 1;
                int to = east < 0 ? 0 : east == 0 ? 1 : side + 1;
                for (int row = first; row <= last; row++) {
                    // A tile to the south is always as high as a tile can be.
                    int into = north < 0 ? 0 : north == 0 ? row + 1 : side + 1;
                    System.arraycopy(
                            z, (row << layout.shift()) + from, near, into * wide + to, count);
                }
            }
        }
        int high = layout.rowsOf(tile);
        for (int i = 0; i < (high + 2) * wide; i++) {
            if (Double.isNaN(near[i])) {
                return false;
            }
        }
        return true;
    }
}
