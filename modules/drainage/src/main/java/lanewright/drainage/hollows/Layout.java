package lanewright.drainage.hollows;

/**
 * How cells lie in tiles. Cells are numbered by rows from the south-west, and so are tiles; inside
 * a tile each row takes a full tile's width, whether or not the land reaches so far.
 *
 * @param columns cells from west to east
 * @param rows cells from south to north
 * @param shift a tile is 2 to this power wide and high
 */
record Layout(int columns, int rows, int shift) {

    /** The eight neighbours, counting from east by north: columns. */
    private static final int[] EAST = {1, 1, 0, -1, -1, -1, 0, 1};

    /** The eight neighbours, counting from east by north: rows. */
    private static final int[] NORTH = {0, 1, 1, 1, 0, -1, -1, -1};

    static int east(int way) {
        return EAST[way];
    }

    static int north(int way) {
        return NORTH[way];
    }

    int side() {
        return 1 << shift;
    }

    int across() {
        return (columns + side() - 1) >> shift;
    }

    int up() {
        return (rows + side() - 1) >> shift;
    }

    int tiles() {
        return across() * up();
    }

    /** Rows of cells that a tile holds. */
    int rowsOf(int tile) {
        return Math.min(side(), rows - ((tile / across()) << shift));
    }

    int cells() {
        return columns * rows;
    }

    /** The tile that a cell lies in. */
    int tile(int cell) {
        int row = cell / columns;
        return (row >> shift) * across() + ((cell - row * columns) >> shift);
    }

    /** The number of a cell in its tile. */
    int local(int cell) {
        int row = cell / columns;
        int mask = side() - 1;
        return ((row & mask) << shift) | ((cell - row * columns) & mask);
    }

    /** The cell with a number in a tile. */
    int cell(int tile, int local) {
        int row = ((tile / across()) << shift) + (local >> shift);
        int column = ((tile % across()) << shift) + (local & (side() - 1));
        return row * columns + column;
    }

    /** The neighbour of a cell, or -1 beyond the grid. */
    int neighbour(int cell, int way) {
        int row = cell / columns;
        int column = cell - row * columns + EAST[way];
        row += NORTH[way];
        if (row < 0 || column < 0 || row >= rows || column >= columns) {
            return -1;
        }
        return row * columns + column;
    }

    /** The tile beside another, or -1 beyond the grid. */
    int tileBeside(int tile, int east, int north) {
        int column = tile % across() + east;
        int row = tile / across() + north;
        if (row < 0 || column < 0 || row >= up() || column >= across()) {
            return -1;
        }
        return row * across() + column;
    }
}
