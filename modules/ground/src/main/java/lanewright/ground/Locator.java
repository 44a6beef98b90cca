package lanewright.ground;

import java.util.Arrays;

/** Finds the triangle under a place by walking towards it from one that lies near. */
final class Locator {

    /** One starting triangle for about this many: the walk from it crosses only a few. */
    private static final int TRIANGLES_PER_CELL = 4;

    private final Mesh mesh;
    private final double left;
    private final double bottom;
    private final double cell;
    private final int columns;
    private final int rows;
    private final int[] start;

    Locator(Mesh mesh) {
        this.mesh = mesh;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.x.length; v++) {
            minX = Math.min(minX, mesh.x[v]);
            maxX = Math.max(maxX, mesh.x[v]);
            minY = Math.min(minY, mesh.y[v]);
            maxY = Math.max(maxY, mesh.y[v]);
        }
        left = minX;
        bottom = minY;
        double cells = Math.max(1, mesh.triangles() / (double) TRIANGLES_PER_CELL);
        double wide = Math.max(maxX - minX, 1e-9);
        double high = Math.max(maxY - minY, 1e-9);
        cell = Math.max(Math.sqrt(wide * high / cells), Math.max(wide, high) / 5000);
        columns = (int) (wide / cell) + 1;
        rows = (int) (high / cell) + 1;
        start = new int[columns * rows];
        Arrays.fill(start, Mesh.NONE);
        for (int t = 0; t < mesh.triangles(); t += 2) {
            int at = cellOf(mesh.x[mesh.corner[3 * t]], mesh.y[mesh.corner[3 * t]]);
            if (start[at] == Mesh.NONE) {
                start[at] = t;
            }
        }
        spread();
    }

    private void spread() {
        int near = 0;
        for (int i = 0; i < start.length; i++) {
            if (start[i] == Mesh.NONE) {
                start[i] = near;
            } else {
                near = start[i];
            }
        }
    }

    private int cellOf(double px, double py) {
        int column = Math.max(0, Math.min(columns - 1, (int) ((px - left) / cell)));
        int row = Math.max(0, Math.min(rows - 1, (int) ((py - bottom) / cell)));
        return row * columns + column;
    }

    /**
     * A triangle, solid or void, that holds the place or has it on its rim; -1 outside the hull.
     */
    int find(double px, double py) {
        if (start.length == 0 || mesh.triangles() == 0) {
            return Mesh.NONE;
        }
        return find(px, py, start[cellOf(px, py)]);
    }

    /**
     * The same, starting from a triangle that is known to be near. On breaklines a straight walk
     * can turn in a circle, so the side tried first changes with every step; after as many steps as
     * there are triangles every one of them is looked at.
     */
    int find(double px, double py, int from) {
        int t = from;
        int came = Mesh.NONE;
        int limit = 4 * mesh.triangles() + 16;
        for (int step = 0; step < limit; step++) {
            int to = t;
            int first = step % 3;
            boolean inside = true;
            for (int i = 0; i < 3; i++) {
                int k = (first + i) % 3;
                int other = mesh.neighbour[3 * t + k];
                if (other == came && came != Mesh.NONE) {
                    continue;
                }
                if (sideOf(t, k, px, py) < 0) {
                    inside = false;
                    to = other;
                    break;
                }
            }
            if (inside) {
                return t;
            }
            if (to == Mesh.NONE) {
                return Mesh.NONE;
            }
            came = t;
            t = to;
        }
        return search(px, py);
    }

    private int search(double px, double py) {
        for (int t = 0; t < mesh.triangles(); t++) {
            if (sideOf(t, 0, px, py) >= 0
                    && sideOf(t, 1, px, py) >= 0
                    && sideOf(t, 2, px, py) >= 0) {
                return t;
            }
        }
        return Mesh.NONE;
    }

    /** Over zero if the place lies inside of side {@code k} of triangle {@code t}. */
    double sideOf(int t, int k, double px, double py) {
        int a = mesh.corner[3 * t + Mesh.next(k)];
        int b = mesh.corner[3 * t + Mesh.last(k)];
        return Side.of(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b], px, py);
    }

    /**
     * The same as {@link #find}, but a solid triangle is preferred where the place lies on a rim.
     */
    int findSolid(double px, double py) {
        int t = find(px, py);
        if (t == Mesh.NONE || mesh.isSolid(t)) {
            return t;
        }
        for (int k = 0; k < 3; k++) {
            if (sideOf(t, k, px, py) == 0) {
                int other = mesh.neighbour[3 * t + k];
                if (mesh.isSolid(other)) {
                    return other;
                }
                int around = around(mesh.corner[3 * t + Mesh.next(k)], t, px, py);
                if (around == Mesh.NONE) {
                    around = around(mesh.corner[3 * t + Mesh.last(k)], t, px, py);
                }
                if (around != Mesh.NONE) {
                    return around;
                }
            }
        }
        return Mesh.NONE;
    }

    /** A solid triangle at {@code vertex}, if the place is that very vertex. */
    private int around(int vertex, int from, double px, double py) {
        if (mesh.x[vertex] != px || mesh.y[vertex] != py) {
            return Mesh.NONE;
        }
        Fan fan = new Fan(mesh, vertex, from);
        for (int t = fan.first(); t != Mesh.NONE; t = fan.next()) {
            if (mesh.isSolid(t)) {
                return t;
            }
        }
        return Mesh.NONE;
    }
}
