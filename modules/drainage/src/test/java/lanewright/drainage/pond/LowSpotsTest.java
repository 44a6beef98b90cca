package lanewright.drainage.pond;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pools whose depth, area and volume are known in closed form, on triangles. */
class LowSpotsTest {

    /** A few operations on doubles per triangle, some hundred triangles. */
    private static final double ROUNDING = 1e-9;

    @Test
    @Tag("outside")
    @DisplayName("Square pit of four equal slopes: volume | closed form (pyramid) | derived")
    void squarePit() {
        var pit =
                new ArrayMesh(
                        new double[][] {{0, 0, 2}, {9, 0, 2}, {9, 9, 2}, {0, 9, 2}, {4.5, 4.5, 0}},
                        new int[][] {{0, 1, 4}, {1, 2, 4}, {2, 3, 4}, {3, 0, 4}});
        LowSpot spot = only(pit);
        assertEquals(54, spot.volume(), ROUNDING * 54);
        assertEquals(81, spot.area(), ROUNDING * 81);
        assertEquals(2, spot.depth());
        assertTrue(spot.atRim());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "V valley dammed by a wall, side slopes 4:1: reach, area, volume | closed form |"
                    + " derived")
    void valleyDammedByAWall() {
        LowSpot spot = only(valley(4, 4, 0, 0.05).walled(2));
        assertEquals(320, spot.area(), ROUNDING * 320);
        assertEquals(640.0 / 3, spot.volume(), ROUNDING * 213);
        assertEquals(40, reach(spot), ROUNDING * 40);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "V valley dammed by a wall, side slopes 3:1 and 5:1: area, volume | closed form |"
                    + " derived")
    void lopsidedValleyHoldsAsMuch() {
        LowSpot spot = only(valley(3, 5, 0, 0.05).walled(2));
        assertEquals(320, spot.area(), ROUNDING * 320);
        assertEquals(640.0 / 3, spot.volume(), ROUNDING * 213);
    }

