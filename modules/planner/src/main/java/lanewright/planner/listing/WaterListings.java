package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanewright.drainage.Cure;
import lanewright.drainage.Inflow;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Sags;
import lanewright.drainage.along.Side;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.pipes.PipeJob;
import org.jspecify.annotations.Nullable;

/** Where water goes, as rows. */
public final class WaterListings {

    /** Stretches shorter than this are told as a single place, m. */
    private static final double SINGLE = 0.5;

    /** Land smaller than this is told as an area, m²: a tenth of an acre. */
    private static final double SMALL_LAND = 404.68564224;

    /** Why there is no figure of standing water. */
    private static final Saying NONE_STANDS = Listing.cell("– none stands");

    private WaterListings() {}

    /** Every wet place once, in station order. */
    public static Listing places(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (WetPlace place : water.places()) {
            Pool pool = place.pool();
            rows.add(
                    List.of(
                            Listing.cell(place.name()),
                            stretch(place),
                            Listing.cell(side(place)),
                            Listing.cell(place.kind().words()),
                            depth(place),
                            pool == null
                                    ? NONE_STANDS
                                    : Saying.of("{}", Quantity.area(place.area())),
                            pool == null
                                    ? NONE_STANDS
                                    : Saying.of("{}", Quantity.volume(place.volume())),
                            pool == null ? NONE_STANDS : pool.spill().words(),
                            Double.isNaN(place.drained())
                                    ? Listing.cell("– not surveyed")
                                    : land(place.drained(), place.isLeast()),
                            place.brief()));
        }
        return new Listing(
                "wet-places",
                "All wet places, once the lane is built",
                List.of(
                        Column.words("Place"),
                        Column.words("From, to"),
                        Column.words("Side"),
                        Column.words("Kind"),
                        Column.words("Depth"),
                        Column.words("Area"),
                        Column.words("Water"),
                        Column.words("Runs over"),
                        Column.words("Drains"),
                        Column.words("What to do")),
                rows,
                0);
    }

    /** Depth of the water, or of the road's own ditch. */
    private static Saying depth(WetPlace place) {
        return Double.isNaN(place.depth())
                ? NONE_STANDS
                : Saying.of(
                        place.pool() == null ? "{}, the ditch" : "{}",
                        Quantity.depth(place.depth()));
    }

    private static Saying stretch(WetPlace place) {
        if (Double.isNaN(place.station())) {
            return Saying.plain("past an end");
        }
        return place.to() - place.from() < SINGLE
                ? Saying.of("{}", Quantity.station(place.station()))
                : Saying.of(
                        "{} to {}", Quantity.station(place.from()), Quantity.station(place.to()));
    }

    private static String side(WetPlace place) {
        Side side = place.side();
        return side != null
                ? side.word()
                : place.kind() == WetPlace.Kind.ROAD_DITCH ? "across" : "both";
    }

    /** An area of land that drains somewhere, small ones as plain areas. */
    static Saying land(double area, boolean isLeast) {
        return Saying.of(
                isLeast ? "{} or more" : "{}",
                area < SMALL_LAND ? Quantity.area(area) : Quantity.land(area));
    }

    /** What to do at a wet place, as a line of the order of work. */
    public static Saying work(WetPlace place) {
        List<Quantity> quantities = new ArrayList<>();
        boolean ends = Double.isNaN(place.station());
        if (!ends) {
            quantities.add(Quantity.station(place.station()));
        }
        quantities.addAll(place.brief().quantities());
        return new Saying(
                place.name() + (ends ? ", past an end: " : ", {}: ") + place.brief().pattern(),
                quantities);
    }

    /**
     * What each pipe is that the plan says is to be laid, as lines of the order of work; one that
     * does not fit is not to be bought.
     *
     * @param jobs the pipes as they are bought
     */
    public static List<Saying> toLay(WaterReport water, List<PipeJob> jobs) {
        List<Saying> lines = new ArrayList<>();
        for (PipeCourse course : water.pipes()) {
            CulvertLine under = course.under();
            if (course.isToLay() && under != null && !course.isFit()) {
                lines.add(
                        Saying.of(
                                "Do not buy the "
                                        + course.pipe().called()
                                        + " yet: at {} it does not fit under the lane as drawn, see"
                                        + " the findings",
                                Quantity.station(under.crossing())));
            } else if (course.isToLay() && under != null) {
                lines.add(
                        Saying.of(
                                "Buy and lay the "
                                        + course.pipe().called()
                                        + ": {} long, {} wide, at {}",
                                Quantity.length(
                                        jobs.stream()
                                                .filter(job -> job.planned())
                                                .filter(job -> job.line().equals(under))
                                                .findFirst()
                                                .map(job -> job.length().ordered())
                                                .orElse(under.length())),
                                Quantity.depth(course.pipe().diameter()),
                                Quantity.station(under.crossing())));
            }
        }
        return lines;
    }

