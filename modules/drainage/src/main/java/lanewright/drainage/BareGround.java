package lanewright.drainage;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.KeptLand;
import lanewright.drainage.pond.LowSpotSearch;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.WholeSearch;
import lanewright.measure.Progress;
import lanewright.survey.Boundary;
import org.jspecify.annotations.Nullable;

/**
 * Where water goes on the ground as it is, kept from lane to lane as long as the ground and what is
 * asked of it are equal. For one thread.
 */
final class BareGround {

    /** No more cells than this. Our choice. */
    private static final int MOST_CELLS = 750_000;

    private final Last<Spots> spots = new Last<>();
    private final Last<LandWater.Border> border = new Last<>();
    private final Last<KeptLand> land = new Last<>();
    private final Last<FlowGrid.Base> cells = new Last<>();
    private final Last<FlowGrid> flow = new Last<>();
    private final Last<List<FlowGrid.Drained>> drained = new Last<>();
    private final Last<List<FlowPath>> paths = new Last<>();
    private final Last<WetGround> wet = new Last<>();
    private final Last<BitSet> within = new Last<>();
    private @Nullable FlowGrid built;

    /**
     * Low spots of the ground as it is.
     *
     * @param all with the rim of the survey open
     * @param exits where water really leaves the survey
     * @param held with only those open
     */
    record Spots(LowSpots all, LowSpotSearch.Exits exits, LowSpots held) {}

    /** The last thing made, and from what. */
    private static final class Last<V> {
        private List<Object> from = List.of();
        private @Nullable V made;

        V of(List<Object> now, Supplier<V> maker) {
            V last = made;
            if (last == null || !from.equals(now)) {
                last = maker.get();
                made = last;
                from = now;
            }
            return last;
        }
    }

    Spots spots(
            Mesh ground, List<GivenPipe> pipes, LowSpots.Threshold threshold, Progress progress) {
        return spots.of(
                List.of(ground, pipes, threshold),
                () -> {
                    List<PlacedPipe> placed =
                            pipes.stream().map(pipe -> PlacedPipe.on(ground, pipe)).toList();
                    var search = new WholeSearch(ground, placed, progress);
                    LowSpots all = search.all(threshold);
                    LowSpotSearch.Exits exits = search.exits();
                    return new Spots(all, exits, search.within(exits, threshold));
                });
    }

    /** The ground, made ready for lanes. */
    KeptLand land(Mesh ground, Progress progress) {
        return land.of(List.of(ground), () -> new KeptLand(ground, progress));
    }

    /** Its cells, at least {@code wanted} m wide. */
    FlowGrid.Base cells(Mesh ground, double wanted, Progress progress) {
        return cells.of(
                List.of(ground, wanted),
                () -> new FlowGrid.Base(ground, Cells.over(ground, wanted, MOST_CELLS), progress));
    }

    FlowGrid flow(FlowGrid.Base base, List<PlacedPipe> pipes, Progress progress) {
        return flow.of(
                List.of(base, pipes),
                () -> {
                    FlowGrid made = base.flow(pipes, progress);
                    built = made;
                    return made;
                });
    }

    /**
     * Water over a finished surface of the same cells, by what differs from the last one.
     *
     * @param on water over the ground as it is, as {@link #flow} gives it
     */
    FlowGrid built(
            FlowGrid.Base base,
            FlowGrid on,
            double[] heights,
            List<PlacedPipe> pipes,
            Progress progress) {
        FlowGrid last = built;
        FlowGrid near = last != null && last.cells().equals(on.cells()) ? last : on;
        FlowGrid made = base.flow(heights, pipes, near, progress);
        built = made;
        return made;
    }

    /** Where it stays wet by its shape; worked out when that is asked for. */
    WetGround wet(FlowGrid on) {
        return wet.of(List.of(on), () -> WetGround.of(on));
    }

    /** Which cells lie within the owner's border. */
    BitSet within(Cells of, @Nullable Boundary border) {
        return within.of(
                List.of(of, Optional.ofNullable(border)), () -> LandWaters.within(of, border));
    }

    /** What crosses the border of the land as it is. */
    LandWater.Border border(FlowGrid on, WaterOptions options, LandWaters asked) {
        return border.of(
                List.of(on, options.flowArea(), Optional.ofNullable(options.wetting().boundary())),
                () -> asked.border(on));
    }

    /** What drains to each listed low spot. */
    List<FlowGrid.Drained> drained(FlowGrid on, LowSpots to) {
        return drained.of(List.of(on, to), () -> on.drainedTo(to.listed()));
    }

    /** Ways that drain at least {@code area} m². */
    List<FlowPath> paths(FlowGrid on, double area) {
        return paths.of(List.of(on, area), () -> on.paths(area));
    }
}
