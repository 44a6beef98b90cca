package lanewright.drainage.hollows;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import lanewright.measure.Progress;
import lanewright.measure.SideBySide;
import org.jspecify.annotations.Nullable;

/**
 * All hollows of a terrain, one inside another, and where water goes over it.
 *
 * <p>Every cell runs down by its steepest drop to a pit. The lowest saddles between the lands of
 * neighbouring pits, taken from the lowest up, say which pools join, at what height, and where each
 * spills (Kruskal's spanning tree over the basins, as in Cordonnier, Bovy and Braun, A versatile,
 * linear complexity algorithm for flow routing in topographies with depressions, 2019; the levels
 * are those of Barnes, Lehman and Mulla, Priority-Flood, 2014). Cells meet their eight neighbours.
 * Water leaves at the edge of the grid and beside cells without land. A {@link Passage} is a saddle
 * between cells that do not lie side by side. Exact: levels are heights of cells and passages,
 * equal heights are taken in the order of cell numbers, and nothing hangs on the number of cores.
 *
 * <p>Work and memory grow with the number of cells, and no heap is kept over them: 15 bytes a cell
 * (8 of them the height), and some 250 for each pit and each cell where a way passes from tile to
 * tile, while it is worked out.
 *
 * <p>Immutable. A changed terrain shares all that the change does not touch.
 */
public final class Hollows {

    private final Terrain terrain;
    private final Passages passages;
    private final Tile[] tiles;
    private final Edges[] lists;
    private final Ladder ladder;
    private final Roots roots;
    private final Nest nest;
    private final Wet[] wet;
    private final Gathered gathered;
    private final int[][] through;
    private final int[] wetCells;
    private final double[] volumes;
    private final int[] land;
    private final int[] pools;
    private final int[] numbers;

    private Hollows(
            Terrain terrain,
            Passages passages,
            Tile[] tiles,
            Edges[] lists,
            boolean[] redone,
            @Nullable Hollows known,
            Progress progress) {
        this.terrain = terrain;
        this.passages = passages;
        this.tiles = tiles;
        this.lists = lists;
        ladder = Ladder.of(lists, known == null ? null : known.ladder);
        progress.check();
        roots = Roots.of(terrain.layout(), tiles);
        nest = Nest.of(terrain, roots, ladder);
        progress.check();
        progress.report(0.7, "filling hollows");
        wet = new Wet[tiles.length];
        int[][] under = wet(redone, known);
        gathered = Gathered.of(terrain.layout(), tiles, roots, nest);
        through = through(redone, known);
        progress.check();
        progress.report(0.9, "filling hollows");
        int count = nest.count();
        wetCells = new int[count];
        volumes = new double[count];
        land = new int[count];
        measure(under);
        numbers = new int[count];
        pools = number();
    }

    /** The hollows of a terrain. */
    public static Hollows of(Terrain terrain) {
        return of(terrain, List.of(), Progress.NONE);
    }

    /**
     * The hollows of a terrain.
     *
     * @param through ways of water below its ground
     * @throws IllegalArgumentException if one of them ends where there is no land
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public static Hollows of(Terrain terrain, List<Passage> through, Progress progress) {
        progress.report(0, "finding the ways of water");
        var passages = new Passages(terrain, through);
        int count = terrain.layout().tiles();
        byte[][] ways = new byte[count][];
        SideBySide.each(
                count,
                () -> new Ways(terrain),
                (hands, tile) -> {
                    progress.check();
                    ways[tile] = hands.of(tile);
                    passages.lead(tile, ways[tile]);
                });
        boolean[] all = new boolean[count];
        Arrays.fill(all, true);
        Flats.resolve(terrain, passages, ways, all, List.of());
        progress.report(0.2, "finding the ways of water");
        Tile[] tiles = new Tile[count];
        make(terrain, passages, ways, all, tiles, progress);
        progress.report(0.5, "filling hollows");
        Edges[] lists = new Edges[2 * count + 1];
        seam(terrain, tiles, all, lists);
        lists[2 * count] = passages.edges(tiles);
        return new Hollows(terrain, passages, tiles, lists, all, null, progress);
    }

    /**
     * The hollows of the terrain with other heights in a box: the same to the last bit as all
     * worked out anew, but only tiles that the change touches are, and what joins them. Passages
     * stay.
     *
     * @param box where heights change
     * @param heights all heights of the box, by rows from its south-west; NaN for no land
     * @throws IllegalArgumentException as {@link Terrain#changed} does
     */
    public Hollows changed(Box box, double[] heights) {
        Terrain now = terrain.changed(box, heights);
        List<Box> boxes = new ArrayList<>(List.of(box));
        var stay = new Passages(now, passages.all());
        boxes.addAll(stay.changedFrom(passages));
        return to(now, stay, boxes, Progress.NONE);
    }

