package lanewright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import lanewright.measure.LengthUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.ProjCoordinate;

class FrameTest {

    private static double[] carry(int to, int from, double first, double second)
            throws SurveyException {
        double[] place = {first, second};
        Frame.epsg(to).from(from).carry(place, 1);
        return place;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Transverse Mercator, British National Grid: 0°30'E, 50°30'N is 577274.99 E, 69740.50 N"
                    + " | EPSG Guidance Note 7-2, Transverse Mercator example | read")
    void britishGridAgreesWithTheGuidanceNote() throws SurveyException {
        double[] place = carry(27700, 4277, 0.5, 50.5);
        // The note rounds its constants: it prints centimetres and is off by one of them.
        assertEquals(577274.99, place[0], 0.015);
        assertEquals(69740.50, place[1], 0.015);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A control point of the British National Grid: 52°39'27.2531\"N, 1°43'4.5177\"E is"
                    + " 651409.903 E, 313177.270 N, and 52°39'28.723\"N, 1°42'57.787\"E on ETRS89 |"
                    + " Ordnance Survey, A guide to coordinate systems in Great Britain, annex C, as"
                    + " quoted by public libraries | read")
    void controlPointOfTheBritishGrid() throws SurveyException {
        double[] place = carry(27700, 4277, degrees(1, 43, 4.5177), degrees(52, 39, 27.2531));
        assertEquals(651409.903, place[0], 0.001);
        assertEquals(313177.270, place[1], 0.001);
        Frame.Bridge fromSatellites = Frame.epsg(27700).from(4258);
        assertNotEquals("", fromSatellites.datumChange());
        double[] carried = {degrees(1, 42, 57.787), degrees(52, 39, 28.723)};
        fromSatellites.carry(carried, 1);
        // The guide gives seven parameters between the two datums no better than 5 m.
        assertEquals(651409.903, carried[0], 5);
        assertEquals(313177.270, carried[1], 5);
    }

    private static double degrees(int whole, int minutes, double seconds) {
        return whole + minutes / 60.0 + seconds / 3600;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Lambert conformal conic in US survey feet, Texas South Central: 96°W, 28°30'N is"
                    + " 2963503.91 E, 254759.80 N | EPSG Guidance Note 7-2, Lambert 2SP example |"
                    + " from memory")
    void texanZoneInSurveyFeetAgreesWithTheGuidanceNote() throws SurveyException {
        double[] place = carry(32040, 4267, -96, 28.5);
        double foot = 1200.0 / 3937.0;
        assertEquals(2963503.91, place[0] / foot, 0.01);
        assertEquals(254759.80, place[1] / foot, 0.01);
        assertEquals(LengthUnit.SURVEY_FOOT, Frame.epsg(32040).unit());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "UTM zone 16 north on NAD83: 86.5°W, 39.2°N is 543173.836 E, 4339090.244 N"
                    + " | PROJ 9.1.1, gdaltransform EPSG:4269 to EPSG:26916 | read")
    void utmAgreesWithProj() throws SurveyException {
        double[] place = carry(26916, 4269, -86.5, 39.2);
        assertEquals(543173.836, place[0], 0.001);
        assertEquals(4339090.244, place[1], 0.001);
    }

    @ParameterizedTest
    @Tag("outside")
    @DisplayName(
            "Projected systems in metres, feet and US survey feet agree with a second library |"
                    + " proj4j 1.4.1 with its EPSG definitions | read")
    @CsvSource({
        "26916, 4269, -88.5, 37.0, -85.5, 42.0, 1",
        "2965, 4269, -86.0, 38.0, -85.0, 41.0, 0.30480060960121924",
        "2222, 4269, -112.0, 33.0, -109.5, 36.0, 0.3048",
        "27700, 4277, -4.0, 50.5, 1.0, 57.0, 1",
        "25832, 4258, 6.5, 47.5, 11.5, 54.5, 1",
        "32755, 4326, 144.5, -43.0, 149.5, -10.0, 1"
    })
    void agreesWithASecondLibrary(
            int code,
            int geographic,
            double west,
            double south,
            double east,
            double north,
            double unit)
            throws SurveyException {
        Frame frame = Frame.epsg(code);
        assertEquals(unit, frame.unit().metres(), 1e-15);
        Frame.Bridge ours = frame.from(geographic);
        assertEquals("", ours.datumChange());
        var systems = new CRSFactory();
        var theirs =
                new CoordinateTransformFactory()
                        .createTransform(
                                systems.createFromName("EPSG:" + geographic),
                                systems.createFromName("EPSG:" + code));
        var random = new SplittableRandom(code);
        for (int k = 0; k < 200; k++) {
            double longitude = west + (east - west) * random.nextDouble();
            double latitude = south + (north - south) * random.nextDouble();
            var expected = new ProjCoordinate();
            theirs.transform(new ProjCoordinate(longitude, latitude), expected);
            double[] place = {longitude, latitude};
            ours.carry(place, 1);
            assertEquals(expected.x * unit, place[0], 1e-4, longitude + " " + latitude);
            assertEquals(expected.y * unit, place[1], 1e-4, longitude + " " + latitude);
        }
    }

