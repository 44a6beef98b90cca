package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.SectionSet;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * What a heap may not stand on or near.
 *
 * <p>A heap is a band about its ridge, so it keeps a distance from a line exactly if its ridge
 * keeps that distance and half the heap's width; where no line comes that near, the whole heap lies
 * on the same side of an outline as its middle.
 */
final class HeapBars {

    /** Room for a compact tractor to pass and turn, m: 8 ft, our choice. */
    static final double ROOM = 8 * 0.3048;

    /** Room between a heap and water, m: 10 ft, our choice: a strip of grass that holds silt. */
    static final double FROM_WATER = 10 * 0.3048;

    /** How far heaps stay behind the lane's start, m: 30 ft, our choice: drivers must see there. */
    static final double FROM_ROAD = 30 * 0.3048;

    /** Steepest ground under a heap, rise over run: 1 in 5, our choice. */
    static final double STEEPEST = 0.2;

    /** How densely the ground under a heap is asked, m. */
    private static final double ASKED = 2;

    /** Why a place is refused. */
    enum Why {
        /** On the work, or too near for stakes and a machine. */
        WORK("by the work"),
        /** Too near the public road. */
        ROAD("by the road"),
        /** Outside the survey or the boundary. */
        SURVEY("by the edge of the survey"),
        /** On ground that is too steep. */
        STEEP("by steep ground"),
        /** In or near water or its way. */
        WATER("by water"),
        /** On or near a hazard. */
        HAZARD("by things to keep off"),
        /** On or near a benchmark. */
        BENCHMARK("by a benchmark"),
        /** On or near another heap. */
        HEAP("by another heap");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** What refuses the place, in words. */
        String words() {
            return words;
        }
    }

    /**
     * A bar that a heap meets.
     *
     * @param why what kind of thing it is
     * @param words what it is
     * @param touches whether the heap itself stands on it; else only its clear distance is cut
     * @param hazard the hazard, if it is one
     */
    record Met(Why why, String words, boolean touches, @Nullable Hazard hazard) {}

    /** A thing on the map with a distance to keep from it. Most are never near a heap. */
    private static final class Bar {
        private final Why why;
        private final String words;
        private final Geometry shape;
        private final Envelope box;
        private final BiPredicate<Double, Double> covers;
        private final double body;
        private final double away;
        private final @Nullable Hazard hazard;
        private @Nullable IndexedFacetDistance edge;

        Bar(
                Why why,
                String words,
                Geometry shape,
                BiPredicate<Double, Double> covers,
                double body,
                double away,
                @Nullable Hazard hazard) {
            this.why = why;
            this.words = words;
            this.shape = shape;
            this.box = shape.getEnvelopeInternal();
            this.covers = covers;
            this.body = body;
            this.away = away;
            this.hazard = hazard;
        }

        boolean covers(HeapPlace heap) {
            return box.covers(heap.x(), heap.y()) && covers.test(heap.x(), heap.y());
        }

        /** Whether a heap's ridge comes nearer to the thing's outline than a distance. */
        boolean isWithin(Geometry ridge, double distance) {
            if (box.distance(ridge.getEnvelopeInternal()) > distance) {
                return false;
            }
            IndexedFacetDistance known = edge;
            if (known == null) {
                known = new IndexedFacetDistance(shape);
                edge = known;
            }
            return known.isWithinDistance(ridge, distance);
        }
    }

    private final HeapLand land;
    private final Alignment line;
    private final List<Bar> bars = new ArrayList<>();

    HeapBars(SectionSet set, HeapLand land) {
        this.land = land;
        this.line = set.design().alignment();
        add(
                Why.WORK,
                "the limits of work",
                LandShapes.limits(set),
                0,
                land.stakesBeyond() + ROOM,
                null);
        water();
        for (Hazard hazard : land.hazards()) {
            boolean wire = hazard.kind() == Hazard.Kind.WIRE;
            double body = wire ? Hazards.WIRE_CLEARANCE : hazard.around();
            double away = wire || hazard.kind().isBuried() ? ROOM : Math.max(ROOM, hazard.away());
            add(
                    Why.HAZARD,
                    Hazards.named(hazard),
                    LandShapes.bare(hazard),
                    body,
                    body + away,
                    hazard);
        }
        for (Hazard.Spot spot : land.benchmarks()) {
            add(
                    Why.BENCHMARK,
                    "a benchmark",
                    LandShapes.FACTORY.createPoint(new Coordinate(spot.x(), spot.y())),
                    0,
                    ROOM,
                    null);
        }
    }

