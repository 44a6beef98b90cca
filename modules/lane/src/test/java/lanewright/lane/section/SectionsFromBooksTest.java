package lanewright.lane.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.lane.shape.Shapes;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.AverageEndArea;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Areas of published sections, cut by the program from the ground that the notes describe. */
class SectionsFromBooksTest {

    /** A bare cut: base and slopes, no ditch. */
    private static TypicalSection cutting(double base, double slope) {
        return Shapes.lane(base).slopes(slope, slope, slope).make();
    }

    /**
     * A cut whose notes give the ground at offsets, formation at zero. The ground goes on level
     * beyond the stakes, which stand where slope and ground meet.
     */
    private static Section notes(double base, double slope, double[] offsets, double... heights) {
        int n = offsets.length;
        double[] at = new double[n + 2];
        double[] ground = new double[n + 2];
        System.arraycopy(offsets, 0, at, 1, n);
        System.arraycopy(heights, 0, ground, 1, n);
        at[0] = offsets[0] - 5;
        at[n + 1] = offsets[n - 1] + 5;
        ground[0] = heights[0];
        ground[n + 1] = heights[n - 1];
        return Worlds.cut(cutting(base, slope), 0, Worlds.across(0, at, ground));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Level cuts 0, 5, 10, 15, 0 ft, base 20 ft, 1½:1, by average end area | G. L. Vose,"
                    + " Handbook of Railroad Construction (1857), art. 108 | read")
    void levelCuts() {
        double[] depths = {0, 5, 10, 15, 0};
        double[] printed = {0, 137, 350, 637, 0};
        double[] exact = {0, 137.5, 350, 637.5, 0};
        double[] volumes = {3450, 12200, 24650, 15900};
        double total = 0;
        double last = 0;
        for (int i = 0; i < depths.length; i++) {
            double area =
                    Worlds.cut(cutting(20, 1.5), 0, Worlds.level(depths[i], 0))
                            .areas()
                            .cut()
                            .area();
            assertEquals(printed[i], area, 2);
            assertEquals(exact[i], area, 1e-9);
            if (i > 0) {
                double volume = AverageEndArea.volume(last, area, 50);
                assertEquals(volumes[i - 1], volume, 0.005 * volume);
                total += volume;
            }
            last = area;
        }
        assertEquals(56200, total, 60);
        assertEquals(56250, total, 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Level cuts in rock, cubic yards per 100 ft, base 18 ft, ¼:1 | G. L. Vose, Handbook of"
                    + " Railroad Construction (1857), art. 106 table | read")
    void rockCuts() {
        double[][] rows = {{1, 68}, {3, 208}, {5, 356}, {7, 512}, {9, 675}};
        for (double[] row : rows) {
            Section section = Worlds.cut(cutting(18, 0.25), 0, Worlds.level(row[0], 0));
            assertEquals(row[1], section.areas().cut().area() * 100 / 27, 1);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Irregular section by triangles and trapezoids | route surveying slides, example 1,"
                    + " scribd.com/document/443591565 | read")
    void trapezoids() {
        double[][] parts = {
            {5.7, 0, 4.0, 22.8}, {5.2, 5.7, 6.0, 60.8}, {9.3, 5.2, 4.2, 87.4},
            {15.0, 4.2, 4.7, 133.5}, {4.8, 4.7, 1.5, 29.8}, {1.5, 0, 4.5, 6.8}
        };
        double sum = 0;
        for (double[] part : parts) {
            double half = part[0] / 2;
            // Earth standing straight up over the base and nothing beside it.
            double[] offsets = {-half - 1, -half, -half, half, half, half + 1};
            Section section = notes(part[0], 2, offsets, 0, 0, part[1], part[2], 0, 0);
            double doubled = 2 * section.areas().cut().area();
            assertEquals(part[3], doubled, 0.05 + 1e-9);
            sum += doubled;
        }
        assertEquals(341.1, sum, 0.1);
        assertEquals(170.5, sum / 2, 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Slope stakes of a 6 m base at 1½:1: 4.5 m out at 1.0 m, 6.45 m out at 2.3 m | review"
                    + " sheet on earthworks, scribd.com/document/643870877 | read")
    void slopeStakes() {
        double[][] rows = {{1.0, 4.5}, {2.3, 6.45}};
        for (double[] row : rows) {
            Section section = Worlds.cut(cutting(6, 1.5), 0, Worlds.level(row[0], 0));
            assertEquals(row[1], section.right().catchPoint().offset(), 0.005);
            assertEquals(-row[1], section.left().catchPoint().offset(), 0.005);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Three-level pair, area 16.82 m² at B | review sheet \"Earthworks SW\", situation A,"
                    + " scribd.com/document/451510836 | read")
    void threeLevelSections() {
        double[] atA = {-6.6, 0, 4.8};
        double[] atB = {-6.3, 0, 7.2};
        Section a = notes(6, 1.5, atA, 2.4, 2.0, 1.2);
        Section b = notes(6, 1.5, atB, 2.2, 1.38, 2.8);
        assertEquals(-6.6, a.left().catchPoint().offset(), 1e-9);
        assertEquals(4.8, a.right().catchPoint().offset(), 1e-9);
        assertEquals(16.82, b.areas().cut().area(), 0.01);
        assertEquals(16.800, a.areas().cut().area(), 0.005, "derived");
        double volume = AverageEndArea.volume(a.areas().cut().area(), b.areas().cut().area(), 20);
        assertEquals(336.15, volume, 0.05, "derived");
        double correction = 20.0 / 12 * (2.0 - 1.38) * (11.4 - 13.5);
        assertEquals(-2.17, correction, 0.01, "derived");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Three-level pair, base 10 m | review sheet \"Earthworks SW\", situation B,"
                    + " scribd.com/document/451510836 (inputs) | derived")
    void secondThreeLevelPair() {
        Section a = notes(10, 1.5, new double[] {-9.5, 0, 11}, 3, 2, 4);
        Section b = notes(10, 1.5, new double[] {-6.5, 0, 8}, 1, 1.2, 2);
        assertEquals(38.0, a.areas().cut().area(), 0.005);
        assertEquals(16.2, b.areas().cut().area(), 0.005);
        assertEquals(
                542.0,
                AverageEndArea.volume(a.areas().cut().area(), b.areas().cut().area(), 20),
                0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Three-level pairs as prismoids, middle section from averaged dimensions: end areas less"
                    + " L/12 (c1 - c2)(D1 - D2), 338.32 and 534.0 m³ (EW-X6, EW-X7) | review sheet"
                    + " \"Earthworks SW\", scribd.com/document/451510836 (inputs) | derived")
    void threeLevelPrismoids() {
        Section a = notes(6, 1.5, new double[] {-6.6, 0, 4.8}, 2.4, 2.0, 1.2);
        Section b = notes(6, 1.5, new double[] {-6.3, 0, 7.2}, 2.2, 1.38, 2.8);
        Section middle = notes(6, 1.5, new double[] {-6.45, 0, 6.0}, 2.3, 1.69, 2.0);
        assertEquals(338.32, prismoid(a, middle, b), 0.05);
        Section c = notes(10, 1.5, new double[] {-9.5, 0, 11}, 3, 2, 4);
        Section d = notes(10, 1.5, new double[] {-6.5, 0, 8}, 1, 1.2, 2);
        Section between = notes(10, 1.5, new double[] {-8.0, 0, 9.5}, 2, 1.6, 3);
        assertEquals(534.0, prismoid(c, between, d), 0.05);
        double correction = 20.0 / 12 * (2 - 1.2) * (20.5 - 14.5);
        assertEquals(8.00, correction, 0.01);
        assertEquals(
                prismoid(c, between, d),
                AverageEndArea.volume(c.areas().cut().area(), d.areas().cut().area(), 20)
                        - correction,
                1e-9);
    }

    private static double prismoid(Section first, Section middle, Section last) {
        return 20.0
                / 6
                * (first.areas().cut().area()
                        + 4 * middle.areas().cut().area()
                        + last.areas().cut().area());
    }

    @Test
    @Tag("outside")
    @DisplayName("Five-level section by its formula | plane geometry | derived")
    void fiveLevelSection() {
        Section section = notes(20, 1.5, new double[] {-28, -10, 0, 10, 17.5}, 12, 10, 8, 6, 5);
        assertEquals(272.5, section.areas().cut().area(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("Fill under a crowned top, w·h + s·h² + k·w²/4 | plane geometry | derived")
    void crownedFill() {
        for (double h : new double[] {0.2, 1, 2.5}) {
            double w = 4.2;
            double k = 0.04;
            double s = 3;
            TypicalSection shape = Shapes.lane(w).crown(k).slopes(s, 2, 2).make();
            Section section = Worlds.cut(shape, h + k * w / 2, Worlds.level(0, 0));
            assertEquals(w * h + s * h * h + k * w * w / 4, section.areas().fill().area(), 1e-9);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Slope of 1½:1 and base of 6 m read back from the catch points of two sections |"
                    + " scribd.com/document/643870877 | read")
    void slopeAndBaseReadBack() {
        List<Section> sections =
                List.of(
                        Worlds.cut(cutting(6, 1.5), 0, Worlds.level(1.0, 0)),
                        Worlds.cut(cutting(6, 1.5), 0, Worlds.level(2.3, 0)));
        double d1 = sections.get(0).right().catchPoint().offset();
        double d2 = sections.get(1).right().catchPoint().offset();
        double slope = (d2 - d1) / (2.3 - 1.0);
        assertEquals(1.5, slope, 0.001);
        assertEquals(6, 2 * (d1 - slope * 1.0), 0.005);
    }
}
