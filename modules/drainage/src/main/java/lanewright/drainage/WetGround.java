package lanewright.drainage;

import java.util.Arrays;
import java.util.function.Supplier;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.hollows.Downhill;
import org.jspecify.annotations.Nullable;

/**
 * Where the ground as it is stays wet by its shape alone: the topographic wetness index {@code ln(a
 * / tan b)} (Beven and Kirkby, A physically based, variable contributing area model of basin
 * hydrology, 1979), {@code a} the land that drains out of a square of land for each metre of its
 * side, m, and {@code tan b} its mean fall. High where much land drains and little falls.
 *
 * <p>Nothing of it is measured: soil, springs, drains and what grows decide as much. So it is told
 * in few steps, by rank within the survey, and for squares of several cells, since single cells of
 * eight directions are streaky; for a square of one cell it is {@link Downhill#wetness}. Worked out
 * when first asked for.
 */
public final class WetGround {

    /** Squares are at least so wide, m. Our choice: about half a lane. */
    static final double LEAST_SIDE = 2;

    /** Who published the index. */
    public static final String SOURCE =
            "Beven and Kirkby, A physically based, variable contributing area model of basin"
                    + " hydrology, Hydrological Sciences Bulletin 24, 1979";

    /** No more squares than this. Our choice: what a page shows. */
    private static final int MOST_SQUARES = 40_000;

    /** Nothing is known of any ground. */
    public static final WetGround NONE =
            new WetGround(() -> new Squares(new Cells(0, 0, 1, 1, 1), new double[] {Double.NaN}));

    private final Supplier<Squares> maker;
    private @Nullable Squares worked;

    private WetGround(Supplier<Squares> maker) {
        this.maker = maker;
    }

    /** The ground over which water goes so. */
    static WetGround of(FlowGrid flow) {
        return new WetGround(() -> squared(flow));
    }

    /** The squares, worked out the first time. From any thread. */
    public synchronized Squares squares() {
        Squares known = worked;
        if (known == null) {
            known = maker.get();
            worked = known;
        }
        return known;
    }

    /** Whether the same squares are as wet; works them out. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof WetGround wet && squares().equals(wet.squares()));
    }

    @Override
    public int hashCode() {
        return squares().hashCode();
    }

    /** How wet, by rank among all squares with land. */
    public enum Step {
        /** The wettest tenth. */
        WETTEST("the wettest tenth", 0.9),
        /** The tenth after it. */
        NEXT("the next tenth", 0.8),
        /** The fifth after that. */
        DAMP("the next fifth", 0.6);

        private final String words;
        private final double above;

        Step(String words, double above) {
            this.words = words;
            this.above = above;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** The land in squares, with the index of each. */
    public static final class Squares {
        private final Cells cells;
        private final double[] index;
        private final double[] sorted;

        /**
         * Squares of which the indices are known.
         *
         * @param cells the squares
         * @param index of each, by rows from the south; NaN where there is no land
         */
        Squares(Cells cells, double[] index) {
            this.cells = cells;
            this.index = index.clone();
            this.sorted =
                    Arrays.stream(index).filter(each -> !Double.isNaN(each)).sorted().toArray();
        }

        /** Whether the squares are the same and every index is, to the last bit. */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Squares squares
                    && cells.equals(squares.cells)
                    && Arrays.equals(index, squares.index);
        }

        @Override
        public int hashCode() {
            return 31 * cells.hashCode() + Arrays.hashCode(index);
        }

        /** The squares as cells. */
        public Cells cells() {
            return cells;
        }

        /** Index of a square; NaN where there is no land. */
        public double index(int square) {
            return index[square];
        }

        /** The index from which on a square counts as so wet; NaN without any land. */
        public double from(Step step) {
            return sorted.length == 0
                    ? Double.NaN
                    : sorted[
                            (int)
                                    Math.min(
                                            sorted.length - 1,
                                            Math.ceil(step.above * sorted.length))];
        }

        /** How wet a square is; null if it is none of the steps. */
        public @Nullable Step step(int square) {
            for (Step step : Step.values()) {
                // Not so where there is no land, for nothing is as large as NaN.
                if (index[square] >= from(step)) {
                    return step;
                }
            }
            return null;
        }

        /** How wet a place is; null if it is none of the steps, or has no land. */
        public @Nullable Step at(double x, double y) {
            int square = cells.at(x, y);
            return square < 0 ? null : step(square);
        }

        /** Land that is just so wet, m². */
        public double area(Step step) {
            int count = 0;
            for (int square = 0; square < index.length; square++) {
                count += step(square) == step ? 1 : 0;
            }
            return count * cells.area();
        }
    }

    private static Squares squared(FlowGrid flow) {
        Cells cells = flow.cells();
        int across = (int) Math.ceil(LEAST_SIDE / cells.size());
        while ((long) over(cells.columns(), across) * over(cells.rows(), across) > MOST_SQUARES) {
            across++;
        }
        int columns = over(cells.columns(), across);
        int rows = over(cells.rows(), across);
        double[] out = new double[columns * rows];
        double[] falls = new double[out.length];
        int[] falling = new int[out.length];
        int[] count = new int[out.length];
        for (int cell = 0; cell < cells.count(); cell++) {
            double slope = flow.slope(cell);
            if (Double.isNaN(slope)) {
                continue;
            }
            int square = square(cell, cells, across, columns);
            int next = flow.next(cell);
            if (next == FlowGrid.LEAVES || square(next, cells, across, columns) != square) {
                out[square] += flow.drained(cell);
            }
            count[square]++;
            if (next != FlowGrid.LEAVES) {
                // Where water leaves the survey, nobody knows how the ground falls on.
                falls[square] += slope;
                falling[square]++;
            }
        }
        double side = across * cells.size();
        double[] index = new double[out.length];
        for (int square = 0; square < index.length; square++) {
            double fall =
                    Math.max(Downhill.LEAST_SLOPE, falls[square] / Math.max(1, falling[square]));
            // A square that is mostly beyond the survey says nothing.
            boolean known = 2 * count[square] >= across * across;
            index[square] = known ? Math.log(out[square] / side / fall) : Double.NaN;
        }
        return new Squares(new Cells(cells.west(), cells.south(), side, columns, rows), index);
    }

    private static int square(int cell, Cells cells, int across, int columns) {
        return cell / cells.columns() / across * columns + cell % cells.columns() / across;
    }

    private static int over(int cells, int across) {
        return (cells + across - 1) / across;
    }
}
