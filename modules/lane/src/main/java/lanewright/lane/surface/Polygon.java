package lanewright.lane.surface;

/**
 * A small convex polygon with values at its corners that are linear over it: clipped where a value
 * is below zero, and integrated exactly. Memory is used again; for one thread.
 */
final class Polygon {

    /** A triangle clipped by a triangle and by three values more has no more corners than this. */
    private static final int MOST = 16;

    private final int values;
    int size;
    double[] x = new double[MOST];
    double[] y = new double[MOST];
    double[][] value;
    private double[] spareX = new double[MOST];
    private double[] spareY = new double[MOST];
    private double[][] spareValue;
    private final double[] test = new double[MOST];

    Polygon(int values) {
        this.values = values;
        value = new double[values][MOST];
        spareValue = new double[values][MOST];
    }

    void set(Polygon other) {
        size = other.size;
        System.arraycopy(other.x, 0, x, 0, size);
        System.arraycopy(other.y, 0, y, 0, size);
        for (int v = 0; v < values; v++) {
            System.arraycopy(other.value[v], 0, value[v], 0, size);
        }
    }

    void triangle(double ax, double ay, double bx, double by, double cx, double cy) {
        size = 3;
        x[0] = ax;
        y[0] = ay;
        x[1] = bx;
        y[1] = by;
        x[2] = cx;
        y[2] = cy;
    }

    /** Keeps what lies to the left of the line from one point to another; values are lost. */
    void keepLeft(double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        for (int i = 0; i < size; i++) {
            test[i] = dx * (y[i] - ay) - dy * (x[i] - ax);
        }
        keepTested(0);
    }

    /** Keeps what has a value, times a sign, of zero or more. */
    void keep(int which, double sign) {
        for (int i = 0; i < size; i++) {
            test[i] = sign * value[which][i];
        }
        keepTested(values);
    }

    private void keepTested(int carried) {
        boolean all = true;
        for (int i = 0; i < size; i++) {
            all &= test[i] >= 0;
        }
        if (all) {
            return;
        }
        int count = 0;
        for (int i = 0; i < size; i++) {
            int j = i + 1 == size ? 0 : i + 1;
            if (test[i] >= 0) {
                copy(count++, i, i, 0, carried);
            }
            if ((test[i] > 0 && test[j] < 0) || (test[i] < 0 && test[j] > 0)) {
                copy(count++, i, j, test[i] / (test[i] - test[j]), carried);
            }
        }
        swap(count);
    }

    private void copy(int to, int i, int j, double part, int carried) {
        spareX[to] = x[i] + part * (x[j] - x[i]);
        spareY[to] = y[i] + part * (y[j] - y[i]);
        for (int v = 0; v < carried; v++) {
            spareValue[v][to] = value[v][i] + part * (value[v][j] - value[v][i]);
        }
    }

    private void swap(int count) {
        size = count;
        double[] oldX = x;
        double[] oldY = y;
        double[][] old = value;
        x = spareX;
        y = spareY;
        value = spareValue;
        spareX = oldX;
        spareY = oldY;
        spareValue = old;
    }

    /** Area, m², over zero if the corners run counter-clockwise. */
    double area() {
        double twice = 0;
        for (int i = 1; i + 1 < size; i++) {
            twice += twiceArea(i);
        }
        return twice / 2;
    }

    private double twiceArea(int i) {
        return (x[i] - x[0]) * (y[i + 1] - y[0]) - (y[i] - y[0]) * (x[i + 1] - x[0]);
    }

    /** Integral of a value over the polygon: on each triangle its area times the mean of three. */
    double integral(int which) {
        double[] v = value[which];
        double six = 0;
        for (int i = 1; i + 1 < size; i++) {
            six += twiceArea(i) * (v[0] + v[i] + v[i + 1]);
        }
        return six / 6;
    }

    double least(int which) {
        double least = value[which][0];
        for (int i = 1; i < size; i++) {
            least = Math.min(least, value[which][i]);
        }
        return least;
    }

    double most(int which) {
        double most = value[which][0];
        for (int i = 1; i < size; i++) {
            most = Math.max(most, value[which][i]);
        }
        return most;
    }
}
