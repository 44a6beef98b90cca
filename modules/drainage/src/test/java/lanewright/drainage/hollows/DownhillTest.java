package lanewright.drainage.hollows;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.hollows.Grids.Grid;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Ways of water, found again by walking every one of them. */
class DownhillTest {

    private static List<Grid> grids() {
        List<Grid> grids = new ArrayList<>();
        for (int seed = 0; seed < 120; seed++) {
            grids.add(Grids.rough(seed));
        }
        grids.add(Grids.jacksboro());
        return grids;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Accumulated cells, and those from the survey's edge, on 120 random grids and an open"
                    + " elevation model | walking down from every cell | derived")
    void countsWhatWalkingFromEveryCellCounts() {
        int shift = 2;
        for (Grid grid : grids()) {
            Downhill downhill = Hollows.of(grid.terrain(2 + shift++ % 3)).downhill();
            int[] passed = new int[grid.z().length];
            int[] rim = new int[passed.length];
            for (int cell = 0; cell < passed.length; cell++) {
                if (!grid.isLand(cell)) {
                    continue;
                }
                int at = cell;
                int steps = 0;
                while (at != Downhill.LEAVES) {
                    passed[at]++;
                    rim[at] += grid.isRim(cell) ? 1 : 0;
                    at = downhill.next(at);
                    assertTrue(steps++ < passed.length, "round in circles");
                }
            }
            for (int cell = 0; cell < passed.length; cell++) {
                assertEquals(passed[cell], downhill.accumulated(cell));
                if (grid.isLand(cell)) {
                    assertEquals(rim[cell], downhill.fromRim(cell));
                }
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Catchments: as many cells as accumulate, each of which comes there; those of the"
                    + " outlets are all the land | walking | derived")
    void catchmentsSumToTheWhole() {
        for (Grid grid : grids()) {
            Downhill downhill = Hollows.of(grid.terrain(3)).downhill();
            boolean[] taken = new boolean[grid.z().length];
            for (int outlet : downhill.outlets()) {
                int[] catchment = downhill.catchment(outlet);
                assertEquals(downhill.accumulated(outlet), catchment.length);
                for (int cell : catchment) {
                    assertTrue(!taken[cell], "once");
                    taken[cell] = true;
                    int[] path = downhill.path(cell);
                    assertEquals(outlet, lastBeforeLeaving(downhill, cell));
                    assertEquals(cell, path[0]);
                }
            }
            for (int cell = 0; cell < taken.length; cell++) {
                assertEquals(grid.isLand(cell), taken[cell]);
            }
        }
    }

    private static int lastBeforeLeaving(Downhill downhill, int from) {
        int at = from;
        while (downhill.next(at) != Downhill.LEAVES) {
            at = downhill.next(at);
        }
        return at;
    }

    @Test
    void aPathGoesFromNeighbourToNeighbourAndNeverUpOverFullHollows() {
        for (Grid grid : grids()) {
            Hollows hollows = Hollows.of(grid.terrain(3));
            Downhill downhill = hollows.downhill();
            for (int cell = 0; cell < grid.z().length; cell += 7) {
                if (!grid.isLand(cell)) {
                    continue;
                }
                int[] path = downhill.path(cell);
                for (int i = 1; i < path.length; i++) {
                    int a = path[i - 1];
                    int b = path[i];
                    assertTrue(Math.abs(a / grid.columns() - b / grid.columns()) <= 1);
                    assertTrue(Math.abs(a % grid.columns() - b % grid.columns()) <= 1);
                    assertTrue(hollows.level(b) <= hollows.level(a), "uphill");
                }
                assertTrue(grid.isRim(path[path.length - 1]));
            }
        }
    }

    @Test
    void fromEveryCellWaterTakesTheSteepestDropFirstFromEastByNorth() {
        double root = Math.sqrt(0.5);
        int[] east = {1, 1, 0, -1, -1, -1, 0, 1};
        int[] north = {0, 1, 1, 1, 0, -1, -1, -1};
        for (Grid grid : grids()) {
            Downhill downhill = Hollows.of(grid.terrain(2)).downhill();
            for (int cell = 0; cell < grid.z().length; cell++) {
                if (!grid.isLand(cell)) {
                    continue;
                }
                double best = 0;
                int to = -2;
                for (int d = 0; d < 8; d++) {
                    int other = grid.beside(cell, east[d], north[d]);
                    if (grid.isLand(other)) {
                        double drop = (grid.z()[cell] - grid.z()[other]) * (d % 2 == 0 ? 1 : root);
                        if (drop > best) {
                            best = drop;
                            to = other;
                        }
                    }
                }
                if (to >= 0) {
                    assertEquals(to, downhill.next(cell));
                }
            }
        }
    }

    /**
     * A shelf of level ground below a cliff on its west, with one way down in the middle of its
     * east: water runs away from the cliff at once, and to that way.
     */
    @Test
    @Tag("outside")
    @DisplayName(
            "Level ground drains away from its higher and toward its lower edge | Barnes, Lehman"
                    + " and Mulla, Assignment of drainage direction over flat surfaces, 2014, steps"
                    + " counted by hand | derived")
    void aShelfDrainsFromItsCliffToItsWayDown() {
        String[] lines = {
            "9 9 9 9 9 9", //
            "9 5 5 5 5 9",
            "9 5 5 5 5 1",
            "9 5 5 5 5 9",
            "9 9 9 9 9 9"
        };
        Downhill downhill = Hollows.of(fromNorth(lines)).downhill();
        // away (steps from higher ground): 1 1 1 1 / 1 2 2 - / 1 1 1 1, where - has its drop;
        // farthest 2; toward (from the one cell with a drop, itself 1 and all cells beside a drop)
        // column 4 of each row drops to the 1 or lies beside it.
        assertArrayEquals(new int[] {13, 14, 15, 16, 17}, downhill.path(13));
        assertEquals(17, downhill.next(16));
        assertEquals(17, downhill.next(10));
        assertEquals(17, downhill.next(22));
        // the corner cells go inward, away from two walls at once, not along the wall
        assertEquals(14, downhill.next(7));
        assertEquals(14, downhill.next(19));
    }

    private static Terrain fromNorth(String[] lines) {
        int rows = lines.length;
        int columns = lines[0].split(" ").length;
        double[] z = new double[rows * columns];
        for (int row = 0; row < rows; row++) {
            String[] numbers = lines[rows - 1 - row].split(" ");
            for (int column = 0; column < columns; column++) {
                z[row * columns + column] = Double.parseDouble(numbers[column]);
            }
        }
        return Terrain.of(columns, rows, 1, z);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Topographic wetness index of a plane, ln(a / tan b) | Beven and Kirkby, 1979, closed"
                    + " form | derived")
    void wetnessOfAPlane() {
        double[] z = new double[5 * 20];
        for (int cell = 0; cell < z.length; cell++) {
            int row = cell / 5;
            z[cell] = 0.1 * row * 2; // falls south by a tenth, cells of 2 m
        }
        Downhill downhill = Hollows.of(Terrain.of(5, 20, 2, z)).downhill();
        for (int row = 1; row < 20; row++) {
            double uphill = 20 - row; // cells
            assertEquals(Math.log(uphill * 4 / 2 / 0.1), downhill.wetness(5 * row + 2), 1e-9);
        }
        // where water leaves nothing falls: the least slope
        assertEquals(Math.log(20 * 2 / Downhill.LEAST_SLOPE), downhill.wetness(2), 1e-12);
        assertEquals(0, downhill.slope(2));
        assertTrue(downhill.isCutOff(2));
        assertEquals(4, downhill.openEdge(2)); // its own cell and the one at the northern edge
    }
}
