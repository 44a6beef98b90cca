package lanewright.cli;

import java.io.PrintWriter;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.FindingListings;
import lanewright.planner.run.Answer;
import lanewright.planner.run.FirstLook;
import lanewright.planner.run.Outcome;
import lanewright.survey.Reading;

/** The answers on a terminal. */
final class Summary {

    /** More findings than this are in the sheets, not on the screen. */
    private static final int MOST = 12;

    private Summary() {}

    /** What was understood of each survey file. */
    static void readings(PrintWriter out, List<Reading> readings) {
        for (Reading reading : readings) {
            out.println(
                    "Read "
                            + reading.file()
                            + ": "
                            + counted(reading.points(), "point", ", ")
                            + counted(reading.lines(), "line", ", ")
                            + counted(reading.probes(), "probe hole", ""));
            for (Reading.Understood each : reading.understood()) {
                out.println("  " + each.what() + ": " + each.answer() + " (" + each.why() + ")");
            }
        }
        out.println();
    }

    private static String counted(int count, String one, String after) {
        return count + " " + one + (count == 1 ? "" : "s") + after;
    }

    /** The answers, and every finding. */
    static void printAll(PrintWriter out, Outcome outcome) {
        answers(out, outcome);
        UnitSystem units = outcome.plan().units();
        out.println();
        out.println(outcome.findings().isEmpty() ? "Nothing was found." : "All that was found:");
        outcome.findings().forEach(finding -> finding(out, finding, units));
    }

    /** The answers, and what to look at first. */
    static void print(PrintWriter out, Outcome outcome) {
        answers(out, outcome);
        findings(out, outcome);
    }

    private static void answers(PrintWriter out, Outcome outcome) {
        UnitSystem units = outcome.plan().units();
        out.println(outcome.plan().name());
        out.println(outcome.headline().in(units));
        out.println();
        for (Answer answer : outcome.answers()) {
            out.println(mark(answer.mark()) + answer.question());
            out.println("    " + answer.says().in(units));
        }
    }

    private static String mark(Answer.Mark mark) {
        return switch (mark) {
            case ANSWERED -> "  * ";
            case LOOK -> "  ! ";
            case OPEN -> "  ? ";
        };
    }

    private static void findings(PrintWriter out, Outcome outcome) {
        UnitSystem units = outcome.plan().units();
        List<Finding> look = FirstLook.of(outcome);
        if (!look.isEmpty()) {
            out.println();
            out.println("Look at these first:");
        }
        look.subList(0, Math.min(MOST, look.size()))
                .forEach(finding -> finding(out, finding, units));
        int more = look.size() - Math.min(MOST, look.size());
        int notes = outcome.findings().size() - look.size();
        String rest = rest(more, notes);
        if (!rest.isEmpty()) {
            out.println("  " + rest);
        }
    }

    /** What the list leaves out, in words; empty if it leaves out nothing. */
    static String rest(int more, int notes) {
        String look = more > 0 ? more + " more to look at" : "";
        String know = notes > 0 ? notes + (notes == 1 ? " note" : " notes") : "";
        String between = more > 0 && notes > 0 ? " and " : "";
        return more > 0 || notes > 0
                ? "and " + look + between + know + ", all in the findings sheet"
                : "";
    }

    private static void finding(PrintWriter out, Finding finding, UnitSystem units) {
        String place = FindingListings.place(finding.where()).in(units);
        String says = finding.says().in(units);
        boolean placed = place.isEmpty() || says.contains(place);
        out.println(
                "  "
                        + FindingListings.level(finding.level())
                        + ": "
                        + (placed ? "" : place + ": ")
                        + says);
        out.println("      " + finding.remedy().in(units));
    }
}
