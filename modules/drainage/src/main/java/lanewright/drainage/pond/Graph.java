package lanewright.drainage.pond;

import java.util.Arrays;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Places with heights, and which of them water can pass between directly.
 *
 * <p>For a surface of triangles the places are its vertices and the ways are its edges. That is
 * enough: on a plane facet everything below a level is convex and reaches the facet's lowest corner
 * without rising, so what is connected below a level on the surface is connected below that level
 * along the edges, and the other way round.
 */
final class Graph implements Ways {

    /** So many triangles or places are gone through between two questions whether to go on. */
    static final int OFTEN = 1 << 14;

    private final double[] heights;
    private final boolean[] outlets;
    private final int[] starts;
    private final int[] ends;

    private Graph(double[] heights, boolean[] outlets, int[] starts, int[] ends) {
        this.heights = heights;
        this.outlets = outlets;
        this.starts = starts;
        this.ends = ends;
    }

    @Override
    public int size() {
        return heights.length;
    }

    @Override
    public double height(int place) {
        return heights[place];
    }

    /** Whether water that reaches the place has left. */
    boolean isOutlet(int place) {
        return outlets[place];
    }

    @Override
    public int degree(int place) {
        return starts[place + 1] - starts[place];
    }

    @Override
    public int next(int place, int i) {
        return ends[starts[place] + i];
    }

    /** Whether each place is an outlet; not a copy. */
    boolean[] outlets() {
        return outlets;
    }

    /** The heights of all places; not a copy. */
    double[] heights() {
        return heights;
    }

    /**
     * The vertices and edges of a surface, its rim and the rims of its holes being outlets, joined
     * by pipes. Pipe {@code p} adds two places after the vertices: its inlet {@code vertexCount +
     * 2p} and its outlet, one further.
     */
    static Graph of(Mesh mesh, List<PipeLink> pipes) {
        return of(mesh, pipes, Progress.NONE);
    }

    /** The same, asking {@code progress} whether to go on. */
    static Graph of(Mesh mesh, List<PipeLink> pipes, Progress progress) {
        int vertices = mesh.vertexCount();
        int triangles = mesh.triangleCount();
        int size = vertices + 2 * pipes.size();
        double[] heights = new double[size];
        boolean[] outlets = new boolean[size];
        for (int v = 0; v < vertices; v++) {
            heights[v] = mesh.z(v);
        }
        for (int p = 0; p < pipes.size(); p++) {
            heights[vertices + 2 * p] = pipes.get(p).inletHeight();
            heights[vertices + 2 * p + 1] = pipes.get(p).outletHeight();
        }
        var ways = new Lists(size);
        for (int pass = 0; pass < 2; pass++) {
            for (int t = 0; t < triangles; t++) {
                if (t % OFTEN == 0) {
                    progress.check();
                }
                for (int k = 0; k < 3; k++) {
                    int a = mesh.corner(t, (k + 1) % 3);
                    int b = mesh.corner(t, (k + 2) % 3);
                    ways.one(a, b); // the other way comes from the triangle across the edge
                    if (mesh.neighbour(t, k) < 0) {
                        ways.one(b, a);
                        outlets[a] = true;
                        outlets[b] = true;
                    }
                }
            }
            join(pipes, vertices, ways, outlets);
            ways.endPass();
        }
        return new Graph(heights, outlets, ways.starts, ways.ends);
    }

    /** Adds the ways of pipes, in one pass, and says which of their mouths let water out. */
    static void join(List<PipeLink> pipes, int vertices, Lists ways, boolean[] outlets) {
        for (int p = 0; p < pipes.size(); p++) {
            PipeLink pipe = pipes.get(p);
            int inlet = vertices + 2 * p;
            int outlet = inlet + 1;
            ways.both(inlet, pipe.inletVertex());
            ways.both(inlet, outlet);
            if (pipe.outletVertex() >= 0) {
                ways.both(outlet, pipe.outletVertex());
            } else {
                outlets[outlet] = true;
            }
        }
    }

    /**
     * A rectangle of cells, each joined to its eight neighbours; the edge cells are outlets.
     *
     * @param heights by rows, m
     */
    static Graph ofGrid(double[] heights, int columns) {
        int rows = heights.length / columns;
        boolean[] outlets = new boolean[heights.length];
        var ways = new Lists(heights.length);
        for (int pass = 0; pass < 2; pass++) {
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    int cell = row * columns + column;
                    outlets[cell] =
                            row == 0 || column == 0 || row == rows - 1 || column == columns - 1;
                    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
                        for (int c = Math.max(0, column - 1);
                                c <= Math.min(columns - 1, column + 1);
                                c++) {
                            if (r != row || c != column) {
                                ways.one(cell, r * columns + c);
                            }
                        }
                    }
                }
            }
            ways.endPass();
        }
        return new Graph(heights.clone(), outlets, ways.starts, ways.ends);
    }

    /** Lists of neighbours built in two passes over the same ways: counting, then filling. */
    static final class Lists {
        private final int[] starts;
        private int[] ends = {};
        private int[] filled = {};
        private boolean counting = true;

        Lists(int size) {
            starts = new int[size + 1];
        }

        void one(int from, int to) {
            if (counting) {
                starts[from + 1]++;
            } else {
                ends[filled[from]++] = to;
            }
        }

        void both(int from, int to) {
            one(from, to);
            one(to, from);
        }

        /** Where the list of each place starts in {@link #ends()}; not a copy. */
        int[] starts() {
            return starts;
        }

        /** All lists, one after another; not a copy. */
        int[] ends() {
            return ends;
        }

        void endPass() {
            if (counting) {
                for (int i = 1; i < starts.length; i++) {
                    starts[i] += starts[i - 1];
                }
                ends = new int[starts[starts.length - 1]];
                filled = Arrays.copyOf(starts, starts.length - 1);
                counting = false;
            } else {
                filled = new int[0];
            }
        }
    }
}
