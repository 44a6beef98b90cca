package lanewright.ground;

/** Values on the plane through three corners. */
final class Plane {

    private Plane() {}

    /** Value at a place of the plane through vertices a, b and c, which are not on one line. */
    static double at(
            double[] x, double[] y, double[] value, int a, int b, int c, double px, double py) {
        double bx = x[b] - x[a];
        double by = y[b] - y[a];
        double cx = x[c] - x[a];
        double cy = y[c] - y[a];
        double dx = px - x[a];
        double dy = py - y[a];
        double area = bx * cy - by * cx;
        double u = (dx * cy - dy * cx) / area;
        double w = (bx * dy - by * dx) / area;
        return value[a] + u * (value[b] - value[a]) + w * (value[c] - value[a]);
    }
}