    /**
     * The hollows of another terrain of as many and as large cells: the same to the last bit as if
     * worked out from the start, but only tiles in which or beside which heights differ are.
     *
     * @param through ways of water below its ground
     * @throws IllegalArgumentException if its cells are others, or a passage ends where there is no
     *     land
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public Hollows on(Terrain other, List<Passage> through, Progress progress) {
        if (!other.layout().equals(terrain.layout()) || other.cellSize() != terrain.cellSize()) {
            throw new IllegalArgumentException("the cells of the other terrain are others");
        }
        List<Box> boxes = terrain.differences(other);
        var now = new Passages(other, through);
        boxes.addAll(now.changedFrom(passages));
        return to(other, now, boxes, progress);
    }

    private Hollows to(Terrain now, Passages through, List<Box> boxes, Progress progress) {
        Layout layout = now.layout();
        int count = tiles.length;
        boolean[] redone = new boolean[count];
        byte[][] ways = new byte[count][];
        List<Box> near = new ArrayList<>();
        for (Box box : boxes) {
            int west = Math.max(0, box.column() - 1);
            int south = Math.max(0, box.row() - 1);
            int east = Math.min(layout.columns() - 1, box.column() + box.columns());
            int north = Math.min(layout.rows() - 1, box.row() + box.rows());
            near.add(new Box(west, south, east - west + 1, north - south + 1));
            int shift = layout.shift();
            for (int row = south >> shift; row <= north >> shift; row++) {
                for (int column = west >> shift; column <= east >> shift; column++) {
                    redone[row * layout.across() + column] = true;
                }
            }
        }
        var hands = new Ways(now);
        for (int tile = 0; tile < count; tile++) {
            progress.check();
            ways[tile] = redone[tile] ? hands.of(tile) : tiles[tile].ways();
            if (redone[tile]) {
                through.lead(tile, ways[tile]);
            }
        }
        Flats.resolve(now, through, ways, redone, near);
        Tile[] made = tiles.clone();
        make(now, through, ways, redone, made, progress);
        boolean[] beside = new boolean[count];
        for (int tile = 0; tile < count; tile++) {
            boolean touched = redone[tile];
            for (int way = 0; way < 4 && !touched; way++) {
                int other = layout.tileBeside(tile, Layout.east(way), Layout.north(way));
                touched = other >= 0 && redone[other];
            }
            beside[tile] = touched;
        }
        Edges[] joined = lists.clone();
        seam(now, made, beside, joined);
        joined[2 * count] = through.edges(made);
        return new Hollows(now, through, made, joined, redone, this, progress);
    }

    private static void make(
            Terrain terrain,
            Passages passages,
            byte[][] ways,
            boolean[] which,
            Tile[] tiles,
            Progress progress) {
        int[] chosen = chosen(which);
        SideBySide.each(
                chosen.length,
                () -> new TileMaker(terrain, passages),
                (hands, i) -> {
                    progress.check();
                    tiles[chosen[i]] = hands.make(chosen[i], ways[chosen[i]]);
                });
    }

    private static void seam(Terrain terrain, Tile[] tiles, boolean[] which, Edges[] lists) {
        int[] chosen = chosen(which);
        for (int tile = 0; tile < tiles.length; tile++) {
            lists[2 * tile] = tiles[tile].edges();
        }
        SideBySide.each(
                chosen.length,
                () -> new Seams(terrain, tiles),
                (hands, i) -> lists[2 * chosen[i] + 1] = hands.of(chosen[i]));
    }

    private static int[] chosen(boolean[] which) {
        int[] chosen = new int[which.length];
        int count = 0;
        for (int tile = 0; tile < which.length; tile++) {
            if (which[tile]) {
                chosen[count++] = tile;
            }
        }
        return Arrays.copyOf(chosen, count);
    }

    /** Fills {@code wet}; returns the pools that its parts count to, by tile. */
    private int[][] wet(boolean[] redone, @Nullable Hollows known) {
        int[][] under = new int[tiles.length][];
        SideBySide.each(
                tiles.length,
                () -> terrain,
                (on, tile) -> {
                    Wet old = known == null || redone[tile] ? null : known.wet[tile];
                    int[] pools = old == null ? null : old.pools(tile, roots, nest);
                    if (old == null || pools == null) {
                        old = Wet.of(on, tile, tiles[tile], roots, nest);
                        pools = old.pools(tile, roots, nest);
                    }
                    wet[tile] = old;
                    under[tile] = Objects.requireNonNull(pools, "its own pools");
                });
        return under;
    }

