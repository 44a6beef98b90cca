package lanewright.sheets.set;

import lanewright.measure.Finding;
import lanewright.measure.Kind;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.FindingListings;
import lanewright.sheets.page.Flow;

/** How a finding reads on a sheet: what was found and where in bold, and below it what to do. */
final class Told {

    /** What the signs of proposals to lead water off mean, to follow a sentence. */
    static final String RELIEF_SIGNS =
            " Proposed: RD rolling dip, WB water bar, TO turn-out, RC relief culvert.";

    private Told() {}

    /** A finding with what to do; on the sheet that it is about. */
    static void brief(Flow flow, Finding finding, UnitSystem units) {
        flow.entry(sign(finding), what(finding, units), sentence(finding.remedy().in(units)));
    }

    /** A finding with the first thing to do; the sheet of findings has the rest. */
    static void shortest(Flow flow, Finding finding, UnitSystem units) {
        String remedy = sentence(finding.remedy().in(units));
        int end = remedy.indexOf(". ");
        flow.entry(
                sign(finding),
                what(finding, units),
                end < 0 ? remedy : remedy.substring(0, end + 1));
    }

    /**
     * A finding with what is, what should be, what to do and who says so.
     *
     * @param number that it has on the plan too, or zero for none
     */
    static void whole(Flow flow, Finding finding, int number, UnitSystem units) {
        String what = what(finding, units);
        String numbered = number > 0 ? Words.fixed(number, 0) + ". " + what : what;
        flow.entry(sign(finding), numbered, below(finding, units));
    }

    /** Nothing need be done about a note, so it has no triangle. */
    private static Flow.Sign sign(Finding finding) {
        return finding.level() == Finding.Level.NOTE ? Flow.Sign.DOT : Flow.Sign.LOOK;
    }

    /** What was found, with its place in front unless it names it. */
    static String what(Finding finding, UnitSystem units) {
        String place = FindingListings.place(finding.where()).in(units);
        String says = sentence(finding.says().in(units));
        return place.isEmpty() || says.contains(place) ? says : place + ": " + says;
    }

    private static String below(Finding finding, UnitSystem units) {
        var below = new StringBuilder();
        Quantity measured = finding.measured();
        Quantity limit = finding.limit();
        if (limit != null) {
            below.append(measured == null ? "It should be " : "It is " + measured.in(units))
                    .append(measured == null ? "" : ruled(finding, measured, limit))
                    .append(Words.round(limit, units))
                    .append(finding.source().isEmpty() ? "" : " (" + finding.source() + ")")
                    .append(". ");
        }
        below.append(sentence(finding.remedy().in(units)));
        if (limit == null && !finding.source().isEmpty()) {
            below.append(" Source: ").append(sentence(finding.source()));
        }
        return below.toString();
    }

    /** Which way a figure should be changed; a note may be well inside its limit. */
    private static String ruled(Finding finding, Quantity measured, Quantity limit) {
        boolean graded = measured.kind() == Kind.GRADE;
        double is = graded ? Math.abs(measured.value()) : measured.value();
        if (is > limit.value()) {
            return " and should be at most ";
        }
        return finding.level() == Finding.Level.NOTE
                ? "; the limit is "
                : " and should be at least ";
    }

    /** With a full stop at its end. */
    static String sentence(String words) {
        String said = words.strip();
        boolean ended =
                said.isEmpty() || said.endsWith(".") || said.endsWith("?") || said.endsWith("!");
        return ended ? said : said + ".";
    }
}
