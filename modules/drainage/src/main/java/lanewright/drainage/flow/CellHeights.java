package lanewright.drainage.flow;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import lanewright.drainage.pond.Mesh;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Heights of cells, taken from a surface.
 *
 * <p>A cell has the height of the surface at its middle, unless a valley or a ridge of the surface
 * crosses it. Sampling alone turns a sloping ditch into a string of false pits, one wherever the
 * bottom slips between the middles of cells. So an edge where both sides rise away gives each cell
 * that it crosses the lowest height it has there: along a ditch that falls, each cell is then lower
 * than the one before. An edge where both sides fall away, if it was measured or designed as a
 * line, gives its highest: a bank thinner than a cell still holds water. Where both cross one cell
 * the valley stands, for water follows it. Other edges change no way that water takes, and leave
 * the middle's height.
 */
final class CellHeights {

    /** A side that rises or falls less than this across its edge lies level, rise over run. */
    private static final double LEVEL = 1e-9;

    /** So many triangles are gone through between two questions whether to go on. */
    private static final int OFTEN = 1 << 14;

    private final Mesh mesh;
    private final Cells cells;
    private final boolean @Nullable [] only;
    private final double[] heights;
    private final double[] valleys;
    private final double[] ridges;

    private CellHeights(Mesh mesh, Cells cells, boolean @Nullable [] only) {
        this.mesh = mesh;
        this.cells = cells;
        this.only = only;
        heights = new double[cells.count()];
        valleys = new double[cells.count()];
        ridges = new double[cells.count()];
        Arrays.fill(heights, Double.NaN);
        Arrays.fill(valleys, Double.NaN);
        Arrays.fill(ridges, Double.NaN);
    }

