package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Spacing;
import lanewright.measure.Assumption.Mark;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The tables that travel with the program. */
class WaterTablesTest {

    private static final WaterTables TABLES = WaterTables.published();

    @Test
    @Tag("outside")
    @DisplayName(
            "Spacing of cross drains by grade, every row | Keller and Sherar, Low-Volume Roads"
                    + " Engineering (2003), table 7.1 | read")
    void crossDrains() {
        assertRows(
                TABLES.crossDrains(),
                new double[][] {
                    {3, 120, 75}, {6, 90, 50}, {9, 75, 40}, {12, 60, 35}, {20, 50, 30}
                });
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Spacing of water bars by grade, every row | Keller and Sherar, Low-Volume Roads"
                    + " Engineering (2003), table 7.2 | read")
    void waterBars() {
        assertRows(
                TABLES.waterBars(),
                new double[][] {
                    {5, 75, 40},
                    {10, 60, 30},
                    {15, 45, 20},
                    {20, 35, 15},
                    {30, 30, 12},
                    {35, 15, 10}
                });
    }

    private static void assertRows(Spacing spacing, double[][] expected) {
        for (double[] row : expected) {
            assertEquals(row[1], spacing.row(row[0] / 100).lowErosion(), row[0] + " %");
            assertEquals(row[2], spacing.row(row[0] / 100).erosive(), row[0] + " %");
        }
        assertEquals(expected.length, spacing.rows().size());
    }

    @Test
    void aGradeBetweenTwoRowsTakesTheSteeperRow() {
        assertEquals(90, TABLES.crossDrains().row(0.035).lowErosion());
        assertEquals(60, TABLES.crossDrains().row(0.12).lowErosion());
        assertEquals(50, TABLES.crossDrains().row(0.121).lowErosion());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Ditch grade: at least 0.5 %, check dams from 2 %, lining over 8 % | US Army subcourse"
                    + " EN5465, chapter 4 | read")
    void ditchGrades() {
        Limits limits = TABLES.limits();
        assertEquals(0.005, limits.ditchLeast().value(), 1e-15);
        assertEquals(0.02, limits.ditchChecked().value(), 1e-15);
        assertEquals(0.08, limits.ditchLined().value(), 1e-15);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Cross slope of a gravel surface 3 to 7 % | Intech Associates, Rural Road Surfacing,"
                    + " gravel (draft) | read")
    void crossSlopes() {
        assertEquals(0.03, TABLES.limits().crossLeast().value(), 1e-15);
        assertEquals(0.07, TABLES.limits().crossMost().value(), 1e-15);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Ditch bottom 6 in below the underside of the stone | common practice, no source |"
                    + " common practice")
    void ditchBelowStone() {
        assertEquals(0.1524, TABLES.limits().belowStone().value(), 0.003);
    }

    @Test
    @Tag("outside")
    @DisplayName("Not a dam: 6 ft or 15 acre-feet or less | 33 USC 467(3) | read")
    void dams() {
        assertEquals(6 * 0.3048, TABLES.limits().damHeight().value(), 1e-12);
        // An acre-foot is 1,233.48 m³ (NIST SP 811, appendix B, 1.233 489 E+03 by survey feet).
        assertEquals(15 * 1233.48, TABLES.limits().damVolume().value(), 0.1);
    }

    @Test
    void whatHasNoSourceIsMarkedSo() {
        assertEquals(Mark.COMMON_PRACTICE, TABLES.limits().edgeAbove().mark());
        assertTrue(TABLES.limits().belowStone().source().contains("from memory"));
    }
}
