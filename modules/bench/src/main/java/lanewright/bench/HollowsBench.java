package lanewright.bench;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import lanewright.drainage.hollows.Box;
import lanewright.drainage.hollows.Downhill;
import lanewright.drainage.hollows.Hollows;
import lanewright.drainage.hollows.Terrain;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Hollows one inside another, ways down and what gathers on them, on 16 million cells of a metre:
 * smooth hills of several sizes and a survey's noise. Beside them a plain flood by priority, which
 * finds nothing but the filled heights; and the answer after a lane of 40 m by 20 m was put in.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1500m")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class HollowsBench {

    private static final int SIDE = 4000;

    /** Standard deviation of a height, m. */
    @Param({"0.02", "0.05"})
    public double noise;

    private double[] heights;
    private Terrain terrain;
    private Hollows hollows;
    private int edit;

    /** Makes the land, and checks that both ways fill every cell to the same height. */
    @Setup
    public void prepare() {
        heights = land(noise);
        terrain = Terrain.of(SIDE, SIDE, 1, heights);
        hollows = Hollows.of(terrain);
        double[] flooded = flood(heights, SIDE, SIDE);
        for (int cell = 0; cell < flooded.length; cell++) {
            if (flooded[cell] != hollows.level(cell)) {
                throw new IllegalStateException("levels differ at cell " + cell);
            }
        }
        Hollows changed = hollows.changed(patch(0), lane(0));
        Hollows anew = Hollows.of(terrain.changed(patch(0), lane(0)));
        for (int cell = 0; cell < flooded.length; cell++) {
            if (changed.level(cell) != anew.level(cell)
                    || changed.downhill().accumulated(cell) != anew.downhill().accumulated(cell)) {
                throw new IllegalStateException("the change differs at cell " + cell);
            }
        }
        System.out.println(
                hollows.size() + " hollows on " + flooded.length + " cells, noise " + noise + " m");
    }

    private static double[] land(double noise) {
        var random = new SplittableRandom(16);
        double[] z = new double[SIDE * SIDE];
        for (int cell = 0; cell < z.length; cell++) {
            int row = cell / SIDE;
            int column = cell % SIDE;
            z[cell] =
                    200
                            + 25 * Math.sin(column / 610.0 + 1) * Math.cos(row / 470.0)
                            + 8 * Math.sin(column / 95.0 - row / 140.0)
                            + 2 * Math.cos(column / 31.0 + row / 23.0)
                            + 0.02 * row;
        }
        // Twelve even numbers make nearly a normal one.
        for (int cell = 0; cell < z.length; cell++) {
            double sum = -6;
            for (int i = 0; i < 12; i++) {
                sum += random.nextDouble();
            }
            z[cell] += noise * sum;
        }
        return z;
    }

    private static Box patch(int edit) {
        return new Box(1930 + 3 * edit, 2040, 40, 20);
    }

    /** A lane across the patch that dams what comes down. */
    private double[] lane(int edit) {
        Box box = patch(edit);
        double[] z = new double[box.columns() * box.rows()];
        for (int i = 0; i < z.length; i++) {
            int row = box.row() + i / box.columns();
            int column = box.column() + i % box.columns();
            int line = i / box.columns();
            double across = Math.abs(line - 9.5);
            double fill = Math.max(0, 0.8 - Math.max(0, across - 2) / 4);
            z[i] = heights[row * SIDE + column] + fill + 0.01 * edit;
        }
        return z;
    }

    /** Everything, from the grid. */
    @Benchmark
    public int ours() {
        Hollows found = Hollows.of(Terrain.of(SIDE, SIDE, 1, heights));
        Downhill downhill = found.downhill();
        return found.size() + downhill.accumulated(SIDE * SIDE / 2);
    }

    /** Everything again after an edit of the lane, on what was known. */
    @Benchmark
    public int oursAfterAnEdit() {
        edit = (edit + 1) % 10;
        Hollows found = hollows.changed(patch(edit), lane(edit));
        return found.size() + found.downhill().accumulated(SIDE * SIDE / 2);
    }

    /** Filled heights alone, by a plain flood. */
    @Benchmark
    public double plainFlood() {
        return flood(heights, SIDE, SIDE)[SIDE * SIDE / 2];
    }

    /** Priority-Flood (Barnes, Lehman and Mulla, 2014), with its queue for cells in hollows. */
    static double[] flood(double[] heights, int columns, int rows) {
        double[] level = heights.clone();
        boolean[] reached = new boolean[level.length];
        var waiting = new Heap();
        for (int cell = 0; cell < level.length; cell++) {
            int row = cell / columns;
            int column = cell % columns;
            if (row == 0 || column == 0 || row == rows - 1 || column == columns - 1) {
                reached[cell] = true;
                waiting.add(level[cell], cell);
            }
        }
        int[] pit = new int[1024];
        int pits = 0;
        while (waiting.size > 0 || pits > 0) {
            int at = pits > 0 ? pit[--pits] : waiting.take();
            int row = at / columns;
            int column = at % columns;
            for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
                for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
                    int other = r * columns + c;
                    if (reached[other]) {
                        continue;
                    }
                    reached[other] = true;
                    if (level[other] <= level[at]) {
                        level[other] = level[at];
                        if (pits == pit.length) {
                            pit = Arrays.copyOf(pit, 2 * pits);
                        }
                        pit[pits++] = other;
                    } else {
                        waiting.add(level[other], other);
                    }
                }
            }
        }
        return level;
    }

    /** A heap of two branches in arrays. */
    private static final class Heap {
        private double[] keys = new double[1024];
        private int[] cells = new int[1024];
        private int size;

        void add(double key, int cell) {
            if (size == keys.length) {
                keys = Arrays.copyOf(keys, 2 * size);
                cells = Arrays.copyOf(cells, 2 * size);
            }
            int at = size++;
            while (at > 0 && key < keys[(at - 1) / 2]) {
                int above = (at - 1) / 2;
                keys[at] = keys[above];
                cells[at] = cells[above];
                at = above;
            }
            keys[at] = key;
            cells[at] = cell;
        }

        int take() {
            int taken = cells[0];
            double key = keys[--size];
            int cell = cells[size];
            int at = 0;
            while (2 * at + 1 < size) {
                int below = 2 * at + 1;
                if (below + 1 < size && keys[below + 1] < keys[below]) {
                    below++;
                }
                if (key <= keys[below]) {
                    break;
                }
                keys[at] = keys[below];
                cells[at] = cells[below];
                at = below;
            }
            keys[at] = key;
            cells[at] = cell;
            return taken;
        }
    }
}
