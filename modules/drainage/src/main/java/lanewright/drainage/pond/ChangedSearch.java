package lanewright.drainage.pond;

import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/** Raises the water over the changed piece of a surface, and around it only where that matters. */
final class ChangedSearch extends LowSpotSearch {

    private final ChangedWays ways;
    private final Surroundings around;
    private final Graph.Lists trianglesAt;
    private final int[] now;
    private final int[] touched;

    /**
     * For a changed surface.
     *
     * @param trianglesAt the triangles of the ground at each of its vertices
     * @param now for each triangle of the ground which of the surface's it is, or -1
     * @param touched triangles of the surface with a corner that may have changed or is new
     */
    ChangedSearch(
            Surroundings around,
            Graph.Lists trianglesAt,
            int[] now,
            Mesh changed,
            int[] touched,
            List<PlacedPipe> placed,
            Progress progress) {
        super(changed, placed, progress);
        this.around = around;
        this.trianglesAt = trianglesAt;
        this.now = now;
        this.touched = touched;
        ways = new ChangedWays(around, changed, touched, links(), progress);
    }

    @Override
    boolean[] rim() {
        return ways.outlets();
    }

    @Override
    Flood flood(boolean[] open) {
        int[] order = ways.order(open, progress());
        Flood flood = Flood.of(ways, order, open, LowSpots.LEAST_DEPTH, progress());
        ways.spread(flood);
        return flood;
    }

    @Override
    BitSet mayBeWet(Flood flood) {
        var wet = new BitSet();
        for (int t : touched) {
            wet.set(t);
        }
        int[] starts = trianglesAt.starts();
        for (int v = 0; v + 1 < starts.length; v++) {
            if (flood.spotOf(v) != Flood.NONE && !around.isNear(v)) {
                for (int i = starts[v]; i < starts[v + 1]; i++) {
                    wet.set(now[trianglesAt.ends()[i]]); // a far vertex has all it had
                }
            }
        }
        return wet;
    }
}
