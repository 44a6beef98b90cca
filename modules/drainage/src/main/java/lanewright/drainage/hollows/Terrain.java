package lanewright.drainage.hollows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A grid of heights. Cells are square and numbered by rows from the south-west; a cell without a
 * height is no land, and water that comes beside one, or to the edge of the grid, is out of the
 * survey.
 *
 * <p>Immutable. Heights are kept in tiles, so that a changed grid shares all tiles that the change
 * does not touch.
 */
public final class Terrain {

    /** A tile is 2 to this power wide: 256 cells, whose work fits into a core's own memory. */
    static final int USUAL_SHIFT = 8;

    /** The most cells: their numbers and counts stay whole numbers of 32 bits. */
    private static final int MOST_CELLS = 1 << 30;

    private final Layout layout;
    private final double cellSize;
    private final double[][] tiles;

    private Terrain(Layout layout, double cellSize, double[][] tiles) {
        this.layout = layout;
        this.cellSize = cellSize;
        this.tiles = tiles;
    }

    /**
     * A grid.
     *
     * @param columns cells from west to east, one or more
     * @param rows cells from south to north, one or more
     * @param cellSize side of a cell, m, over zero
     * @param heights m, by rows from the south-west; NaN where there is no land
     * @throws IllegalArgumentException if there are no cells or too many, if their heights are not
     *     as many, or if one is infinite
     */
    public static Terrain of(int columns, int rows, double cellSize, double[] heights) {
        return of(columns, rows, cellSize, heights, USUAL_SHIFT);
    }

    /** The same in tiles of 2 to the power of {@code shift}. No answer hangs on it. */
    static Terrain of(int columns, int rows, double cellSize, double[] heights, int shift) {
        if (columns < 1 || rows < 1 || (long) columns * rows > MOST_CELLS) {
            throw new IllegalArgumentException(
                    "a grid must have 1 to "
                            + MOST_CELLS
                            + " cells, was "
                            + columns
                            + " by "
                            + rows);
        }
        if (!(cellSize > 0) || Double.isInfinite(cellSize)) {
            throw new IllegalArgumentException("cells must have a size, was " + cellSize + " m");
        }
        if (heights.length != columns * rows) {
            throw new IllegalArgumentException(
                    columns + " by " + rows + " cells were given " + heights.length + " heights");
        }
        var layout = new Layout(columns, rows, shift);
        double[][] tiles = new double[layout.tiles()][];
        for (int tile = 0; tile < tiles.length; tile++) {
            int high = layout.rowsOf(tile);
            double[] z = new double[high << shift];
            Arrays.fill(z, Double.NaN);
            int west = (tile % layout.across()) << shift;
            int south = (tile / layout.across()) << shift;
            int wide = Math.min(layout.side(), columns - west);
            for (int row = 0; row < high; row++) {
                int from = (south + row) * columns + west;
                System.arraycopy(heights, from, z, row << shift, wide);
            }
            checkFinite(z);
            tiles[tile] = z;
        }
        return new Terrain(layout, cellSize, tiles);
    }

    /**
     * The grid with other heights in a box.
     *
     * @param heights m, by rows from the box's south-west; NaN where there is no land
     * @throws IllegalArgumentException if the box reaches beyond the grid, if the heights are not
     *     as many as its cells, or if one is infinite
     */
    public Terrain changed(Box box, double[] heights) {
        checkInside(box);
        if (heights.length != box.columns() * box.rows()) {
            throw new IllegalArgumentException(
                    box.columns()
                            + " by "
                            + box.rows()
                            + " cells were given "
                            + heights.length
                            + " heights");
        }
        checkFinite(heights);
        double[][] changed = tiles.clone();
        int shift = layout.shift();
        int mask = layout.side() - 1;
        for (int row = box.row(); row < box.row() + box.rows(); row++) {
            for (int column = box.column(); column < box.column() + box.columns(); column++) {
                int tile = (row >> shift) * layout.across() + (column >> shift);
                if (changed[tile] == tiles[tile]) {
                    changed[tile] = tiles[tile].clone();
                }
                changed[tile][((row & mask) << shift) | (column & mask)] =
                        heights[(row - box.row()) * box.columns() + column - box.column()];
            }
        }
        return new Terrain(layout, cellSize, changed);
    }

    /**
     * In which cells another terrain of the same layout has another height: a box for each tile.
     */
    List<Box> differences(Terrain other) {
        List<Box> boxes = new ArrayList<>();
        int side = layout.side();
        for (int tile = 0; tile < tiles.length; tile++) {
            double[] a = tiles[tile];
            double[] b = other.tiles[tile];
            int west = side;
            int east = -1;
            int south = side;
            int north = -1;
            for (int at = a == b ? a.length : 0; at < a.length; at++) {
                // Zero and minus zero are as high, but not the same bits.
                if (Double.doubleToLongBits(a[at]) != Double.doubleToLongBits(b[at])) {
                    west = Math.min(west, at & (side - 1));
                    east = Math.max(east, at & (side - 1));
                    south = Math.min(south, at >> layout.shift());
                    north = Math.max(north, at >> layout.shift());
                }
            }
            if (east >= 0) {
                int first = layout.cell(tile, (south << layout.shift()) | west);
                boxes.add(
                        new Box(
                                first % columns(),
                                first / columns(),
                                east - west + 1,
                                north - south + 1));
            }
        }
        return boxes;
    }

    private void checkInside(Box box) {
        if ((long) box.column() + box.columns() > columns()
                || (long) box.row() + box.rows() > rows()) {
            throw new IllegalArgumentException(
                    box + " reaches beyond a grid of " + columns() + " by " + rows());
        }
    }

    private static void checkFinite(double[] heights) {
        for (double height : heights) {
            if (Double.isInfinite(height)) {
                throw new IllegalArgumentException("a height is " + height);
            }
        }
    }

    /** Cells from west to east. */
    public int columns() {
        return layout.columns();
    }

    /** Cells from south to north. */
    public int rows() {
        return layout.rows();
    }

    /** How many cells, those without land included. */
    public int cells() {
        return layout.cells();
    }

    /** Side of a cell, m. */
    public double cellSize() {
        return cellSize;
    }

    /** Height of a cell, m; NaN where there is no land. */
    public double height(int cell) {
        return tiles[layout.tile(cell)][layout.local(cell)];
    }

    /** Whether a cell is land that lies at the edge of the grid or beside a cell without land. */
    public boolean isRim(int cell) {
        if (Double.isNaN(height(cell))) {
            return false;
        }
        for (int way = 0; way < 8; way++) {
            int other = layout.neighbour(cell, way);
            if (other < 0 || Double.isNaN(height(other))) {
                return true;
            }
        }
        return false;
    }

    Layout layout() {
        return layout;
    }

    /** Heights of a tile, shared: not to be written to. */
    double[] tile(int tile) {
        return tiles[tile];
    }
}
