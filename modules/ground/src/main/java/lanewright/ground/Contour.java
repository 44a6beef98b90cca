package lanewright.ground;

/** A line of equal height. Immutable. */
public final class Contour {

    private final double height;
    private final double[] x;
    private final double[] y;
    private final boolean closed;

    Contour(double height, double[] x, double[] y, boolean closed) {
        this.height = height;
        this.x = x;
        this.y = y;
        this.closed = closed;
    }

    /** Its height, m. */
    public double height() {
        return height;
    }

    /** Number of points; a closed contour does not repeat its first one. */
    public int size() {
        return x.length;
    }

    /** Local easting of point {@code i}, m. */
    public double x(int i) {
        return x[i];
    }

    /** Local northing of point {@code i}, m. */
    public double y(int i) {
        return y[i];
    }

    /** True if it comes back to where it began; false if it ends at the rim of the ground. */
    public boolean isClosed() {
        return closed;
    }
}
