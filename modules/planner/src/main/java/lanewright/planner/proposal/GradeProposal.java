package lanewright.planner.proposal;

import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.Saying;

/**
 * A grade line to be taken into the plan, or not.
 *
 * @param points vertical points from end to end
 * @param reasons why it runs as it does, in the owner's words, every sag with its way out
 * @param findings limits that collide; empty if every limit is met
 * @param effort earth it moves by a rough rule, m³, to compare lines by and not to order from
 * @param straightEffort the same for the straight grade from end to end
 */
public record GradeProposal(
        List<VerticalPoint> points,
        List<Saying> reasons,
        List<Finding> findings,
        double effort,
        double straightEffort) {
    /** Copies the lists. */
    public GradeProposal {
        points = List.copyOf(points);
        reasons = List.copyOf(reasons);
        findings = List.copyOf(findings);
    }
}
