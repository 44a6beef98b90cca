package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.Saying;

/**
 * A grade that the program suggests.
 *
 * @param points where grades meet, from the start to the end
 * @param ways for each low point of the lane, how its water gets away
 * @param reasons why it is as it is, in order
 * @param collisions limits that cannot all be kept, each with what would be needed; empty if every
 *     limit is kept
 */
public record GradeProposal(
        List<VerticalPoint> points,
        List<WayOut> ways,
        List<Saying> reasons,
        List<Finding> collisions) {
    /** Copies the lists. */
    public GradeProposal {
        points = List.copyOf(points);
        ways = List.copyOf(ways);
        reasons = List.copyOf(reasons);
        collisions = List.copyOf(collisions);
    }

    /**
     * How water gets away from a low point of the lane.
     *
     * @param station m
     * @param says in words, with the numbers
     */
    public record WayOut(double station, Saying says) {}

    /** True if the limits collide so that the grade must not be built as it is. */
    public boolean mustStop() {
        return collisions.stream().anyMatch(each -> each.level() == Finding.Level.STOP);
    }

    /** The same grade with one more reason. */
    public GradeProposal because(Saying reason) {
        List<Saying> more = new ArrayList<>(reasons);
        more.add(reason);
        return new GradeProposal(points, ways, more, collisions);
    }
}
