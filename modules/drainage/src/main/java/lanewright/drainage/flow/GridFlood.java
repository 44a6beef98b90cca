package lanewright.drainage.flow;

import java.util.Arrays;
import java.util.List;
import lanewright.drainage.pond.PipeLink;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.measure.Progress;

/**
 * Floods cells from the rim inward, lowest first, and remembers from where each was reached
 * (Barnes, Lehman and Mulla, Priority-Flood, 2014). Among equal levels the lowest ground comes
 * first, so that the way across a pool follows its deepest line; on level ground it is first come,
 * first served.
 */
final class GridFlood {

    /** So many cells are reached between two questions whether to go on. */
    static final int OFTEN = 1 << 14;

    private final Cells cells;
    private final double[] heights;
    private final double[] levels;
    private final int[] parents;
    private final int[] order;
    private final boolean[] reached;
    private final boolean[] open;
    private final Heap rising;
    private int done;

    private GridFlood(Cells cells, double[] heights) {
        this.cells = cells;
        this.heights = heights;
        levels = heights.clone();
        parents = new int[heights.length];
        Arrays.fill(parents, FlowGrid.LEAVES);
        order = new int[heights.length];
        reached = new boolean[heights.length];
        open = new boolean[heights.length];
        rising = new Heap();
    }

    /** Floods the cells; those without a height are no land. */
    static GridFlood of(Cells cells, double[] heights, List<PlacedPipe> pipes, Progress progress) {
        var flood = new GridFlood(cells, heights);
        flood.run(new PipeCells(cells, pipes, heights), progress);
        return flood;
    }

    double[] levels() {
        return levels;
    }

    /** The cell from which each was reached; {@link FlowGrid#LEAVES} at the rim. */
    int[] parents() {
        return parents;
    }

    /** Whether each cell lies at the rim. */
    boolean[] open() {
        return open;
    }

    /** The cells of the land in the order in which they were reached. */
    int[] order() {
        return Arrays.copyOf(order, done);
    }

    private void run(PipeCells pipes, Progress progress) {
        for (int cell = 0; cell < heights.length; cell++) {
            if (Double.isNaN(heights[cell])) {
                reached[cell] = true; // no land: nothing to reach
            } else if (isOpen(cell)) {
                reached[cell] = true;
                open[cell] = true;
                rising.add(heights[cell], heights[cell], cell);
            }
        }
        for (int pipe : pipes.leaving()) {
            rising.add(pipes.level(pipe), pipes.level(pipe), heights.length + pipe);
        }
        while (rising.size() > 0) {
            int at = rising.take();
            if (at >= heights.length) {
                // Water stands as high as this pipe's mouth: it draws from the cell there.
                int pipe = at - heights.length;
                reach(pipes.inlet(pipe), pipes.level(pipe), pipes.outlet(pipe));
                continue;
            }
            if (done % OFTEN == 0) {
                progress.check();
            }
            order[done++] = at;
            if (pipes.any()) {
                for (int pipe : pipes.endingIn(at)) {
                    pipes.raise(pipe, levels[at]);
                    rising.add(pipes.level(pipe), pipes.level(pipe), heights.length + pipe);
                }
            }
            int row = at / cells.columns();
            int column = at % cells.columns();
            for (int d = 0; d < 8; d++) {
                int r = row + FlowGrid.NORTH[d];
                int c = column + FlowGrid.EAST[d];
                if (r >= 0 && c >= 0 && r < cells.rows() && c < cells.columns()) {
                    reach(r * cells.columns() + c, levels[at], at);
                }
            }
        }
    }

    private void reach(int cell, double from, int parent) {
        if (reached[cell]) {
            return;
        }
        reached[cell] = true;
        parents[cell] = parent;
        levels[cell] = Math.max(heights[cell], from);
        rising.add(levels[cell], heights[cell], cell);
    }

    private boolean isOpen(int cell) {
        int row = cell / cells.columns();
        int column = cell % cells.columns();
        if (row == 0 || column == 0 || row == cells.rows() - 1 || column == cells.columns() - 1) {
            return true;
        }
        for (int d = 0; d < 8; d++) {
            int other = cell + FlowGrid.NORTH[d] * cells.columns() + FlowGrid.EAST[d];
            if (Double.isNaN(heights[other])) {
                return true;
            }
        }
        return false;
    }

    /**
     * Cells waiting: the lowest level first, of equal ones the lowest ground, then the first come.
     * A heap of four branches, for half as many steps down as one of two.
     */
    private static final class Heap {
        private static final int BRANCHES = 4;

