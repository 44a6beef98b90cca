package lanewright.drainage.pond;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * One ground on which a lane is laid again and again. What lies well away from the lane is made
 * ready once, and again only when the lane comes near its edge; the low spots that are found are
 * the same to the last bit as those of {@link WholeSearch}. For one thread. Cost: some 90 bytes a
 * vertex.
 */
public final class KeptLand {

    /** Land is parted in squares of this size, m, or of a thousandth of it if that is more. */
    private static final double SQUARE = 8;

    private static final int MOST_SQUARES = 1000;

    private final Mesh mesh;
    private final Graph graph;
    private final int[] order;
    private final Graph.Lists trianglesAt;
    private final double west;
    private final double south;
    private final double square;
    private final int columns;
    private final int rows;
    private @Nullable Surroundings around;
    private boolean[] nearTriangles = {};

    /**
     * Makes the ground as it is ready.
     *
     * @param progress asked whether to go on
     */
    public KeptLand(Mesh ground, Progress progress) {
        mesh = ground;
        graph = Graph.of(ground, List.of(), progress);
        order = HeightOrder.of(graph.heights(), progress);
        trianglesAt = trianglesAt(ground);
        IntStream vertices = IntStream.range(0, ground.vertexCount());
        double[] x = vertices.mapToDouble(ground::x).toArray();
        double[] y = IntStream.range(0, x.length).mapToDouble(ground::y).toArray();
        west = Arrays.stream(x).min().orElse(0);
        south = Arrays.stream(y).min().orElse(0);
        double wide = Arrays.stream(x).max().orElse(0) - west;
        double high = Arrays.stream(y).max().orElse(0) - south;
        square = Math.max(SQUARE, Math.max(wide, high) / MOST_SQUARES);
        columns = 1 + (int) (wide / square);
        rows = 1 + (int) (high / square);
    }

    private static Graph.Lists trianglesAt(Mesh ground) {
        var lists = new Graph.Lists(ground.vertexCount());
        for (int pass = 0; pass < 2; pass++) {
            for (int t = 0; t < ground.triangleCount(); t++) {
                for (int k = 0; k < 3; k++) {
                    lists.one(ground.corner(t, k), t);
                }
            }
            lists.endPass();
        }
        return lists;
    }

    /**
     * Makes a changed surface ready.
     *
     * @param changed the surface: its first vertices are those of the ground, number for number,
     *     whether it still uses them or not
     * @param unchanged for each of its triangles the one of the ground that it is, or -1
     * @param placed pipes, with their ends on the changed surface
     * @param progress asked whether to go on, here and by the searches
     */
    public LowSpotSearch search(
            Mesh changed, IntUnaryOperator unchanged, List<PlacedPipe> placed, Progress progress) {
        int[] now = now(changed, unchanged);
        progress.check();
        boolean[] moved = moved(now, placed);
        Surroundings ready = around;
        if (ready == null || !holds(ready, moved)) {
            ready = new Surroundings(graph, order, near(moved), progress);
            nearTriangles = nearTriangles(ready);
            around = ready;
        }
        int[] touched = ChangedWays.touched(changed, unchanged, nearTriangles);
        return new ChangedSearch(ready, trianglesAt, now, changed, touched, placed, progress);
    }

    /** For each triangle of the ground which of the changed surface's it is, or -1. */
    private int[] now(Mesh changed, IntUnaryOperator unchanged) {
        int[] now = new int[mesh.triangleCount()];
        Arrays.fill(now, -1);
        for (int t = 0; t < changed.triangleCount(); t++) {
            int was = unchanged.applyAsInt(t);
            if (was >= 0) {
                now[was] = t;
            }
        }
        return now;
    }

    /** The vertices of the ground of which a triangle is not what it was, or that hold a pipe. */
    private boolean[] moved(int[] now, List<PlacedPipe> placed) {
        boolean[] moved = new boolean[mesh.vertexCount()];
        for (int t = 0; t < now.length; t++) {
            if (now[t] < 0) {
                for (int k = 0; k < 3; k++) {
                    moved[mesh.corner(t, k)] = true;
                }
            }
        }
        for (PlacedPipe pipe : placed) {
            PipeLink link = pipe.link();
            if (link != null) {
                mark(link.inletVertex(), moved);
                mark(link.outletVertex(), moved);
            }
        }
        return moved;
    }

    private static void mark(int vertex, boolean[] moved) {
        if (vertex >= 0 && vertex < moved.length) {
            moved[vertex] = true;
        }
    }

    private static boolean holds(Surroundings ready, boolean[] moved) {
        for (int v = 0; v < moved.length; v++) {
            if (moved[v] && !ready.isNear(v)) {
                return false;
            }
        }
        return true;
    }

    /** All vertices in a square with a moved one, or in a square beside such. */
    private boolean[] near(boolean[] moved) {
        boolean[] squares = new boolean[columns * rows];
        for (int v = 0; v < moved.length; v++) {
            if (moved[v]) {
                int column = column(v);
                int row = row(v);
                for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
                    int from = Math.max(0, column - 1);
                    int to = Math.min(columns - 1, column + 1);
                    Arrays.fill(squares, r * columns + from, r * columns + to + 1, true);
                }
            }
        }
        boolean[] near = new boolean[moved.length];
        for (int v = 0; v < near.length; v++) {
            near[v] = squares[row(v) * columns + column(v)];
        }
        return near;
    }

    private int column(int v) {
        return Math.min(columns - 1, (int) ((mesh.x(v) - west) / square));
    }

    private int row(int v) {
        return Math.min(rows - 1, (int) ((mesh.y(v) - south) / square));
    }

    private boolean[] nearTriangles(Surroundings ready) {
        boolean[] near = new boolean[mesh.triangleCount()];
        for (int t = 0; t < near.length; t++) {
            for (int k = 0; k < 3; k++) {
                near[t] |= ready.isNear(mesh.corner(t, k));
            }
        }
        return near;
    }
}
