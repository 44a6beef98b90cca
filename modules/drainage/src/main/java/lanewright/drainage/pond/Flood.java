package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Rises the water everywhere at once and watches which pools join.
 *
 * <p>Places are taken from the lowest up. One with no wet neighbour begins a pool; one between
 * pools is where they meet. A pool that meets open water (a pool that holds an outlet) can rise no
 * further: it is a low spot, and the place where it met is its spill point. Two pools that meet
 * before either is open become one, each kept as a part of the larger. This is the tree of joins of
 * a height function (Carr, Snoeyink and Axen, Computing contour trees in all dimensions, 2003),
 * stopped at open water; the level it gives each place is that of Barnes, Lehman and Mulla,
 * Priority-Flood, 2014.
 *
 * <p>Exact: levels are heights of places, and no arithmetic is done on them. Equal heights are
 * taken in the order of their numbers; that can decide which of two equally low spill points is
 * named, and nothing else. Pools that meet at one place are taken in the order of their deepest
 * places. Cost: one sort and, for each way between places, one near-constant step.
 */
final class Flood {

    /** No low spot. */
    static final int NONE = -1;

    private final Ways graph;
    private final boolean[] outlets;
    private final double least;
    private final byte[] state;
    private final int[] parent;
    private final int[] following;
    private final int[] pool;
    private final int[] lowest;
    private final List<Pool> pools = new ArrayList<>();
    private final List<Integer> spots = new ArrayList<>();
    private final int[] spotOf;
    private int[] meeting = new int[16];

    /**
     * A pool at the level where it joins another or spills.
     *
     * @param low its deepest place
     * @param sill the place over which it joins or spills
     * @param level height of the sill, m
     * @param parts pools that joined to make it, by number
     */
    record Pool(int low, int sill, double level, List<Integer> parts) {}

    private Flood(Ways graph, boolean[] outlets, double least) {
        int n = graph.size();
        this.graph = graph;
        this.outlets = outlets;
        this.least = least;
        state = new byte[n];
        parent = new int[n];
        following = new int[n];
        pool = new int[n];
        lowest = new int[n];
        spotOf = new int[n];
        Arrays.fill(pool, NONE);
        Arrays.fill(spotOf, NONE);
    }

    /**
     * Floods {@code graph}, all its outlets open.
     *
     * @param least pools that are no deeper than this are not kept, m, zero or more
     */
    static Flood of(Graph graph, double least) {
        return of(graph, HeightOrder.of(graph.heights()), graph.outlets(), least, Progress.NONE);
    }

    /**
     * Floods {@code graph}, letting water out where {@code outlets} says.
     *
     * @param order places from the lowest to the highest
     * @param progress asked whether to go on
     */
    static Flood of(Ways graph, int[] order, boolean[] outlets, double least, Progress progress) {
        var flood = new Flood(graph, outlets, least);
        for (int i = 0; i < order.length; i++) {
            if (i % Graph.OFTEN == 0) {
                progress.check();
            }
            flood.wet(order[i]);
        }
        return flood;
    }

    /** All pools that were kept, parts before the wholes that they became. */
    List<Pool> pools() {
        return pools;
    }

    /**
     * The pools that fill until they spill to open water, by number, in the order of their level.
     */
    List<Integer> spots() {
        return spots;
    }

    /** Number of the low spot that the place lies in, or {@link #NONE}. */
    int spotOf(int place) {
        return spotOf[place];
    }

    /** Says in which low spot a place lies that the flood did not take. */
    void put(int place, int spot) {
        spotOf[place] = spot;
    }

    /** Height to which water stands over the place once all low spots are full, m. */
    double level(int place) {
        int spot = spotOf[place];
        return spot == NONE ? graph.height(place) : pools.get(spot).level();
    }

    // What a place is stands in one byte: nearly all the land is open water in the end, and of that
    // nothing else need be known. Pools are joined in trees by `parent` and rings by `following`.

