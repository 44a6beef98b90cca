package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Points sorted into square cells, to find those near a line. */
final class PointGrid {

    private final double[] x;
    private final double[] y;
    private final double left;
    private final double bottom;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] head;
    private final int[] next;

    /** A point near a line: its number, and how far along the line it lies, 0 to 1. */
    private record Met(int point, double along) {}

    /** Sorts the first {@code count} points into cells, about two a cell. */
    PointGrid(double[] x, double[] y, int count) {
        this.x = x;
        this.y = y;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            minX = Math.min(minX, x[i]);
            maxX = Math.max(maxX, x[i]);
            minY = Math.min(minY, y[i]);
            maxY = Math.max(maxY, y[i]);
        }
        left = minX;
        bottom = minY;
        double wide = Math.max(maxX - minX, 1e-3);
        double high = Math.max(maxY - minY, 1e-3);
        cell = Math.max(Math.sqrt(2 * wide * high / count), Math.max(wide, high) / 4000);
        columns = (int) (wide / cell) + 1;
        rows = (int) (high / cell) + 1;
        head = new int[columns * rows];
        next = new int[count];
        Arrays.fill(head, -1);
        for (int i = count - 1; i >= 0; i--) {
            int at = row(y[i]) * columns + column(x[i]);
            next[i] = head[at];
            head[at] = i;
        }
    }

    private int column(double px) {
        return Math.max(0, Math.min(columns - 1, (int) Math.floor((px - left) / cell)));
    }

    private int row(double py) {
        return Math.max(0, Math.min(rows - 1, (int) Math.floor((py - bottom) / cell)));
    }

    /**
     * Points other than a and b that lie within a tolerance of a straight line and between its
     * ends, in order along it.
     */
    int[] near(int a, double ax, double ay, int b, double bx, double by, double tolerance) {
        double dx = bx - ax;
        double dy = by - ay;
        double squared = dx * dx + dy * dy;
        double reach = tolerance * Math.sqrt(squared);
        List<Met> met = new ArrayList<>();
        int first = column(Math.min(ax, bx) - tolerance);
        int last = column(Math.max(ax, bx) + tolerance);
        for (int c = first; c <= last; c++) {
            double from = 0;
            double to = 1;
            if (Math.abs(dx) > tolerance) {
                double one = (left + c * cell - tolerance - ax) / dx;
                double other = (left + (c + 1) * cell + tolerance - ax) / dx;
                from = Math.max(0, Math.min(1, Math.min(one, other)));
                to = Math.max(0, Math.min(1, Math.max(one, other)));
            }
            int low = row(ay + Math.min(from * dy, to * dy) - 2 * tolerance);
            int top = row(ay + Math.max(from * dy, to * dy) + 2 * tolerance);
            for (int r = low; r <= top; r++) {
                for (int i = head[r * columns + c]; i >= 0; i = next[i]) {
                    double off = (x[i] - ax) * dy - (y[i] - ay) * dx;
                    double along = ((x[i] - ax) * dx + (y[i] - ay) * dy) / squared;
                    if (Math.abs(off) <= reach && along > 0 && along < 1 && i != a && i != b) {
                        met.add(new Met(i, along));
                    }
                }
            }
        }
        met.sort(Comparator.comparingDouble(Met::along).thenComparingInt(Met::point));
        return met.stream().mapToInt(Met::point).distinct().toArray();
    }
}
