package lanewright.earthwork;

import java.util.List;
import lanewright.lane.section.SectionSet;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import org.jspecify.annotations.Nullable;

/**
 * How much topsoil and dirt: what is stripped, dug, filled, hauled and heaped.
 *
 * @param soil what is cut and what fill is made of
 * @param topsoilSoil how topsoil changes its volume
 * @param volumes every quantity measured three ways: strip, cut, fill, edge refill, topsoil back,
 *     undercut, its refill, then stone by role
 * @param balance cut against fill
 * @param unfit earth that does not bear and leaves, bank, loose and by truck; its refill comes in
 *     as compacted volume of the same size, and neither is in the balance
 * @param refill fit earth that fills its room again, packed; not in the balance
 * @param topsoil where the topsoil goes
 * @param mass running sum of cut less fill along the lane
 * @param deepestFill greatest height of fill over stripped ground, m
 * @param deepestFillStation where that is, m; NaN if there is no fill
 * @param lift thickness of a compacted lift, m
 * @param lifts number of lifts at the deepest fill
 * @param findings what deserves a look
 * @param assumptions factors, angles and limits used
 */
public record EarthworkReport(
        Soil soil,
        Soil topsoilSoil,
        List<Comparison> volumes,
        Balance balance,
        Hauled unfit,
        Hauled refill,
        TopsoilBalance topsoil,
        MassDiagram mass,
        double deepestFill,
        double deepestFillStation,
        double lift,
        int lifts,
        List<Finding> findings,
        List<Assumption> assumptions) {

    /** Copies the lists. */
    public EarthworkReport {
        volumes = List.copyOf(volumes);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The report of a lane.
     *
     * @param sections its sections
     * @param volumes what they come to
     * @param solid the true solid beside them, or null if it was not measured
     * @param options soils, heaps, lifts and truck
     * @throws IllegalArgumentException if a named soil or material is not in its table
     */
    public static EarthworkReport of(
            SectionSet sections,
            LaneVolumes volumes,
            @Nullable TrueSolid solid,
            EarthOptions options) {
        return new EarthworkMaking(sections, volumes, solid, options).report();
    }

    /** A quantity by its name, such as {@code cut}, or null if there is none of that name. */
    public @Nullable Comparison volume(String name) {
        return volumes.stream().filter(v -> v.name().equals(name)).findFirst().orElse(null);
    }
}
