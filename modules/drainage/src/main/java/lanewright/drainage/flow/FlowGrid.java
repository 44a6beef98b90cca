package lanewright.drainage.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.Trace;
import lanewright.measure.Progress;

/**
 * The way water takes from every cell, and the land that drains through it.
 *
 * <p>From each cell water takes the steepest of the eight drops, a diagonal being longer by the
 * root of two (D8: O'Callaghan and Mark, The extraction of drainage networks from digital elevation
 * data, 1984). Of equally steep ones it takes the first, counting from east by north. Where nothing
 * near is lower, it goes to the cell from which the flood came that first reached it (Barnes,
 * Lehman and Mulla, Priority-Flood, 2014): so pools are crossed to their spill point, level land is
 * crossed to its nearest edge, and nothing goes round in circles. Cells at the rim of the survey
 * and of its holes let water out.
 *
 * <p>Where it fails: eight directions bend flow over a plane by up to 22.5°, so an area that drains
 * to one place on a smooth slope can be off; in valleys and ditches it is good.
 */
public final class FlowGrid {

    /** Water leaves the land from here. */
    public static final int LEAVES = -1;

    /** The eight neighbours, counting from east by north: columns. */
    static final int[] EAST = {1, 1, 0, -1, -1, -1, 0, 1};

    /** The eight neighbours, counting from east by north: rows. */
    static final int[] NORTH = {0, 1, 1, 1, 0, -1, -1, -1};

    private final Cells cells;
    private final double[] heights;
    private final double[] levels;
    private final int[] next;
    private final int[] order;
    private final int[] drained;
    private final boolean[] fromRim;

    private FlowGrid(Cells cells, double[] heights, GridFlood flood, Progress progress) {
        this.cells = cells;
        this.heights = heights;
        levels = flood.levels();
        order = flood.order();
        next = flood.parents();
        drained = new int[cells.count()];
        fromRim = flood.open();
        direct(progress);
        progress.check();
        gather();
    }

    /**
     * Water over {@code mesh}.
     *
     * @param pipes pipes that let water through, with their ends on this surface
     */
    public static FlowGrid of(Mesh mesh, Cells cells, List<PlacedPipe> pipes, Progress progress) {
        progress.report(0, "finding the ways of water");
        double[] heights = CellHeights.of(mesh, cells, progress);
        progress.check();
        progress.report(0.5, "finding the ways of water");
        return new FlowGrid(
                cells, heights, GridFlood.of(cells, heights, pipes, progress), progress);
    }

    /**
     * Cells of a surface, from which those of others that differ little from it are quickly found.
     */
    public static final class Base {
        private final Mesh mesh;
        private final Cells cells;
        private final double[] heights;
        private final Boxes boxes;

        /**
         * The cells of {@code mesh}.
         *
         * @param progress told of the work, and asked whether to go on
         */
        public Base(Mesh mesh, Cells cells, Progress progress) {
            this.mesh = mesh;
            this.cells = cells;
            progress.report(0, "finding the ways of water");
            heights = CellHeights.of(mesh, cells, progress);
            boxes = Boxes.of(mesh, cells);
        }

        /** The cells. */
        public Cells cells() {
            return cells;
        }

        /** Water over the surface itself. */
        public FlowGrid flow(List<PlacedPipe> pipes, Progress progress) {
            progress.report(0.5, "finding the ways of water");
            double[] own = heights.clone();
            return new FlowGrid(cells, own, GridFlood.of(cells, own, pipes, progress), progress);
        }

        /**
         * Heights of these cells on a surface that differs from this one, the same as if taken from
         * all of it.
         *
         * @param changed the surface
         * @param unchanged for each of its triangles the one of this surface that it is, never
         *     decreasing, or -1 if it is new
         */
        public double[] heights(Mesh changed, IntUnaryOperator unchanged, Progress progress) {
            return CellHeights.changed(mesh, heights, boxes, changed, unchanged, cells, progress);
        }

