package lanewright.earthwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Heaps against handbooks. */
class HeapTest {

    private static final double FOOT = 0.3048;
    private static final double YARD = 27 * FOOT * FOOT * FOOT; // cubic

    @Test
    @Tag("outside")
    @DisplayName(
            "Long triangular pile of 100 bank yd³ swollen 25 %, 30 ft long, 37° (EW-P5) | S. W."
                    + " Nunnally, Construction Methods and Management, ch. 2 | from memory")
    void longTriangularPile() {
        Heap heap = Heap.along(125 * YARD, Heap.run(37), 30 * FOOT);
        assertEquals(24.4, heap.width() / FOOT, 0.05);
        assertEquals(9.2, heap.height() / FOOT, 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Conical stockpiles at 37°, seven sizes (EW-P6) | constructionwork.com, stockpile"
                    + " volume table | read")
    void conicalStockpiles() {
        double[][] printed = { // diameter ft, height ft, yd³
            {26.5, 10, 68},
            {53, 20, 545},
            {79.5, 30, 1845},
            {106, 40, 4370},
            {159.16, 60, 14_755},
            {212.16, 80, 34_970},
            {265.3, 100, 68_300},
        };
        for (double[] row : printed) {
            double volume = Heap.coneVolume(row[0] * FOOT, row[1] * FOOT) / YARD;
            assertEquals(row[2], volume, 0.005 * row[2]);
            Heap heap = Heap.round(volume * YARD, Heap.run(37), 200 * FOOT);
            assertEquals(row[0], heap.width() / FOOT, 0.005 * row[0]);
            assertEquals(row[1], heap.height() / FOOT, 0.005 * row[1]);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Conical pile of 30 ft by 8 ft read from a chart (EW-P7) | Engineering ToolBox,"
                    + " stockpile volumes | read")
    void conicalPileFromAChart() {
        double cubicFeet = Heap.coneVolume(30 * FOOT, 8 * FOOT) / (FOOT * FOOT * FOOT);
        assertEquals(2000, cubicFeet, 0.07 * 2000);
        assertEquals(130_000, cubicFeet * 65, 0.07 * 130_000); // 65 lb/ft³
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Cone at 37°: diameter 2.6541 h, volume 1.8442 h³ (EW-E8) | plain geometry | derived")
    void coneFromItsHeight() {
        Heap heap = Heap.round(1.8442, Heap.run(37), 10);
        assertEquals(1, heap.count());
        assertEquals(1, heap.height(), 1e-4);
        assertEquals(2.6541, heap.width(), 2e-4);
    }

    @Test
    void heapsAreAsFewAsTheirHeightAllows() {
        Heap heap = Heap.round(100, 2, 1.8);
        assertEquals(5, heap.count()); // one cone of 1.8 m at 2:1 holds 24.4 m³
        assertEquals(100, heap.count() * heap.volume(), 1e-12);
        assertTrue(heap.height() <= 1.8);
        assertEquals(Heap.coneVolume(heap.width(), heap.height()), heap.volume(), 1e-12);
        assertEquals(Heap.NONE, Heap.round(0, 2, 1.8));
        Heap row = Heap.row(100, 2, 1.5);
        assertEquals(100, row.width() * row.height() * row.length() / 2, 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Long heap with sloped ends: its height over its base, added up over a fine grid |"
                    + " plain geometry | derived")
    void ridgeWithSlopedEnds() {
        Heap heap = Heap.ridge(120, 2, 1.5);
        double half = (heap.length() - heap.width()) / 2;
        double step = 0.01;
        double sum = 0;
        for (double x = step / 2; x < heap.length() / 2; x += step) {
            for (double y = step / 2; y < heap.width() / 2; y += step) {
                double fromRidge = Math.hypot(Math.max(0, x - half), y);
                sum += 4 * step * step * Math.max(0, heap.height() - fromRidge / 2);
            }
        }
        assertEquals(120, sum, 0.01);
        assertEquals(1.5, heap.height());
        Heap small = Heap.ridge(5, 2, 1.5);
        assertEquals(Heap.round(5, 2, 1.5), small);
        assertEquals(Heap.NONE, Heap.ridge(0, 2, 1.5));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Angles of repose of earth, clay, gravel and sand (A6) | S. W. Nunnally, Construction"
                    + " Methods and Management, table of angles of repose | from memory")
    void anglesOfRepose() {
        assertEquals(32, Heap.repose("common earth, dry").degrees());
        assertEquals(37, Heap.repose("common earth, moist").degrees());
        assertEquals(35, Heap.repose("clay, excavated").degrees());
        assertEquals(35, Heap.repose("gravel").degrees());
        assertEquals(25, Heap.repose("sand, dry").degrees());
        assertEquals(37, Heap.repose("sand, moist").degrees());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Flatter ends of angles of repose: wet clay 15°, dry lumps 25°, gravel with sand 25°,"
                    + " sand full of water 15°, dunes 30° (A6) | buildsum.blogspot.com, June 2014;"
                    + " protrails.com, lexicon | read")
    void flatterEndsOfAnglesOfRepose() {
        assertEquals(15, Heap.repose("clay, wet").degrees());
        assertEquals(25, Heap.repose("clay lumps, dry").degrees());
        assertEquals(25, Heap.repose("gravel with sand").degrees());
        assertEquals(15, Heap.repose("sand full of water").degrees());
        assertEquals(30, Heap.repose("dune sand").degrees());
    }
}
