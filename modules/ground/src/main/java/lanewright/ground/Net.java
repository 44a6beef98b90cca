package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Triangles of a survey while they are being made.
 *
 * <p>A side is numbered {@code 3 t + k}: it lies opposite corner {@code k} of triangle {@code t},
 * and {@link #twin} names the same side as seen from the other triangle. Every side of the convex
 * hull has a ghost behind it, a triangle whose third corner is nowhere ({@link Mesh#NONE}); so
 * every side has a twin and every vertex has triangles all around it.
 */
final class Net {

    double[] x;
    double[] y;
    double[] z;
    int vertices;
    int[] corner;
    int[] twin;
    int triangles;

    /**
     * A bit for each of a triangle's three sides: set if it is part of a line. Empty without any.
     */
    private byte[] lines = new byte[0];

    /** Some triangle at each vertex; kept up once {@link #indexVertices} was called. */
    private int[] at = new int[0];

    private boolean indexed;

    /** Triangles that are not ground; set when all lines are in. */
    private final BitSet voids = new BitSet();

    /** A triangle near the last place asked for. */
    private int recent;

    Net(double[] x, double[] y, double[] z) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.vertices = x.length;
        int room = 6 * x.length + 66;
        this.corner = new int[room];
        this.twin = new int[room];
    }

    // --- asking

    /**
     * A ghost: the hull can be walked round from it. There is one as soon as there are triangles.
     */
    int anyGhost() {
        int t = 0;
        while (!isGhost(t)) {
            t++;
        }
        return t;
    }

    boolean isGhost(int t) {
        return corner[3 * t] < 0 || corner[3 * t + 1] < 0 || corner[3 * t + 2] < 0;
    }

    /** First vertex of a side, counter-clockwise round its triangle. */
    int start(int side) {
        int k = side % 3;
        return corner[side - k + Mesh.next(k)];
    }

    /** Second vertex of a side. */
    int end(int side) {
        int k = side % 3;
        return corner[side - k + Mesh.last(k)];
    }

    boolean isLine(int side) {
        return lines.length > 0 && (lines[side / 3] & 1 << side % 3) != 0;
    }

    private void put(int side, boolean isLine) {
        if (lines.length == 0) {
            return;
        }
        int bit = 1 << side % 3;
        int bits = lines[side / 3];
        lines[side / 3] = (byte) (isLine ? bits | bit : bits & ~bit);
    }

    void setLine(int side, boolean isLine) {
        if (lines.length == 0) {
            lines = new byte[corner.length / 3];
        }
        put(side, isLine);
        put(twin[side], isLine);
    }

    double distance(int a, int b) {
        double dx = x[a] - x[b];
        double dy = y[a] - y[b];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Height of the plane of a triangle at a place, m. */
    double height(int t, double px, double py) {
        return Plane.at(x, y, z, corner[3 * t], corner[3 * t + 1], corner[3 * t + 2], px, py);
    }

    /** On which side of the line from a to b vertex c lies. */
    double side(int a, int b, int c) {
        return Side.of(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    /** On which side of the line from a to b a place lies. */
    double side(int a, int b, double px, double py) {
        return Side.of(x[a], y[a], x[b], y[b], px, py);
    }

    /** A triangle at vertex {@code v}. */
    int at(int v) {
        return at[v];
    }

    /** The corner of triangle {@code t} that is vertex {@code v}. */
    int cornerOf(int t, int v) {
        return corner[3 * t] == v ? 0 : corner[3 * t + 1] == v ? 1 : 2;
    }

    /** The next triangle round vertex {@code v}, counter-clockwise. */
    int turn(int t, int v) {
        return twin[3 * t + Mesh.next(cornerOf(t, v))] / 3;
    }

    /** The side from vertex {@code a} to vertex {@code b}, or -1 if there is none. */
    int sideBetween(int a, int b) {
        int t = at[a];
        do {
            int k = cornerOf(t, a);
            if (corner[3 * t + Mesh.next(k)] == b) {
                return 3 * t + Mesh.last(k);
            }
            t = turn(t, a);
        } while (t != at[a]);
        return Mesh.NONE;
    }

    /** From here on {@link #at}, {@link #sideBetween} and all that stands on them may be asked. */
    void indexVertices() {
        at = new int[x.length];
        for (int s = 0; s < 3 * triangles; s++) {
            if (corner[s] >= 0) {
                at[corner[s]] = s / 3;
            }
        }
        indexed = true;
    }

    private void touch(int t) {
        if (indexed) {
            for (int s = 3 * t; s < 3 * t + 3; s++) {
                if (corner[s] >= 0) {
                    at[corner[s]] = t;
                }
            }
        }
    }

    /**
     * The triangle that holds a place, by walking there; a ghost, the one behind a side that the
     * place lies truly outside of, where it is not within the hull. The side that is looked at
     * first changes with every step, so that a walk among lines does not turn in a circle for long;
     * if it does, every triangle is looked at.
     */
    int find(double px, double py) {
        int t = recent;
        for (int k = 0; k < 3; k++) {
            if (corner[3 * t + k] < 0) {
                t = twin[3 * t + k] / 3;
                break;
            }
        }
        int came = Mesh.NONE;
        int first = 0;
        for (int step = 0; step < 4 * triangles; step++) {
            int out = Mesh.NONE;
            for (int i = 0; i < 3 && out < 0; i++) {
                int s = 3 * t + (first + i) % 3;
                if (s != came && side(start(s), end(s), px, py) < 0) {
                    out = s;
                }
            }
            if (out < 0) {
                recent = t;
                return t;
            }
            came = twin[out];
            t = came / 3;
            if (isGhost(t)) {
                recent = t;
                return t;
            }
            first = Mesh.next(first);
        }
        return search(px, py);
    }

    private int search(double px, double py) {
        for (int t = 0; t < triangles; t++) {
            if (!isGhost(t)
                    && side(corner[3 * t], corner[3 * t + 1], px, py) >= 0
                    && side(corner[3 * t + 1], corner[3 * t + 2], px, py) >= 0
                    && side(corner[3 * t + 2], corner[3 * t], px, py) >= 0) {
                return t;
            }
        }
        throw new IllegalStateException("no triangle at " + px + ", " + py);
    }

    /** Where the next search should begin. */
    void beginAt(int t) {
        recent = t;
    }

    // --- changing

    void link(int one, int other) {
        twin[one] = other;
        twin[other] = one;
    }

    int vertex(double px, double py, double pz) {
        if (vertices == x.length) {
            int room = vertices + vertices / 8 + 64;
            x = Arrays.copyOf(x, room);
            y = Arrays.copyOf(y, room);
            z = Arrays.copyOf(z, room);
            at = Arrays.copyOf(at, indexed ? room : 0);
        }
        x[vertices] = px;
        y[vertices] = py;
        z[vertices] = pz;
        return vertices++;
    }

    int triangle() {
        if (3 * triangles + 3 > corner.length) {
            int room = 3 * (triangles + triangles / 8 + 64);
            corner = Arrays.copyOf(corner, room);
            twin = Arrays.copyOf(twin, room);
            lines = Arrays.copyOf(lines, lines.length == 0 ? 0 : room / 3);
        }
        return triangles++;
    }

    void set(int t, int a, int b, int c) {
        corner[3 * t] = a;
        corner[3 * t + 1] = b;
        corner[3 * t + 2] = c;
    }

    /** Joins a side to what lay behind a side before, line or not. */
    private void inherit(int side, int across, boolean isLine) {
        link(side, across);
        put(side, isLine);
    }

    /**
     * Splits a triangle, or a ghost, into three by vertex {@code v}, which becomes their corner 0.
     * Returns the last of them; the other two are {@code t} and the one before the last.
     */
    int splitInside(int t, int v) {
        int a = corner[3 * t];
        int b = corner[3 * t + 1];
        int c = corner[3 * t + 2];
        int acrossB = twin[3 * t + 1];
        int acrossC = twin[3 * t + 2];
        boolean lineB = isLine(3 * t + 1);
        boolean lineC = isLine(3 * t + 2);
        int second = triangle();
        int third = triangle();
        set(t, v, b, c);
        set(second, v, c, a);
        set(third, v, a, b);
        inherit(3 * second, acrossB, lineB);
        inherit(3 * third, acrossC, lineC);
        join(3 * t + 1, 3 * second + 2);
        join(3 * second + 1, 3 * third + 2);
        join(3 * third + 1, 3 * t + 2);
        voids.set(second, voids.get(t));
        voids.set(third, voids.get(t));
        touch(t);
        touch(second);
        touch(third);
        recent = isGhost(t) ? isGhost(second) ? third : second : t;
        return third;
    }

    /** Joins two sides by which no line runs. */
    private void join(int one, int other) {
        link(one, other);
        put(one, false);
        put(other, false);
    }

    /**
     * Splits a side by vertex {@code v}, which becomes corner 0 of all four triangles: those of the
     * side and the two that are last in number.
     */
    void splitSide(int side, int v) {
        int t = side / 3;
        int k = side % 3;
        int other = twin[side];
        int u = other / 3;
        int far = other % 3;
        boolean line = isLine(side);
        int a = corner[side];
        int b = corner[3 * t + Mesh.next(k)];
        int c = corner[3 * t + Mesh.last(k)];
        int d = corner[other];
        int acrossB = twin[3 * t + Mesh.next(k)];
        int acrossC = twin[3 * t + Mesh.last(k)];
        boolean lineB = isLine(3 * t + Mesh.next(k));
        boolean lineC = isLine(3 * t + Mesh.last(k));
        // The other triangle runs d, c, b.
        int fromC = twin[3 * u + Mesh.next(far)];
        int fromB = twin[3 * u + Mesh.last(far)];
        boolean lineFromC = isLine(3 * u + Mesh.next(far));
        boolean lineFromB = isLine(3 * u + Mesh.last(far));
        int half = triangle();
        int otherHalf = triangle();
        set(t, v, a, b);
        set(half, v, c, a);
        set(u, v, d, c);
        set(otherHalf, v, b, d);
        inherit(3 * t, acrossC, lineC);
        inherit(3 * half, acrossB, lineB);
        inherit(3 * u, fromB, lineFromB);
        inherit(3 * otherHalf, fromC, lineFromC);
        join(3 * t + 2, 3 * half + 1);
        join(3 * half + 2, 3 * u + 1);
        join(3 * u + 2, 3 * otherHalf + 1);
        join(3 * otherHalf + 2, 3 * t + 1);
        put(3 * t + 1, line);
        put(3 * otherHalf + 2, line);
        put(3 * half + 2, line);
        put(3 * u + 1, line);
        voids.set(half, voids.get(t));
        voids.set(otherHalf, voids.get(u));
        touch(t);
        touch(half);
        touch(u);
        touch(otherHalf);
        recent = isGhost(t) ? u : t;
    }

    /**
     * Turns the side shared by two triangles into the other diagonal of their quadrangle. The
     * corner opposite the side becomes corner 0 of both.
     */
    void flip(int side) {
        int t = side / 3;
        int k = side % 3;
        int other = twin[side];
        int u = other / 3;
        int far = other % 3;
        int p = corner[side];
        int q = corner[other];
        int a = corner[3 * t + Mesh.next(k)];
        int b = corner[3 * t + Mesh.last(k)];
        int besideA = twin[3 * t + Mesh.last(k)];
        int besideB = twin[3 * t + Mesh.next(k)];
        boolean lineA = isLine(3 * t + Mesh.last(k));
        boolean lineB = isLine(3 * t + Mesh.next(k));
        int beyondA = twin[3 * u + Mesh.next(far)];
        int beyondB = twin[3 * u + Mesh.last(far)];
        boolean lineBeyondA = isLine(3 * u + Mesh.next(far));
        boolean lineBeyondB = isLine(3 * u + Mesh.last(far));
        set(t, p, a, q);
        set(u, p, q, b);
        inherit(3 * t, beyondA, lineBeyondA);
        inherit(3 * t + 2, besideA, lineA);
        inherit(3 * u, beyondB, lineBeyondB);
        inherit(3 * u + 1, besideB, lineB);
        join(3 * t + 1, 3 * u + 2);
        touch(t);
        touch(u);
    }

    // --- finishing

    boolean isVoid(int t) {
        return voids.get(t);
    }

    void leaveOut(int t) {
        voids.set(t);
    }

    /** The finished mesh: ground first, voids last, ghosts gone, otherwise in the same order. */
    Mesh mesh() {
        int[] place = new int[triangles];
        int ground = 0;
        for (int t = 0; t < triangles; t++) {
            if (!voids.get(t) && !isGhost(t)) {
                place[t] = ground++;
            }
        }
        int all = ground;
        for (int t = 0; t < triangles; t++) {
            if (isGhost(t)) {
                place[t] = Mesh.NONE;
            } else if (voids.get(t)) {
                place[t] = all++;
            }
        }
        int[] corners = new int[3 * all];
        int[] neighbours = new int[3 * all];
        BitSet breaks = new BitSet(3 * all);
        for (int t = 0; t < triangles; t++) {
            if (place[t] == Mesh.NONE) {
                continue;
            }
            for (int k = 0; k < 3; k++) {
                int to = 3 * place[t] + k;
                corners[to] = corner[3 * t + k];
                neighbours[to] = place[twin[3 * t + k] / 3];
                breaks.set(to, isLine(3 * t + k));
            }
        }
        return new Mesh(
                Arrays.copyOf(x, vertices),
                Arrays.copyOf(y, vertices),
                Arrays.copyOf(z, vertices),
                corners,
                neighbours,
                ground,
                breaks);
    }
}