        /** Water over a surface of which these are the heights; they are taken over. */
        public FlowGrid flow(double[] taken, List<PlacedPipe> pipes, Progress progress) {
            return new FlowGrid(
                    cells, taken, GridFlood.of(cells, taken, pipes, progress), progress);
        }
    }

    /**
     * Water over cells whose heights are given by rows from the south; NaN where there is no land.
     */
    static FlowGrid of(Cells cells, double[] heights) {
        return new FlowGrid(
                cells,
                heights,
                GridFlood.of(cells, heights, List.of(), Progress.NONE),
                Progress.NONE);
    }

    /** The cells. */
    public Cells cells() {
        return cells;
    }

    /** Height of a cell, m; NaN where there is no land. */
    public double height(int cell) {
        return heights[cell];
    }

    /** Height to which water stands on the cell once all is full, m; NaN where there is no land. */
    public double level(int cell) {
        return levels[cell];
    }

    /** The cell to which water goes from this one, or {@link #LEAVES}. */
    public int next(int cell) {
        return next[cell];
    }

    /** Area of the land that drains through the cell, its own included, m². */
    public double drained(int cell) {
        return drained[cell] * cells.area();
    }

    /**
     * Whether some of the land that drains through the cell lies at the rim of the survey or of a
     * hole in it, so that water from beyond may come along.
     */
    public boolean reachesRim(int cell) {
        return fromRim[cell];
    }

    private void direct(Progress progress) {
        for (int i = 0; i < order.length; i++) {
            if (i % GridFlood.OFTEN == 0) {
                progress.check();
            }
            int cell = order[i];
            int row = cell / cells.columns();
            int column = cell % cells.columns();
            double steepest = 0;
            for (int d = 0; d < 8; d++) {
                int r = row + NORTH[d];
                int c = column + EAST[d];
                if (r < 0 || c < 0 || r >= cells.rows() || c >= cells.columns()) {
                    continue;
                }
                int other = r * cells.columns() + c;
                if (levels[other] < levels[cell]) {
                    double drop = heights[cell] - heights[other];
                    double slope = d % 2 == 0 ? drop : drop * Math.sqrt(0.5);
                    if (slope > steepest) {
                        steepest = slope;
                        next[cell] = other;
                    }
                }
            }
        }
    }

    private void gather() {
        for (int i = order.length - 1; i >= 0; i--) {
            int cell = order[i];
            drained[cell]++;
            if (next[cell] != LEAVES) {
                drained[next[cell]] += drained[cell];
                fromRim[next[cell]] |= fromRim[cell];
            }
        }
    }

    /**
     * The land whose water reaches a low spot.
     *
     * @param area m², the spot itself and the spots that spill into it included
     * @param isLeast whether some of it lies at the rim of the survey or of a hole in it, so that
     *     water from beyond may come along
     */
    public record Drained(double area, boolean isLeast) {}

    /** The land whose water reaches each low spot. */
    public List<Drained> drainedTo(List<LowSpot> spots) {
        int[] in = SpotCells.of(cells, spots);
        int[] first = new int[cells.count()]; // first low spot on the way from here, or -1
        int[] after = new int[spots.size()];
        Arrays.fill(after, -2);
        long[] own = new long[spots.size()];
        boolean[] least = new boolean[spots.size()];
        for (int cell : order) {
            int spot = in[cell];
            int behind = next[cell] == LEAVES ? -1 : first[next[cell]];
            if (spot < 0) {
                first[cell] = behind;
            } else {
                first[cell] = spot;
                least[spot] |= fromRim[cell];
                if (after[spot] == -2) {
                    after[spot] = behind; // its first cell in flood order is where it spills
                }
            }
            if (first[cell] >= 0) {
                own[first[cell]]++;
            }
        }
        double[] total = new double[spots.size()];
        for (int spot = 0; spot < total.length; spot++) {
            int at = spot;
            for (int hops = 0; at >= 0 && hops <= total.length; hops++) {
                total[at] += own[spot] * cells.area();
                at = after[at];
            }
        }
        List<Drained> drains = new ArrayList<>();
        for (int spot = 0; spot < total.length; spot++) {
            drains.add(new Drained(total[spot], least[spot]));
        }
        return drains;
    }

