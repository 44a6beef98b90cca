package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;

/** Triangles of a finished ground while patches are laid into them. */
final class Facets {

    private double[] x;
    private double[] y;
    private double[] z;
    private int vertices;
    private int[] corner;
    private int[] neighbour;
    private int triangles;
    private final BitSet breaks;
    private final BitSet voids = new BitSet();

    /** Goes on from a finished mesh, which is left as it is. */
    Facets(Mesh mesh) {
        this.x = mesh.x.clone();
        this.y = mesh.y.clone();
        this.z = mesh.z.clone();
        this.vertices = x.length;
        this.corner = mesh.corner.clone();
        this.neighbour = mesh.neighbour.clone();
        this.triangles = corner.length / 3;
        this.breaks = (BitSet) mesh.breaks.clone();
        this.voids.set(mesh.solid, mesh.triangles());
    }

    int triangles() {
        return triangles;
    }

    int vertices() {
        return vertices;
    }

    boolean isVoid(int t) {
        return voids.get(t);
    }

    int corner(int t, int k) {
        return corner[3 * t + k];
    }

    int neighbour(int t, int k) {
        return neighbour[3 * t + k];
    }

    double x(int v) {
        return x[v];
    }

    double y(int v) {
        return y[v];
    }

    double z(int v) {
        return z[v];
    }

    /** Triangle across a side; {@code 3 t + k} is the side of {@code t} opposite its corner k. */
    int neighbour(int side) {
        return neighbour[side];
    }

    /** The first side from {@code side} on that is a line; -1 if none. */
    int nextBreak(int side) {
        return breaks.nextSetBit(side);
    }

    /** Copies the corners of triangles from {@code begin} to before {@code end}. */
    void copyCorners(int begin, int end, int[] into, int at) {
        System.arraycopy(corner, 3 * begin, into, at, 3 * (end - begin));
    }

    /**
     * The first triangle of {@code was} from {@code t} on that has other corners now; -1 if none.
     */
    int nextChanged(Mesh was, int t) {
        int end = was.corner.length;
        int at = Arrays.mismatch(corner, 3 * t, end, was.corner, 3 * t, end);
        return at < 0 ? Mesh.NONE : t + at / 3;
    }

    /** Eastings of the vertices, with room for {@code size}. */
    double[] eastings(int size) {
        return Arrays.copyOf(x, Math.max(size, vertices));
    }

    /** Northings of the vertices, with room for {@code size}. */
    double[] northings(int size) {
        return Arrays.copyOf(y, Math.max(size, vertices));
    }

    /** Heights of the vertices, with room for {@code size}. */
    double[] heights(int size) {
        return Arrays.copyOf(z, Math.max(size, vertices));
    }

