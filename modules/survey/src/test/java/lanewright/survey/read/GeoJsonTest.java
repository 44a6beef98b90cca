package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import lanewright.measure.Finding;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.LonLat;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyLine;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GeoJsonTest {

    private static SurveyFile plain(SurveyFile file) {
        return file.local(true).unit(LengthUnit.METRE);
    }

    @TempDir private Path folder;

    private Survey read(Holds holds, String text, UnaryOperator<SurveyFile> declared, Frame frame)
            throws SurveyException {
        SurveyFile file = SurveyFile.of(Written.file(folder, "land.geojson", text), holds);
        return SurveyReader.read(SurveyRequest.of(declared.apply(file)).in(frame), Progress.NONE);
    }

    private static String collection(String... features) {
        return "{\"type\":\"FeatureCollection\",\"features\":["
                + String.join(",\n", features)
                + "]}";
    }

    private static String feature(String type, String coordinates, String properties) {
        return "{\"type\":\"Feature\",\"properties\":"
                + properties
                + ",\"geometry\":{\"coordinates\":"
                + coordinates
                + ",\"type\":\""
                + type
                + "\"}}";
    }

    @Test
    @Tag("outside")
    @DisplayName("Geometries as the standard writes them | RFC 7946, appendix A | from memory")
    void shapesOfTheStandardAreRead() throws SurveyException {
        String point = "{\"type\": \"Point\", \"coordinates\": [100.0, 0.5, 3]}";
        assertEquals(1, read(Holds.POINTS, point, GeoJsonTest::plain, Frame.local()).size());
        String multi =
                "{\"type\": \"MultiLineString\", \"coordinates\": [[[100.0, 0.0, 1], [101.0, 1.0,"
                        + " 1]], [[102.0, 2.0, 2], [103.0, 3.0, 2]]]}";
        Survey lines = read(Holds.BREAKLINES, multi, GeoJsonTest::plain, Frame.local());
        assertEquals(2, lines.lines().size());
        assertArrayEquals(new int[] {2, 3}, lines.lines().get(1).points());
        String holed =
                "{\"type\": \"Polygon\", \"coordinates\": [[[100.0, 0.0], [101.0, 0.0], [101.0,"
                        + " 1.0], [100.0, 1.0], [100.0, 0.0]], [[100.8, 0.8], [100.8, 0.2], [100.2,"
                        + " 0.2], [100.2, 0.8], [100.8, 0.8]]]}";
        Survey outline = read(Holds.BOUNDARY, holed, GeoJsonTest::plain, Frame.local());
        assertEquals(1, outline.boundary().holes().size());
        assertTrue(outline.boundary().contains(100.1, 0.5));
        assertFalse(outline.boundary().contains(100.5, 0.5));
    }

    @Test
    void contoursTakeTheirHeightFromAProperty() throws SurveyException {
        Survey survey =
                read(
                        Holds.CONTOURS,
                        collection(
                                feature(
                                        "LineString",
                                        "[[0,0],[50,0],[99,3]]",
                                        "{\"ID\":0,\"elev_ft\":100}"),
                                feature(
                                        "LineString",
                                        "[[0,30],[50,30],[50,30],[50,90],[0,30]]",
                                        "{\"ID\":1,\"elev_ft\":102.5}")),
                        file -> file.local(true).unit(LengthUnit.FOOT),
                        Frame.local());
        assertEquals(30.48, survey.z(0), 1e-12);
        assertEquals(31.242, survey.z(3), 1e-12);
        assertEquals(15.24, survey.x(1), 1e-12);
        SurveyLine ring = survey.lines().get(1);
        assertEquals(SurveyLine.Kind.CONTOUR, ring.kind());
        assertTrue(ring.closed());
        assertEquals(4, ring.size());
        assertEquals(6, survey.size(), "the closing place is the first point again");
        assertEquals("repeated-place", survey.findings().get(0).code());
        String shown = survey.readings().get(0).understood().toString();
        assertTrue(shown.contains("the property \"elev_ft\""), shown);
    }

    @Test
    void degreesAreCarriedToTheFrameAndTheDatumIsSaid() throws SurveyException {
        Frame frame = Frame.epsg(26916);
        Survey survey =
                read(
                        Holds.POINTS,
                        collection(
                                feature("Point", "[-86.5,39.2,210]", "{\"code\":\"gate\"}"),
                                feature("Point", "[-86.499,39.2,211]", "{}"),
                                feature("Point", "[-86.5,39.201,212]", "{}"),
                                "{\"type\":\"Feature\",\"properties\":null,\"geometry\":null}"),
                        file -> file,
                        frame);
        assertEquals(543173.8, survey.originX() + survey.x(0), 0.1);
        assertEquals(4339090.2, survey.originY() + survey.y(0), 0.1);
        assertEquals("gate", survey.code(0));
        assertEquals(
                java.util.List.of("datum-change", "feature-without-place"),
                survey.findings().stream().map(Finding::code).toList());
        LonLat back = survey.onEarth(survey.x(1), survey.y(1));
        assertEquals(-86.499, back.longitude(), 1e-9);
        assertEquals(39.2, back.latitude(), 1e-9);
    }

    @Test
    void zoneOfOnesOwnNeedsNoCodeAndNoDatumChange() throws SurveyException {
        Survey survey =
                read(
                        Holds.POINTS,
                        collection(
                                feature("Point", "[-30.0,45.0,1]", "{}"),
                                feature("Point", "[-29.999,45.0,2]", "{}"),
                                feature("Point", "[-30.0,45.001,3]", "{}")),
                        file -> file,
                        Frame.zone(new LonLat(-30, 45)));
        assertEquals(0, survey.originX() + survey.x(0), 1e-6);
        // One thousandth of a degree at 45° on WGS 84: 78.847 m along the parallel and 111.132 m
        // along the meridian (radii from a = 6378137, 1/f = 298.257223563).
        assertEquals(78.847, survey.originX() + survey.x(1), 1e-3);
        assertEquals(111.132, survey.originY() + survey.y(2), 1e-3);
        assertTrue(survey.findings().isEmpty(), survey.findings().toString());
    }

    @Test
    void mixedFileTellsItsKindsApart() throws SurveyException {
        Survey survey =
                read(
                        Holds.MIXED,
                        collection(
                                feature("Point", "[1,1,5]", "{\"what\":\"point\"}"),
                                feature(
                                        "LineString",
                                        "[[0,0,5],[9,0.5,6]]",
                                        "{\"what\":\"breakline\",\"code\":\"edge\"}"),
                                feature(
                                        "LineString",
                                        "[[0,9,7],[9,9,7]]",
                                        "{\"what\":\"contour\"}"),
                                feature(
                                        "Polygon",
                                        "[[[0,0],[9,0],[9,9],[0,9],[0,0]]]",
                                        "{\"what\":\"boundary\"}")),
                        file -> plain(file).properties(null, "what"),
                        Frame.local());
        assertEquals(5, survey.size());
        assertEquals(SurveyLine.Kind.BREAKLINE, survey.lines().get(0).kind());
        assertEquals("edge", survey.lines().get(0).code());
        assertEquals(SurveyLine.Kind.CONTOUR, survey.lines().get(1).kind());
        assertEquals(81, survey.boundary().outer().area(), 1e-12);
        assertEquals(2, survey.readings().get(0).lines());
    }

    @Test
    void ownSystemMayBeProjected() throws SurveyException {
        Frame frame = Frame.epsg(26916);
        Survey survey =
                read(
                        Holds.POINTS,
                        collection(
                                feature("Point", "[543173.836,4339090.244,210]", "{}"),
                                feature("Point", "[543273.836,4339090.244,210]", "{}"),
                                feature("Point", "[543173.836,4339190.244,210.5]", "{}")),
                        file -> file.epsg(26916).heightUnit(LengthUnit.METRE),
                        frame);
        assertEquals(543173.836, survey.originX() + survey.x(0), 1e-6);
    }
}
