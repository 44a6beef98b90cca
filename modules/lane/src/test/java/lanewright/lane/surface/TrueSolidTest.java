package lanewright.lane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Stretch;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The true solid in worlds whose volumes are known from plain geometry. */
class TrueSolidTest {

    /** Sums of some thousand products of doubles. */
    private static final double ROUNDING = 1e-9;

    private static void closes(LaneDesign design, Ground ground, double topsoil) {
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        TrueSolid solid = TrueSolid.of(built, ground.constant(topsoil), null, Progress.NONE);
        Skin finished = built.finished();
        Overlay net = new Overlay(ground, ground.constant(0), null);
        net.under(SurfacePart.FILL_SLOPE, false);
        for (int t = 0; t < finished.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int v = finished.corner(t, k);
                net.corner(k, finished.x(v), finished.y(v), finished.z(v), finished.z(v));
            }
            net.add();
        }
        double right =
                solid.stone() + solid.fill() + solid.topsoilBack() - solid.cut() - solid.strip();
        assertEquals(net.fill - net.cut, right, ROUNDING * solid.disturbed());
        assertEquals(0, solid.uncovered(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "True solid of a fill on level ground, area w h + s h² + k w²/4 (EW-E11) | plain"
                    + " geometry, crowned level section | derived")
    void fillOnLevelGroundIsSectionTimesLength() throws DesignRefused {
        Ground ground = World.grid(-40, -10, 40, 110, 7, (x, y) -> 100);
        double w = 5;
        double k = 0.04;
        double s = 2;
        double h = 1.3; // height at the edge
        Alignment line = World.line(0, 0, 0, 0, 100, 0);
        double top = 100 + h + k * w / 2;
        TrueSolid solid =
                World.solid(
                        World.lane(
                                line,
                                World.grade(0, top, 0, 100, top, 0),
                                World.bare(w, k, World.plain(0, s))),
                        ground,
                        0);
        double area = w * h + s * h * h + k * w * w / 4;
        assertEquals(area * 100, solid.fill(), ROUNDING * area * 100);
        assertEquals(0, solid.cut());
        assertEquals((w + 2 * s * h) * 100, solid.disturbed(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "True solid of an arc over a plane against Pappus, area times the path of its centroid |"
                    + " Pappus's theorem; plain geometry | derived")
    void laneOnAnArcFollowsPappus() throws DesignRefused {
        // one-sided cut into level ground: a vertical-sided bench is not possible, so a level fill
        // whose section is symmetric has its centroid on the alignment
        Ground ground = World.grid(-60, -60, 120, 120, 9, (x, y) -> 10);
        Alignment line = World.line(0, 0, 0, 0, 60, 50, 60, 60, 0);
        double h = 1;
        double w = 4;
        double s = 2;
        TrueSolid solid =
                World.solid(
                        World.lane(
                                line,
                                World.grade(0, 10 + h, 0, line.length(), 10 + h, 0),
                                World.bare(w, 0, World.plain(0, s))),
                        ground,
                        0);
        double volume = (w * h + s * h * h) * line.length();
        assertEquals(volume, solid.fill(), 2e-4 * volume);
    }

    @Test
    void partsAddUpOnRoughGround() throws DesignRefused {
        Ground ground =
                World.grid(
                        -60,
                        -20,
                        90,
                        140,
                        3,
                        (x, y) ->
                                20
                                        + 0.06 * y
                                        + 1.2 * Math.sin(x / 7)
                                        + 0.9 * Math.cos(y / 11 + x / 30));
        Alignment line = World.line(0, 0, 0, 5, 50, 40, 40, 110, 0);
        var left = World.ditched(0.6, 2.5, 0.5, 0.4);
        var right = World.ditched(0.6, 2.5, 0.4, 0);
        for (Bed bed : Bed.values()) {
            LaneDesign design =
                    LaneDesign.on(line, World.grade(0, 20, 0, 50, 23, 30, line.length(), 26.5, 0))
                            .typical(
                                    List.of(
                                            new Stretch<>(
                                                    0,
                                                    line.length(),
                                                    World.stoned(bed, left, right))))
                            .margin(0.7)
                            .build();
            closes(design, ground, 0.2);
        }
    }

    @Test
    void jumpsOfTheShapeLoseNothing() throws DesignRefused {
        Ground ground = World.grid(-40, -10, 40, 110, 7, (x, y) -> 100 + 0.1 * x);
        Alignment line = World.line(0, 0, 0, 0, 100, 0);
        var narrow = World.bare(3, 0, World.plain(0, 1e-3));
        var wide = World.bare(6, 0, World.plain(0, 1e-3));
        LaneDesign design =
                LaneDesign.on(line, World.grade(0, 102, 0, 100, 102, 0))
                        .typical(
                                List.of(new Stretch<>(0, 40, narrow), new Stretch<>(40, 100, wide)))
                        .build();
        TrueSolid solid = World.solid(design, ground, 0);
        double volume = 2 * (3 * 40 + 6 * 60);
        assertTrue(Math.abs(solid.fill() - volume) < 2e-3 * volume, "fill " + solid.fill());
    }

    private static Overlay over(Ground ground) {
        Overlay overlay = new Overlay(ground, ground.constant(0), null);
        overlay.under(SurfacePart.FILL_SLOPE, false);
        return overlay;
    }

    private static Ground flat() {
        return World.grid(-30, -30, 60, 60, 7, (x, y) -> 0);
    }

    private static void lay(Overlay overlay, double[] a, double[] b, double[] c) {
        overlay.corner(0, a[0], a[1], a[2], a[2]);
        overlay.corner(1, b[0], b[1], b[2], b[2]);
        overlay.corner(2, c[0], c[1], c[2], c[2]);
        overlay.add();
    }

    private static double[] at(double x, double y, double z) {
        return new double[] {x, y, z};
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Prism over a right-angled triangle of 10 by 10 m, depths 0.2, 0.5, 1.1 m (EW-E1) | plain"
                    + " geometry | derived")
    void trianglePrism() {
        Overlay overlay = over(flat());
        lay(overlay, at(0, 0, 0.2), at(10, 0, 0.5), at(0, 10, 1.1));
        assertEquals(30.000, overlay.fill, 1e-9);
        assertEquals(0, overlay.cut);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "The same triangle with depths +1, -1, +1 m: cut 20.8333, fill 4.1667 m³ (EW-E2) | plain"
                    + " geometry | derived")
    void prismSplitsAtTheZeroLine() {
        Overlay overlay = over(flat());
        lay(overlay, at(0, 0, -1), at(10, 0, 1), at(0, 10, -1)); // depth is ground less surface
        assertEquals(20.8333, overlay.cut, 5e-5);
        assertEquals(4.1667, overlay.fill, 5e-5);
        assertEquals(16.6667, overlay.cut - overlay.fill, 5e-5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Pit of 30 by 20 m, 3 m deep, sides 2:1: 2844 m³ (EW-E3) | prismoid, plain geometry |"
                    + " derived")
    void pitIsAPrismoid() {
        Overlay overlay = over(flat());
        double[] a = at(0, 0, -3);
        double[] b = at(30, 0, -3);
        double[] c = at(30, 20, -3);
        double[] d = at(0, 20, -3);
        double[] e = at(-6, -6, 0);
        double[] f = at(36, -6, 0);
        double[] g = at(36, 26, 0);
        double[] h = at(-6, 26, 0);
        double[][][] faces = {{a, b, c, d}, {e, f, b, a}, {f, g, c, b}, {g, h, d, c}, {h, e, a, d}};
        for (double[][] face : faces) {
            lay(overlay, face[0], face[1], face[2]);
            lay(overlay, face[0], face[2], face[3]);
        }
        assertEquals(2844, overlay.cut, 1e-8);
        assertEquals(0, overlay.fill, 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Square of 20 by 20 ft with corner depths 1, 2, 3, 8 ft: 1533.33 or 1266.67 ft³ by the"
                    + " diagonal, 1400 between (EW-E5) | plain geometry | derived")
    void aSquareHasAVolumeForEachDiagonal() {
        double foot = 0.3048;
        double cubic = foot * foot * foot;
        double[] one = at(0, 0, foot);
        double[] two = at(20 * foot, 0, 2 * foot);
        double[] eight = at(20 * foot, 20 * foot, 8 * foot);
        double[] three = at(0, 20 * foot, 3 * foot);
        Overlay along = over(flat());
        lay(along, one, two, eight);
        lay(along, one, eight, three);
        assertEquals(1533.33, along.fill / cubic, 0.005);
        Overlay across = over(flat());
        lay(across, one, two, three);
        lay(across, two, eight, three);
        assertEquals(1266.67, across.fill / cubic, 0.005);
        assertEquals(1400, (along.fill + across.fill) / 2 / cubic, 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Grid square of 50 by 50 ft, corners 87.6, 87.6, 87.6, 88.6 ft, finished at 90 ft: 199"
                    + " yd³ within the diagonal's doubt (EW-G1) | exam-review question,"
                    + " expertsmind.com | read")
    void oneGridSquare() {
        double foot = 0.3048;
        Ground ground =
                World.of(
                        List.of(
                                at(0, 0, 87.6 * foot),
                                at(50 * foot, 0, 87.6 * foot),
                                at(50 * foot, 50 * foot, 88.6 * foot),
                                at(0, 50 * foot, 87.6 * foot)));
        Overlay overlay = over(ground);
        lay(
                overlay,
                at(0, 0, 90 * foot),
                at(50 * foot, 0, 90 * foot),
                at(50 * foot, 50 * foot, 90 * foot));
        lay(
                overlay,
                at(0, 0, 90 * foot),
                at(50 * foot, 50 * foot, 90 * foot),
                at(0, 50 * foot, 90 * foot));
        double yards = overlay.fill / (27 * foot * foot * foot);
        double doubt = 2500.0 * 1 / 12 / 27; // a (z00 + z11 - z10 - z01) / 12, EW-E5
        assertEquals(199, yards, 0.5 + doubt);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A lane's fill that lies outside its curve, 10 m² with its centroid 3 m outside a radius"
                    + " of 50 m over 36°: 333.01 m³ (EW-E6) | Pappus's theorem | derived")
    void weightOutsideTheCurveCountsMore() {
        // ten square metres as a block from 0.5 m to 5.5 m outside the line, 2 m high, in slices
        Overlay overlay = over(flat());
        int slices = 400;
        double inner = 50.5;
        double outer = 55.5;
        for (int i = 0; i < slices; i++) {
            double a = Math.toRadians(36.0 * i / slices);
            double b = Math.toRadians(36.0 * (i + 1) / slices);
            double[] ai = at(inner * Math.cos(a), inner * Math.sin(a), 2);
            double[] ao = at(outer * Math.cos(a), outer * Math.sin(a), 2);
            double[] bi = at(inner * Math.cos(b), inner * Math.sin(b), 2);
            double[] bo = at(outer * Math.cos(b), outer * Math.sin(b), 2);
            lay(overlay, ai, ao, bo);
            lay(overlay, ai, bo, bi);
        }
        assertEquals(333.01, overlay.fill, 0.01);
    }

    /** A side-hill of one plane: cut and fill of a level bench are triangles. */
    @Test
    @Tag("outside")
    @DisplayName(
            "Level bench into a side-hill plane, cut and fill as triangles | plain geometry, section"
                    + " times length | derived")
    void benchIntoASideHill() throws DesignRefused {
        double hill = 0.2;
        double slope = 2; // run over rise of both sides
        double w = 6;
        Ground ground = World.grid(-60, -10, 60, 110, 9, (x, y) -> 50 - hill * x);
        TrueSolid solid =
                World.solid(
                        World.lane(
                                World.line(0, 0, 0, 0, 100, 0),
                                World.grade(0, 50, 0, 100, 50, 0),
                                World.bare(w, 0, World.plain(0, slope))),
                        ground,
                        0);
        // half the bench is a triangle w/2 by hill w/2; the slope adds one on the same height
        double height = hill * w / 2;
        double run = height / (1 / slope - hill); // out to where the slope meets the hill
        double area = height * (w / 2) / 2 + height * run / 2;
        assertEquals(100 * area, solid.fill(), 1e-9 * 100 * area);
        assertEquals(100 * area, solid.cut(), 1e-9 * 100 * area);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Lane across a V valley on a level grade, fill as a sum of prismoids | plain geometry,"
                    + " Simpson's rule, exact for a quadratic area | derived")
    void fillAcrossAVValley() throws DesignRefused {
        // the valley's bottom runs along x at y = 50; its sides rise 10 % to both ends
        List<double[]> points = new ArrayList<>();
        for (double x : new double[] {-60, -20, 20, 60}) {
            points.add(at(x, -10, 6));
            points.add(at(x, 50, 0));
            points.add(at(x, 110, 6));
        }
        Ground ground = World.of(points, new int[] {1, 4, 7, 10});
        double w = 4;
        double s = 2;
        double top = 5; // the grade meets the ground's sides at 5 m over the bottom, y = 0 and 100
        TrueSolid solid =
                World.solid(
                        World.lane(
                                World.line(0, 0, 0, 0, 100, 0),
                                World.grade(0, top, 0, 100, top, 0),
                                World.bare(w, 0, World.plain(0, s))),
                        ground,
                        0);
        // height h = 0.1 y falls along the lane, so a 2:1 slope square to it still ends where the
        // ground is h below: area w h + s h², and Simpson is exact over each half
        double h = 5;
        double half = 50.0 / 6 * (4 * (w * h / 2 + s * h * h / 4) + w * h + s * h * h);
        assertEquals(2 * half, solid.fill(), 2e-4 * half);
        assertEquals(0, solid.cut(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Topsoil strip, its return in the margin and the land disturbed on level ground | plain"
                    + " geometry, section times length | derived")
    void stripOnLevelGround() throws DesignRefused {
        Ground ground = World.grid(-40, -10, 40, 110, 7, (x, y) -> 100);
        double w = 5;
        double s = 2;
        double h = 1.25;
        double soil = 0.2;
        double margin = 1.5;
        LaneDesign design =
                LaneDesign.on(
                                World.line(0, 0, 0, 0, 100, 0),
                                World.grade(0, 101.25, 0, 100, 101.25, 0))
                        .typical(
                                List.of(new Stretch<>(0, 100, World.bare(w, 0, World.plain(0, s)))))
                        .margin(margin)
                        .build();
        TrueSolid solid = World.solid(design, ground, soil);
        double base = w + 2 * s * h;
        assertEquals(100 * (base + 2 * margin), solid.disturbed(), 1e-6);
        assertEquals(100 * (base + 2 * margin) * soil, solid.strip(), 1e-6);
        assertEquals(100 * 2 * margin * soil, solid.topsoilBack(), 1e-6);
        // stripped ground lies 0.2 m lower all over the base, with a vertical step at the catch
        // point
        assertEquals(100 * (w * h + s * h * h + base * soil), solid.fill(), 1e-6);
    }

    @Test
    void turningShiftingAndMirroringTheWorldChangesNothing() throws DesignRefused {
        TrueSolid plain = turned(0, 0, 0, false);
        for (double[] how : new double[][] {{30, 0, 0}, {0, 5000, -3000}, {137, 800, 900}}) {
            agree(plain, turned(how[0], how[1], how[2], false), 1e-8);
        }
        agree(plain, turned(0, 0, 0, true), 1e-8);
    }

    private static void agree(TrueSolid a, TrueSolid b, double share) {
        assertEquals(a.cut(), b.cut(), share * a.cut());
        assertEquals(a.fill(), b.fill(), share * a.fill());
        assertEquals(a.strip(), b.strip(), share * a.strip());
        assertEquals(a.stone(), b.stone(), share * a.stone());
        assertEquals(a.topsoilBack(), b.topsoilBack(), share * a.topsoilBack());
    }

    /** One lane on irregular ground, the whole world turned, shifted or mirrored. */
    private static TrueSolid turned(double degrees, double dx, double dy, boolean mirrored)
            throws DesignRefused {
        var random = new SplittableRandom(5);
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        double m = mirrored ? -1 : 1;
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < 900; i++) {
            double x = -50 + random.nextDouble(120);
            double y = -30 + random.nextDouble(160);
            double z = 20 + 0.05 * y + Math.sin(x / 9) + Math.cos(y / 13);
            points.add(at(m * (c * x - s * y) + dx, s * x + c * y + dy, z));
        }
        double[][] line = {{0, 0, 0}, {5, 50, 40}, {40, 100, 0}};
        double[] xyr = new double[9];
        for (int i = 0; i < 3; i++) {
            xyr[3 * i] = m * (c * line[i][0] - s * line[i][1]) + dx;
            xyr[3 * i + 1] = s * line[i][0] + c * line[i][1] + dy;
            xyr[3 * i + 2] = line[i][2];
        }
        var side = World.plain(0.6, 2);
        Alignment alignment = World.line(xyr);
        return World.solid(
                World.lane(
                        alignment,
                        World.grade(0, 23, 0, 50, 25, 20, alignment.length(), 28, 0),
                        World.stoned(Bed.ON_TOP, side, side)),
                World.of(points),
                0.15);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Level cuts 0, 5, 10, 15, 0 ft, base 20 ft, 1½:1, as prismoids: 52,500 ft³, 3,750 less"
                    + " than by end areas (EW-X2) | G. L. Vose, Handbook of Railroad Construction"
                    + " (1857), art. 108 (inputs; its total not seen) | derived")
    void levelCutsArePrismoids() throws DesignRefused {
        double foot = 0.3048;
        Ground ground = World.grid(-20, -10, 20, 75, 5, (x, y) -> 30);
        double[] depths = {0, 5, 10, 15, 0};
        double[] grade = new double[3 * depths.length];
        for (int i = 0; i < depths.length; i++) {
            grade[3 * i] = 50 * foot * i;
            grade[3 * i + 1] = 30 - depths[i] * foot;
        }
        TrueSolid solid =
                World.solid(
                        World.lane(
                                World.line(0, 0, 0, 0, 200 * foot, 0),
                                World.grade(grade),
                                World.bare(20 * foot, 0, World.plain(0, 1.5))),
                        ground,
                        0);
        double cubicFeet = solid.cut() / (foot * foot * foot);
        assertEquals(52_500, cubicFeet, 1);
        // C = L/12 (w1 - w2)(h1 - h2) of each span, the prismoidal correction of level sections
        assertEquals(56_250 - (3 * 312.5 + 2812.5), cubicFeet, 1);
        assertEquals(0, solid.fill(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "One fifth of an acre cut 4.5 ft deep: 1,452 yd³ (EW-G2) | forum homework answer,"
                    + " r/ConstructionManagers 1iilbip | read")
    void evenCutOfPartOfAnAcre() {
        double foot = 0.3048;
        double side = Math.sqrt(0.2 * 43_560) * foot;
        Overlay overlay = over(flat());
        square(overlay, side, -4.5 * foot);
        assertEquals(1452, overlay.cut / (27 * foot * foot * foot), 0.5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Topsoil of 1 in over 1,000 ft² is 3.09 yd³, of 4 in over an acre 538 yd³ | plain"
                    + " arithmetic, 27 ft³ to the yard | derived")
    void topsoilByDepth() {
        double foot = 0.3048;
        double[][] rows = {{1, 1000, 3.09, 0.005}, {4, 43_560, 538, 0.5}}; // in, ft², yd³
        for (double[] row : rows) {
            Ground ground = flat();
            Overlay overlay = new Overlay(ground, ground.constant(row[0] * foot / 12), null);
            overlay.under(SurfacePart.FILL_SLOPE, true);
            square(overlay, Math.sqrt(row[1]) * foot, 1);
            assertEquals(row[2], overlay.strip / (27 * foot * foot * foot), row[3]);
        }
    }

    private static void square(Overlay overlay, double side, double height) {
        double low = -20;
        double high = low + side;
        lay(overlay, at(low, low, height), at(high, low, height), at(high, high, height));
        lay(overlay, at(low, low, height), at(high, high, height), at(low, high, height));
    }
}
