package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.List;
import lanewright.desktop.session.WaterRow;
import lanewright.drainage.LandWater;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.Descents.Descent;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/** What the tables of the water sheet say, place by place, for the card of the question. */
final class WaterTold {

    /** Beside the lane on that side, m, where a table names a side and no offset. */
    private static final double BESIDE = 4;

    private final WaterReport water;
    private final @Nullable StormReport storm;
    private final UnitSystem units;

    private WaterTold(WaterReport water, @Nullable StormReport storm, UnitSystem units) {
        this.water = water;
        this.storm = storm;
        this.units = units;
    }

    /**
     * A group of rows under one head.
     *
     * @param name short and stable
     * @param title what the rows are of
     * @param note what is to be known of all of them; may be empty
     * @param rows its rows; none if there is nothing to tell
     */
    record Group(String name, String title, String note, List<Row> rows) {
        Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * What is told of one place.
     *
     * @param title which place
     * @param lines what is told of it, a line each
     * @param where it lies
     */
    record Row(String title, List<String> lines, Where where) {
        Row {
            lines = List.copyOf(lines);
        }
    }

    /** The groups of an outcome, in the order of the sheet, those without rows left out. */
    static List<Group> of(Outcome outcome, UnitSystem units) {
        var told = new WaterTold(outcome.water(), outcome.storm(), units);
        Listing border = StandingListings.border(outcome.water(), outcome.storm());
        Listing waysOut = StandingListings.waysOut(outcome.water(), outcome.storm());
        List<Group> groups =
                List.of(
                        told.hollows(),
                        told.downAndAcross(),
                        new Group(
                                WaterRow.Group.RELIEFS.id(),
                                "Where to lead water off",
                                "Proposals, from the top of each way down. A dip is driven through,"
                                        + " a bar stops cars. What leaves the lane comes to"
                                        + " somebody's land: lead it onto ground that bears it, and"
                                        + " ask first.",
                                told.reliefs()),
                        new Group(
                                WaterRow.Group.DITCH_ENDS.id(),
                                "Where the ditches end",
                                "",
                                told.ends()),
                        new Group(
                                WaterRow.Group.BOUNDARY.id(),
                                border.title(),
                                "Only land that was surveyed counts. Water that you send to a"
                                        + " neighbor where none or less went before may break the"
                                        + " law: ask before you build.",
                                told.border(border)),
                        new Group(
                                WaterRow.Group.WAYS_OUT.id(),
                                waysOut.title(),
                                "As the land is, and with the lane.",
                                told.waysOut(waysOut)));
        return groups.stream().filter(group -> !group.rows().isEmpty()).toList();
    }

    private Group hollows() {
        Listing nests = StandingListings.nests(water);
        Listing rain = StandingListings.rain(water);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < nests.rows().size(); i++) {
            Pool pool = water.after().get(i);
            List<String> lines = new ArrayList<>();
            lines.add(
                    Saying.of("Full, it would be {} deep", Quantity.depth(pool.spot().depth()))
                            .in(units));
            lines.addAll(lines(nests, i, 1));
            if (!rain.rows().isEmpty()) {
                lines.addAll(lines(rain, i, 1));
            }
            rows.add(
                    new Row(
                            nests.rows().get(i).get(0).in(units),
                            lines,
                            Where.map(pool.spot().x(), pool.spot().y())));
        }
        LandWater land = water.land();
        String soil =
                Double.isNaN(land.soaks()) && !land.steps().isEmpty()
                        ? " Nobody has said how fast the ground takes water in; here it takes none."
                        : "";
        return new Group(
                WaterRow.Group.HOLLOWS.id(),
                "Where water stands",
                "With the lane built. How likely: from the depth and from how far the survey's"
                        + " heights may be off; under nine in ten it may be no hollow at all: look"
                        + " after a rain."
                        + soil,
                rows);
    }

