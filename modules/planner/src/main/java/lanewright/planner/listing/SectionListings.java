package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** The cross-sections as rows. */
public final class SectionListings {

    private SectionListings() {}

    /** Areas of every section, in station order. */
    public static Listing areas(List<Section> sections) {
        var rows = new ArrayList<List<Saying>>();
        for (Section section : sections) {
            Areas areas = section.areas();
            rows.add(
                    List.of(
                            station(section),
                            area(areas.strip()),
                            area(areas.cut()),
                            area(areas.fill()),
                            area(areas.edgeRefill()),
                            area(areas.topsoilBack()),
                            area(areas.undercut()),
                            Listing.cell(Quantity.area(stone(areas)))));
        }
        return new Listing(
                "areas",
                "Areas of the sections",
                List.of(
                        Column.words("Station"),
                        Column.of("Strip", Kind.AREA),
                        Column.of("Cut", Kind.AREA),
                        Column.of("Fill with edge", Kind.AREA),
                        Column.of("Edge refill", Kind.AREA),
                        Column.of("Put back", Kind.AREA),
                        Column.of("Undercut", Kind.AREA),
                        Column.of("Stone", Kind.AREA)),
                rows,
                0);
    }

    /** Area of all stone in a section, m². */
    public static double stone(Areas areas) {
        double sum = 0;
        for (Part layer : areas.layers()) {
            sum += layer.area();
        }
        return sum;
    }

    /** Where every section meets the ground, and its heights, in station order. */
    public static Listing catchPoints(List<Section> sections) {
        var rows = new ArrayList<List<Saying>>();
        for (Section section : sections) {
            rows.add(
                    List.of(
                            station(section),
                            Listing.cell(kind(section.left())),
                            offset(section.left().catchPoint()),
                            height(section.left().catchPoint()),
                            height(section.left().ditchInner()),
                            ground(section),
                            Listing.cell(Quantity.height(section.profileHeight())),
                            dig(section),
                            height(section.right().ditchInner()),
                            offset(section.right().catchPoint()),
                            height(section.right().catchPoint()),
                            Listing.cell(kind(section.right()))));
        }
        return new Listing(
                "catch-points",
                "Where the slopes meet the ground",
                List.of(
                        Column.words("Station"),
                        Column.words("Left side"),
                        Column.of("Left catch offset", Kind.OFFSET),
                        Column.of("Left catch height", Kind.HEIGHT),
                        Column.of("Left ditch height", Kind.HEIGHT),
                        Column.of("Ground at line", Kind.HEIGHT),
                        Column.of("Finished at line", Kind.HEIGHT),
                        Column.of("Dig at line (minus: build up)", Kind.LENGTH),
                        Column.of("Right ditch height", Kind.HEIGHT),
                        Column.of("Right catch offset", Kind.OFFSET),
                        Column.of("Right catch height", Kind.HEIGHT),
                        Column.words("Right side")),
                rows,
                0);
    }

    /** The station, and which side of a jump. */
    public static Saying station(Section section) {
        Quantity station = Quantity.station(section.station());
        return switch (section.face()) {
            case SINGLE -> Listing.cell(station);
            case BEFORE -> Saying.of("{} before", station);
            case AFTER -> Saying.of("{} after", station);
        };
    }

    private static Saying area(Part part) {
        return Listing.cell(Quantity.area(part.area()));
    }

    /**
     * How deep the stripped ground must be dug at the lane's line to reach the earth as shaped, m,
     * negative where it must be built up; NaN where the ground is not known.
     */
    public static double digAtLine(Section section) {
        return section.stripped().at(0) - section.subgrade().at(0);
    }

    private static Saying dig(Section section) {
        double dig = digAtLine(section);
        return Double.isNaN(dig) ? Listing.BLANK : Listing.cell(Quantity.length(dig));
    }

    private static Saying ground(Section section) {
        double height = section.ground().at(0);
        return Double.isNaN(height) ? Listing.BLANK : Listing.cell(Quantity.height(height));
    }

    private static Saying offset(@Nullable Corner corner) {
        return corner == null ? Listing.BLANK : Listing.cell(Quantity.offset(corner.offset()));
    }

    private static Saying height(@Nullable Corner corner) {
        return corner == null ? Listing.BLANK : Listing.cell(Quantity.height(corner.height()));
    }

    /** How a side meets the ground, in one word. */
    public static String kind(SideResult side) {
        return switch (side.kind()) {
            case DITCH -> "ditch";
            case CUT -> "cut";
            case FILL -> "fill";
            case OPEN -> "open";
        };
    }
}