    /**
     * Pipes of the plan that are to be laid, then those at the wet places: as they would lie under
     * the lane as drawn, with whether they fit, and where one does not, the one that fits once all
     * is done that the place asks for.
     */
    public static Listing pipes(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (PipeCourse course : water.pipes()) {
            CulvertLine under = course.under();
            if (course.isToLay() && under != null) {
                rows.add(row(Listing.cell(course.pipe().name()), under, toLay(course)));
            }
        }
        for (WetPlace place : water.places()) {
            CulvertLine pipe = place.pipe();
            CulvertLine cured = place.cure().pipe();
            if (pipe != null) {
                rows.add(row(Listing.cell(place.name()), pipe, place.fit()));
            }
            if (cured != null && !cured.equals(pipe)) {
                rows.add(row(Listing.cell(place.name()), cured, then(place.cure())));
            }
        }
        return new Listing(
                "pipes",
                "Pipes under the lane",
                List.of(
                        Column.words("For"),
                        Column.of("Station", Kind.STATION),
                        Column.words("Water from"),
                        Column.of("Inlet", Kind.HEIGHT),
                        Column.of("Outlet", Kind.HEIGHT),
                        Column.of("Fall", Kind.DEPTH),
                        Column.of("Fall", Kind.GRADE),
                        Column.of("Foot to foot", Kind.LENGTH),
                        Column.of("Room, bottom to lane edge", Kind.LENGTH),
                        Column.words("Does it fit?")),
                rows,
                0);
    }

    /** Whether a pipe of the plan fits, and how wide the plan has it. */
    private static Saying toLay(PipeCourse course) {
        List<Quantity> quantities = new ArrayList<>(course.fit().quantities());
        quantities.add(Quantity.depth(course.pipe().diameter()));
        return new Saying(
                course.fit().pattern() + "; to lay, {} wide as your plan has it", quantities);
    }

    private static List<Saying> row(Saying name, CulvertLine pipe, Saying fit) {
        return List.of(
                name,
                Listing.cell(Quantity.station(pipe.station())),
                Listing.cell(pipe.from().word()),
                Listing.cell(Quantity.height(pipe.inlet().height())),
                Listing.cell(Quantity.height(pipe.outlet().height())),
                Listing.cell(Quantity.depth(pipe.fall())),
                Listing.cell(Quantity.grade(pipe.grade())),
                Listing.cell(Quantity.length(pipe.length())),
                Listing.cell(Quantity.length(pipe.room())),
                fit);
    }

    /** When the pipe of a cure fits. */
    private static Saying then(Cure cure) {
        CulvertLine pipe = cure.pipe();
        if (cure.hasPipeNow()) {
            return pipe != null && pipe.isSlanted()
                    ? Saying.of("fits, slanted to {}", Quantity.station(pipe.outletStation()))
                    : Saying.plain("fits");
        }
        return cure.raise() > 0
                ? Saying.of("fits once the lane is {} higher", Quantity.depth(cure.raise()))
                : Saying.of("fits once the ground is dug {} lower", Quantity.depth(cure.dig()));
    }

    /** Low spots of the land that the work does not reach, as they will be. */
    public static Listing pools(WaterReport water) {
        return pools(
                "low-spots",
                "Hollows of the land that the work does not reach",
                water.after().stream().filter(pool -> !isPlace(pool, water)).toList());
    }

    private static boolean isPlace(Pool pool, WaterReport water) {
        return water.places().stream().anyMatch(place -> pool.equals(place.pool()));
    }

    /** Low spots that were there and are drained or filled by the lane. */
    public static Listing gone(WaterReport water) {
        return pools("low-spots-gone", "Hollows that the lane drains or fills", water.gone());
    }

