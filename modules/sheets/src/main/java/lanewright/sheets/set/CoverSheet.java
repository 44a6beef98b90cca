package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.LengthUnit;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.WordListings;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/**
 * The first sheet: the owner's questions with their answers, the figures that are asked for most,
 * what to look at first and whom to ask first, and where to find the rest.
 */
final class CoverSheet {

    /** How far a question is answered. */
    enum Mark {
        /** There is an answer. */
        ANSWERED,
        /** There is an answer, and something to look at. */
        LOOK,
        /** There is no answer yet. */
        OPEN
    }

    /** A question and its answer, and the name of the sheet that proves it; empty for none. */
    record Answer(String question, Saying says, Mark mark, String sheet) {}

    /**
     * What the cover says.
     *
     * @param plan its name
     * @param headline one sentence about the lane
     * @param answers to the owner's questions
     * @param figures that are asked for most
     * @param also what is needed besides them; may have no rows
     * @param first findings to look at first, worst first
     * @param more how many more there are to settle or look at
     * @param askFirst what to ask others before the first scoop
     */
    record Content(
            String plan,
            Saying headline,
            List<Answer> answers,
            Listing figures,
            Listing also,
            List<Finding> first,
            int more,
            List<String> askFirst) {}

    /** An entry of the list of sheets. */
    record Entry(String name, int page) {}

    private CoverSheet() {}

    static Sheet of(Content content, List<Entry> index, UnitSystem units) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Cover",
                        content.plan(),
                        content.headline().in(units));
        for (Answer answer : content.answers()) {
            flow.answer(
                    sign(answer.mark()),
                    answer.question(),
                    answer.says().in(units),
                    where(answer.sheet(), index));
        }
        flow.drawn(stations(units));
        flow.table(content.figures());
        if (!content.first().isEmpty()) {
            flow.head("Look at these first");
            content.first().forEach(finding -> Told.brief(flow, finding, units));
            if (content.more() > 0) {
                int page = where("Findings", index);
                flow.drawn(
                        new Gauge(
                                Gauge.Use.CONTENTS,
                                content.more()
                                        + " more to settle or to look at: sheet "
                                        + page
                                        + ".",
                                List.of((double) content.more(), (double) page)));
            }
        }
        if (!content.askFirst().isEmpty()) {
            flow.head("Ask these first");
            content.askFirst().forEach(ask -> flow.entry(Flow.Sign.BOX, "", List.of(ask)));
        }
        if (!content.also().rows().isEmpty()) {
            flow.table(content.also());
        }
        flow.table(WordListings.words());
        flow.gap(4);
        flow.drawn(sheets(index, units));
        return flow.sheet();
    }

    private static Flow.Sign sign(Mark mark) {
        return switch (mark) {
            case ANSWERED -> Flow.Sign.TICK;
            case LOOK -> Flow.Sign.LOOK;
            case OPEN -> Flow.Sign.OPEN;
        };
    }

    /** The page of a sheet, or zero. */
    private static int where(String name, List<Entry> index) {
        for (Entry entry : index) {
            if (entry.name().equals(name)) {
                return entry.page();
            }
        }
        return 0;
    }

    /** What a station is, which every other sheet takes as known. */
    private static Gauge stations(UnitSystem units) {
        boolean us = units == UnitSystem.US;
        String example =
                us
                        ? "3+23.9 is 323.9 ft along the lane's line"
                        : "0+190.1 is 190.1 m along the lane's line";
        return Gauge.of(
                Gauge.Use.STATION,
                "Tick: answered. Triangle: answered, and something to look at; the reason is in the"
                        + " findings. Places along the lane are told by station: "
                        + example
                        + " from its start at the road. Left and right are as you walk in from the"
                        + " road.",
                us ? 323.9 * LengthUnit.FOOT.metres() : 190.1);
    }

    private static Gauge sheets(List<Entry> index, UnitSystem units) {
        var names = new ArrayList<String>();
        var pages = new ArrayList<Double>();
        for (Entry entry : index) {
            names.add(entry.name() + " " + Quantity.count(entry.page()).in(units));
            pages.add((double) entry.page());
        }
        return new Gauge(Gauge.Use.CONTENTS, "Sheets:  " + String.join("  ·  ", names), pages);
    }
}
