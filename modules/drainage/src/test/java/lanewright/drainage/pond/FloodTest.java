package lanewright.drainage.pond;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Levels and joins of pools, on grids small enough to fill by hand and against a slow search. */
class FloodTest {

    @Test
    @Tag("outside")
    @DisplayName(
            "One pit with a notch: lake cells, outlet, level, volume | Landlab, test fixture"
                    + " sink_grid1 (volume recomputed) | read")
    void pitWithANotchSpillsAtTheNotch() {
        double[] z =
                grid(
                        "0 0 0 0 0 0 0 / 0 2 2 2 2 2 0 / 0 2 1.6 1.5 1.6 2 0 / 0 2 1.7 1.6 1.7 2"
                                + " 0 / 0 2 1.8 2 2 2 0 / 0 1 0.6 1 1 1 0 / 0 0 -0.5 0 0 0 0");
        Flood flood = Flood.of(Graph.ofGrid(z, 7), 0);
        List<Integer> lake = new ArrayList<>();
        for (int cell = 0; cell < z.length; cell++) {
            if (flood.level(cell) > z[cell]) {
                lake.add(cell);
            }
        }
        assertEquals(List.of(16, 17, 18, 23, 24, 25), lake);
        assertEquals(1, flood.spots().size());
        Flood.Pool pool = flood.pools().get(flood.spots().get(0));
        assertEquals(30, pool.sill());
        assertEquals(1.8, pool.level());
        assertEquals(1.1, volume(flood, z), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Volume below a sill of 2, 3, 4 over five cells | Fill-Spill-Merge (Barnes, Callaghan,"
                    + " Wickert), unit test \"Depression volume\" | read")
    void volumeBelowASill() {
        for (int sill = 2; sill <= 4; sill++) {
            double[] z =
                    grid(
                            "9 9 9 9 9 9 9 / S 2 2 2 2 2 9 / 9 9 9 9 9 9 9"
                                    .replace("S", String.valueOf(sill)));
            assertEquals(sill * 5 - 10, volume(Flood.of(Graph.ofGrid(z, 7), 0), z), "sill " + sill);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName("One pit filled to its spill, 5 x 5 | closed form, by hand | derived")
    void onePitFillsToItsSpill() {
        double[] z = grid("9 9 9 9 9 / 9 5 5 5 9 / 9 5 2 5 6 / 9 5 5 5 9 / 9 9 9 9 9");
        Flood flood = Flood.of(Graph.ofGrid(z, 5), 0);
        assertFilled("9 9 9 9 9 / 9 6 6 6 9 / 9 6 6 6 6 / 9 6 6 6 9 / 9 9 9 9 9", flood, z);
        assertEquals(12, volume(flood, z));
        assertEquals(14, flood.pools().get(flood.spots().get(0)).sill());
    }

    @Test
    @Tag("outside")
    @DisplayName("Two pits that join at 6 and spill at 8, 5 x 7 | closed form, by hand | derived")
    void twoPitsJoinThenSpill() {
        double[] z =
                grid(
                        "9 9 9 9 9 9 9 / 9 3 3 7 4 4 9 / 9 3 1 6 2 4 8 / 9 3 3 7 4 4 9 / 9 9 9 9"
                                + " 9 9 9");
        Flood flood = Flood.of(Graph.ofGrid(z, 7), 0);
        assertFilled(
                "9 9 9 9 9 9 9 / 9 8 8 8 8 8 9 / 9 8 8 8 8 8 8 / 9 8 8 8 8 8 9 / 9 9 9 9 9 9 9",
                flood,
                z);
        assertEquals(62, volume(flood, z));
        Flood.Pool whole = flood.pools().get(flood.spots().get(0));
        assertEquals(8, whole.level());
        assertEquals(2, whole.parts().size());
        for (int part : whole.parts()) {
            assertEquals(6, flood.pools().get(part).level());
            assertEquals(List.of(), flood.pools().get(part).parts());
        }
    }

    @Test
    @Tag("outside")
    @DisplayName("A lip reached only across a corner, 5 x 5 | closed form, by hand | derived")
    void aLipAcrossACornerCounts() {
        double[] z = grid("9 9 9 9 5 / 9 4 4 6 9 / 9 4 3 4 9 / 9 4 4 4 9 / 9 9 9 9 9");
        Flood flood = Flood.of(Graph.ofGrid(z, 5), 0);
        assertFilled("9 9 9 9 5 / 9 6 6 6 9 / 9 6 6 6 9 / 9 6 6 6 9 / 9 9 9 9 9", flood, z);
        assertEquals(17, volume(flood, z));
    }

    @Test
    @Tag("outside")
    @DisplayName("A chain of diagonal cells drains, 4 x 4 | closed form, by hand | derived")
    void aDiagonalChainDrains() {
        double[] z = grid("9 9 9 9 / 9 2 9 9 / 9 9 2 9 / 9 9 9 1");
        Flood flood = Flood.of(Graph.ofGrid(z, 4), 0);
        assertEquals(List.of(), flood.spots());
        assertEquals(0, volume(flood, z));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Two pits with a saddle, a line of heights 10 4 7 5 9 | closed form, by hand | derived")
    void twoPitsWithASaddle() {
        double[] z = grid("99 99 99 99 99 / 10 4 7 5 9 / 99 99 99 99 99");
        Flood flood = Flood.of(Graph.ofGrid(z, 5), 0);
        assertFilled("99 99 99 99 99 / 10 9 9 9 9 / 99 99 99 99 99", flood, z);
        assertEquals(11, volume(flood, z));
        Flood.Pool whole = flood.pools().get(flood.spots().get(0));
        double before = 0;
        for (int part : whole.parts()) {
            Flood.Pool pool = flood.pools().get(part);
            assertEquals(7, pool.level());
            before += pool.level() - z[pool.low()];
        }
        assertEquals(3 + 2, before);
    }

    @Test
    void poolsNoDeeperThanTheLeastAreNotKept() {
        double[] z = grid("9 9 9 9 9 / 9 5 5 5 9 / 9 5 2 5 6 / 9 5 5 5 9 / 9 9 9 9 9");
        assertEquals(List.of(), Flood.of(Graph.ofGrid(z, 5), 4).spots());
    }

    @Test
    void aHeightThatIsNoNumberIsRefused() {
        double[] z = {1, Double.NaN, 3};
        assertThrows(IllegalArgumentException.class, () -> Flood.of(Graph.ofGrid(z, 3), 0));
    }

    @Test
    void equalHeightsKeepTheirOrder() {
        double[] heights = {3, -1.5, 0.0, -0.0, 3, Double.NEGATIVE_INFINITY, 1e300, -1.5};
        int[] order = HeightOrder.of(heights);
        assertEquals("[5, 1, 7, 2, 3, 0, 4, 6]", java.util.Arrays.toString(order));
    }

    @RepeatedTest(60)
    void levelsOnRandomTrianglesAgreeWithASlowSearch(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        double[][] points = new double[80][];
        for (int i = 0; i < points.length; i++) {
            // Whole heights now and then, so that ties are met too.
            double z = random.nextDouble(10);
            points[i] =
                    new double[] {
                        random.nextDouble(100),
                        random.nextDouble(100),
                        seed % 2 == 0 ? StrictMath.rint(z) : z
                    };
        }
        ArrayMesh mesh = ArrayMesh.delaunay(points);
        Flood flood = Flood.of(Graph.of(mesh, List.of()), 0);
        double[] slow = slowLevels(mesh);
        for (int v = 0; v < mesh.vertexCount(); v++) {
            assertEquals(slow[v], flood.level(v), "seed " + seed + ", vertex " + v);
        }
    }

    /** Over all ways to the rim, the least greatest height: relaxed until nothing changes. */
    private static double[] slowLevels(Mesh mesh) {
        double[] level = new double[mesh.vertexCount()];
        java.util.Arrays.fill(level, Double.POSITIVE_INFINITY);
        for (boolean changed = true; changed; ) {
            changed = false;
            for (int t = 0; t < mesh.triangleCount(); t++) {
                for (int k = 0; k < 3; k++) {
                    int a = mesh.corner(t, (k + 1) % 3);
                    int b = mesh.corner(t, (k + 2) % 3);
                    boolean rim = mesh.neighbour(t, k) < 0;
                    double viaB = rim ? mesh.z(a) : Math.max(mesh.z(a), level[b]);
                    double viaA = rim ? mesh.z(b) : Math.max(mesh.z(b), level[a]);
                    if (viaB < level[a]) {
                        level[a] = viaB;
                        changed = true;
                    }
                    if (viaA < level[b]) {
                        level[b] = viaA;
                        changed = true;
                    }
                }
            }
        }
        return level;
    }

    private static double volume(Flood flood, double[] z) {
        double sum = 0;
        for (int cell = 0; cell < z.length; cell++) {
            sum += flood.level(cell) - z[cell];
        }
        return sum;
    }

    private static void assertFilled(String expected, Flood flood, double[] z) {
        double[] filled = grid(expected);
        for (int cell = 0; cell < z.length; cell++) {
            assertEquals(filled[cell], flood.level(cell), "cell " + cell);
        }
    }

    private static double[] grid(String rows) {
        return java.util.Arrays.stream(rows.replace("/", " ").trim().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
