package lanewright.sheets.figure;

import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Section;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * What profile and cross-sections show of a lane.
 *
 * @param sections of the whole lane, in station order, one at least
 * @param points vertical points, in station order
 * @param pools water that sits with the lane built
 * @param pipes pipes that pass under it
 * @param road the public road's own ditch, or null if none was found
 * @param reliefs proposals to lead water off
 * @param units in which it is read
 */
public record Unrolled(
        List<Section> sections,
        List<VerticalPoint> points,
        List<StandingWater> pools,
        List<PipeUnder> pipes,
        @Nullable RoadDitch road,
        List<ReliefMark> reliefs,
        UnitSystem units) {

    /** Without proposals to lead water off. */
    public Unrolled(
            List<Section> sections,
            List<VerticalPoint> points,
            List<StandingWater> pools,
            List<PipeUnder> pipes,
            @Nullable RoadDitch road,
            UnitSystem units) {
        this(sections, points, pools, pipes, road, List.of(), units);
    }

    /** Copies the lists. */
    public Unrolled {
        sections = List.copyOf(sections);
        points = List.copyOf(points);
        pools = List.copyOf(pools);
        pipes = List.copyOf(pipes);
        reliefs = List.copyOf(reliefs);
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a lane has a section");
        }
    }
}
