package lanewright.drainage.hollows;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import lanewright.drainage.hollows.Grids.Grid;
import lanewright.measure.Progress;
import org.jgrapht.Graph;
import org.jgrapht.alg.spanning.KruskalMinimumSpanningTree;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Hollows against ways of finding them that share nothing with ours. */
class HollowsTest {

    private static final int GRIDS = 150;

    @Test
    @Tag("outside")
    @DisplayName(
            "Depressions filled, cell for cell, on 150 random grids and an open elevation model |"
                    + " Barnes, Lehman and Mulla, Priority-Flood, 2014, written plainly | derived")
    void fillsAsAPlainPriorityFlood() {
        for (int seed = 0; seed < GRIDS; seed++) {
            assertFilled(priorityFlood(Grids.rough(seed)), Grids.rough(seed), 2 + seed % 3);
        }
        Grid open = Grids.jacksboro();
        assertFilled(priorityFlood(open), open, 4);
        assertFilled(priorityFlood(open), open, Terrain.USUAL_SHIFT);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Depressions filled, cell for cell, on 150 random grids and an open elevation model |"
                    + " the path whose highest cell is lowest, in the spanning tree of JGraphT 1.5.3"
                    + " (KruskalMinimumSpanningTree) | derived")
    void fillsAsTheSpanningTreeOfAGraphLibrary() {
        for (int seed = 0; seed < GRIDS; seed++) {
            assertFilled(spanningTree(Grids.rough(seed)), Grids.rough(seed), 2 + seed % 3);
        }
        Grid open = Grids.jacksboro();
        assertFilled(spanningTree(open), open, 4);
    }

    private static void assertFilled(double[] expected, Grid grid, int shift) {
        Hollows hollows = Hollows.of(grid.terrain(shift));
        for (int cell = 0; cell < expected.length; cell++) {
            assertEquals(expected[cell], hollows.level(cell), "cell " + cell);
        }
    }

    private static double[] priorityFlood(Grid grid) {
        record Waiting(double level, int cell) {}
        var queue = new PriorityQueue<Waiting>((a, b) -> Double.compare(a.level(), b.level()));
        double[] level = grid.z().clone();
        boolean[] reached = new boolean[level.length];
        for (int cell = 0; cell < level.length; cell++) {
            if (grid.isLand(cell) && grid.isRim(cell)) {
                reached[cell] = true;
                queue.add(new Waiting(level[cell], cell));
            }
        }
        while (!queue.isEmpty()) {
            Waiting at = queue.remove();
            for (int north = -1; north <= 1; north++) {
                for (int east = -1; east <= 1; east++) {
                    int other = grid.beside(at.cell(), east, north);
                    if (grid.isLand(other) && !reached[other]) {
                        reached[other] = true;
                        level[other] = Math.max(grid.z()[other], at.level());
                        queue.add(new Waiting(level[other], other));
                    }
                }
            }
        }
        return level;
    }

    private static double[] spanningTree(Grid grid) {
        Graph<Integer, DefaultWeightedEdge> graph =
                new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        graph.addVertex(-1);
        double[] z = grid.z();
        for (int cell = 0; cell < z.length; cell++) {
            if (grid.isLand(cell)) {
                graph.addVertex(cell);
            }
        }
        for (int cell = 0; cell < z.length; cell++) {
            if (!grid.isLand(cell)) {
                continue;
            }
            if (grid.isRim(cell)) {
                graph.setEdgeWeight(graph.addEdge(-1, cell), z[cell]);
            }
            for (int[] way : new int[][] {{1, 0}, {-1, 1}, {0, 1}, {1, 1}}) {
                int other = grid.beside(cell, way[0], way[1]);
                if (grid.isLand(other)) {
                    graph.setEdgeWeight(graph.addEdge(cell, other), Math.max(z[cell], z[other]));
                }
            }
        }
        Graph<Integer, DefaultWeightedEdge> tree =
                new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        graph.vertexSet().forEach(tree::addVertex);
        for (DefaultWeightedEdge edge :
                new KruskalMinimumSpanningTree<>(graph).getSpanningTree().getEdges()) {
            DefaultWeightedEdge kept =
                    tree.addEdge(graph.getEdgeSource(edge), graph.getEdgeTarget(edge));
            tree.setEdgeWeight(kept, graph.getEdgeWeight(edge));
        }
        double[] level = new double[z.length];
        Arrays.fill(level, Double.NaN);
        var seen = new java.util.HashSet<Integer>(List.of(-1));
        var queue = new ArrayDeque<Integer>(List.of(-1));
        while (!queue.isEmpty()) {
            int at = queue.remove();
            double from = at < 0 ? Double.NEGATIVE_INFINITY : level[at];
            for (DefaultWeightedEdge edge : tree.edgesOf(at)) {
                int source = tree.getEdgeSource(edge);
                int other = source == at ? tree.getEdgeTarget(edge) : source;
                if (seen.add(other)) {
                    level[other] = Math.max(from, tree.getEdgeWeight(edge));
                    queue.add(other);
                }
            }
        }
        return level;
    }