    /**
     * Cells whose water passes each cell. Counts are whole numbers: what is taken off and added.
     */
    private int[][] through(boolean[] redone, @Nullable Hollows known) {
        int[][] made = new int[tiles.length][];
        boolean[] fresh = new boolean[tiles.length];
        for (int tile = 0; tile < tiles.length; tile++) {
            fresh[tile] = known == null || redone[tile];
            made[tile] =
                    known == null || redone[tile] ? tiles[tile].own().clone() : known.through[tile];
        }
        boolean[] copied = fresh.clone();
        for (int tile = 0; tile < tiles.length; tile++) {
            int base = roots.first(tile);
            if (known != null) {
                takeOff(tile, redone[tile] ? -1 : base, known, redone, made, copied);
            }
            for (int root = 0; root < tiles[tile].rootCount(); root++) {
                int target = gathered.targets()[base + root];
                if (target < 0) {
                    continue;
                }
                int to = terrain.layout().tile(target);
                if (known != null && !redone[tile] && !redone[to]) {
                    int was = known.roots.first(tile) + root;
                    if (known.gathered.targets()[was] == target
                            && known.gathered.land()[was] == gathered.land()[base + root]) {
                        continue;
                    }
                }
                pass(made, copied, to, target, gathered.land()[base + root]);
            }
        }
        return made;
    }

    /** Takes off what roots of a tile brought before and do not bring now. */
    private void takeOff(
            int tile, int base, Hollows known, boolean[] redone, int[][] made, boolean[] copied) {
        int was = known.roots.first(tile);
        for (int root = 0; root < known.tiles[tile].rootCount(); root++) {
            int target = known.gathered.targets()[was + root];
            if (target < 0) {
                continue;
            }
            int to = terrain.layout().tile(target);
            if (redone[to]) {
                continue; // begun anew
            }
            int brought = known.gathered.land()[was + root];
            if (base >= 0
                    && gathered.targets()[base + root] == target
                    && gathered.land()[base + root] == brought) {
                continue;
            }
            pass(made, copied, to, target, -brought);
        }
    }

    private void pass(int[][] made, boolean[] copied, int tile, int cell, int more) {
        if (!copied[tile]) {
            copied[tile] = true;
            made[tile] = made[tile].clone();
        }
        Layout layout = terrain.layout();
        int[] here = made[tile];
        byte[] ways = tiles[tile].ways();
        int side = layout.side();
        int high = layout.rowsOf(tile);
        int at = layout.local(cell);
        int row = at >> layout.shift();
        int column = at & (side - 1);
        while (true) {
            at = (row << layout.shift()) + column;
            here[at] += more;
            int way = ways[at] & Ways.MASK;
            if (way >= 8) {
                return;
            }
            row += Layout.north(way);
            column += Layout.east(way);
            if (row < 0 || column < 0 || row >= high || column >= side) {
                return;
            }
        }
    }

