package lanewright.lane.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class VolumesFromBooksTest {

    private static Running straight(double[] stations, double... areas) {
        int n = stations.length;
        return Running.of("earth", State.BANK, stations, areas, new double[n], new double[n - 1]);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "End areas from fill into cut, with pyramids where one runs out | Wikibooks,"
                    + " Fundamentals of Transportation, Earthwork, solution | read")
    void cutAndFillWithPyramids() {
        double[] stations = {0, 50, 75, 100, 115, 150};
        Running fill = straight(stations, 60, 50, 25, 5, 0, 0);
        Running cut = straight(stations, 0, 0, 0, 10, 15, 30);
        assertEquals(4087.5, fill.withPyramids(), 0.05);
        assertEquals(1058.3, cut.withPyramids(), 0.05);
        assertEquals(3029.2, fill.withPyramids() - cut.withPyramids(), 0.05);
        assertEquals(4100, fill.plain(), 1e-9, "derived");
        assertEquals(1100, cut.plain(), 1e-9, "derived");
        assertEquals(1, fill.runOuts().size());
        assertEquals(new RunOut(100, 115, 37.5, 25), fill.runOuts().get(0));
        assertEquals(new RunOut(75, 100, 125, 250.0 / 3), cut.runOuts().get(0));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "One span of 711 and 515 ft², 100 ft | Ghilani & Wolf, Elementary Surveying, ch. 26,"
                    + " first example | from memory")
    void oneSpan() {
        assertEquals(2270, AverageEndArea.volume(711, 515, 100) / 27, 0.5);
    }

    @Test
    @Tag("outside")
    @DisplayName("Pyramid of 300 ft² and 100 ft against its end areas | Euclid XII.7 | derived")
    void pyramid() {
        assertEquals(10_000, AverageEndArea.pyramid(300, 100), 1e-9);
        assertEquals(15_000, AverageEndArea.volume(300, 0, 100), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("10 m² carried 3 m outside a 50 m curve through 36° | theorem of Pappus | derived")
    void curveCorrection() {
        double length = 50 * Math.toRadians(36);
        double right = AverageEndArea.alongCurve(10, -3, 10, -3, 1 / 50.0, length);
        assertEquals(333.01, right, 0.005);
        assertEquals(right, AverageEndArea.alongCurve(10, 3, 10, 3, -1 / 50.0, length), 1e-9);
        assertEquals(314.16, AverageEndArea.volume(10, 10, length), 0.005);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Three-level solid: end areas 336.15 less correction -2.17 is its prismoid 338.32 |"
                    + " plane geometry | derived")
    void endAreasAndPrismoidalCorrection() {
        double areas = AverageEndArea.volume(16.8, 16.815, 20);
        double correction = 20.0 / 12 * (2.0 - 1.38) * (11.4 - 13.5);
        assertEquals(336.15, areas, 0.01);
        assertEquals(338.32, areas - correction, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Running volume between ten contours, by average areas (EW-C1) | surveydrawing.net,"
                    + " volume by contour method | read")
    void volumeBetweenContours() {
        double[] height = new double[10];
        double[] area = {
            0.52, 3.068, 7.74, 14.534, 23.824, 37.008, 55.65, 78.886, 114.916, 262.949
        };
        double[] printed = {
            0, 3.588, 14.396, 36.67, 75.028, 135.86, 228.518, 363.054, 556.856, 934.721
        };
        for (int i = 0; i < height.length; i++) {
            height[i] = 2 + 2 * i;
        }
        Running running = straight(height, area);
        for (int i = 0; i < height.length; i++) {
            assertEquals(printed[i], running.plainTo(i), 0.001, "to contour " + height[i]);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Field form (A1 + A2) 1.85 stations, cubic yards, 0.1 % low | NAVEDTRA 14081,"
                    + " construction grade stakes | read")
    void fieldForm() {
        double stations = 1.5;
        double exact = AverageEndArea.volume(120, 85, 100 * stations) / 27;
        double field = (120 + 85) * 1.85 * stations;
        assertEquals(field, exact, 0.0011 * exact);
    }
}
