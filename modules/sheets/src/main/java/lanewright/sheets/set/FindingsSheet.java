package lanewright.sheets.set;

import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;

/** Everything that was found, worst first, each with what was measured, the limit and the cure. */
final class FindingsSheet {

    private FindingsSheet() {}

    static Sheet of(List<Finding> findings, UnitSystem units) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Findings",
                        "What deserves a look?",
                        answer(findings, units));
        for (Finding.Level level : Finding.Level.values()) {
            List<Finding> some = findings.stream().filter(f -> f.level() == level).toList();
            if (!some.isEmpty()) {
                flow.head(head(level));
                some.forEach(finding -> entry(flow, finding, units));
            }
        }
        return flow.sheet();
    }

    private static String answer(List<Finding> findings, UnitSystem units) {
        if (findings.isEmpty()) {
            return "Nothing: every check that was made is within its limit.";
        }
        return count(findings, Finding.Level.STOP, units)
                + " to settle before building, "
                + count(findings, Finding.Level.LOOK, units)
                + " to look at, "
                + count(findings, Finding.Level.NOTE, units)
                + " good to know.";
    }

    private static String count(List<Finding> findings, Finding.Level level, UnitSystem units) {
        long count = findings.stream().filter(f -> f.level() == level).count();
        return Quantity.count((double) count).in(units);
    }

    private static String head(Finding.Level level) {
        return switch (level) {
            case STOP -> "Stop: settle before building";
            case LOOK -> "Look here before building";
            case NOTE -> "Good to know";
        };
    }

    private static void entry(Flow flow, Finding finding, UnitSystem units) {
        String place = FindingListings.place(finding.where()).in(units);
        String says = finding.says().in(units);
        boolean placed = !place.isEmpty() && !says.contains(place);
        Flow.Sign sign = finding.level() == Finding.Level.NOTE ? Flow.Sign.DOT : Flow.Sign.LOOK;
        flow.entry(sign, placed ? place + ": " + says : says, below(finding, units));
    }

    private static String below(Finding finding, UnitSystem units) {
        var below = new StringBuilder();
        Quantity measured = finding.measured();
        Quantity limit = finding.limit();
        if (measured != null) {
            below.append("Measured ").append(measured.in(units));
            if (limit != null) {
                below.append(", limit ").append(limit.in(units));
            }
            below.append(". ");
        } else if (limit != null) {
            below.append("Limit ").append(limit.in(units)).append(". ");
        }
        String remedy = finding.remedy().in(units).strip();
        below.append(remedy);
        if (!remedy.isEmpty() && !remedy.endsWith(".")) {
            below.append('.');
        }
        if (!finding.source().isEmpty()) {
            below.append(" Source: ").append(finding.source()).append('.');
        }
        return below.toString();
    }
}
