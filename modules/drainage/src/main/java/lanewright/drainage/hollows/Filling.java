package lanewright.drainage.hollows;

import java.util.Arrays;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Pools that fill, spill and join. Of the pools of a {@link Nest}, those are alive that stand by
 * themselves: each takes in water at some rate; a full one passes on what comes to it to the pool
 * beyond its sill; once both parts of a pool are full it lives in their place. After Barnes,
 * Callaghan and Wickert, Computing water flow through complex landscapes, part 3: Fill-Spill-Merge,
 * 2021; with the times kept, so that the order is known.
 */
final class Filling {

    private final Hollows hollows;
    private final Nest nest;
    private final double cellArea;

    // By pool.
    private final double[] volumes;
    private final double[] rates;
    private final double[] since;
    private final boolean[] alive;
    private final boolean[] full;
    private final int[] versions;
    private final int[] become;
    private final double[] filledAt;
    private double left;
    private double now;

    private record Due(double time, int pool, int version) {
        static int compare(Due a, Due b) {
            int byTime = Double.compare(a.time, b.time);
            return byTime != 0 ? byTime : Integer.compare(a.pool, b.pool);
        }
    }

    Filling(Hollows hollows) {
        this.hollows = hollows;
        nest = hollows.nest();
        cellArea = hollows.terrain().cellSize() * hollows.terrain().cellSize();
        int count = nest.count();
        volumes = new double[count];
        rates = new double[count];
        since = new double[count];
        alive = new boolean[count];
        full = new boolean[count];
        versions = new int[count];
        become = new int[count];
        filledAt = new double[count];
        Arrays.fill(filledAt, Double.POSITIVE_INFINITY);
        for (int pool = 0; pool < count; pool++) {
            alive[pool] = nest.leafOf(pool) != Nest.NONE;
        }
    }

    /** Whether a pool stands by itself; its parts, if any, lie full under it. */
    boolean isAlive(int pool) {
        return alive[pool];
    }

    boolean isFull(int pool) {
        return full[pool];
    }

    /** Water in a pool that is alive, m³. */
    double volume(int pool) {
        return volumes[pool];
    }

    /** When a pool became full, counted from the start of the run before, s; infinite if not. */
    double filledAt(int pool) {
        return filledAt[pool];
    }

    /** Water that has left the land, m³. */
    double left() {
        return left;
    }

    /**
     * Lets as much water run off every square metre.
     *
     * @param excess m/s, over zero
     * @param seconds how long; infinite until all is full
     */
    void run(double excess, double seconds) {
        int count = nest.count();
        Arrays.fill(rates, 0);
        Arrays.fill(filledAt, Double.POSITIVE_INFINITY);
        now = 0;
        know();
        double out = directly();
        var due = new PriorityQueue<Due>(Due::compare);
        for (int pool = 0; pool < count; pool++) {
            since[pool] = 0;
            if (alive[pool]) {
                rates[pool] = hollows.land(pool) * cellArea;
            }
        }
        // What comes to full pools goes on at once.
        double[] first = new double[count];
        for (int pool = 0; pool < count; pool++) {
            if (alive[pool] && full[pool]) {
                int to = receiver(pool);
                if (to == Nest.NONE) {
                    out += rates[pool];
                } else {
                    first[to] += rates[pool];
                }
                rates[pool] = 0;
            }
        }
        for (int pool = 0; pool < count; pool++) {
            rates[pool] += first[pool];
            if (alive[pool] && !full[pool]) {
                announce(pool, excess, due);
            }
        }
        double passed = 0;
        while (!due.isEmpty()) {
            Due next = due.peek();
            if (next.time > seconds) {
                break;
            }
            due.remove();
            int pool = next.pool;
            if (!alive[pool] || full[pool] || next.version != versions[pool]) {
                continue;
            }
            left += out * excess * (next.time - passed);
            passed = next.time;
            now = next.time;
            out += fill(pool, excess, due);
        }
        if (Double.isInfinite(seconds)) {
            return; // all is full; what leaves from now on is of no end
        }
        left += out * excess * (seconds - passed);
        now = seconds;
        for (int pool = 0; pool < count; pool++) {
            if (alive[pool] && !full[pool]) {
                settle(pool, excess);
            }
        }
    }

    /** Land that drains by itself, m². */
    private double directly() {
        double land = 0;
        Roots roots = hollows.roots();
        for (int tile = 0; tile < hollows.terrain().layout().tiles(); tile++) {
            Tile here = hollows.tile(tile);
            for (int root = 0; root < here.rootCount(); root++) {
                if (roots.leaf(roots.number(tile, root)) == Roots.OPEN) {
                    land += here.land()[root] * cellArea;
                }
            }
        }
        return land;
    }

    private void announce(int pool, double excess, PriorityQueue<Due> due) {
        double missing = hollows.volume(pool) - volumes[pool];
        double time = since[pool] + Math.max(0, missing) / (rates[pool] * excess);
        due.add(new Due(time, pool, ++versions[pool]));
    }

