package lanewright.drainage.hollows;

/**
 * The saddles between a tile and those to its east, north-west, north and north-east; so each pair
 * of tiles is looked at once. Memory for one thread.
 */
final class Seams {

    private final Terrain terrain;
    private final Layout layout;
    private final Tile[] tiles;
    private final Edges.Lowest lowest = new Edges.Lowest();

    Seams(Terrain terrain, Tile[] tiles) {
        this.terrain = terrain;
        this.layout = terrain.layout();
        this.tiles = tiles;
    }

    Edges of(int tile) {
        lowest.clear();
        int last = layout.side() - 1;
        int high = layout.rowsOf(tile);
        int east = layout.tileBeside(tile, 1, 0);
        if (east >= 0) {
            for (int row = 0; row < high; row++) {
                for (int other = Math.max(0, row - 1);
                        other <= Math.min(high - 1, row + 1);
                        other++) {
                    join(tile, last, row, east, 0, other, 1);
                }
            }
        }
        int north = layout.tileBeside(tile, 0, 1);
        if (north >= 0) {
            for (int column = 0; column <= last; column++) {
                for (int other = Math.max(0, column - 1);
                        other <= Math.min(last, column + 1);
                        other++) {
                    join(tile, column, last, north, other, 0, 2);
                }
            }
        }
        int northEast = layout.tileBeside(tile, 1, 1);
        if (northEast >= 0) {
            join(tile, last, last, northEast, 0, 0, 3);
        }
        int northWest = layout.tileBeside(tile, -1, 1);
        if (northWest >= 0) {
            join(tile, 0, last, northWest, last, 0, 4);
        }
        Edges edges = lowest.edges();
        return edges.chosen(edges.sorted(), edges.size());
    }

    private void join(
            int tile, int column, int row, int beside, int otherColumn, int otherRow, int side) {
        int a = (row << layout.shift()) | column;
        int b = (otherRow << layout.shift()) | otherColumn;
        double za = terrain.tile(tile)[a];
        double zb = terrain.tile(beside)[b];
        if (Double.isNaN(za) || Double.isNaN(zb)) {
            return;
        }
        int root = tiles[tile].roots()[a];
        int otherRoot = tiles[beside].roots()[b];
        long pair = ((long) side << 40) | ((long) root << 20) | otherRoot;
        int first = layout.cell(tile, a);
        int second = layout.cell(beside, b);
        double z = Math.max(za, zb);
        double low = Math.min(za, zb);
        if (first < second) {
            lowest.take(pair, z, low, first, second, tile, root, beside, otherRoot);
        } else {
            lowest.take(pair, z, low, second, first, beside, otherRoot, tile, root);
        }
    }
}
