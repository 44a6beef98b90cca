package lanewright.drainage.pond;

import java.util.Arrays;
import lanewright.measure.Progress;

/**
 * Where water really leaves a survey, rather than everywhere along its rim.
 *
 * <p>The rim is where measuring stopped, not where the land falls off. Where a valley comes in over
 * the rim, the land beyond is higher; a lane that dams the valley floods it beyond the survey, and
 * a rim that lets water out there would hide the pool. So for that question the rim is taken as a
 * wall, but for its exits: as the water rises on the ground as it is, each pool that meets another
 * has its lowest place on the rim noted, and that is an exit if the pools meet high enough above
 * it. Lesser dips of the rim are roughness.
 */
final class RimExits {

    /** Pools that meet less than this above a dip of the rim make no exit of it, m. Our choice. */
    static final double LEAST = 0.1;

    private static final int NONE = -1;

    private final Graph graph;
    private final int[] parent;
    private final int[] lowestRim;
    private final boolean[] exits;

    private RimExits(Graph graph) {
        this.graph = graph;
        parent = new int[graph.size()];
        lowestRim = new int[graph.size()];
        exits = new boolean[graph.size()];
        Arrays.fill(parent, NONE);
    }

    /**
     * Whether each place is an exit.
     *
     * @param order places from the lowest to the highest
     * @param progress asked whether to go on
     */
    static boolean[] of(Graph graph, int[] order, Progress progress) {
        var search = new RimExits(graph);
        for (int i = 0; i < order.length; i++) {
            if (i % Graph.OFTEN == 0) {
                progress.check();
            }
            search.wet(order[i]);
        }
        for (int place = 0; place < graph.size(); place++) {
            if (search.parent[place] == place && search.lowestRim[place] != NONE) {
                search.exits[search.lowestRim[place]] = true;
            }
        }
        return search.exits;
    }

    private void wet(int place) {
        parent[place] = place;
        lowestRim[place] = graph.isOutlet(place) ? place : NONE;
        int pools = 0;
        int first = NONE;
        for (int i = 0; i < graph.degree(place); i++) {
            int other = graph.next(place, i);
            if (other == place || parent[other] == NONE) {
                continue;
            }
            int root = root(other);
            int here = root(place);
            if (root == here) {
                continue;
            }
            pools++;
            if (pools == 1) {
                first = lowestRim[root];
            } else {
                note(place, lowestRim[root]);
                note(place, first);
            }
            int kept = lower(lowestRim[root], lowestRim[here]);
            parent[here] = root;
            lowestRim[root] = kept;
        }
    }

    private void note(int sill, int rim) {
        if (rim != NONE && graph.height(sill) - graph.height(rim) >= LEAST) {
            exits[rim] = true;
        }
    }

    private int lower(int a, int b) {
        if (a == NONE || b == NONE) {
            return a == NONE ? b : a;
        }
        return graph.height(b) < graph.height(a) ? b : a;
    }

    private int root(int place) {
        int at = place;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
