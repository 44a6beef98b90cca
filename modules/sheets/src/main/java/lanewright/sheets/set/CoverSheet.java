package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
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

    /** A question and its answer. */
    record Answer(String question, Saying says, Mark mark) {}

    /**
     * What the cover says.
     *
     * @param plan its name
     * @param headline one sentence about the lane
     * @param answers to the owner's questions
     * @param figures that are asked for most
     * @param first findings to look at first, worst first
     * @param askFirst what to ask others before the first scoop
     */
    record Content(
            String plan,
            Saying headline,
            List<Answer> answers,
            Listing figures,
            List<Finding> first,
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
            flow.answer(sign(answer.mark()), answer.question(), answer.says().in(units));
        }
        flow.table(content.figures());
        if (!content.first().isEmpty()) {
            flow.head("Look at these first");
            for (Finding finding : content.first()) {
                String place = FindingListings.place(finding.where()).in(units);
                String says = finding.says().in(units);
                boolean placed = !place.isEmpty() && !says.contains(place);
                flow.entry(
                        Flow.Sign.LOOK,
                        placed ? place + ": " + says : says,
                        finding.remedy().in(units));
            }
        }
        if (!content.askFirst().isEmpty()) {
            flow.head("Ask these first");
            content.askFirst().forEach(ask -> flow.entry(Flow.Sign.BOX, "", List.of(ask)));
        }
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
