package lanewright.drainage.flow;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import lanewright.drainage.hollows.Downhill;
import lanewright.drainage.hollows.Hollow;
import lanewright.drainage.hollows.Hollows;
import lanewright.drainage.hollows.Passage;
import lanewright.drainage.hollows.Terrain;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PipeLink;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.Trace;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * The way water takes over the cells of a surface, through its pipes too, and the land that drains
 * through each: {@link Hollows} and {@link Downhill} on the heights of {@link CellHeights}. Cells
 * at the rim of the survey and of its holes let water out.
 */
public final class FlowGrid {

    /** Water leaves the land from here. */
    public static final int LEAVES = Downhill.LEAVES;

    private final Cells cells;
    private final double[] heights;
    private final Hollows hollows;
    private final Downhill downhill;

    private FlowGrid(Cells cells, double[] heights, Hollows hollows) {
        this.cells = cells;
        this.heights = heights;
        this.hollows = hollows;
        downhill = hollows.downhill();
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
        return of(cells, heights, pipes, null, progress.part(0.5, 1));
    }

    /** Heights are taken over: cells with a pipe's inlet go down to it. */
    private static FlowGrid of(
            Cells cells,
            double[] heights,
            List<PlacedPipe> pipes,
            @Nullable FlowGrid near,
            Progress progress) {
        List<Passage> passages = passages(cells, heights, pipes);
        Terrain terrain = Terrain.of(cells.columns(), cells.rows(), cells.size(), heights);
        return new FlowGrid(
                cells,
                heights,
                near == null
                        ? Hollows.of(terrain, passages, progress)
                        : near.hollows.on(terrain, passages, progress));
    }

    private static List<Passage> passages(Cells cells, double[] heights, List<PlacedPipe> pipes) {
        List<Passage> passages = new ArrayList<>();
        for (PlacedPipe pipe : pipes) {
            PipeLink link = pipe.link();
            int in = cells.at(pipe.pipe().inletX(), pipe.pipe().inletY());
            if (link == null || in < 0 || Double.isNaN(heights[in])) {
                continue;
            }
            int out = cells.at(pipe.pipe().outletX(), pipe.pipe().outletY());
            boolean away = link.outletVertex() < 0 || out < 0 || Double.isNaN(heights[out]);
            if (in == out && !away) {
                continue; // both ends in one cell: water is there already
            }
            heights[in] = Math.min(heights[in], link.inletHeight());
            passages.add(
                    away
                            ? new Passage(
                                    in,
                                    Hollow.OUTSIDE,
                                    Math.max(link.inletHeight(), link.outletHeight()))
                            : new Passage(in, out, link.inletHeight()));
        }
        return passages;
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
            return of(cells, heights.clone(), pipes, null, progress);
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

        /**
         * Water over a surface of which these are the heights; they are taken over.
         *
         * @param near water over these cells with other heights: the answer is the same without,
         *     but what did not change is not worked out again
         */
        public FlowGrid flow(
                double[] taken, List<PlacedPipe> pipes, FlowGrid near, Progress progress) {
            return of(cells, taken, pipes, near, progress);
        }
    }

    /**
     * Water over cells whose heights are given by rows from the south; NaN where there is no land.
     */
    static FlowGrid of(Cells cells, double[] heights) {
        return of(cells, heights, List.of(), null, Progress.NONE);
    }

    /** The cells. */
    public Cells cells() {
        return cells;
    }

    /** The hollows of the surface, one inside another. */
    public Hollows hollows() {
        return hollows;
    }

    /** Height of a cell, m; NaN where there is no land. */
    public double height(int cell) {
        return heights[cell];
    }

    /** Height to which water stands on the cell once all is full, m; NaN where there is no land. */
    public double level(int cell) {
        return hollows.level(cell);
    }

    /**
     * The cell to which water goes from this one, or {@link #LEAVES}, as from a cell without land.
     * From the deepest cell of a hollow and through a pipe it may lie far away.
     */
    public int next(int cell) {
        return isLand(cell) ? downhill.next(cell) : LEAVES;
    }

    private boolean isLand(int cell) {
        return !Double.isNaN(heights[cell]);
    }

    /** Area of the land that drains through the cell, its own included, m². */
    public double drained(int cell) {
        return downhill.drained(cell);
    }

    /** Slope of the ground along the way down from a cell, rise over run; NaN without land. */
    public double slope(int cell) {
        return isLand(cell) ? downhill.slope(cell) : Double.NaN;
    }

    /** The cells through which at least {@code area} m² drain, in the order of their numbers. */
    public int[] carrying(double area) {
        return downhill.carrying((int) Math.max(1, Math.ceil(area / cells.area())));
    }

    /**
     * Whether some of the land that drains through the cell lies at the rim of the survey or of a
     * hole in it, so that water from beyond may come along.
     */
    public boolean reachesRim(int cell) {
        return isLand(cell) && downhill.isCutOff(cell);
    }

