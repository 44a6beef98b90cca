package lanewright.planner.work;

import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.stone.LayerStone;

/**
 * The figures that the order of work is written from, all of this plan.
 *
 * @param length of the lane, m
 * @param disturbed land inside the limits of work, m²
 * @param strip topsoil stripped, bank m³
 * @param stripAtLeast whether the topsoil is deeper than the probe holes went, so that there is
 *     more
 * @param heaps where the topsoil is heaped
 * @param cut bank m³
 * @param fill earth fill, compacted m³
 * @param lift thickness of one compacted lift of fill, m
 * @param deepestFill greatest height of fill over stripped ground, m
 * @param undercut bank m³
 * @param ditchesLeft length of ditch on the left, m
 * @param ditchesRight length of ditch on the right, m
 * @param waterWork what to do at the wet places, one for each, in station order
 * @param pipesThere number of pipes that are there already
 * @param pipesToLay what each pipe is that the plan says is to be laid
 * @param fabric area of fabric under the stone, m², zero if none is laid
 * @param stone layers in the order of laying
 * @param topsoilBack put back, m³
 * @param seeded land to be seeded, m²
 * @param buriedPublic whether the plan knows of a buried line that a utility owns
 * @param buriedPrivate whether the plan knows of a buried line of the owner's own
 * @param wires what to heed below each wire that hangs too low for a raised bed
 * @param onRoad whether the lane leaves a public road
 */
public record WorkFacts(
        double length,
        double disturbed,
        double strip,
        boolean stripAtLeast,
        HeapPlaces heaps,
        double cut,
        double fill,
        double lift,
        double deepestFill,
        double undercut,
        double ditchesLeft,
        double ditchesRight,
        List<Saying> waterWork,
        int pipesThere,
        List<Saying> pipesToLay,
        double fabric,
        List<LayerStone> stone,
        double topsoilBack,
        double seeded,
        boolean buriedPublic,
        boolean buriedPrivate,
        List<Saying> wires,
        boolean onRoad) {
    /** Copies the lists. */
    public WorkFacts {
        waterWork = List.copyOf(waterWork);
        pipesToLay = List.copyOf(pipesToLay);
        stone = List.copyOf(stone);
        wires = List.copyOf(wires);
    }

    /** Length of ditch on both sides together, m. */
    public double ditches() {
        return ditchesLeft + ditchesRight;
    }

    /**
     * Land disturbed from which the federal construction permit asks for a notice, m²: one acre.
     */
    private static final double ONE_ACRE = 4046.8564224;

    /** Land under the heaps that have a place, m². */
    public double heapLand() {
        double land = 0;
        for (HeapPlace heap : heaps.heaps()) {
            land +=
                    2 * heap.halfRidge() * heap.form().width()
                            + Math.PI * heap.reach() * heap.reach();
        }
        return land;
    }

    /** All land that is disturbed: inside the limits of work and under the heaps, m². */
    public double allDisturbed() {
        return disturbed + heapLand();
    }

    /** Whether that is an acre or more. */
    public boolean isAnAcre() {
        return allDisturbed() >= ONE_ACRE;
    }

    /**
     * The land that is disturbed, in words. The part of an acre is rounded down under an acre and
     * so never reads as one.
     */
    public Saying land() {
        double share = allDisturbed() / ONE_ACRE;
        Quantity acre = Quantity.share(isAnAcre() ? share : Math.floor(share * 100) / 100);
        return heapLand() > 0
                ? Saying.of(
                        "{} inside the limits of work, their margin included, and {} under the"
                                + " topsoil heaps: together {} of an acre, without tracks for"
                                + " hauling",
                        Quantity.land(disturbed),
                        Quantity.land(heapLand()),
                        acre)
                : Saying.of(
                        "{} inside the limits of work, their margin included: {} of an acre,"
                                + " without tracks for hauling",
                        Quantity.land(disturbed),
                        acre);
    }
}
