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

    /** Takes one point; false if no more are wanted. */
    interface Visitor {
        boolean visit(int point);
    }

    /** Takes two points. */
    interface PairVisitor {
        void visit(int one, int other);
    }

    private final Survey survey;
    private final double west;
    private final double south;
    private final double east;
    private final double north;
    private final double side;
    private final int columns;
    private final int rows;
    private final int[] start;
    private final int[] order;

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
        fill();
    }

    private void fill() {
        int n = survey.size();
        for (int i = 0; i < n; i++) {
            start[cell(i) + 1]++;
        }
        for (int c = 0; c < columns * rows; c++) {
            start[c + 1] += start[c];
        }
        int[] next = Arrays.copyOf(start, columns * rows);
        for (int i = 0; i < n; i++) {
            order[next[cell(i)]++] = i;
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

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - west) / side));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - south) / side));
    }

    private int cell(int i) {
        return row(survey.y(i)) * columns + column(survey.x(i));
    }

    /**
     * Visits the points in the cells around the cell of a point, the point itself left out.
     *
     * @param reach how many cells to each side
     * @param most how many points of each cell at most
     * @return false if the visitor wanted no more
     */
    boolean around(int i, int reach, int most, Visitor visitor) {
        int column = column(survey.x(i));
        int row = row(survey.y(i));
        for (int r = Math.max(0, row - reach); r <= Math.min(rows - 1, row + reach); r++) {
            int from = Math.max(0, column - reach);
            int to = Math.min(columns - 1, column + reach);
            for (int c = from; c <= to; c++) {
                int first = start[r * columns + c];
                int end = start[r * columns + c + 1];
                int last = end - first > most ? first + most : end;
                for (int k = first; k < last; k++) {
                    if (order[k] != i && !visitor.visit(order[k])) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Visits every two points that lie closer to each other than {@code distance}, m, once. */
    void pairsWithin(double distance, PairVisitor visitor) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int cell = row * columns + column;
                for (int k = start[cell]; k < start[cell + 1]; k++) {
                    rest(order[k], k + 1, start[cell + 1], distance, visitor);
                    ahead(order[k], column, row, distance, visitor);
                }
            }
        }
    }

    /** Looks into the neighbouring cells that were not visited yet, if they are near enough. */
    private void ahead(int i, int column, int row, double distance, PairVisitor visitor) {
        double x = survey.x(i);
        double y = survey.y(i);
        boolean nearEast = column(x + distance) > column;
        boolean nearWest = column(x - distance) < column;
        boolean nearNorth = row(y + distance) > row;
        if (nearEast) {
            whole(i, column + 1, row, distance, visitor);
        }
        if (nearNorth) {
            whole(i, column, row + 1, distance, visitor);
            if (nearEast) {
                whole(i, column + 1, row + 1, distance, visitor);
            }
            if (nearWest) {
                whole(i, column - 1, row + 1, distance, visitor);
            }
        }
    }

    private void whole(int i, int column, int row, double distance, PairVisitor visitor) {
        int cell = row * columns + column;
        rest(i, start[cell], start[cell + 1], distance, visitor);
    }

    private void rest(int i, int from, int to, double distance, PairVisitor visitor) {
        double x = survey.x(i);
        double y = survey.y(i);
        for (int k = from; k < to; k++) {
            double dx = survey.x(order[k]) - x;
            double dy = survey.y(order[k]) - y;
            if (dx * dx + dy * dy < distance * distance) {
                visitor.visit(i, order[k]);
            }
        }
    }
}