    double distance(int a, int b) {
        double dx = x[a] - x[b];
        double dy = y[a] - y[b];
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Height of the plane of triangle {@code t} at a place, m. */
    double height(int t, double px, double py) {
        return Plane.at(x, y, z, corner(t, 0), corner(t, 1), corner(t, 2), px, py);
    }

    /**
     * Puts a vertex into a triangle, or on its side {@code k} if that is given; returns its number.
     */
    int split(int t, int side, double px, double py, double pz) {
        int v = vertex(px, py, pz);
        if (side < 0) {
            splitInside(t, v);
        } else {
            splitSide(t, side, v);
        }
        return v;
    }

    private void splitInside(int t, int v) {
        int a = corner(t, 0);
        int b = corner(t, 1);
        int c = corner(t, 2);
        int acrossA = neighbour(t, 0);
        int acrossB = neighbour(t, 1);
        int acrossC = neighbour(t, 2);
        boolean breakA = breaks.get(3 * t);
        boolean breakB = breaks.get(3 * t + 1);
        boolean breakC = breaks.get(3 * t + 2);
        int second = triangle(voids.get(t));
        int third = triangle(voids.get(t));
        set(t, v, b, c, acrossA, second, third, breakA, false, false);
        set(second, v, c, a, acrossB, third, t, breakB, false, false);
        set(third, v, a, b, acrossC, t, second, breakC, false, false);
        point(acrossB, t, second, c, a);
        point(acrossC, t, third, a, b);
    }

    private void splitSide(int t, int k, int v) {
        int other = neighbour(t, k);
        boolean wasBreak = breaks.get(3 * t + k);
        int a = corner(t, k);
        int b = corner(t, Mesh.next(k));
        int c = corner(t, Mesh.last(k));
        int acrossB = neighbour(t, Mesh.next(k));
        int acrossC = neighbour(t, Mesh.last(k));
        boolean breakB = breaks.get(3 * t + Mesh.next(k));
        boolean breakC = breaks.get(3 * t + Mesh.last(k));
        int half = triangle(voids.get(t));
        if (other == Mesh.NONE) {
            set(t, a, b, v, Mesh.NONE, half, acrossC, wasBreak, false, breakC);
            set(half, a, v, c, Mesh.NONE, acrossB, t, wasBreak, breakB, false);
            point(acrossB, t, half, c, a);
            return;
        }
        int far = sideTowards(other, b, c);
        int d = corner(other, far);
        int acrossFromC = neighbour(other, Mesh.last(far));
        int acrossFromB = neighbour(other, Mesh.next(far));
        boolean breakDb = breaks.get(3 * other + Mesh.next(far));
        boolean breakDc = breaks.get(3 * other + Mesh.last(far));
        int otherHalf = triangle(voids.get(other));
        // other runs d, c, b: beside c lies acrossFromC (side d-c), beside b acrossFromB (side b-d)
        set(t, a, b, v, otherHalf, half, acrossC, wasBreak, false, breakC);
        set(half, a, v, c, other, acrossB, t, wasBreak, breakB, false);
        set(other, d, c, v, half, otherHalf, acrossFromC, wasBreak, false, breakDc);
        set(otherHalf, d, v, b, t, acrossFromB, other, wasBreak, breakDb, false);
        point(acrossB, t, half, c, a);
        point(acrossFromB, other, otherHalf, b, d);
    }

    /** The corner of {@code t} that lies opposite the side between {@code a} and {@code b}. */
    private int sideTowards(int t, int a, int b) {
        for (int k = 0; k < 3; k++) {
            int p = corner(t, Mesh.next(k));
            int q = corner(t, Mesh.last(k));
            if ((p == a && q == b) || (p == b && q == a)) {
                return k;
            }
        }
        throw new IllegalStateException("triangle " + t + " has no side " + a + " to " + b);
    }

    private void point(int t, int was, int now, int a, int b) {
        if (t != Mesh.NONE) {
            int k = sideTowards(t, a, b);
            if (neighbour[3 * t + k] == was) {
                neighbour[3 * t + k] = now;
            }
        }
    }

    private void set(
            int t,
            int a,
            int b,
            int c,
            int na,
            int nb,
            int nc,
            boolean ba,
            boolean bb,
            boolean bc) {
        corner[3 * t] = a;
        corner[3 * t + 1] = b;
        corner[3 * t + 2] = c;
        neighbour[3 * t] = na;
        neighbour[3 * t + 1] = nb;
        neighbour[3 * t + 2] = nc;
        breaks.set(3 * t, ba);
        breaks.set(3 * t + 1, bb);
        breaks.set(3 * t + 2, bc);
    }

    private int vertex(double px, double py, double pz) {
        if (vertices == x.length) {
            int more = vertices + vertices / 16 + 64;
            x = Arrays.copyOf(x, more);
            y = Arrays.copyOf(y, more);
            z = Arrays.copyOf(z, more);
        }
        x[vertices] = px;
        y[vertices] = py;
        z[vertices] = pz;
        return vertices++;
    }

    private int triangle(boolean isVoid) {
        if (3 * triangles == corner.length) {
            int more = 3 * (triangles + triangles / 16 + 64);
            corner = Arrays.copyOf(corner, more);
            neighbour = Arrays.copyOf(neighbour, more);
        }
        voids.set(triangles, isVoid);
        return triangles++;
    }
}
