package lanewright.drainage.storm;

import java.util.Optional;
import lanewright.drainage.DitchWater;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.runoff.GraphicalPeak;

/**
 * One storm in a ditch, with the most water that it has anywhere.
 *
 * @param water the ditch
 * @param peak the flow at its height
 * @param steep the least lining that holds where the ditch is steepest, and how water runs over it;
 *     empty if nothing runs, the ditch is level, or no published lining holds
 * @param flat how water runs over that lining where the ditch is flattest; empty likewise
 */
public record SizedDitch(
        DitchWater water,
        GraphicalPeak peak,
        Optional<Lining.Flow> steep,
        Optional<Lining.Flow> flat) {

    /** Whether water runs at all and the ditch falls somewhere. */
    public boolean runs() {
        return peak.discharge() > 0 && !Double.isNaN(water.steepest());
    }

    /** What is left of the ditch above the water where it is flattest, m; NaN if not known. */
    public double left() {
        return flat.map(flow -> water.depth() - flow.depth()).orElse(Double.NaN);
    }

    /** Whether it must be lined. */
    public boolean wantsLining() {
        return steep.map(flow -> flow.lining().kind() != Lining.Kind.SOIL).orElse(false);
    }
}
