package lanewright.cli;

import java.io.PrintWriter;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.planner.run.Answer;
import lanewright.planner.run.Outcome;

/** The answers on a terminal. */
final class Summary {

    /** More findings than this are in the sheets, not on the screen. */
    private static final int MOST = 12;

    private Summary() {}

    static void print(PrintWriter out, Outcome outcome) {
        UnitSystem units = outcome.plan().units();
        out.println(outcome.plan().name());
        out.println(outcome.headline().in(units));
        out.println();
        for (Answer answer : outcome.answers()) {
            out.println(mark(answer.mark()) + answer.question());
            out.println("    " + answer.says().in(units));
        }
        findings(out, outcome.findings(), units);
    }

    private static String mark(Answer.Mark mark) {
        return switch (mark) {
            case ANSWERED -> "  * ";
            case LOOK -> "  ! ";
            case OPEN -> "  ? ";
        };
    }

    private static void findings(PrintWriter out, List<Finding> findings, UnitSystem units) {
        List<Finding> look = findings.stream().filter(f -> f.level() != Level.NOTE).toList();
        if (!look.isEmpty()) {
            out.println();
            out.println("Look at these first:");
        }
        for (Finding finding : look.subList(0, Math.min(MOST, look.size()))) {
            String place = FindingListings.place(finding.where()).in(units);
            out.println(
                    "  "
                            + FindingListings.level(finding.level())
                            + ": "
                            + (place.isEmpty() ? "" : place + ": ")
                            + finding.says().in(units));
            out.println("      " + finding.remedy().in(units));
        }
        int more = look.size() - Math.min(MOST, look.size());
        int notes = findings.size() - look.size();
        if (more > 0 || notes > 0) {
            out.println(
                    "  and "
                            + more
                            + " more to look at and "
                            + notes
                            + " notes, all in the findings sheet");
        }
    }
}