    /** Makes a heap that was placed a bar to the next ones. */
    void add(HeapPlace heap) {
        add(
                Why.HEAP,
                "heap " + heap.number(),
                ridge(heap),
                heap.reach(),
                heap.reach() + ROOM,
                null);
    }

    private void add(
            Why why,
            String words,
            Geometry shape,
            double body,
            double away,
            @Nullable Hazard hazard) {
        if (!shape.isEmpty()) {
            bars.add(new Bar(why, words, shape, covers(shape), body, away, hazard));
        }
    }

    private static BiPredicate<Double, Double> covers(Geometry shape) {
        if (shape.getDimension() != 2) {
            return (x, y) -> false;
        }
        PreparedGeometry ready = PreparedGeometryFactory.prepare(shape);
        return (x, y) -> ready.intersects(LandShapes.FACTORY.createPoint(new Coordinate(x, y)));
    }

    private void water() {
        WaterShapes found = new WaterShapes();
        land.water().before().forEach(found::pool);
        land.water().after().forEach(found::pool);
        land.water().pathsBefore().forEach(found::path);
        land.water().pathsAfter().forEach(found::path);
        land.water().pipes().forEach(found::pipe);
        land.water().places().forEach(found::place);
    }

    /** Turns what drainage found into bars. */
    private final class WaterShapes {

        void pool(Pool pool) {
            for (Trace ring : pool.spot().outline()) {
                bars.add(
                        new Bar(
                                Why.WATER,
                                "a low spot where water sits",
                                trace(ring),
                                (x, y) -> pool.spot().covers(x, y),
                                0,
                                FROM_WATER,
                                null));
            }
        }

        void place(WetPlace place) {
            CulvertLine pipe = place.cure().pipe();
            if (pipe != null) {
                Place in = new Place(pipe.station(), pipe.inlet().offset());
                Place out = new Place(pipe.outletStation(), pipe.outlet().offset());
                mouths(line.x(in), line.y(in), line.x(out), line.y(out));
            }
        }

        void path(FlowPath path) {
            add(Why.WATER, "a way of water", trace(path.line()), 0, FROM_WATER, null);
        }

        void pipe(PipeCourse course) {
            var pipe = course.pipe();
            mouths(pipe.inletX(), pipe.inletY(), pipe.outletX(), pipe.outletY());
        }

        private void mouths(double inX, double inY, double outX, double outY) {
            Coordinate[] ends = {new Coordinate(inX, inY), new Coordinate(outX, outY)};
            add(
                    Why.WATER,
                    "a pipe",
                    LandShapes.FACTORY.createLineString(ends),
                    0,
                    FROM_WATER,
                    null);
        }
    }

    private static Geometry trace(Trace trace) {
        int n = trace.size();
        if (n == 0) {
            return LandShapes.FACTORY.createPoint();
        }
        if (n == 1) {
            return LandShapes.FACTORY.createPoint(new Coordinate(trace.x(0), trace.y(0)));
        }
        Coordinate[] along = new Coordinate[trace.isClosed() ? n + 1 : n];
        for (int i = 0; i < along.length; i++) {
            along[i] = new Coordinate(trace.x(i % n), trace.y(i % n));
        }
        return LandShapes.FACTORY.createLineString(along);
    }

    /** The first bar that a heap meets, or null if it stands clear. */
    @Nullable Met first(HeapPlace heap) {
        List<Met> met = met(heap, true);
        return met.isEmpty() ? null : met.get(0);
    }

    /** Every bar that a heap meets. */
    List<Met> all(HeapPlace heap) {
        return met(heap, false);
    }

