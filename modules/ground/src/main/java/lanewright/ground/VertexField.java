package lanewright.ground;

/**
 * A value at every vertex of a ground, linear on its triangles: topsoil depth, depth to bearing
 * soil. NaN where it is not known; then it is not known anywhere on the triangles that meet there.
 */
public final class VertexField {

    private final Mesh mesh;
    private final double[] values;

    VertexField(Mesh mesh, double[] values) {
        this.mesh = mesh;
        this.values = values;
    }

    /** Value at vertex {@code v}. */
    public double at(int v) {
        return values[v];
    }

    /** Value at point {@code i} of a line cut through the same ground. */
    public double along(GroundLine line, int i) {
        int a = line.from(i);
        int b = line.to(i);
        if (a == GroundLine.INSIDE) {
            return inside(b, line.x(i), line.y(i));
        }
        return a == b ? values[a] : values[a] + line.share(i) * (values[b] - values[a]);
    }

    /** Value at a place in triangle {@code t}. */
    public double inside(int t, double x, double y) {
        int at = 3 * t;
        int[] corner = mesh.corner;
        return Plane.at(mesh.x, mesh.y, values, corner[at], corner[at + 1], corner[at + 2], x, y);
    }
}
