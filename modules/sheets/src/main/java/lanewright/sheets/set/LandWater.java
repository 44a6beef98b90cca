package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.stream.Stream;
import lanewright.drainage.Cure;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Relief;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;
import lanewright.sheets.figure.Legend;
import lanewright.sheets.figure.WaterSigns;

/** Standing water, ways of water and pipes, as they lie on the map. */
final class LandWater {

    /** Ways of water are smoothed over this many cells of the grid they were found on. */
    private static final double SMOOTHED = 3;

    /** At least so many signs with their words go beside each other into a legend. */
    private static final double SIGNS_IN_A_ROW = 3;

    private final Land land;
    private final Alignment line;
    private final WaterReport water;
    private final UnitSystem units;

    LandWater(Land land, Alignment line, WaterReport water, UnitSystem units) {
        this.land = land;
        this.line = line;
        this.water = water;
        this.units = units;
    }

    /** Room that a legend needs for the signs of water led off and let out, pt. */
    static double room(WaterReport water) {
        long kinds =
                Stream.concat(
                                water.drainage().reliefs().stream()
                                        .map(Relief::device)
                                        .filter(device -> device != Relief.Device.NONE)
                                        .map(WaterSigns::role),
                                water.drainage().ends().stream().map(WaterSigns::role))
                        .distinct()
                        .count();
        return Math.ceil(kinds / SIGNS_IN_A_ROW) * Legend.ROW;
    }

    /** What was before the lane and what will be, on one map. */
    void draw() {
        for (Pool pool : water.gone()) {
            outlines(Role.WATER_BEFORE, pool, false);
        }
        built();
    }

    /** Water on the land as it is, and where it goes out. */
    void before() {
        asItIs();
        waysOut();
    }

    /** Water on the land as it is. */
    void asItIs() {
        for (Pool pool : water.before()) {
            pool(pool, "");
        }
        water.pathsBefore().forEach(path -> flow(path.line()));
        water.pipes().stream().filter(course -> !course.pipe().toLay()).forEach(this::pipe);
    }

    /** Water on the land with the lane built, and where it goes out. */
    void after() {
        built();
        waysOut();
    }

    private void built() {
        for (Pool pool : water.after()) {
            WetPlace place = water.placeOf(pool);
            pool(pool, place == null ? "" : place.name() + ": ");
        }
        for (WetPlace place : water.places()) {
            CulvertLine culvert = place.cure().pipe();
            if (culvert != null) {
                culvert(culvert, place.cure());
            }
            if (place.pool() == null) {
                land.label(
                        place.name() + ": " + place.kind().words(),
                        place.x(),
                        place.y(),
                        Role.WATER_TEXT,
                        true,
                        0);
            }
        }
        water.drainage().reliefs().forEach(this::relief);
        water.drainage().ends().forEach(this::end);
        water.pathsAfter().forEach(path -> flow(path.line()));
        water.pipes().forEach(this::pipe);
    }

    /** Names of the largest ways out over the border. */
    private void waysOut() {
        for (lanewright.drainage.LandWater.WayOut way : water.land().waysOut()) {
            land.label(way.name(), way.x(), way.y(), Role.WATER_TEXT, true, 1);
        }
    }

    private void pool(Pool pool, String name) {
        outlines(Role.WATER, pool, true);
        land.label(
                name + "water " + Words.of(Quantity.depth(pool.spot().depth()), units) + " deep",
                pool.spot().x(),
                pool.spot().y(),
                Role.WATER_TEXT,
                true,
                pool.isMade() ? 0 : 3);
    }

    private void pipe(PipeCourse course) {
        var pipe = course.pipe();
        land.line(
                Role.PIPE,
                new double[] {pipe.inletX(), pipe.outletX()},
                new double[] {pipe.inletY(), pipe.outletY()});
        land.label(
                pipe.name() + (pipe.toLay() ? ", to lay" : ""),
                (pipe.inletX() + pipe.outletX()) / 2,
                (pipe.inletY() + pipe.outletY()) / 2,
                Role.TEXT,
                false,
                2);
    }