    private List<Met> met(HeapPlace heap, boolean onlyFirst) {
        List<Met> met = new ArrayList<>();
        Geometry ridge = ridge(heap);
        for (Bar bar : bars) {
            double half = heap.reach();
            boolean covered = bar.covers(heap);
            if (covered || bar.isWithin(ridge, half + bar.away - HAIR)) {
                boolean touches = covered || bar.isWithin(ridge, half + bar.body - HAIR);
                met.add(new Met(bar.why, bar.words, touches, bar.hazard));
                if (onlyFirst) {
                    return met;
                }
            }
        }
        if (byRoad(heap)) {
            met.add(new Met(Why.ROAD, "the public road", true, null));
        }
        underfoot(heap, met);
        return met;
    }

    /** Rounding in a distance that is kept exactly, m. */
    private static final double HAIR = 1e-6;

    private static Geometry ridge(HeapPlace heap) {
        double half = heap.halfRidge();
        if (half == 0) {
            return LandShapes.FACTORY.createPoint(new Coordinate(heap.x(), heap.y()));
        }
        double dx = half * heap.alongX();
        double dy = half * heap.alongY();
        return LandShapes.FACTORY.createLineString(
                new Coordinate[] {
                    new Coordinate(heap.x() - dx, heap.y() - dy),
                    new Coordinate(heap.x() + dx, heap.y() + dy)
                });
    }

    /** Whether any of the heap lies before a line square to the lane, a way up from its start. */
    private boolean byRoad(HeapPlace heap) {
        double ux = line.directionX(0);
        double uy = line.directionY(0);
        double ahead = (heap.x() - line.x(0)) * ux + (heap.y() - line.y(0)) * uy;
        double back =
                heap.halfRidge() * Math.abs(heap.alongX() * ux + heap.alongY() * uy) + heap.reach();
        return ahead - back < FROM_ROAD - HAIR;
    }

    /** Asks the ground and the boundary under the heap: its outline and its ridge. */
    private void underfoot(HeapPlace heap, List<Met> met) {
        double middle = land.ground().heightAt(heap.x(), heap.y());
        boolean known = !Double.isNaN(middle) && within(heap);
        double steepest = 0;
        for (Coordinate spot : spots(heap)) {
            double height = land.ground().heightAt(spot.x, spot.y);
            known &= !Double.isNaN(height);
            double apart = Math.hypot(spot.x - heap.x(), spot.y - heap.y());
            if (apart > 0 && known) {
                steepest = Math.max(steepest, Math.abs(height - middle) / apart);
            }
        }
        if (!known) {
            met.add(new Met(Why.SURVEY, "the edge of what was surveyed", true, null));
        } else if (steepest > STEEPEST) {
            met.add(new Met(Why.STEEP, "ground steeper than 1 in 5", true, null));
        }
    }

    private static List<Coordinate> spots(HeapPlace heap) {
        List<Coordinate> spots = new ArrayList<>();
        double[][] outline = heap.outline();
        int n = outline[0].length;
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            double dx = outline[0][next] - outline[0][i];
            double dy = outline[1][next] - outline[1][i];
            int steps = (int) Math.max(1, Math.ceil(Math.hypot(dx, dy) / ASKED));
            for (int k = 0; k < steps; k++) {
                spots.add(
                        new Coordinate(
                                outline[0][i] + dx * k / steps, outline[1][i] + dy * k / steps));
            }
        }
        return spots;
    }

    private boolean within(HeapPlace heap) {
        Boundary boundary = land.boundary();
        if (boundary == null) {
            return true;
        }
        if (!boundary.contains(heap.x(), heap.y())) {
            return false;
        }
        Geometry ridge = ridge(heap);
        List<Ring> rings = new ArrayList<>(boundary.holes());
        rings.add(boundary.outer());
        for (Ring ring : rings) {
            Coordinate[] along = new Coordinate[ring.size() + 1];
            for (int i = 0; i < along.length; i++) {
                along[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
            }
            Geometry edge = LandShapes.FACTORY.createLineString(along);
            if (edge.isWithinDistance(ridge, heap.reach() - HAIR)) {
                return false;
            }
        }
        return true;
    }
}
