package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lanewright.drainage.Pool;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
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
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.measure.Words;
import lanewright.planner.listing.SectionListings;
import lanewright.planner.work.HeapPlace;
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
import lanewright.survey.Probe;
import lanewright.survey.Ring;
import lanewright.survey.Survey;

/** The land from above, with everything that the lane does to it. */
final class LandSheet {

    private static final double FOOT = 0.3048;

    /** Land shown beyond the limits of work, m: enough to see where water comes from. */
    private static final double AROUND = 12;

    /** How far beyond an end of the lane its name stands, m. */
    private static final double BEYOND = 1.5;

    /** Ways of water are smoothed over this many cells of the grid they were found on. */
    private static final double SMOOTHED = 3;

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
            List<Finding> findings,
            UnitSystem units,
            String answer) {
        return new LandSheet(survey, ground, beside, water, units)
                .sheet(heaps, things, findings, answer);
    }

    private Sheet sheet(
            List<HeapPlace> heaps, List<Thing> things, List<Finding> findings, String answer) {
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
        double legend = 66;
        double height = flow.left() - legend - 8;
        MapScale scale = LandDrawing.scale(land, units, flow.width(), height);
        double[] seen = LandDrawing.seen(land, scale, flow.width(), height);
        measured(scale, seen);
        water();
        things.forEach(thing -> thing(thing, seen));
        warnings(findings);
        flow.figure(
                height + legend,
                (pen, box) -> {
                    var map = new Box(box.x(), box.y(), box.width(), height);
                    Set<Role> drawn = LandDrawing.draw(land, ground::heightAt, scale, pen, map);
                    List<Role> shown = SHOWN.stream().filter(drawn::contains).toList();
                    double top = map.bottom() + 5;
                    top += LandDrawing.legend(pen, box.x(), top, box.width(), shown) + 9;
                    pen.paragraph(
                            Gauge.of(Gauge.Use.CONTOUR_STEP, note(), contourStep * metre()),
                            Type.lines(note(), Type.NOTE, false, box.width()),
                            box.x(),
                            top,
                            Type.NOTE);
                });
        return flow.sheet();
    }

    private static final List<Role> SHOWN =
            List.of(
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.CUT,
                    Role.FILL,
                    Role.CATCH,
                    Role.LIMIT,
                    Role.HEAP,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.FLOW,
                    Role.PIPE,
                    Role.WIRE,
                    Role.BURIED,
                    Role.HAZARD,
                    Role.PROBE,
                    Role.BOUNDARY,
                    Role.LOOK);

    private String note() {
        return "Left and right are as you walk in from the road; a station is how far you have"
                + " walked. The scale holds when printed at full size on "
                + (units == UnitSystem.US ? "letter paper" : "A4")
                + ". Small dots are the points that were measured. Contours every "
                + contourWords(contourStep)
                + (units == UnitSystem.US ? " ft" : " m")
                + ", every fifth one heavy with its height, of the ground as it is.";
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
        bed();
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

    /** Whether the bed of the lane is dug or built up, as its line goes. */
    private void bed() {
        List<Section> sections = beside.sections();
        int from = 0;
        for (int i = 1; i < sections.size(); i++) {
            Role role = bed(sections.get(from));
            if (i == sections.size() - 1 || bed(sections.get(i)) != role) {
                if (role != Role.LANE && sections.get(i).station() > sections.get(from).station()) {
                    Beside.Path ring =
                            beside.between(from, i, s -> s.left().edge().offset())
                                    .ringWith(
                                            beside.between(
                                                    from, i, s -> s.right().edge().offset()));
                    land.area(role, ring.x(), ring.y());
                }
                from = i;
            }
        }
    }

    private static Role bed(Section section) {
        double dig = SectionListings.digAtLine(section);
        if (Double.isNaN(dig)) {
            return Role.LANE;
        }
        return dig >= 0 ? Role.CUT : Role.FILL;
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
            if (at == 0 || line.length() - at > step / 3) {
                station(at);
            }
        }
        station(line.length());
        end("road", 0, -1);
        end("far end", line.length(), 1);
    }

    private void station(double at) {
        Alignment line = beside.alignment();
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

    /** Names an end of the lane, a little way beyond it. */
    private void end(String words, double at, double ahead) {
        Alignment line = beside.alignment();
        land.label(
                words,
                line.x(at) + ahead * BEYOND * line.directionX(at),
                line.y(at) + ahead * BEYOND * line.directionY(at),
                Role.TEXT,
                true,
                0);
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
        } else {
            rim();
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

    /** Where the measured ground ends: every side of a triangle that has no neighbour. */
    private void rim() {
        var next = new TreeMap<Integer, Integer>();
        for (int t = 0; t < ground.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                if (ground.neighbour(t, k) < 0) {
                    next.put(ground.corner(t, (k + 1) % 3), ground.corner(t, (k + 2) % 3));
                }
            }
        }
        while (!next.isEmpty()) {
            int start = next.firstKey();
            var x = new ArrayList<Double>();
            var y = new ArrayList<Double>();
            Integer at = start;
            while (at != null) {
                x.add(ground.x(at));
                y.add(ground.y(at));
                at = next.remove(at);
            }
            land.line(Role.BOUNDARY, flat(x), flat(y));
        }
    }

    private static double[] flat(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
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
        for (Probe probe : survey.probes()) {
            land.spot(Role.PROBE, probe.x(), probe.y());
            land.label(probe.name(), probe.x(), probe.y(), Role.NOTE, false, 3);
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
            WetPlace place = water.placeOf(pool);
            land.label(
                    (place == null ? "" : place.name() + ": ")
                            + "water "
                            + Words.of(Quantity.depth(pool.spot().depth()), units)
                            + " deep",
                    pool.spot().x(),
                    pool.spot().y(),
                    Role.WATER_TEXT,
                    true,
                    pool.isMade() ? 0 : 3);
        }
        for (WetPlace place : water.places()) {
            CulvertLine culvert = place.pipe();
            if (culvert != null) {
                culvert(culvert);
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
        for (FlowPath path : water.pathsAfter()) {
            flow(path.line());
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
        return new double[][] {flat(x), flat(y)};
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

    /** A numbered triangle at every place that must be settled or looked at. */
    private void warnings(List<Finding> findings) {
        Alignment line = beside.alignment();
        List<Finding> numbered = FindingsSheet.numbered(findings);
        for (int i = 0; i < numbered.size(); i++) {
            Where where = numbered.get(i).where();
            String number = Words.fixed(i + 1, 0);
            Double x = where.x();
            Double y = where.y();
            Double from = where.from();
            Double to = where.to();
            if (x != null && y != null) {
                land.look(x, y, number);
            } else if (from != null && to != null) {
                double station = Math.max(0, Math.min(line.length(), (from + to) / 2));
                Double offset = where.offset();
                var place = new Place(station, offset == null ? 0 : offset);
                land.look(line.x(place), line.y(place), number);
            }
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

    private void thing(Thing thing, double[] seen) {
        int n = thing.x().length;
        if (n > 1) {
            if (thing.closed()) {
                land.area(thing.role(), thing.x(), thing.y());
                land.ring(thing.role(), thing.x(), thing.y());
            } else {
                land.line(thing.role(), thing.x(), thing.y());
            }
        } else {
            land.spot(thing.role(), thing.x()[0], thing.y()[0]);
        }
        for (int i = 0; i < n; i++) {
            double x = thing.x()[i];
            double y = thing.y()[i];
            if (x > seen[0] && x < seen[2] && y > seen[1] && y < seen[3]) {
                land.label(thing.words(), x, y, Role.TEXT, false, 2);
                return;
            }
        }
        if (n > 1) {
            double x = (thing.x()[0] + thing.x()[1]) / 2;
            double y = (thing.y()[0] + thing.y()[1]) / 2;
            land.label(thing.words(), x, y, Role.TEXT, false, 2);
        }
    }
}
