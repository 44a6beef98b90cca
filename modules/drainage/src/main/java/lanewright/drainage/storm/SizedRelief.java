package lanewright.drainage.storm;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Relief;

/**
 * One storm at a relief culvert that is proposed: what gathers in the ditch below the proposal
 * above it, as if every proposal for the ditches were built. Water may stand up to the brim of the
 * ditch, or up to {@link StormReport#FREEBOARD} below the lower edge of the lane where that is
 * less. For that the ditch is dammed below the inlet as high as it is deep; else water runs past
 * it. Of the pipes that the proposal knows it is the highest for which some size does.
 *
 * @param relief the culvert
 * @param sized the storm at it, and the pipes that carry it
 * @param brim how deep water may stand in the ditch there before it runs out over a bank, m
 * @param basin how much deeper than the bottom of the ditch its inlet lies, m
 * @param intoDitch whether it comes out in the ditch across, which then carries that water too;
 *     else it comes out on the ground: there is no ditch, or it lies higher, or it would lead the
 *     water round to this culvert again
 */
public record SizedRelief(
        Relief relief, Sized sized, double brim, double basin, boolean intoDitch) {

    /**
     * Whether it can be built: it lies in its place, and a pipe carries the storm, or none comes.
     */
    public boolean isBuilt() {
        return relief.fits() && (sized.isDry() || sized.least().isPresent());
    }

    /** Whether its water comes out in a ditch. */
    public boolean comesOutIn(SizedDitch ditch) {
        CulvertLine line = sized.crossing().line();
        double at = line.outletStation();
        DitchReach across = ditch.water().ditch();
        return intoDitch
                && isBuilt()
                && across.side() == line.from().across()
                && at >= across.from()
                && at <= across.to();
    }

    /**
     * Whether its water comes out in a reach of a ditch: at its foot, or between that and its top.
     */
    public boolean comesOutIn(SizedDitch ditch, SizedReach reach) {
        double at = sized.crossing().line().outletStation();
        return comesOutIn(ditch) && at != reach.top() && at >= reach.from() && at <= reach.to();
    }

    /** Time that water takes through it at the speed at which it leaves, s; zero if none runs. */
    double through() {
        return sized.least()
                .map(each -> each.headwater().outletVelocity())
                .filter(speed -> speed > 0)
                .map(speed -> sized.crossing().line().length() / speed)
                .orElse(0.0);
    }

    /** Whether it is the ditch and not the lane that says how high water may stand. */
    public boolean isBrimful() {
        return sized.allowed() >= brim + basin;
    }
}
