package lanewright.sheets.set;

import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.WorkListings;
import lanewright.planner.work.Stakes;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** What to carry to the field: every stake, with distances in and heights from one benchmark. */
final class StakeSheet {

    private StakeSheet() {}

    static Sheet of(Stakes stakes, UnitSystem units, String answer) {
        var flow =
                new Flow(
                        Paper.of(units).lying(),
                        units,
                        "Stakes",
                        "What do I carry to the field?",
                        answer);
        for (Finding finding : stakes.findings()) {
            flow.entry(Flow.Sign.LOOK, finding.says().in(units), finding.remedy().in(units));
        }
        if (stakes.benchmark() != null) {
            flow.para(
                    "All heights from "
                            + stakes.benchmark()
                            + ", "
                            + Words.fine(Quantity.height(stakes.benchmarkHeight()), units)
                            + ". Check it against a second fixed point before the first stake.");
        }
        flow.note(
                "Stakes stand outside the limits of work, where stripping does not reach them."
                        + " Distances run level from the stake in towards the lane. Above: build up"
                        + " so much over the ground at the stake; with a minus, dig so much below"
                        + " it. Finished heights, stone and topsoil included. Rod: what a rod reads"
                        + " on the finished surface at the height of the level that the plan"
                        + " gives; blank without one.");
        flow.table(WorkListings.stakes(stakes));
        return flow.sheet();
    }
}