    private static final byte DRY = 0;
    private static final byte POOL = 1;
    private static final byte OPEN = 2;

    private void wet(int place) {
        int met = 0;
        boolean open = outlets[place];
        for (int i = 0; i < graph.degree(place); i++) {
            int other = graph.next(place, i);
            if (state[other] == DRY) {
                continue;
            }
            if (state[other] == OPEN) {
                open = true;
                continue;
            }
            int root = root(other);
            if (!met(root, met)) {
                if (met == meeting.length) {
                    meeting = Arrays.copyOf(meeting, 2 * met);
                }
                insert(root, met++);
            }
        }
        if (open) {
            state[place] = OPEN;
            for (int m = 0; m < met; m++) {
                spill(meeting[m], place);
            }
            return;
        }
        state[place] = POOL;
        parent[place] = place;
        following[place] = place;
        lowest[place] = place;
        if (met == 1) {
            extend(meeting[0], place);
        } else if (met > 1) {
            grow(met, place);
        }
    }

    private boolean met(int root, int count) {
        for (int m = 0; m < count; m++) {
            if (meeting[m] == root) {
                return true;
            }
        }
        return false;
    }

    /** Keeps the pools that meet in the order of their deepest places, whichever was met first. */
    private void insert(int root, int count) {
        int at = count;
        while (at > 0 && lowest[meeting[at - 1]] > lowest[root]) {
            meeting[at] = meeting[at - 1];
            at--;
        }
        meeting[at] = root;
    }

    private int root(int place) {
        int at = place;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** A pool reaches open water over {@code sill} and becomes part of it. */
    private void spill(int root, int sill) {
        int number = close(root, sill);
        if (number != NONE) {
            spots.add(number);
        }
        int member = root;
        do {
            state[member] = OPEN;
            spotOf[member] = number;
            member = following[member];
        } while (member != root);
    }

    /** Several closed pools meet at {@code sill} and become one. */
    private void grow(int met, int sill) {
        List<Integer> parts = new ArrayList<>();
        int low = sill;
        for (int m = 0; m < met; m++) {
            int root = meeting[m];
            int number = close(root, sill);
            if (number != NONE) {
                parts.add(number);
            }
            int bottom = lowest[root];
            double difference = graph.height(bottom) - graph.height(low);
            if (difference < 0 || (difference == 0 && bottom < low)) {
                low = bottom;
            }
        }
        for (int m = 0; m < met; m++) {
            link(meeting[m], sill);
        }
        int whole = root(sill);
        lowest[whole] = low;
        pool[whole] = NONE;
        if (parts.size() == 1) {
            // The others were too shallow to count: this is still the same pool, a little higher.
            pool[whole] = parts.get(0);
        } else if (parts.size() > 1) {
            pool[whole] = pools.size();
            pools.add(new Pool(low, sill, graph.height(sill), parts));
        }
    }

    /** Writes down the pool as it stands with its water at {@code sill}. */
    private int close(int root, int sill) {
        double level = graph.height(sill);
        int low = lowest[root];
        if (!(level - graph.height(low) > least)) {
            return NONE;
        }
        int number = pool[root];
        if (number == NONE) {
            number = pools.size();
            pools.add(new Pool(low, sill, level, List.of()));
        } else {
            pools.set(number, new Pool(low, sill, level, pools.get(number).parts()));
        }
        pool[root] = number;
        return number;
    }

    private void extend(int root, int place) {
        int low = lowest[root];
        int number = pool[root];
        link(root, place);
        int whole = root(place);
        lowest[whole] = low;
        pool[whole] = number;
    }

    /** Joins two pools and keeps the ring of their members. */
    private void link(int a, int b) {
        int rootA = root(a);
        int rootB = root(b);
        if (rootA == rootB) {
            return;
        }
        int spare = following[rootA];
        following[rootA] = following[rootB];
        following[rootB] = spare;
        parent[rootB] = rootA; // the older pool is the larger one, as a rule
    }
}
