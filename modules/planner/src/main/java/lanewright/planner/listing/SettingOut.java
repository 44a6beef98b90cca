package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Arc;
import lanewright.lane.line.IntersectionPoint;
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

    private final Alignment line;
    private final Survey survey;
    private final UnitSystem units;
    private final Stakes stakes;
    private final List<List<Saying>> rows = new ArrayList<>();

    private SettingOut(Alignment line, Survey survey, UnitSystem units, Stakes stakes) {
        this.line = line;
        this.survey = survey;
        this.units = units;
        this.stakes = stakes;
    }

    /**
     * Points of the line in station order, and after them the corners in which its straight parts
     * would meet.
     *
     * @param line the lane's line, local metres
     * @param survey whose coordinates the points get
     * @param units of the plan
     * @param stakes which know the benchmark, if there is one
     */
    public static Listing of(Alignment line, Survey survey, UnitSystem units, Stakes stakes) {
        return new SettingOut(line, survey, units, stakes).listing();
    }

    private Listing listing() {
        var named = new TreeMap<Double, String>();
        double every =
                units == UnitSystem.US ? EVERY_FEET * LengthUnit.FOOT.metres() : EVERY_METRES;
        for (int i = 1; i * every < line.length(); i++) {
            named.put(i * every, "line");
        }
        for (Arc arc : line.arcs()) {
            named.put(arc.from(), "bend begins");
            named.put(arc.to(), "bend ends");
        }
        named.put(0.0, "start, at the road");
        named.put(line.length(), "far end");
        named.forEach(
                (station, name) ->
                        row(
                                Quantity.station(station),
                                name,
                                line.x(station),
                                line.y(station),
                                line.azimuth(station)));
        List<IntersectionPoint> corners = line.points();
        for (int i = 1; i + 1 < corners.size(); i++) {
            row(null, "corner of a bend", corners.get(i).x(), corners.get(i).y(), Double.NaN);
        }
        String unit = unit().symbol();
        return new Listing(
                "setting-out",
                "Points of the lane's line",
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