    /**
     * The longest way that water takes to a place.
     *
     * @param length m, zero where none comes from elsewhere
     * @param fall how much higher its head lies than its end, m
     */
    public record Way(double length, double fall) {}

    /** The cells of low spots, by their numbers; -1 for all others. */
    public int[] cellsOf(List<LowSpot> spots) {
        return SpotCells.of(cells, spots);
    }

    /**
     * The longest way to each of several places, ended where it comes to the first of their cells.
     *
     * @param places number of the place that each cell belongs to, or -1
     * @param count how many places there are
     */
    public List<Way> farthest(int[] places, int count) {
        int[] end = new int[cells.count()];
        double[] length = new double[cells.count()];
        int[] farthest = new int[count];
        double[] most = new double[count];
        Arrays.fill(farthest, -1);
        for (int cell : order) {
            int after = next[cell];
            if (places[cell] >= 0) {
                end[cell] = cell;
            } else if (after == LEAVES || end[after] < 0) {
                end[cell] = -1;
                continue;
            } else {
                end[cell] = end[after];
                length[cell] =
                        length[after]
                                + Math.hypot(
                                        cells.x(cell) - cells.x(after),
                                        cells.y(cell) - cells.y(after));
            }
            int place = places[end[cell]];
            if (farthest[place] < 0 || length[cell] > most[place]) {
                most[place] = length[cell];
                farthest[place] = cell;
            }
        }
        List<Way> ways = new ArrayList<>();
        for (int place = 0; place < count; place++) {
            int head = farthest[place];
            ways.add(
                    head < 0
                            ? new Way(0, 0)
                            : new Way(
                                    most[place], Math.max(0, heights[head] - heights[end[head]])));
        }
        return ways;
    }

    /**
     * The way water takes from a cell until it leaves the land, through the middles of cells;
     * points on a straight run are left out.
     */
    public Trace path(int from) {
        List<Integer> way = new ArrayList<>();
        for (int cell = from; cell != LEAVES; cell = next[cell]) {
            way.add(cell);
        }
        return trace(way);
    }

    /** Every way that drains at least {@code area} m², from its head or from where it joins on. */
    public List<FlowPath> paths(double area) {
        boolean[] fed = new boolean[cells.count()];
        for (int cell : order) {
            if (next[cell] != LEAVES && drained(cell) >= area) {
                fed[next[cell]] = true;
            }
        }
        boolean[] drawn = new boolean[cells.count()];
        List<FlowPath> paths = new ArrayList<>();
        for (int i = order.length - 1; i >= 0; i--) {
            int head = order[i];
            if (drained(head) < area || fed[head]) {
                continue;
            }
            List<Integer> way = new ArrayList<>();
            int last = head;
            for (int cell = head; cell != LEAVES; cell = next[cell]) {
                way.add(cell);
                if (drawn[cell]) {
                    break;
                }
                drawn[cell] = true;
                last = cell;
            }
            paths.add(new FlowPath(trace(way), drained(head), drained(last)));
        }
        return paths;
    }

    private Trace trace(List<Integer> way) {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            boolean straight =
                    i > 0
                            && i + 1 < way.size()
                            && way.get(i) - way.get(i - 1) == way.get(i + 1) - way.get(i);
            if (!straight) {
                kept.add(way.get(i));
            }
        }
        return new Trace(
                kept.stream().mapToDouble(cells::x).toArray(),
                kept.stream().mapToDouble(cells::y).toArray(),
                false);
    }
}
