package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.measure.Progress;

/**
 * Land around a piece that changes, made ready once: which of its places decide anything about
 * water while the piece is given one surface after another.
 *
 * <p>Every far place leads down, over far places only, to the bottom of a hollow of theirs; where
 * that lies, the place itself decides nothing. As the water rises over the far places alone, only
 * few of them join what was not joined before (the joins of a height function, see {@link Flood});
 * those are kept, the bottoms, and the places beside the piece that changes. What was joined, or
 * open, without the piece is so with it, so the others decide nothing there either: raising the
 * water over the kept places and the piece gives the same pools, to the last bit, as raising it
 * over all.
 */
final class Surroundings {

    private static final int NONE = -1;

    /** With the rim open, and with its true exits only. */
    private static final int SETS_KEPT = 2;

    private final Graph ground;
    private final int[] order;
    private final boolean[] near;
    private final int[] bottoms;
    private final boolean[] beside;
    private final int[] nearOrder;
    private final List<Decided> sets = new ArrayList<>();

    /** The far places that decide something, in the order of the water, with these outlets. */
    private record Decided(
            @SuppressWarnings("ArrayRecordComponent") boolean[] outlets,
            @SuppressWarnings("ArrayRecordComponent") int[] places) {}

    /**
     * Makes the surroundings ready.
     *
     * @param ground all of the land as it is, without pipes
     * @param order its places from the lowest to the highest
     * @param near the places that may change, or whose ways may
     */
    Surroundings(Graph ground, int[] order, boolean[] near, Progress progress) {
        this.ground = ground;
        this.order = order;
        this.near = near;
        bottoms = new int[ground.size()];
        beside = new boolean[ground.size()];
        int[] changing = new int[ground.size()];
        int count = 0;
        for (int i = 0; i < order.length; i++) {
            if (i % Graph.OFTEN == 0) {
                progress.check();
            }
            int place = order[i];
            if (near[place]) {
                bottoms[place] = NONE;
                changing[count++] = place;
            } else {
                bottoms[place] = bottom(place);
            }
        }
        nearOrder = Arrays.copyOf(changing, count);
    }

    /** The bottom of a lower far neighbour, or the place itself if it has none. */
    private int bottom(int place) {
        int bottom = place;
        for (int i = 0; i < ground.degree(place); i++) {
            int other = ground.next(place, i);
            if (near[other]) {
                beside[place] = true;
            } else if (bottom == place && ground.isBefore(other, place)) {
                bottom = bottoms[other];
            }
        }
        return bottom;
    }

    /** Whether a place of the ground may change, or its ways may. */
    boolean isNear(int place) {
        return near[place];
    }

    /** The bottom that a far place leads down to. */
    int bottomOf(int place) {
        return bottoms[place];
    }

    /** The land as it is. */
    Graph ground() {
        return ground;
    }

    /** The places that may change, from the lowest to the highest; not a copy. */
    int[] nearOrder() {
        return nearOrder;
    }

    /**
     * The far places that decide something, from the lowest to the highest; not a copy.
     *
     * @param outlets whether each place lets water out; only those of far places matter, and more
     *     than the ground has may be given
     */
    synchronized int[] decided(boolean[] outlets, Progress progress) {
        for (Decided set : sets) {
            if (isAlike(set.outlets, outlets)) {
                return set.places;
            }
        }
        Decided made = new Decided(outlets.clone(), new Joining(outlets).decided(progress));
        if (sets.size() == SETS_KEPT) {
            sets.remove(0);
        }
        sets.add(made);
        return made.places;
    }

    private boolean isAlike(boolean[] a, boolean[] b) {
        for (int place = 0; place < near.length; place++) {
            if (a[place] != b[place] && !near[place]) {
                return false;
            }
        }
        return true;
    }

    /** Raises the water over the far places alone; lives for one call. */
    private final class Joining {
        private final boolean[] outlets;
        private final int[] parent = new int[ground.size()];
        private final boolean[] open = new boolean[ground.size()];
        private int[] places = new int[1024];
        private int count;

        Joining(boolean[] outlets) {
            this.outlets = outlets;
            Arrays.fill(parent, NONE);
        }

        int[] decided(Progress progress) {
            for (int i = 0; i < order.length; i++) {
                if (i % Graph.OFTEN == 0) {
                    progress.check();
                }
                int place = order[i];
                if (!near[place]) {
                    boolean joins = joins(place);
                    if (joins || beside[place]) {
                        keep(place);
                    }
                }
            }
            return Arrays.copyOf(places, count);
        }

        /** Takes a place in; whether anything is joined or opened that was not. */
        private boolean joins(int place) {
            if (bottoms[place] == place) {
                parent[place] = place;
                open[place] = outlets[place];
                return true;
            }
            int whole = root(bottoms[place]);
            boolean wasOpen = open[whole];
            boolean joins = outlets[place] && !wasOpen;
            open[whole] |= outlets[place];
            for (int i = 0; i < ground.degree(place); i++) {
                int other = ground.next(place, i);
                if (near[other] || !ground.isBefore(other, place)) {
                    continue;
                }
                int root = root(bottoms[other]);
                if (root != whole) {
                    joins |= !(open[root] && open[whole]);
                    open[whole] |= open[root];
                    parent[root] = whole;
                }
            }
            return joins;
        }

        private int root(int place) {
            int at = place;
            while (parent[at] != at) {
                parent[at] = parent[parent[at]];
                at = parent[at];
            }
            return at;
        }

        private void keep(int place) {
            if (count == places.length) {
                places = Arrays.copyOf(places, 2 * count);
            }
            places[count++] = place;
        }
    }
}
