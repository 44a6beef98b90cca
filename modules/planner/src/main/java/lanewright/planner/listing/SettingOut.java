package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Sags;
import lanewright.ground.Ground;
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
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeStake;
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
     * corners in which its straight parts would meet, and low points of the grade.
     *
     * @param line the lane's line, local metres
     * @param survey whose coordinates the points get
     * @param units of the plan
     * @param stakes which know the benchmark, if there is one
     * @param water which knows low points
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
     * @param water which knows low points
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
        return listing("setting-out", "Set these points first");
    }

    /**
     * The ends of every pipe that is to be laid or offered, and, without a place, those pipes that
     * have none yet.
     *
     * @param line the lane's line, local metres
     * @param survey whose coordinates the points get
     * @param units of the plan
     * @param stakes which know the benchmark, if there is one
     * @param water which knows where pipes are wanted
     * @param ground as it is
     * @param jobs the pipes
     */
    public static Listing pipes(
            Alignment line,
            Survey survey,
            UnitSystem units,
            Stakes stakes,
            WaterReport water,
            Ground ground,
            List<PipeJob> jobs) {
        return new SettingOut(line, survey, units, stakes, water).pipes(ground, jobs);
    }

    private Listing pipes(Ground ground, List<PipeJob> jobs) {
        double sight = sight();
        for (PipeStake stake : PipeStake.of(line, ground, jobs)) {
            Saying[] reached = reached(stake.x(), stake.y());
            rows.add(
                    List.of(
                            Listing.cell(
                                    plain(stake.job().name())
                                            + (stake.inlet() ? ", inlet" : ", outlet")),
                            when(stake.job()),
                            Listing.cell(Quantity.station(stake.station())),
                            Listing.cell(stake.offset() < 0 ? "left" : "right"),
                            Listing.cell(Quantity.offset(Math.abs(stake.offset()))),
                            Listing.cell(Quantity.height(stake.invert())),
                            height(stake.up()),
                            height(Stakes.rod(sight, stake.invert())),
                            coordinate(stake.x() + survey.originX()),
                            coordinate(stake.y() + survey.originY()),
                            reached[0],
                            reached[1]));
        }
        for (PipeJob job : jobs) {
            if (!job.fits()) {
                unplaced(job.name(), job.line(), "no stakes: it does not fit as drawn");
            }
        }
        for (WetPlace place : water.places()) {
            CulvertLine pipe = place.cure().pipe();
            if (pipe != null && jobs.stream().noneMatch(job -> job.name().equals(place.name()))) {
                unplaced(
                        place.name(),
                        pipe,
                        "no stakes: no pipe that is sold has room and carries the storm");
            }
        }
        for (Relief relief : water.drainage().reliefs()) {
            CulvertLine pipe = relief.pipe();
            if (pipe != null && jobs.stream().noneMatch(job -> job.name().equals(relief.name()))) {
                unplaced(
                        relief.name(),
                        pipe,
                        relief.fits()
                                ? "no stakes: no pipe that is sold carries the storm there"
                                : "no stakes: it has too little fall or room as drawn");
            }
        }
        String unit = unit().symbol();
        return new Listing(
                "pipe-stakes",
                "The ends of pipes",
                List.of(
                        Column.words("End"),
                        Column.words("When"),
                        Column.of("Station", Kind.STATION),
                        Column.words("Side"),
                        Column.of("From line", Kind.OFFSET),
                        Column.of("Invert", Kind.HEIGHT),
                        Column.of("Invert above ground", Kind.HEIGHT),
                        Column.of("Rod at invert", Kind.HEIGHT),
                        Column.words("East, " + unit),
                        Column.words("North, " + unit),
                        Column.of("From the benchmark", Kind.LENGTH),
                        Column.words("That way, from north")),
                rows,
                0);
    }

    private void unplaced(String name, CulvertLine pipe, String why) {
        List<Saying> row =
                new ArrayList<>(
                        List.of(
                                Listing.cell(plain(name)),
                                Listing.cell(why),
                                Listing.cell(Quantity.station(pipe.crossing()))));
        while (row.size() < 12) {
            row.add(Listing.BLANK);
        }
        rows.add(List.copyOf(row));
    }

    private static Saying when(PipeJob job) {
        Saying first = job.first().words();
        String offered = job.planned() ? "in the plan" : "offered";
        return job.first().isNothing()
                ? Listing.cell(offered)
                : new Saying(offered + ", once " + first.pattern(), first.quantities());
    }

    private static String plain(String name) {
        return name.replace("{", "(").replace("}", ")");
    }

    private static Saying height(double metres) {
        return Double.isNaN(metres) ? Listing.BLANK : Listing.cell(Quantity.height(metres));
    }

    /** Height of the instrument's line of sight, m, which the rods on the lane tell; or NaN. */
    private double sight() {
        return stakes.marks().stream()
                .mapToDouble(mark -> mark.rod() + mark.finished())
                .filter(height -> !Double.isNaN(height))
                .findFirst()
                .orElse(Double.NaN);
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
        Saying[] reached = reached(x, y);
        rows.add(
                List.of(
                        station == null ? Listing.BLANK : Listing.cell(station),
                        Listing.cell(name),
                        coordinate(x + survey.originX()),
                        coordinate(y + survey.originY()),
                        Double.isNaN(onward) ? Listing.BLANK : angle(onward),
                        reached[0],
                        reached[1]));
    }

    /** How far it is from the benchmark and which way, blank without one. */
    private Saying[] reached(double x, double y) {
        if (stakes.benchmark() == null) {
            return new Saying[] {Listing.BLANK, Listing.BLANK};
        }
        double dx = x - stakes.benchmarkX();
        double dy = y - stakes.benchmarkY();
        double turn = StrictMath.atan2(dx, dy);
        return new Saying[] {
            Listing.cell(Quantity.length(Math.hypot(dx, dy))),
            angle(turn < 0 ? turn + 2 * Math.PI : turn)
        };
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