    @ParameterizedTest
    @CsvSource({"26916, -86.5, 39.2", "2965, -85.6, 39.9", "2222, -110.2, 33.3", "32755, 147, -42"})
    void backToTheEarthWithinAThousandthOfAMillimetre(int code, double longitude, double latitude)
            throws SurveyException {
        Frame frame = Frame.epsg(code);
        double[] place = frame.eastNorth(new LonLat(longitude, latitude));
        LonLat back = frame.longitudeLatitude(place[0], place[1]);
        assertEquals(longitude, back.longitude(), 1e-11);
        assertEquals(latitude, back.latitude(), 1e-11);
        assertTrue(frame.mayHold(place[0], place[1]));
    }

    @Test
    void eastingAndNorthingSwappedLieOutsideTheZone() throws SurveyException {
        assertTrue(Frame.epsg(26916).mayHold(543_173, 4_339_090));
        assertFalse(Frame.epsg(26916).mayHold(4_339_090, 543_173));
    }

    @Test
    void longitudeComesFirstWhateverTheSystemPrescribes() throws SurveyException {
        // EPSG:4326 prescribes latitude first; here 10° is the longitude all the same.
        double[] place = carry(25832, 4326, 10, 50);
        assertEquals(571_666, place[0], 1);
        assertEquals(5_539_110, place[1], 1);
    }

    @Test
    void changeOfDatumIsInDoubtAndTheSameDatumIsNot() throws SurveyException {
        Frame frame = Frame.epsg(26916);
        assertEquals("", frame.from(4269).datumChange());
        assertTrue(frame.from(4326).datumChange().contains("1 to 2 m"));
        assertTrue(frame.from(4267).datumChange().contains("10 m or more"));
        assertTrue(frame.from(26716).datumChange().contains("10 m or more"));
    }

    @Test
    void textOfASystemIsEnoughToFindItAgain() throws SurveyException {
        Frame frame = Frame.epsg(2965);
        assertTrue(frame.wkt().startsWith("PROJCS[\"NAD83 / Indiana East (ftUS)\""), frame.wkt());
        double[] place = {328083.333, 820208.333};
        frame.fromText(frame.wkt()).carry(place, 1);
        assertEquals(100_000, place[0], 1e-3);
        assertEquals(2965, frame.code().orElse(0));
    }

    @Test
    void zoneOfOnesOwnHasItsZeroWhereItWasPut() throws SurveyException {
        Frame zone = Frame.zone(new LonLat(-85.25, 38.75));
        LonLat zero = zone.longitudeLatitude(0, 0);
        assertEquals(-85.25, zero.longitude(), 1e-12);
        assertEquals(38.75, zero.latitude(), 1e-12);
        assertTrue(zone.code().isEmpty());
        assertTrue(zone.mayHold(5000, -5000));
        assertFalse(zone.mayHold(543_173, 4_339_090));
        assertThrows(SurveyException.class, () -> Frame.zone(new LonLat(0, 89)));
    }

    @Test
    void plainLocalCoordinatesHaveNoPlaceOnTheEarth() {
        assertTrue(Frame.local().isLocal());
        assertTrue(Frame.local().mayHold(1e9, -1e9));
        assertEquals("", Frame.local().wkt());
        assertThrows(SurveyException.class, () -> Frame.local().longitudeLatitude(0, 0));
        assertThrows(SurveyException.class, () -> Frame.local().from(4326));
    }

    @Test
    void framesOfOneCodeAreEqual() throws SurveyException {
        assertEquals(Frame.epsg(26916), Frame.epsg(26916));
        assertEquals(Frame.epsg(26916).hashCode(), Frame.epsg(26916).hashCode());
        assertNotEquals(Frame.epsg(26916), Frame.epsg(26917));
        assertNotEquals(Frame.epsg(26916), Frame.local());
        assertEquals(Frame.local(), Frame.local());
    }

    @ParameterizedTest
    @CsvSource({"4326", "4979", "5703", "4978", "2053", "999999", "-5"})
    void whatIsNoMapOfEastAndNorthIsRefused(int code) {
        SurveyException refused = assertThrows(SurveyException.class, () -> Frame.epsg(code));
        assertTrue(refused.getMessage().contains("EPSG:" + code), refused.getMessage());
    }
}
