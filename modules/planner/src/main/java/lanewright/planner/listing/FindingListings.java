package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
                            limit == null ? Listing.BLANK : Saying.of("{~}", limit),
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
                        Column.words("Is"),
                        Column.words("Should be"),
                        Column.words("Who says so"),
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

    /** All assumptions, what the owner can change first before what the program does. */
    public static Listing assumptions(List<Assumption> assumptions) {
        var rows = new ArrayList<List<Saying>>();
        for (Group group : Group.values()) {
            rows.addAll(rows(assumptions, group));
        }
        return listing("assumptions", "What the answers rest on", rows);
    }

    /** The assumptions of one group; no rows if there are none. */
    public static Listing assumptions(List<Assumption> assumptions, Group group) {
        return listing("assumptions", group.title(), rows(assumptions, group));
    }

    /** By whom an assumption can be changed. */
    public enum Group {
        /** The owner's own figures. */
        YOURS("Yours: change these first"),
        /** What people usually do. */
        PRACTICE("Common practice and our choice: change where you know better"),
        /** Published figures. */
        PUBLISHED("Published figures: change with a reason"),
        /** How the program works it out. */
        METHOD("How it was worked out");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        /** In words. */
        public String title() {
            return title;
        }
    }

    private static Listing listing(String name, String title, List<List<Saying>> rows) {
        return new Listing(
                name,
                title,
                List.of(
                        Column.words("What"),
                        Column.words("Value"),
                        Column.words("Kind"),
                        Column.words("Source")),
                rows,
                0);
    }

    private static List<List<Saying>> rows(List<Assumption> assumptions, Group group) {
        var rows = new ArrayList<List<Saying>>();
        for (Assumption assumption : bothSides(assumptions)) {
            if (group(assumption) == group) {
                String mark = mark(assumption);
                String source = assumption.source();
                boolean told =
                        isPractice(source)
                                || isOurs(source)
                                || assumption.mark() == Assumption.Mark.YOURS;
                rows.add(
                        List.of(
                                Listing.cell(capital(assumption.name())),
                                readable(assumption.value()),
                                Listing.cell(mark),
                                Listing.cell(told ? "" : capital(source))));
            }
        }
        return rows;
    }

    /** What is the same on both sides, once. */
    private static List<Assumption> bothSides(List<Assumption> assumptions) {
        var once = new ArrayList<Assumption>();
        for (Assumption assumption : assumptions) {
            if (assumption.name().endsWith(RIGHT)
                    && assumptions.contains(side(assumption, RIGHT, LEFT))) {
                continue;
            }
            boolean both =
                    assumption.name().endsWith(LEFT)
                            && assumptions.contains(side(assumption, LEFT, RIGHT));
            once.add(both ? side(assumption, LEFT, ", both sides") : assumption);
        }
        return once;
    }

    private static final String LEFT = ", left";
    private static final String RIGHT = ", right";

    private static Assumption side(Assumption assumption, String is, String becomes) {
        String name = assumption.name();
        return new Assumption(
                name.substring(0, name.length() - is.length()) + becomes,
                assumption.value(),
                assumption.mark(),
                assumption.source());
    }

    private static Group group(Assumption assumption) {
        return switch (assumption.mark()) {
            case YOURS -> Group.YOURS;
            case COMMON_PRACTICE -> Group.PRACTICE;
            case PUBLISHED -> isPractice(assumption.source()) ? Group.PRACTICE : Group.PUBLISHED;
            case RULE -> Group.METHOD;
        };
    }

    private static boolean isPractice(String source) {
        return source.regionMatches(true, 0, "common practice", 0, 15);
    }

    private static boolean isOurs(String source) {
        return source.equalsIgnoreCase("our choice");
    }

    private static String mark(Assumption assumption) {
        if (isPractice(assumption.source())) {
            return "common practice";
        }
        return switch (assumption.mark()) {
            case PUBLISHED -> "published";
            case COMMON_PRACTICE -> isOurs(assumption.source()) ? "our choice" : "common practice";
            case YOURS -> "yours";
            case RULE -> "our choice";
        };
    }

    /** A value as a person would write it: a plan file has true, false and plain figures. */
    private static Saying readable(Saying value) {
        String words =
                switch (value.pattern()) {
                    case "true" -> "yes";
                    case "false" -> "no";
                    default -> value.pattern().replace(" ft2", " ft²").replace(" m2", " m²");
                };
        return new Saying(words, value.quantities());
    }

    private static String capital(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
