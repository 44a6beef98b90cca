package lanewright.drainage.hollows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The one way down from every cell, and the land whose water comes through it.
 *
 * <p>From a cell water takes the steepest of the eight drops, a diagonal being longer by the root
 * of two; of equally steep ones the first, counting from east by north (D8: O'Callaghan and Mark,
 * 1984). Over level ground it goes away from the higher and toward the lower edge (Barnes, Lehman
 * and Mulla, An efficient assignment of drainage direction over flat surfaces, 2014, after
 * Garbrecht and Martz, 1997). From the deepest cell of a hollow it goes to the first cell beyond
 * the saddle by which the hollow, full, lets it out: a pool passes on what comes to it. Where
 * nothing near is lower and a passage falls, water goes through it. Where the survey ends and
 * nothing near is lower, water leaves.
 *
 * <p>Where it fails: eight directions bend flow over a plane by up to 22.5°, so an area that drains
 * to one place on a smooth slope can be off; in valleys and ditches it is good.
 */
public final class Downhill {

    /** Water leaves the survey from here. */
    public static final int LEAVES = -1;

    /** Slopes are taken as no less than this where they divide, rise over run. Our choice. */
    public static final double LEAST_SLOPE = 0.001;

    private static final int[] NO_CELLS = {};

    private final Hollows hollows;
    private final Terrain terrain;
    private final Layout layout;
    private long[] jumps = new long[0];
    private boolean jumpsKnown;

    /** Cells to which water goes from some pit or passage: few. */
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
        return switch (way) {
            case Ways.OUT -> LEAVES;
            case Ways.THROUGH -> hollows.passages().through(cell);
            default -> hollows.nest().exit(hollows.roots().leaf(hollows.roots().of(cell)));
        };
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

    /** Cells through which at least so many cells' water comes, in the order of their numbers. */
    public int[] carrying(int least) {
        int[] found = new int[1024];
        int count = 0;
        for (int tile = 0; tile < layout.tiles(); tile++) {
            byte[] ways = hollows.tile(tile).ways();
            for (int local = 0; local < ways.length; local++) {
                if (hollows.through(tile, local) >= least
                        && (ways[local] & Ways.MASK) != Ways.NONE) {
                    found = room(found, count + 1);
                    found[count++] = layout.cell(tile, local);
                }
            }
        }
        int[] all = Arrays.copyOf(found, count);
        Arrays.sort(all);
        return all;
    }

    /**
     * All cells whose water comes through a cell, itself included, in the order of their numbers.
     */
    public int[] catchment(int cell) {
        checkLand(cell);
        var upstream = new Upstream(this, hollows);
        upstream.climb(cell, null);
        int[] all = new int[upstream.count()];
        for (int i = 0; i < all.length; i++) {
            all[i] = upstream.cell(i);
        }
        Arrays.sort(all);
        return all;
    }

    /**
     * What comes to a place that is one or more cells.
     *
     * @param cells how many cells' water meets this place before all others, its own left out
     * @param rim how many of those lie at the survey's edge
     * @param length the longest way of that water, from middle to middle of cells, straight across
     *     a pool, m
     * @param from the cell that it begins in; of equally long ones that of the lowest number; the
     *     place's own where nothing comes
     * @param to the cell of the place to which it comes
     */
    public record Supply(int cells, int rim, double length, int from, int to) {}

    /**
     * What comes to each of several places. Water that has been in one is not counted at another.
     *
     * @param places number of the place that each cell belongs to, or -1
     * @param count how many places there are
     * @return one for each place; from and to are -1 for one without a cell that has land
     */
    public List<Supply> supplies(int[] places, int count) {
        int[] cells = new int[count];
        int[] rim = new int[count];
        double[] length = new double[count];
        int[] from = new int[count];
        int[] to = new int[count];
        Arrays.fill(from, -1);
        Arrays.fill(to, -1);
        var upstream = new Upstream(this, hollows);
        for (int cell = 0; cell < places.length; cell++) {
            int place = places[cell];
            if (place < 0 || Double.isNaN(terrain.height(cell))) {
                continue;
            }
            upstream.climb(cell, places);
            cells[place] += upstream.count() - 1;
            int far = farthest(upstream);
            if (from[place] < 0
                    || upstream.length(far) > length[place]
                    || (upstream.length(far) == length[place]
                            && upstream.cell(far) < from[place])) {
                length[place] = upstream.length(far);
                from[place] = upstream.cell(far);
                to[place] = cell;
            }
            for (int i = 1; i < upstream.count(); i++) {
                rim[place] += isRim(upstream.cell(i)) ? 1 : 0;
            }
        }
        List<Supply> all = new ArrayList<>();
        for (int place = 0; place < count; place++) {
            all.add(new Supply(cells[place], rim[place], length[place], from[place], to[place]));
        }
        return all;
    }