    private void measure(int[][] under) {
        for (int tile = 0; tile < tiles.length; tile++) {
            wet[tile].addTo(under[tile], wetCells, volumes);
            int base = roots.first(tile);
            for (int root = 0; root < tiles[tile].rootCount(); root++) {
                int leaf = roots.leaf(base + root);
                if (leaf != Roots.OPEN) {
                    land[nest.pool(leaf)] += tiles[tile].land()[root];
                }
            }
        }
        // Depths of cells so far; all that is added is positive, so nothing is lost in a
        // difference.
        for (int pool = 0; pool < wetCells.length; pool++) {
            for (int part : new int[] {nest.left(pool), nest.right(pool)}) {
                if (part != Nest.NONE) {
                    wetCells[pool] += wetCells[part];
                    land[pool] += land[part];
                    volumes[pool] +=
                            volumes[part] + (nest.level(pool) - nest.level(part)) * wetCells[part];
                }
            }
        }
    }

    /** Numbers hollows: all pools but the thin ones. */
    private int[] number() {
        int count = 0;
        int[] found = new int[numbers.length];
        for (int pool = 0; pool < numbers.length; pool++) {
            numbers[pool] = nest.isThin(pool) ? Hollow.OUTSIDE : count;
            if (!nest.isThin(pool)) {
                found[count++] = pool;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The terrain. */
    public Terrain terrain() {
        return terrain;
    }

    /** Ways of water below its ground, as they were given. */
    public List<Passage> through() {
        return passages.all();
    }

    /** How many hollows, those inside others included. */
    public int size() {
        return pools.length;
    }

    /**
     * A hollow.
     *
     * @param number zero to one less than {@link #size}
     */
    public Hollow hollow(int number) {
        int pool = pools[number];
        double cell = terrain.cellSize() * terrain.cellSize();
        int beyond = nest.beyond(pool);
        int leaf = beyond < 0 ? Roots.OPEN : roots.leaf(roots.of(beyond));
        int sill = nest.sill(pool);
        int higher = beyond >= 0 && terrain.height(beyond) > terrain.height(sill) ? beyond : sill;
        return new Hollow(
                number,
                nest.bottom(pool),
                terrain.height(nest.bottom(pool)),
                nest.level(pool),
                sill,
                leaf == Roots.OPEN ? Hollow.OUTSIDE : numbers[nest.pool(leaf)],
                beyond,
                wetCells[pool],
                wetCells[pool] * cell,
                volumes[pool] * cell,
                land[pool] * cell,
                parent(pool),
                parts(pool),
                distance(nest.bottom(pool), higher));
    }

    /** The hollows that joined to make a pool. */
    private List<Integer> parts(int pool) {
        List<Integer> parts = new ArrayList<>();
        for (int part : solid(nest.left(pool), nest.right(pool))) {
            parts.add(numbers[part]);
        }
        parts.sort(null);
        return parts;
    }

    /** The given pools, those that they are made of in the place of thin ones. */
    int[] solid(int... given) {
        int[] waiting = Arrays.copyOf(given, 16);
        int end = given.length;
        int[] found = new int[16];
        int count = 0;
        while (end > 0) {
            int pool = waiting[--end];
            if (pool == Nest.NONE) {
                continue;
            }
            if (!nest.isThin(pool)) {
                found = count < found.length ? found : Arrays.copyOf(found, 2 * count);
                found[count++] = pool;
                continue;
            }
            waiting = end + 2 <= waiting.length ? waiting : Arrays.copyOf(waiting, 2 * end);
            waiting[end++] = nest.right(pool);
            waiting[end++] = nest.left(pool);
        }
        return Arrays.copyOf(found, count);
    }

    private int parent(int pool) {
        int parent = nest.parent(pool);
        while (parent != Nest.NONE && nest.isThin(parent)) {
            parent = nest.parent(parent);
        }
        return parent == Nest.NONE ? Hollow.OUTSIDE : numbers[parent];
    }

    /** From middle to middle, m. */
    double distance(int cell, int other) {
        int columns = terrain.columns();
        int north = cell / columns - other / columns;
        int east = cell % columns - other % columns;
        return Math.sqrt((double) north * north + (double) east * east) * terrain.cellSize();
    }

    /** All hollows in the order of their spill heights, parts before wholes. */
    public List<Hollow> all() {
        return new AbstractList<>() {
            @Override
            public Hollow get(int number) {
                return hollow(number);
            }

            @Override
            public int size() {
                return Hollows.this.size();
            }
        };
    }

    /**
     * Height to which water stands on a cell once all hollows are full, m: the ground where none
     * does; NaN where there is no land.
     */
    public double level(int cell) {
        double z = terrain.height(cell);
        return Double.isNaN(z) ? z : Math.max(z, nest.top(roots.leaf(roots.of(cell))));
    }

    /** The innermost hollow whose water covers a cell, or {@link Hollow#OUTSIDE}. */
    public int at(int cell) {
        double z = terrain.height(cell);
        if (Double.isNaN(z)) {
            return Hollow.OUTSIDE;
        }
        int leaf = roots.leaf(roots.of(cell));
        if (!(z < nest.top(leaf))) {
            return Hollow.OUTSIDE;
        }
        int pool = nest.over(nest.pool(leaf), z);
        while (nest.isThin(pool)) {
            pool = nest.parent(pool);
        }
        return numbers[pool];
    }

    /** All cells under water when a hollow is full, in the order of their numbers. */
    public int[] cells(int number) {
        int pool = pools[number];
        return under(nest.bottom(pool), nest.level(pool));
    }

    /** All cells lower than a level that hang together with one, by passages too. */
    int[] under(int from, double level) {
        var seen = new BitSet();
        var queue = new Queue();
        if (terrain.height(from) < level) {
            seen.set(from);
            queue.add(from);
        }
        for (int i = 0; i < queue.size; i++) {
            int cell = queue.cells[i];
            for (int way = 0; way < 8; way++) {
                int other = terrain.layout().neighbour(cell, way);
                if (other >= 0 && terrain.height(other) < level && !seen.get(other)) {
                    seen.set(other);
                    queue.add(other);
                }
            }
            for (int other : passages.beyond(cell, level)) {
                if (terrain.height(other) < level && !seen.get(other)) {
                    seen.set(other);
                    queue.add(other);
                }
            }
        }
        int[] found = Arrays.copyOf(queue.cells, queue.size);
        Arrays.sort(found);
        return found;
    }

    private static final class Queue {
        private int[] cells = new int[64];
        private int size;

        void add(int cell) {
            if (size == cells.length) {
                cells = Arrays.copyOf(cells, 2 * size);
            }
            cells[size++] = cell;
        }
    }

    /** The ways of water over the same terrain. */
    public Downhill downhill() {
        return new Downhill(this);
    }

    Passages passages() {
        return passages;
    }

    Nest nest() {
        return nest;
    }

    Roots roots() {
        return roots;
    }

    Tile tile(int tile) {
        return tiles[tile];
    }

    int through(int tile, int local) {
        return through[tile][local];
    }

    Gathered gathered() {
        return gathered;
    }

    /** How many cells run to a pool without filling another beside it first. */
    int land(int pool) {
        return land[pool];
    }

    /** Volume of a full pool, m³. */
    double volume(int pool) {
        return volumes[pool] * terrain.cellSize() * terrain.cellSize();
    }

    int cellsUnder(int pool) {
        return wetCells[pool];
    }

    /** The hollow that a pool is, or {@link Hollow#OUTSIDE} for a thin one. */
    int number(int pool) {
        return numbers[pool];
    }

    int pool(int number) {
        return pools[number];
    }
}
