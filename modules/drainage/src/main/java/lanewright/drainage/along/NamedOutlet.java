package lanewright.drainage.along;

import org.jspecify.annotations.Nullable;

/**
 * A place to which the owner leads water.
 *
 * @param name how the owner calls it
 * @param station m; NaN if it lies at a place on the map
 * @param side the side it lies on, or null for either
 * @param x local easting, m; NaN if it lies at a station
 * @param y local northing, m; NaN if it lies at a station
 * @param permitted whether water may be led there
 */
public record NamedOutlet(
        String name, double station, @Nullable Side side, double x, double y, Permitted permitted) {

    /** Whether those who have a say have agreed. */
    public enum Permitted {
        /** They have. */
        YES,
        /** They have not. */
        NO,
        /** Nobody has said. */
        NOT_KNOWN
    }

    /** How far it lies from an end of a ditch, m; infinite on the other side of the lane. */
    double distance(Side ditch, double at, double endX, double endY) {
        if (side != null && side != ditch) {
            return Double.POSITIVE_INFINITY;
        }
        return Double.isNaN(station) ? Math.hypot(x - endX, y - endY) : Math.abs(station - at);
    }
}