    /** Heights by cell, m; NaN where the surface has none. */
    static double[] of(Mesh mesh, Cells cells, Progress progress) {
        var taking = new CellHeights(mesh, cells, null);
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (t % OFTEN == 0) {
                progress.check();
            }
            taking.sample(t);
        }
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (t % OFTEN == 0) {
                progress.check();
            }
            taking.lines(t);
        }
        return taking.together();
    }

    /**
     * The heights of a surface that differs little from another: the same as {@link #of}, to the
     * last bit. Only cells near what changed are taken from the surface; the others see the same
     * triangles in the same order as before.
     *
     * @param was the surface before
     * @param known its heights by cell
     * @param boxes where the triangles of {@code was} lie
     * @param unchanged for each triangle of {@code mesh} the one of {@code was} that it is, never
     *     decreasing, or -1 if it is new
     */
    static double[] changed(
            Mesh was,
            double[] known,
            Boxes boxes,
            Mesh mesh,
            IntUnaryOperator unchanged,
            Cells cells,
            Progress progress) {
        boolean[] only = new boolean[cells.count()];
        var old = new Boxes.Marker(was, cells, only);
        var made = new Boxes.Marker(mesh, cells, only);
        int next = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (t % OFTEN == 0) {
                progress.check();
            }
            int same = unchanged.applyAsInt(t);
            if (same < 0) {
                made.mark(t);
                continue;
            }
            while (next < same) {
                old.mark(next++);
            }
            next = same + 1;
        }
        while (next < was.triangleCount()) {
            old.mark(next++);
        }
        var taking = new CellHeights(mesh, cells, only);
        Boxes.Touching touching = boxes.new Touching(only);
        int[] near = new int[1024];
        int count = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (t % OFTEN == 0) {
                progress.check();
            }
            int same = unchanged.applyAsInt(t);
            if (same < 0 || touching.touches(same)) {
                if (count == near.length) {
                    near = Arrays.copyOf(near, 2 * count);
                }
                near[count++] = t;
            }
        }
        for (int i = 0; i < count; i++) {
            taking.sample(near[i]);
        }
        progress.check();
        for (int i = 0; i < count; i++) {
            taking.lines(near[i]);
        }
        double[] heights = taking.together();
        for (int cell = 0; cell < heights.length; cell++) {
            if (!only[cell]) {
                heights[cell] = known[cell];
            }
        }
        return heights;
    }

    /** Takes each line between two triangles once, from the one with the lower number. */
    private void lines(int t) {
        for (int k = 0; k < 3; k++) {
            if (mesh.neighbour(t, k) > t) {
                line(t, k);
            }
        }
    }

    private double[] together() {
        for (int cell = 0; cell < heights.length; cell++) {
            if (!Double.isNaN(valleys[cell])) {
                heights[cell] = valleys[cell];
            } else if (!Double.isNaN(ridges[cell])) {
                heights[cell] = ridges[cell];
            }
        }
        return heights;
    }

    /** Gives every cell whose middle lies in the triangle, edges included, its height. */
    private void sample(int t) {
        int a = mesh.corner(t, 0);
        int b = mesh.corner(t, 1);
        int c = mesh.corner(t, 2);
        double ax = mesh.x(a);
        double ay = mesh.y(a);
        double bx = mesh.x(b) - ax;
        double by = mesh.y(b) - ay;
        double cx = mesh.x(c) - ax;
        double cy = mesh.y(c) - ay;
        double twice = bx * cy - cx * by;
        if (!(twice > 0)) {
            return; // upright
        }
        double bz = (mesh.z(b) - mesh.z(a)) / twice;
        double cz = (mesh.z(c) - mesh.z(a)) / twice;
        double size = cells.size();
        int first = first(Math.min(0, Math.min(bx, cx)) + ax - cells.west(), size);
        int last = last(Math.max(0, Math.max(bx, cx)) + ax - cells.west(), size, cells.columns());
        int bottom = first(Math.min(0, Math.min(by, cy)) + ay - cells.south(), size);
        int top = last(Math.max(0, Math.max(by, cy)) + ay - cells.south(), size, cells.rows());
        for (int row = bottom; row <= top; row++) {
            double y = cells.south() + (row + 0.5) * size - ay;
            for (int column = first; column <= last; column++) {
                double x = cells.west() + (column + 0.5) * size - ax;
                double shareB = x * cy - cx * y;
                double shareC = bx * y - x * by;
                int cell = row * cells.columns() + column;
                if (shareB >= 0
                        && shareC >= 0
                        && shareB + shareC <= twice
                        && (only == null || only[cell])) {
                    heights[cell] = mesh.z(a) + shareB * bz + shareC * cz;
                }
            }
        }
    }

    private static int first(double from, double size) {
        return Math.max(0, (int) Math.floor(from / size - 0.5));
    }

    private static int last(double to, double size, int count) {
        return Math.min(count - 1, (int) Math.ceil(to / size - 0.5));
    }

    private void line(int t, int k) {
        int a = mesh.corner(t, (k + 1) % 3);
        int b = mesh.corner(t, (k + 2) % 3);
        double here = rise(a, b, mesh.corner(t, k));
        double there = rise(a, b, opposite(mesh.neighbour(t, k), a, b));
        boolean valley = here >= -LEVEL && there >= -LEVEL && (here > LEVEL || there > LEVEL);
        boolean ridge =
                here <= LEVEL
                        && there <= LEVEL
                        && (here < -LEVEL || there < -LEVEL)
                        && mesh.isLine(t, k);
        if (valley || ridge) {
            cross(a, b, valley);
        }
    }

    private int opposite(int t, int a, int b) {
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(t, k);
            if (v != a && v != b) {
                return v;
            }
        }
        throw new IllegalArgumentException("triangle " + t + " has fewer than three corners");
    }

    /** How steeply the side with corner {@code c} rises away from the edge a-b, rise over run. */
    private double rise(int a, int b, int c) {
        double ex = mesh.x(b) - mesh.x(a);
        double ey = mesh.y(b) - mesh.y(a);
        double cx = mesh.x(c) - mesh.x(a);
        double cy = mesh.y(c) - mesh.y(a);
        double square = ex * ex + ey * ey;
        if (square == 0) {
            return 0; // an upright edge has no sides
        }
        double along = (cx * ex + cy * ey) / square;
        double up = mesh.z(c) - mesh.z(a) - along * (mesh.z(b) - mesh.z(a));
        double away = Math.abs(ex * cy - ey * cx) / Math.sqrt(square);
        return away > 0 ? up / away : up == 0 ? 0 : up > 0 ? 1 / LEVEL : -1 / LEVEL;
    }

    /** Walks from cell to cell along the edge a-b. */
    private void cross(int a, int b, boolean valley) {
        double x0 = (mesh.x(a) - cells.west()) / cells.size();
        double y0 = (mesh.y(a) - cells.south()) / cells.size();
        double dx = (mesh.x(b) - cells.west()) / cells.size() - x0;
        double dy = (mesh.y(b) - cells.south()) / cells.size() - y0;
        int column = clamp((int) Math.floor(x0), cells.columns());
        int row = clamp((int) Math.floor(y0), cells.rows());
        int lastColumn = clamp((int) Math.floor(x0 + dx), cells.columns());
        int lastRow = clamp((int) Math.floor(y0 + dy), cells.rows());
        int stepX = lastColumn > column ? 1 : -1;
        int stepY = lastRow > row ? 1 : -1;
        double from = 0;
        while (true) {
            double toX =
                    column == lastColumn
                            ? Double.POSITIVE_INFINITY
                            : (column + (stepX > 0 ? 1 : 0) - x0) / dx;
            double toY =
                    row == lastRow
                            ? Double.POSITIVE_INFINITY
                            : (row + (stepY > 0 ? 1 : 0) - y0) / dy;
            double to = Math.max(from, Math.min(1, Math.min(toX, toY)));
            set(row * cells.columns() + column, a, b, from, to, valley);
            if (toX == Double.POSITIVE_INFINITY && toY == Double.POSITIVE_INFINITY) {
                return;
            }
            if (toX < toY) {
                column += stepX;
            } else {
                row += stepY;
            }
            from = to;
        }
    }

    private static int clamp(int at, int count) {
        return Math.max(0, Math.min(count - 1, at));
    }

    private void set(int cell, int a, int b, double from, double to, boolean valley) {
        if (only != null && !only[cell]) {
            return;
        }
        double fall = mesh.z(b) - mesh.z(a);
        double one = mesh.z(a) + from * fall;
        double two = mesh.z(a) + to * fall;
        if (valley) {
            double low = Math.min(one, two);
            if (!(valleys[cell] <= low)) {
                valleys[cell] = low;
            }
        } else {
            double high = Math.max(one, two);
            if (!(ridges[cell] >= high)) {
                ridges[cell] = high;
            }
        }
    }
}
