package lanewright.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.section.GroundAcross;
import lanewright.lane.section.GroundLines;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionCutter;
import lanewright.lane.section.SectionLine;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Progress;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Complete sections (ground line of 60 m, lane, catch points, areas) along a lane over a million
 * points about a metre apart, each cut anew from the triangles, against the geometry library: its
 * spatial index finds the facets, its overlay cuts the ground line out of them and takes cut and
 * fill as differences of polygons. The library is given the finished subgrade, catch points
 * included, and so does less than half of the work.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx6g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SectionBench {

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double REACH = 30;
    private static final double TOPSOIL = 0.2;
    private static final int STATIONS = 800;

    /** Far under all ground, m: polygons reach down to it. */
    private static final double DEEP = -1000;

    private Alignment alignment;
    private GroundLines lines;
    private SectionCutter cutter;
    private STRtree index;
    private final LaneAt[] lane = new LaneAt[STATIONS];
    private final Section[] sections = new Section[STATIONS];
    private int at;

    /** A facet of the ground as the library sees it: in plan, heights in z. */
    private static Polygon facet(Ground ground, int t) {
        Coordinate[] ring = new Coordinate[4];
        for (int k = 0; k < 4; k++) {
            int v = ground.corner(t, k % 3);
            ring[k] = new Coordinate(ground.x(v), ground.y(v), ground.z(v));
        }
        return SHAPES.createPolygon(ring);
    }

    /** Builds both, and checks that they agree. */
    @Setup
    public void prepare() throws DesignRefused {
        Ground ground = Ground.of(Hills.of(1_000_000), GroundOptions.USUAL, Progress.NONE);
        alignment =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(80, 480, 0),
                                new IntersectionPoint(300, 560, 60),
                                new IntersectionPoint(500, 440, 45),
                                new IntersectionPoint(720, 560, 60),
                                new IntersectionPoint(960, 500, 0)));
        lines = new GroundLines(alignment, ground, ground.constant(TOPSOIL), null);
        index = new STRtree();
        for (int t = 0; t < ground.triangleCount(); t++) {
            Polygon facet = facet(ground, t);
            index.insert(facet.getEnvelopeInternal(), facet);
        }
        index.build();
        TypicalSection shape = shape();
        for (int i = 0; i < STATIONS; i++) {
            double height =
                    ground.heightAt(alignment.x(i), alignment.y(i)) + 1.2 * Math.sin(i / 20.0);
            lane[i] = new LaneAt(height, shape, 0.04, 0.04, 0.04, 0.04, Double.NaN, Double.NaN);
        }
        cutter = new SectionCutter(lane[0]);
        for (at = 0; at < STATIONS; at++) {
            sections[at] = cut();
            if (at % 8 == 0) {
                check(sections[at]);
            }
        }
        at = 0;
    }

    private static TypicalSection shape() {
        SideShape side =
                new SideShape(0.5, 3, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.45, 0.3), 2, 2);
        return new TypicalSection(
                4.2,
                CrossFall.CROWN,
                0.04,
                Bed.ON_TOP,
                List.of(new Layer("surface", 0.1, 1.5), new Layer("base", 0.2, 1.5)),
                Double.NaN,
                side,
                side,
                true,
                0.1,
                false);
    }

    private void check(Section section) {
        double ours = section.areas().cut().area() + section.areas().fill().area();
        double theirs = library();
        if (section.complete() && !(Math.abs(ours - theirs) < 1e-6 * (1 + ours))) {
            throw new IllegalStateException(
                    "areas differ at " + at + ": " + ours + " and " + theirs);
        }
    }

    private Section cut() {
        int i = at % STATIONS;
        GroundAcross ground = lines.glance(i, false, REACH);
        return cutter.cut(i, Section.Face.SINGLE, lane[i], 0.5, ground);
    }

    /** Cut and fill together, by index and overlay. */
    private double library() {
        int i = at % STATIONS;
        Section section = sections[i];
        double from = section.subgrade().offset(0);
        double to = section.subgrade().offset(section.subgrade().size() - 1);
        Polygon earth = down(section.subgrade());
        Polygon stripped = down(groundLine(i), from, to);
        return earth.difference(stripped).getArea() + stripped.difference(earth).getArea();
    }

    /** The stripped ground across the lane as (offset, height), in order. */
    private List<Coordinate> groundLine(int i) {
        double x = alignment.x(i);
        double y = alignment.y(i);
        double dx = alignment.directionX(i);
        double dy = alignment.directionY(i);
        LineString line =
                SHAPES.createLineString(
                        new Coordinate[] {
                            new Coordinate(x - REACH * dy, y + REACH * dx),
                            new Coordinate(x + REACH * dy, y - REACH * dx)
                        });
        List<Coordinate> points = new ArrayList<>();
        for (Object near : index.query(line.getEnvelopeInternal())) {
            Polygon facet = (Polygon) near;
            Geometry piece = facet.intersection(line);
            if (piece.getDimension() == 1) {
                Coordinate[] ring = facet.getCoordinates();
                for (Coordinate c : piece.getCoordinates()) {
                    double offset = (c.x - x) * dy - (c.y - y) * dx;
                    points.add(new Coordinate(offset, height(ring, c) - TOPSOIL));
                }
            }
        }
        points.sort(Comparator.comparingDouble(c -> c.x));
        return points;
    }

    private static double height(Coordinate[] ring, Coordinate c) {
        double bx = ring[1].x - ring[0].x;
        double by = ring[1].y - ring[0].y;
        double cx = ring[2].x - ring[0].x;
        double cy = ring[2].y - ring[0].y;
        double area = bx * cy - by * cx;
        double u = ((c.x - ring[0].x) * cy - (c.y - ring[0].y) * cx) / area;
        double w = (bx * (c.y - ring[0].y) - by * (c.x - ring[0].x)) / area;
        return ring[0].z + u * (ring[1].z - ring[0].z) + w * (ring[2].z - ring[0].z);
    }

    private static Polygon down(SectionLine line) {
        List<Coordinate> points = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            points.add(new Coordinate(line.offset(i), line.height(i)));
        }
        return down(points, line.offset(0), line.offset(line.size() - 1));
    }

    private static Polygon down(List<Coordinate> line, double from, double to) {
        List<Coordinate> ring = new ArrayList<>();
        ring.add(new Coordinate(from, DEEP));
        for (int i = 0; i < line.size(); i++) {
            Coordinate a = line.get(Math.max(i - 1, 0));
            Coordinate b = line.get(i);
            clip(ring, a, b, from);
            if (b.x >= from && b.x <= to) {
                ring.add(b);
            }
            clip(ring, a, b, to);
        }
        ring.add(new Coordinate(to, DEEP));
        ring.add(ring.get(0));
        return SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
    }

    private static void clip(List<Coordinate> ring, Coordinate a, Coordinate b, double at) {
        if (a.x < at && b.x > at) {
            ring.add(new Coordinate(at, a.y + (at - a.x) / (b.x - a.x) * (b.y - a.y)));
        }
    }

    /** One complete section. */
    @Benchmark
    public double ours() {
        at++;
        Section section = cut();
        return section.areas().cut().area() + section.areas().fill().area();
    }

    /** Cut and fill of the same section by spatial index and overlay. */
    @Benchmark
    public double indexAndOverlay() {
        at++;
        return library();
    }
}
