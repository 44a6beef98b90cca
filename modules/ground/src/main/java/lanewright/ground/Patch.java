package lanewright.ground;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Triangles to be laid into a ground in place of what is there, such as a lane. Immutable.
 *
 * <p>Its rim lies on the ground: a rim vertex takes the ground's height at its place, whatever
 * height is given here.
 */
public final class Patch {

    final double[] x;
    final double[] y;
    final double[] z;
    final int[] corner;
    final int[] rim;
    final BitSet lines;

    /**
     * A patch.
     *
     * @param x local eastings of its vertices, m
     * @param y local northings
     * @param z heights, m
     * @param corner vertices of its triangles, three by three, counter-clockwise
     * @param rim vertices of its outline, counter-clockwise, the first not repeated
     * @param lines sides of triangles that are lines in their own right; {@code 3 t + k} is the
     *     side of triangle {@code t} opposite its corner {@code k}
     * @throws IllegalArgumentException if lengths do not match or a number is out of range
     */
    public Patch(double[] x, double[] y, double[] z, int[] corner, int[] rim, BitSet lines) {
        if (x.length != y.length || x.length != z.length || corner.length % 3 != 0) {
            throw new IllegalArgumentException(
                    "patch has "
                            + x.length
                            + ", "
                            + y.length
                            + ", "
                            + z.length
                            + " coordinates and "
                            + corner.length
                            + " corners");
        }
        if (rim.length < 3) {
            throw new IllegalArgumentException("a rim of " + rim.length + " vertices");
        }
        check(x, corner);
        check(x, rim);
        this.x = x.clone();
        this.y = y.clone();
        this.z = z.clone();
        this.corner = corner.clone();
        this.rim = rim.clone();
        this.lines = (BitSet) lines.clone();
    }

    private static void check(double[] x, int[] vertices) {
        if (Arrays.stream(vertices).anyMatch(v -> v < 0 || v >= x.length)) {
            throw new IllegalArgumentException("patch names a vertex it does not have");
        }
    }

    /** Number of triangles. */
    public int triangleCount() {
        return corner.length / 3;
    }

    /** Number of vertices. */
    public int vertexCount() {
        return x.length;
    }
}
