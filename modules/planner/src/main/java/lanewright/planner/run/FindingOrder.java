package lanewright.planner.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Finding;
import lanewright.measure.Where;

/** The order in which findings are told, and their places beside the lane. */
final class FindingOrder {

    private FindingOrder() {}

    /** Worst first, then by question, then by station; what is equal stays in the order found. */
    static List<Finding> sorted(List<Finding> findings, Alignment line) {
        List<Finding> sorted = new ArrayList<>(new LinkedHashSet<>(findings));
        sorted.replaceAll(finding -> placed(finding, line));
        sorted.sort(
                Comparator.comparing(Finding::level)
                        .thenComparing(finding -> !finding.code().equals(DAM))
                        .thenComparing(Finding::topic)
                        .thenComparingDouble(FindingOrder::station));
        return sorted;
    }

    /** What can fail at once and hurt somebody below comes before all else. */
    private static final String DAM = "lane-is-a-dam";

    private static double station(Finding finding) {
        Double from = finding.where().from();
        return from == null ? Double.POSITIVE_INFINITY : from;
    }

    /** A finding that knows its place on the map, with its place beside the lane. */
    private static Finding placed(Finding finding, Alignment line) {
        Where where = finding.where();
        Double x = where.x();
        Double y = where.y();
        if (where.from() != null || x == null || y == null) {
            return finding;
        }
        Place place = line.place(x, y);
        if (place == null) {
            return finding;
        }
        return new Finding(
                finding.code(),
                finding.level(),
                finding.topic(),
                Where.beside(place.station(), place.offset()).at(x, y),
                finding.says(),
                finding.measured(),
                finding.limit(),
                finding.source(),
                finding.remedy());
    }
}
