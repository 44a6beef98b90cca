package lanewright.lane.surface;

import java.util.Arrays;

/**
 * A surface as triangles in the survey's local metres, each with the part of the lane that it is.
 * Corners run counter-clockwise seen from above. Where the surface steps straight up or down, two
 * vertices lie one above the other. Immutable.
 */
public final class Skin {

    private final double[] xyz;
    private final int[] corners;
    private final SurfacePart[] parts;

    private Skin(double[] xyz, int[] corners, SurfacePart[] parts) {
        this.xyz = xyz;
        this.corners = corners;
        this.parts = parts;
    }

    /** Number of vertices. */
    public int vertexCount() {
        return xyz.length / 3;
    }

    /** Local easting of vertex {@code v}, m. */
    public double x(int v) {
        return xyz[3 * v];
    }

    /** Local northing of vertex {@code v}, m. */
    public double y(int v) {
        return xyz[3 * v + 1];
    }

    /** Height of vertex {@code v}, m. */
    public double z(int v) {
        return xyz[3 * v + 2];
    }

    /** Number of triangles. */
    public int triangleCount() {
        return parts.length;
    }

    /** Vertex at corner {@code k}, 0 to 2 counter-clockwise, of triangle {@code t}. */
    public int corner(int t, int k) {
        return corners[3 * t + k];
    }

    /** What triangle {@code t} is part of. */
    public SurfacePart part(int t) {
        return parts[t];
    }

    /** Gathers triangles. */
    static final class Builder {
        private double[] xyz = new double[3 * 256];
        private int[] corners = new int[3 * 256];
        private SurfacePart[] parts = new SurfacePart[256];
        private int vertices;
        private int triangles;

        int vertex(double x, double y, double z) {
            if (3 * vertices == xyz.length) {
                xyz = Arrays.copyOf(xyz, 2 * xyz.length);
            }
            xyz[3 * vertices] = x;
            xyz[3 * vertices + 1] = y;
            xyz[3 * vertices + 2] = z;
            return vertices++;
        }

        void triangle(int a, int b, int c, SurfacePart part) {
            if (triangles == parts.length) {
                corners = Arrays.copyOf(corners, 2 * corners.length);
                parts = Arrays.copyOf(parts, 2 * parts.length);
            }
            corners[3 * triangles] = a;
            corners[3 * triangles + 1] = b;
            corners[3 * triangles + 2] = c;
            parts[triangles++] = part;
        }

        Skin build() {
            return new Skin(
                    Arrays.copyOf(xyz, 3 * vertices),
                    Arrays.copyOf(corners, 3 * triangles),
                    Arrays.copyOf(parts, triangles));
        }
    }
}
