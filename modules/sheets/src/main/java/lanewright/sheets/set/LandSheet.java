package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.Trace;
import lanewright.ground.Contour;
import lanewright.ground.Contours;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.work.HeapPlace;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;
import lanewright.sheets.figure.LandDrawing;
import lanewright.sheets.figure.MapScale;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.sheets.page.Type;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import lanewright.survey.Survey;

/** The land from above, with everything that the lane does to it. */
final class LandSheet {

    private static final double FOOT = 0.3048;

    /** Land shown beyond the limits of work, m: enough to see where water comes from. */
    private static final double AROUND = 12;

    /** More shots than this would hide the map. */
    private static final int MOST_SHOTS = 4000;

    /** Contours closer than this on paper run together, so their interval is widened, pt. */
    private static final double CONTOURS_APART = 7;

    /**
     * Something from the plan that is put on the map: a wire, a well, a benchmark.
     *
     * @param role how it is drawn
     * @param words what stands beside it
     * @param x local eastings, m
     * @param y local northings, m
     * @param closed whether it is an outline
     */
    @SuppressWarnings("ArrayRecordComponent") // kept as given
    record Thing(Role role, String words, double[] x, double[] y, boolean closed) {}

    private final Survey survey;
    private final Ground ground;
    private final Beside beside;
    private final WaterReport water;
    private final UnitSystem units;
    private final Land land = new Land();
    private double contourStep;

    private LandSheet(
            Survey survey, Ground ground, Beside beside, WaterReport water, UnitSystem units) {
        this.survey = survey;
        this.ground = ground;
        this.beside = beside;
        this.water = water;
        this.units = units;
    }

    /** The sheet. */
    static Sheet of(
            Survey survey,
            Ground ground,
            Beside beside,
            WaterReport water,
            List<HeapPlace> heaps,
            List<Thing> things,
            UnitSystem units,
            String answer) {
        return new LandSheet(survey, ground, beside, water, units).sheet(heaps, things, answer);
    }

    private Sheet sheet(List<HeapPlace> heaps, List<Thing> things, String answer) {
        lane();
        heaps.forEach(this::heap);
        Paper paper = Paper.of(units);
        Flow flow =
                new Flow(
                        land.isWide() ? paper.lying() : paper,
                        units,
                        "Plan",
                        "Where does the lane run?",
                        answer);
        double legend = 52;
        double height = flow.left() - legend - 8;
        MapScale scale = LandDrawing.scale(land, units, flow.width(), height);
        measured(scale, LandDrawing.seen(land, scale, flow.width(), height));
        water();
        things.forEach(this::thing);
        flow.figure(
                height + legend,
                (pen, box) -> {
                    var map = new Box(box.x(), box.y(), box.width(), height);
                    LandDrawing.draw(land, ground::heightAt, scale, pen, map);
                    double used =
                            LandDrawing.legend(pen, box.x(), map.bottom() + 5, box.width(), SHOWN);
                    pen.gauge(
                            Gauge.of(Gauge.Use.CONTOUR_STEP, note(), contourStep * metre()),
                            box.x(),
                            map.bottom() + 5 + used + 9,
                            Type.NOTE,
                            false,
                            Anchor.START);
                });
        return flow.sheet();
    }

    private static final List<Role> SHOWN =
            List.of(
                    Role.CENTRE,
                    Role.LANE_EDGE,
                    Role.LIMIT,
                    Role.CATCH,
                    Role.CUT,
                    Role.FILL,
                    Role.HEAP,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.FLOW,
                    Role.PIPE,
                    Role.HAZARD,
                    Role.BOUNDARY,
                    Role.LOOK);

    private String note() {
        return "Contours every "
                + contourWords(contourStep)
                + (units == UnitSystem.US ? " ft" : " m")
                + ", every fifth one heavy with its height; the ground as it is.";
    }

    private void lane() {
        Beside.Path left = beside.all(section -> section.left().limit());
        Beside.Path right = beside.all(section -> section.right().limit());
        sides(Section::left);
        sides(Section::right);
        Beside.Path edgeLeft = beside.all(section -> section.left().edge().offset());
        Beside.Path edgeRight = beside.all(section -> section.right().edge().offset());
        Beside.Path surface = edgeLeft.ringWith(edgeRight);
        land.area(Role.LANE, surface.x(), surface.y());
        line(Role.LANE_EDGE, edgeLeft);
        line(Role.LANE_EDGE, edgeRight);
        line(Role.CATCH, beside.all(section -> caught(section.left())));
        line(Role.CATCH, beside.all(section -> caught(section.right())));
        Beside.Path limits = left.ringWith(right);
        land.ring(Role.LIMIT, limits.x(), limits.y());
        line(Role.CENTRE, beside.all(section -> 0));
        reach(limits.x(), limits.y(), AROUND);
        stations();
    }

