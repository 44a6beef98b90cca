package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.LandWater;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetGround;
import lanewright.drainage.WetPlace;
import lanewright.drainage.hollows.RainStep;
import lanewright.drainage.runoff.Peak;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** What stands in the hollows and what crosses the boundary, as rows. */
public final class StandingListings {

    private static final double HOUR = 3600;

    private static final double DAY = 24 * HOUR;

    /** Flows that differ by no more than this part are the same: cells say no more. */
    private static final double LITTLE = 0.02;

    private StandingListings() {}

    /** Every low spot, with what lies inside it, how sure it is, and how much rain fills it. */
    public static Listing nests(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (int i = 0; i < water.land().spots().size(); i++) {
            LandWater.InSpot spot = water.land().spots().get(i);
            rows.add(
                    List.of(
                            where(water, water.after().get(i)),
                            spot.inside() == 0
                                    ? Listing.cell("none")
                                    : Saying.of(
                                            "{} in it, {} inside one another",
                                            Quantity.count(spot.inside()),
                                            Quantity.count(spot.deep())),
                            Double.isNaN(spot.holds())
                                    ? Listing.cell(
                                            "– not known: nobody said how far heights may be off")
                                    : Listing.cell(Quantity.share(spot.holds())),
                            Double.isNaN(spot.runsOver())
                                    ? Listing.cell("– does not fill")
                                    : Saying.of("{} of rain", Quantity.depth(spot.runsOver()))));
        }
        return new Listing(
                "hollow-nests",
                "Hollows inside hollows",
                List.of(
                        Column.words("Where"),
                        Column.words("Smaller hollows"),
                        Column.words("How likely it holds water"),
                        Column.words("Runs over after")),
                rows,
                0);
    }

