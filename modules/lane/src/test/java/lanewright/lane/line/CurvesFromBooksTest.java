package lanewright.lane.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.measure.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of simple curves. Their units are kept: an alignment does not mind whether a
 * length is feet or metres. Angles turn right unless the source says otherwise.
 */
class CurvesFromBooksTest {

    /** Two tangents that meet at station {@code pi}, the second long enough. */
    private static Alignment curve(double pi, double degrees, double radius) throws DesignRefused {
        double turn = Math.toRadians(degrees);
        return Alignment.of(
                List.of(
                        new IntersectionPoint(0, 0, 0),
                        new IntersectionPoint(0, pi, radius),
                        new IntersectionPoint(
                                2000 * Math.sin(turn), pi + 2000 * Math.cos(turn), 0)));
    }

    private static double degrees(double d, double m, double s) {
        return d + m / 60 + s / 3600;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Elements of a simple curve, R = 500 ft, Δ = 55° | J. Mahun, Open Access Surveying"
                    + " Library, VIII Curves, ch. C, examples 2.d and 3.c | read")
    void elementsFromRadiusAndAngle() throws DesignRefused {
        Alignment line = curve(2500, 55, 500);
        Arc arc = line.arcs().get(0);
        assertEquals(479.965, arc.length(), 0.001);
        assertEquals(260.284, arc.tangent(), 0.001);
        assertEquals(461.749, arc.chord(), 0.001);
        assertEquals(63.691, arc.external(), 0.001);
        assertEquals(56.494, arc.middleOrdinate(), 0.001);
        assertEquals(2239.716, arc.from(), 0.001);
        assertEquals(2719.681, arc.to(), 0.002);
        assertEquals(degrees(11, 27, 33), Math.toDegrees(100 * line.curvature(2400)), 0.1 / 3600);
        double[][] layout = {
            {2300, degrees(3, 27, 14.4), 60.247},
            {2400, degrees(9, 11, 0.9), 159.598},
            {2500, degrees(14, 54, 47.3), 257.355},
            {2600, degrees(20, 38, 33.8), 352.540},
            {2700, degrees(26, 22, 20.3), 444.202}
        };
        for (double[] row : layout) {
            assertEquals(row[1], Math.toDegrees(arc.deflectionTo(row[0])), 1.0 / 3600);
            assertEquals(row[2], arc.chordTo(row[0]), 0.002);
            double dx = line.x(row[0]) - line.x(arc.from());
            double dy = line.y(row[0]) - line.y(arc.from());
            assertEquals(row[2], Math.hypot(dx, dy), 0.002, "chord between points on the line");
            assertEquals(row[1], Math.toDegrees(Math.atan2(dx, dy)), 1.0 / 3600);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Chord-definition curve, I = 45°, D = 15° | FM 5-233 Construction Surveying (US Army,"
                    + " 1985), ch. 3 sec. I | from memory")
    void chordDefinition() throws DesignRefused {
        double radius = 50 / Math.sin(Math.toRadians(7.5));
        assertEquals(383.06, radius, 0.01);
        Arc arc = curve(1800, 45, radius).arcs().get(0);
        assertEquals(158.67, arc.tangent(), 0.01);
        assertEquals(31.56, arc.external(), 0.01);
        assertEquals(29.16, arc.middleOrdinate(), 0.01);
        assertEquals(293.18, arc.chord(), 0.01);
        assertEquals(1641.33, arc.from(), 0.01);
        assertEquals(8.67, 1650 - arc.from(), 0.01);
        assertEquals(39 + 1.0 / 60, 0.3 * (1650 - arc.from()) * 15, 1.0 / 60);
        assertEquals(0.86, arc.length() - 300, 0.01, "arc from PC to PT less its chords");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Accumulated deflections, PC 18+07.80, PT 23+07.80, D = 15° | NAVEDTRA 14070/14071, ch."
                    + " 11 | read")
    void accumulatedDeflections() throws DesignRefused {
        double radius = 5729.58 / 15;
        double tangent = radius * Math.tan(Math.toRadians(37.5));
        Arc arc = curve(1807.80 + tangent, 75, radius).arcs().get(0);
        assertEquals(1807.80, arc.from(), 0.001);
        assertEquals(2307.80, arc.to(), 0.001);
        double first = Math.toDegrees(arc.deflectionTo(1850));
        double full = Math.toDegrees(arc.deflectionTo(1900) - arc.deflectionTo(1850));
        double last = Math.toDegrees(arc.deflectionTo(arc.to()) - arc.deflectionTo(2300));
        assertEquals(degrees(3, 45, 0), full, 1.0 / 3600);
        assertEquals(degrees(3, 9, 54), first, 1.0 / 3600);
        assertEquals(degrees(0, 35, 6), last, 1.0 / 3600);
        assertEquals(37.5, Math.toDegrees(arc.deflectionTo(arc.to())), 1.0 / 3600);
        assertEquals(49.964, 2 * radius * Math.sin(Math.toRadians(full)), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Lane-sized metric curve, R = 30 m, Δ = 60° | class note \"Curve by Rankine\","
                    + " truengineers.blogspot.com, June 2011 | read")
    void laneSizedCurve() throws DesignRefused {
        Arc arc = curve(30, 60, 30).arcs().get(0);
        assertEquals(17.32, arc.tangent(), 0.005);
        assertEquals(31.41, arc.length(), 0.01);
        assertEquals(12.68, arc.from(), 0.005);
        assertEquals(44.095, arc.to(), 0.01);
        double first = Math.toDegrees(arc.deflectionTo(20));
        double second = Math.toDegrees(arc.deflectionTo(40)) - first;
        double third = Math.toDegrees(arc.deflectionTo(arc.to())) - first - second;
        assertEquals(degrees(6, 59, 20), first, 10.0 / 3600);
        assertEquals(degrees(19, 6, 0), second, 10.0 / 3600);
        assertEquals(degrees(3, 54, 20), third, 20.0 / 3600);
        assertEquals(30, first + second + third, 30.0 / 3600);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Compound curve of 600 and 400 ft, 45° and 20° | solved homework 1004689,"
                    + " homeworksource.com | read")
    void compoundCurve() throws DesignRefused {
        double t1 = 600 * Math.tan(Math.toRadians(22.5));
        double t2 = 400 * Math.tan(Math.toRadians(10));
        double a = Math.toRadians(45);
        double b = Math.toRadians(65);
        double x1 = (t1 + t2) * Math.sin(a);
        double y1 = 1000 + (t1 + t2) * Math.cos(a);
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 1000, 600),
                                new IntersectionPoint(x1, y1, 400),
                                new IntersectionPoint(
                                        x1 + 500 * Math.sin(b), y1 + 500 * Math.cos(b), 0)));
        Arc first = line.arcs().get(0);
        Arc second = line.arcs().get(1);
        assertEquals(248.52, first.tangent(), 0.02);
        assertEquals(70.53, second.tangent(), 0.01);
        assertEquals(471.239, first.length(), 0.01);
        assertEquals(139.626, second.length(), 0.01);
        assertEquals(first.to(), second.from(), 1e-9, "no straight between");
        // Whole curve: where its outer tangents meet, by the source's T1 and T2.
        double wholeT1 = 368.92;
        double wholeT2 = 319.45;
        double vertex = 1000 - first.tangent() + wholeT1;
        double endX = wholeT2 * Math.sin(b);
        double endY = vertex + wholeT2 * Math.cos(b);
        assertEquals(endX, line.x(second.to()), 0.03);
        assertEquals(endY, line.y(second.to()), 0.03);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Curve from D = 8° (arc) and bearings of tangents | student solution sheet,"
                    + " scribd.com/document/338936993, first curve | read")
    void degreeAndBearings() throws DesignRefused {
        double radius = 18000 / (Math.PI * 8);
        assertEquals(716.20, radius, 0.01);
        double in = Math.toRadians(53.5);
        double out = Math.toRadians(79);
        double x = 1250 * Math.sin(in);
        double y = 1250 * Math.cos(in);
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(x, y, radius),
                                new IntersectionPoint(
                                        x + 650 * Math.sin(out), y + 650 * Math.cos(out), 0)));
        Arc arc = line.arcs().get(0);
        assertEquals(25.5, Math.toDegrees(arc.deflection()), 1.0 / 3600);
        assertEquals(162.06, arc.tangent(), 0.01);
        assertEquals(318.75, arc.length(), 0.01);
        assertEquals(1087.94, arc.from(), 0.01);
        assertEquals(1406.69, arc.to(), 0.01);
        assertEquals(53.5, Math.toDegrees(line.azimuth(500)), 1e-9);
        assertEquals(79, Math.toDegrees(line.azimuth(1500)), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A second curve whose tangent overlaps the first by 420 ft is refused | the same sheet,"
                    + " second curve: the sheet is wrong | read")
    void overlappingTangentsAreRefused() {
        double radius = 18000 / (Math.PI * 8);
        double in = Math.toRadians(53.5);
        double out = Math.toRadians(79);
        double after = out + Math.toRadians(103.5);
        double x = 1250 * Math.sin(in);
        double y = 1250 * Math.cos(in);
        double x2 = x + 650 * Math.sin(out);
        double y2 = y + 650 * Math.cos(out);
        DesignRefused refused =
                assertThrows(
                        DesignRefused.class,
                        () ->
                                Alignment.of(
                                        List.of(
                                                new IntersectionPoint(0, 0, 0),
                                                new IntersectionPoint(x, y, radius),
                                                new IntersectionPoint(x2, y2, radius),
                                                new IntersectionPoint(
                                                        x2 + 2000 * Math.sin(after),
                                                        y2 + 2000 * Math.cos(after),
                                                        0))));
        assertEquals(1, refused.findings().size());
        var finding = refused.findings().get(0);
        assertEquals("curves-overlap", finding.code());
        assertEquals(908.50, finding.measured().value(), 0.1);
        assertEquals(487.94, finding.limit().value(), 0.01);
        assertEquals(420, finding.measured().value() - finding.limit().value(), 1);
        String remedy = finding.remedy().in(UnitSystem.METRIC);
        // The largest that fits is 716.20 × 487.94 / 908.50 = 384.66; a hundredth less is proposed.
        assertTrue(remedy.contains("point 3") && remedy.contains("381"), remedy);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Reverse curve between lines 72 ft apart | question 853346, justaaa.com (inputs; answer"
                    + " derived) | derived")
    void reverseCurve() throws DesignRefused {
        double turn = Math.asin(72.0 / 500);
        double radius = 250 / Math.tan(turn / 2);
        assertEquals(degrees(8, 16, 46), Math.toDegrees(turn), 1.0 / 3600);
        assertEquals(3454.13, radius, 0.05);
        double y2 = 2345.67 + 500 * Math.cos(turn);
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 2345.67, radius),
                                new IntersectionPoint(72, y2, radius),
                                new IntersectionPoint(72, y2 + 1000, 0)));
        Arc right = line.arcs().get(0);
        Arc left = line.arcs().get(1);
        assertEquals(499.13, right.length(), 0.02);
        assertEquals(499.13, left.length(), 0.02);
        assertEquals(2594.80, right.to(), 0.02);
        assertEquals(3093.93, left.to(), 0.04);
        assertTrue(line.curvature(right.from() + 1) > 0 && line.curvature(left.from() + 1) < 0);
        assertEquals(72, line.x(left.to() + 10), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("Identities of any circular curve | plane geometry | derived")
    void identitiesOfAnyCurve() throws DesignRefused {
        for (double degrees : new double[] {3, 40, 90, 137, 170}) {
            Arc arc = curve(500, degrees, 25).arcs().get(0);
            double half = Math.toRadians(degrees) / 2;
            assertEquals(arc.tangent() * Math.tan(half / 2), arc.external(), 1e-9);
            assertEquals(arc.external() * Math.cos(half), arc.middleOrdinate(), 1e-9);
            assertEquals(2 * arc.tangent() * Math.cos(half), arc.chord(), 1e-9);
            assertEquals(half, arc.deflectionTo(arc.to()), 1e-12);
        }
    }
}
