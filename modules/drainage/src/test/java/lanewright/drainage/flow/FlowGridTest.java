package lanewright.drainage.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.pond.ArrayMesh;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.TestDitch;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of water on grids whose answer is printed, known in closed form, or found slowly. */
class FlowGridTest {

    /** The eight neighbours, counting from east by north. */
    private static final int[] EAST = {1, 1, 0, -1, -1, -1, 0, 1};

    private static final int[] NORTH = {0, 1, 1, 1, 0, -1, -1, -1};

    /** By rows from the north, as printed; from memory, giving the printed directions. */
    private static final String TEXTBOOK =
            "78 72 69 71 58 49 / 74 67 56 49 46 50 / 69 53 44 37 38 48 / 64 58 55 22 31 24 / 68 61"
                    + " 47 21 16 19 / 74 53 34 12 11 12";

    @Test
    @Tag("outside")
    @DisplayName(
            "D8 counts upstream, the textbook 6 x 6 grid (printed 34 in its last row is 35: the"
                    + " source is wrong there) | GeoTrellis, AccumulationSpec; heights from memory |"
                    + " read")
    void countsUpstreamOfTheTextbookGrid() {
        int[] printed = {
            0, 0, 0, 0, 0, 0, 0, 1, 1, 2, 2, 0, 0, 3, 7, 5, 4, 0, 0, 0, 0, 20, 0, 1, 0, 0, 0, 1, 24,
            0, 0, 2, 4, 7, 35, 1
        };
        FlowGrid flow = fromNorth(TEXTBOOK, 6);
        for (int i = 0; i < 36; i++) {
            int cell = (5 - i / 6) * 6 + i % 6;
            assertEquals(printed[i], flow.drained(cell) - 1, "row " + i / 6 + " column " + i % 6);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "D8 directions of the textbook 6 x 6 grid, outlet cell excepted | GeoTrellis,"
                    + " AccumulationSpec; heights from memory | read")
    void directionsOfTheTextbookGrid() {
        String[] printed =
                ("SE SE SE S S SW SE SE SE S S SW E E SE S SW S NE NE E SE S SW SE SE E S S S E E E"
                                + " E S W")
                        .split(" ");
        FlowGrid flow = fromNorth(TEXTBOOK, 6);
        List<String> names = List.of("E", "NE", "N", "NW", "W", "SW", "S", "SE");
        for (int i = 0; i < 36; i++) {
            int cell = (5 - i / 6) * 6 + i % 6;
            if (flow.next(cell) == FlowGrid.LEAVES) {
                assertEquals(34, i, "only the outlet leaves");
                continue;
            }
            int d = names.indexOf(printed[i]);
            int expected = cell + NORTH[d] * 6 + EAST[d];
            assertEquals(expected, flow.next(cell), "row " + i / 6 + " column " + i % 6);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName("D8 on the plane z = -(2x + y) takes north-east | closed form | derived")
    void planeDrainsAcrossTheCorner() {
        double[] z = new double[49];
        for (int i = 0; i < 49; i++) {
            int row = i / 7;
            z[i] = -(2.0 * (i % 7) + row);
        }
        FlowGrid flow = FlowGrid.of(new Cells(0, 0, 1, 7, 7), z);
        assertEquals(24 + 7 + 1, flow.next(24));
    }

    @Test
    @Tag("outside")
    @DisplayName("D8 on a plane tilted south: count at row i is i | closed form | derived")
    void planeTiltedSouth() {
        double[] z = new double[6 * 9];
        for (int i = 0; i < z.length; i++) {
            int row = i / 6;
            z[i] = row;
        }
        FlowGrid flow = FlowGrid.of(new Cells(0, 0, 1, 6, 9), z);
        for (int i = 0; i < z.length; i++) {
            assertEquals(9 - i / 6, flow.drained(i));
        }
    }

    @RepeatedTest(20)
    @Tag("outside")
    @DisplayName(
            "All water that falls leaves: counts at the outlets sum to all cells | closed form | derived")
    void nothingIsLostOnRoughGround(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        double[] z = rough(seed, 40 * 30);
        z[777] = Double.NaN;
        FlowGrid flow = FlowGrid.of(new Cells(0, 0, 1, 40, 30), z);
        double out = 0;
        for (int cell = 0; cell < z.length; cell++) {
            if (!Double.isNaN(z[cell]) && flow.next(cell) == FlowGrid.LEAVES) {
                out += flow.drained(cell);
            }
        }
        assertEquals(z.length - 1, out, "seed " + seed);
    }

    @RepeatedTest(20)
    void levelsOnRoughGroundAgreeWithASlowSearch(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        int columns = 25;
        int rows = 20;
        double[] z = rough(seed, columns * rows);
        FlowGrid flow = FlowGrid.of(new Cells(0, 0, 1, columns, rows), z);
        double[] level = new double[z.length];
        Arrays.fill(level, Double.POSITIVE_INFINITY);
        for (boolean changed = true; changed; ) {
            changed = false;
            for (int cell = 0; cell < z.length; cell++) {
                int row = cell / columns;
                int column = cell % columns;
                boolean rim = row == 0 || column == 0 || row == rows - 1 || column == columns - 1;
                double least = rim ? z[cell] : level[cell];
                for (int d = 0; d < 8 && !rim; d++) {
                    int other = cell + NORTH[d] * columns + EAST[d];
                    least = Math.min(least, Math.max(z[cell], level[other]));
                }
                if (least < level[cell]) {
                    level[cell] = least;
                    changed = true;
                }
            }
        }
        for (int cell = 0; cell < z.length; cell++) {
            assertEquals(level[cell], flow.level(cell), "seed " + seed + ", cell " + cell);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "10,1", "10,0.5", "10,0.25", "37,1", "37,0.5", "37,0.25", "45,1", "45,0.5", "45,0.25"
    })
    void aSteadyDitchShowsNoLowSpot(double degrees, double size) {
        for (double grade : new double[] {0.002, 0.005, 0.02, 0.08}) {
            ArrayMesh ditch = TestDitch.falling(grade, degrees);
            Cells cells = Cells.over(ditch, size, 1_000_000);
            FlowGrid flow = FlowGrid.of(ditch, cells, List.of(), Progress.NONE);
            for (int cell = 0; cell < cells.count(); cell++) {
                if (!Double.isNaN(flow.height(cell))) {
                    assertEquals(
                            flow.height(cell),
                            flow.level(cell),
                            "cell " + cell + " at grade " + grade);
                }
            }
        }
    }

    @Test
    void samplingAloneWouldShowFalsePits() {
        ArrayMesh ditch = TestDitch.falling(0.005, 37);
        Cells cells = Cells.over(ditch, 0.5, 1_000_000);
        double[] sampled = new double[cells.count()];
        Arrays.fill(sampled, Double.NaN);
        double cos = StrictMath.cos(StrictMath.toRadians(37));
        double sin = StrictMath.sin(StrictMath.toRadians(37));
        for (int cell = 0; cell < sampled.length; cell++) {
            double s = cells.x(cell) * cos + cells.y(cell) * sin;
            double t = cells.y(cell) * cos - cells.x(cell) * sin;
            if (s > 0 && s < 60 && t > -15 && t < 15) {
                double side = t < 0 ? -t / 3 : t / 2;
                sampled[cell] = 100 - 0.005 * s + Math.min(0.4, side);
            }
        }
        FlowGrid flow = FlowGrid.of(cells, sampled);
        int pits = 0;
        for (int cell = 0; cell < sampled.length; cell++) {
            pits += flow.level(cell) > flow.height(cell) ? 1 : 0;
        }
        assertTrue(pits > 20, "the trap that the lines avoid, pits: " + pits);
    }

    @Test
    void aThinBankHoldsWaterOnWideCells() {
        // A plane that falls east, and across it a bank whose crest no 1 m cell's middle finds.
        double[] x = {0, 9.95, 10.9, 11.05, 20};
        double[][] points = new double[10][];
        int[][] triangles = new int[8][];
        for (int i = 0; i < 5; i++) {
            double z = i == 2 ? 3 : 2 - 0.1 * x[i];
            points[2 * i] = new double[] {x[i], 0, z};
            points[2 * i + 1] = new double[] {x[i], 20, z};
            if (i < 4) {
                triangles[2 * i] = new int[] {2 * i, 2 * i + 2, 2 * i + 3};
                triangles[2 * i + 1] = new int[] {2 * i, 2 * i + 3, 2 * i + 1};
            }
        }
        FlowGrid flow =
                FlowGrid.of(
                        new ArrayMesh(points, triangles),
                        new Cells(0, 0, 1, 20, 20),
                        List.of(),
                        Progress.NONE);
        assertEquals(3, flow.height(10 * 20 + 10));
        assertTrue(flow.next(10 * 20 + 9) != 10 * 20 + 10);
    }

    @Test
    void landThatDrainsToAHollowIsAllThatSlopesToIt() {
        // A square funnel in the middle of a roof that falls outward all round.
        ArrayMesh roof =
                ArrayMesh.sheet(
                        -20,
                        -20,
                        40,
                        40,
                        1,
                        (x, y) -> {
                            double r = Math.max(Math.abs(x), Math.abs(y));
                            return r <= 10 ? r / 10 : 2 - r / 10;
                        });
        List<LowSpot> spots =
                LowSpots.of(roof, List.of(), LowSpots.Threshold.USUAL, Progress.NONE).listed();
        assertEquals(1, spots.size());
        FlowGrid flow =
                FlowGrid.of(roof, Cells.over(roof, 0.5, 1_000_000), List.of(), Progress.NONE);
        assertEquals(
                400,
                flow.drainedTo(spots).get(0).area(),
                20.5,
                "one row of cells around 20 by 20 m");
    }

    @Test
    void aHollowThatSpillsIntoAnotherBringsItsLandAlong() {
        // A slope that falls east with two troughs across it, walled north and south.
        ArrayMesh steps =
                ArrayMesh.sheet(
                        0,
                        0,
                        60,
                        20,
                        1,
                        (x, y) -> {
                            double wall = Math.abs(y - 10) > 9 ? 30 : 0;
                            double bump = x == 20 || x == 45 ? 1.5 : 0;
                            return 10 - 0.1 * x + bump + wall + (y == 10 ? -0.01 : 0);
                        });
        List<LowSpot> spots =
                LowSpots.of(steps, List.of(), LowSpots.Threshold.USUAL, Progress.NONE).listed();
        assertEquals(2, spots.size());
        FlowGrid flow =
                FlowGrid.of(steps, Cells.over(steps, 0.5, 1_000_000), List.of(), Progress.NONE);
        List<Double> areas = flow.drainedTo(spots).stream().map(FlowGrid.Drained::area).toList();
        double lower = areas.get(spots.get(0).x() > spots.get(1).x() ? 0 : 1);
        double upper = areas.get(spots.get(0).x() > spots.get(1).x() ? 1 : 0);
        assertEquals(20 * 20, upper, 60);
        assertEquals(45 * 20, lower, 90);
    }

    @Test
    void waterTakesTheOldPipe() {
        ArrayMesh hollow = ArrayMesh.sheet(-10, -10, 20, 20, 1, (x, y) -> 0.2 * Math.hypot(x, y));
        var pipe = GivenPipe.there("old pipe", 0, 0, 0.1, 30, 0, -1, 0.9);
        PlacedPipe placed = PlacedPipe.on(hollow, pipe);
        Cells cells = Cells.over(hollow, 0.5, 1_000_000);
        FlowGrid flow = FlowGrid.of(hollow, cells, List.of(placed), Progress.NONE);
        int inlet = cells.at(0, 0);
        int deepest = flow.standsAt(inlet); // the pipe lies over the bottom
        assertEquals(FlowGrid.LEAVES, flow.next(deepest));
        assertTrue(flow.drained(deepest) > 200, "drained " + flow.drained(deepest));
        assertEquals(0.1, flow.level(deepest), 1e-12);
    }

    @Test
    void pathsJoinAndLeave() {
        FlowGrid flow = fromNorth(TEXTBOOK, 6);
        List<FlowPath> paths = flow.paths(6);
        double most = 0;
        for (FlowPath path : paths) {
            most = Math.max(most, path.areaAtFoot());
        }
        assertEquals(36, most);
        assertTrue(paths.size() >= 2);
    }

    @Test
    void aWideLandGetsWiderCells() {
        ArrayMesh wide = ArrayMesh.sheet(0, 0, 10, 10, 100, (x, y) -> x);
        Cells cells = Cells.over(wide, 0.5, 100_000);
        assertTrue(cells.count() <= 100_000 && cells.count() > 80_000, cells.toString());
    }

    @RepeatedTest(10)
    void quarterTurnsAndMirrorsChangeNothing(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        int n = 24;
        double[] z = rough(seed, n * n);
        double[] turned = new double[n * n];
        double[] mirrored = new double[n * n];
        for (int row = 0; row < n; row++) {
            for (int column = 0; column < n; column++) {
                turned[column * n + (n - 1 - row)] = z[row * n + column];
                mirrored[row * n + (n - 1 - column)] = z[row * n + column];
            }
        }
        Cells cells = new Cells(0, 0, 1, n, n);
        FlowGrid a = FlowGrid.of(cells, z);
        FlowGrid b = FlowGrid.of(cells, turned);
        FlowGrid c = FlowGrid.of(cells, mirrored);
        for (int row = 0; row < n; row++) {
            for (int column = 0; column < n; column++) {
                double drained = a.drained(row * n + column);
                assertEquals(drained, b.drained(column * n + (n - 1 - row)), "seed " + seed);
                assertEquals(drained, c.drained(row * n + (n - 1 - column)), "seed " + seed);
            }
        }
    }

    private static double[] rough(int seed, int count) {
        var random = new SplittableRandom(seed);
        double[] z = new double[count];
        for (int i = 0; i < count; i++) {
            z[i] = random.nextDouble(10);
        }
        return z;
    }

    private static FlowGrid fromNorth(String rows, int columns) {
        double[] z =
                Arrays.stream(rows.replace("/", " ").trim().split("\\s+"))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
        int count = z.length / columns;
        double[] up = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            up[(count - 1 - i / columns) * columns + i % columns] = z[i];
        }
        return FlowGrid.of(new Cells(0, 0, 1, columns, count), up);
    }
}
