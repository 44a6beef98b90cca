package lanewright.survey.read;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether the height of a point fits those around it. A plane is laid through the nearest points on
 * all sides by least squares, the point itself left out; it is called odd if it lies off that plane
 * by many times the standard error of what the plane says there. This is the deleted residual of
 * regression (R. D. Cook and S. Weisberg, <i>Residuals and Influence in Regression</i>, 1982,
 * chapter 2; from memory), with bounds of our own so that banks and hilltops are left in peace.
 */
final class Around {

    /** A height must be off by this much to be called a blunder, m. */
    private static final double BLUNDER_LEAST = 0.5;

    /** And by so many standard errors of what those around it say. */
    private static final double BLUNDER_TIMES = 8;

    /** And more than this part of the mean distance to those around it. */
    private static final double BLUNDER_STEEP = 0.25;

    /** Of those around a point, so many nearest ones of each quarter of the compass are asked. */
    private static final int NEAREST = 2;

    /** With fewer around it nothing is said of a point. */
    private static final int FEW_AROUND = 7;

    /** Nor if those around it lie so much to one side that a plane through them says little. */
    private static final double LEVERAGE = 0.6;

    /** Points that lie no further than this from the mean of all around are not looked at, m. */
    private static final double CLOSE_TO_MEAN = 0.4;

    private static final int QUARTERS = 4;

    /** No more than so many of each cell are asked: enough, and bounded where points crowd. */
    private static final int MOST_OF_CELL = 16;

    private final Cells cells;

    /** The nearest points of each quarter of the compass, and the squares of their distances. */
    private final int[] nearest = new int[QUARTERS * NEAREST];

    private final double[] squares = new double[QUARTERS * NEAREST];

    private double off;

    Around(Cells cells) {
        this.cells = cells;
    }

    /**
     * Points whose height does not fit those around them, by number, with how far they lie above
     * the plane through those around them, m; below is negative.
     */
    Map<Integer, Double> odd() {
        Map<Integer, Double> odd = new TreeMap<>();
        double[] sums = sums();
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                if (cells.from(column, row) < cells.to(column, row)) {
                    cell(column, row, sums, odd);
                }
            }
        }
        return odd;
    }

    /** Sum of heights in each cell. */
    private double[] sums() {
        double[] sums = new double[cells.columns() * cells.rows()];
        for (int row = 0; row < cells.rows(); row++) {
            for (int column = 0; column < cells.columns(); column++) {
                double sum = 0;
                for (int k = cells.from(column, row); k < cells.to(column, row); k++) {
                    sum += cells.z(k);
                }
                sums[row * cells.columns() + column] = sum;
            }
        }
        return sums;
    }

    private void cell(int column, int row, double[] sums, Map<Integer, Double> odd) {
        int west = Math.max(0, column - 1);
        int east = Math.min(cells.columns() - 1, column + 1);
        double sum = 0;
        int seen = 0;
        for (int r = Math.max(0, row - 1); r <= Math.min(cells.rows() - 1, row + 1); r++) {
            for (int c = west; c <= east; c++) {
                sum += sums[r * cells.columns() + c];
            }
            seen += cells.to(east, r) - cells.from(west, r);
        }
        for (int k = cells.from(column, row); k < cells.to(column, row); k++) {
            double mean = (sum - cells.z(k)) / (seen - 1);
            boolean close = seen > FEW_AROUND && Math.abs(cells.z(k) - mean) < CLOSE_TO_MEAN;
            if (!close && againstPlane(k, column, row, seen > 4 * FEW_AROUND ? 1 : 2)) {
                odd.put(cells.point(k), off);
            }
        }
    }

    private boolean againstPlane(int k, int column, int row, int reach) {
        double x = cells.x(k);
        double y = cells.y(k);
        Arrays.fill(squares, Double.POSITIVE_INFINITY);
        int north = Math.min(cells.rows() - 1, row + reach);
        int east = Math.min(cells.columns() - 1, column + reach);
        for (int r = Math.max(0, row - reach); r <= north; r++) {
            for (int c = Math.max(0, column - reach); c <= east; c++) {
                int from = cells.from(c, r);
                int to = Math.min(cells.to(c, r), from + MOST_OF_CELL);
                for (int other = from; other < to; other++) {
                    keep(other, cells.x(other) - x, cells.y(other) - y);
                }
            }
        }
        int count = 0;
        double distance = 0;
        for (double square : squares) {
            if (square < Double.POSITIVE_INFINITY) {
                count++;
                distance += Math.sqrt(square);
            }
        }
        return count >= FEW_AROUND && isOff(k, count, distance / count);
    }

    private void keep(int other, double dx, double dy) {
        double square = dx * dx + dy * dy;
        // The point itself, or another shot at the very place, says nothing of the ground around
        // it.
        if (square == 0) {
            return;
        }
        int quarter = (dx >= 0 ? 0 : 1) + (dy >= 0 ? 0 : 2);
        int at = quarter * NEAREST + NEAREST - 1;
        if (square >= squares[at]) {
            return;
        }
        while (at > quarter * NEAREST && squares[at - 1] > square) {
            squares[at] = squares[at - 1];
            nearest[at] = nearest[at - 1];
            at--;
        }
        squares[at] = square;
        nearest[at] = other;
    }

    /** Lays the plane a + b dx + c dy, dx and dy told from the point, through the kept ones. */
    private boolean isOff(int i, int count, double meanDistance) {
        double sx = 0;
        double sy = 0;
        double sz = 0;
        for (int k = 0; k < squares.length; k++) {
            if (squares[k] < Double.POSITIVE_INFINITY) {
                sx += cells.x(nearest[k]) - cells.x(i);
                sy += cells.y(nearest[k]) - cells.y(i);
                sz += cells.z(nearest[k]);
            }
        }
        double mx = sx / count;
        double my = sy / count;
        double mz = sz / count;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xz = 0;
        double yz = 0;
        double zz = 0;
        for (int k = 0; k < squares.length; k++) {
            if (squares[k] < Double.POSITIVE_INFINITY) {
                double dx = cells.x(nearest[k]) - cells.x(i) - mx;
                double dy = cells.y(nearest[k]) - cells.y(i) - my;
                double dz = cells.z(nearest[k]) - mz;
                xx += dx * dx;
                xy += dx * dy;
                yy += dy * dy;
                xz += dx * dz;
                yz += dy * dz;
                zz += dz * dz;
            }
        }
        double determinant = xx * yy - xy * xy;
        double leverage =
                1.0 / count + (yy * mx * mx - 2 * xy * mx * my + xx * my * my) / determinant;
        if (!(leverage < LEVERAGE)) {
            return false;
        }
        double b = (yy * xz - xy * yz) / determinant;
        double c = (xx * yz - xy * xz) / determinant;
        off = cells.z(i) - (mz - b * mx - c * my);
        double left = Math.max(0, zz - b * xz - c * yz);
        double error = Math.sqrt(left / (count - 3) * (1 + leverage));
        return Math.abs(off) > BLUNDER_LEAST
                && Math.abs(off) > BLUNDER_TIMES * error
                && Math.abs(off) > BLUNDER_STEEP * meanDistance;
    }
}
