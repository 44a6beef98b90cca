package lanewright.sheets.figure;

import java.util.List;
import lanewright.lane.section.SectionLine;
import org.jspecify.annotations.Nullable;

/**
 * What is seen in a section besides ground and lane.
 *
 * @param pools water that stands there
 * @param pipes pipes to which it is the nearest section drawn
 * @param ditch the ground along the road's own ditch, if it is the nearest section drawn to it
 */
record AtSection(List<StandingWater> pools, List<PipeUnder> pipes, @Nullable SectionLine ditch) {

    /** Nothing else. */
    static final AtSection NOTHING = new AtSection(List.of(), List.of(), null);

    /** Copies the lists. */
    AtSection {
        pools = List.copyOf(pools);
        pipes = List.copyOf(pipes);
    }
}
