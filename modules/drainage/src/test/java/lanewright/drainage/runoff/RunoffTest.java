package lanewright.drainage.runoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.measure.Row;
import lanewright.measure.Tables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RunoffTest {

    private static final double INCH = 0.0254;

    private static double inches(double number, double rain) {
        return CurveNumber.runoff(number, rain * INCH) / INCH;
    }

    @Test
    @Tag("outside")
    @DisplayName("depth that runs off, CN 80 | worked answer of a question page | read")
    void eightInches() {
        assertEquals(2.5, CurveNumber.retention(80) / INCH, 1e-9);
        assertEquals(5.625, inches(80, 8), 0.001);
    }

    @Test
    @Tag("outside")
    @DisplayName("depth that runs off 3 in of rain | SCS, TR-55, 1986, table 2-1 | from memory")
    void threeInches() {
        double[][] rows = {
            {50, 0.09},
            {55, 0.19},
            {60, 0.33},
            {65, 0.51},
            {70, 0.71},
            {75, 0.96},
            {80, 1.25},
            {85, 1.59},
            {90, 1.98},
            {95, 2.45},
            {98, 2.77}
        };
        for (double[] row : rows) {
            assertEquals(row[1], inches(row[0], 3), 0.005, "CN " + row[0]);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "running depth that runs off, CN 88 | Colorado Water Conservation Board file, design"
                    + " storm table | read")
    void aRunningTotal() {
        double[][] rows = {
            {0.66, 0.08},
            {1.01, 0.28},
            {1.43, 0.55},
            {2.15, 1.1},
            {3.05, 1.9},
            {5.25, 3.9},
            {9.37, 7.85}
        };
        for (double[] row : rows) {
            assertEquals(row[1], inches(88, row[0]), 0.065, "after " + row[0] + " in");
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "depth that runs off 1.1 in | Colorado mine permit, ditch calculations, 1987; its second"
                    + " line repeats CN 87 and has the answer of CN 80 | read")
    void aSmallStorm() {
        assertEquals(0.28, inches(87, 1.1), 0.005);
        assertEquals(0.12, inches(80, 1.1), 0.005);
        assertEquals(0.05, inches(75, 1.1), 0.005);
    }

    @Test
    @Tag("outside")
    @DisplayName("limits of the curve number method | its own equation | derived")
    void limits() {
        assertEquals(3.7, inches(100, 3.7), 1e-12);
        assertEquals(0, inches(60, 1.3));
        assertEquals(3.9889, 1000 - inches(75, 1000), 5e-5);
        assertEquals(41.1371, CurveNumber.runoff(75, 0.100) * 1000, 5e-5);
        List<CurveNumber.Part> halves =
                List.of(new CurveNumber.Part(50, 1), new CurveNumber.Part(98, 1));
        assertEquals(0.9082, inches(74, 3), 5e-5);
        assertEquals(1.4296, CurveNumber.runoff(halves, 3 * INCH) / INCH, 5e-5);
        assertEquals(1.61957, inches(75, 100 / 25.4), 5e-6);
        assertEquals(1.3333, CurveNumber.initial(60) / INCH, 5e-5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "curve numbers of dry and of soaked ground | NRCS, NEH 630, chapter 10, 2004, table"
                    + " 10-1, which the forms follow within 2 | from memory")
    void dryAndSoakedGroundByTheTable() {
        double[][] rows = {{60, 40, 78}, {70, 51, 85}, {75, 57, 88}, {80, 63, 91}, {90, 78, 96}};
        for (double[] row : rows) {
            assertEquals(row[1], CurveNumber.dry(row[0]), 2, "dry " + row[0]);
            assertEquals(row[2], CurveNumber.wet(row[0]), 2, "soaked " + row[0]);
        }
    }

    @Test
    void dryAndSoakedGroundLieOnBothSides() {
        assertTrue(CurveNumber.dry(75) < 75 && CurveNumber.wet(75) > 75);
        assertEquals(100, CurveNumber.wet(100), 1e-9);
        assertEquals(100, CurveNumber.dry(100), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "water soaking in, silty clay | worked Green-Ampt table of a student's sheet | read")
    void siltyClay() {
        assertEquals(0.23265, 0.423 * 0.55, 1e-6);
        assertEquals(0.23265, GreenAmpt.of("silty clay", 0.45).deficit(), 1e-6);
        assertEquals(0.264, GreenAmpt.of("silty clay", 0.45).soaked(360) * 100, 0.0005);
        var soil = new GreenAmpt(0.05e-2 / 3600, 0.2922, 0.423 * 0.55);
        assertEquals(0.264, soil.soaked(360) * 100, 0.0005);
        assertEquals(1.337144, soil.rate(360) * 100 * 3600, 1e-5);
        assertEquals(0.375, soil.soaked(720) * 100, 0.0005);
        assertEquals(0.955379, soil.rate(720) * 100 * 3600, 2e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "water soaking in, silt loam | Chow, Maidment and Mays, Applied Hydrology, 1988, example"
                    + " 4.3.1 | from memory")
    void siltLoam() {
        var soil = new GreenAmpt(0.65e-2 / 3600, 0.167, 0.486 * 0.7);
        assertEquals(0.34, soil.deficit(), 0.0005);
        assertEquals(3.17, soil.soaked(3600) * 100, 0.005);
        // The table has 16.68 cm where the book has 16.7.
        assertEquals(3.17, GreenAmpt.of("silt loam", 0.3).soaked(3600) * 100, 0.006);
        assertEquals(1.81, soil.rate(3600) * 100 * 3600, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "deepest pool that soaks away in 72 hours | a county's stormwater course, d = f t |"
                    + " read")
    void aPoolSoaksAway() {
        assertEquals(72 * 3600, GreenAmpt.stands(36 * INCH, 0.5 * INCH / 3600), 1e-6);
        assertEquals(72 * 3600, GreenAmpt.stands(4.32 * INCH, 0.06 * INCH / 3600), 1e-6);
        assertEquals(23.077 * 3600, GreenAmpt.stands(0.30, 0.013 / 3600), 2);
        assertEquals(36 * INCH, GreenAmpt.deepest(0.5 * INCH / 3600, 72 * 3600), 1e-12);
        assertEquals(4.32 * INCH, GreenAmpt.deepest(0.06 * INCH / 3600, 72 * 3600), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "deepest pool over stone, 19.2 and 38.4 times the rate by the hour | wiki of a Toronto"
                    + " stormwater program, 48 and 96 h at 0.4 voids | read")
    void aPoolOverStone() {
        // The wiki times the depth by the voids, which errs to the safe side: stone of 0.4 voids
        // that empties in 48 h could be 48 / 0.4 = 120 hourly rates deep.
        double hourly = 0.013 / 3600;
        assertEquals(19.2 * 0.013, 0.4 * GreenAmpt.deepest(hourly, 48 * 3600), 1e-12);
        assertEquals(38.4 * 0.013, 0.4 * GreenAmpt.deepest(hourly, 96 * 3600), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "water soaked in fits the equation it is solved from, every soil, a second to ten days |"
                    + " Green and Ampt, 1911 | derived")
    void everySoilFitsItsEquation() {
        for (Row row : Tables.read("green-ampt-soils").rows()) {
            GreenAmpt soil = GreenAmpt.of(row.text("texture"), 0.3);
            double scale = soil.suction() * soil.deficit();
            for (double time = 1; time < 1e6; time *= 3) {
                double depth = soil.soaked(time);
                double back = (depth - scale * Math.log1p(depth / scale)) / soil.conductivity();
                assertEquals(1, back / time, 1e-5, row + " after " + time + " s");
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "rain between the rows of a table | NOAA Atlas 14, volume 2 version 3, one table as"
                    + " printed in a course of 12.2020 | read")
    void betweenTheRows() {
        List<List<Double>> printed =
                List.of(
                        List.of(5.18, 6.34, 7.14, 7.92, 8.46, 8.94, 9.34, 9.79),
                        List.of(4.15, 5.08, 5.71, 6.31, 6.73, 7.10, 7.41, 7.75),
                        List.of(3.48, 4.28, 4.81, 5.33, 5.68, 5.98, 6.23, 6.50),
                        List.of(2.40, 3.04, 3.49, 3.95, 4.28, 4.58, 4.85, 5.18),
                        List.of(1.51, 1.95, 2.27, 2.63, 2.90, 3.16, 3.40, 3.71),
                        List.of(0.882, 1.15, 1.35, 1.59, 1.77, 1.95, 2.13, 2.35));
        DesignRain rain =
                DesignRain.ofIntensities(
                        List.of(300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0),
                        List.of(2.0, 5.0, 10.0, 25.0, 50.0, 100.0, 200.0, 500.0),
                        printed.stream()
                                .map(row -> row.stream().map(in -> in * INCH / 3600).toList())
                                .toList());
        assertEquals(4.210, rain.intensity(1200, 10) / INCH * 3600, 0.0005);
        assertEquals(7.14, rain.intensity(300, 10) / INCH * 3600, 1e-9);
        assertEquals(2.35, rain.intensity(7200, 500) / INCH * 3600, 1e-9);
        for (Runnable beyond :
                List.<Runnable>of(
                        () -> rain.intensity(240, 10),
                        () -> rain.intensity(86_400, 10),
                        () -> rain.intensity(600, 20))) {
            assertThrows(IllegalArgumentException.class, beyond::run);
        }
    }

    @Test
    void aTableThatCannotBeIsRefused() {
        List<Double> twice = List.of(300.0, 600.0);
        List<Double> periods = List.of(2.0, 10.0);
        for (List<List<Double>> wrong :
                List.of(
                        List.of(List.of(0.01, 0.02)),
                        List.of(List.of(0.01, 0.02), List.of(0.015)),
                        List.of(List.of(0.01, 0.02), List.of(0.0, 0.03)),
                        List.of(List.of(0.01, 0.02), List.of(-0.1, 0.03)),
                        List.of(List.of(0.02, 0.01), List.of(0.03, 0.02)),
                        // Intensities given as depths.
                        List.of(List.of(0.06, 0.08), List.of(0.04, 0.06)),
                        // Harder for longer.
                        List.of(List.of(0.01, 0.02), List.of(0.03, 0.05)))) {
            IllegalArgumentException told =
                    assertThrows(
                            IllegalArgumentException.class,
                            () -> new DesignRain(twice, periods, wrong));
            assertTrue(told.getMessage().contains(";"), told.getMessage());
        }
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new DesignRain(
                                List.of(600.0, 300.0),
                                periods,
                                List.of(List.of(0.01, 0.02), List.of(0.01, 0.02))));
        assertThrows(IllegalArgumentException.class, () -> CurveNumber.runoff(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new GreenAmpt(0, 1, 0.3));
        for (Runnable wrong :
                List.<Runnable>of(
                        () -> CurveNumber.runoff(101, 1),
                        () -> CurveNumber.runoff(-5, 1),
                        () -> CurveNumber.runoff(75, -0.01),
                        () -> CurveNumber.runoff(75, Double.NaN),
                        () -> CurveNumber.runoff(List.of(), 0.1),
                        () -> new CurveNumber.Part(75, -1),
                        () -> CurveNumber.dry(0),
                        () -> CurveNumber.wet(101),
                        () -> new GreenAmpt(1e-6, 0, 0.3),
                        () -> new GreenAmpt(1e-6, 0.1, 0),
                        () -> GreenAmpt.of("silt", 0.3),
                        () -> GreenAmpt.of("silt loam", 1),
                        () -> GreenAmpt.of("silt loam", -0.1),
                        () -> GreenAmpt.of("silt loam", 0.3).soaked(-1),
                        () -> GreenAmpt.of("silt loam", 0.3).rate(0),
                        () -> GreenAmpt.stands(-1, 1),
                        () -> GreenAmpt.stands(1, 0),
                        () -> GreenAmpt.deepest(0, 1),
                        () -> GreenAmpt.deepest(1, 0))) {
            assertThrows(IllegalArgumentException.class, wrong::run);
        }
    }
}
