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
     * @param first findings to look at first, worst first; as many of them are told as the page
     *     takes
     * @param all how many there are to settle or look at, those told included
     * @param ask name of the sheet that says whom to ask before the first scoop
     */
    record Content(
            String plan,
            Saying headline,
            List<Answer> answers,
            Listing figures,
            Listing also,
            List<Finding> first,
            int all,
            String ask) {}

    /** An entry of the list of sheets. */
    record Entry(String name, int page) {}

    private CoverSheet() {}

    /** The cover on one page, with as many findings as it takes; the last of them go first. */
    static Sheet of(Content content, List<Entry> index, UnitSystem units) {
        Sheet sheet = of(content, content.first().size(), index, units);
        for (int told = content.first().size() - 1; sheet.pages().size() > 1 && told > 0; told--) {
            sheet = of(content, told, index, units);
        }
        return sheet;
    }

    private static Sheet of(Content content, int told, List<Entry> index, UnitSystem units) {
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
        flow.drawn(stations(content.all() - told, units));
        flow.table(content.figures());
        if (!content.also().rows().isEmpty()) {
            flow.drawn(also(content.also(), where("Stone and loads", index), units));
        }
        if (told > 0) {
            flow.head("Look at these first");
            content.first()
                    .subList(0, told)
                    .forEach(finding -> Told.shortest(flow, finding, units));
        }
        flow.drawn(sheets(content.ask(), index, units));
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
            String small = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
            if (!names.contains(small)) {
                names.add(small);
            }
        }
        return Gauge.of(
                Gauge.Use.CONTENTS,
                "Also needed, and not in these tons (sheet "
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
                        + " from the road; left and right are as you walk in.",
                more > 0 ? List.of((double) more, station) : List.of(station));
    }

    /** Where is what, and at the sheet named {@code ask} that it says whom to ask. */
    private static Gauge sheets(String ask, List<Entry> index, UnitSystem units) {
        var names = new ArrayList<String>();
        var pages = new ArrayList<Double>();
        for (Entry entry : index) {
            String name = entry.name();
            names.add(
                    (name.equals(ask) ? name + ", and whom to ask first" : name)
                            + " "
                            + Quantity.count(entry.page()).in(units));
            pages.add((double) entry.page());
        }
        return new Gauge(Gauge.Use.CONTENTS, "Sheets:  " + String.join("  ·  ", names), pages);
    }
}
