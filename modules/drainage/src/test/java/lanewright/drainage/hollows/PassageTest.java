package lanewright.drainage.hollows;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.hollows.Grids.Grid;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Water that goes from cell to cell below ground. */
class PassageTest {

    private static final int GRIDS = 150;

    private static List<Passage> passages(Grid grid, SplittableRandom random) {
        List<Passage> all = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            int from = low(grid, random);
            int to = random.nextInt(6) == 0 ? Hollow.OUTSIDE : random.nextInt(grid.z().length);
            if (from != to && grid.isLand(from) && (to < 0 || grid.isLand(to))) {
                double above = random.nextBoolean() ? 0 : random.nextInt(3);
                all.add(new Passage(from, to, grid.z()[from] + above));
            }
        }
        return all;
    }

    /** The lowest of some cells, which is often a pit. */
    private static int low(Grid grid, SplittableRandom random) {
        int lowest = random.nextInt(grid.z().length);
        for (int i = random.nextInt(40); i > 0; i--) {
            int cell = random.nextInt(grid.z().length);
            lowest = grid.z()[cell] < grid.z()[lowest] ? cell : lowest;
        }
        return lowest;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Levels with passages below ground, cell for cell, on 150 random grids | lowering"
                    + " every level until none falls | derived")
    void levelsAreThoseOfASlowSearch() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            List<Passage> passages = passages(grid, new SplittableRandom(seed));
            Hollows hollows = Hollows.of(grid.terrain(2 + seed % 3), passages, Progress.NONE);
            double[] level = slowly(grid, passages);
            for (int cell = 0; cell < level.length; cell++) {
                if (grid.isLand(cell)) {
                    assertEquals(level[cell], hollows.level(cell), "seed " + seed);
                }
            }
            for (int number = 0; number < hollows.size(); number++) {
                int[] under = hollows.cells(number);
                double depths = 0;
                for (int cell : under) {
                    depths += hollows.hollow(number).spillHeight() - grid.z()[cell];
                }
                assertEquals(under.length, hollows.hollow(number).cells(), "seed " + seed);
                assertEquals(depths * 4, hollows.hollow(number).volume(), 1e-9 * depths);
            }
        }
    }

    private static double[] slowly(Grid grid, List<Passage> passages) {
        double[] z = grid.z();
        double[] level = new double[z.length];
        Arrays.fill(level, Double.POSITIVE_INFINITY);
        for (boolean changed = true; changed; ) {
            changed = false;
            for (int cell = 0; cell < z.length; cell++) {
                double least = level[cell];
                if (!grid.isLand(cell)) {
                    continue;
                }
                if (grid.isRim(cell)) {
                    least = z[cell];
                }
                for (int north = -1; north <= 1; north++) {
                    for (int east = -1; east <= 1; east++) {
                        int other = grid.beside(cell, east, north);
                        if (grid.isLand(other)) {
                            least = Math.min(least, Math.max(z[cell], level[other]));
                        }
                    }
                }
                for (Passage passage : passages) {
                    double high = Math.max(z[cell], passage.height());
                    if (passage.from() == cell && passage.to() < 0) {
                        least = Math.min(least, high);
                    } else if (passage.from() == cell) {
                        least = Math.min(least, Math.max(high, level[passage.to()]));
                    } else if (passage.to() == cell) {
                        least = Math.min(least, Math.max(high, level[passage.from()]));
                    }
                }
                changed |= least < level[cell];
                level[cell] = least;
            }
        }
        return level;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Accumulated cells and catchments with passages, on 150 random grids | walking down"
                    + " from every cell | derived")
    void countsWhatWalkingFromEveryCellCounts() {
        int through = 0;
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            List<Passage> passages = passages(grid, new SplittableRandom(seed));
            Hollows hollows = Hollows.of(grid.terrain(2 + seed % 3), passages, Progress.NONE);
            Downhill downhill = hollows.downhill();
            int[] passed = new int[grid.z().length];
            int[] rim = new int[passed.length];
            for (int cell = 0; cell < passed.length; cell++) {
                int steps = 0;
                for (int at = grid.isLand(cell) ? cell : -1; at >= 0; at = downhill.next(at)) {
                    passed[at]++;
                    rim[at] += grid.isRim(cell) ? 1 : 0;
                    assertTrue(steps++ < passed.length, "round in circles");
                }
            }
            int out = 0;
            for (int outlet : downhill.outlets()) {
                assertEquals(passed[outlet], downhill.catchment(outlet).length);
                out += passed[outlet];
            }
            int land = 0;
            for (int cell = 0; cell < passed.length; cell++) {
                assertEquals(passed[cell], downhill.accumulated(cell), "seed " + seed);
                land += grid.isLand(cell) ? 1 : 0;
                if (grid.isLand(cell)) {
                    assertEquals(rim[cell], downhill.fromRim(cell));
                }
            }
            assertEquals(land, out);
            int least = 1 + seed % 9;
            int[] carrying = downhill.carrying(least);
            int expected = 0;
            for (int passes : passed) {
                expected += passes >= least ? 1 : 0;
            }
            assertEquals(expected, carrying.length);
            for (Passage passage : passages) {
                through += downhill.next(passage.from()) == passage.to() ? 1 : 0;
            }
        }
        assertTrue(through > GRIDS / 5, "passages that lead: " + through);
    }

    @Test
    void aChangeGivesWhatAllAnewGivesToTheLastBit() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            var random = new SplittableRandom(seed);
            int shift = 2 + seed % 3;
            Hollows known = Hollows.of(grid.terrain(shift), passages(grid, random), Progress.NONE);
            double[] z = grid.z().clone();
            for (int edit = 0; edit < 6; edit++) {
                for (int i = random.nextInt(4); i > 0; i--) {
                    int cell = random.nextInt(z.length);
                    z[cell] = Double.isNaN(z[cell]) ? z[cell] : random.nextInt(8);
                }
                Grid now = new Grid(grid.columns(), grid.rows(), z.clone());
                List<Passage> passages =
                        random.nextInt(3) == 0 ? known.passages().all() : passages(now, random);
                Hollows anew = Hollows.of(now.terrain(shift), passages, Progress.NONE);
                known = known.on(now.terrain(shift), passages, Progress.NONE);
                HollowsTest.assertSame(anew, known, 0);
            }
        }
    }

    /**
     * A trough between walls, dammed in its middle: 9 8 7 6 5 4 9 3 2 1 from west to east, the dam
     * seven cells from the west.
     */
    private static Terrain dammed() {
        double[] z = new double[3 * 10];
        double[] bed = {9, 8, 7, 6, 5, 4, 9, 3, 2, 1};
        for (int column = 0; column < 10; column++) {
            z[column] = 20;
            z[10 + column] = bed[column];
            z[20 + column] = 20;
        }
        return Terrain.of(10, 3, 1, z);
    }

    @Test
    void aPipeAtTheBottomDrainsItsHollow() {
        Hollows bare = Hollows.of(dammed());
        assertEquals(1, bare.size());
        assertEquals(9, bare.level(15));
        Hollows led = Hollows.of(dammed(), List.of(new Passage(15, 17, 4)), Progress.NONE);
        assertEquals(0, led.size());
        assertEquals(17, led.downhill().next(15));
        assertEquals(
                bare.downhill().accumulated(19), led.downhill().accumulated(19), "all comes out");
        assertArrayEquals(new int[] {14, 15, 17, 18, 19}, led.downhill().path(14));
    }

    @Test
    void belowAPipeThatLiesHigherWaterStays() {
        // Its inlet lies in the slope two metres over the bottom.
        Hollows led = Hollows.of(dammed(), List.of(new Passage(13, 17, 6)), Progress.NONE);
        assertEquals(1, led.size());
        assertEquals(6, led.hollow(0).spillHeight());
        assertEquals(2 + 1, led.hollow(0).volume(), "4 and 5 under 6");
        assertEquals(13, led.hollow(0).sill());
        assertEquals(17, led.hollow(0).beyond());
        Downhill downhill = led.downhill();
        assertEquals(15, downhill.standsAt(13), "what goes in stands at the bottom first");
        assertEquals(17, downhill.next(15));
        assertEquals(12, downhill.standsAt(12));
    }

    @Test
    void aPipeWithTooHighAnEndStandsFullAtBothEnds() {
        // Out at a bed of 3 m, in at 4 m, and the tail water dammed to 8 m.
        double[] z = new double[3 * 10];
        double[] bed = {9, 8, 7, 6, 5, 4, 9, 3, 8, 1};
        for (int column = 0; column < 10; column++) {
            z[column] = 20;
            z[10 + column] = bed[column];
            z[20 + column] = 20;
        }
        Hollows led =
                Hollows.of(Terrain.of(10, 3, 1, z), List.of(new Passage(15, 17, 4)), Progress.NONE);
        assertEquals(8, led.level(17));
        assertEquals(8, led.level(15));
        assertEquals(1, led.size());
        assertArrayEquals(new int[] {12, 13, 14, 15, 17}, led.cells(0));
    }

    @Test
    void passagesThatLeadNowhereAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Passage(-1, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> new Passage(3, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> new Passage(3, 4, Double.NaN));
        Terrain hole = Terrain.of(2, 1, 1, new double[] {1, Double.NaN});
        for (Passage passage : List.of(new Passage(1, 0, 0), new Passage(0, 1, 0))) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> Hollows.of(hole, List.of(passage), Progress.NONE));
        }
    }
}
