package lanewright.planner.pipes;

import lanewright.drainage.culvert.Load;
import lanewright.drainage.culvert.Size;

/**
 * Earth and stone over a pipe under the travelled way, at one time of the work.
 *
 * @param load what goes over it then
 * @param least least height from the top of the pipe, walls included, to the surface, m; NaN where
 *     the pipe does not pass under the travelled way
 * @param station where that is, m
 * @param offset where that is, m
 * @param needed what is published for the load, m; NaN if nothing is for that width
 * @param source who published it
 */
public record PipeCover(
        Load load, double least, double station, double offset, double needed, String source) {

    /** Heights are compared to this, so that the limit itself is enough, m. */
    private static final double SAME = 1e-6;

    /** Whether there is less than is needed, or nobody says how much is. */
    public boolean isThin() {
        return !Double.isNaN(least) && !(least >= needed - SAME);
    }

    /** How much is lacking, m; zero or less if there is enough, NaN if nobody says. */
    public double lacking() {
        return needed - least;
    }

    /**
     * The cover of a pipe.
     *
     * @param built whether the lane is finished; else its stone is still to come
     */
    static PipeCover of(PipeWay way, Laid laid, boolean built, Load load) {
        double least = Double.NaN;
        double station = Double.NaN;
        double offset = Double.NaN;
        for (PipeWay.Stand stand : way.stands()) {
            if (!stand.driven()) {
                continue;
            }
            double top = way.invert(stand.along()) + laid.rise() + laid.barrel().wall();
            double cover = (built ? stand.finished() : stand.subgrade()) - top;
            if (!(cover >= least)) {
                least = cover;
                station = stand.station();
                offset = stand.offset();
            }
        }
        boolean known = Size.hasCover(laid.material(), laid.span(), load);
        Size.Cover needed = known ? Size.cover(laid.material(), laid.span(), load) : null;
        return new PipeCover(
                load,
                least,
                station,
                offset,
                needed == null ? Double.NaN : needed.least(),
                needed == null ? "none published for this width" : needed.source());
    }
}
