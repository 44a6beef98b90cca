package lanewright.sheets.set;

import java.util.List;
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

    /**
     * The sheet.
     *
     * @param settingOut points of the line: those to be set first, then those between them
     * @param pipes the ends of pipes
     */
    static Sheet of(
            Stakes stakes,
            List<Listing> settingOut,
            Listing pipes,
            UnitSystem units,
            String answer) {
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
        Listing first = settingOut.get(0);
        flow.table(first, settingOutNote(flow.heads(first)));
        settingOut.stream().skip(1).filter(each -> !each.rows().isEmpty()).forEach(flow::table);
        if (!pipes.rows().isEmpty()) {
            flow.table(pipes, pipesNote(flow.heads(pipes)));
        }
        Listing offset = WorkListings.stakes(stakes);
        flow.head("Beside the lane", offsetNote(flow.heads(offset)), offset);
        Listing lane = WorkListings.laneStakes(stakes);
        if (!lane.rows().isEmpty()) {
            flow.head("On the lane", laneNote(flow.heads(lane)), lane);
        }
        Listing loads = WorkListings.loadMarks(stakes);
        if (!loads.rows().isEmpty()) {
            flow.head(
                    "For the loads",
                    "Mark one layer at a time, in the order of laying. Each mark stands to the"
                            + " right of the lane, looking up-station, outside all stone, so that no"
                            + " truck runs it over. Spread each load from the mark where it starts"
                            + " to the mark where it stops.",
                    loads);
        }
        return flow.sheet();
    }

    /**
     * What the columns of the points of the line mean.
     *
     * @param heads of the columns that are shown
     */
    static String settingOutNote(List<String> heads) {
        boolean distances = heads.contains("From the benchmark");
        return "Stake the line itself first, from these points: by coordinates of the survey"
                + (distances
                        ? ", or by distance and direction from the benchmark, turned clockwise from"
                                + " the survey's north. Where neither"
                        : "; no benchmark is named from which they could be measured. Where they")
                + " can"
                + (distances ? "" : "not")
                + " be found on the ground the stakes below cannot be set: ask whoever made the"
                + " survey.";
    }

    /**
     * What the columns of the ends of pipes mean.
     *
     * @param heads of the columns that are shown
     */
    static String pipesNote(List<String> heads) {
        return "Where each barrel begins and ends as it will lie: beyond the foot of the slope where"
                + " its ends stick out, at the face of the wall where there are headwalls; so its"
                + " inverts differ a little from those at the foot, on the other sheets. Invert:"
                + " the bottom of the bore; dig deeper by its wall and bed."
                + (any(heads, "above ground")
                        ? " Above ground: over the ground as it was surveyed; with a minus, below"
                                + " it."
                        : "")
                + (any(heads, "Rod ") ? " Rod: what a rod reads on the invert." : "")
                + " Digging destroys these stakes: set two more in line with each pipe, beyond the"
                + " work at either end. Set those that are offered only once the pipe is in the"
                + " plan, and those that wait for the lane or the ground once that is done.";
    }

    /**
     * What the columns of the offset stakes mean.
     *
     * @param heads of the columns that are shown
     */
    static String offsetNote(List<String> heads) {
        return "Stakes stand outside the limits of work, where stripping does not reach them. In"
                + " to: so far level from the stake towards the lane."
                + (any(heads, "above stake")
                        ? " Above stake: the finished surface, stone and topsoil included, is so"
                                + " much higher than the ground at the stake; with a minus, so much"
                                + " lower."
                        : "")
                + (any(heads, "Rod ")
                        ? " Rod: what a rod reads on the finished surface, with the level set up at"
                                + " the height that the plan gives."
                        : "");
    }

    /**
     * What the columns of the stakes on the lane mean.
     *
     * @param heads of the columns that are shown
     */
    static String laneNote(List<String> heads) {
        return "Set these from the offset stakes once the earth is shaped: stripping destroys"
                + " whatever stands here before. Edge: where the travelled stone ends, so far from"
                + " the line."
                + (any(heads, " finished") ? " Finished: height of the top of the stone." : "")
                + (any(heads, " above ground")
                        ? " Above ground: over the ground as it was surveyed; with a minus, below"
                                + " it."
                        : "")
                + (any(heads, "Rod ") ? " Rod: what a rod reads on the finished surface." : "");
    }

    private static boolean any(List<String> heads, String words) {
        return heads.stream().anyMatch(head -> head.contains(words));
    }

    private static boolean rods(Stakes stakes) {
        return stakes.stakes().stream().anyMatch(stake -> !Double.isNaN(stake.rodCentre()));
    }
}
