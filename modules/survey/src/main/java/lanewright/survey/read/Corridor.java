package lanewright.survey.read;

import java.util.Arrays;

/**
 * The strip of land that a lane may touch: everything nearer than a stated distance to a line.
 * Frame metres.
 */
public final class Corridor {

    private final double[] x;
    private final double[] y;
    private final double reach;
    private final double west;
    private final double east;
    private final double south;
    private final double north;

    /**
     * A corridor along a line.
     *
     * @param x eastings of the line's corners, frame metres; one or more
     * @param y northings, as many
     * @param reach how far it goes to either side and past the ends, m, more than zero
     */
    public Corridor(double[] x, double[] y, double reach) {
        if (x.length == 0 || x.length != y.length) {
            throw new IllegalArgumentException(x.length + " eastings, " + y.length + " northings");
        }
        if (!(reach > 0) || Double.isInfinite(reach)) {
            throw new IllegalArgumentException("corridor reaches " + reach);
        }
        for (int k = 0; k < x.length; k++) {
            if (!Double.isFinite(x[k]) || !Double.isFinite(y[k])) {
                throw new IllegalArgumentException("corner " + k + " is not finite");
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.reach = reach;
        this.west = Arrays.stream(x).min().orElseThrow() - reach;
        this.east = Arrays.stream(x).max().orElseThrow() + reach;
        this.south = Arrays.stream(y).min().orElseThrow() - reach;
        this.north = Arrays.stream(y).max().orElseThrow() + reach;
    }

    /** True if a place lies within reach of the line. */
    public boolean contains(double px, double py) {
        if (!(px >= west && px <= east && py >= south && py <= north)) {
            return false;
        }
        for (int k = 0; k < x.length; k++) {
            int to = Math.min(k + 1, x.length - 1);
            double dx = x[to] - x[k];
            double dy = y[to] - y[k];
            double square = dx * dx + dy * dy;
            double along = square == 0 ? 0 : ((px - x[k]) * dx + (py - y[k]) * dy) / square;
            along = Math.max(0, Math.min(1, along));
            double ex = px - x[k] - along * dx;
            double ey = py - y[k] - along * dy;
            if (ex * ex + ey * ey <= reach * reach) {
                return true;
            }
        }
        return false;
    }

    /** Western edge of the box around it, frame metres. */
    public double west() {
        return west;
    }

    /** Eastern edge. */
    public double east() {
        return east;
    }

    /** Southern edge. */
    public double south() {
        return south;
    }

    /** Northern edge. */
    public double north() {
        return north;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Corridor corridor
                && reach == corridor.reach
                && Arrays.equals(x, corridor.x)
                && Arrays.equals(y, corridor.y);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * Arrays.hashCode(x) + Arrays.hashCode(y)) + Double.hashCode(reach);
    }
}
