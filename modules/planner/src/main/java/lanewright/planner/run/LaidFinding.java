package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.proposal.Steepest;

/**
 * Says that a grade was laid because the plan had none, in short: its reasons are a list of their
 * own.
 */
final class LaidFinding {

    static final String CODE = "grade-laid";

    private LaidFinding() {}

    /**
     * The finding.
     *
     * @param clear how much of the lane stands clear of the ground beside it; without words as long
     *     as that is not known
     */
    static Finding of(LaneDesign lane, Saying clear) {
        Steepest steepest = Steepest.of(lane.profile());
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.grade(Math.abs(steepest.grade())));
        quantities.add(Quantity.station(steepest.station()));
        quantities.addAll(clear.quantities());
        return Finding.of(
                CODE,
                Level.LOOK,
                Topic.GRADE,
                Where.stretch(0, lane.length()),
                new Saying(
                        "The grade is proposed by this program, since the plan holds none: at most"
                                + " {}, at {}."
                                + (clear.pattern().isEmpty() ? "" : " " + clear.pattern()),
                        quantities),
                Saying.plain(
                        "Look at the profile and at the reasons below it, and agree on it with"
                                + " whoever must, before building. To keep it whatever else changes,"
                                + " have it written into the plan."));
    }
}
