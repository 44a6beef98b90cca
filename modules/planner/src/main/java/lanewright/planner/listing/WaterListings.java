package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.Inflow;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Sags;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** Where water goes, as rows. */
public final class WaterListings {

    private WaterListings() {}

    /** Low spots with the lane built, in the order given. */
    public static Listing pools(WaterReport water) {
        return pools("low-spots", "Where water sits with the lane built", water.after());
    }

    /** Low spots that were there and are drained or filled by the lane. */
    public static Listing gone(WaterReport water) {
        return pools("low-spots-gone", "Wet places that the lane does away with", water.gone());
    }

    private static Listing pools(String name, String title, List<Pool> pools) {
        var rows = new ArrayList<List<Saying>>();
        for (Pool pool : pools) {
            var culvert = pool.culvert();
            rows.add(
                    List.of(
                            place(pool),
                            Listing.cell(pool.fate().words()),
                            Listing.cell(Quantity.length(pool.spot().depth())),
                            Listing.cell(Quantity.area(pool.spot().area())),
                            Listing.cell(Quantity.volume(pool.spot().volume())),
                            Saying.of(
                                    pool.spot().atRim() ? "{} at the survey's edge, open" : "{}",
                                    Quantity.height(pool.spot().level())),
                            Listing.cell(Quantity.land(pool.drained())),
                            culvert == null
                                    ? Listing.BLANK
                                    : Saying.of(
                                            "{} at {}",
                                            Quantity.length(culvert.length()),
                                            Quantity.station(culvert.station()))));
        }
        return new Listing(
                name,
                title,
                List.of(
                        Column.words("Where"),
                        Column.words("What of it"),
                        Column.of("Depth full", Kind.LENGTH),
                        Column.of("Area", Kind.AREA),
                        Column.of("Water", Kind.VOLUME),
                        Column.words("Spills at height"),
                        Column.of("Land draining to it", Kind.LAND),
                        Column.words("Pipe that would drain it")),
                rows,
                0);
    }

    /** Where a low spot lies beside the lane, in words. */
    public static Saying place(Pool pool) {
        Pool.Beside beside = pool.beside();
        if (beside == null) {
            return Listing.cell("off the lane");
        }
        return Saying.of(
                "{}, {} " + beside.side().word(),
                Quantity.station(beside.station()),
                Quantity.offset(Math.abs(beside.offset())));
    }

    /** Where water of the land meets the lane. */
    public static Listing inflows(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (Inflow inflow : water.inflows()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(inflow.station())),
                            Listing.cell(inflow.side().word()),
                            Listing.cell(Quantity.land(inflow.drained())),
                            Listing.cell(
                                    inflow.isLeast()
                                            ? "or more: it comes from beyond the survey"
                                            : "")));
        }
        return new Listing(
                "inflows",
                "Where water of the land meets the lane",
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.words("Comes from"),
                        Column.of("Land draining here", Kind.LAND),
                        Column.words("Note")),
                rows,
                0);
    }

    /** Ditches, with where each sends its water. */
    public static Listing ditches(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (DitchReach ditch : water.ditches()) {
            double gentlest = Double.POSITIVE_INFINITY;
            double steepest = 0;
            for (DitchReach.Leg leg : ditch.legs()) {
                gentlest = Math.min(gentlest, Math.abs(leg.grade()));
                steepest = Math.max(steepest, Math.abs(leg.grade()));
            }
            boolean legs = gentlest <= steepest;
            rows.add(
                    List.of(
                            Listing.cell(ditch.side().word()),
                            Listing.cell(Quantity.station(ditch.from())),
                            Listing.cell(Quantity.station(ditch.to())),
                            legs ? Listing.cell(Quantity.grade(gentlest)) : Listing.BLANK,
                            legs ? Listing.cell(Quantity.grade(steepest)) : Listing.BLANK,
                            outlets(ditch)));
        }
        return new Listing(
                "ditches",
                "Ditches",
                List.of(
                        Column.words("Side"),
                        Column.of("From", Kind.STATION),
                        Column.of("To", Kind.STATION),
                        Column.of("Flattest", Kind.GRADE),
                        Column.of("Steepest", Kind.GRADE),
                        Column.words("Where its water goes")),
                rows,
                0);
    }

    private static Saying outlets(DitchReach ditch) {
        var pattern = new StringBuilder();
        var stations = new ArrayList<Quantity>();
        for (DitchReach.Outlet outlet : ditch.outlets()) {
            pattern.append(stations.isEmpty() ? "" : "; ").append("at {} it ");
            pattern.append(outlet.kind().words());
            stations.add(Quantity.station(outlet.station()));
        }
        return new Saying(pattern.toString(), stations);
    }

    /** Low points of the profile and how water leaves them. */
    public static Listing sags(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (Sags.Sag sag : water.sags()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(sag.station())),
                            Listing.cell(sag.left().words()),
                            Listing.cell(sag.right().words())));
        }
        return new Listing(
                "sags",
                "Low points of the grade, and how water leaves them",
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.words("To the left"),
                        Column.words("To the right")),
                rows,
                0);
    }

    /** Unbroken ways down the lane and its ditches. */
    public static Listing descents(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (Descents.Descent descent : water.descents()) {
            rows.add(
                    List.of(
                            Listing.cell(descent.way().words()),
                            Listing.cell(Quantity.station(descent.top())),
                            Listing.cell(Quantity.station(descent.foot())),
                            Listing.cell(Quantity.length(descent.length())),
                            Listing.cell(Quantity.grade(descent.grade())),
                            Listing.cell(Quantity.length(descent.spacing())),
                            Listing.cell(descent.isTooLong() ? "longer than that" : "")));
        }
        return new Listing(
                "ways-down",
                "How far water runs down without being led off",
                List.of(
                        Column.words("Where"),
                        Column.of("From", Kind.STATION),
                        Column.of("Down to", Kind.STATION),
                        Column.of("Length", Kind.LENGTH),
                        Column.of("Grade", Kind.GRADE),
                        Column.of("Table allows", Kind.LENGTH),
                        Column.words("Note")),
                rows,
                0);
    }
}
