package lanewright.drainage.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Manning, critical depth, shear and check dams against printed figures. */
class ChannelTest {

    private static final double FT = 0.3048;
    private static final double CFS = FT * FT * FT;
    private static final double PSF = 47.88025898;

    /** Roughness with which our constant 1 gives what the printed one gives in feet. */
    private static double n(double printed, double constant) {
        return printed * Math.pow(FT, -1.0 / 3) / constant;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Triangular road ditch by trial velocity | US Army subcourse EN5465, Drainage, chapter"
                    + " 4 | read")
    void triangularRoadDitch() {
        ChannelShape ditch = ChannelShape.triangle(3);
        double depth = 1.6 * FT;
        assertEquals(7.68, ditch.area(depth) / (FT * FT), 0.005);
        assertEquals(0.76, ditch.hydraulicRadius(depth) / FT, 0.005);
        assertEquals(27.6, 3.6 * FT * ditch.area(depth) / CFS, 0.06);
        assertEquals(1.6, Manning.normalDepth(ditch, 27 * CFS, 0.024, 0.005) / FT, 0.03);
        // The course takes a depth whose flow lies within 5 % of 27.0: 25.65 to 28.35.
        double carried = Manning.discharge(ditch, depth, 0.0243, 0.005) / CFS;
        assertTrue(carried >= 25.65 && carried <= 28.35, "carried " + carried);
        assertEquals(3.6, Manning.velocity(ditch, depth, 0.0243, 0.005) / FT, 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Steep lined trapezoid, capacity | Colorado mine permit, channel capacity sheet"
                    + " 1452456 page 72 | read")
    void steepTrapezoid() {
        ChannelShape liner = ChannelShape.trapezoid(1.12 * FT, 1.3);
        double depth = 0.4 * FT;
        assertEquals(0.66, liner.area(depth) / (FT * FT), 0.005);
        assertEquals(2.43, liner.wettedPerimeter(depth) / FT, 0.005);
        assertEquals(0.27, liner.hydraulicRadius(depth) / FT, 0.003);
        assertEquals(14.14, Manning.velocity(liner, depth, n(0.022, 1.49), 0.25) / FT, 0.02);
        assertEquals(9.27, Manning.discharge(liner, depth, n(0.022, 1.49), 0.25) / CFS, 0.02);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Road ditch between two culverts: depth, width, velocity, Froude number | Colorado mine"
                    + " permit 2022, sheet 1391168 page 19 | read")
    void roadDitchBetweenCulverts() {
        ChannelShape ditch = ChannelShape.triangle(1.5);
        Lining shale = Lining.named("shale or hardpan");
        Lining.Flow flow = shale.flow(ditch, 15.53 * CFS, 0.07);
        assertEquals(1.06, flow.depth() / FT, 0.01);
        assertEquals(3.19, ditch.topWidth(flow.depth()) / FT, 0.01);
        assertEquals(9.16, flow.velocity() / FT, 0.03);
        assertEquals(1.7, ditch.area(flow.depth()) / (FT * FT), 0.01);
        assertEquals(0.442, ditch.hydraulicRadius(flow.depth()) / FT, 0.002);
        assertEquals(2.21, flow.froude(), 0.01);
        // The sheet gives its own limit of 6.0 ft/s and no warning; 9.16 is over it.
        assertEquals(6.0, shale.velocity().orElseThrow() / FT, 1e-12);
        assertFalse(flow.holds());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Rectangle at a given depth, metric | Ponce, CIVE 530 midterm 2 answer, spring 2007 |"
                    + " read")
    void rectangle() {
        ChannelShape flume = ChannelShape.rectangle(5);
        assertEquals(0.606, flume.hydraulicRadius(0.8), 0.001);
        assertEquals(2.387, Manning.velocity(flume, 0.8, 0.015, 0.0025), 0.003);
        assertEquals(9.548, Manning.discharge(flume, 0.8, 0.015, 0.0025), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Normal depth of a wide rectangle | R package rivr, manual, normal_depth, first example"
                    + " | read")
    void normalDepth() {
        double depth =
                Manning.normalDepth(
                        ChannelShape.rectangle(100 * FT), 250 * CFS, n(0.045, 1.486), 0.001);
        assertEquals(1.711301, depth / FT, 1e-5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Trapezoid flow, rectangle roughness, triangle depth | R package hydraulics, manual,"
                    + " manningt | read")
    void manningt() {
        assertEquals(
                22.2, Manning.discharge(ChannelShape.trapezoid(3, 2), 1.83, 0.013, 0.0005), 0.05);
        assertEquals(
                14.56,
                Manning.discharge(ChannelShape.rectangle(4 * FT), 2 * FT, 0.01633, 0.0004) / CFS,
                0.02);
        assertEquals(0.6, Manning.normalDepth(ChannelShape.triangle(1), 1.0, 0.011, 0.0065), 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Critical depth and Froude number of a trapezoid | homework answer page, question"
                    + " 962433 (low authority) | read")
    void criticalTrapezoid() {
        ChannelShape shape = ChannelShape.trapezoid(4, 1.5);
        assertEquals(1.96, Critical.depth(shape, 50), 0.005);
        assertEquals(0.4469, Critical.froude(shape, 3, 50), 0.0002);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Triangle carrying 100 gal/min, our right value | homework answer page 904982, whose"
                    + " printed 0.3614 ft is wrong | derived")
    void triangleInFeet() {
        // Printed is 0.3614 ft: feet put into the formula with the metric constant 1. With 1.486,
        // the constant for feet, it is 0.3115 ft.
        double flow = 100 * 231 * Math.pow(Imperial.INCH, 3) / 60;
        assertEquals(0.2228, flow / CFS, 0.0001);
        double depth = Manning.normalDepth(ChannelShape.triangle(2), flow, 0.011, 0.001);
        assertEquals(0.3115, depth / FT, 0.0002);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Velocity and shear in three diversion ditches | North Carolina mine permit 5889,"
                    + " lining table | read")
    void diversionDitches() {
        double[][] ditches = {
            {22.2, 8, 3, 0.005, 0.70, 3.14, 0.22},
            {25.1, 8, 3, 0.026, 0.47, 5.69, 0.76},
            {13.5, 12, 6, 0.027, 0.60, 1.45, 1.01}
        };
        for (double[] ditch : ditches) {
            ChannelShape shape = ChannelShape.trapezoid(ditch[1] * FT, ditch[2]);
            double depth = ditch[4] * FT;
            assertEquals(ditch[5], ditch[0] * CFS / shape.area(depth) / FT, 0.03);
            assertEquals(ditch[6], Shear.onBed(depth, ditch[3]) / PSF, 0.01);
        }
        // Taken there: grass held to 4.5 ft/s in the first, 6-in riprap to 2 lb/ft² in the others.
        assertTrue(Lining.named("grass class D").bears(3.14 * FT, 0.22 * PSF));
        assertTrue(Lining.named("riprap of 6 in").bears(5.69 * FT, 1.01 * PSF));
        assertFalse(Lining.named("grass class D").bears(4.6 * FT, 0.22 * PSF));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Check dams on a 5 % ditch 100 ft apart, with level pools 60 ft | US Army subcourse"
                    + " EN5465, Drainage, chapter 4 | read")
    void checkDams() {
        CheckDams dams = CheckDams.of(3 * FT, 0.05, 0.02);
        assertEquals(100, dams.spacing() / FT, 0.01);
        assertFalse(dams.tooClose());
        assertEquals(60, CheckDams.of(3 * FT, 0.05, 0).spacing() / FT, 0.01);
        assertTrue(CheckDams.of(2 * FT, 0.07, 0.02).tooClose());
    }

    @Test
    @Tag("outside")
    @DisplayName("Triangle: normal and critical depth, critical slope | closed forms | derived")
    void triangleInClosedForm() {
        ChannelShape ditch = ChannelShape.triangle(3);
        double flow = 10 * CFS;
        assertEquals(0.9121, Manning.normalDepth(ditch, flow, n(0.03, 1.486), 0.02) / FT, 0.00005);
        double critical = Critical.depth(ditch, flow);
        assertEquals(0.9287, critical / FT, 0.00005);
        assertEquals(
                Math.pow(2 * flow * flow / (9.80665 * 9), 0.2), critical, 1e-10, "closed form");
        assertEquals(1.25 * critical, Critical.energy(ditch, flow), 1e-9);
        assertEquals(0.01817, Critical.slope(ditch, flow, n(0.03, 1.486)), 0.00001);
        assertEquals(1, Critical.froude(ditch, critical, flow), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("Rectangle: critical depth and its energy | closed forms | derived")
    void rectangleInClosedForm() {
        ChannelShape flume = ChannelShape.rectangle(FT);
        double critical = Critical.depth(flume, 8 * CFS);
        assertEquals(1.2576, critical / FT, 0.00005);
        assertEquals(1.5 * critical, Critical.energy(flume, 8 * CFS), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("Best trapezoid has R = y/2, at 60° half a hexagon | closed forms | derived")
    void bestTrapezoid() {
        for (double side : new double[] {0, 0.5, 1, 2, 3}) {
            double bottom = 2 * (Math.hypot(1, side) - side);
            assertEquals(0.5, ChannelShape.trapezoid(bottom, side).hydraulicRadius(1), 1e-12);
        }
        double side = 1 / Math.sqrt(3);
        double bottom = 2 * (Math.hypot(1, side) - side);
        assertEquals(bottom, Math.hypot(1, side), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName("Shear, and how flow grows with slope, roughness, depth | identities | derived")
    void scaling() {
        assertEquals(2.9952, Shear.onBed(1.2 * FT, 0.04) / PSF, 1e-6);
        ChannelShape ditch = new ChannelShape(0, 2, 5);
        double flow = Manning.discharge(ditch, 0.3, 0.03, 0.01);
        assertEquals(2 * flow, Manning.discharge(ditch, 0.3, 0.03, 0.04), 1e-12);
        assertEquals(2 * flow, Manning.discharge(ditch, 0.3, 0.015, 0.01), 1e-12);
        assertEquals(6.3496 * flow, Manning.discharge(ditch, 0.6, 0.03, 0.01), 1e-5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Riprap by D50 = SF d S / (F* (SG - 1)) at both ends of F* | FHWA HEC-15, 2005, chapter"
                    + " 6 | from memory")
    void riprap() {
        // d 1 ft, S 0.05, SF 1, F* 0.047, 165 lb/ft³: 0.05 / (0.047 · 1.6442) = 0.6470 ft.
        double size = Shear.stone(FT, 0.05, 1, 0.047, 165 / 62.4);
        assertEquals(0.6470, size / FT, 0.0001);
        assertEquals(0.2027, Shear.stone(FT, 0.05, 1, 0.15, 165 / 62.4) / FT, 0.0001);
        double between = Shear.stone(FT, 0.05, 1);
        assertTrue(between <= size && between >= 0.2027 * FT);
        // A trickle has a low Reynolds number and takes the large stone.
        assertEquals(
                Shear.stone(0.02, 0.05, 1, 0.047, 165 / 62.4), Shear.stone(0.02, 0.05, 1), 1e-9);
    }
}