    /** How deep water stands after each step of the rain, and how long it stays. */
    public static Listing rain(WaterReport water) {
        LandWater land = water.land();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("Where"));
        for (RainStep step : land.steps()) {
            columns.add(Column.of("After " + step.name(), Kind.DEPTH));
        }
        columns.add(Column.words("Then stands"));
        var rows = new ArrayList<List<Saying>>();
        for (int i = 0; i < land.spots().size() && !land.steps().isEmpty(); i++) {
            LandWater.InSpot spot = land.spots().get(i);
            List<Saying> row = new ArrayList<>();
            row.add(where(water, water.after().get(i)));
            spot.depths().forEach(depth -> row.add(Listing.cell(Quantity.depth(depth))));
            row.add(stands(spot));
            rows.add(row);
        }
        return new Listing("standing-water", "Rain, step by step", columns, rows, 0);
    }

    private static Saying stands(LandWater.InSpot spot) {
        if (Double.isNaN(spot.stands())) {
            return Listing.cell("– not known how fast the ground takes it in");
        }
        if (Double.isInfinite(spot.stands())) {
            return Listing.cell("until it dries up");
        }
        if (!(spot.stands() > 0)) {
            return Listing.cell("not at all");
        }
        return spot.stands() < 3 * DAY
                ? Listing.cell(Quantity.hours(spot.stands() / HOUR))
                : Saying.of("{} days", Quantity.count(Math.ceil(spot.stands() / DAY)));
    }

    /** What crosses the boundary, before and after, with the storm's flow if there is a storm. */
    public static Listing border(WaterReport water, @Nullable StormReport storm) {
        LandWater land = water.land();
        var rows = new ArrayList<List<Saying>>();
        if (land.before().leaves() > 0) {
            rows.add(border("as it is", land.before(), storm));
            rows.add(border("with the lane", land.after(), storm));
        }
        return new Listing(
                "boundary-water",
                land.isOwn()
                        ? "Water over your boundary"
                        : "Water over the edge of the survey, for no boundary is given",
                List.of(
                        Column.words("The land"),
                        Column.words("Comes in from"),
                        Column.words("Goes out from"),
                        Column.of("Ways out worth showing", Kind.COUNT),
                        Column.words("The largest drains"),
                        Column.words("Storm's flow there")),
                rows,
                0);
    }

    private static List<Saying> border(
            String when, LandWater.Border border, @Nullable StormReport storm) {
        return List.of(
                Listing.cell(when),
                WaterListings.land(border.enters(), false),
                WaterListings.land(border.leaves(), false),
                Listing.cell(Quantity.count(border.ways())),
                WaterListings.land(border.most(), border.isLeast()),
                storm == null ? Listing.cell("– no storm given") : flow(border, storm));
    }

    /** The largest ways out over the boundary, each as it is and with the lane. */
    public static Listing waysOut(WaterReport water, @Nullable StormReport storm) {
        var rows = new ArrayList<List<Saying>>();
        for (LandWater.WayOut way : water.land().waysOut()) {
            rows.add(
                    List.of(
                            Listing.cell(way.name()),
                            Double.isNaN(way.station())
                                    ? Listing.cell("past an end of the lane")
                                    : Saying.of(
                                            "{}, {} " + (way.offset() < 0 ? "left" : "right"),
                                            Quantity.station(way.station()),
                                            Quantity.offset(Math.abs(way.offset()))),
                            drains(way.before()),
                            drains(way.after()),
                            flow(way.before(), storm),
                            flow(way.after(), storm),
                            change(way, storm)));
        }
        return new Listing(
                "boundary-ways-out",
                water.land().isOwn()
                        ? "The largest ways out over your boundary"
                        : "The largest ways out over the edge of the survey",
                List.of(
                        Column.words("Name"),
                        Column.words("Where"),
                        Column.words("Drains, as it is"),
                        Column.words("Drains, with the lane"),
                        Column.words("Storm's flow, as it is"),
                        Column.words("Storm's flow, with the lane"),
                        Column.words("Changes by")),
                rows,
                0);
    }

    private static Saying drains(LandWater.@Nullable Exit exit) {
        return exit == null
                ? Listing.cell("– little or none")
                : WaterListings.land(exit.drained(), exit.isLeast());
    }

    private static Saying flow(LandWater.@Nullable Exit exit, @Nullable StormReport storm) {
        return storm == null
                ? Listing.cell("– no storm given")
                : exit == null
                        ? Listing.cell("– little or none")
                        : Listing.cell(Quantity.flow(discharge(exit, storm)));
    }

    private static double discharge(LandWater.@Nullable Exit exit, StormReport storm) {
        return exit == null
                ? 0
                : StormReport.peak(storm.asked(), exit.drained(), exit.way()).discharge();
    }

    private static Saying change(LandWater.WayOut way, @Nullable StormReport storm) {
        if (storm == null) {
            return Listing.cell("– no storm given");
        }
        double was = discharge(way.before(), storm);
        double is = discharge(way.after(), storm);
        if (Math.abs(is - was) <= LITTLE * Math.max(is, was)) {
            return Listing.cell("as before");
        }
        return Saying.of(is > was ? "{} more" : "{} less", Quantity.flow(Math.abs(is - was)));
    }

    private static Saying flow(LandWater.Border border, StormReport storm) {
        Peak peak = StormReport.peak(storm.asked(), border.most(), border.way());
        return Listing.cell(Quantity.flow(peak.discharge()));
    }

    /** Where the ground as it is stays wet by its shape, in steps. */
    public static Listing wet(WaterReport water) {
        WetGround.Squares squares = water.wet().squares();
        var rows = new ArrayList<List<Saying>>();
        for (WetGround.Step step : WetGround.Step.values()) {
            if (!Double.isNaN(squares.from(step))) {
                rows.add(
                        List.of(
                                Listing.cell(step.words()),
                                Listing.cell(Quantity.count(squares.from(step))),
                                Listing.cell(Quantity.land(squares.area(step)))));
            }
        }
        return new Listing(
                "wet-ground",
                "Where the ground stays wet by its shape",
                List.of(
                        Column.words("Ground"),
                        Column.of("Wetness index, from", Kind.COUNT),
                        Column.words("Land")),
                rows,
                0);
    }

    /** The name of the wet place that the low spot makes, or where it lies. */
    private static Saying where(WaterReport water, Pool pool) {
        WetPlace place = water.placeOf(pool);
        return place == null ? WaterListings.place(pool) : Listing.cell(place.name());
    }
}