    private static Listing pools(String name, String title, List<Pool> pools) {
        var rows = new ArrayList<List<Saying>>();
        for (Pool pool : pools) {
            rows.add(
                    List.of(
                            place(pool),
                            Listing.cell(pool.fate().words()),
                            Saying.of("{}", Quantity.depth(pool.spot().depth())),
                            Listing.cell(Quantity.area(pool.spot().area())),
                            Listing.cell(Quantity.volume(pool.spot().volume())),
                            Saying.of(
                                    pool.spot().atRim() ? "{} at the survey's edge, open" : "{}",
                                    Quantity.height(pool.spot().level())),
                            land(pool.drained(), pool.isLeast())));
        }
        return new Listing(
                name,
                title,
                List.of(
                        Column.words("Where"),
                        Column.words("What becomes of it"),
                        Column.words("Depth"),
                        Column.of("Area", Kind.AREA),
                        Column.of("Water", Kind.VOLUME),
                        Column.words("Runs over at height"),
                        Column.words("Drains")),
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

    /** Where watercourses reach the lane. */
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
                                            ? "or more: the survey ends before the top of that land"
                                            : "")));
        }
        return new Listing(
                "inflows",
                "Where watercourses reach the lane",
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
                            outlets(ditch, water)));
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

    private static Saying outlets(DitchReach ditch, WaterReport water) {
        var pattern = new StringBuilder();
        var stations = new ArrayList<Quantity>();
        for (DitchReach.Outlet outlet : ditch.outlets()) {
            pattern.append(stations.isEmpty() ? "" : "; ").append("at {} it ");
            WetPlace stands = standing(ditch, outlet, water);
            pattern.append(
                    stands == null
                            ? outlet.kind().words()
                            : "stands, with no outlet: " + stands.name());
            stations.add(Quantity.station(outlet.station()));
        }
        return new Saying(pattern.toString(), stations);
    }

    /** The wet place that a ditch ends in, or null. */
    private static @Nullable WetPlace standing(
            DitchReach ditch, DitchReach.Outlet outlet, WaterReport water) {
        for (WetPlace place : water.places()) {
            Pool pool = place.pool();
            if (pool != null && ditch.standsIn(outlet, (x, y) -> pool.spot().covers(x, y))) {
                return place;
            }
        }
        return null;
    }

    private static Saying wayOut(Sags.Sag sag, Side side, WaterReport water) {
        Sags.WayOut way = side == Side.LEFT ? sag.left() : sag.right();
        for (WetPlace place : water.places()) {
            if (way != Sags.WayOut.SLOPE
                    && way != Sags.WayOut.DITCH
                    && place.stands(sag.station(), side)) {
                return Saying.plain(
                        (way == Sags.WayOut.NOT_NEEDED
                                        ? "none comes off the lane; the land's water stands here: "
                                        : "into the water of ")
                                + place.name()
                                + (place.runsOverLane()
                                        ? ", which runs over the lane when full"
                                        : ""));
            }
        }
        return Listing.cell(way.words());
    }

    /** Low points of the profile and how water leaves them. */
    public static Listing sags(WaterReport water) {
        var rows = new ArrayList<List<Saying>>();
        for (Sags.Sag sag : water.sags()) {
            rows.add(
                    List.of(
                            Listing.cell(Quantity.station(sag.station())),
                            wayOut(sag, Side.LEFT, water),
                            wayOut(sag, Side.RIGHT, water)));
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
                            turnOuts(descent)));
        }
        return new Listing(
                "ways-down",
                "How far water runs down the lane and its ditches",
                List.of(
                        Column.words("Where"),
                        Column.of("From", Kind.STATION),
                        Column.of("Down to", Kind.STATION),
                        Column.of("Length", Kind.LENGTH),
                        Column.of("Grade", Kind.GRADE),
                        Column.of("Lead it off every", Kind.LENGTH),
                        Column.words("Where it is led off")),
                rows,
                0);
    }

    private static Saying turnOuts(Descents.Descent descent) {
        var quantities = new ArrayList<Quantity>();
        descent.turnOuts().forEach(at -> quantities.add(Quantity.station(at)));
        return new Saying(
                String.join(", ", Collections.nCopies(quantities.size(), "{}")), quantities);
    }
}
