package lanewright.drainage;

import java.util.function.DoubleFunction;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A pipe of the plan as it lies to the lane and on the finished surface.
 *
 * @param pipe the pipe
 * @param state whether it lets water through on the finished surface
 * @param under how it passes under the lane; null if it does not, because its ends lie on one side
 *     of the lane or past its ends
 * @param fit whether it fits under the lane as drawn, and why not; empty if it does not pass under
 *     it
 */
public record PipeCourse(
        GivenPipe pipe, PlacedPipe.State state, @Nullable CulvertLine under, Saying fit) {

    /** Ends this near to square across are square across, m: no tape is surer. */
    private static final double SQUARE = 0.05;

    /** What is said of a pipe that fits. */
    static final String FITS = "fits";

    /** Whether it fits under the lane as drawn. */
    public boolean isFit() {
        return fit.pattern().equals(FITS);
    }

    /** Whether it is to be laid under the lane, so that it must be bought. */
    public boolean isToLay() {
        return pipe.toLay() && under != null;
    }

    /**
     * How a pipe passes under the lane, or null if it does not.
     *
     * @param sectionAt the section at any station
     */
    static @Nullable CulvertLine under(
            LaneLine line, GivenPipe pipe, DoubleFunction<Section> sectionAt) {
        Place in = line.place(pipe.inletX(), pipe.inletY());
        Place out = line.place(pipe.outletX(), pipe.outletY());
        if (in == null || out == null || !(in.offset() * out.offset() < 0)) {
            return null;
        }
        boolean square = Math.abs(in.station() - out.station()) <= SQUARE;
        return CulvertLine.given(
                in.station(),
                square ? in.station() : out.station(),
                Side.at(in.offset()),
                new Corner(in.offset(), pipe.inletInvert()),
                new Corner(out.offset(), pipe.outletInvert()),
                pipe.length(),
                sectionAt);
    }
}
