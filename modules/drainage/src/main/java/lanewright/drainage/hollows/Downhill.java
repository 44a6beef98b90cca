package lanewright.drainage.hollows;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The one way down from every cell, and the land whose water comes through it.
 *
 * <p>From a cell water takes the steepest of the eight drops, a diagonal being longer by the root
 * of two; of equally steep ones the first, counting from east by north (D8: O'Callaghan and Mark,
 * 1984). Over level ground it goes away from the higher and toward the lower edge (Barnes, Lehman
 * and Mulla, An efficient assignment of drainage direction over flat surfaces, 2014, after
 * Garbrecht and Martz, 1997). From the deepest cell of a hollow it goes to the first cell beyond
 * the saddle by which the hollow, full, lets it out: a pool passes on what comes to it. Where the
 * survey ends and nothing near is lower, water leaves.
 *
 * <p>Where it fails: eight directions bend flow over a plane by up to 22.5°, so an area that drains
 * to one place on a smooth slope can be off; in valleys and ditches it is good.
 */
public final class Downhill {

    /** Water leaves the survey from here. */
    public static final int LEAVES = -1;

    /** Slopes are taken as no less than this where they divide, rise over run. Our choice. */
    public static final double LEAST_SLOPE = 0.001;

    private static final int[] NO_PITS = {};

    private final Hollows hollows;
    private final Terrain terrain;
    private final Layout layout;
    private int[] fromPits = new int[0];
    private long[] jumps = new long[0];
    private boolean jumpsKnown;

    /** Cells to which water goes from some pit: few. */
    private final BitSet met = new BitSet();

    private final int[][] rims;

    Downhill(Hollows hollows) {
        this.hollows = hollows;
        this.terrain = hollows.terrain();
        this.layout = terrain.layout();
        rims = new int[layout.tiles()][];
    }

    /**
     * The cell to which water goes from a cell with land, or {@link #LEAVES}. From the deepest cell
     * of a hollow that may lie far away.
     */
    public int next(int cell) {
        int tile = layout.tile(cell);
        int way = hollows.tile(tile).ways()[layout.local(cell)] & Ways.MASK;
        if (way < 8) {
            return layout.neighbour(cell, way);
        }
        checkLand(cell);
        return way == Ways.OUT
                ? LEAVES
                : hollows.nest().exit(hollows.roots().leaf(hollows.roots().of(cell)));
    }

    private void checkLand(int cell) {
        if (Double.isNaN(terrain.height(cell))) {
            throw new IllegalArgumentException("there is no land at cell " + cell);
        }
    }

    /** Whether a cell is the deepest of a hollow without parts. */
    public boolean isPit(int cell) {
        int way = hollows.tile(layout.tile(cell)).ways()[layout.local(cell)] & Ways.MASK;
        return way == Ways.PIT;
    }

    /**
     * How many cells' water comes through a cell, its own included; zero where there is no land.
     */
    public int accumulated(int cell) {
        return hollows.through(layout.tile(cell), layout.local(cell));
    }

    /** Area of the land whose water comes through a cell, its own included, m². */
    public double drained(int cell) {
        return accumulated(cell) * terrain.cellSize() * terrain.cellSize();
    }

    /**
     * How many cells at the survey's edge send their water through a cell, itself included. If any,
     * water from beyond may come along: what {@link #drained} says is then the least.
     */
    public int fromRim(int cell) {
        checkLand(cell);
        int tile = layout.tile(cell);
        int[] known = rims[tile];
        if (known == null) {
            known = rims(tile);
            rims[tile] = known; // two threads would put the same
        }
        return known[layout.local(cell)];
    }

    /** Whether more land may drain through a cell than the survey shows. */
    public boolean isCutOff(int cell) {
        return fromRim(cell) > 0;
    }

    /**
     * Length of the survey's edge over which water of unknown land may come to a cell, m: a cell's
     * side for each cell of that edge.
     */
    public double openEdge(int cell) {
        return fromRim(cell) * terrain.cellSize();
    }

    private int[] rims(int tile) {
        Tile here = hollows.tile(tile);
        int[] count = new int[here.ways().length];
        for (int local = 0; local < count.length; local++) {
            if ((here.ways()[local] & Ways.RIM) != 0) {
                pass(tile, local, 1, count);
            }
        }
        Gathered gathered = hollows.gathered();
        for (int root = 0; root < gathered.targets().length; root++) {
            int target = gathered.targets()[root];
            if (gathered.rim()[root] > 0 && target >= 0 && layout.tile(target) == tile) {
                pass(tile, layout.local(target), gathered.rim()[root], count);
            }
        }
        return count;
    }

    private void pass(int tile, int local, int more, int[] count) {
        int cell = layout.cell(tile, local);
        while (cell >= 0 && layout.tile(cell) == tile) {
            count[layout.local(cell)] += more;
            int way = hollows.tile(tile).ways()[layout.local(cell)] & Ways.MASK;
            cell = way < 8 ? layout.neighbour(cell, way) : -1;
        }
    }

    /**
     * All cells whose water comes through a cell, itself included, in the order of their numbers.
     */
    public int[] catchment(int cell) {
        checkLand(cell);
        int[] found = new int[Math.max(16, accumulated(cell))];
        int end = 1;
        found[0] = cell;
        for (int i = 0; i < end; i++) {
            int at = found[i];
            for (int way = 0; way < 8; way++) {
                int other = layout.neighbour(at, way);
                if (other >= 0 && wayOf(other) == (way + 4) % 8) {
                    found[end++] = other;
                }
            }
            for (int pit : pitsTo(at)) {
                found[end++] = pit;
            }
        }
        int[] all = Arrays.copyOf(found, end);
        Arrays.sort(all);
        return all;
    }