    private void heap(HeapPlace heap) {
        double[][] outline = heap.outline();
        land.area(Role.HEAP, outline[0], outline[1]);
        land.ring(Role.HEAP, outline[0], outline[1]);
        land.label(
                "heap "
                        + heap.number()
                        + ": "
                        + Words.fine(Quantity.volume(heap.form().volume()), units),
                heap.x(),
                heap.y(),
                Role.TEXT,
                true,
                1);
        reach(outline[0], outline[1], 3);
    }

    private void reach(double[] x, double[] y, double around) {
        for (int i = 0; i < x.length; i++) {
            land.reach(
                    new double[] {x[i] - around, x[i] + around},
                    new double[] {y[i] - around, y[i] + around});
        }
    }

    private void line(Role role, Beside.Path path) {
        land.line(role, path.x(), path.y());
    }

    private static double caught(SideResult side) {
        return side.catchPoint() == null ? side.limit() : side.catchPoint().offset();
    }

    /** What each side is, from the stone out to where it meets the ground. */
    private void sides(Function<Section, SideResult> which) {
        List<Section> sections = beside.sections();
        int from = 0;
        for (int i = 1; i < sections.size(); i++) {
            boolean last = i == sections.size() - 1;
            if (last
                    || role(which.apply(sections.get(i)))
                            != role(which.apply(sections.get(from)))) {
                if (sections.get(i).station() > sections.get(from).station()) {
                    ToDoubleFunction<Section> inner = s -> which.apply(s).edge().offset();
                    Beside.Path ring =
                            beside.between(from, i, inner)
                                    .ringWith(beside.between(from, i, s -> caught(which.apply(s))));
                    land.area(role(which.apply(sections.get(from))), ring.x(), ring.y());
                }
                from = i;
            }
        }
    }

    private static Role role(SideResult side) {
        return side.kind() == SideResult.Kind.FILL ? Role.FILL : Role.CUT;
    }

    private void stations() {
        Alignment line = beside.alignment();
        double step = units == UnitSystem.US ? 100 * FOOT : 20;
        while (line.length() / step > 24) {
            step *= units == UnitSystem.US ? 5 : 2.5;
        }
        for (int k = 0; k * step <= line.length() + 1e-6; k++) {
            double at = Math.min(k * step, line.length());
            Section near = nearest(at);
            double half = Math.max(Math.abs(near.left().limit()), Math.abs(near.right().limit()));
            land.station(
                    line.x(at),
                    line.y(at),
                    StrictMath.atan2(line.directionY(at), line.directionX(at)),
                    half,
                    at,
                    Words.fine(Quantity.station(at), units));
        }
    }

    private Section nearest(double station) {
        Section best = beside.sections().get(0);
        for (Section section : beside.sections()) {
            if (Math.abs(section.station() - station) < Math.abs(best.station() - station)) {
                best = section;
            }
        }
        return best;
    }

    /** Contours, shots and boundary within what is seen. */
    private void measured(MapScale scale, double[] seen) {
        Boundary boundary = survey.boundary();
        if (boundary != null) {
            ring(boundary.outer());
            boundary.holes().forEach(this::ring);
        }
        contourStep = contourStep(scale, seen);
        double metre = metre();
        for (Contour contour : Contours.of(ground, contourStep * metre, Progress.NONE)) {
            int n = contour.size();
            double[] x = new double[contour.isClosed() ? n + 1 : n];
            double[] y = new double[x.length];
            boolean inside = false;
            for (int i = 0; i < x.length; i++) {
                x[i] = contour.x(i % n);
                y[i] = contour.y(i % n);
                inside |= x[i] >= seen[0] && x[i] <= seen[2] && y[i] >= seen[1] && y[i] <= seen[3];
            }
            if (inside && n > 1) {
                long level = Math.round(contour.height() / metre / contourStep);
                land.contour(
                        x,
                        y,
                        level % 5 == 0,
                        contour.height(),
                        contourWords(contour.height() / metre));
            }
        }
        shots(seen);
    }

    private void ring(Ring ring) {
        double[] x = new double[ring.size()];
        double[] y = new double[ring.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = ring.x(i);
            y[i] = ring.y(i);
        }
        land.ring(Role.BOUNDARY, x, y);
    }

