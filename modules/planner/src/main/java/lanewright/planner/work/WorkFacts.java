package lanewright.planner.work;

import java.util.List;
import lanewright.stone.LayerStone;

/**
 * The figures that the order of work is written from, all of this plan.
 *
 * @param length of the lane, m
 * @param disturbed land inside the limits of work, m²
 * @param strip topsoil stripped, bank m³
 * @param heaps where the topsoil is heaped
 * @param cut bank m³
 * @param fill earth fill, compacted m³
 * @param lift thickness of one compacted lift of fill, m
 * @param deepestFill greatest height of fill over stripped ground, m
 * @param undercut bank m³
 * @param ditches length of ditch on both sides together, m
 * @param waterPlaces stations where water must pass under the lane, m
 * @param pipesThere number of pipes that are there already
 * @param fabric area of fabric under the stone, m², zero if none is laid
 * @param stone layers in the order of laying
 * @param topsoilBack put back, m³
 * @param seeded land to be seeded, m²
 * @param buriedPublic whether the plan knows of a buried line that a utility owns
 * @param buriedPrivate whether the plan knows of a buried line of the owner's own
 * @param wires whether the plan knows of an overhead wire
 * @param onRoad whether the lane leaves a public road
 */
public record WorkFacts(
        double length,
        double disturbed,
        double strip,
        HeapPlaces heaps,
        double cut,
        double fill,
        double lift,
        double deepestFill,
        double undercut,
        double ditches,
        List<Double> waterPlaces,
        int pipesThere,
        double fabric,
        List<LayerStone> stone,
        double topsoilBack,
        double seeded,
        boolean buriedPublic,
        boolean buriedPrivate,
        boolean wires,
        boolean onRoad) {
    /** Copies the lists. */
    public WorkFacts {
        waterPlaces = List.copyOf(waterPlaces);
        stone = List.copyOf(stone);
    }
}
