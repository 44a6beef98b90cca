package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** Findings and assumptions as rows. */
public final class FindingListings {

    private FindingListings() {}

    /** All findings in the order given. */
    public static Listing findings(List<Finding> findings) {
        var rows = new ArrayList<List<Saying>>();
        for (Finding finding : findings) {
            Quantity measured = finding.measured();
            Quantity limit = finding.limit();
            rows.add(
                    List.of(
                            Listing.cell(level(finding.level())),
                            place(finding.where()),
                            finding.says(),
                            measured == null ? Listing.BLANK : Listing.cell(measured),
                            limit == null ? Listing.BLANK : Listing.cell(limit),
                            Listing.cell(finding.source()),
                            finding.remedy()));
        }
        return new Listing(
                "findings",
                "What was found",
                List.of(
                        Column.words("Level"),
                        Column.words("Where"),
                        Column.words("What was found"),
                        Column.words("Measured"),
                        Column.words("Limit"),
                        Column.words("Source of the limit"),
                        Column.words("What to do")),
                rows,
                0);
    }

    /** The level in words that also read without colour. */
    public static String level(Finding.Level level) {
        return switch (level) {
            case STOP -> "stop";
            case LOOK -> "look here";
            case NOTE -> "note";
        };
    }

    /** How many findings there are of each level, worst first. */
    public static Listing levels(List<Finding> findings) {
        var rows = new ArrayList<List<Saying>>();
        for (Finding.Level level : Finding.Level.values()) {
            long count = findings.stream().filter(f -> f.level() == level).count();
            rows.add(
                    List.of(
                            Listing.cell(level(level)),
                            Listing.cell(Quantity.count((double) count))));
        }
        return new Listing(
                "findings-by-level",
                "How many findings",
                List.of(Column.words("Level"), Column.of("Findings", Kind.COUNT)),
                rows,
                0);
    }

    /** A place in words. */
    public static Saying place(Where where) {
        Double from = where.from();
        Double to = where.to();
        Double offset = where.offset();
        if (from == null) {
            return Listing.BLANK;
        }
        if (offset != null && offset != 0) {
            return Saying.of(
                    offset > 0 ? "{}, {} right" : "{}, {} left",
                    Quantity.station(from),
                    Quantity.offset(Math.abs(offset)));
        }
        return to == null || to.doubleValue() == from.doubleValue()
                ? Saying.of("{}", Quantity.station(from))
                : Saying.of("{} to {}", Quantity.station(from), Quantity.station(to));
    }

    /** All assumptions in the order given. */
    public static Listing assumptions(List<Assumption> assumptions) {
        var rows = new ArrayList<List<Saying>>();
        for (Assumption assumption : assumptions) {
            rows.add(
                    List.of(
                            Listing.cell(assumption.name()),
                            assumption.value(),
                            Listing.cell(mark(assumption.mark())),
                            Listing.cell(assumption.source())));
        }
        return new Listing(
                "assumptions",
                "What the answers rest on",
                List.of(
                        Column.words("What"),
                        Column.words("Value"),
                        Column.words("Kind"),
                        Column.words("Source")),
                rows,
                0);
    }

    private static String mark(Assumption.Mark mark) {
        return switch (mark) {
            case PUBLISHED -> "published";
            case COMMON_PRACTICE -> "common practice";
            case YOURS -> "yours";
            case RULE -> "rule of this program";
        };
    }
}
