package lanewright.drainage.storm;

import java.util.Optional;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.channel.CheckDams;
import lanewright.drainage.channel.Lining;

/**
 * One storm in a reach of a ditch: a part of about one grade, with the flow that leaves it.
 *
 * @param top station of its upper end, m
 * @param foot station of its lower end, m
 * @param length its own length in plan, m
 * @param flattest its flattest grade, rise over run; NaN if it is level
 * @param steepest its steepest grade, rise over run; NaN if it is level
 * @param lane gravel of the lane that drains through its foot, m²
 * @param slopes the lane's own slopes that do, m²
 * @param land land beyond them that does, m²
 * @param isLeast whether more land may drain there from beyond the survey
 * @param time in which that water gathers, s
 * @param flow at its height, m³/s
 * @param shape of the ditch across
 * @param depth from the lane's hinge down to the bottom, where that is least, m
 * @param bank from the outer ground down to the bottom, where that is least, m; NaN where the ditch
 *     only begins or runs out
 * @param steep the least lining that holds where it is steepest, and how water runs over it; empty
 *     if nothing runs, the reach is level, or no published lining holds
 * @param flat how water runs over that lining where the reach is flattest; empty likewise
 * @param dams check dams between which the bare soil holds, in place of the lining; empty where
 *     none are wanted, they would stand too close, or farther apart than the reach is long
 */
public record SizedReach(
        double top,
        double foot,
        double length,
        double flattest,
        double steepest,
        double lane,
        double slopes,
        double land,
        boolean isLeast,
        double time,
        double flow,
        ChannelShape shape,
        double depth,
        double bank,
        Optional<Lining.Flow> steep,
        Optional<Lining.Flow> flat,
        Optional<Dams> dams) {

    /**
     * Check dams.
     *
     * @param height from the bottom to the crest, m
     * @param wanted grade at which the bare soil holds between them, rise over run
     * @param spacing how far apart
     */
    public record Dams(double height, double wanted, CheckDams spacing) {}

    /** Room that is wanted above the water, m: half a foot (FHWA, HEC-15, 2005, from memory). */
    public static final double ROOM = StormReport.FREEBOARD;

    /** The lower station, m. */
    public double from() {
        return Math.min(top, foot);
    }

    /** The higher station, m. */
    public double to() {
        return Math.max(top, foot);
    }

    /** All that drains through its foot, m². */
    public double drained() {
        return lane + slopes + land;
    }

    /** Whether water runs at all and the reach falls. */
    public boolean runs() {
        return flow > 0 && !Double.isNaN(steepest);
    }

    /** Depth of the water where the reach is flattest, m; NaN if not known. */
    public double deep() {
        return flat.map(Lining.Flow::depth).orElse(Double.NaN);
    }

    /** What is left between the water and the hinge beside the lane, m; NaN if not known. */
    public double left() {
        return depth - deep();
    }

    /** What is left between the water and the outer ground, m; NaN if not known. */
    public double leftOutside() {
        return bank - deep();
    }

    /** Whether it must be lined. */
    public boolean wantsLining() {
        return steep.map(each -> each.lining().kind() != Lining.Kind.SOIL).orElse(false);
    }

    /** Whether no published lining holds. */
    public boolean washes() {
        return runs() && steep.isEmpty();
    }
}
