package lanewright.survey.read;

import java.util.Arrays;
import lanewright.survey.Survey;

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

    private final Survey survey;
    private final Cells cells;
    private final int mostOfCell;

    private final double[] sums = new double[1];
    private int seen;

    /** The nearest points of each quarter of the compass, and the squares of their distances. */
    private final int[] nearest = new int[QUARTERS * NEAREST];

    private final double[] squares = new double[QUARTERS * NEAREST];

    private double off;

    Around(Survey survey, Cells cells, int mostOfCell) {
        this.survey = survey;
        this.cells = cells;
        this.mostOfCell = mostOfCell;
    }

    /** True if the height of a point does not fit those around it. */
    boolean isOdd(int i) {
        double z = survey.z(i);
        sums[0] = 0;
        seen = 0;
        cells.around(i, 1, mostOfCell, this::add);
        if (seen >= FEW_AROUND && Math.abs(z - sums[0] / seen) < CLOSE_TO_MEAN) {
            return false;
        }
        return againstPlane(i, seen >= 4 * FEW_AROUND ? 1 : 2);
    }

    /** How far a point lies above the plane through those around it, m; below is negative. */
    double off(int i) {
        isOdd(i);
        return off;
    }

    private boolean add(int other) {
        sums[0] += survey.z(other);
        seen++;
        return true;
    }

    private boolean againstPlane(int i, int reach) {
        double x = survey.x(i);
        double y = survey.y(i);
        Arrays.fill(squares, Double.POSITIVE_INFINITY);
        cells.around(
                i,
                reach,
                mostOfCell,
                other -> {
                    keep(other, survey.x(other) - x, survey.y(other) - y);
                    return true;
                });
        int count = 0;
        double distance = 0;
        for (double square : squares) {
            if (square < Double.POSITIVE_INFINITY) {
                count++;
                distance += Math.sqrt(square);
            }
        }
        return count >= FEW_AROUND && isOff(i, count, distance / count);
    }

    private void keep(int other, double dx, double dy) {
        double square = dx * dx + dy * dy;
        // Another shot at the very place says nothing of the ground around it.
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
                sx += survey.x(nearest[k]) - survey.x(i);
                sy += survey.y(nearest[k]) - survey.y(i);
                sz += survey.z(nearest[k]);
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
                double dx = survey.x(nearest[k]) - survey.x(i) - mx;
                double dy = survey.y(nearest[k]) - survey.y(i) - my;
                double dz = survey.z(nearest[k]) - mz;
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
        off = survey.z(i) - (mz - b * mx - c * my);
        double left = Math.max(0, zz - b * xz - c * yz);
        double error = Math.sqrt(left / (count - 3) * (1 + leverage));
        return Math.abs(off) > BLUNDER_LEAST
                && Math.abs(off) > BLUNDER_TIMES * error
                && Math.abs(off) > BLUNDER_STEEP * meanDistance;
    }
}
