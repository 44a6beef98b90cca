package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Cuts straight lines through a ground, one after another, reusing its memory. For one thread.
 *
 * <p>The walk never nudges a number: a vertex that lies exactly on the line counts as lying to its
 * left, everywhere and always, which is the same as moving the line by nothing at all to the right.
 * So it only ever crosses sides of triangles between one end on the left and one on the right, also
 * where it runs through a vertex or along an edge; what is written down are the places on the true
 * line. A line along the rim of the ground has ground under it.
 */
public final class LineCutter {

    /**
     * A side both of whose ends lie further than this before the end of the line is crossed for
     * sure, m: far over the rounding of a survey's coordinates. Nearer ones are tested exactly.
     */
    private static final double NEAR = 1e-6;

    private final Mesh mesh;
    private final Locator locator;
    private final int[] hull;

    private double px;
    private double py;
    private double qx;
    private double qy;
    private double dirX;
    private double dirY;
    private double length;
    private double nearEnd;
    private boolean tieIsLeft;

    private int size;
    private double[] distance = new double[256];
    private double[] height = new double[256];
    private int[] from = new int[256];
    private int[] to = new int[256];
    private double[] share = new double[256];
    private boolean[] gap = new boolean[256];

    LineCutter(Mesh mesh, Locator locator, int[] hull) {
        this.mesh = mesh;
        this.locator = locator;
        this.hull = hull;
    }

