package lanewright.drainage.flow;

import lanewright.drainage.pond.Mesh;

/**
 * The rectangles of cells that the triangles of a surface lie in, one cell wider on each side, so
 * that no rounding puts a triangle outside its own. Costs 12 bytes a triangle.
 */
final class Boxes {

    /** Wider boxes than this are taken to touch everything. */
    private static final int WIDEST = 0xFF;

    /** A block is 2 to this power cells wide and high. */
    private static final int BLOCK = 5;

    private final int columns;
    private final int rows;
    private final int[] corner;
    private final short[] size;
    private final int[] block;

    private Boxes(Cells cells, int triangles) {
        columns = cells.columns();
        rows = cells.rows();
        corner = new int[triangles];
        size = new short[triangles];
        block = new int[triangles];
    }

    private int blocksAcross() {
        return (columns >> BLOCK) + 1;
    }

    /** The boxes of all triangles. */
    static Boxes of(Mesh mesh, Cells cells) {
        var boxes = new Boxes(cells, mesh.triangleCount());
        var box = new Box(mesh, cells);
        for (int t = 0; t < mesh.triangleCount(); t++) {
            box.of(t);
            int wide = Math.min(WIDEST, box.east - box.west);
            int high = Math.min(WIDEST, box.north - box.south);
            boxes.corner[t] = box.south * cells.columns() + box.west;
            boxes.block[t] = (box.south >> BLOCK) * boxes.blocksAcross() + (box.west >> BLOCK);
            boxes.size[t] = (short) ((wide << 8) | high);
        }
        return boxes;
    }

    /** Which boxes marked cells lie in. */
    final class Touching {
        private final boolean[] marked;
        private final boolean[] blocks = new boolean[blocksAcross() * ((rows >> BLOCK) + 1)];

        /**
         * For these cells.
         *
         * @param marked by cell, not changed meanwhile
         */
        Touching(boolean[] marked) {
            this.marked = marked;
            int across = blocksAcross();
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    if (marked[row * columns + column]) {
                        blocks[(row >> BLOCK) * across + (column >> BLOCK)] = true;
                    }
                }
            }
        }

        /** True if one of the marked cells may lie in the box of a triangle. */
        boolean touches(int t) {
            return isNear(t) && Boxes.this.touches(t, marked);
        }

        /** Whether a cell is marked in the block of the box's corner or in those beyond it. */
        private boolean isNear(int t) {
            int at = block[t];
            if (blocks[at]) {
                return true;
            }
            int wide = (size[t] >>> 8) & WIDEST;
            int high = size[t] & WIDEST;
            if (wide >= 1 << BLOCK || high >= 1 << BLOCK) {
                return true;
            }
            int across = blocksAcross();
            return isMarked(at + 1) || isMarked(at + across) || isMarked(at + across + 1);
        }

        private boolean isMarked(int at) {
            return at < blocks.length && blocks[at];
        }
    }

    private boolean touches(int t, boolean[] marked) {
        int wide = (size[t] >>> 8) & WIDEST;
        int high = size[t] & WIDEST;
        if (wide == WIDEST || high == WIDEST) {
            return true;
        }
        for (int row = 0; row <= high; row++) {
            int at = corner[t] + row * columns;
            for (int column = 0; column <= wide; column++) {
                if (marked[at + column]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The box of one triangle after another. */
    private static final class Box {
        private final Mesh mesh;
        private final Cells cells;
        private int west;
        private int east;
        private int south;
        private int north;

        Box(Mesh mesh, Cells cells) {
            this.mesh = mesh;
            this.cells = cells;
        }

        void of(int t) {
            double minX = Double.POSITIVE_INFINITY;
            double maxX = Double.NEGATIVE_INFINITY;
            double minY = Double.POSITIVE_INFINITY;
            double maxY = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(t, k);
                minX = Math.min(minX, mesh.x(v));
                maxX = Math.max(maxX, mesh.x(v));
                minY = Math.min(minY, mesh.y(v));
                maxY = Math.max(maxY, mesh.y(v));
            }
            west = cell(minX - cells.west(), cells.columns(), -1);
            east = cell(maxX - cells.west(), cells.columns(), 1);
            south = cell(minY - cells.south(), cells.rows(), -1);
            north = cell(maxY - cells.south(), cells.rows(), 1);
        }

        private int cell(double away, int count, int more) {
            int at = (int) Math.floor(away / cells.size()) + more;
            return Math.max(0, Math.min(count - 1, at));
        }
    }

    /** Marks the boxes of triangles. */
    static final class Marker {
        private final Box box;
        private final int columns;
        private final boolean[] marked;

        Marker(Mesh mesh, Cells cells, boolean[] marked) {
            this.box = new Box(mesh, cells);
            this.columns = cells.columns();
            this.marked = marked;
        }

        void mark(int t) {
            box.of(t);
            for (int row = box.south; row <= box.north; row++) {
                for (int column = box.west; column <= box.east; column++) {
                    marked[row * columns + column] = true;
                }
            }
        }
    }
}
