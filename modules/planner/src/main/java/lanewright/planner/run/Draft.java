package lanewright.planner.run;

import java.util.List;
import lanewright.earthwork.EarthworkReport;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.planner.document.Plan;
import lanewright.planner.proposal.GradeProposal;
import lanewright.stone.StoneReport;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * What the sections of a lane tell, before water is followed and the true solid is measured. Every
 * figure in it stands in the {@link Outcome} of the same plan unchanged, unless it stands on a
 * grade that was laid for an earlier one; a grade that was laid gets further reasons there, once
 * water was followed.
 *
 * @param plan the plan, with the grade that was laid if it had none
 * @param laid the grade that was laid because the plan had none, or null
 * @param laidBefore whether that grade was laid for the lane as it was before a drag moved it
 * @param survey what was measured
 * @param ground the ground as it is
 * @param topsoil depth of topsoil on that ground, m
 * @param bearing depth to soil that bears, m, NaN where not known; null if nowhere known
 * @param design the lane as asked for
 * @param sections its sections, in station order
 * @param volumes volumes by average end area
 * @param earth topsoil and dirt, without the true solid beside them
 * @param stone tons, loads and money
 * @param answers the questions that are answered by now, in the order they are asked
 * @param findings what was found by now, in the order found
 * @param assumptions what the plan and the survey assumed
 */
public record Draft(
        Plan plan,
        @Nullable GradeProposal laid,
        boolean laidBefore,
        Survey survey,
        Ground ground,
        VertexField topsoil,
        @Nullable VertexField bearing,
        LaneDesign design,
        SectionSet sections,
        LaneVolumes volumes,
        EarthworkReport earth,
        StoneReport stone,
        List<Answer> answers,
        List<Finding> findings,
        List<Assumption> assumptions) {

    /** Copies the lists. */
    public Draft {
        answers = List.copyOf(answers);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }
}