    /**
     * The ground along the straight line from one place to another.
     *
     * @param x0 local easting of the start, m
     * @param y0 local northing of the start, m
     * @param x1 local easting of the end, m
     * @param y1 local northing of the end, m
     * @return a vertex wherever the line crosses a side of a triangle, and at both ends where they
     *     lie on the ground; empty if no ground lies under it
     * @throws IllegalArgumentException if a number is not finite or the line has no length
     */
    public GroundLine cut(double x0, double y0, double x1, double y1) {
        if (!Double.isFinite(x0)
                || !Double.isFinite(y0)
                || !Double.isFinite(x1)
                || !Double.isFinite(y1)) {
            throw new IllegalArgumentException(
                    "line must be finite, was " + x0 + ", " + y0 + " to " + x1 + ", " + y1);
        }
        px = x0;
        py = y0;
        qx = x1;
        qy = y1;
        length = Math.sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0));
        if (!(length > 0)) {
            throw new IllegalArgumentException("line has no length at " + x0 + ", " + y0);
        }
        dirX = (x1 - x0) / length;
        dirY = (y1 - y0) / length;
        nearEnd = length - NEAR;
        tieIsLeft = true;
        walk();
        if (size == 0) {
            tieIsLeft = false;
            walk();
        }
        return finish();
    }

    /**
     * Walks from triangle to triangle. Between them lies a side with one end on the right of the
     * line and one on the left; of the next triangle only the corner ahead is new.
     */
    private void walk() {
        size = 0;
        int t = begin();
        int out = t == Mesh.NONE ? -1 : exit(t);
        if (out < 0) {
            return;
        }
        int right = mesh.corner[3 * t + Mesh.next(out)];
        int left = mesh.corner[3 * t + Mesh.last(out)];
        double sideRight = side(right);
        double sideLeft = side(left);
        double alongRight = along(right);
        double alongLeft = along(left);
        while (true) {
            setGap(!mesh.isSolid(t) && !alongRim(t));
            if ((alongRight >= nearEnd || alongLeft >= nearEnd) && reaches(right, left)) {
                addEnd(t, qx, qy, length);
                return;
            }
            if (right < left) {
                addCrossing(right, left, sideRight, sideLeft, alongRight, alongLeft);
            } else {
                addCrossing(left, right, sideLeft, sideRight, alongLeft, alongRight);
            }
            int next = mesh.neighbour[3 * t + out];
            if (next == Mesh.NONE) {
                // The hull is convex: a line that leaves it does not come back.
                return;
            }
            int in = mesh.sideTo(next, t);
            int ahead = mesh.corner[3 * next + in];
            double sideAhead = side(ahead);
            if (isLeft(sideAhead)) {
                left = ahead;
                sideLeft = sideAhead;
                alongLeft = along(ahead);
                out = Mesh.next(in);
            } else {
                right = ahead;
                sideRight = sideAhead;
                alongRight = along(ahead);
                out = Mesh.last(in);
            }
            t = next;
        }
    }

    /** True if the line ends before it crosses this side, or on it. */
    private boolean reaches(int right, int left) {
        return Side.of(mesh.x[right], mesh.y[right], mesh.x[left], mesh.y[left], qx, qy) >= 0;
    }

    /** The triangle in which the line starts, its first point written down; -1 if it meets none. */
    private int begin() {
        int t = locator.find(px, py);
        if (t == Mesh.NONE) {
            return enter();
        }
        int holds = t;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner[3 * t + k];
            if (mesh.x[v] == px && mesh.y[v] == py) {
                return beginAtVertex(v, t);
            }
        }
        for (int k = 0; k < 3; k++) {
            if (locator.sideOf(t, k, px, py) == 0) {
                holds = beginOnSide(t, k);
            }
        }
        if (holds != Mesh.NONE) {
            addEnd(holds, px, py, 0);
        }
        return holds;
    }

    private int beginAtVertex(int v, int any) {
        Fan fan = new Fan(mesh, v, any);
        for (int t = fan.first(); t != Mesh.NONE; t = fan.next()) {
            int k = mesh.cornerOf(t, v);
            if (!isLeft(mesh.corner[3 * t + Mesh.next(k)])
                    && isLeft(mesh.corner[3 * t + Mesh.last(k)])) {
                addVertex(v, 0);
                return t;
            }
        }
        return Mesh.NONE;
    }

    private int beginOnSide(int t, int k) {
        int a = mesh.corner[3 * t + Mesh.next(k)];
        int b = mesh.corner[3 * t + Mesh.last(k)];
        boolean leftA = isLeft(a);
        boolean leftB = isLeft(b);
        boolean stays;
        if (leftA != leftB) {
            stays = leftA;
        } else {
            boolean sameWay = (mesh.x[b] - mesh.x[a]) * dirX + (mesh.y[b] - mesh.y[a]) * dirY > 0;
            stays = sameWay != tieIsLeft;
        }
        return stays ? t : mesh.neighbour[3 * t + k];
    }

    /**
     * The side by which the line leaves a triangle: its first end on the right, its second on the
     * left.
     */
    private int exit(int t) {
        boolean l0 = isLeft(mesh.corner[3 * t]);
        boolean l1 = isLeft(mesh.corner[3 * t + 1]);
        boolean l2 = isLeft(mesh.corner[3 * t + 2]);
        if (!l1 && l2) {
            return 0;
        }
        if (!l2 && l0) {
            return 1;
        }
        return !l0 && l1 ? 2 : -1;
    }

    private double side(int v) {
        return Side.of(px, py, qx, qy, mesh.x[v], mesh.y[v]);
    }

    private boolean isLeft(int v) {
        return isLeft(side(v));
    }

    private boolean isLeft(double side) {
        return side > 0 || (side == 0 && tieIsLeft);
    }

    /** True if a side of this void lies exactly on the line and has ground behind it. */
    private boolean alongRim(int t) {
        for (int k = 0; k < 3; k++) {
            if (mesh.isSolid(mesh.neighbour[3 * t + k])
                    && side(mesh.corner[3 * t + Mesh.next(k)]) == 0
                    && side(mesh.corner[3 * t + Mesh.last(k)]) == 0) {
                return true;
            }
        }
        return false;
    }

    /** The triangle by which the line comes in from outside the hull; -1 if it does not. */
    private int enter() {
        for (int rim : hull) {
            int t = rim / 3;
            int k = rim % 3;
            int a = mesh.corner[3 * t + Mesh.next(k)];
            int b = mesh.corner[3 * t + Mesh.last(k)];
            double sideA = side(a);
            double sideB = side(b);
            if (isLeft(sideA)
                    && !isLeft(sideB)
                    && Side.of(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b], px, py) <= 0
                    && Side.of(mesh.x[a], mesh.y[a], mesh.x[b], mesh.y[b], qx, qy) > 0) {
                if (a < b) {
                    addCrossing(a, b, sideA, sideB, along(a), along(b));
                } else {
                    addCrossing(b, a, sideB, sideA, along(b), along(a));
                }
                return t;
            }
        }
        return Mesh.NONE;
    }

    private double along(int v) {
        return (mesh.x[v] - px) * dirX + (mesh.y[v] - py) * dirY;
    }

    private void setGap(boolean bare) {
        if (size > 0) {
            gap[size - 1] = bare;
        }
    }

    /** Ends in the order of their numbers, so that a side is crossed alike from both sides. */
    private void addCrossing(
            int a, int b, double sideA, double sideB, double alongA, double alongB) {
        if (sideA == 0) {
            addVertex(a, alongA);
        } else if (sideB == 0) {
            addVertex(b, alongB);
        } else {
            double part = sideA / (sideA - sideB);
            add(
                    alongA + part * (alongB - alongA),
                    mesh.z[a] + part * (mesh.z[b] - mesh.z[a]),
                    a,
                    b,
                    part);
        }
    }

    private void addVertex(int v, double at) {
        if (size > 0 && from[size - 1] == v && to[size - 1] == v) {
            return;
        }
        add(at, mesh.z[v], v, v, 0);
    }

    private void addEnd(int t, double x, double y, double at) {
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner[3 * t + k];
            if (mesh.x[v] == x && mesh.y[v] == y) {
                addVertex(v, at);
                return;
            }
        }
        add(at, mesh.height(t, x, y), GroundLine.INSIDE, t, 0);
    }

    private void add(double at, double z, int a, int b, double part) {
        if (size == distance.length) {
            int more = 2 * size;
            distance = Arrays.copyOf(distance, more);
            height = Arrays.copyOf(height, more);
            from = Arrays.copyOf(from, more);
            to = Arrays.copyOf(to, more);
            share = Arrays.copyOf(share, more);
            gap = Arrays.copyOf(gap, more);
        }
        double low = size > 0 ? distance[size - 1] : 0;
        distance[size] = Math.max(low, Math.min(length, at));
        height[size] = z;
        from[size] = a;
        to[size] = b;
        share[size] = part;
        gap[size] = false;
        size++;
    }

    /** Leaves out what lies in the open: a point with no ground before it and none behind. */
    private GroundLine finish() {
        int kept = 0;
        BitSet gaps = new BitSet();
        for (int i = 0; i < size; i++) {
            boolean before = i > 0 && !gap[i - 1];
            boolean behind = i < size - 1 && !gap[i];
            if (!before && !behind) {
                continue;
            }
            distance[kept] = distance[i];
            height[kept] = height[i];
            from[kept] = from[i];
            to[kept] = to[i];
            share[kept] = share[i];
            gaps.set(kept, !behind && i < size - 1);
            kept++;
        }
        if (kept > 0) {
            gaps.clear(kept - 1);
        }
        return new GroundLine(
                px,
                py,
                dirX,
                dirY,
                Arrays.copyOf(distance, kept),
                Arrays.copyOf(height, kept),
                Arrays.copyOf(from, kept),
                Arrays.copyOf(to, kept),
                Arrays.copyOf(share, kept),
                gaps);
    }
}