    private static int farthest(Upstream upstream) {
        int far = 0;
        for (int i = 1; i < upstream.count(); i++) {
            if (upstream.length(i) > upstream.length(far)
                    || (upstream.length(i) == upstream.length(far)
                            && upstream.cell(i) < upstream.cell(far))) {
                far = i;
            }
        }
        return far;
    }

    private boolean isRim(int cell) {
        return (hollows.tile(layout.tile(cell)).ways()[layout.local(cell)] & Ways.RIM) != 0;
    }

    /** The way from a cell as {@link Ways} has it. */
    int way(int cell) {
        return hollows.tile(layout.tile(cell)).ways()[layout.local(cell)] & Ways.MASK;
    }

    /** Cells that lie elsewhere, pits or ends of passages, from which water goes to a cell. */
    int[] sources(int cell) {
        knowJumps();
        if (!met.get(cell)) {
            return NO_CELLS;
        }
        int from = Arrays.binarySearch(jumps, (long) cell << 32);
        from = from < 0 ? -from - 1 : from;
        int to = from;
        while (to < jumps.length && jumps[to] >>> 32 == cell) {
            to++;
        }
        int[] found = new int[to - from];
        for (int i = from; i < to; i++) {
            found[i - from] = (int) jumps[i];
        }
        return found;
    }

    private synchronized void knowJumps() {
        if (jumpsKnown) {
            return;
        }
        Roots roots = hollows.roots();
        int leaves = roots.leafCount();
        List<Passage> passages = hollows.passages().all();
        long[] found = new long[leaves + passages.size()];
        int count = 0;
        for (int leaf = 1; leaf < leaves; leaf++) {
            count = jump(found, count, roots.pit(leaf), hollows.nest().exit(leaf));
        }
        for (Passage passage : passages) {
            int cell = passage.from();
            if (way(cell) == Ways.THROUGH && hollows.passages().through(cell) == passage.to()) {
                count = jump(found, count, cell, passage.to());
            }
        }
        jumps = Arrays.stream(found, 0, count).sorted().distinct().toArray();
        jumpsKnown = true;
    }

    private int jump(long[] found, int count, int from, int to) {
        if (to < 0) {
            return count;
        }
        met.set(to);
        found[count] = ((long) to << 32) | from;
        return count + 1;
    }

    /**
     * The way that water takes from a cell until it leaves the survey, from cell to neighbouring
     * cell, but where it goes through a passage. A hollow is crossed from its deepest cell to its
     * saddle by the way on which water would run down from there.
     */
    public int[] path(int from) {
        checkLand(from);
        int[] way = new int[64];
        int count = 0;
        for (int cell = from; cell != LEAVES; cell = next(cell)) {
            int[] climb = crossing(cell);
            way = room(way, count + 1 + climb.length);
            way[count++] = cell;
            System.arraycopy(climb, 0, way, count, climb.length);
            count += climb.length;
        }
        return Arrays.copyOf(way, count);
    }

    /**
     * The cells that water crosses between a hollow's deepest and the first beyond its saddle: up
     * the way on which it would run down from there. None from a cell that is no pit.
     */
    public int[] crossing(int cell) {
        if (!isPit(cell)) {
            return NO_CELLS;
        }
        int[] way = new int[64];
        int count = 0;
        int back = exitFrom(cell);
        while (back != cell) {
            way = room(way, count + 1);
            way[count++] = back;
            back = next(back);
        }
        for (int i = 0, j = count - 1; i < j; i++, j--) {
            int spare = way[i];
            way[i] = way[j];
            way[j] = spare;
        }
        return Arrays.copyOf(way, count);
    }

    /**
     * Where water stands that goes out over a cell: the deepest cell of a hollow that lets its
     * water out there, once full, else the cell itself.
     */
    public int standsAt(int cell) {
        checkLand(cell);
        int leaf = hollows.roots().leaf(hollows.roots().of(cell));
        boolean spills = leaf != Roots.OPEN && hollows.nest().exitFrom(leaf) == cell;
        return spills ? hollows.roots().pit(leaf) : cell;
    }

    private int exitFrom(int pit) {
        return hollows.nest().exitFrom(hollows.roots().leaf(hollows.roots().of(pit)));
    }

    private static int[] room(int[] way, int count) {
        return count <= way.length ? way : Arrays.copyOf(way, 2 * count);
    }

    /** Slope of the ground along the way down from a cell, rise over run; zero where none is. */
    public double slope(int cell) {
        int way = way(cell);
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
            if (way(cell) == Ways.OUT
                    || ((isPit(cell) || way(cell) == Ways.THROUGH) && next(cell) == LEAVES)) {
                found.set(cell);
            }
        }
        return found.stream().toArray();
    }
}
