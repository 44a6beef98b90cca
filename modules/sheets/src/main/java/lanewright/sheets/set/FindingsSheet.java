package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.planner.run.Numbered;
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
        List<Finding> numbered = Numbered.of(findings);
        for (Finding.Level level : Finding.Level.values()) {
            List<Finding> some = findings.stream().filter(f -> f.level() == level).toList();
            if (!some.isEmpty()) {
                flow.head(head(level));
                some.forEach(
                        finding -> Told.whole(flow, finding, numbered.indexOf(finding) + 1, units));
            }
        }
        return flow.sheet();
    }

    private static String answer(List<Finding> findings, UnitSystem units) {
        if (findings.isEmpty()) {
            return "Nothing: every check that was made is within its limit.";
        }
        List<String> counts = new ArrayList<>();
        for (Finding.Level level : Finding.Level.values()) {
            if (findings.stream().anyMatch(f -> f.level() == level)) {
                counts.add(count(findings, level, units) + counted(level));
            }
        }
        return String.join(", ", counts) + ". Every wet place is counted here once.";
    }

    private static String counted(Finding.Level level) {
        return switch (level) {
            case STOP -> " to settle before building";
            case LOOK -> " to look at and decide before building";
            case NOTE -> " good to know";
        };
    }

    private static String count(List<Finding> findings, Finding.Level level, UnitSystem units) {
        long count = findings.stream().filter(f -> f.level() == level).count();
        return Quantity.count((double) count).in(units);
    }

    private static String head(Finding.Level level) {
        return switch (level) {
            case STOP -> "Stop: settle these or do not build";
            case LOOK -> "Look at these and decide before building";
            case NOTE -> "Good to know";
        };
    }
}
