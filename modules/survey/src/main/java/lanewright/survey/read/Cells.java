package lanewright.survey.read;

import java.util.Arrays;
import lanewright.survey.Survey;

/**
 * The points of a survey sorted into square cells of about two points each. The cells cover the
 * middle of the survey, from where 2 in 100 points lie beyond on each side; points outside go to
 * the outermost cells, so that one stray point does not make all cells huge.
 */
final class Cells {

    private static final double TAIL = 0.02;
    private static final double POINTS_IN_CELL = 2;

    /** So many points are enough to see where the middle of the survey is. */
    private static final int LOOKED_AT = 20_000;

    private final Survey survey;
    private final double west;
    private final double south;
    private final double east;
    private final double north;
    private final double side;
    private final int columns;
    private final int rows;

    /** First place of each cell in the order below, and one more at the end. */
    private final int[] start;

    /** Points in the order of their cells, with their coordinates side by side for speed. */
    private final int[] order;

    private final double[] xs;
    private final double[] ys;
    private final double[] zs;

    Cells(Survey survey) {
        this.survey = survey;
        int n = survey.size();
        int step = Math.max(1, n / LOOKED_AT);
        double[] x = new double[(n + step - 1) / step];
        double[] y = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            x[k] = survey.x(k * step);
            y[k] = survey.y(k * step);
        }
        Arrays.sort(x);
        Arrays.sort(y);
        int tail = (int) (TAIL * x.length);
        west = x[tail];
        east = x[x.length - 1 - tail];
        south = y[tail];
        north = y[y.length - 1 - tail];
        double wide = Math.max(width(), height());
        // A survey along one line has no area: cells along the line then.
        double area = Math.max(width() * height(), wide * wide / n);
        double wanted = Math.sqrt(area * POINTS_IN_CELL / n);
        side = wanted > 0 ? wanted : 1;
        columns = (int) (width() / side) + 1;
        rows = (int) (height() / side) + 1;
        start = new int[columns * rows + 1];
        order = new int[n];
        xs = new double[n];
        ys = new double[n];
        zs = new double[n];
        fill();
    }

    private void fill() {
        int n = survey.size();
        int[] cell = new int[n];
        for (int i = 0; i < n; i++) {
            cell[i] = row(survey.y(i)) * columns + column(survey.x(i));
            start[cell[i] + 1]++;
        }
        for (int c = 0; c < columns * rows; c++) {
            start[c + 1] += start[c];
        }
        int[] next = Arrays.copyOf(start, columns * rows);
        for (int i = 0; i < n; i++) {
            int at = next[cell[i]]++;
            order[at] = i;
            xs[at] = survey.x(i);
            ys[at] = survey.y(i);
            zs[at] = survey.z(i);
        }
    }

    /** Width of the middle of the survey, m. */
    double width() {
        return east - west;
    }

    /** Its height from south to north, m. */
    double height() {
        return north - south;
    }

    /** How far a place lies outside the middle of the survey, m; 0 inside. */
    double outsideMiddle(double x, double y) {
        double dx = Math.max(0, Math.max(west - x, x - east));
        double dy = Math.max(0, Math.max(south - y, y - north));
        return Math.hypot(dx, dy);
    }

    /** How many columns of cells there are. */
    int columns() {
        return columns;
    }

    /** How many rows of cells there are. */
    int rows() {
        return rows;
    }

    /** Column of a place, from 0; the outermost one if it lies outside. */
    int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - west) / side));
    }

    /** Row of a place, from 0. */
    int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - south) / side));
    }

    /** Where the points of a cell begin in the order of cells; cells of a row follow each other. */
    int from(int column, int row) {
        return start[row * columns + column];
    }

    /** Where they end. */
    int to(int column, int row) {
        return start[row * columns + column + 1];
    }

    /** Number in the survey of the {@code k}-th point in the order of cells. */
    int point(int k) {
        return order[k];
    }

    double x(int k) {
        return xs[k];
    }

    double y(int k) {
        return ys[k];
    }

    double z(int k) {
        return zs[k];
    }
}
