package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class BreaklinesTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    private static List<String> codes(Ground ground) {
        return ground.findings().stream().map(Finding::code).toList();
    }

    /** Length of a straight line between two places that runs along line sides of the ground. */
    private static double kept(Ground ground, double ax, double ay, double bx, double by) {
        double kept = 0;
        double length = Math.hypot(bx - ax, by - ay);
        for (int t = 0; t < ground.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int p = ground.corner(t, Mesh.next(k));
                int q = ground.corner(t, Mesh.last(k));
                int other = ground.neighbour(t, k);
                if (!ground.isBreak(t, k) || (other >= 0 && other < t)) {
                    continue;
                }
                double offP = off(ground, p, ax, ay, bx, by);
                double offQ = off(ground, q, ax, ay, bx, by);
                if (offP <= 0.0011 * length && offQ <= 0.0011 * length) {
                    double one = along(ground, p, ax, ay, bx, by);
                    double two = along(ground, q, ax, ay, bx, by);
                    if (Math.min(one, two) > -0.01 && Math.max(one, two) < length + 0.01) {
                        kept += Math.abs(one - two);
                    }
                }
            }
        }
        return kept;
    }

    private static double off(Ground g, int v, double ax, double ay, double bx, double by) {
        return Math.abs((g.x(v) - ax) * (by - ay) - (g.y(v) - ay) * (bx - ax));
    }

    private static double along(Ground g, int v, double ax, double ay, double bx, double by) {
        double length = Math.hypot(bx - ax, by - ay);
        return ((g.x(v) - ax) * (bx - ax) + (g.y(v) - ay) * (by - ay)) / length;
    }

    @Test
    void everyBreaklineIsAChainOfSidesAndEveryFreeSidePassesTheCircleTest() {
        for (int seed = 1; seed <= 12; seed++) {
            double[][] points =
                    seed % 3 == 0
                            ? Shots.grid(40, 0.3048 * seed, 7 * seed)
                            : Shots.scattered(1500, seed, 60);
            SurveyBuilder survey = Shots.survey(points);
            var random = new SplittableRandom(seed);
            List<int[]> pieces = new ArrayList<>();
            for (int i = 0; i < 25; i++) {
                int[] chain = new int[4];
                for (int k = 0; k < 4; k++) {
                    chain[k] = random.nextInt(points.length);
                }
                if (chain[0] == chain[1] || chain[1] == chain[2] || chain[2] == chain[3]) {
                    continue;
                }
                survey.breakline("edge", chain);
                for (int k = 1; k < 4; k++) {
                    pieces.add(new int[] {chain[k - 1], chain[k]});
                }
            }
            Ground ground = Ground.of(survey.build(), GroundOptions.WHOLE_HULL, Progress.NONE);
            assertEquals("", Shots.faults(ground), "seed " + seed);
            assertFalse(codes(ground).contains("breakline-lost"), "seed " + seed);
            for (int[] piece : pieces) {
                double[] a = points[piece[0]];
                double[] b = points[piece[1]];
                double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
                // Lines that lie on one another within the tolerance may share sides: at least.
                assertTrue(
                        kept(ground, a[0], a[1], b[0], b[1]) >= length - 0.02,
                        "seed " + seed + ", piece of " + length);
            }
        }
    }

    @Test
    void whereLinesCrossBothHeightsAreSaidAndHalfwayIsTaken() {
        Ground ground =
                Shots.ground(
                        Shots.survey(
                                        new double[][] {
                                            {0, 0, 10}, {10, 10, 20}, {0, 10, 40}, {10, 0, 40}
                                        })
                                .breakline("one", 0, 1)
                                .breakline("other", 2, 3));
        assertEquals(4, ground.triangleCount());
        // Halfway between 15 and 40.
        assertEquals(27.5, ground.heightAt(5, 5), 1e-12);
        Finding crossing =
                ground.findings().stream()
                        .filter(f -> f.code().equals("breaklines-cross"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(25, crossing.measured().value(), 1e-12);
        assertEquals(5.0, crossing.where().x());
    }

    @Test
    void threeLinesThroughOnePlaceMeetInOneVertex() {
        double[][] points = new double[6][];
        for (int i = 0; i < 6; i++) {
            points[i] =
                    new double[] {
                        100 + 30 * Math.cos(i * Math.PI / 3), 30 * Math.sin(i * Math.PI / 3), 7
                    };
        }
        Ground ground =
                Shots.ground(
                        Shots.survey(points)
                                .breakline("", 0, 3)
                                .breakline("", 1, 4)
                                .breakline("", 2, 5));
        assertEquals(7, ground.vertexCount());
        assertEquals(6, ground.triangleCount());
        assertEquals(List.of(), ground.findings());
    }

    @Test
    void aShotTwoMicrometresOffALineBecomesPartOfIt() {
        Ground ground =
                Shots.ground(
                        Shots.survey(
                                        new double[][] {
                                            {0, 0, 1},
                                            {20, 0, 1},
                                            {10, 2e-6, 1},
                                            {8, 9, 3},
                                            {12, -9, 2}
                                        })
                                .breakline("edge", 0, 1));
        assertEquals(4, ground.triangleCount());
        for (int t = 0; t < 4; t++) {
            assertTrue(ground.mesh().twiceArea(t) > 1, "no sliver");
        }
        int breaks = 0;
        for (int s = 0; s < 12; s++) {
            breaks += ground.isBreak(s / 3, s % 3) ? 1 : 0;
        }
        assertEquals(4, breaks);
    }

    @Test
    void shotsWithinAMillimetreAreOneAndTheirHeightsAreHeldAgainstEachOther() {
        double[][] points = Shots.scattered(60, 5, 30);
        SurveyBuilder survey = Shots.survey(points);
        survey.point(points[7][0] + 0.0006, points[7][1] - 0.0005, points[7][2] + 0.2);
        survey.point(points[9][0], points[9][1], points[9][2]);
        Ground ground = Shots.ground(survey);
        assertEquals(60, ground.vertexCount());
        Finding merged = ground.findings().get(0);
        assertEquals("points-merged", merged.code());
        assertEquals(Finding.Level.LOOK, merged.level());
        assertEquals(0.2, merged.measured().value(), 1e-12);
        double there = ground.heightAt(points[7][0], points[7][1]);
        assertEquals(points[7][2] + 0.1, there, 1e-9);
    }

    @Test
    void aBoundaryCutsTheGroundWhereItRuns() {
        for (int seed = 1; seed <= 30; seed++) {
            var random = new SplittableRandom(seed);
            double[][] points =
                    seed % 4 == 0 ? Shots.grid(25, 2, seed) : Shots.scattered(400, seed, 50);
            int n = random.nextInt(3, 12);
            double[] x = new double[n];
            double[] y = new double[n];
            for (int i = 0; i < n; i++) {
                double turn = 2 * Math.PI * (i + 0.4 * random.nextDouble()) / n;
                double out = random.nextDouble(8, 45);
                x[i] = 25 + out * Math.cos(turn);
                y[i] = 25 + out * Math.sin(turn);
            }
            var hole = new Ring(new double[] {24, 27, 26}, new double[] {23, 24, 27});
            SurveyBuilder survey = Shots.survey(points);
            survey.breakline("edge", 3, 40, 80).breakline("edge", 5, 90);
            Survey bare = survey.build();
            SurveyBuilder bounded = Shots.survey(points);
            bounded.breakline("edge", 3, 40, 80).breakline("edge", 5, 90);
            bounded.boundary(new Boundary(new Ring(x, y), List.of(hole)));
            Ground whole = Ground.of(bare, GroundOptions.WHOLE_HULL, Progress.NONE);
            Ground cut = Shots.ground(bounded);
            assertFalse(codes(cut).contains("breakline-lost"), "seed " + seed);

            Coordinate[] hull = new Coordinate[whole.vertexCount()];
            for (int v = 0; v < hull.length; v++) {
                hull[v] = new Coordinate(whole.x(v), whole.y(v));
            }
            double expected =
                    JTS.createMultiPointFromCoords(hull)
                            .convexHull()
                            .intersection(polygon(new Ring(x, y)))
                            .difference(polygon(hole))
                            .getArea();
            double area = 0;
            for (int t = 0; t < cut.triangleCount(); t++) {
                area += cut.mesh().twiceArea(t) / 2;
            }
            // Places within 1 mm of a shot are that shot: up to 1 mm along the outline.
            assertEquals(expected, area, 0.05, "seed " + seed);
            for (int i = 0; i < n; i++) {
                // A corner of the boundary takes the height of the facet it lies on.
                double before = whole.heightAt(x[i], y[i]);
                double after = cut.heightAt(x[i], y[i]);
                if (!Double.isNaN(before) && !Double.isNaN(after)) {
                    assertEquals(before, after, 0.02, "seed " + seed);
                }
            }
        }
    }

    private static Polygon polygon(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(ring.x(i % ring.size()), ring.y(i % ring.size()));
        }
        return JTS.createPolygon(corners);
    }

    @Test
    void contoursMakeFlatTrianglesThatAreSaid() {
        SurveyBuilder survey = Survey.builder();
        int[] outer = new int[41];
        int[] inner = new int[41];
        for (int i = 0; i < 40; i++) {
            double turn = Math.PI * i / 20;
            outer[i] = survey.size();
            survey.point(40 * Math.cos(turn), 40 * Math.sin(turn), 10);
            inner[i] = survey.size();
            survey.point(20 * Math.cos(turn), 20 * Math.sin(turn), 15);
        }
        outer[40] = outer[0];
        inner[40] = inner[0];
        Ground ground = Shots.ground(survey.contour("10", outer).contour("15", inner));
        Finding flats =
                ground.findings().stream()
                        .filter(f -> f.code().equals("contour-flats"))
                        .findFirst()
                        .orElseThrow();
        // The inner of two like polygons at half the size has a quarter of the area.
        assertEquals(0.25, flats.measured().value(), 1e-9);
        assertEquals(15, ground.heightAt(0.1, 0.1), 1e-12);
    }

    @Test
    void thinTrianglesAlongTheRimAreLeftOutAndBreaklinesKept() {
        // A round survey with one shot far out to the east, and one further out along a breakline.
        SurveyBuilder survey = Survey.builder();
        var random = new SplittableRandom(8);
        for (int i = 0; i < 2000; i++) {
            double turn = random.nextDouble(2 * Math.PI);
            double out = 50 * Math.sqrt(random.nextDouble());
            survey.point(out * Math.cos(turn), out * Math.sin(turn), 3);
        }
        survey.point(200, 0, 3);
        Ground ground = Shots.ground(survey);
        assertTrue(Double.isNaN(ground.heightAt(150, 0)));
        assertTrue(Double.isNaN(ground.heightAt(53, 20)));
        assertEquals(3, ground.heightAt(45, 10), 1e-12);
        assertTrue(codes(ground).contains("rim-slivers"));
        double area = 0;
        for (int t = 0; t < ground.triangleCount(); t++) {
            area += ground.mesh().twiceArea(t) / 2;
        }
        assertEquals(Math.PI * 50 * 50, area, 0.05 * area);
    }

    @Test
    void openPartsOfADenseSurveyAreKept() {
        // Nine shots in ten stand a metre apart round the house, the rest 15 m apart in the field.
        SurveyBuilder survey = Survey.builder();
        var random = new SplittableRandom(3);
        for (int i = 0; i < 400; i++) {
            survey.point(random.nextDouble(20), random.nextDouble(20), 0);
        }
        for (int i = 0; i < 60; i++) {
            survey.point(
                    20 + 15 * (i % 6) + random.nextDouble(3),
                    15 * (i / 6) + random.nextDouble(3),
                    0);
        }
        Ground ground = Shots.ground(survey);
        assertEquals(0, ground.heightAt(80, 110), 1e-12);
        assertEquals(0, ground.heightAt(40, 60), 1e-12);
    }
}
