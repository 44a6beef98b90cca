package lanewright.survey;

import java.util.Arrays;

/** A closed line in plan, without heights; its last corner is joined to its first. */
public final class Ring {

    private final double[] x;
    private final double[] y;

    /**
     * A ring through corners. A last corner that repeats the first is taken as the same corner.
     *
     * @param x eastings, m, finite
     * @param y northings, m, finite, as many
     * @throws IllegalArgumentException with fewer than three corners, or one that is not finite
     */
    public Ring(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " eastings, " + y.length + " northings");
        }
        int size = x.length;
        if (size > 1 && x[0] == x[size - 1] && y[0] == y[size - 1]) {
            size--;
        }
        if (size < 3) {
            throw new IllegalArgumentException("a ring needs three corners, had " + size);
        }
        for (int k = 0; k < size; k++) {
            if (!Double.isFinite(x[k]) || !Double.isFinite(y[k])) {
                throw new IllegalArgumentException("corner " + k + " is not finite");
            }
        }
        this.x = Arrays.copyOf(x, size);
        this.y = Arrays.copyOf(y, size);
    }

    /** Number of corners, each counted once. */
    public int size() {
        return x.length;
    }

    /** Easting of corner {@code k}, m. */
    public double x(int k) {
        return x[k];
    }

    /** Northing of corner {@code k}, m. */
    public double y(int k) {
        return y[k];
    }

    /** Area inside, m², zero or more, by the surveyor's (trapezoid) formula. */
    public double area() {
        double twice = 0;
        for (int k = 0, last = x.length - 1; k < x.length; last = k++) {
            twice += (x[last] - x[0]) * (y[k] - y[0]) - (x[k] - x[0]) * (y[last] - y[0]);
        }
        return Math.abs(twice) / 2;
    }

    /**
     * True if a place lies inside, by counting how often a line to the east crosses the ring. A
     * place on the ring itself may be told either way.
     */
    public boolean contains(double px, double py) {
        boolean inside = false;
        for (int k = 0, last = x.length - 1; k < x.length; last = k++) {
            if (y[k] > py != y[last] > py
                    && px < (x[last] - x[k]) * (py - y[k]) / (y[last] - y[k]) + x[k]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** The same ring with every corner moved, m. */
    public Ring moved(double east, double north) {
        double[] movedX = x.clone();
        double[] movedY = y.clone();
        for (int k = 0; k < x.length; k++) {
            movedX[k] += east;
            movedY[k] += north;
        }
        return new Ring(movedX, movedY);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring ring && Arrays.equals(x, ring.x) && Arrays.equals(y, ring.y);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
    }

    @Override
    public String toString() {
        return "ring of " + x.length + " corners";
    }
}