    /** What a hollow is, whatever its number. */
    private record Seen(double spill, double bottom, int cells) {}

    @Test
    @Tag("outside")
    @DisplayName(
            "Every hollow inside every other, with its spill height and size, on 150 random grids |"
                    + " the definition, tried at every height | derived")
    void findsExactlyTheHollowsThatTheDefinitionGives() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            List<Seen> expected = slowly(grid);
            List<Seen> found = new ArrayList<>();
            for (Hollow hollow : Hollows.of(grid.terrain(3)).all()) {
                found.add(new Seen(hollow.spillHeight(), hollow.bottomHeight(), hollow.cells()));
            }
            assertEquals(sorted(expected), sorted(found), "seed " + seed);
        }
    }

    private static List<Seen> sorted(List<Seen> seen) {
        return seen.stream()
                .sorted(
                        java.util.Comparator.comparingDouble(Seen::spill)
                                .thenComparingDouble(Seen::bottom)
                                .thenComparingInt(Seen::cells))
                .toList();
    }

    /**
     * A hollow is land lower than some height that hangs together and ends there: with the cells of
     * just that height it reaches the rim or another such land.
     */
    private static List<Seen> slowly(Grid grid) {
        List<Seen> found = new ArrayList<>();
        for (double v :
                Arrays.stream(grid.z()).filter(z -> !Double.isNaN(z)).distinct().toArray()) {
            int[] below = parts(grid, v, false);
            int[] upTo = parts(grid, v, true);
            int count = Arrays.stream(below).max().orElse(-1) + 1;
            int[] whole = new int[count];
            int[] cells = new int[count];
            double[] bottom = new double[count];
            boolean[] open = new boolean[count];
            Arrays.fill(bottom, Double.POSITIVE_INFINITY);
            int wholes = Arrays.stream(upTo).max().orElse(-1) + 1;
            int[] inWhole = new int[wholes];
            boolean[] wholeOpen = new boolean[wholes];
            boolean[] seen = new boolean[count];
            for (int cell = 0; cell < below.length; cell++) {
                if (upTo[cell] >= 0) {
                    wholeOpen[upTo[cell]] |= grid.isRim(cell);
                }
                int part = below[cell];
                if (part >= 0) {
                    whole[part] = upTo[cell];
                    cells[part]++;
                    bottom[part] = Math.min(bottom[part], grid.z()[cell]);
                    open[part] |= grid.isRim(cell);
                    if (!seen[part]) {
                        seen[part] = true;
                        inWhole[upTo[cell]]++;
                    }
                }
            }
            for (int part = 0; part < count; part++) {
                if (!open[part] && (wholeOpen[whole[part]] || inWhole[whole[part]] > 1)) {
                    found.add(new Seen(v, bottom[part], cells[part]));
                }
            }
        }
        return found;
    }

    private static int[] parts(Grid grid, double v, boolean inclusive) {
        int[] part = new int[grid.z().length];
        int[] queue = new int[part.length];
        Arrays.fill(part, -1);
        int count = 0;
        for (int first = 0; first < part.length; first++) {
            if (part[first] >= 0 || !isIn(grid, first, v, inclusive)) {
                continue;
            }
            part[first] = count;
            int waiting = 0;
            queue[waiting++] = first;
            while (waiting > 0) {
                int at = queue[--waiting];
                for (int north = -1; north <= 1; north++) {
                    for (int east = -1; east <= 1; east++) {
                        int other = grid.beside(at, east, north);
                        if (isIn(grid, other, v, inclusive) && part[other] < 0) {
                            part[other] = count;
                            queue[waiting++] = other;
                        }
                    }
                }
            }
            count++;
        }
        return part;
    }

    private static boolean isIn(Grid grid, int cell, double v, boolean inclusive) {
        return grid.isLand(cell) && (grid.z()[cell] < v || (inclusive && grid.z()[cell] == v));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Area, volume and nesting of every hollow by flooding its own cells | the definition |"
                    + " derived")
    void measuresHollowsByTheirCells() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            Hollows hollows = Hollows.of(grid.terrain(2));
            for (Hollow hollow : hollows.all()) {
                int[] cells = hollows.cells(hollow.number());
                double volume = 0;
                for (int cell : cells) {
                    volume += (hollow.spillHeight() - grid.z()[cell]) * 4;
                }
                assertEquals(cells.length, hollow.cells());
                assertEquals(4.0 * cells.length, hollow.area());
                assertEquals(volume, hollow.volume(), 1e-12 * volume);
                assertTrue(hollow.depth() > 0);
                for (int part : hollow.parts()) {
                    assertEquals(hollow.number(), hollows.hollow(part).parent());
                    assertTrue(hollows.hollow(part).spillHeight() < hollow.spillHeight());
                    for (int cell : hollows.cells(part)) {
                        assertTrue(Arrays.binarySearch(cells, cell) >= 0);
                    }
                }
                if (!hollow.isOutermost()) {
                    assertTrue(hollows.hollow(hollow.parent()).parts().contains(hollow.number()));
                }
                int other = hollow.beyond() < 0 ? hollow.sill() : hollow.beyond();
                assertEquals(
                        hollow.spillHeight(),
                        Math.max(grid.z()[hollow.sill()], grid.z()[other]),
                        "seed " + seed);
            }
        }
    }

    @Test
    void aPuddleLiesInsideAHollowInsideABasin() {
        // one row of land between high banks: two puddles, one more beyond a higher bar
        double[] row = {9, 3, 1, 2, 0, 4, 1.5, 6, 9};
        int columns = row.length;
        double[] z = new double[3 * columns];
        Arrays.fill(z, 9);
        z[3 * columns - 1] = 9;
        for (int i = 0; i < columns; i++) {
            z[columns + i] = row[i];
        }
        Hollows hollows = Hollows.of(Terrain.of(columns, 3, 1, z));
        assertEquals(5, hollows.size());
        Hollow shallow = hollows.hollow(0);
        Hollow deep = hollows.hollow(1);
        assertEquals(2, shallow.spillHeight());
        assertEquals(columns + 4, Math.min(shallow.bottom(), deep.bottom()) + 2);
        Hollow third = hollows.hollow(3);
        Hollow basin = hollows.hollow(4);
        assertEquals(9, basin.spillHeight());
        assertEquals(List.of(2, 3), basin.parts());
        assertEquals(List.of(0, 1), hollows.hollow(2).parts());
        assertEquals(4, hollows.hollow(2).spillHeight());
        assertEquals(4, third.spillHeight());
        assertEquals(2.5, third.depth());
        assertEquals(third.number(), hollows.hollow(2).into());
        assertTrue(basin.isOutermost());
        assertEquals(Hollow.OUTSIDE, basin.into());
    }

    @Test
    void nothingHangsOnTheSizeOfTiles() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            assertSame(Hollows.of(grid.terrain(8)), Hollows.of(grid.terrain(2)), 1e-12);
        }
    }

    @Test
    void aChangeGivesWhatAllAnewGivesToTheLastBit() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = Grids.rough(seed);
            var random = new SplittableRandom(seed);
            Hollows first = Hollows.of(grid.terrain(2 + seed % 2));
            Hollows hollows = first;
            double[] z = grid.z().clone();
            for (int edit = 0; edit < 8; edit++) {
                int column = random.nextInt(grid.columns());
                int row = random.nextInt(grid.rows());
                var box =
                        new Box(
                                column,
                                row,
                                random.nextInt(1, Math.min(9, grid.columns() - column) + 1),
                                random.nextInt(1, Math.min(9, grid.rows() - row) + 1));
                double[] heights = new double[box.columns() * box.rows()];
                double level = random.nextInt(12);
                for (int i = 0; i < heights.length; i++) {
                    int at =
                            (row + i / box.columns()) * grid.columns() + column + i % box.columns();
                    heights[i] =
                            switch (random.nextInt(6)) {
                                case 0 -> z[at];
                                case 1 -> random.nextInt(5);
                                case 2 -> seed % 2 == 0 ? level : Double.NaN;
                                case 3 -> random.nextDouble(10);
                                default -> level;
                            };
                    z[at] = heights[i];
                }
                hollows = hollows.changed(box, heights);
                Terrain anew =
                        Terrain.of(
                                grid.columns(),
                                grid.rows(),
                                2,
                                z,
                                grid.terrain(2 + seed % 2).layout().shift());
                assertSame(Hollows.of(anew), hollows, 0);
                assertSame(hollows, first.on(anew, List.of(), Progress.NONE), 0);
            }
        }
    }

    @Test
    void aChangeOfAnOpenElevationModelGivesWhatAllAnewGives() {
        Grid grid = Grids.jacksboro();
        var random = new SplittableRandom(7);
        Hollows hollows = Hollows.of(grid.terrain(5));
        double[] z = grid.z().clone();
        for (int edit = 0; edit < 40; edit++) {
            var box = new Box(random.nextInt(100), random.nextInt(110), 20, 10);
            double[] heights = new double[200];
            int more = random.nextInt(-8, 9);
            for (int i = 0; i < heights.length; i++) {
                int at = (box.row() + i / 20) * grid.columns() + box.column() + i % 20;
                z[at] += more;
                heights[i] = z[at];
            }
            hollows = hollows.changed(box, heights);
            Terrain anew = Terrain.of(grid.columns(), grid.rows(), 2, z, 5);
            assertSame(Hollows.of(anew), hollows, 0);
        }
    }

    static void assertSame(Hollows expected, Hollows found, double relative) {
        assertEquals(expected.size(), found.size());
        for (int number = 0; number < expected.size(); number++) {
            Hollow a = expected.hollow(number);
            Hollow b = found.hollow(number);
            assertEquals(a.volume(), b.volume(), relative * a.volume());
            assertEquals(a, with(b, a.volume()));
        }
        Downhill way = expected.downhill();
        Downhill other = found.downhill();
        for (int cell = 0; cell < expected.terrain().cells(); cell++) {
            assertEquals(expected.level(cell), found.level(cell));
            assertEquals(expected.at(cell), found.at(cell));
            assertEquals(way.accumulated(cell), other.accumulated(cell));
            if (!Double.isNaN(expected.terrain().height(cell))) {
                assertEquals(way.next(cell), other.next(cell), "cell " + cell);
                assertEquals(way.fromRim(cell), other.fromRim(cell));
            }
        }
    }

    private static Hollow with(Hollow hollow, double volume) {
        return new Hollow(
                hollow.number(),
                hollow.bottom(),
                hollow.bottomHeight(),
                hollow.spillHeight(),
                hollow.sill(),
                hollow.into(),
                hollow.beyond(),
                hollow.cells(),
                hollow.area(),
                volume,
                hollow.catchment(),
                hollow.parent(),
                hollow.parts(),
                hollow.apart());
    }

    /** Depth, spill height, area and volume, whatever the number. */
    private record Measured(double spill, double depth, double area, double volume) {}

    /**
     * Heights are only compared and numbers of cells counted, so those three are the same to the
     * last bit; a volume adds the depths of its cells in another order, which may turn its last
     * bits.
     */
    @Test
    @Tag("outside")
    @DisplayName(
            "Quarter turns and mirrors leave depth, area, spill height (exactly) and volume (1e-12)"
                    + " of all hollows unchanged | symmetry | derived")
    void turnsAndMirrorsChangeNothing() {
        for (int seed = 0; seed < GRIDS; seed++) {
            Grid grid = seed == 0 ? Grids.jacksboro() : Grids.rough(seed);
            List<Measured> expected = measured(grid);
            Grid turned = grid;
            for (int quarter = 0; quarter < 4; quarter++) {
                turned = turned.turned();
                for (Grid tried : List.of(turned, turned.mirrored())) {
                    List<Measured> found = measured(tried);
                    assertEquals(expected.size(), found.size());
                    for (int i = 0; i < found.size(); i++) {
                        Measured a = expected.get(i);
                        Measured b = found.get(i);
                        assertEquals(a.spill(), b.spill());
                        assertEquals(a.depth(), b.depth());
                        assertEquals(a.area(), b.area());
                        assertEquals(a.volume(), b.volume(), 1e-12 * a.volume());
                    }
                }
            }
        }
    }

    private static List<Measured> measured(Grid grid) {
        return Hollows.of(grid.terrain(4)).all().stream()
                .map(h -> new Measured(h.spillHeight(), h.depth(), h.area(), h.volume()))
                .sorted(
                        java.util.Comparator.comparingDouble(Measured::spill)
                                .thenComparingDouble(Measured::depth)
                                .thenComparingDouble(Measured::area)
                                .thenComparingDouble(Measured::volume))
                .toList();
    }

    @Test
    void aWholeLevelLandHasNoHollowAndLosesNoWater() {
        double[] z = new double[50 * 70];
        Hollows hollows = Hollows.of(Terrain.of(50, 70, 1, z, 3));
        assertEquals(0, hollows.size());
        Downhill downhill = hollows.downhill();
        assertEquals(z.length, Arrays.stream(downhill.outlets()).map(downhill::accumulated).sum());
    }

    @Test
    void landWithoutACellHasNothing() {
        double[] none = {Double.NaN, Double.NaN};
        Hollows hollows = Hollows.of(Terrain.of(2, 1, 1, none));
        assertEquals(0, hollows.size());
        assertEquals(Hollow.OUTSIDE, hollows.at(0));
        assertTrue(Double.isNaN(hollows.level(0)));
        assertThrows(IllegalArgumentException.class, () -> hollows.downhill().next(0));
    }

    @Test
    void whatIsNoGridIsRefused() {
        double[] four = new double[4];
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(0, 4, 1, four));
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(3, 1, 1, four));
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(2, 2, 0, four));
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(2, 2, Double.NaN, four));
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(1 << 16, 1 << 16, 1, four));
        double[] endless = {0, 0, 0, Double.POSITIVE_INFINITY};
        assertThrows(IllegalArgumentException.class, () -> Terrain.of(2, 2, 1, endless));
        Terrain terrain = Terrain.of(2, 2, 1, four);
        assertThrows(
                IllegalArgumentException.class, () -> terrain.changed(new Box(1, 1, 2, 1), four));
        assertThrows(
                IllegalArgumentException.class, () -> terrain.changed(new Box(1, 1, 1, 1), four));
        assertThrows(IllegalArgumentException.class, () -> new Box(0, 0, 0, 1));
        Hollows hollows = Hollows.of(terrain);
        Terrain wider = Terrain.of(4, 1, 1, four);
        assertThrows(
                IllegalArgumentException.class, () -> hollows.on(wider, List.of(), Progress.NONE));
        assertArrayEquals(new double[4], four);
    }
}