    private Group downAndAcross() {
        Listing listing = LaneDrainageListings.downAndAcross(water);
        List<Where> places = new ArrayList<>();
        for (Descent descent : water.drainage().down()) {
            places.add(
                    Where.stretch(
                            Math.min(descent.top(), descent.foot()),
                            Math.max(descent.top(), descent.foot())));
        }
        for (WetPlace place : water.drainage().across()) {
            places.add(place.finding().where());
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < listing.rows().size(); i++) {
            List<Saying> row = listing.rows().get(i);
            rows.add(
                    new Row(
                            row.get(0).in(units) + ": " + row.get(3).in(units),
                            lines(listing, i, 1, 2, 4),
                            places.get(i)));
        }
        return new Group(
                WaterRow.Group.DOWN_AND_ACROSS.id(),
                listing.title(),
                LaneDrainageListings.counted(water).in(units),
                rows);
    }

    private List<Row> reliefs() {
        Listing listing = LaneDrainageListings.reliefs(water);
        Listing sizes = StormListings.reliefs(storm);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < listing.rows().size(); i++) {
            Relief relief = water.drainage().reliefs().get(i);
            List<Saying> row = listing.rows().get(i);
            boolean built = relief.device() != Relief.Device.NONE;
            List<String> lines = lines(listing, i, 3, 4, 5, 6, 7);
            for (int k = 0; k < sizes.rows().size(); k++) {
                if (sizes.rows().get(k).get(0).equals(row.get(2))) {
                    lines.addAll(lines(sizes, k, 2));
                }
            }
            rows.add(
                    new Row(
                            (built ? row.get(2).in(units) + ", " : "")
                                    + row.get(1).in(units)
                                    + " at "
                                    + row.get(0).in(units),
                            lines,
                            relief.side() == null
                                    ? Where.station(relief.station())
                                    : Where.beside(
                                            relief.station(),
                                            relief.side() == Side.LEFT ? -BESIDE : BESIDE)));
        }
        return rows;
    }

    private List<Row> ends() {
        Listing listing = LaneDrainageListings.ends(water);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < listing.rows().size(); i++) {
            DitchEnd end = water.drainage().ends().get(i);
            List<Saying> row = listing.rows().get(i);
            rows.add(
                    new Row(
                            row.get(0).in(units) + " ditch at " + row.get(1).in(units),
                            lines(listing, i, 2, 3, 4),
                            Where.station(end.outlet().station())
                                    .at(end.outlet().x(), end.outlet().y())));
        }
        return rows;
    }

    private List<Row> waysOut(Listing listing) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < listing.rows().size(); i++) {
            LandWater.WayOut way = water.land().waysOut().get(i);
            List<Saying> row = listing.rows().get(i);
            rows.add(
                    new Row(
                            row.get(0).in(units) + ", " + row.get(1).in(units),
                            lines(listing, i, 2),
                            Where.map(way.x(), way.y())));
        }
        return rows;
    }

    private List<Row> border(Listing listing) {
        List<LandWater.Border> borders = List.of(water.land().before(), water.land().after());
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < listing.rows().size(); i++) {
            LandWater.Border border = borders.get(i);
            rows.add(
                    new Row(
                            listing.rows().get(i).get(0).in(units),
                            lines(listing, i, 1),
                            Double.isNaN(border.x())
                                    ? Where.ANYWHERE
                                    : Where.map(border.x(), border.y())));
        }
        return rows;
    }

    /** All cells of a row from one column on. */
    private List<String> lines(Listing listing, int row, int from) {
        List<String> lines = new ArrayList<>();
        for (int i = from; i < listing.columns().size(); i++) {
            lines.addAll(lines(listing, row, new int[] {i}));
        }
        return lines;
    }

    /** Cells of a row, each with what its column is of; empty ones left out. */
    private List<String> lines(Listing listing, int row, int... columns) {
        List<String> lines = new ArrayList<>();
        for (int column : columns) {
            String cell = listing.rows().get(row).get(column).in(units);
            // A table fills its gaps with a dash; a sentence has none.
            String said = cell.startsWith("– ") ? cell.substring(2) : cell;
            if (!said.isBlank()) {
                lines.add(listing.columns().get(column).head() + ": " + said);
            }
        }
        return lines;
    }
}
