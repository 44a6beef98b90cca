package lanewright.planner.run;

import java.util.Comparator;
import java.util.List;
import lanewright.measure.Finding;

/** The numbers by which sheets and screens call what is to be settled or looked at. */
public final class Numbered {

    private Numbered() {}

    /** What is more than a note, in the order of its numbers, the first being one. */
    public static List<Finding> of(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.level() != Finding.Level.NOTE)
                .sorted(Comparator.comparing(Finding::level))
                .toList();
    }
}
