package lanewright.survey;

import java.util.Objects;
import java.util.OptionalInt;
import lanewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The flat map on which a survey lies: metres east and north. Either plain local coordinates, which
 * have no known place on the earth, or a projected reference system.
 *
 * <p>A system whose own coordinates are feet is kept in metres all the same: <i>frame metres</i>
 * are its coordinates times the length of its unit. East always comes before north and longitude
 * before latitude, whatever order the system itself prescribes.
 *
 * <p>Projections and their parameters are those of the EPSG data set in GeoTools. No grid files for
 * changing from one datum to another are inside; see {@link Bridge#datumChange()}. The library is
 * loaded only when a frame on the earth is made, which takes about a second.
 */
public final class Frame {

    private static final Frame LOCAL = new Frame(null);

    private final @Nullable Projection projection;

    private Frame(@Nullable Projection projection) {
        this.projection = projection;
    }

    /** Plain local metres, with no known place on the earth. */
    public static Frame local() {
        return LOCAL;
    }

    /**
     * The projected reference system with an EPSG code.
     *
     * @param code such as 26916 (NAD83, UTM zone 16 north)
     * @throws SurveyException if the code is not known, or is no projected system with east and
     *     north axes in metres or feet
     */
    public static Frame epsg(int code) throws SurveyException {
        return new Frame(Projection.epsg(code));
    }

    /**
     * A local zone of one's own: a transverse Mercator projection of WGS 84 that touches the earth
     * at a stated place, with that place as its zero. Ten kilometres from there, distances on the
     * map are off by about one part in a million.
     *
     * @param place where the zone has its zero; not within 4° of a pole
     */
    public static Frame zone(LonLat place) throws SurveyException {
        if (Math.abs(place.latitude()) > 86) {
            throw new SurveyException(
                    null,
                    0,
                    "a local zone cannot lie at latitude " + place.latitude(),
                    "Give a place between 86° south and 86° north, longitude first.");
        }
        return new Frame(Projection.zone(place));
    }

    /**
     * Readies the reference system library for use beside frames: its database goes to the cache
     * folder of this program, and it keeps quiet about preferences. Frames do so by themselves.
     */
    public static void readyLibrary() {
        ReferenceLibrary.ready();
    }

    /** True for plain local coordinates. */
    public boolean isLocal() {
        return projection == null;
    }

    /** EPSG code, if the frame has one. */
    public OptionalInt code() {
        return projection == null ? OptionalInt.empty() : projection.code();
    }

    /** Its name, such as {@code NAD83 / UTM zone 16N (EPSG:26916)}. */
    public String name() {
        return projection == null ? "plain local coordinates" : projection.name();
    }

    /** Unit in which the system's own coordinates are written; metres for plain local ones. */
    public LengthUnit unit() {
        return projection == null ? LengthUnit.METRE : projection.unit();
    }

    /** The whole definition as well-known text; empty for plain local coordinates. */
    public String wkt() {
        return projection == null ? "" : projection.wkt();
    }

    /**
     * Where a place of the frame lies on the earth.
     *
     * @param x easting, frame metres
     * @param y northing, frame metres
     * @throws SurveyException if the frame is plain local, or does not reach so far
     */
    public LonLat longitudeLatitude(double x, double y) throws SurveyException {
        return onEarth().toDegrees(x, y);
    }

    /**
     * Where a place on the earth lies in the frame.
     *
     * @return easting and northing, frame metres
     * @throws SurveyException if the frame is plain local, or does not reach so far
     */
    public double[] eastNorth(LonLat place) throws SurveyException {
        double[] at = {place.longitude(), place.latitude()};
        onEarth().bridgeFrom(Projection.WGS84).carry(at, 1);
        return at;
    }

    /**
     * True unless the published area of use of the system says that a place cannot be meant. The
     * area is a box of longitude and latitude, taken half a degree wider on every side.
     *
     * @param x easting, frame metres
     * @param y northing, frame metres
     */
    public boolean mayHold(double x, double y) {
        return projection == null || projection.mayHold(x, y);
    }

    /**
     * A way for coordinates of another reference system into this frame.
     *
     * @param code EPSG code of a projected or geographic system
     * @throws SurveyException if the code is not known or not of these kinds, or the frame is plain
     *     local
     */
    public Bridge from(int code) throws SurveyException {
        return onEarth().bridgeFrom(code);
    }

    /**
     * A way into this frame for coordinates whose system a file itself describes.
     *
     * @param wkt well-known text of a projected or geographic system
     */
    public Bridge fromText(String wkt) throws SurveyException {
        return onEarth().bridgeFromText(wkt);
    }

    private Projection onEarth() throws SurveyException {
        if (projection == null) {
            throw new SurveyException(
                    null,
                    0,
                    "plain local coordinates have no known place on the earth",
                    "State the EPSG code of a projected system, or a local zone, as the frame.");
        }
        return projection;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Frame frame && Objects.equals(projection, frame.projection);
    }

    @Override
    public int hashCode() {
        return projection == null ? 0 : projection.hashCode();
    }

    @Override
    public String toString() {
        return name();
    }

    /** Carries coordinates of one reference system into a frame. */
    public interface Bridge {

        /** Name of the system that is left. */
        String from();

        /** True if that system is written in degrees of longitude and latitude. */
        boolean degrees();

        /** Unit of its coordinates, if they are lengths; metres if they are degrees. */
        LengthUnit unit();

        /**
         * What is in doubt because the two systems rest on different datums; empty if they rest on
         * the same one.
         */
        String datumChange();

        /**
         * Carries places into the frame, in place.
         *
         * @param eastNorth east (or longitude), then north (or latitude) of each place, in the
         *     system's own unit; afterwards frame metres
         * @param count how many places
         * @throws SurveyException if a place cannot be carried over
         */
        void carry(double[] eastNorth, int count) throws SurveyException;
    }
}
