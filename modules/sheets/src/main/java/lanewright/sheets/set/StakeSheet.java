package lanewright.sheets.set;

import lanewright.measure.Finding;
import lanewright.measure.Listing;
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

    static Sheet of(Stakes stakes, Listing settingOut, UnitSystem units, String answer) {
        var flow =
                new Flow(
                        rods(stakes) ? Paper.of(units).lying() : Paper.of(units),
                        units,
                        "Stakes",
                        "What do I carry to the field?",
                        answer);
        for (Finding finding : stakes.findings()) {
            Told.brief(flow, finding, units);
        }
        if (stakes.benchmark() != null) {
            flow.para(
                    "All heights from "
                            + stakes.benchmark()
                            + ", "
                            + Words.fine(Quantity.height(stakes.benchmarkHeight()), units)
                            + ". Check it against a second fixed point before the first stake.");
        }
        flow.table(settingOut);
        flow.note(
                "Stake the line itself first, from these points: by coordinates of the survey, or by"
                        + " distance and direction from the benchmark, turned clockwise from the"
                        + " survey's north. Where neither can be found on the ground the stakes"
                        + " below cannot be set: ask whoever made the survey.");
        flow.note(
                "Stakes stand outside the limits of work, where stripping does not reach them."
                        + " Distances run level from the stake in towards the lane."
                        + (heights(stakes)
                                ? " Above stake: the finished surface, stone and topsoil included,"
                                        + " is so much higher than the ground at the stake; with a"
                                        + " minus, so much lower."
                                : "")
                        + (rods(stakes)
                                ? " Rod: what a rod reads on the finished surface, with the level"
                                        + " set up at the height that the plan gives."
                                : ""));
        flow.table(WorkListings.stakes(stakes));
        Listing lane = WorkListings.laneStakes(stakes);
        if (!lane.rows().isEmpty()) {
            flow.head("On the lane");
            flow.note(
                    "Set these from the offset stakes once the earth is shaped: stripping destroys"
                            + " whatever stands here before. Finished: top of the stone. Above"
                            + " ground: over the ground as it was surveyed; with a minus, below it."
                            + " Blank heights: no benchmark; blank rods: no height of the level.");
            flow.table(lane);
        }
        Listing loads = WorkListings.loadMarks(stakes);
        if (!loads.rows().isEmpty()) {
            flow.head("For the loads");
            flow.note(
                    "Mark one layer at a time, in the order of laying. Each mark stands to the"
                            + " right of the lane, looking up-station, outside all stone, so that no"
                            + " truck runs it over. Spread each load from the mark where it starts"
                            + " to the mark where it stops.");
            flow.table(loads);
        }
        return flow.sheet();
    }

    private static boolean heights(Stakes stakes) {
        return stakes.stakes().stream().anyMatch(stake -> !Double.isNaN(stake.centreUp()));
    }

    private static boolean rods(Stakes stakes) {
        return stakes.stakes().stream().anyMatch(stake -> !Double.isNaN(stake.rodCentre()));
    }
}
