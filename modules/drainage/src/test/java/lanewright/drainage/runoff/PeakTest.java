package lanewright.drainage.runoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.measure.Assumption;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PeakTest {

    private static final double ACRE = 4046.8564224;
    private static final double CFS = Math.pow(0.3048, 3);
    private static final double INCH = 0.0254;
    private static final double MILE2 = Math.pow(1609.344, 2);

    /** Printed answers leave out that an inch an hour on an acre is 1.00833 cubic feet a second. */
    private static final double DROPPED = 43560.0 / 43200;

    private static double cfs(double coefficient, double inchesAnHour, double acres) {
        return Rational.peak(coefficient, inchesAnHour * INCH / 3600, acres * ACRE) / CFS;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rational method, weighted coefficient | North Carolina state mine permit file, culvert"
                    + " C-1 | read")
    void woodsAndAGravelRoad() {
        double c =
                Rational.coefficient(
                        List.of(
                                new Rational.Part(0.20, 1.12 * ACRE),
                                new Rational.Part(0.70, 0.085 * ACRE)));
        assertEquals(0.2352697, c, 1e-6);
        assertEquals(2.00151, cfs(c, 7.06, 1.205) / DROPPED, 0.001);
        assertEquals(1.477035, cfs(c, 5.21, 1.205) / DROPPED, 0.0005);
        assertEquals(2.293515, cfs(c, 8.09, 1.205) / DROPPED, 0.0005);
    }

    @Test
    @Tag("outside")
    @DisplayName("rational method | worked answer to an exam question, 0.20 square miles | read")
    void aFifthOfASquareMile() {
        assertEquals(128, 0.20 * MILE2 / ACRE, 1e-9);
        assertEquals(146.944, cfs(0.4, 2.87, 128) / DROPPED, 0.001);
        assertEquals(148.169, cfs(0.4, 2.87, 128), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rational method, four return periods | Colorado mine permit, quarry drainage report,"
                    + " 1989, sub-basin D | read")
    void fourReturnPeriods() {
        assertEquals(1.47, cfs(0.05, 1.09, 27) / DROPPED, 0.01);
        assertEquals(3.97, cfs(0.10, 1.47, 27) / DROPPED, 0.01);
        assertEquals(9.22, cfs(0.20, 1.71, 27) / DROPPED, 0.02);
        assertEquals(28.87, cfs(0.40, 2.67, 27) / DROPPED, 0.05);
        // Volumes by the time of concentration, 57.35 min, although its head says one hour.
        double gathers = 57.35 * 60;
        double two = Rational.volume(cfs(0.05, 1.09, 27) / DROPPED * CFS, gathers) / CFS;
        double hundred = Rational.volume(cfs(0.40, 2.67, 27) / DROPPED * CFS, gathers) / CFS;
        assertEquals(5063, two, 5);
        assertEquals(99_351, hundred, 300);
        assertEquals(2.28, hundred / 43_560, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rational method, fifteen acres | a civil-engineering text on the web, example 1"
                    + " (inputs; answer derived) | derived")
    void fifteenAcres() {
        assertEquals(12.60, cfs(0.35, 2.4, 15) / DROPPED, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName("an inch an hour on an acre is 1.008333 cubic feet a second | its units | derived")
    void anInchAnHourOnAnAcre() {
        assertEquals(1.008333, cfs(1, 1, 1), 5e-7);
    }

    @Test
    @Tag("outside")
    @DisplayName("rational method, a basin in parts as in one | its own equation | derived")
    void partsTogetherAreTheWhole() {
        List<Rational.Part> parts =
                List.of(
                        new Rational.Part(0.15, 3100),
                        new Rational.Part(0.7, 420),
                        new Rational.Part(0.45, 980));
        double whole = Rational.peak(Rational.coefficient(parts), 2e-5, 4500);
        double summed =
                parts.stream()
                        .mapToDouble(part -> Rational.peak(part.coefficient(), 2e-5, part.area()))
                        .sum();
        assertEquals(summed, whole, 1e-15);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rational method | North Carolina erosion-control design course, slides 12.2020, five"
                    + " acres | read")
    void fiveAcres() {
        assertEquals(0.62, 3.10 / 5, 1e-15);
        assertEquals(21.6, cfs(3.10 / 5, 6.96, 5) / DROPPED, 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName("rational method in metres | C i A / 360 by its units | derived")
    void metric() {
        assertEquals(0.166667, Rational.peak(0.4, 0.060 / 3600, 25_000), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "graphical peak with ponds, metric | V. M. Ponce, Engineering Hydrology, example 5-9 |"
                    + " read")
    void fourSquareKilometres() {
        GraphicalPeak peak =
                GraphicalPeak.of(GraphicalPeak.Storm.II, 0.09, 74, 4e6, 1.5 * 3600, 0.01);
        assertEquals(0.198, peak.ratio(), 0.001);
        assertEquals(12.09, peak.discharge(), 0.05);
        // Not printed there, by its own formula: depth and unit peak.
        assertEquals(3.226, peak.runoff() * 100, 0.005);
        assertEquals(250.6, peak.unit() / GraphicalPeak.UNIT, 1);
        assertEquals(0.0043046, GraphicalPeak.UNIT * 1e6 / 100, 5e-7);
        assertEquals(0.87, GraphicalPeak.pondFactor(0.01), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName("graphical peak, 250 acres | SCS, TR-55, 1986, example 4-1 | from memory")
    void twoHundredAndFiftyAcres() {
        GraphicalPeak peak =
                GraphicalPeak.of(
                        GraphicalPeak.Storm.II, 6.0 * INCH, 75, 0.39 * MILE2, 1.53 * 3600, 0);
        assertEquals(0.667, CurveNumber.initial(75) / INCH, 0.001);
        assertEquals(0.11, peak.ratio(), 0.002);
        double printed =
                GraphicalPeak.discharge(270 * GraphicalPeak.UNIT, 0.39 * MILE2, 3.28 * INCH, 1);
        assertEquals(345, printed / CFS, 1);
        assertEquals(3.28, peak.runoff() / INCH, 0.005);
        assertEquals(345, peak.discharge() / CFS, 4);
        assertEquals(270, peak.unit() / GraphicalPeak.UNIT, 3);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "graphical peak by its parts | Colorado mine permits, worksheet 4, 2004, and culvert"
                    + " hand calculations | read")
    void unitTimesAreaTimesDepth() {
        double unit = GraphicalPeak.UNIT;
        assertEquals(0.667, CurveNumber.initial(75) / INCH, 0.001);
        assertEquals(0.445, CurveNumber.initial(75) / (1.5 * INCH), 0.001);
        assertEquals(0.165, CurveNumber.runoff(75, 1.5 * INCH) / INCH, 0.003);
        assertEquals(
                1.362,
                GraphicalPeak.discharge(430 * unit, 0.0192 * MILE2, 0.165 * INCH, 1) / CFS,
                0.002);
        // Culverts 2 and 4: 9 and 5 acres.
        assertEquals(0.014, 9 * ACRE / MILE2, 0.0001);
        assertEquals(
                6.4,
                GraphicalPeak.discharge(1000 * unit, 0.014 * MILE2, 0.46 * INCH, 1) / CFS,
                0.05);
        // It shows 0.01 square miles and works with 0.0078, as 5 acres are.
        assertEquals(
                3.6, GraphicalPeak.discharge(1000 * unit, 5 * ACRE, 0.46 * INCH, 1) / CFS, 0.02);
        assertEquals(300, Concentration.travel(750 * 0.3048, 2.5 * 0.3048), 1e-9);
        // The shortest time of the chart, 0.1 h, has about the 1000 of those calculations.
        GraphicalPeak quick =
                GraphicalPeak.of(GraphicalPeak.Storm.II, 4 * INCH, 90, 9 * ACRE, 360, 0);
        assertEquals(1000, quick.unit() / unit, 15);
    }

    @Test
    void aRatioBeyondThePublishedOnesIsHeldAndSaysSo() {
        assertTrue(GraphicalPeak.of(GraphicalPeak.Storm.II, 0.03, 70, 1e5, 900, 0).held());
        GraphicalPeak quick = GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1e5, 60, 0);
        GraphicalPeak least = GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1e5, 360, 0);
        assertEquals(least.discharge(), quick.discharge());
        assertTrue(quick.quick());
        assertFalse(least.quick());
    }

    @Test
    @Tag("outside")
    @DisplayName("peak that ponds leave, 0 to 5 % | SCS, TR-55, 1986, table 4-2 | from memory")
    void pondsTakeOffThePeak() {
        double[][] rows = {{0, 1}, {0.002, 0.97}, {0.01, 0.87}, {0.03, 0.75}, {0.05, 0.72}};
        for (double[] row : rows) {
            assertEquals(row[1], GraphicalPeak.pondFactor(row[0]), 1e-12);
        }
        assertEquals(0.81, GraphicalPeak.pondFactor(0.02), 1e-12);
    }

    /** Wrong digits in a table of curves would most likely break their order. */
    @Test
    void everyStormIsLessSharpWhereWaterIsSlowOrMuchIsHeldBack() {
        for (GraphicalPeak.Storm storm : GraphicalPeak.Storm.values()) {
            double before = Double.POSITIVE_INFINITY;
            for (double hours = 0.1; hours <= 10; hours *= 1.1) {
                double now = unit(storm, 80, hours);
                assertTrue(now < before, storm + " after " + hours + " h");
                assertTrue(unit(storm, 60, hours) < now, storm + " after " + hours + " h");
                before = now;
            }
        }
        for (double hours = 0.1; hours <= 1; hours *= 1.1) {
            double inland = unit(GraphicalPeak.Storm.II, 80, hours);
            double coast = unit(GraphicalPeak.Storm.III, 80, hours);
            double winter = unit(GraphicalPeak.Storm.I, 80, hours);
            double mild = unit(GraphicalPeak.Storm.IA, 80, hours);
            assertTrue(inland > coast && coast > winter && winter > mild, "after " + hours + " h");
        }
    }

    private static double unit(GraphicalPeak.Storm storm, double number, double hours) {
        return GraphicalPeak.of(storm, 4 * INCH, number, 1e5, hours * 3600, 0).unit();
    }

    @Test
    void rareStormsRaiseTheCoefficientButNeverOverOne() {
        assertEquals(0.3, Rational.rare(0.3, 10));
        assertEquals(0.33, Rational.rare(0.3, 25), 1e-12);
        assertEquals(1, Rational.rare(0.9, 100));
    }

    @Test
    void coversTellTheirFiguresWithTheirSource() {
        Cover pasture = new Cover("pasture, fair", SoilGroup.C);
        assertEquals(79, pasture.curveNumber().value());
        assertEquals(0.36, pasture.coefficient(0.07).value());
        assertTrue(pasture.curveNumber().source().contains("TR-55"));
        assertEquals(0.70, new Cover("gravel road", SoilGroup.A).coefficient(0.2).value());
        for (String name : Cover.names()) {
            for (SoilGroup group : SoilGroup.values()) {
                Cover cover = new Cover(name, group);
                assertTrue(cover.curveNumber().value() <= 100);
                assertTrue(cover.coefficient(0.01).value() <= cover.coefficient(0.5).value());
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "runoff coefficients by cover | North Carolina state mine permit file, culvert runoff"
                    + " sheet; open clay ground from a Colorado mine permit, 1989 | read")
    void coefficientsByCoverAlone() {
        assertEquals(0.20, Covers.coefficientAlone("woods", 0.5).value(), 1e-12);
        assertEquals(0.35, Covers.coefficientAlone("grassland", 0).value(), 1e-12);
        assertEquals(0.45, Covers.coefficientAlone("bare sandy soil, level", 1).value(), 1e-12);
        assertEquals(0.50, Covers.coefficientAlone("bare soil, sloping", 1).value(), 1e-12);
        assertEquals(0.70, Covers.coefficientAlone("gravel road", 1).value(), 1e-12);
        assertEquals(0.90, Covers.coefficientAlone("paved road", 1).value(), 1e-12);
        assertEquals(
                0.20, Covers.coefficientAlone("open ground on clay, 10 years", 1).value(), 1e-12);
    }

    @Test
    void assumptionsNameTheRowThatTheyRestOn() {
        Cover pasture = new Cover("pasture, fair", SoilGroup.C);
        Covers.Assumed number = Covers.curveNumber(pasture);
        assertEquals(79, number.value());
        assertEquals(
                "curve number 79, pasture, fair on soil of group C",
                number.assumption().value().pattern());
        assertTrue(number.assumption().source().contains("table 2-2, 1986 (from memory)"));
        assertEquals(Assumption.Mark.PUBLISHED, number.assumption().mark());
        Covers.Assumed part = Covers.coefficient(pasture, 0.07);
        assertEquals(pasture.coefficient(0.07).value(), part.value());
        assertEquals(
                "coefficient 0.36, pasture, fair on soil of group C",
                part.assumption().value().pattern());
        assertEquals(0.125, Covers.coefficientAlone("lawn on sandy soil", 0.5).value(), 1e-12);
        for (String name : Covers.namedAlone()) {
            double low = Covers.coefficientAlone(name, 0).value();
            double high = Covers.coefficientAlone(name, 1).value();
            assertTrue(low > 0 && low <= high && high <= 1, name);
        }
    }

    /** What a permit once took for the intensity of a "1 day storm": it cannot happen here. */
    @Test
    void theDepthOfADayIsNoIntensity() {
        DesignRain day = DesignRain.ofDayDepth(7.06 * INCH, 10);
        assertEquals(7.06 * INCH, day.dayDepth(10));
        for (double duration : new double[] {300, 3600, 86_400}) {
            IllegalArgumentException told =
                    assertThrows(IllegalArgumentException.class, () -> day.intensity(duration, 10));
            assertTrue(told.getMessage().contains("; give rows of 5 minutes"), told.getMessage());
        }
        for (Runnable wrong :
                List.<Runnable>of(
                        () -> DesignRain.ofDayDepth(0, 10),
                        () -> DesignRain.ofDayDepth(-0.1, 10),
                        () -> DesignRain.ofDayDepth(0.1, 0),
                        () -> day.dayDepth(25),
                        () -> day.depth(3600, 10))) {
            assertThrows(IllegalArgumentException.class, wrong::run);
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        for (Runnable wrong :
                List.<Runnable>of(
                        () -> Rational.peak(-0.1, 1e-5, 1),
                        () -> Rational.peak(1.1, 1e-5, 1),
                        () -> Rational.peak(0.5, 0, 1),
                        () -> Rational.peak(0.5, 1e-5, 0),
                        // A depth of rain, not an intensity.
                        () -> Rational.peak(0.5, 0.1, 1),
                        () -> Rational.coefficient(List.of()),
                        () -> new Rational.Part(0.5, -1),
                        () -> new Rational.Part(Double.NaN, 1),
                        () -> Rational.rare(0.5, 0),
                        () -> Rational.volume(-1, 60),
                        () -> Rational.volume(1, 0),
                        () -> GraphicalPeak.discharge(1, 1, 1, 0),
                        () -> GraphicalPeak.discharge(0, 1, 1, 1),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 0, 600, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1, 0, 0),
                        () -> GraphicalPeak.pondFactor(-0.01),
                        () -> new Cover("meadow", SoilGroup.A).coefficient(-0.1),
                        () -> Covers.coefficientAlone("wood", 1),
                        () -> Covers.coefficientAlone("woods", 1.1),
                        () -> Covers.sheetRoughness("dense gras"),
                        () -> Covers.retardance("pastur"),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0, 75, 1, 600, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 101, 1, 600, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1, 40_000, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1, 600, 0.1),
                        () -> new Cover("pasture, fare", SoilGroup.A))) {
            assertThrows(IllegalArgumentException.class, wrong::run);
        }
    }
}
