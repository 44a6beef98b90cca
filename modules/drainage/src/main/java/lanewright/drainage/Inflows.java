package lanewright.drainage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.drainage.along.Side;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.lane.line.Place;

/**
 * Where ways of water on the ground as it is come into the limits of work. The ground before the
 * lane is asked, for there the water's own ways are plain: on the finished surface they run along
 * toes and ditches, in and out of the limits.
 */
final class Inflows {

    /** Ways that come in on one side closer together than this are one, m. Our choice. */
    private static final double ONE_WAY = 10;

    private Inflows() {}

    /**
     * Those that drain at least {@code area} m², in station order; of two at one place the larger.
     */
    static List<Inflow> of(FlowGrid flow, Corridor corridor, double area) {
        List<Inflow> all = new ArrayList<>();
        Cells cells = flow.cells();
        for (int cell : flow.carrying(area)) {
            int next = flow.next(cell);
            if (next == FlowGrid.LEAVES) {
                continue;
            }
            Place from = corridor.place(cells.x(cell), cells.y(cell));
            Place to = corridor.place(cells.x(next), cells.y(next));
            if (to != null && corridor.holds(to) && (from == null || !corridor.holds(from))) {
                Place outside = from == null ? to : from;
                all.add(
                        new Inflow(
                                to.station(),
                                Side.at(outside.offset()),
                                cells.x(next),
                                cells.y(next),
                                flow.drained(cell),
                                flow.reachesRim(cell)));
            }
        }
        all.sort(
                Comparator.comparingDouble(Inflow::drained)
                        .reversed()
                        .thenComparingDouble(Inflow::station));
        List<Inflow> kept = new ArrayList<>();
        for (Inflow inflow : all) {
            boolean known =
                    kept.stream()
                            .anyMatch(
                                    other ->
                                            other.side() == inflow.side()
                                                    && Math.abs(other.station() - inflow.station())
                                                            < ONE_WAY);
            if (!known) {
                kept.add(inflow);
            }
        }
        kept.sort(Comparator.comparingDouble(Inflow::station));
        return kept;
    }
}
