package lanewright.drainage.pond;

import java.util.Arrays;

/** A line on the map: the edge of a pool, or the way that water takes. Immutable. */
public final class Trace {

    private final double[] x;
    private final double[] y;
    private final boolean closed;

    /**
     * A line through points.
     *
     * @param x local eastings, m
     * @param y local northings, m, as many
     * @param closed whether the last point is joined to the first, which is not repeated
     * @throws IllegalArgumentException if the counts differ
     */
    public Trace(double[] x, double[] y, boolean closed) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(
                    "as many eastings as northings, were " + x.length + " and " + y.length);
        }
        this.x = x.clone();
        this.y = y.clone();
        this.closed = closed;
    }

    /** How many points. */
    public int size() {
        return x.length;
    }

    /** Local easting of a point, m. */
    public double x(int i) {
        return x[i];
    }

    /** Local northing of a point, m. */
    public double y(int i) {
        return y[i];
    }

    /** Whether the last point is joined to the first. */
    public boolean isClosed() {
        return closed;
    }

    /** Area inside, m², positive if it runs counter-clockwise; of an open line, as if closed. */
    public double signedArea() {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            // About the first point, so that a pool far from the origin loses no digits.
            twice += (x[i] - x[0]) * (y[j] - y[0]) - (x[j] - x[0]) * (y[i] - y[0]);
        }
        return twice / 2;
    }

    /**
     * Adds one for each crossing of the ray from (px, py) to the east; a point is inside a set of
     * rings where the sum over them is odd.
     */
    int crossings(double px, double py) {
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            int j = (i + 1) % x.length;
            if (y[i] > py != y[j] > py && px < x[i] + (py - y[i]) / (y[j] - y[i]) * (x[j] - x[i])) {
                count++;
            }
        }
        return count;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Trace trace
                && closed == trace.closed
                && Arrays.equals(x, trace.x)
                && Arrays.equals(y, trace.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        return (closed ? "ring of " : "line of ") + x.length + " points";
    }
}