    /**
     * Where water stands before it goes out over a cell: the deepest cell of a hollow that spills
     * there, as into the inlet of a pipe that lies above its bottom; else the cell itself. What
     * comes to the one comes to the other.
     */
    public int standsAt(int cell) {
        return isLand(cell) ? downhill.standsAt(cell) : cell;
    }

    /**
     * Where water goes over that stands before a pipe which takes none.
     *
     * @param level to which it stands then, m
     * @param x local easting of the place, m, in the middle of a cell
     * @param y local northing of the place, m, in the middle of a cell
     * @param isAway whether it leaves the survey there
     */
    public record Over(double level, double x, double y, boolean isAway) {}

    /**
     * Where the water before a pipe's inlet would go over if that pipe took none and all others
     * what comes to them; null where none would stand there.
     */
    public @Nullable Over without(GivenPipe pipe) {
        int inlet = cells.at(pipe.inletX(), pipe.inletY());
        if (inlet < 0 || !isLand(inlet)) {
            return null;
        }
        List<Passage> others =
                hollows.through().stream().filter(each -> each.from() != inlet).toList();
        Hollows closed = hollows.on(hollows.terrain(), others, Progress.NONE);
        int at = closed.at(inlet);
        if (at == Hollow.OUTSIDE) {
            return null;
        }
        Hollow hollow = closed.hollow(at);
        while (hollow.parent() != Hollow.OUTSIDE) {
            hollow = closed.hollow(hollow.parent());
        }
        boolean away = hollow.beyond() == Hollow.OUTSIDE;
        int over =
                away || heights[hollow.sill()] >= heights[hollow.beyond()]
                        ? hollow.sill()
                        : hollow.beyond();
        return new Over(hollow.spillHeight(), cells.x(over), cells.y(over), away);
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
        double[] area = new double[spots.size()];
        boolean[] least = new boolean[spots.size()];
        for (int cell = 0; cell < in.length; cell++) {
            int spot = in[cell];
            if (spot < 0 || !isLand(cell)) {
                continue;
            }
            least[spot] |= reachesRim(cell);
            int at = next(cell);
            while (at != LEAVES && in[at] != spot) {
                at = next(at);
            }
            if (at == LEAVES) {
                area[spot] += drained(cell); // it does not come back
            }
        }
        List<Drained> drains = new ArrayList<>();
        for (int spot = 0; spot < area.length; spot++) {
            drains.add(new Drained(area[spot], least[spot]));
        }
        return drains;
    }

    /** The cells of low spots, by their numbers; -1 for all others. */
    public int[] cellsOf(List<LowSpot> spots) {
        return SpotCells.of(cells, spots);
    }

    /**
     * The longest way that water takes to a place.
     *
     * @param length m, zero where none comes from elsewhere
     * @param fall how much higher its head lies than its end, m
     */
    public record Way(double length, double fall) {
        /** No way: nothing comes. */
        public static final Way NONE = new Way(0, 0);
    }

    /**
     * What comes to a place.
     *
     * @param area land whose water meets this place before all others, its own cells left out, m²
     * @param isLeast whether more may come from beyond the survey
     * @param way the longest way of that water
     */
    public record Gathered(double area, boolean isLeast, Way way) {}

    /**
     * What comes to each of several places, each bit of land counted where its water first meets
     * one of them.
     *
     * @param places number of the place that each cell belongs to, or -1
     * @param count how many places there are
     */
    public List<Gathered> gathered(int[] places, int count) {
        List<Gathered> all = new ArrayList<>();
        for (Downhill.Supply supply : downhill.supplies(places, count)) {
            Way way =
                    supply.from() < 0
                            ? Way.NONE
                            : new Way(
                                    supply.length(),
                                    Math.max(0, heights[supply.from()] - heights[supply.to()]));
            all.add(new Gathered(supply.cells() * cells.area(), supply.rim() > 0, way));
        }
        return all;
    }

    /**
     * Every way that drains at least {@code area} m², from its head or from where it joins on; from
     * the highest head down.
     */
    public List<FlowPath> paths(double area) {
        int[] carrying = carrying(area);
        var fed = new BitSet();
        for (int cell : carrying) {
            int next = next(cell);
            if (next != LEAVES) {
                fed.set(next);
            }
        }
        List<Integer> heads =
                IntStream.of(carrying)
                        .filter(cell -> !fed.get(cell))
                        .boxed()
                        .sorted(
                                Comparator.comparingDouble((Integer cell) -> -heights[cell])
                                        .thenComparingInt(cell -> cell))
                        .toList();
        var drawn = new BitSet();
        List<FlowPath> paths = new ArrayList<>();
        for (int head : heads) {
            List<Integer> way = new ArrayList<>();
            int last = head;
            for (int cell = head; cell != LEAVES; cell = next(cell)) {
                way.add(cell);
                if (drawn.get(cell)) {
                    break;
                }
                drawn.set(cell);
                last = cell;
                IntStream.of(downhill.crossing(cell)).forEach(way::add);
            }
            paths.add(new FlowPath(trace(way), drained(head), drained(last)));
        }
        return paths;
    }

    /** A course through the middles of cells; points on a straight run are left out. */
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
