package lanewright.drainage.runoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rational method | North Carolina erosion-control design course, slides 12.2020, five"
                    + " acres | read")
    void fiveAcres() {
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
    }

    @Test
    @Tag("outside")
    @DisplayName("graphical peak, 250 acres | SCS, TR-55, 1986, example 4-1 | from memory")
    void twoHundredAndFiftyAcres() {
        GraphicalPeak peak =
                GraphicalPeak.of(
                        GraphicalPeak.Storm.II, 6.0 * INCH, 75, 0.39 * MILE2, 1.53 * 3600, 0);
        assertEquals(3.28, peak.runoff() / INCH, 0.005);
        assertEquals(345, peak.discharge() / CFS, 4);
        assertEquals(270, peak.unit() / (CFS / (MILE2 * INCH)), 3);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "graphical peak by its parts | Colorado mine permits, worksheet 4, 2004, and culvert"
                    + " hand calculations | read")
    void unitTimesAreaTimesDepth() {
        // qp = qu Am Q by hand there; the units of ours are turned the same way.
        double unit = CFS / (MILE2 * INCH);
        assertEquals(1.362, 430 * unit * 0.0192 * MILE2 * 0.165 * INCH / CFS, 0.002);
        assertEquals(6.4, 1000 * unit * 0.014 * MILE2 * 0.46 * INCH / CFS, 0.05);
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
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0, 75, 1, 600, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 101, 1, 600, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1, 40_000, 0),
                        () -> GraphicalPeak.of(GraphicalPeak.Storm.II, 0.1, 75, 1, 600, 0.1),
                        () -> new Cover("pasture, fare", SoilGroup.A))) {
            assertThrows(IllegalArgumentException.class, wrong::run);
        }
    }
}
