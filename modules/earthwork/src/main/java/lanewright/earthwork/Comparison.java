package lanewright.earthwork;

import lanewright.lane.volume.State;

/**
 * One quantity measured three ways.
 *
 * @param name what it is, in the owner's words
 * @param state the state it is measured in
 * @param plain by average end area, m³
 * @param corrected the same with curves corrected, m³: the figure that the plan goes by
 * @param pyramids by average end area, but pyramids where it runs out to nothing, m³
 * @param solid the true solid, m³
 */
public record Comparison(
        String name, State state, double plain, double corrected, double pyramids, double solid) {

    /** By how much the figure that the plan goes by is more than the true solid, m³. */
    public double more() {
        return corrected - solid;
    }
}
