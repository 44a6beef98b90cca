package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lanewright.measure.Finding;
import lanewright.measure.LengthUnit;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
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
        flow.drawn(stations(content.more(), units));
        flow.table(content.figures());
        if (!content.also().rows().isEmpty()) {
            flow.drawn(also(content.also(), where("Stone and loads", index), units));
        }
        if (!content.first().isEmpty()) {
            flow.head("Look at these first");
            content.first().forEach(finding -> Told.shortest(flow, finding, units));
        }
        if (!content.askFirst().isEmpty()) {
            String ask = String.join("; ", content.askFirst());
            flow.entry(Flow.Sign.BOX, "Ask these first", Told.sentence(ask));
        }
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

    /** What else is needed, by name, and where it is listed. */
    private static Gauge also(Listing also, int page, UnitSystem units) {
        var names = new ArrayList<String>();
        for (List<Saying> row : also.rows()) {
            String name = row.get(0).in(units);
            names.add(name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
        }
        return Gauge.of(
                Gauge.Use.CONTENTS,
                "Also needed, and not in these amounts (sheet "
                        + page
                        + "): "
                        + String.join("; ", names)
                        + ".",
                page);
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
    private static Gauge stations(int more, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        String example =
                us
                        ? "3+23.9 is 323.9 ft along the lane's line"
                        : "0+190.1 is 190.1 m along the lane's line";
        double station = us ? 323.9 * LengthUnit.FOOT.metres() : 190.1;
        return new Gauge(
                Gauge.Use.STATION,
                "Triangle: something to look at, told in the findings"
                        + (more > 0 ? ", " + more + " more than those below" : "")
                        + ". Station "
                        + example
                        + " from the road; left and right are as you walk in. Words of the trade"
                        + " stand at the end of the order of work.",
                more > 0 ? List.of((double) more, station) : List.of(station));
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
