package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Sags;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Arc;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.measure.Kind;
import lanewright.measure.LengthUnit;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.work.Stakes;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/** Where the lane's line runs on the ground: its points by coordinates and from the benchmark. */
public final class SettingOut {

    /** Points of the line stand so far apart, ft or m. */
    private static final double EVERY_FEET = 50;

    private static final double EVERY_METRES = 20;

    /** A point so near to one with a name is not set besides it, m. */
    private static final double SAME = 0.3;

    private final Alignment line;
    private final Survey survey;
    private final UnitSystem units;
    private final Stakes stakes;
    private final WaterReport water;
    private final List<List<Saying>> rows = new ArrayList<>();

    private SettingOut(
            Alignment line, Survey survey, UnitSystem units, Stakes stakes, WaterReport water) {
        this.line = line;
        this.survey = survey;
        this.units = units;
        this.stakes = stakes;
        this.water = water;
    }

    /**
     * The few points from which all else follows: the ends of the lane, where it bends and the
     * corners in which its straight parts would meet, low points of the grade, and the ends of
     * pipes that fit under the lane as drawn.
     *
     * @param line the lane's line, local metres
     * @param survey whose coordinates the points get
     * @param units of the plan
     * @param stakes which know the benchmark, if there is one
     * @param water which knows low points and pipes
     */
    public static Listing first(
            Alignment line, Survey survey, UnitSystem units, Stakes stakes, WaterReport water) {
        return new SettingOut(line, survey, units, stakes, water).first();
    }

    /**
     * Points of the line between those, at equal distances.
     *
     * @param line the lane's line, local metres
     * @param survey whose coordinates the points get
     * @param units of the plan
     * @param stakes which know the benchmark, if there is one
     * @param water which knows low points and pipes
     */
    public static Listing between(
            Alignment line, Survey survey, UnitSystem units, Stakes stakes, WaterReport water) {
        return new SettingOut(line, survey, units, stakes, water).between();
    }

    private Listing first() {
        named().forEach(this::onTheLine);
        List<IntersectionPoint> corners = line.points();
        for (int i = 1; i + 1 < corners.size(); i++) {
            row(null, "corner of a bend", corners.get(i).x(), corners.get(i).y(), Double.NaN);
        }
        for (PipeCourse course : water.pipes()) {
            CulvertLine under = course.under();
            if (course.isToLay() && course.isFit() && under != null) {
                pipe(course.pipe().name(), under);
            }
        }
        for (WetPlace place : water.places()) {
            CulvertLine under = place.cure().pipe();
            if (under != null && place.cure().hasPipeNow()) {
                pipe("proposed pipe for " + place.name(), under);
            }
        }
        return listing("setting-out", "Set these points first");
    }

    private Listing between() {
        NavigableMap<Double, String> named = named();
        double every =
                units == UnitSystem.US ? EVERY_FEET * LengthUnit.FOOT.metres() : EVERY_METRES;
        for (int i = 1; i * every < line.length(); i++) {
            double station = i * every;
            if (named.subMap(station - SAME, true, station + SAME, true).isEmpty()) {
                onTheLine(station, "line");
            }
        }
        return listing("setting-out-between", "Points of the lane's line between them");
    }

    /** Points of the line that have a meaning of their own, by their stations. */
    private NavigableMap<Double, String> named() {
        var named = new TreeMap<Double, String>();
        for (Sags.Sag sag : water.sags()) {
            named.put(sag.station(), "low point of the grade");
        }
        for (Arc arc : line.arcs()) {
            named.put(arc.from(), "bend begins");
            named.put(arc.to(), "bend ends");
        }
        named.put(0.0, "start, at the road");
        named.put(line.length(), "far end");
        return named;
    }

    private void onTheLine(double station, String name) {
        row(
                Quantity.station(station),
                name,
                line.x(station),
                line.y(station),
                line.azimuth(station));
    }

    private void pipe(String name, CulvertLine under) {
        mouth(name + ", inlet", under.station(), under.inlet());
        mouth(name + ", outlet", under.outletStation(), under.outlet());
    }

    private void mouth(String name, double station, Corner corner) {
        var place = new Place(station, corner.offset());
        row(Quantity.station(station), name, line.x(place), line.y(place), Double.NaN);
    }

    private Listing listing(String name, String title) {
        String unit = unit().symbol();
        return new Listing(
                name,
                title,
                List.of(
                        Column.of("Station", Kind.STATION),
                        Column.words("Point"),
                        Column.words("East, " + unit),
                        Column.words("North, " + unit),
                        Column.words("Line goes on, from north"),
                        Column.of("From the benchmark", Kind.LENGTH),
                        Column.words("That way, from north")),
                rows,
                0);
    }

    private void row(@Nullable Quantity station, String name, double x, double y, double onward) {
        Saying away = Listing.BLANK;
        Saying way = Listing.BLANK;
        if (stakes.benchmark() != null) {
            double dx = x - stakes.benchmarkX();
            double dy = y - stakes.benchmarkY();
            away = Listing.cell(Quantity.length(Math.hypot(dx, dy)));
            double turn = StrictMath.atan2(dx, dy);
            way = angle(turn < 0 ? turn + 2 * Math.PI : turn);
        }
        rows.add(
                List.of(
                        station == null ? Listing.BLANK : Listing.cell(station),
                        Listing.cell(name),
                        coordinate(x + survey.originX()),
                        coordinate(y + survey.originY()),
                        Double.isNaN(onward) ? Listing.BLANK : angle(onward),
                        away,
                        way));
    }

    /** Coordinates stand in the survey's own unit, so that an instrument takes them as they are. */
    private LengthUnit unit() {
        return survey.frame().isLocal()
                ? units == UnitSystem.US ? LengthUnit.FOOT : LengthUnit.METRE
                : survey.frame().unit();
    }

    private Saying coordinate(double metres) {
        LengthUnit unit = unit();
        return Listing.cell(
                Words.ungrouped(metres / unit.metres(), unit == LengthUnit.METRE ? 3 : 2));
    }

    private static Saying angle(double radians) {
        return Listing.cell(Words.ungrouped(StrictMath.toDegrees(radians), 2) + "°");
    }
}
