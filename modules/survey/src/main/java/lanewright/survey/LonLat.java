package lanewright.survey;

/**
 * A place on the earth in degrees of WGS 84, longitude first as RFC 7946 wants it.
 *
 * @param longitude degrees, positive east, -180 to 180
 * @param latitude degrees, positive north, -90 to 90
 */
public record LonLat(double longitude, double latitude) {

    /** Checks that both are degrees. */
    public LonLat {
        if (!(Math.abs(longitude) <= 180) || !(Math.abs(latitude) <= 90)) {
            throw new IllegalArgumentException(
                    "not a place on the earth: longitude " + longitude + ", latitude " + latitude);
        }
    }
}
