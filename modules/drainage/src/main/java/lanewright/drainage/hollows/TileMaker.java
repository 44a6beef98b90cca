package lanewright.drainage.hollows;

import java.util.Arrays;

/** Finds out what a tile knows by itself. Memory for one thread. */
final class TileMaker {

    private static final int NOWHERE = -1;

    private final Terrain terrain;
    private final Layout layout;
    private final Passages passages;
    private final int[] to;
    private final int[] order;
    private final byte[] waiting;
    private final char[] cells;
    private final int[] targets;
    private final int[] land;
    private final int[] rim;
    private final double[] top;
    private final double[] lowestOut;
    private final int[] out;
    private final Edges.Lowest lowest = new Edges.Lowest();
    private int[] joined = new int[64];
    private int rootCount;

    TileMaker(Terrain terrain, Passages passages) {
        this.terrain = terrain;
        this.passages = passages;
        this.layout = terrain.layout();
        int most = layout.side() * layout.side();
        to = new int[most];
        order = new int[most];
        waiting = new byte[most];
        cells = new char[most];
        targets = new int[most];
        land = new int[most];
        rim = new int[most];
        top = new double[most];
        lowestOut = new double[most];
        out = new int[most];
    }

    Tile make(int tile, byte[] ways) {
        double[] z = terrain.tile(tile);
        int[] own = new int[z.length];
        char[] roots = new char[z.length];
        point(tile, ways, z.length);
        int count = drain(z, own);
        root(tile, ways, z, roots, count);
        return new Tile(
                ways,
                roots,
                Arrays.copyOf(cells, rootCount),
                Arrays.copyOf(targets, rootCount),
                Arrays.copyOf(land, rootCount),
                Arrays.copyOf(rim, rootCount),
                Arrays.copyOf(top, rootCount),
                own,
                edges(tile, z, roots));
    }

    /** Where each cell runs within the tile, and how many run to it. */
    private void point(int tile, byte[] ways, int length) {
        int shift = layout.shift();
        int side = layout.side();
        int high = layout.rowsOf(tile);
        Arrays.fill(waiting, 0, length, (byte) 0);
        for (int row = 0; row < high; row++) {
            for (int column = 0; column < side; column++) {
                int at = (row << shift) + column;
                int way = ways[at] & Ways.MASK;
                int next = NOWHERE;
                if (way < 8) {
                    int r = row + Layout.north(way);
                    int c = column + Layout.east(way);
                    if (r >= 0 && c >= 0 && r < high && c < side) {
                        next = (r << shift) + c;
                        waiting[next]++;
                    }
                }
                to[at] = next;
            }
        }
    }

    /** Counts what passes each cell; leaves in {@code order} every cell before the one below it. */
    private int drain(double[] z, int[] own) {
        int count = 0;
        for (int cell = 0; cell < z.length; cell++) {
            int at = cell;
            while (waiting[at] == 0 && !Double.isNaN(z[at])) {
                waiting[at] = -1; // done
                order[count++] = at;
                own[at]++;
                int next = to[at];
                if (next == NOWHERE) {
                    break;
                }
                own[next] += own[at];
                waiting[next]--;
                at = next;
            }
        }
        return count;
    }

    private void root(int tile, byte[] ways, double[] z, char[] roots, int count) {
        rootCount = 0;
        for (int i = count - 1; i >= 0; i--) {
            int cell = order[i];
            int root;
            if (to[cell] == NOWHERE) {
                root = rootCount++;
                cells[root] = (char) cell;
                land[root] = 0;
                rim[root] = 0;
                top[root] = z[cell];
                lowestOut[root] = Double.POSITIVE_INFINITY;
                targets[root] = target(layout.cell(tile, cell), ways[cell] & Ways.MASK);
            } else {
                root = roots[to[cell]];
            }
            roots[cell] = (char) root;
            land[root]++;
            top[root] = Math.max(top[root], z[cell]);
            if ((ways[cell] & Ways.RIM) != 0) {
                rim[root]++;
                if (z[cell] < lowestOut[root] || (z[cell] == lowestOut[root] && cell < out[root])) {
                    lowestOut[root] = z[cell];
                    out[root] = cell;
                }
            }
        }
    }

    private int target(int cell, int way) {
        return switch (way) {
            case Ways.PIT -> Tile.PIT;
            case Ways.OUT -> Tile.LEAVES;
            case Ways.THROUGH -> passages.through(cell);
            default -> layout.neighbour(cell, way);
        };
    }

    private Edges edges(int tile, double[] z, char[] roots) {
        lowest.clear();
        int shift = layout.shift();
        int side = layout.side();
        int high = layout.rowsOf(tile);
        for (int row = 0; row < high; row++) {
            for (int column = 0; column < side; column++) {
                int at = (row << shift) + column;
                if (Double.isNaN(z[at])) {
                    continue;
                }
                if (column + 1 < side) {
                    join(tile, z, roots, at, at + 1);
                }
                if (row + 1 < high) {
                    if (column > 0) {
                        join(tile, z, roots, at, at + side - 1);
                    }
                    join(tile, z, roots, at, at + side);
                    if (column + 1 < side) {
                        join(tile, z, roots, at, at + side + 1);
                    }
                }
            }
        }
        Edges edges = lowest.edges();
        for (int root = 0; root < rootCount; root++) {
            if (lowestOut[root] < Double.POSITIVE_INFINITY) {
                edges.add(
                        lowestOut[root],
                        Double.POSITIVE_INFINITY, // out of the survey comes after all cells
                        layout.cell(tile, out[root]),
                        Edges.OUTSIDE,
                        tile,
                        root,
                        Edges.OUTSIDE,
                        rootCount);
            }
        }
        return span(edges);
    }

    private void join(int tile, double[] z, char[] roots, int a, int b) {
        int first = roots[a];
        int second = roots[b];
        if (first == second || Double.isNaN(z[b])) {
            return;
        }
        long pair = first < second ? ((long) first << 32) | second : ((long) second << 32) | first;
        lowest.take(
                pair,
                Math.max(z[a], z[b]),
                Math.min(z[a], z[b]),
                layout.cell(tile, a),
                layout.cell(tile, b),
                tile,
                first,
                tile,
                second);
    }

    /** Kruskal's spanning tree of the roots and the outside. */
    private Edges span(Edges edges) {
        if (joined.length <= rootCount) {
            joined = new int[2 * rootCount + 1];
        }
        for (int i = 0; i <= rootCount; i++) {
            joined[i] = i;
        }
        int[] order = edges.sorted();
        int kept = 0;
        for (int edge : order) {
            int a = find(edges.root(edge));
            int b = find(edges.otherRoot(edge));
            if (a != b) {
                joined[a] = b;
                order[kept++] = edge;
            }
        }
        return edges.chosen(order, kept);
    }

    private int find(int root) {
        int at = root;
        while (joined[at] != at) {
            joined[at] = joined[joined[at]];
            at = joined[at];
        }
        return at;
    }
}
