package lanewright.lane.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of vertical curves, in the units of their sources: a profile does not mind
 * whether both lengths and heights are feet or metres.
 */
class GradesFromBooksTest {

    /** One curve with straight grades before and after it. */
    private static Profile curve(double pvi, double height, double g1, double g2, double length)
            throws DesignRefused {
        double straight = length;
        return Profile.of(
                List.of(
                        new VerticalPoint(pvi - straight, height - g1 * straight, 0),
                        new VerticalPoint(pvi, height, length),
                        new VerticalPoint(pvi + straight, height + g2 * straight, 0)));
    }

    private static void assertRows(Profile profile, double[][] rows) {
        for (double[] row : rows) {
            assertEquals(row[1], profile.height(row[0]), 0.001, "height at " + row[0]);
            assertEquals(row[2], 100 * profile.grade(row[0]), 0.01, "grade at " + row[0]);
        }
    }

    private static TurningPoint only(Profile profile) {
        assertEquals(1, profile.turningPoints().size());
        return profile.turningPoints().get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Crest of 400 ft, +3.00 % to -2.40 % | J. Mahun, Open Access Surveying Library, VIII"
                    + " Curves, ch. B, example 1 | read")
    void crest() throws DesignRefused {
        Profile profile = curve(4670, 853.48, 0.03, -0.024, 400);
        assertRows(
                profile,
                new double[][] {
                    {4470, 847.480, 3.00},
                    {4500, 848.319, 2.60},
                    {4600, 850.239, 1.24},
                    {4700, 850.809, -0.10},
                    {4800, 850.029, -1.46},
                    {4870, 848.680, -2.40}
                });
        assertEquals(4692.22, only(profile).station(), 0.01);
        assertEquals(850.813, only(profile).height(), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Sag of 425 ft given by its start | J. Mahun, Open Access Surveying Library, VIII"
                    + " Curves, self-study 3 (its 91+00 is misprinted by one foot) | read")
    void sag() throws DesignRefused {
        Profile profile = curve(8800 + 212.5, 1220 - 0.04 * 212.5, -0.04, 0.0275, 425);
        assertRows(
                profile,
                new double[][] {
                    {8800, 1220.000, -4.00},
                    {8900, 1216.794, -2.41},
                    {9000, 1215.176, -0.82},
                    {9100, 1215.147, 0.76},
                    {9200, 1216.706, 2.35},
                    {9225, 1217.344, 2.75}
                });
        assertEquals(9051.852, only(profile).station(), 0.001);
        assertEquals(1214.963, only(profile).height(), 0.001);
        assertEquals(true, only(profile).sag());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Turning point of a steep crest, +9 % to -7 % | NAVEDTRA 14070/14071, ch. 11,"
                    + " symmetrical vertical curve | read")
    void steepCrest() throws DesignRefused {
        Profile profile = curve(3000, 239.12, 0.09, -0.07, 400);
        TurningPoint top = only(profile);
        assertEquals(1.75, (3200 - top.station()) / 100, 0.001);
        assertEquals(3025, top.station(), 0.01);
        assertEquals(231.25, top.height(), 0.01);
        double tangent = 239.12 - 0.07 * 25;
        assertEquals(237.37, tangent, 0.005);
        assertEquals(6.12, tangent - top.height(), 0.01);
        assertEquals(221.12, profile.height(2800), 0.005, "from memory");
        assertEquals(225.12, profile.height(3200), 0.005, "from memory");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Unequal tangents of 260 and 540 ft as two equal-tangent curves | solved homework"
                    + " 1014003, homeworksource.com | read")
    void unequalTangents() throws DesignRefused {
        double g1 = -0.033;
        double g2 = 0.026;
        double between = (g1 * 260 + g2 * 540) / 800;
        double start = 5888.27 + 0.033 * 260;
        double firstHeight = start + g1 * 130;
        Profile profile =
                Profile.of(
                        List.of(
                                new VerticalPoint(3700, start - g1 * 40, 0),
                                new VerticalPoint(3740 + 130, firstHeight, 260),
                                new VerticalPoint(4270, firstHeight + between * 400, 540),
                                new VerticalPoint(
                                        4600, firstHeight + between * 400 + g2 * 330, 0)));
        double[][] rows = {
            {3740, 5896.85}, {3850, 5894.15}, {3900, 5893.53}, {3950, 5893.30},
            {4000, 5893.45}, {4050, 5893.83}, {4100, 5894.31}, {4150, 5894.87},
            {4200, 5895.52}, {4250, 5896.26}, {4300, 5897.09}, {4350, 5898.01},
            {4400, 5899.02}, {4450, 5900.11}, {4500, 5901.30}, {4540, 5902.31}
        };
        for (double[] row : rows) {
            assertEquals(row[1], profile.height(row[0]), 0.01, "at " + row[0]);
        }
        assertEquals(3955.44, only(profile).station(), 0.01);
        assertEquals(5893.295, only(profile).height(), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Sag from a rate of change of grade | T. G. Hicks (ed.), Handbook of Civil Engineering"
                    + " Calculations, sec. 5, Plotting a parabolic arc | read")
    void sagFromRate() throws DesignRefused {
        Profile profile = curve(5420, 296.30, -0.046, 0.018, 320);
        assertEquals(0.0002, profile.rate(5400), 1e-12, "0.02 % per foot");
        assertEquals(5260, profile.joins()[0], 0.01);
        assertEquals(5580, profile.joins()[1], 0.01);
        assertEquals(303.66, profile.height(5260), 0.005);
        assertEquals(299.18, profile.height(5580), 0.005);
        assertEquals(5490, only(profile).station(), 0.01);
        assertEquals(298.37, only(profile).height(), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Crest through three given heights | a construction surveyor's answer,"
                    + " mathhelpforum.com 118633 | read")
    void crestFromThreePoints() throws DesignRefused {
        Profile profile = curve(250, 1070.64, 0.0134, -0.0177, 500);
        double[][] rows = {
            {100, 1068.32},
            {200, 1068.726},
            {250, 1068.696},
            {300, 1068.511},
            {400, 1067.674},
            {500, 1066.215}
        };
        for (double[] row : rows) {
            assertEquals(row[1], profile.height(row[0]), row[0] == 100 ? 0.006 : 0.002);
        }
        assertEquals(215.43, only(profile).station(), 0.01);
        assertEquals(1068.733, only(profile).height(), 0.002);
        assertEquals(1.94, 1070.64 - profile.height(250), 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Summit of a 100 m crest, +5 % to -3 % | MATHalino reviewer, symmetrical parabolic"
                    + " curve, problem 03 | read")
    void metricSummit() throws DesignRefused {
        Profile profile = curve(1000, 100, 0.05, -0.03, 100);
        assertEquals(99.06, only(profile).height(), 0.005);
        assertEquals(62.5, only(profile).station() - 950, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Length from an allowed change of 0.20 % per 20 m | MATHalino reviewer, problem 04 |"
                    + " read")
    void lengthFromRate() throws DesignRefused {
        Profile profile = curve(500, 100, 0.008, -0.004, 120);
        assertEquals(0.002, Math.abs(profile.grade(500) - profile.grade(520)), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Curve ends from its vertex, and a curve made to pass a point | J. Mahun, Open Access"
                    + " Surveying Library, VIII Curves, self-study 1 and set 2 problem 1 (inputs) |"
                    + " derived")
    void curveEndsAndPassingAPoint() throws DesignRefused {
        Profile ends = curve(7426.5, 772.30, -0.04, 0.02, 750);
        assertEquals(7051.5, ends.joins()[0], 0.005);
        assertEquals(787.30, ends.height(7051.5), 0.005);
        assertEquals(7801.5, ends.joins()[1], 0.005);
        assertEquals(779.80, ends.height(7801.5), 0.005);
        assertEquals(1268.0, curve(4100, 1262, -0.025, 0.03, 687.22).height(4250), 0.001);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Low point of a 260 m sag and high point of a 160 m crest | MATHalino problem 01 and"
                    + " technifi.co.uk, 27 Oct 2018 (inputs) | derived")
    void metricSagAndCrest() throws DesignRefused {
        TurningPoint low = only(curve(11488, 20.80, -0.042, 0.03, 260));
        assertEquals(11509.67, low.station(), 0.01);
        assertEquals(23.075, low.height(), 0.01);
        Profile crest = curve(4310, 411, 0.04, -0.025, 160);
        assertEquals(407.80, crest.height(4230), 0.005);
        assertEquals(409.00, crest.height(4390), 0.005);
        assertEquals(4328.462, only(crest).station(), 0.005);
        assertEquals(409.769, only(crest).height(), 0.005);
    }

    @Test
    @Tag("outside")
    @DisplayName("Identities of any equal-tangent parabola | plane geometry | derived")
    void identitiesOfAnyParabola() throws DesignRefused {
        double g1 = 0.083;
        double g2 = -0.051;
        double length = 90;
        Profile profile = curve(300, 50, g1, g2, length);
        double d = 10;
        for (double s = 265; s <= 325; s += 5) {
            double second = profile.height(s - d) - 2 * profile.height(s) + profile.height(s + d);
            assertEquals((g2 - g1) * d * d / length, second, 1e-11);
        }
        double middle = profile.height(300);
        assertEquals((g2 - g1) * length / 8, middle - 50, 1e-12);
        double chord = (profile.height(255) + profile.height(345)) / 2;
        assertEquals((50 + chord) / 2, middle, 1e-12, "half way from vertex to chord");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Parabolic sag between two equal lips, 12 m wide and 0.3 m deep: low in the middle, area"
                    + " (2/3) w h = 2.4 m² | plane geometry | derived")
    void parabolicSag() throws DesignRefused {
        double w = 12;
        double h = 0.3;
        Profile profile =
                Profile.of(
                        List.of(
                                new VerticalPoint(0, 5 + h + 1, 0),
                                new VerticalPoint(10 + w / 2, 5 - h, w),
                                new VerticalPoint(20 + w, 5 + h + 1, 0)));
        TurningPoint low = only(profile);
        assertEquals(10 + w / 2, low.station(), 1e-12);
        double lip = profile.height(10);
        assertEquals(lip, profile.height(10 + w), 1e-12);
        assertEquals(h, lip - low.height(), 1e-12);
        // Simpson's rule is exact for a parabola.
        double middle = lip - profile.height(10 + w / 2);
        double area = w / 6 * (0 + 4 * middle + 0);
        assertEquals(2.4, area, 1e-12);
        double quarters =
                w
                        / 12
                        * (4 * (lip - profile.height(10 + w / 4))
                                + 2 * middle
                                + 4 * (lip - profile.height(10 + 3 * w / 4)));
        assertEquals(area, quarters, 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "12 ft in 100 ft is 12 %, 150 ft in 0.15 mile 18 % (cut from 18.9) (ST-19) |"
                    + " chronofhorse.com forum t-265850; smartcarofamerica.com, hill | read")
    void gradeIsRiseOverRun() throws DesignRefused {
        double[][] rows = {{100, 12, 12}, {0.15 * 5280, 150, 18}};
        for (double[] row : rows) {
            Profile profile =
                    Profile.of(
                            List.of(
                                    new VerticalPoint(0, 0, 0),
                                    new VerticalPoint(row[0], row[1], 0)));
            assertEquals(row[2], Math.floor(100 * profile.grade(row[0] / 2) + 1e-9));
        }
    }
}
