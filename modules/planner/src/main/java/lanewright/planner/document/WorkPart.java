package lanewright.planner.document;

import java.util.List;

/**
 * How the work is measured and staked.
 *
 * @param margin how far the limits of work lie outside the catch points, m
 * @param interval distance between cross-sections, m
 * @param stakesBeyond how far outside the limits of work the stakes stand, m
 * @param instrumentHeight height of the level's line of sight, m above the datum; NaN if not set up
 * @param heaps where topsoil is to be heaped; empty to have places proposed
 */
public record WorkPart(
        double margin,
        double interval,
        double stakesBeyond,
        double instrumentHeight,
        List<HeapSpot> heaps) {
    /**
     * A place for a heap of topsoil.
     *
     * @param name what the owner calls it; may be empty
     * @param spot the middle of the heap
     */
    public record HeapSpot(String name, Spot spot) {}

    /** Copies the list and checks the ranges. */
    public WorkPart {
        heaps = List.copyOf(heaps);
        if (!(margin >= 0 && margin <= 30)) {
            throw new IllegalArgumentException("the margin must be 0 to 30 m");
        }
        if (!(interval >= 0.5 && interval <= 100)) {
            throw new IllegalArgumentException("the interval must be 0.5 to 100 m");
        }
        if (!(stakesBeyond >= 0 && stakesBeyond <= 30)) {
            throw new IllegalArgumentException("stakes stand 0 to 30 m outside the limits");
        }
    }
}
