package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import org.jspecify.annotations.Nullable;

/**
 * The ditches of the lane, from its sections, and what becomes of their water.
 *
 * <p>A ditch is dug only where its bottom lies below the ground, so where it ends because the
 * ground falls away, its water runs out there. Elsewhere it must meet a pipe, or it is a dead end.
 * Standing water on the finished surface overrules: a ditch whose low point lies in a pool is a
 * dead end, whatever its end looks like.
 */
public final class Ditches {

    /** A pipe's mouth this near to a ditch's low point takes its water, m. Our choice. */
    static final double PIPE_REACH = 5;

    /**
     * A pipe's mouth may lie this much above the bottom and still drain the ditch, m. Our choice.
     */
    static final double PIPE_STEP = 0.1;

    /** How far before the lane's end it is asked whether water stands in the ditch, m. */
    private static final double INSIDE = 0.1;

    /** Whether water stands on the finished surface. */
    public interface Standing {
        /** Whether it does at a place on the map, once all low spots are full. */
        boolean at(double x, double y);
    }

    private final List<Section> sections;
    private final LaneLine line;
    private final Standing standing;
    private final Standing crossable;
    private final List<GivenPipe> pipes;

    private Ditches(
            List<Section> sections,
            LaneLine line,
            Standing standing,
            Standing crossable,
            List<GivenPipe> pipes) {
        this.sections = sections;
        this.line = line;
        this.standing = standing;
        this.crossable = crossable;
        this.pipes = pipes;
    }

    /**
     * The ditches on both sides: the left ones first, each side in station order.
     *
     * @param standing where water stands
     * @param crossable where water stands that a pipe under the lane would let through
     * @param pipes pipes that let water through
     */
    public static List<DitchReach> of(
            List<Section> sections,
            LaneLine line,
            Standing standing,
            Standing crossable,
            List<GivenPipe> pipes) {
        var ditches = new Ditches(sections, line, standing, crossable, pipes);
        List<DitchReach> reaches = new ArrayList<>();
        for (Side side : Side.values()) {
            for (Run run :
                    Run.of(sections.size(), i -> side.of(sections.get(i)).ditchInner() != null)) {
                reaches.add(ditches.reach(side, run));
            }
        }
        return reaches;
    }

    private DitchReach reach(Side side, Run run) {
        List<DitchReach.Point> points = new ArrayList<>();
        for (int i = run.first(); i <= run.last(); i++) {
            Section section = sections.get(i);
            SideResult result = side.of(section);
            Corner inner = result.ditchInner();
            if (inner == null) {
                throw new IllegalStateException("a run of ditch without a ditch");
            }
            Corner outer = result.ditchOuter() == null ? inner : result.ditchOuter();
            var place = new Place(section.station(), (inner.offset() + outer.offset()) / 2);
            double height = Math.min(inner.height(), outer.height());
            points.add(
                    new DitchReach.Point(
                            section.station(),
                            line.x(place),
                            line.y(place),
                            height,
                            result.stoneLow().height() - height));
        }
        List<DitchReach.Outlet> outlets = new ArrayList<>();
        for (Run low : DitchReach.lows(points)) {
            boolean atStart = low.first() == 0;
            boolean atEnd = low.last() == points.size() - 1;
            if (atStart) {
                outlets.add(
                        outlet(
                                side,
                                points.get(0),
                                points.get(Math.min(1, points.size() - 1)),
                                neighbour(run.first() - 1)));
            }
            if (atEnd && points.size() > 1) {
                outlets.add(
                        outlet(
                                side,
                                points.get(points.size() - 1),
                                points.get(points.size() - 2),
                                neighbour(run.last() + 1)));
            }
            if (!atStart && !atEnd) {
                DitchReach.Point sag = points.get((low.first() + low.last()) / 2);
                DitchReach.Kind piped = piped(sag);
                outlets.add(outlet(sag, piped == null ? trapped(sag) : piped));
            }
        }
        return new DitchReach(side, points, outlets);
    }

    private @Nullable Section neighbour(int i) {
        return i < 0 || i >= sections.size() ? null : sections.get(i);
    }

    /** What becomes of water that stands. */
    private DitchReach.Kind trapped(DitchReach.Point low) {
        return crossable.at(low.x(), low.y()) ? DitchReach.Kind.CROSSING : DitchReach.Kind.DEAD_END;
    }

    /**
     * What becomes of water at an end of a ditch.
     *
     * @param before the place in the ditch before its end
     * @param next the first section beyond it, or null at an end of the lane
     */
    private DitchReach.Outlet outlet(
            Side side, DitchReach.Point end, DitchReach.Point before, @Nullable Section next) {
        DitchReach.Kind piped = piped(end);
        if (piped != null) {
            return outlet(end, piped);
        }
        if (next == null && end.station() <= sections.get(0).station()) {
            return outlet(end, DitchReach.Kind.ROAD);
        }
        if (standing.at(end.x(), end.y())) {
            return outlet(end, next == null ? DitchReach.Kind.DEAD_END : trapped(end));
        }
        if (next == null) {
            DitchReach.Point inside = inside(end, before);
            return standing.at(inside.x(), inside.y())
                    ? outlet(inside, DitchReach.Kind.DEAD_END)
                    : outlet(end, DitchReach.Kind.FAR_END);
        }
        boolean falls = side.of(next).kind() == SideResult.Kind.FILL;
        return outlet(end, falls ? DitchReach.Kind.DAYLIGHT : DitchReach.Kind.DEAD_END);
    }

    /** A place a hand's breadth before the end: the end itself lies on the rim of what it holds. */
    private static DitchReach.Point inside(DitchReach.Point end, DitchReach.Point before) {
        double way = Math.hypot(before.x() - end.x(), before.y() - end.y());
        double share = way > 0 ? Math.min(1, INSIDE / way) : 0;
        return new DitchReach.Point(
                end.station(),
                end.x() + share * (before.x() - end.x()),
                end.y() + share * (before.y() - end.y()),
                end.height(),
                end.belowStone());
    }

    /** Which pipe takes water from here, or null if none does. */
    private DitchReach.@Nullable Kind piped(DitchReach.Point low) {
        for (GivenPipe pipe : pipes) {
            if (Math.hypot(pipe.inletX() - low.x(), pipe.inletY() - low.y()) <= PIPE_REACH
                    && pipe.inletInvert() <= low.height() + PIPE_STEP) {
                return pipe.toLay() ? DitchReach.Kind.PIPE_TO_LAY : DitchReach.Kind.PIPE;
            }
        }
        return null;
    }

    private static DitchReach.Outlet outlet(DitchReach.Point point, DitchReach.Kind kind) {
        return new DitchReach.Outlet(point.station(), point.x(), point.y(), point.height(), kind);
    }
}