    @Test
    @Tag("outside")
    @DisplayName("Flat-bottomed valley dammed: area, volume | closed form | derived")
    void flatBottomedValley() {
        LowSpot spot = only(valley(3, 3, 6, 0.04).walled(1.5));
        assertEquals(393.75, spot.area(), ROUNDING * 394);
        assertEquals(253.125, spot.volume(), ROUNDING * 253);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Road fill on the contour across a plane slope: area, volume | closed form | derived")
    void fillOnTheContour() {
        LowSpot spot = only(ArrayMesh.sheet(0, 0, 8, 10, 5, (x, y) -> 0.08 * x).walled(1.2));
        assertEquals(750, spot.area(), ROUNDING * 750);
        assertEquals(450, spot.volume(), ROUNDING * 450);
    }

    @Test
    @Tag("outside")
    @DisplayName("Wheel rut on a grade, blocked at the low end: volume | closed form | derived")
    void blockedWheelRut() {
        LowSpots found =
                LowSpots.of(
                        ArrayMesh.sheet(0, 0, 10, 1, 0.4, (x, y) -> 0.03 * x).walled(0.09),
                        List.of(),
                        new LowSpots.Threshold(0.05, 0.5),
                        Progress.NONE);
        assertEquals(0.054, found.listed().get(0).volume(), ROUNDING);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Sag with a parabolic bottom between two equal lips, 12 wide, 0.3 deep: (2/3) w h = 2.4"
                    + " for each metre | closed form | derived")
    void parabolicSag() {
        for (int n : new int[] {60, 120}) {
            double cell = 12.0 / n;
            LowSpot spot =
                    only(
                            ArrayMesh.sheet(
                                            -6,
                                            0,
                                            n,
                                            n / 12,
                                            cell,
                                            (x, y) -> 0.3 * (x / 6) * (x / 6))
                                    .walled(0.3));
            // Chords lie above the parabola by w z'' cell²/12 in area, z'' = 0.6/36.
            double chords = 12 * (0.6 / 36) * cell * cell / 12;
            assertEquals(2.4 - chords, spot.volume(), ROUNDING);
            assertEquals(0.3, spot.depth(), ROUNDING);
            assertEquals(12, spot.area(), ROUNDING * 12);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName("Cone pit, full and partly full: volume, area | closed form | derived")
    void conePit() {
        int n = 6000; // a polygon of so many sides lies within 2e-7 of its circle in area
        double[][] points = new double[n + 1][];
        int[][] triangles = new int[n][];
        for (int i = 0; i < n; i++) {
            double a = 2 * StrictMath.PI * i / n;
            points[i] = new double[] {10 * StrictMath.cos(a), 10 * StrictMath.sin(a), 3};
            triangles[i] = new int[] {i, (i + 1) % n, n};
        }
        points[n] = new double[] {0, 0, 0};
        var cone = new ArrayMesh(points, triangles);
        LowSpot full = only(cone);
        assertEquals(314.1593, full.volume(), 2e-7 * 314 + 5e-5);
        var wet = new WetPart();
        double area = 0;
        double volume = 0;
        for (int t = 0; t < n; t++) {
            wet.of(cone, t, 1);
            area += wet.area();
            volume += wet.volume();
        }
        assertEquals(34.9066, area, 5e-5);
        assertEquals(11.6355, volume, 5e-5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Paraboloid bowl: volume; closer fourfold with half the spacing | closed form | derived")
    void paraboloidBowl() {
        double coarse = only(bowl(24)).volume() - 452.3893;
        double fine = only(bowl(48)).volume() - 452.3893;
        assertEquals(0, fine, 452 * 0.005);
        assertEquals(4, coarse / fine, 0.2);
    }

    @Test
    @Tag("outside")
    @DisplayName("Spherical cap: volume and area | closed form | derived")
    void sphericalCap() {
        // Radius of the sphere 20, depth 1.5; the rim's radius follows.
        double rim = Math.sqrt(2 * 20 * 1.5 - 1.5 * 1.5);
        LowSpot cap = only(bowl(60, rim, r -> 20 - Math.sqrt(400 - r * r)));
        assertEquals(137.8374, cap.volume(), 0.002 * 137.8);
        assertEquals(181.4270, cap.area(), 0.002 * 181.4);
        assertEquals(1.5, cap.depth(), 1e-12);
    }

    private static ArrayMesh bowl(int rings) {
        return bowl(rings, 12, r -> 2 * r * r / 144);
    }

    /** A bowl on rings, with six times as many corners around as there are rings. */
    private static ArrayMesh bowl(int rings, double radius, DoubleUnaryOperator height) {
        int around = 6 * rings;
        double[][] points = new double[1 + rings * around][];
        points[0] = new double[] {0, 0, 0};
        var triangles = new java.util.ArrayList<int[]>();
        for (int ring = 1; ring <= rings; ring++) {
            double r = radius * ring / rings;
            int base = 1 + (ring - 1) * around;
            for (int i = 0; i < around; i++) {
                double a = 2 * StrictMath.PI * i / around;
                points[base + i] =
                        new double[] {
                            r * StrictMath.cos(a), r * StrictMath.sin(a), height.applyAsDouble(r)
                        };
                int next = base + (i + 1) % around;
                if (ring == 1) {
                    triangles.add(new int[] {0, base + i, next});
                } else {
                    triangles.add(new int[] {base + i - around, base + i, next});
                    triangles.add(new int[] {base + i - around, next, next - around});
                }
            }
        }
        return new ArrayMesh(points, triangles.toArray(new int[0][]));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 37, 45, 90})
    void aSteadyDitchShowsNoLowSpot(double degrees) {
        ArrayMesh ditch = TestDitch.falling(0.005, degrees);
        LowSpots found = LowSpots.of(ditch, List.of(), new LowSpots.Threshold(0, 0), Progress.NONE);
        assertEquals(List.of(), found.listed());
        assertEquals(0, found.small());
        Flood flood = Flood.of(Graph.of(ditch, List.of()), 0);
        assertEquals(0, flood.pools().size(), "not even one too shallow to count");
    }

    @RepeatedTest(30)
    void turnedAndMirroredGroundHoldsTheSameWater(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        ArrayMesh ground = rough(seed);
        LowSpots found = all(ground);
        LowSpots turned = all(ground.moved((x, y) -> -y, (x, y) -> x, false));
        LowSpots mirrored = all(ground.moved((x, y) -> -x, (x, y) -> y, true));
        assertEquals(found.listed().size(), turned.listed().size(), "seed " + seed);
        for (int i = 0; i < found.listed().size(); i++) {
            LowSpot a = found.listed().get(i);
            LowSpot b = turned.listed().get(i);
            LowSpot c = mirrored.listed().get(i);
            assertEquals(a.level(), b.level(), "seed " + seed);
            assertEquals(a.area(), b.area(), 1e-12 * a.area(), "seed " + seed);
            assertEquals(a.volume(), b.volume(), 1e-12 * a.volume(), "seed " + seed);
            assertEquals(a.x(), b.y(), "seed " + seed);
            assertEquals(a.level(), c.level(), "seed " + seed);
            assertEquals(a.volume(), c.volume(), 1e-12 * a.volume(), "seed " + seed);
            assertEquals(-a.spillX(), c.spillX(), "seed " + seed);
        }
    }

    @RepeatedTest(30)
    void theOutlineEnclosesTheArea(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        for (LowSpot spot : all(rough(seed)).listed()) {
            double enclosed = spot.outline().stream().mapToDouble(Trace::signedArea).sum();
            assertEquals(spot.area(), enclosed, 1e-9 * spot.area(), "seed " + seed);
            assertTrue(spot.covers(spot.x(), spot.y()), "seed " + seed);
        }
    }

    @Test
    void islandsAreLeftOutOfThePool() {
        ArrayMesh moat =
                ArrayMesh.sheet(
                        -10,
                        -10,
                        20,
                        20,
                        1,
                        (x, y) -> {
                            double r = Math.max(Math.abs(x), Math.abs(y));
                            return r < 3 ? 5 : Math.abs(r - 6);
                        });
        LowSpot spot = only(moat);
        assertEquals(2, spot.outline().size());
        assertFalse(spot.covers(0, 0));
        assertTrue(spot.covers(6, 0));
    }

    @Test
    void aPipeDrainsThePoolToItsInvert() {
        ArrayMesh hollow = ArrayMesh.sheet(-10, -10, 20, 20, 1, (x, y) -> 0.2 * Math.hypot(x, y));
        var pipe = GivenPipe.there("old pipe", 0, 0, 0.7, 30, 0, -1, 0.9);
        LowSpot spot =
                LowSpots.of(hollow, List.of(pipe), LowSpots.Threshold.USUAL, Progress.NONE)
                        .listed()
                        .get(0);
        assertEquals(0.7, spot.level());
        assertEquals(0, spot.spillPipe());
        var dry = GivenPipe.there("dry pipe", 0, 0, 0, 30, 0, -1, 0.3);
        assertEquals(
                List.of(),
                LowSpots.of(hollow, List.of(dry), LowSpots.Threshold.USUAL, Progress.NONE)
                        .listed());
    }

    @Test
    void aPipeBetweenTwoHollowsMakesThemShareTheirWater() {
        // Two pits of floors 0 and 1 behind rims at 4; the pipe between them lies at 2.
        ArrayMesh pits =
                ArrayMesh.sheet(
                        0,
                        0,
                        24,
                        10,
                        1,
                        (x, y) ->
                                Math.min(
                                        6,
                                        Math.min(
                                                Math.max(Math.abs(x - 6), Math.abs(y - 5)),
                                                1 + Math.max(Math.abs(x - 17), Math.abs(y - 5)))));
        var pipe = GivenPipe.there("between", 17, 5, 2, 6, 5, 2, 2);
        LowSpot spot = only(pits, pipe);
        assertEquals(2, spot.parts().size());
        assertEquals(2, spot.parts().get(0).level());
        assertEquals(0, spot.bottom());
    }

    @Test
    void aCoveredPipeLetsNothingThrough() {
        ArrayMesh hollow = ArrayMesh.sheet(-10, -10, 20, 20, 1, (x, y) -> 0.2 * Math.hypot(x, y));
        var pipe = GivenPipe.there("deep pipe", 0, 0, -1, 30, 0, -2, 0.3);
        LowSpots found =
                LowSpots.of(hollow, List.of(pipe), LowSpots.Threshold.USUAL, Progress.NONE);
        assertEquals(PlacedPipe.State.INLET_COVERED, found.pipes().get(0).state());
        assertEquals(2, found.listed().get(0).level());
    }

    @Test
    void aValleyLeavesTheSurveyWhereItRunsOut() {
        ArrayMesh valley =
                ArrayMesh.sheet(-20, 0, 40, 40, 1, (x, y) -> 0.1 * Math.abs(x) + 0.03 * y);
        LowSpotSearch.Exits exits = new WholeSearch(valley, List.of()).exits();
        assertEquals(List.of(new LowSpotSearch.Exit(0, 0)), exits.at());
    }

    @Test
    void roughnessOfTheRimMakesNoExit() {
        var random = new SplittableRandom(5);
        double[] noise = random.doubles(41 * 41).map(r -> 0.05 * r).toArray();
        ArrayMesh slope =
                ArrayMesh.sheet(
                        0, 0, 40, 40, 1, (x, y) -> 0.03 * y + 0.01 * x + noise[(int) (y * 41 + x)]);
        LowSpotSearch.Exits exits = new WholeSearch(slope, List.of()).exits();
        assertEquals(1, exits.at().size());
        assertTrue(exits.at().get(0).x() < 5 && exits.at().get(0).y() < 3);
    }

    @Test
    void aDammedValleyIsFullToItsDamWhereTheRimIsClosed() {
        // A valley that falls to y = 0, and a dam 3 m high across it at y = 10.
        ArrayMesh before =
                ArrayMesh.sheet(-40, 0, 80, 40, 1, (x, y) -> 0.1 * Math.abs(x) + 0.03 * y);
        ArrayMesh after =
                ArrayMesh.sheet(
                        -40,
                        0,
                        80,
                        40,
                        1,
                        (x, y) ->
                                y == 10
                                        ? Math.max(3, 0.1 * Math.abs(x) + 0.03 * y)
                                        : 0.1 * Math.abs(x) + 0.03 * y);
        LowSpot open = all(after).listed().get(0);
        assertEquals(1.2, open.level(), 1e-12);
        assertTrue(open.atRim());
        LowSpotSearch.Exits exits = new WholeSearch(before, List.of()).exits();
        var search = new WholeSearch(after, List.of());
        List<LowSpot> held = search.within(exits, LowSpots.Threshold.USUAL).listed();
        assertEquals(1, held.size());
        assertEquals(3, held.get(0).level(), 1e-12);
        assertTrue(held.get(0).atRim());
        double enclosed = held.get(0).outline().stream().mapToDouble(Trace::signedArea).sum();
        assertEquals(held.get(0).area(), enclosed, 1e-9 * enclosed);
        assertEquals(
                List.of(),
                new WholeSearch(before, List.of())
                        .within(exits, LowSpots.Threshold.USUAL)
                        .listed());
    }

    @RepeatedTest(20)
    void theOutlineEnclosesTheAreaAlongTheRimToo(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        ArrayMesh ground = rough(seed);
        var search = new WholeSearch(ground, List.of());
        for (LowSpot spot : search.within(search.exits(), new LowSpots.Threshold(0, 0)).listed()) {
            double enclosed = spot.outline().stream().mapToDouble(Trace::signedArea).sum();
            assertEquals(spot.area(), enclosed, 1e-9 * spot.area(), "seed " + seed);
        }
    }

    private static ArrayMesh rough(int seed) {
        var random = new SplittableRandom(seed);
        double[][] points = new double[120][];
        for (int i = 0; i < points.length; i++) {
            points[i] =
                    new double[] {
                        random.nextDouble(100), random.nextDouble(100), random.nextDouble(10)
                    };
        }
        return ArrayMesh.delaunay(points);
    }

    private static LowSpots all(ArrayMesh mesh) {
        return LowSpots.of(mesh, List.of(), new LowSpots.Threshold(0, 0), Progress.NONE);
    }

    private static LowSpot only(ArrayMesh mesh, GivenPipe... pipes) {
        LowSpots found = LowSpots.of(mesh, List.of(pipes), LowSpots.Threshold.USUAL, Progress.NONE);
        assertEquals(1, found.listed().size());
        return found.listed().get(0);
    }

    private static double reach(LowSpot spot) {
        double far = 0;
        for (Trace ring : spot.outline()) {
            for (int i = 0; i < ring.size(); i++) {
                far = Math.max(far, ring.x(i));
            }
        }
        return far;
    }

    /** A valley along the x axis that rises at {@code bed}, over 60 m. */
    private static ArrayMesh valley(double left, double right, double bottom, double bed) {
        double[] y =
                bottom == 0
                        ? new double[] {-5 * right, 0, 5 * left}
                        : new double[] {
                            -bottom / 2 - 5 * right, -bottom / 2, bottom / 2, bottom / 2 + 5 * left
                        };
        double[][] points = new double[2 * y.length][];
        int[][] triangles = new int[2 * (y.length - 1)][];
        for (int i = 0; i < y.length; i++) {
            double side = i == 0 || i == y.length - 1 ? 5 : 0;
            points[2 * i] = new double[] {0, y[i], side};
            points[2 * i + 1] = new double[] {60, y[i], side + 60 * bed};
        }
        for (int i = 0; i + 1 < y.length; i++) {
            triangles[2 * i] = new int[] {2 * i, 2 * i + 1, 2 * i + 3};
            triangles[2 * i + 1] = new int[] {2 * i, 2 * i + 3, 2 * i + 2};
        }
        return new ArrayMesh(points, triangles);
    }
}
