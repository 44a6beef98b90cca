package lanewright.measure;

import org.jspecify.annotations.Nullable;

/**
 * A place that a finding is about. Any part may be unknown (null).
 *
 * @param from station where it begins, m
 * @param to station where it ends, m; equal to {@code from} for a single place
 * @param offset offset from the alignment, m, positive right
 * @param x easting in the survey's local metres (relative to the survey's origin)
 * @param y northing in the survey's local metres (relative to the survey's origin)
 */
public record Where(
        @Nullable Double from,
        @Nullable Double to,
        @Nullable Double offset,
        @Nullable Double x,
        @Nullable Double y) {

    /** Nowhere in particular: the plan as a whole. */
    public static final Where ANYWHERE = new Where(null, null, null, null, null);

    /** On the lane's own line. */
    public static Where station(double station) {
        return new Where(station, station, null, null, null);
    }

    /** Along a stretch of the lane. */
    public static Where stretch(double from, double to) {
        return new Where(from, to, null, null, null);
    }

    /** Beside the lane. */
    public static Where beside(double station, double offset) {
        return new Where(station, station, offset, null, null);
    }

    /** On the map. */
    public static Where map(double x, double y) {
        return new Where(null, null, null, x, y);
    }

    /** The same place with its map position. */
    public Where at(double mapX, double mapY) {
        return new Where(from, to, offset, mapX, mapY);
    }
}