    private void shots(double[] seen) {
        var places = new ArrayList<double[]>();
        for (int i = 0; i < survey.size() && places.size() <= MOST_SHOTS; i++) {
            double x = survey.x(i);
            double y = survey.y(i);
            if (x > seen[0] && x < seen[2] && y > seen[1] && y < seen[3]) {
                places.add(new double[] {x, y});
            }
        }
        if (places.size() <= MOST_SHOTS) {
            places.forEach(at -> land.shot(at[0], at[1]));
        }
    }

    /** Metres in one of the units in which contours are counted. */
    private double metre() {
        return units == UnitSystem.US ? FOOT : 1;
    }

    /** In shown units: 0.5, 1, 2, 5 or 10 times ten, wide enough apart on the steepest land. */
    private double contourStep(MapScale scale, double[] seen) {
        double steepest = steepness(seen);
        double metre = metre();
        for (double step : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100}) {
            if (units == UnitSystem.US && step < 1) {
                continue;
            }
            if (step * metre / steepest * scale.points() >= CONTOURS_APART) {
                return step;
            }
        }
        return 200;
    }

    /** Mean slope of what is seen, rise over run. */
    private double steepness(double[] seen) {
        int n = 24;
        double sum = 0;
        int count = 0;
        double dx = (seen[2] - seen[0]) / n;
        double dy = (seen[3] - seen[1]) / n;
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double x = seen[0] + i * dx;
                double y = seen[1] + k * dy;
                double here = ground.heightAt(x, y);
                double east = ground.heightAt(x + dx, y);
                double north = ground.heightAt(x, y + dy);
                if (Double.isFinite(here + east + north)) {
                    sum += Math.hypot((east - here) / dx, (north - here) / dy);
                    count++;
                }
            }
        }
        return Math.max(0.005, count == 0 ? 0.05 : sum / count);
    }

    private static String contourWords(double shown) {
        return Words.fixed(shown, Math.abs(shown - Math.rint(shown)) < 1e-6 ? 0 : 1);
    }

    private void water() {
        for (Pool pool : water.gone()) {
            outlines(Role.WATER_BEFORE, pool, false);
        }
        for (Pool pool : water.after()) {
            outlines(Role.WATER, pool, true);
            land.label(
                    Words.fine(Quantity.length(pool.spot().depth()), units) + " deep",
                    pool.spot().x(),
                    pool.spot().y(),
                    Role.WATER_TEXT,
                    true,
                    pool.isMade() ? 0 : 3);
            if (pool.isMade() && pool.beside() != null) {
                double x = beside.alignment().x(pool.beside().station());
                double y = beside.alignment().y(pool.beside().station());
                land.look(x, y);
            }
            CulvertLine culvert = pool.culvert();
            if (culvert != null) {
                culvert(culvert);
            }
        }
        for (FlowPath path : water.pathsAfter()) {
            land.line(Role.FLOW, x(path.line()), y(path.line()));
        }
        for (PlacedPipe placed : water.pipes()) {
            var pipe = placed.pipe();
            land.line(
                    Role.PIPE,
                    new double[] {pipe.inletX(), pipe.outletX()},
                    new double[] {pipe.inletY(), pipe.outletY()});
            land.label(
                    pipe.name(),
                    (pipe.inletX() + pipe.outletX()) / 2,
                    (pipe.inletY() + pipe.outletY()) / 2,
                    Role.TEXT,
                    false,
                    2);
        }
    }

    private void culvert(CulvertLine culvert) {
        Alignment line = beside.alignment();
        Place from = new Place(culvert.station(), culvert.inlet().offset());
        Place to = new Place(culvert.station(), culvert.outlet().offset());
        land.line(
                Role.PIPE,
                new double[] {line.x(from), line.x(to)},
                new double[] {line.y(from), line.y(to)});
        land.label(
                "pipe at " + Words.fine(Quantity.station(culvert.station()), units),
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

    private void thing(Thing thing) {
        if (thing.x().length > 1) {
            if (thing.closed()) {
                land.ring(thing.role(), thing.x(), thing.y());
            } else {
                land.line(thing.role(), thing.x(), thing.y());
            }
        } else {
            land.spot(thing.role(), thing.x()[0], thing.y()[0]);
        }
        int middle = thing.x().length / 2;
        land.label(thing.words(), thing.x()[middle], thing.y()[middle], Role.TEXT, false, 2);
    }
}
