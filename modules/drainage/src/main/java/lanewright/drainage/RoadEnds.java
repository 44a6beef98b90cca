package lanewright.drainage;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.shape.TypicalSection;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the road's own ditch in the ground where the lane leaves the road, and for lane that
 * falls to the road.
 *
 * <p>The ground is read every {@link #STEP} along the alignment, and drawn on straight before its
 * start. A place counts as a ditch if the ground rises by at least {@link #LEAST} from it both ways
 * within the reach; of several, the deepest.
 */
final class RoadEnds {

    /** How far before the lane's start a road's ditch is looked for, m. Our choice. */
    static final double BACK = 10;

    /** How far after it, m. Our choice: a verge and a ditch. */
    static final double AHEAD = 15;

    /** Step of looking, m. Our choice: a fifth of a small ditch's bottom. */
    static final double STEP = 0.1;

    /** Least depth of a ditch, m. Our choice: deeper than wheel marks. */
    static final double LEAST = 0.1;

    /** How far along the lane the road's ditch is followed beside it, m. Our choice. */
    private static final double ASKEW = 2;

    /** Sections this close are two sides of a change, and no way lies between them, m. */
    private static final double NO_WAY = 0.001;

    private final Lane lane;
    private final LaneLine line;
    private final DoubleBinaryOperator ground;
    private final List<GivenPipe> pipes;

    private RoadEnds(Lane lane, DoubleBinaryOperator ground, List<GivenPipe> pipes) {
        this.lane = lane;
        line = lane.line();
        this.ground = ground;
        this.pipes = pipes;
    }

    /**
     * The road end of a lane.
     *
     * @param ground height of the ground as it is, m, NaN where it is not known
     */
    static RoadEnd of(Lane lane, DoubleBinaryOperator ground, List<GivenPipe> pipes) {
        return new RoadEnds(lane, ground, pipes).look(lane.sections());
    }

    private RoadEnd look(List<Section> sections) {
        int back = (int) Math.round(BACK / STEP);
        int count = back + (int) Math.round(Math.min(AHEAD, line.length()) / STEP) + 1;
        double[] heights = new double[count];
        double from = Double.NaN;
        double to = Double.NaN;
        for (int i = 0; i < count; i++) {
            double station = (i - back) * STEP;
            heights[i] = ground.applyAsDouble(x(station), y(station));
            if (!Double.isNaN(heights[i])) {
                from = Double.isNaN(from) ? station : from;
                to = station;
            }
        }
        double length = sections.get(sections.size() - 1).station();
        return new RoadEnd(
                ditch(heights, back), from, to, crest(sections, 1), length - crest(sections, -1));
    }

    private RoadEnd.@Nullable RoadDitch ditch(double[] heights, int back) {
        double[] before = banks(heights, 1);
        double[] after = banks(heights, -1);
        int deepest = -1;
        double most = LEAST;
        for (int i = 0; i < heights.length; i++) {
            double depth = Math.min(before[i], after[i]) - heights[i];
            if (depth >= most) {
                most = depth;
                deepest = i;
            }
        }
        if (deepest < 0) {
            return null;
        }
        double station = (deepest - back) * STEP;
        return new RoadEnd.RoadDitch(
                station,
                x(station),
                y(station),
                most,
                heights[deepest],
                pipeAt(Math.max(0, station)),
                station < 0 ? null : entrance(station, heights[deepest]));
    }

    /**
     * A pipe along the road's ditch under the lane: from foreslope to foreslope at the height of
     * the ditch, the higher of its two feet being the inlet. Null where the ground at a foot is not
     * known, or the lane lies no higher than the ditch.
     */
    private @Nullable CulvertLine entrance(double station, double bottom) {
        Section section = lane.sectionAt().apply(station);
        TypicalSection typical = lane.typical().apply(station);
        Corner left = foot(section.left().hinge(), -typical.left().foreslope(), bottom);
        Corner right = foot(section.right().hinge(), typical.right().foreslope(), bottom);
        double leftGround = lowest(station, left.offset());
        double rightGround = lowest(station, right.offset());
        if (Double.isNaN(leftGround + rightGround)
                || !(section.left().edge().height() > bottom)
                || !(section.right().edge().height() > bottom)) {
            return null;
        }
        Corner a = new Corner(left.offset(), leftGround);
        Corner b = new Corner(right.offset(), rightGround);
        return leftGround >= rightGround
                ? CulvertLine.between(section, Side.LEFT, a, b)
                : CulvertLine.between(section, Side.RIGHT, b, a);
    }

    private static Corner foot(Corner hinge, double foreslope, double bottom) {
        double down = Math.max(0, hinge.height() - bottom);
        return new Corner(hinge.offset() + down * foreslope, bottom);
    }

    /** Lowest ground along the lane near a station, at an offset: the ditch may run askew. */
    private double lowest(double station, double offset) {
        double lowest = Double.NaN;
        for (double at = Math.max(0, station - ASKEW); at <= station + ASKEW; at += STEP) {
            var place = new Place(Math.min(at, line.length()), offset);
            double height = ground.applyAsDouble(line.x(place), line.y(place));
            if (!Double.isNaN(height) && !(lowest <= height)) {
                lowest = height;
            }
        }
        return lowest;
    }

    /** The highest known ground up to each place, from one end; NaN until some is known. */
    private static double[] banks(double[] heights, int direction) {
        double[] banks = new double[heights.length];
        double highest = Double.NaN;
        for (int n = 0; n < heights.length; n++) {
            int i = direction > 0 ? n : heights.length - 1 - n;
            if (!Double.isNaN(heights[i]) && !(highest >= heights[i])) {
                highest = heights[i];
            }
            banks[i] = highest;
        }
        return banks;
    }

    /** A pipe whose ends lie on both sides of the lane near a station, or null. */
    private @Nullable GivenPipe pipeAt(double station) {
        for (GivenPipe pipe : pipes) {
            Place inlet = line.place(pipe.inletX(), pipe.inletY());
            Place outlet = line.place(pipe.outletX(), pipe.outletY());
            if (inlet != null
                    && outlet != null
                    && inlet.offset() * outlet.offset() < 0
                    && Math.abs((inlet.station() + outlet.station()) / 2 - station) <= BACK / 2) {
                return pipe;
            }
        }
        return null;
    }

    /** Station up to which the lane climbs without a break, from one of its ends. */
    private static double crest(List<Section> sections, int direction) {
        int at = direction > 0 ? 0 : sections.size() - 1;
        while (at + direction >= 0 && at + direction < sections.size()) {
            Section here = sections.get(at);
            Section next = sections.get(at + direction);
            boolean jump = Math.abs(next.station() - here.station()) < NO_WAY;
            if (!jump && !(next.profileHeight() > here.profileHeight())) {
                break;
            }
            at += direction;
        }
        return sections.get(at).station();
    }

    private double x(double station) {
        return at(station, true);
    }

    private double y(double station) {
        return at(station, false);
    }

    private double at(double station, boolean x) {
        var place = new Place(Math.max(0, station), 0);
        if (station >= 0) {
            return x ? line.x(place) : line.y(place);
        }
        double step = Math.min(STEP, line.length());
        var next = new Place(step, 0);
        double start = x ? line.x(place) : line.y(place);
        double ahead = x ? line.x(next) : line.y(next);
        return start + station * (ahead - start) / step;
    }
}
