package lanewright.planner.work;

import java.util.List;
import lanewright.earthwork.TopsoilBalance;
import lanewright.lane.section.SectionSet;
import lanewright.lane.volume.Running;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;

/**
 * Where the stripped topsoil is heaped until it is put back. Without places of the owner's it is a
 * proposal: the lane is parted into even stretches of at most {@link #STRETCH}, the topsoil of each
 * is one long heap beside it, and of all places that are looked at, on both sides by station and by
 * distance from the limits, the nearest one that is clear is taken. Where none is, the stretch is
 * halved. The heap lies along the lane.
 *
 * @param heaps in the order of their stretches, or of the owner's list
 * @param unplaced loose topsoil that found no place, m³
 * @param findings heaps without a place, and places of the owner's that meet something
 * @param assumptions the rules used
 */
public record HeapPlaces(
        List<HeapPlace> heaps,
        double unplaced,
        List<Finding> findings,
        List<Assumption> assumptions) {

    /**
     * Longest stretch of lane whose topsoil goes into one heap, m: 200 ft, our choice: many small
     * heaps near their use (Illinois Urban Manual, standard 752).
     */
    static final double STRETCH = 200 * 0.3048;

    /** No heap. */
    public static final HeapPlaces NONE = new HeapPlaces(List.of(), 0, List.of(), List.of());

    /** Copies the lists. */
    public HeapPlaces {
        heaps = List.copyOf(heaps);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Places for the topsoil of a lane.
     *
     * @param set its sections
     * @param strip topsoil stripped along it
     * @param topsoil the same as heaped: loose, how steep and how high
     * @param land what the heaps stand on
     */
    public static HeapPlaces of(
            SectionSet set, Running strip, TopsoilBalance topsoil, HeapLand land) {
        boolean nothing = topsoil.heaps().count() == 0 || set.sections().size() < 2;
        return nothing ? NONE : new HeapSearch(set, strip, topsoil, land).places();
    }
}
