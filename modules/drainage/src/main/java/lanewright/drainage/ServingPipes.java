package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.lane.line.Place;
import org.jspecify.annotations.Nullable;

/** Which pipe of the plan leads a water under the lane, once the lane is built. */
final class ServingPipes {

    /**
     * Water this near to an open inlet along the lane, on its side, goes into it, m. Our choice.
     */
    private static final double AT_PIPE = 5;

    private final List<PipeCourse> courses;
    private final FlowGrid flow;
    private final LaneLine line;

    /**
     * The pipes.
     *
     * @param courses the plan's pipes, in its order
     * @param flow water on the finished surface, with these pipes in it
     * @param line where the lane runs
     */
    ServingPipes(List<PipeCourse> courses, FlowGrid flow, LaneLine line) {
        this.courses = courses;
        this.flow = flow;
        this.line = line;
    }

    /** The pipe under the lane that standing water runs away through once it is full, or null. */
    @Nullable GivenPipe of(Pool pool) {
        int number = pool.spot().spillPipe();
        return number >= 0 && serves(courses.get(number)) ? courses.get(number).pipe() : null;
    }

    /** The pipe under the lane that the water of a watercourse reaches on its own side, or null. */
    @Nullable GivenPipe of(Inflow inflow) {
        if (courses.stream().noneMatch(ServingPipes::serves)) {
            return null;
        }
        Cells cells = flow.cells();
        int cell = cells.at(inflow.x(), inflow.y());
        while (cell >= 0) { // leaving is -1
            Place place = line.place(cells.x(cell), cells.y(cell));
            if (place != null && Side.at(place.offset()) != inflow.side()) {
                break;
            }
            for (PipeCourse course : courses) {
                GivenPipe pipe = course.pipe();
                int in = cells.at(pipe.inletX(), pipe.inletY());
                if (serves(course) && in >= 0 && (in == cell || flow.standsAt(in) == cell)) {
                    return pipe;
                }
            }
            cell = flow.next(cell);
        }
        for (PipeCourse course : courses) {
            GivenPipe pipe = course.pipe();
            Place in = line.place(pipe.inletX(), pipe.inletY());
            if (serves(course)
                    && in != null
                    && Side.at(in.offset()) == inflow.side()
                    && Math.abs(in.station() - inflow.station()) <= AT_PIPE) {
                return pipe;
            }
        }
        return null;
    }

    private static boolean serves(PipeCourse course) {
        return course.state() == PlacedPipe.State.OPEN && course.under() != null;
    }
}
