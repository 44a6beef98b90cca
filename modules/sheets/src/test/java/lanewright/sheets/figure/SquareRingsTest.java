package lanewright.sheets.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SquareRingsTest {

    @Test
    void oneSquareHasFourCorners() {
        List<int[]> rings = SquareRings.of(3, 3, square -> square == 4);
        assertEquals(1, rings.size());
        assertEquals(List.of(2, 1, 2, 2, 1, 2, 1, 1), boxed(rings.get(0)));
    }

    @Test
    void aHoleIsARingOfItsOwn() {
        List<int[]> rings = SquareRings.of(3, 3, square -> square != 4);
        assertEquals(2, rings.size());
        assertEquals(8, area(rings));
    }

    @Test
    void squaresThatMeetInACornerAreTwo() {
        assertEquals(2, SquareRings.of(2, 2, square -> square == 0 || square == 3).size());
        assertEquals(2, SquareRings.of(2, 2, square -> square == 1 || square == 2).size());
    }

    @Test
    void ringsOfRandomSquaresEncloseThem() {
        var random = new SplittableRandom(7);
        for (int round = 0; round < 200; round++) {
            int columns = 1 + random.nextInt(12);
            int rows = 1 + random.nextInt(12);
            var set = new BitSet();
            for (int i = 0; i < columns * rows; i++) {
                set.set(i, random.nextInt(3) > 0);
            }
            List<int[]> rings = SquareRings.of(columns, rows, set::get);
            assertEquals(set.cardinality(), area(rings), "round " + round);
            for (int i = 0; i < columns * rows; i++) {
                // Even and odd: a ray east from the middle of the square crosses sides.
                int crossed = 0;
                for (int[] ring : rings) {
                    crossed += crossings(ring, i % columns, i / columns);
                }
                assertEquals(set.get(i), crossed % 2 == 1, "round " + round + ", square " + i);
            }
            assertTrue(rings.stream().allMatch(ring -> ring.length % 4 == 0));
        }
    }

    private static int crossings(int[] ring, int column, int row) {
        int crossed = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            boolean upright = ring[i] == ring[next];
            int low = Math.min(ring[i + 1], ring[next + 1]);
            int high = Math.max(ring[i + 1], ring[next + 1]);
            crossed += upright && ring[i] > column && low <= row && row < high ? 1 : 0;
        }
        return crossed;
    }

    /** By the shoelace formula; holes run the other way and count against it. */
    private static int area(List<int[]> rings) {
        int twice = 0;
        for (int[] ring : rings) {
            for (int i = 0; i < ring.length; i += 2) {
                int next = (i + 2) % ring.length;
                twice += ring[i] * ring[next + 1] - ring[next] * ring[i + 1];
            }
        }
        return twice / 2;
    }

    private static List<Integer> boxed(int[] ring) {
        return java.util.Arrays.stream(ring).boxed().toList();
    }
}
