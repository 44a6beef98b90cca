package lanewright.ground;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Draws a line of vertices into facets so that it runs along sides: a side in its way is split
 * where it is crossed, and a facet where a vertex of the line lies in it. The surface stays what it
 * was. A crossing or vertex within {@link #NEAR} of one that is there already becomes that one.
 */
final class RimWalk {

    /** Places nearer than this are one, m: a hundredth of a millimetre, well under any survey. */
    private static final double NEAR = 1e-5;

    private final Facets facets;
    private int vertex = Mesh.NONE;
    private int at;
    private final int[] fan = new int[2];

    RimWalk(Facets facets, int near) {
        this.facets = facets;
        this.at = near;
    }

    /** Puts the pen down at a place; the vertex there, or -1 where there are no facets. */
    int begin(double x, double y) {
        int t = find(x, y);
        if (t == Mesh.NONE) {
            return Mesh.NONE;
        }
        for (int k = 0; k < 3; k++) {
            int v = facets.corner(t, k);
            if (distance(v, x, y) <= NEAR) {
                at = t;
                vertex = v;
                return v;
            }
        }
        return put(t, x, y);
    }

    private int find(double x, double y) {
        int t = at;
        for (int step = 0; step < 4 * facets.triangles() + 16; step++) {
            int to = t;
            boolean inside = true;
            for (int i = 0; i < 3 && inside; i++) {
                int k = (step + i) % 3;
                int a = facets.corner(t, Mesh.next(k));
                int b = facets.corner(t, Mesh.last(k));
                if (side(a, b, x, y) < 0) {
                    inside = false;
                    to = facets.neighbour(t, k);
                }
            }
            if (inside) {
                return t;
            }
            if (to == Mesh.NONE) {
                return Mesh.NONE;
            }
            t = to;
        }
        return Mesh.NONE;
    }

    /**
     * Draws on to a place.
     *
     * @return the vertices passed after the one the pen was on, the last that of the place itself;
     *     empty if it is the one the pen was on; null if the line cannot be drawn
     */
    @Nullable List<Integer> drawTo(double x, double y) {
        List<Integer> passed = new ArrayList<>();
        int most = 64 + facets.triangles();
        for (int step = 0; step < most; step++) {
            if (distance(vertex, x, y) <= NEAR) {
                return passed;
            }
            if (!turnTowards(x, y)) {
                return null;
            }
            int b = facets.corner(at, fan[0]);
            int c = facets.corner(at, fan[1]);
            int before = vertex;
            if (isOnWay(b, x, y)) {
                vertex = b;
            } else if (isOnWay(c, x, y)) {
                vertex = c;
            } else if (side(b, c, x, y) >= 0 || distance(b, c, x, y) <= NEAR) {
                put(at, x, y);
            } else {
                cross(b, c, x, y);
            }
            if (vertex == before) {
                return null;
            }
            passed.add(vertex);
        }
        return null;
    }

    /** Turns round the vertex to the triangle in which the way on lies. */
    private boolean turnTowards(double x, double y) {
        int start = at;
        int t = start;
        boolean back = false;
        while (true) {
            int k = cornerOf(t, vertex);
            int b = facets.corner(t, Mesh.next(k));
            int c = facets.corner(t, Mesh.last(k));
            if (side(vertex, b, x, y) >= 0 && side(vertex, c, x, y) <= 0) {
                at = t;
                fan[0] = Mesh.next(k);
                fan[1] = Mesh.last(k);
                return true;
            }
            t = facets.neighbour(t, back ? Mesh.last(k) : Mesh.next(k));
            if (t == start) {
                return false;
            }
            if (t == Mesh.NONE) {
                if (back) {
                    return false;
                }
                back = true;
                t = facets.neighbour(start, Mesh.last(cornerOf(start, vertex)));
                if (t == Mesh.NONE) {
                    return false;
                }
            }
        }
    }

    private int cornerOf(int t, int v) {
        return facets.corner(t, 0) == v ? 0 : facets.corner(t, 1) == v ? 1 : 2;
    }

    /** True if a vertex lies on the straight way from the pen to a place, or at it. */
    private boolean isOnWay(int v, double x, double y) {
        if (distance(v, x, y) <= NEAR) {
            return true;
        }
        double ux = facets.x(vertex);
        double uy = facets.y(vertex);
        double dx = x - ux;
        double dy = y - uy;
        double length = Math.sqrt(dx * dx + dy * dy);
        double along = ((facets.x(v) - ux) * dx + (facets.y(v) - uy) * dy) / length;
        double aside = Math.abs((facets.x(v) - ux) * dy - (facets.y(v) - uy) * dx) / length;
        return aside <= NEAR && along > 0 && along < length;
    }

    /** Splits the side from b to c where the way to a place crosses it. */
    private void cross(int b, int c, double x, double y) {
        double ux = facets.x(vertex);
        double uy = facets.y(vertex);
        double sideB = Side.of(ux, uy, x, y, facets.x(b), facets.y(b));
        double sideC = Side.of(ux, uy, x, y, facets.x(c), facets.y(c));
        double part = sideB / (sideB - sideC);
        splitSide(at, 3 - fan[0] - fan[1], b, c, part);
    }

    /** Splits a side at a share of the way from b to c; takes an end if that would fold. */
    private void splitSide(int t, int k, int b, int c, double part) {
        double length = facets.distance(b, c);
        double x = facets.x(b) + part * (facets.x(c) - facets.x(b));
        double y = facets.y(b) + part * (facets.y(c) - facets.y(b));
        boolean nearB = part * length <= NEAR;
        boolean nearC = (1 - part) * length <= NEAR;
        int other = facets.neighbour(t, k);
        if (nearB || nearC || folds(t, b, c, x, y) || (other >= 0 && folds(other, b, c, x, y))) {
            vertex = nearB || (!nearC && part < 0.5) ? b : c;
            return;
        }
        double z = facets.z(b) + part * (facets.z(c) - facets.z(b));
        vertex = facets.split(t, k, x, y, z);
        at = t;
    }

    /** True if a place on the side between b and c would not leave two facets the right way up. */
    private boolean folds(int t, int b, int c, double x, double y) {
        int k = 0;
        while (facets.corner(t, k) == b || facets.corner(t, k) == c) {
            k++;
        }
        int apex = facets.corner(t, k);
        return !(side(apex, facets.corner(t, Mesh.next(k)), x, y) > 0
                && side(apex, facets.corner(t, Mesh.last(k)), x, y) < 0);
    }

    /** Puts a vertex into a triangle, or on its nearest side if it is near it. */
    private int put(int t, double x, double y) {
        int nearest = Mesh.NONE;
        double least = NEAR;
        for (int k = 0; k < 3; k++) {
            int b = facets.corner(t, Mesh.next(k));
            int c = facets.corner(t, Mesh.last(k));
            double off = distance(b, c, x, y);
            if (off <= least) {
                least = off;
                nearest = k;
            }
        }
        if (nearest >= 0) {
            int b = facets.corner(t, Mesh.next(nearest));
            int c = facets.corner(t, Mesh.last(nearest));
            double dx = facets.x(c) - facets.x(b);
            double dy = facets.y(c) - facets.y(b);
            double part = ((x - facets.x(b)) * dx + (y - facets.y(b)) * dy) / (dx * dx + dy * dy);
            splitSide(t, nearest, b, c, part);
            return vertex;
        }
        vertex = facets.split(t, -1, x, y, facets.height(t, x, y));
        at = t;
        return vertex;
    }

    private double side(int a, int b, double x, double y) {
        return Side.of(facets.x(a), facets.y(a), facets.x(b), facets.y(b), x, y);
    }

    private double distance(int v, double x, double y) {
        double dx = facets.x(v) - x;
        double dy = facets.y(v) - y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Distance of a place from the line through two vertices, m. */
    private double distance(int a, int b, double x, double y) {
        return Math.abs(side(a, b, x, y)) / facets.distance(a, b);
    }
}
