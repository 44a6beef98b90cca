package lanewright.drainage.storm;

import java.util.List;
import lanewright.drainage.DitchWater;

/**
 * One storm in a ditch.
 *
 * @param water the ditch
 * @param reaches its reaches, in station order
 * @param ends what arrives at each of its low points, in the order of its outlets
 */
public record SizedDitch(DitchWater water, List<SizedReach> reaches, List<Arriving> ends) {

    /**
     * What arrives at a low point.
     *
     * @param flow at its height, m³/s
     * @param drained land that drains there, the lane's own included, m²
     * @param isLeast whether more may drain there from beyond the survey
     */
    public record Arriving(double flow, double drained, boolean isLeast) {}

    /** Copies the lists. */
    public SizedDitch {
        reaches = List.copyOf(reaches);
        ends = List.copyOf(ends);
    }
}
