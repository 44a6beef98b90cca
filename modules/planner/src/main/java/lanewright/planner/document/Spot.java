package lanewright.planner.document;

/**
 * A place on the map as the owner gives it: in coordinates of the survey's frame, or in degrees of
 * WGS 84 where the frame lies on the earth.
 *
 * @param across easting, frame metres; or longitude, degrees, positive east
 * @param up northing, frame metres; or latitude, degrees, positive north
 * @param degrees whether the two are degrees
 */
public record Spot(double across, double up, boolean degrees) {
    /** Checks that both are finite, and degrees are on the earth. */
    public Spot {
        if (!Double.isFinite(across) || !Double.isFinite(up)) {
            throw new IllegalArgumentException("a place must be finite");
        }
        if (degrees && (Math.abs(across) > 180 || Math.abs(up) > 90)) {
            throw new IllegalArgumentException(
                    "longitude must be within 180 and latitude within 90 degrees");
        }
    }

    /** A place in coordinates of the frame, metres. */
    public static Spot at(double east, double north) {
        return new Spot(east, north, false);
    }

    /** A place in degrees of WGS 84. */
    public static Spot onEarth(double longitude, double latitude) {
        return new Spot(longitude, latitude, true);
    }
}