    private void settle(int pool, double excess) {
        volumes[pool] =
                Math.min(
                        hollows.volume(pool),
                        volumes[pool] + rates[pool] * excess * (now - since[pool]));
        since[pool] = now;
    }

    /** A pool has become full; returns how much more land now sends its water out. */
    private double fill(int pool, double excess, PriorityQueue<Due> due) {
        full[pool] = true;
        filledAt[pool] = now;
        volumes[pool] = hollows.volume(pool);
        double rate = rates[pool];
        rates[pool] = 0;
        int parent = nest.parent(pool);
        if (parent != Nest.NONE) {
            int other = nest.left(parent) == pool ? nest.right(parent) : nest.left(parent);
            if (alive[other] && full[other]) {
                alive[pool] = false;
                alive[other] = false;
                alive[parent] = true;
                become[pool] = parent;
                become[other] = parent;
                become[parent] = parent;
                full[parent] = false;
                volumes[parent] = volumes[pool] + volumes[other];
                rates[parent] = rate;
                since[parent] = now;
                announce(parent, excess, due);
                return 0;
            }
        }
        int to = receiver(pool);
        if (to == Nest.NONE) {
            return rate;
        }
        settle(to, excess);
        rates[to] += rate;
        announce(to, excess, due);
        return 0;
    }

    /** The pool, not full, to which water comes from a full one; none if it leaves. */
    private int receiver(int pool) {
        int at = pool;
        while (at != Nest.NONE && full[at]) {
            at = beyond(at);
        }
        return at;
    }

    private int beyond(int pool) {
        int cell = nest.beyond(pool);
        int leaf = cell < 0 ? Roots.OPEN : hollows.roots().leaf(hollows.roots().of(cell));
        return leaf == Roots.OPEN ? Nest.NONE : standing(nest.pool(leaf));
    }

    /** The pool alive that a pool has become. */
    private int standing(int pool) {
        int at = pool;
        while (become[at] != at) {
            become[at] = become[become[at]];
            at = become[at];
        }
        return at;
    }

    private void know() {
        for (int pool = become.length - 1; pool >= 0; pool--) {
            boolean own = alive[pool] || nest.parent(pool) == Nest.NONE;
            become[pool] = own ? pool : become[nest.parent(pool)];
        }
    }

    /** Water of a pool, by its level. */
    record Stand(double level, int cells, double volume) {}

    /** Where the water of a pool stands that is alive, or null if it has none. */
    @Nullable Stand stand(int pool) {
        double volume = volumes[pool];
        if (!(volume > 0)) {
            return null;
        }
        if (full[pool]) {
            return full(hollows, pool);
        }
        double[] ground = ground(pool, nest.level(pool));
        double room = volume / cellArea; // depths of cells
        double below = 0;
        for (int wet = 1; wet <= ground.length; wet++) {
            double next = wet < ground.length ? ground[wet] : Double.POSITIVE_INFINITY;
            double step = (next - ground[wet - 1]) * wet;
            if (below + step >= room) {
                double level = ground[wet - 1] + (room - below) / wet;
                return new Stand(Math.min(level, nest.level(pool)), wet, volume);
            }
            below += step;
        }
        throw new IllegalStateException("pool " + pool + " has no ground");
    }

    /** A pool as it stands when it is full. */
    static Stand full(Hollows hollows, int pool) {
        return new Stand(
                hollows.nest().level(pool), hollows.cellsUnder(pool), hollows.volume(pool));
    }

    /** Heights of the cells under a level around a pool's deepest, from the lowest up. */
    private double[] ground(int pool, double level) {
        int[] cells = hollows.under(nest.bottom(pool), level);
        double[] ground = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            ground[i] = hollows.terrain().height(cells[i]);
        }
        Arrays.sort(ground);
        return ground;
    }

    /**
     * Lets all water sink.
     *
     * @param fall m, over zero
     */
    void sink(double fall) {
        for (int pool = 0; pool < nest.count(); pool++) {
            // Parts have lower numbers: those set free here are not met again.
            if (alive[pool] && volumes[pool] > 0) {
                Stand stand = stand(pool);
                if (stand != null) {
                    lower(pool, stand.level() - fall);
                }
            }
        }
    }

    private void lower(int whole, double level) {
        int[] waiting = new int[16];
        int end = 0;
        waiting[end++] = whole;
        while (end > 0) {
            int pool = waiting[--end];
            full[pool] = false;
            int one = nest.left(pool);
            if (one != Nest.NONE && !(level > nest.level(one))) {
                alive[pool] = false;
                volumes[pool] = 0;
                alive[one] = true;
                alive[nest.right(pool)] = true;
                waiting = end + 2 <= waiting.length ? waiting : Arrays.copyOf(waiting, 2 * end);
                waiting[end++] = nest.right(pool);
                waiting[end++] = one;
                continue;
            }
            double depth = 0;
            for (double z : ground(pool, level)) {
                depth += level - z;
            }
            volumes[pool] = depth * cellArea;
        }
    }
}
