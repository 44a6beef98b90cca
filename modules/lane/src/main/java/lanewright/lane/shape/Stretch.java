package lanewright.lane.shape;

/**
 * A value that holds from one station to another.
 *
 * @param from first station, m
 * @param to last station, m, over {@code from}
 * @param value what holds there
 */
public record Stretch<T>(double from, double to, T value) {
    /** Checks the order. */
    public Stretch {
        if (!(from < to) || !Double.isFinite(from) || !Double.isFinite(to)) {
            throw new IllegalArgumentException(
                    "stretch must run forward, was " + from + " to " + to);
        }
    }

    /** True if {@code station} lies in it, both ends included. */
    public boolean holds(double station) {
        return station >= from && station <= to;
    }
}
