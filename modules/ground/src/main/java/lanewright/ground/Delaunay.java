package lanewright.ground;

import java.util.Arrays;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Delaunay triangles: no vertex lies inside the circle through the corners of a triangle, exactly.
 *
 * <p>Points are taken in turn; each splits the triangle that it lies in, and sides are flipped
 * until the circles round about are empty again (C. L. Lawson, Software for C1 surface
 * interpolation, in Mathematical Software III, Academic Press 1977). Outside the hull a ghost
 * triangle stands behind every side, whose circle is the half plane beyond it (the vertex at
 * infinity of J.-D. Boissonnat and M. Teillaud, On the randomized construction of the Delaunay
 * tree, Theoretical Computer Science 112, 1993). Because every test is exact, the work always ends
 * and the hull is truly convex, also for grids turned by any angle, where shots on one row miss
 * their line by the last digit. About half a microsecond and forty bytes of room a point and step.
 */
final class Delaunay {

    /** Asks whether to go on once in this many points. */
    private static final int CHECK = 50_000;

    private final Net net;
    private final Circle circle = new Circle();
    private int[] stack = new int[256];
    private int waiting;

    Delaunay(Net net) {
        this.net = net;
    }

    /**
     * Triangles of distinct points, taken in the order they are given.
     *
     * @return null if all points lie on one line
     */
    static @Nullable Net of(double[] x, double[] y, double[] z, Progress progress) {
        int third = 2;
        while (third < x.length && Side.of(x[0], y[0], x[1], y[1], x[third], y[third]) == 0) {
            third++;
        }
        if (third >= x.length) {
            return null;
        }
        Net net = new Net(x, y, z);
        new Delaunay(net).build(third, progress);
        return net;
    }

    private void build(int third, Progress progress) {
        boolean left = net.side(0, 1, third) > 0;
        first(left ? 0 : 1, left ? 1 : 0, third);
        for (int v = 2; v < net.vertices; v++) {
            if (v != third) {
                insert(v);
            }
            if (v % CHECK == 0) {
                progress.check();
            }
        }
    }

    private void first(int a, int b, int c) {
        int t = net.triangle();
        net.set(t, a, b, c);
        for (int k = 0; k < 3; k++) {
            int ghost = net.triangle();
            net.set(ghost, Mesh.NONE, net.end(3 * t + k), net.start(3 * t + k));
            net.link(3 * t + k, 3 * ghost);
        }
        // Ghost k lies behind side k; ghosts meet at the corner that their sides share.
        for (int k = 0; k < 3; k++) {
            int ghost = t + 1 + k;
            int next = t + 1 + Mesh.next(k);
            net.link(3 * ghost + 2, 3 * next + 1);
        }
    }

    /** Takes in a vertex that has been given its number. */
    void insert(int v) {
        double px = net.x[v];
        double py = net.y[v];
        int t = net.find(px, py);
        if (!net.isGhost(t)) {
            for (int side = 3 * t; side < 3 * t + 3; side++) {
                if (net.side(net.start(side), net.end(side), px, py) == 0) {
                    splitSide(side, v);
                    return;
                }
            }
        }
        splitInside(t, v);
    }

    private void splitInside(int t, int v) {
        int last = net.splitInside(t, v);
        push(t);
        push(last - 1);
        push(last);
        mend();
    }

    void splitSide(int side, int v) {
        int t = side / 3;
        int u = net.twin[side] / 3;
        net.splitSide(side, v);
        push(t);
        push(u);
        push(net.triangles - 2);
        push(net.triangles - 1);
        mend();
    }

    private void push(int t) {
        if (waiting == stack.length) {
            stack = Arrays.copyOf(stack, 2 * waiting);
        }
        stack[waiting++] = t;
    }

    /** Flips what lies opposite corner 0 of the waiting triangles, and so on outward. */
    private void mend() {
        while (waiting > 0) {
            int t = stack[--waiting];
            int side = 3 * t;
            if (!net.isLine(side) && isInside(net.corner[side], net.twin[side])) {
                int other = net.twin[side] / 3;
                net.flip(side);
                push(t);
                push(other);
            }
        }
    }

    /** True if vertex {@code v} lies inside the circle of the triangle of {@code side}. */
    boolean isInside(int v, int side) {
        int t = side / 3;
        int a = net.corner[3 * t];
        int b = net.corner[3 * t + 1];
        int c = net.corner[3 * t + 2];
        if (v < 0) {
            return false;
        }
        if (a < 0) {
            return net.side(b, c, v) > 0;
        }
        if (b < 0) {
            return net.side(c, a, v) > 0;
        }
        if (c < 0) {
            return net.side(a, b, v) > 0;
        }
        double[] x = net.x;
        double[] y = net.y;
        return circle.of(x[a], y[a], x[b], y[b], x[c], y[c], x[v], y[v]) > 0;
    }
}
