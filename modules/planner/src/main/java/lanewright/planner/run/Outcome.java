package lanewright.planner.run;

import java.util.List;
import lanewright.drainage.WaterReport;
import lanewright.drainage.storm.StormReport;
import lanewright.earthwork.EarthworkReport;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Saying;
import lanewright.planner.document.Plan;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.proposal.GradeProposal;
import lanewright.planner.work.Caution;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.HeapPlaces;
import lanewright.planner.work.Stakes;
import lanewright.planner.work.WorkStep;
import lanewright.stone.StoneReport;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * Everything that came of a plan. All coordinates are metres about the survey's local zero.
 *
 * @param plan the plan, with the grade that was laid if it had none
 * @param laid the grade that was laid because the plan had none, or null
 * @param survey what was measured
 * @param ground the ground as it is
 * @param topsoil depth of topsoil on that ground, m
 * @param bearing depth to soil that bears, m, NaN where not known; null if nowhere known
 * @param design the lane as asked for
 * @param sections its sections, in station order
 * @param volumes volumes by average end area
 * @param built the built surface
 * @param solid volumes of the true solid
 * @param finished the ground with the lane built in it
 * @param earth topsoil and dirt
 * @param water where water goes
 * @param storm what a storm brings to the pipes; null if the plan does not say how much it rains
 * @param pipes pipes under the lane that are to be laid or offered, as work
 * @param stone tons, loads and money
 * @param hazards things that can hurt, local metres
 * @param heaps where the topsoil is heaped
 * @param order the steps of the work, first to last
 * @param cautions the usual cautions that apply
 * @param stakes what to carry to the field
 * @param headline one sentence about the whole
 * @param answers the owner's questions, in the order they are asked
 * @param findings everything found, worst first, then by question, then by station
 * @param assumptions everything the answers rest on that was not measured
 */
public record Outcome(
        Plan plan,
        @Nullable GradeProposal laid,
        Survey survey,
        Ground ground,
        VertexField topsoil,
        @Nullable VertexField bearing,
        LaneDesign design,
        SectionSet sections,
        LaneVolumes volumes,
        BuiltSurface built,
        TrueSolid solid,
        Ground finished,
        EarthworkReport earth,
        WaterReport water,
        @Nullable StormReport storm,
        List<PipeJob> pipes,
        StoneReport stone,
        List<Hazard> hazards,
        HeapPlaces heaps,
        List<WorkStep> order,
        List<Caution> cautions,
        Stakes stakes,
        Saying headline,
        List<Answer> answers,
        List<Finding> findings,
        List<Assumption> assumptions) {

    /** Copies the lists. */
    public Outcome {
        pipes = List.copyOf(pipes);
        hazards = List.copyOf(hazards);
        order = List.copyOf(order);
        cautions = List.copyOf(cautions);
        answers = List.copyOf(answers);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** True if something must be changed before the plan is built. */
    public boolean mustStop() {
        return findings.stream().anyMatch(each -> each.level() == Finding.Level.STOP);
    }
}
