package lanewright.planner.run;

import java.util.ArrayList;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.proposal.GradeProposal;

/** Says that a grade was laid because the plan had none. */
final class LaidFinding {

    static final String CODE = "grade-laid";

    private LaidFinding() {}

    static Finding of(GradeProposal laid, LaneDesign lane) {
        StringBuilder pattern =
                new StringBuilder(
                        "The grade is proposed by this program, since the plan holds none.");
        var quantities = new ArrayList<Quantity>();
        for (Saying reason : laid.reasons()) {
            pattern.append(' ').append(reason.pattern());
            quantities.addAll(reason.quantities());
        }
        return Finding.of(
                CODE,
                Level.NOTE,
                Topic.GRADE,
                Where.stretch(0, lane.length()),
                new Saying(pattern.toString(), quantities),
                Saying.plain(
                        "Look at the profile and agree on it with whoever must, before building."
                                + " To keep it whatever else changes, have it written into the"
                                + " plan."));
    }
}