        private double[] keys = new double[1024];
        private double[] grounds = new double[1024];
        private int[] cells = new int[1024];
        private int[] arrivals = new int[1024];
        private int size;
        private int arrived;

        int size() {
            return size;
        }

        void add(double key, double ground, int cell) {
            if (size == keys.length) {
                keys = Arrays.copyOf(keys, 2 * size);
                grounds = Arrays.copyOf(grounds, 2 * size);
                cells = Arrays.copyOf(cells, 2 * size);
                arrivals = Arrays.copyOf(arrivals, 2 * size);
            }
            int arrival = arrived++;
            int at = size++;
            while (at > 0) {
                int above = (at - 1) / BRANCHES;
                if (!isBefore(key, ground, arrival, above)) {
                    break;
                }
                move(above, at);
                at = above;
            }
            put(at, key, ground, cell, arrival);
        }

        int take() {
            int taken = cells[0];
            size--;
            double key = keys[size];
            double ground = grounds[size];
            int cell = cells[size];
            int arrival = arrivals[size];
            int at = 0;
            while (BRANCHES * at + 1 < size) {
                int below = BRANCHES * at + 1;
                int end = Math.min(size, below + BRANCHES);
                for (int other = below + 1; other < end; other++) {
                    if (isBefore(keys[other], grounds[other], arrivals[other], below)) {
                        below = other;
                    }
                }
                if (isBefore(key, ground, arrival, below)) {
                    break;
                }
                move(below, at);
                at = below;
            }
            put(at, key, ground, cell, arrival);
            return taken;
        }

        private boolean isBefore(double key, double ground, int arrival, int other) {
            if (key != keys[other]) {
                return key < keys[other];
            }
            return ground != grounds[other] ? ground < grounds[other] : arrival < arrivals[other];
        }

        private void move(int from, int to) {
            put(to, keys[from], grounds[from], cells[from], arrivals[from]);
        }

        private void put(int at, double key, double ground, int cell, int arrival) {
            keys[at] = key;
            grounds[at] = ground;
            cells[at] = cell;
            arrivals[at] = arrival;
        }
    }

    /** The pipes, as cells. */
    private static final class PipeCells {
        private final int[] inlets;
        private final int[] outlets;
        private final double[] levels;

        PipeCells(Cells cells, List<PlacedPipe> pipes, double[] heights) {
            List<PlacedPipe> open =
                    pipes.stream()
                            .filter(p -> p.link() != null)
                            .filter(
                                    p -> {
                                        int in = cells.at(p.pipe().inletX(), p.pipe().inletY());
                                        return in >= 0 && !Double.isNaN(heights[in]);
                                    })
                            .toList();
            inlets = new int[open.size()];
            outlets = new int[open.size()];
            levels = new double[open.size()];
            for (int p = 0; p < inlets.length; p++) {
                PlacedPipe pipe = open.get(p);
                PipeLink link = pipe.link();
                if (link == null) {
                    continue; // left out above
                }
                inlets[p] = cells.at(pipe.pipe().inletX(), pipe.pipe().inletY());
                int out = cells.at(pipe.pipe().outletX(), pipe.pipe().outletY());
                boolean away = link.outletVertex() < 0 || out < 0 || Double.isNaN(heights[out]);
                outlets[p] = away ? FlowGrid.LEAVES : out;
                levels[p] =
                        Math.max(
                                link.inletHeight(),
                                away ? link.outletHeight() : Double.NEGATIVE_INFINITY);
                heights[inlets[p]] = Math.min(heights[inlets[p]], link.inletHeight());
            }
        }

        boolean any() {
            return outlets.length > 0;
        }

        int[] leaving() {
            return endingIn(FlowGrid.LEAVES);
        }

        int[] endingIn(int cell) {
            int count = 0;
            for (int outlet : outlets) {
                count += outlet == cell ? 1 : 0;
            }
            int[] found = new int[count];
            for (int p = outlets.length - 1; p >= 0; p--) {
                if (outlets[p] == cell) {
                    found[--count] = p;
                }
            }
            return found;
        }

        void raise(int pipe, double level) {
            levels[pipe] = Math.max(levels[pipe], level);
        }

        double level(int pipe) {
            return levels[pipe];
        }

        int inlet(int pipe) {
            return inlets[pipe];
        }

        int outlet(int pipe) {
            return outlets[pipe];
        }
    }
}
