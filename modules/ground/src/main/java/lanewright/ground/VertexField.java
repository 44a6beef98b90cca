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
        int a = mesh.corner[3 * t];
        int b = mesh.corner[3 * t + 1];
        int c = mesh.corner[3 * t + 2];
        double bx = mesh.x[b] - mesh.x[a];
        double by = mesh.y[b] - mesh.y[a];
        double cx = mesh.x[c] - mesh.x[a];
        double cy = mesh.y[c] - mesh.y[a];
        double area = bx * cy - by * cx;
        double u = ((x - mesh.x[a]) * cy - (y - mesh.y[a]) * cx) / area;
        double w = (bx * (y - mesh.y[a]) - by * (x - mesh.x[a])) / area;
        return values[a] + u * (values[b] - values[a]) + w * (values[c] - values[a]);
    }
}