    /** A proposal to lead water off: a line across the lane, or out of the ditch. */
    private void relief(Relief relief) {
        if (relief.device() == Relief.Device.NONE) {
            return;
        }
        Place a = WaterSigns.from(relief);
        Place b = WaterSigns.to(relief);
        land.line(
                WaterSigns.role(relief.device()),
                new double[] {line.x(a), line.x(b)},
                new double[] {line.y(a), line.y(b)});
        land.label(
                relief.sign() + " " + Words.fine(Quantity.station(relief.station()), units),
                line.x(b),
                line.y(b),
                Role.WATER_TEXT,
                false,
                2);
    }

    /** Where a ditch lets its water out, with the name that its owner gave the place. */
    private void end(DitchEnd end) {
        DitchReach.Outlet outlet = end.outlet();
        NamedOutlet named = end.named();
        land.spot(WaterSigns.role(end), outlet.x(), outlet.y());
        if (named != null) {
            land.label(named.name(), outlet.x(), outlet.y(), Role.WATER_TEXT, false, 3);
        }
    }

    /**
     * A way of water without the stairs of the grid that it was found on: a running mean along it,
     * taken twice, that keeps both ends.
     */
    private void flow(Trace line) {
        if (line.size() < 2) {
            return;
        }
        double step = Math.max(0.1, water.cell() / 2);
        double[][] even = even(line, step);
        int reach = (int) Math.round(SMOOTHED * water.cell() / step);
        double[] x = mean(mean(even[0], reach), reach);
        double[] y = mean(mean(even[1], reach), reach);
        land.line(Role.FLOW, x, y);
    }

    /** The same line with points at equal distances along it. */
    private static double[][] even(Trace line, double step) {
        var x = new ArrayList<Double>();
        var y = new ArrayList<Double>();
        x.add(line.x(0));
        y.add(line.y(0));
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            int pieces = (int) Math.max(1, Math.round(Math.hypot(dx, dy) / step));
            for (int k = 1; k <= pieces; k++) {
                x.add(line.x(i - 1) + dx * k / pieces);
                y.add(line.y(i - 1) + dy * k / pieces);
            }
        }
        return new double[][] {LandGround.flat(x), LandGround.flat(y)};
    }

    private static double[] mean(double[] values, int reach) {
        double[] mean = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int around = Math.min(reach, Math.min(i, values.length - 1 - i));
            double sum = 0;
            for (int k = i - around; k <= i + around; k++) {
                sum += values[k];
            }
            mean[i] = sum / (2 * around + 1);
        }
        return mean;
    }

    private void culvert(CulvertLine culvert, Cure cure) {
        Place from = new Place(culvert.station(), culvert.inlet().offset());
        Place to = new Place(culvert.outletStation(), culvert.outlet().offset());
        land.line(
                Role.PIPE,
                new double[] {line.x(from), line.x(to)},
                new double[] {line.y(from), line.y(to)});
        land.label(
                "proposed pipe at "
                        + Words.fine(Quantity.station(culvert.station()), units)
                        + (cure.raise() > 0
                                ? ", lane raised first"
                                : cure.dig() > 0 ? ", dug deeper first" : ""),
                line.x(to),
                line.y(to),
                Role.TEXT,
                true,
                1);
    }

    private void outlines(Role role, Pool pool, boolean filled) {
        for (Trace ring : pool.spot().outline()) {
            if (filled) {
                land.area(role, x(ring), y(ring));
            }
            land.ring(role, x(ring), y(ring));
        }
    }

    private static double[] x(Trace trace) {
        double[] x = new double[trace.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = trace.x(i);
        }
        return x;
    }

    private static double[] y(Trace trace) {
        double[] y = new double[trace.size()];
        for (int i = 0; i < y.length; i++) {
            y[i] = trace.y(i);
        }
        return y;
    }
}
