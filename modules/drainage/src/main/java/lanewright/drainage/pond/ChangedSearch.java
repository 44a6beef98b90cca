package lanewright.drainage.pond;

import java.util.List;
import lanewright.measure.Progress;

/** Raises the water over the changed piece of a surface, and around it only where that matters. */
final class ChangedSearch extends LowSpotSearch {

    private final ChangedWays ways;

    ChangedSearch(
            Surroundings around,
            Mesh changed,
            int[] touched,
            List<PlacedPipe> placed,
            Progress progress) {
        super(changed, placed, progress);
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
}
