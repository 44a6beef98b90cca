package lanewright.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lanewright.ground.Ground;
import lanewright.ground.GroundLine;
import lanewright.ground.GroundOptions;
import lanewright.ground.LineCutter;
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
 * Ground lines of 60 m along a lane over a million points about a metre apart, against a spatial
 * index and overlay of the geometry library on the same lines.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx6g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LineBench {

    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Agreement asked of both ways before timing, m. */
    private static final double AGREE = 1e-9;

    private LineCutter cutter;
    private STRtree index;
    private Ground ground;
    private int at;

    /** Builds both, and checks that they agree. */
    @Setup
    public void prepare() {
        ground = Ground.of(Hills.of(1_000_000), GroundOptions.USUAL, Progress.NONE);
        cutter = ground.cutter();
        index = new STRtree();
        for (int t = 0; t < ground.triangleCount(); t++) {
            Coordinate[] ring = new Coordinate[4];
            for (int k = 0; k < 4; k++) {
                int v = ground.corner(t, k % 3);
                ring[k] = new Coordinate(ground.x(v), ground.y(v));
            }
            Polygon facet = SHAPES.createPolygon(ring);
            index.insert(facet.getEnvelopeInternal(), facet);
        }
        index.build();
        for (int i = 0; i < 100; i++) {
            compare();
            at++;
        }
    }

    /** Both must cross sides of facets at the same places, to a millionth of a millimetre. */
    private void compare() {
        double[] e = ends();
        GroundLine line = cutter.cut(e[0], e[1], e[2], e[3]);
        List<Double> theirs = new ArrayList<>();
        LineString straight = straight(e);
        for (Object facet : index.query(straight.getEnvelopeInternal())) {
            for (Coordinate end : ((Geometry) facet).intersection(straight).getCoordinates()) {
                theirs.add(end.distance(straight.getCoordinateN(0)));
            }
        }
        Collections.sort(theirs);
        int i = 0;
        for (double place : theirs) {
            while (i + 1 < line.size() && line.distance(i) < place - AGREE) {
                i++;
            }
            if (!(Math.abs(line.distance(i) - place) <= AGREE)) {
                throw new IllegalStateException("no point of ours at " + place + " m");
            }
        }
        double apart = Math.abs(libraryLength() - ourLength());
        if (!(apart < AGREE)) {
            throw new IllegalStateException("lines differ by " + apart + " m");
        }
    }

    private static LineString straight(double[] e) {
        return SHAPES.createLineString(
                new Coordinate[] {new Coordinate(e[0], e[1]), new Coordinate(e[2], e[3])});
    }

    /** Ends of the line at one station of a lane that winds across the ground. */
    private double[] ends() {
        double along = 100 + at % 800;
        double across = 500 + 60 * Math.sin(along / 80);
        double slope = 60.0 / 80 * Math.cos(along / 80);
        double length = Math.sqrt(1 + slope * slope);
        double dx = 30 * -slope / length;
        double dy = 30 / length;
        return new double[] {along - dx, across - dy, along + dx, across + dy};
    }

    private double ourLength() {
        double[] e = ends();
        GroundLine line = cutter.cut(e[0], e[1], e[2], e[3]);
        return line.distance(line.size() - 1) - line.distance(0);
    }

    private double libraryLength() {
        LineString line = straight(ends());
        double length = 0;
        List<?> near = index.query(line.getEnvelopeInternal());
        for (Object facet : near) {
            length += ((Geometry) facet).intersection(line).getLength();
        }
        return length;
    }

    /** One ground line of 60 m. */
    @Benchmark
    public double ours() {
        at++;
        return ourLength();
    }

    /** The same by spatial index and overlay. */
    @Benchmark
    public double indexAndOverlay() {
        at++;
        return libraryLength();
    }
}
