package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

class LineCutterTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** Agreement asked of two ways to cut the same line, m. */
    private static final double AGREE = 1e-9;

    /** The facets of a ground in the other library's hands. */
    private static final class Overlay {
        private final Ground ground;
        private final STRtree index = new STRtree();

        private record Facet(int number, Polygon shape) {}

        Overlay(Ground ground) {
            this.ground = ground;
            for (int t = 0; t < ground.triangleCount(); t++) {
                Coordinate[] ring = new Coordinate[4];
                for (int k = 0; k < 4; k++) {
                    int v = ground.corner(t, k % 3);
                    ring[k] = new Coordinate(ground.x(v), ground.y(v), ground.z(v));
                }
                Polygon shape = JTS.createPolygon(ring);
                index.insert(shape.getEnvelopeInternal(), new Facet(t, shape));
            }
        }

        /**
         * Cuts a line by overlay and asks that every piece begins and ends at points of ours, at
         * our heights, with ground under it in ours, and that the pieces add up to ours.
         */
        void check(double x0, double y0, double x1, double y1, String what) {
            GroundLine line = ground.across(x0, y0, x1, y1);
            LineString cut =
                    JTS.createLineString(
                            new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
            PreparedGeometry quick = PreparedGeometryFactory.prepare(cut);
            double total = 0;
            for (Object found : index.query(new Envelope(x0, x1, y0, y1))) {
                Facet facet = (Facet) found;
                if (!quick.intersects(facet.shape())) {
                    continue;
                }
                Geometry piece = facet.shape().intersection(cut);
                if (piece.getLength() < AGREE) {
                    continue;
                }
                total += piece.getLength();
                for (Coordinate end : new Coordinate[] {first(piece), last(piece)}) {
                    double at = Math.hypot(end.x - x0, end.y - y0);
                    int i = nearest(line, at);
                    assertEquals(at, line.distance(i), AGREE, what);
                    double height = ground.heightOn(facet.number(), line.x(i), line.y(i));
                    assertEquals(height, line.z(i), 1e-7, what);
                }
            }
            double walked = 0;
            for (int i = 0; i + 1 < line.size(); i++) {
                if (!line.gapAfter(i)) {
                    walked += line.distance(i + 1) - line.distance(i);
                }
            }
            assertEquals(total, walked, AGREE, what);
        }

        private static Coordinate first(Geometry piece) {
            return piece.getCoordinates()[0];
        }

        private static Coordinate last(Geometry piece) {
            return piece.getCoordinates()[piece.getNumPoints() - 1];
        }

        private static int nearest(GroundLine line, double at) {
            int nearest = 0;
            for (int i = 1; i < line.size(); i++) {
                if (Math.abs(line.distance(i) - at) < Math.abs(line.distance(nearest) - at)) {
                    nearest = i;
                }
            }
            return nearest;
        }
    }

    /** Irregular ground with bays at its rim, breaklines and a hole. */
    private static Ground ragged() {
        SurveyBuilder survey = Shots.survey(Shots.scattered(4000, 21, 100));
        survey.breakline("edge", 5, 900, 2100, 3000).breakline("ditch", 17, 1200);
        double[] x = new double[40];
        double[] y = new double[40];
        for (int i = 0; i < 40; i++) {
            double out = i % 2 == 0 ? 49 : 36;
            x[i] = 50 + out * Math.cos(Math.PI * i / 20);
            y[i] = 50 + out * Math.sin(Math.PI * i / 20);
        }
        var pond = new Ring(new double[] {40, 60, 62, 45}, new double[] {40, 38, 55, 60});
        return Shots.ground(survey.boundary(new Boundary(new Ring(x, y), List.of(pond))));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "1,000 lines over irregular ground with bays and a hole, to 1e-9 m"
                    + " | JTS 1.20.0, STRtree and overlay | derived")
    void randomLinesAgreeWithOverlay() {
        var overlay = new Overlay(ragged());
        var random = new SplittableRandom(31);
        for (int i = 0; i < 1000; i++) {
            overlay.check(
                    random.nextDouble(-10, 110),
                    random.nextDouble(-10, 110),
                    random.nextDouble(-10, 110),
                    random.nextDouble(-10, 110),
                    "line " + i);
        }
    }

    /** What a line finds, going one way: place, height and gap of each point. */
    private static List<String> found(Ground ground, double x0, double y0, double x1, double y1) {
        GroundLine line = ground.across(x0, y0, x1, y1);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            found.add(
                    Math.round(line.x(i) * 1e7)
                            + " "
                            + Math.round(line.y(i) * 1e7)
                            + " "
                            + Math.round(line.z(i) * 1e6)
                            + (line.gapAfter(i) ? " gap" : ""));
        }
        return found;
    }

    @Test
    void linesThroughVerticesMeetThem() {
        Ground ground = ragged();
        Mesh mesh = ground.mesh();
        var random = new SplittableRandom(5);
        for (int i = 0; i < 2000; i++) {
            int a = random.nextInt(mesh.x.length);
            int b = random.nextInt(mesh.x.length);
            if (a == b) {
                continue;
            }
            GroundLine line = ground.across(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b]);
            double length = Math.hypot(mesh.x[b] - mesh.x[a], mesh.y[b] - mesh.y[a]);
            for (int p = 0; p < line.size(); p++) {
                assertTrue(line.distance(p) >= 0 && line.distance(p) <= length + 1e-12);
                assertTrue(p == 0 || line.distance(p) >= line.distance(p - 1));
            }
            if (line.size() > 0 && line.distance(0) == 0) {
                assertEquals(mesh.z[a], line.z(0), 0);
            }
            int last = line.size() - 1;
            if (last > 0 && line.distance(last) == length) {
                assertEquals(mesh.z[b], line.z(last), 0);
            }
        }
    }

    @Test
    void linesAlongSidesHaveNoPointsBetweenTheirEnds() {
        Ground ground = Shots.ground(Shots.scattered(800, 3, 40));
        Mesh mesh = ground.mesh();
        for (int t = 0; t < ground.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int a = ground.corner(t, Mesh.next(k));
                int b = ground.corner(t, Mesh.last(k));
                GroundLine line = ground.across(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b]);
                assertEquals(2, line.size(), "side " + a + " to " + b);
                assertTrue(line.isWhole());
                assertEquals(mesh.z[a], line.z(0), 0);
                assertEquals(mesh.z[b], line.z(1), 0);
            }
        }
    }

    @Test
    void aLineAndItsReverseFindTheSame() {
        // A grid: nearly every line runs through vertices or along sides; bays and a hole too.
        SurveyBuilder survey = Shots.survey(Shots.grid(21, 1, 0));
        var hole = new Ring(new double[] {8, 12, 12, 8}, new double[] {8, 8, 12, 12});
        var outer =
                new Ring(
                        new double[] {0, 20, 20, 14, 14, 20, 20, 0},
                        new double[] {0, 0, 8, 8, 14, 14, 20, 20});
        Ground ground = Shots.ground(survey.boundary(new Boundary(outer, List.of(hole))));
        double area = 0;
        for (int t = 0; t < ground.triangleCount(); t++) {
            area += ground.mesh().twiceArea(t) / 2;
        }
        assertEquals(400 - 36 - 16, area, 1e-9);
        var random = new SplittableRandom(9);
        for (int i = 0; i < 4000; i++) {
            double x0 = random.nextInt(-2, 23);
            double y0 = random.nextInt(-2, 23);
            double x1 = random.nextInt(-2, 23);
            double y1 = random.nextInt(-2, 23);
            if (x0 == x1 && y0 == y1) {
                continue;
            }
            String what = x0 + "," + y0 + " to " + x1 + "," + y1;
            GroundLine there = ground.across(x0, y0, x1, y1);
            GroundLine back = ground.across(x1, y1, x0, y0);
            double length = Math.hypot(x1 - x0, y1 - y0);
            assertEquals(covered(there), covered(back), AGREE, what);
            assertEquals(expected(x0, y0, x1, y1), covered(there), AGREE, what);
            if (there.size() > 0) {
                assertEquals(there.distance(0), length - back.distance(back.size() - 1), AGREE);
            }
        }
    }

    private static double covered(GroundLine line) {
        double covered = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            covered += line.gapAfter(i) ? 0 : line.distance(i + 1) - line.distance(i);
        }
        return covered;
    }

    /** Length of a line within the closed shape of the grid above, by the other library. */
    private static double expected(double x0, double y0, double x1, double y1) {
        Coordinate[] outer = ring(0, 0, 20, 0, 20, 8, 14, 8, 14, 14, 20, 14, 20, 20, 0, 20, 0, 0);
        Coordinate[] hole = ring(8, 8, 12, 8, 12, 12, 8, 12, 8, 8);
        Polygon shape =
                JTS.createPolygon(
                        JTS.createLinearRing(outer),
                        new org.locationtech.jts.geom.LinearRing[] {JTS.createLinearRing(hole)});
        return shape.intersection(
                        JTS.createLineString(
                                new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)}))
                .getLength();
    }

    private static Coordinate[] ring(double... v) {
        Coordinate[] ring = new Coordinate[v.length / 2];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(v[2 * i], v[2 * i + 1]);
        }
        return ring;
    }

    @Test
    void aLineDoesNotCareWhereTheWorldStands() {
        double[][] points = Shots.scattered(1500, 77, 60);
        Ground ground = Shots.ground(points);
        double[][] turned = new double[points.length][];
        double[][] mirrored = new double[points.length][];
        double[][] shifted = new double[points.length][];
        for (int i = 0; i < points.length; i++) {
            double[] p = points[i];
            turned[i] = new double[] {-p[1], p[0], p[2]};
            mirrored[i] = new double[] {-p[0], p[1], p[2]};
            shifted[i] = new double[] {p[0] + 4096, p[1] - 2048, p[2]};
        }
        Ground quarter = Shots.ground(turned);
        Ground mirror = Shots.ground(mirrored);
        Ground away = Shots.ground(shifted);
        var random = new SplittableRandom(6);
        for (int i = 0; i < 200; i++) {
            double x0 = random.nextDouble(70);
            double y0 = random.nextDouble(70);
            double x1 = random.nextDouble(70);
            double y1 = random.nextDouble(70);
            GroundLine line = ground.across(x0, y0, x1, y1);
            same(line, quarter.across(-y0, x0, -y1, x1), 0);
            same(line, mirror.across(-x0, y0, -x1, y1), 0);
            same(line, away.across(x0 + 4096, y0 - 2048, x1 + 4096, y1 - 2048), 1e-8);
        }
        assertEquals(found(ground, 0, 0, 60, 60), found(ground, 0, 0, 60, 60));
    }

    private static void same(GroundLine one, GroundLine other, double slack) {
        assertEquals(one.size(), other.size());
        for (int i = 0; i < one.size(); i++) {
            assertEquals(one.distance(i), other.distance(i), 1e-11 + slack);
            assertEquals(one.z(i), other.z(i), 1e-10 + 10 * slack);
            assertEquals(one.gapAfter(i), other.gapAfter(i));
        }
    }

    @Test
    void aPlaceOnAVertexOrASideHasItsHeight() {
        Ground ground = Shots.ground(Shots.grid(15, 1, 0));
        for (int v = 0; v < ground.vertexCount(); v++) {
            assertEquals(ground.z(v), ground.heightAt(ground.x(v), ground.y(v)), 1e-12);
        }
        for (int t = 0; t < ground.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int a = ground.corner(t, Mesh.next(k));
                int b = ground.corner(t, Mesh.last(k));
                assertEquals(
                        (ground.z(a) + ground.z(b)) / 2,
                        ground.heightAt(
                                (ground.x(a) + ground.x(b)) / 2, (ground.y(a) + ground.y(b)) / 2),
                        1e-12);
            }
        }
        assertTrue(Double.isNaN(ground.heightAt(-1e-9, 3)));
        assertTrue(Double.isNaN(ground.heightAt(14.000000001, 3)));
    }

    @Test
    void aLineWithoutLengthIsRefused() {
        Ground ground = Shots.ground(Shots.grid(3, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> ground.across(1, 1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> ground.across(1, Double.NaN, 1, 1));
    }
}
