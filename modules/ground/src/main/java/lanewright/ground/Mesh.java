package lanewright.ground;

import java.util.BitSet;

/**
 * Triangles over the whole convex hull of the vertices, as flat arrays. The first {@code solid} of
 * them are ground; the rest, the voids, only carry a walk across bays and holes.
 *
 * <p>Corners run counter-clockwise. Side {@code k} of a triangle lies opposite its corner {@code
 * k}; a neighbour of -1 is the outside of the hull. At most 73 bytes a vertex are kept: three
 * doubles, and for each of about two triangles six ints and three bits.
 */
final class Mesh {

    static final int NONE = -1;

    final double[] x;
    final double[] y;
    final double[] z;
    final int[] corner;
    final int[] neighbour;
    final int solid;
    final BitSet breaks;

    Mesh(
            double[] x,
            double[] y,
            double[] z,
            int[] corner,
            int[] neighbour,
            int solid,
            BitSet breaks) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.corner = corner;
        this.neighbour = neighbour;
        this.solid = solid;
        this.breaks = breaks;
    }

    int triangles() {
        return corner.length / 3;
    }

    static int next(int k) {
        return k == 2 ? 0 : k + 1;
    }

    static int last(int k) {
        return k == 0 ? 2 : k - 1;
    }

    /** Which side of {@code triangle} its neighbour {@code other} lies across. */
    int sideTo(int triangle, int other) {
        int at = 3 * triangle;
        return neighbour[at] == other ? 0 : neighbour[at + 1] == other ? 1 : 2;
    }

    /** Which corner of {@code triangle} is {@code vertex}; -1 if none. */
    int cornerOf(int triangle, int vertex) {
        int at = 3 * triangle;
        return corner[at] == vertex
                ? 0
                : corner[at + 1] == vertex ? 1 : corner[at + 2] == vertex ? 2 : -1;
    }

    boolean isSolid(int triangle) {
        return triangle >= 0 && triangle < solid;
    }

    /** Height of the plane of {@code triangle} at a place, m. */
    double height(int triangle, double px, double py) {
        int at = 3 * triangle;
        return Plane.at(x, y, z, corner[at], corner[at + 1], corner[at + 2], px, py);
    }

    /** Twice the plan area of a triangle, m², over zero. */
    double twiceArea(int triangle) {
        int a = corner[3 * triangle];
        int b = corner[3 * triangle + 1];
        int c = corner[3 * triangle + 2];
        return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }

    /** Easting of the middle of a triangle, m. */
    double middleX(int triangle) {
        int at = 3 * triangle;
        return (x[corner[at]] + x[corner[at + 1]] + x[corner[at + 2]]) / 3;
    }

    /** Northing of the middle of a triangle, m. */
    double middleY(int triangle) {
        int at = 3 * triangle;
        return (y[corner[at]] + y[corner[at + 1]] + y[corner[at + 2]]) / 3;
    }
}