    /**
     * The longest way of water to a cell.
     *
     * @param length from middle to middle of cells, straight across a pool, m
     * @param from the cell that it begins in
     */
    public record Longest(double length, int from) {}

    /** The longest way of water to a cell; of equally long ones that from the lowest number. */
    public Longest longest(int cell) {
        checkLand(cell);
        int[] found = new int[Math.max(16, accumulated(cell))];
        double[] length = new double[found.length];
        int end = 1;
        int farthest = 0;
        found[0] = cell;
        for (int i = 0; i < end; i++) {
            int at = found[i];
            boolean farther =
                    length[i] > length[farthest]
                            || (length[i] == length[farthest] && at < found[farthest]);
            farthest = farther ? i : farthest;
            for (int way = 0; way < 8; way++) {
                int other = layout.neighbour(at, way);
                if (other >= 0 && wayOf(other) == (way + 4) % 8) {
                    length[end] = length[i] + apart(at, other);
                    found[end++] = other;
                }
            }
            for (int pit : pitsTo(at)) {
                length[end] = length[i] + apart(at, pit);
                found[end++] = pit;
            }
        }
        return new Longest(length[farthest], found[farthest]);
    }

    private double apart(int cell, int other) {
        int columns = terrain.columns();
        int north = cell / columns - other / columns;
        int east = cell % columns - other % columns;
        return Math.sqrt((double) north * north + (double) east * east) * terrain.cellSize();
    }

    private int wayOf(int cell) {
        return hollows.tile(layout.tile(cell)).ways()[layout.local(cell)] & Ways.MASK;
    }

    /** Pits from which water goes to a cell. */
    private int[] pitsTo(int cell) {
        knowJumps();
        if (!met.get(cell)) {
            return NO_PITS;
        }
        int from = Arrays.binarySearch(jumps, (long) cell << 32);
        from = from < 0 ? -from - 1 : from;
        int to = from;
        while (to < jumps.length && jumps[to] >>> 32 == cell) {
            to++;
        }
        int[] found = new int[to - from];
        for (int i = from; i < to; i++) {
            found[i - from] = fromPits[(int) jumps[i]];
        }
        return found;
    }

    private synchronized void knowJumps() {
        if (jumpsKnown) {
            return;
        }
        Roots roots = hollows.roots();
        int leaves = roots.leafCount();
        fromPits = new int[leaves];
        jumps = new long[leaves];
        int count = 0;
        for (int leaf = 1; leaf < leaves; leaf++) {
            fromPits[leaf] = roots.pit(leaf);
            int exit = hollows.nest().exit(leaf);
            if (exit >= 0) {
                jumps[count++] = ((long) exit << 32) | leaf;
                met.set(exit);
            }
        }
        jumps = Arrays.copyOf(jumps, count);
        Arrays.sort(jumps);
        jumpsKnown = true;
    }

    /**
     * The way that water takes from a cell until it leaves the survey, from cell to neighbouring
     * cell. A hollow is crossed from its deepest cell to its saddle by the way on which water would
     * run down from there.
     */
    public int[] path(int from) {
        checkLand(from);
        int[] way = new int[64];
        int count = 0;
        int cell = from;
        while (cell != LEAVES) {
            way = room(way, count + 1);
            way[count++] = cell;
            int next = next(cell);
            if (isPit(cell)) {
                int climb = count;
                int leaf = hollows.roots().leaf(hollows.roots().of(cell));
                int back = hollows.nest().exitFrom(leaf);
                while (back != cell) {
                    way = room(way, count + 1);
                    way[count++] = back;
                    back = next(back);
                }
                for (int i = climb, j = count - 1; i < j; i++, j--) {
                    int spare = way[i];
                    way[i] = way[j];
                    way[j] = spare;
                }
            }
            cell = next;
        }
        return Arrays.copyOf(way, count);
    }

    private static int[] room(int[] way, int count) {
        return count <= way.length ? way : Arrays.copyOf(way, 2 * count);
    }

    /** Slope of the ground along the way down from a cell, rise over run; zero where none is. */
    public double slope(int cell) {
        int way = wayOf(cell);
        if (way >= 8) {
            checkLand(cell);
            return 0;
        }
        double drop = terrain.height(cell) - terrain.height(layout.neighbour(cell, way));
        return drop / (way % 2 == 0 ? terrain.cellSize() : terrain.cellSize() * Math.sqrt(2));
    }

    /**
     * The topographic wetness index {@code ln(a / tan b)} (Beven and Kirkby, A physically based,
     * variable contributing area model of basin hydrology, 1979): {@code a} the area that drains
     * through the cell for each metre of a cell's side, m, and {@code tan b} the {@link #slope},
     * taken as no less than {@link #LEAST_SLOPE}. High where much land drains and little falls.
     */
    public double wetness(int cell) {
        return Math.log(drained(cell) / terrain.cellSize() / Math.max(LEAST_SLOPE, slope(cell)));
    }

    /** The cells where water leaves the survey, in the order of their numbers. */
    public int[] outlets() {
        var found = new BitSet();
        for (int cell = 0; cell < terrain.cells(); cell++) {
            if (wayOf(cell) == Ways.OUT || (isPit(cell) && next(cell) == LEAVES)) {
                found.set(cell);
            }
        }
        return found.stream().toArray();
    }
}
