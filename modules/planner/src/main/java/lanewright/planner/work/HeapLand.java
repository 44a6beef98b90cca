package lanewright.planner.work;

import java.util.List;
import lanewright.drainage.WaterReport;
import lanewright.ground.Ground;
import lanewright.survey.Boundary;
import org.jspecify.annotations.Nullable;

/**
 * The land that heaps stand on.
 *
 * @param ground as it is
 * @param boundary how far the land reaches, or null if nobody said
 * @param water where water sits and runs
 * @param hazards things that can hurt or must not be hurt
 * @param benchmarks points of known height, which must stay in sight
 * @param stakesBeyond how far outside the limits of work stakes stand, m
 * @param chosen places that the owner chose; empty to have places proposed
 */
public record HeapLand(
        Ground ground,
        @Nullable Boundary boundary,
        WaterReport water,
        List<Hazard> hazards,
        List<Hazard.Spot> benchmarks,
        double stakesBeyond,
        List<Chosen> chosen) {

    /** Copies the lists. */
    public HeapLand {
        hazards = List.copyOf(hazards);
        benchmarks = List.copyOf(benchmarks);
        chosen = List.copyOf(chosen);
    }

    /**
     * A place that the owner chose.
     *
     * @param name what the owner calls it
     * @param x local easting of the heap's middle, m
     * @param y local northing of the heap's middle, m
     */
    public record Chosen(String name, double x, double y) {}
}
