package lanewright.survey.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lanewright.measure.LengthUnit;

/** GeoJSON that cannot be read as it stands. */
final class BadGeoJson {

    private BadGeoJson() {}

    static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>(brokenJson());
        all.addAll(geoJson());
        return all;
    }

    private static String feature(String type, String coordinates, String properties) {
        return "{\"type\": \"FeatureCollection\", \"features\": [\n{\"type\": \"Feature\","
                + " \"geometry\": {\"type\": \""
                + type
                + "\", \"coordinates\": "
                + coordinates
                + "},\n\"properties\": "
                + properties
                + "}]}\n";
    }

    private static List<BadFile> brokenJson() {
        Holds points = Holds.POINTS;
        return List.of(
                BadFile.geoJson(
                        "cut off",
                        points,
                        "{\"type\": \"FeatureCollection\",\n",
                        "land.geojson, line 2: the JSON is broken: Unexpected end-of-input "
                                + "within/between Object entries. Export the file again; it may be cut off."),
                BadFile.geoJson(
                        "not an object",
                        points,
                        "[1, 2, 3]\n",
                        "land.geojson, line 1: the file does not begin with a JSON object. "
                                + "Export it as GeoJSON."),
                BadFile.geoJson(
                        "some other JSON",
                        points,
                        "{\"points\": [1, 2]}\n",
                        "land.geojson, line 1: the object has no \"type\", so it is no GeoJSON. "
                                + "Export the file as GeoJSON (RFC 7946)."),
                BadFile.geoJson(
                        "something behind the end",
                        points,
                        "{\"type\": \"Point\"} {}\n",
                        "land.geojson, line 1: something follows the end of the GeoJSON object. "
                                + "A file holds one object: take the rest out."),
                BadFile.geoJson(
                        "nested too deeply",
                        points,
                        "{\"type\": \"Feature\", \"properties\": {\"a\": "
                                + "[".repeat(200)
                                + "]".repeat(200)
                                + "}}\n",
                        "land.geojson, line 1: the JSON is nested far too deeply. No survey "
                                + "looks like that: check where the file comes from."),
                BadFile.geoJson(
                        "said twice",
                        points,
                        "{\"type\": \"Feature\",\n\"type\": \"X\"}\n",
                        "land.geojson, line 2: the JSON is broken: Duplicate field 'type'. "
                                + "Export the file again; it may be cut off."),
                BadFile.geoJson(
                        "number of a thousand digits",
                        points,
                        feature("Point", "[1, 2, 1" + "0".repeat(1000) + "]", "{}"),
                        "land.geojson, line 2: a number, name or word in the JSON is far too "
                                + "long. No survey looks like that: check where the file comes from."),
                BadFile.geoJson(
                                "letters that are not UTF-8",
                                points,
                                "",
                                "land.geojson, line 1: the text is not UTF-8. Save the file as UTF-8, as "
                                        + "RFC 8259 prescribes for JSON.")
                        .bytes("{\"type\": \"Bö\"}".getBytes(ISO_8859_1)),
                BadFile.geoJson(
                        "collection without features",
                        points,
                        "{\"type\": \"FeatureCollection\"}\n",
                        "land.geojson, line 1: the collection has no \"features\". Export the "
                                + "file again."),
                BadFile.geoJson(
                        "geometry among the features",
                        points,
                        "{\"type\": \"FeatureCollection\", \"features\": [{\"type\": \"Point\","
                                + " \"coordinates\": [1, 2, 3]}]}\n",
                        "land.geojson, line 1: the list holds something of type Point where a "
                                + "Feature is expected. Export the file as GeoJSON (RFC 7946, section 3.2)."));
    }

    private static List<BadFile> geoJson() {
        Holds points = Holds.POINTS;
        Holds lines = Holds.BREAKLINES;
        Holds outline = Holds.BOUNDARY;
        return List.of(
                BadFile.geoJson(
                        "word for a number in JSON",
                        points,
                        feature("Point", "[1, \"2\", 3]", "{}"),
                        "land.geojson, line 2: a coordinate is not a number: '2'. Coordinates "
                                + "are bare numbers: longitude, latitude, height."),
                BadFile.geoJson(
                        "1e400 in JSON",
                        points,
                        feature("Point", "[1e400, 2, 3]", "{}"),
                        "land.geojson, line 2: a coordinate is too large for a number: '1e400'. "
                                + "Mend the coordinate."),
                BadFile.geoJson(
                        "one coordinate",
                        points,
                        feature("Point", "[1]", "{}"),
                        "land.geojson, line 2: a place has 1 number. A place is written as "
                                + "longitude, latitude and, if it has one, height."),
                BadFile.geoJson(
                        "places not nested",
                        lines,
                        feature("LineString", "[1, 2, 3]", "{}"),
                        "land.geojson, line 2: the coordinates of a LineString are nested 1 deep "
                                + "where 2 is right. Export it again as GeoJSON (RFC 7946, section 3.1)."),
                BadFile.geoJson(
                        "places nested unevenly",
                        lines,
                        feature("LineString", "[[1, 2, 3], [[4, 5, 6]]]", "{}"),
                        "land.geojson, line 2: places and lists of places are mixed. Export it "
                                + "again as GeoJSON (RFC 7946, section 3.1)."),
                BadFile.geoJson(
                        "unknown shape",
                        points,
                        feature("Circle", "[1, 2, 3]", "{}"),
                        "land.geojson, line 2: a geometry is of type Circle, which is not read "
                                + "here. Use Point, LineString, Polygon or their Multi forms; split a "
                                + "GeometryCollection into features."),
                BadFile.geoJson(
                        "point without height",
                        points,
                        feature("Point", "[1, 2]", "{}"),
                        "land.geojson, line 2: nothing in it looks like a height. Declare "
                                + "\"heightProperty\" for this file in the plan, or write the height as "
                                + "the third number of each place."),
                BadFile.geoJson(
                        "height in two places",
                        points,
                        feature("Point", "[1, 2, 3]", "{\"elev_m\": 4}"),
                        "land.geojson, line 2: its height may stand in coordinates or in elev_m. "
                                + "Declare \"heightProperty\" for this file in the plan, one of these."),
                BadFile.geoJson(
                                "declared property missing",
                                points,
                                feature("Point", "[1, 2, 3]", "{\"elev\": 4}"),
                                "land.geojson, line 2: the feature has no property \"Hoehe\" for its "
                                        + "height. Add it, or declare another \"heightProperty\" for this file in "
                                        + "the plan.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .local(true)
                                                .properties("Hoehe", null)),
                BadFile.geoJson(
                        "height in words",
                        points,
                        feature("Point", "[1, 2]", "{\"elev\": \"high\"}"),
                        "land.geojson, line 2: the height 'high' is not a number. Mend the "
                                + "property \"elev\" of this feature."),
                BadFile.geoJson(
                        "height of no land",
                        points,
                        feature("Point", "[1, 2]", "{\"elev\": 123456}"),
                        "land.geojson, line 2: the height 123,456.0 m is no height of dry land. "
                                + "Mend the height, or declare \"heightUnit\" for this file in the plan."),
                BadFile.geoJson(
                        "line among points",
                        points,
                        feature("LineString", "[[1, 2, 3], [4, 5, 6]]", "{}"),
                        "land.geojson, line 2: a LineString stands in a file declared to hold "
                                + "points. Use Point there, or mend \"holds\" for this file in the plan."),
                BadFile.geoJson(
                        "sloping contour",
                        Holds.CONTOURS,
                        feature("LineString", "[[1, 2, 3], [4, 5, 6]]", "{}"),
                        "land.geojson, line 2: a contour is not level: it goes from 3.000 m to "
                                + "6.000 m. Declare the file as breaklines, or mend the heights."),
                BadFile.geoJson(
                        "line of one place",
                        lines,
                        feature("LineString", "[[1, 2, 3], [1, 2, 3]]", "{}"),
                        "land.geojson, line 2: a line has 1 place. A line needs two different "
                                + "places: mend it or take it out."),
                BadFile.geoJson(
                        "feature of unknown kind",
                        Holds.MIXED,
                        feature("Point", "[1, 2, 3]", "{\"kind\": \"tree\"}"),
                        "land.geojson, line 2: the property \"kind\" is 'tree'. Each feature "
                                + "says there what it is: point, breakline, contour or boundary."),
                BadFile.geoJson(
                        "open boundary",
                        outline,
                        feature("Polygon", "[[[0, 0], [9, 0], [9, 9], [0, 9]]]", "{}"),
                        "land.geojson, line 2: a ring of the boundary is not closed. Its last "
                                + "place must be the same as its first (RFC 7946, section 3.1.6)."),
                BadFile.geoJson(
                        "boundary of two corners",
                        outline,
                        feature("Polygon", "[[[0, 0], [9, 0], [0, 0]]]", "{}"),
                        "land.geojson, line 2: a ring of the boundary has 3 places. A closed "
                                + "ring needs four, the last the same as the first."),
                BadFile.geoJson(
                        "boundary that crosses itself",
                        outline,
                        feature("Polygon", "[[[0, 0], [9, 9], [9, 0], [0, 9], [0, 0]]]", "{}"),
                        "land.geojson, line 2: the boundary crosses or touches itself. Draw the "
                                + "outline without crossings."),
                BadFile.geoJson(
                        "no boundary in it",
                        outline,
                        "{\"type\": \"FeatureCollection\", \"features\": []}\n",
                        "land.geojson: there is no polygon in it. Export the outline as a "
                                + "Polygon."),
                BadFile.geoJson(
                        "point for a boundary",
                        outline,
                        feature("Point", "[1, 2]", "{}"),
                        "land.geojson, line 2: a Point stands in a file declared to hold a "
                                + "boundary. Use Polygon there, or mend \"holds\" for this file in the "
                                + "plan."),
                BadFile.geoJson(
                        "probe holes as GeoJSON",
                        Holds.PROBES,
                        "{}\n",
                        "land.geojson: GeoJSON is not read as probe holes. Give probe holes as "
                                + "delimited text, and a grid as GeoTIFF or ASCII grid."),
                BadFile.geoJson(
                                "degrees without a frame on the earth",
                                points,
                                feature("Point", "[-86.5, 39.2, 200]", "{}"),
                                "land.geojson: GeoJSON is longitude and latitude, and the plan has no "
                                        + "frame on the earth. State the EPSG code of a projected system, or a "
                                        + "local zone, as the frame; or declare \"coordinates\": \"local\" if these are plain "
                                        + "coordinates.")
                        .declaring(UnaryOperator.identity()),
                BadFile.geoJson(
                                "plain metres not declared",
                                points,
                                feature("Point", "[5000.5, 4000.5, 200]", "{}"),
                                "land.geojson, line 2: 5000.5, 4000.5 is no longitude and latitude. If "
                                        + "these are plain coordinates, declare \"coordinates\": \"local\" or \"epsg\" for "
                                        + "this file in the plan.")
                        .declaring(UnaryOperator.identity())
                        .in(26916),
                BadFile.geoJson(
                                "latitude first",
                                points,
                                feature("Point", "[39.2, -106.5, 200]", "{}"),
                                "land.geojson, line 2: 39.2, -106.5 is no longitude and latitude. "
                                        + "Latitude stands first: GeoJSON wants longitude first (RFC 7946, section "
                                        + "3.1.1).")
                        .declaring(UnaryOperator.identity())
                        .in(26916),
                BadFile.geoJson(
                                "place outside the frame",
                                points,
                                feature(
                                        "MultiPoint",
                                        "[[10.5, 39.2, 200], [10.51, 39.2, 201], [10.5, 39.21, 202]]",
                                        "{}"),
                                "land.geojson, line 2: a place cannot be carried from WGS 84 (EPSG:4326) "
                                        + "into the frame. Check the EPSG code, and that longitude stands before "
                                        + "latitude.")
                        .declaring(UnaryOperator.identity())
                        .in(26916),
                BadFile.geoJson(
                                "older form with a system of its own",
                                points,
                                "{\"type\": \"FeatureCollection\",\n\"crs\": {\"type\": \"name\","
                                        + " \"properties\": {\"name\": \"urn:ogc:def:crs:EPSG::2965\"}},"
                                        + "\n\"features\": []}\n",
                                "land.geojson, line 2: the file names a reference system of its own "
                                        + "('urn:ogc:def:crs:EPSG::2965'), which GeoJSON no longer does (RFC 7946, "
                                        + "section 4). Export it in longitude and latitude of WGS 84; or take "
                                        + "\"crs\" out and declare \"epsg\" for the file in the plan.")
                        .declaring(UnaryOperator.identity())
                        .in(26916),
                BadFile.geoJson(
                                "height without a unit",
                                points,
                                feature("Point", "[-86.5, 39.2]", "{\"elevation\": 200}"),
                                "land.geojson, line 2: nothing says the unit of the heights. Declare "
                                        + "\"heightUnit\": \"m\", \"ft\" (international foot) or \"ftUS\" (US "
                                        + "survey foot) for this file in the plan.")
                        .declaring(UnaryOperator.identity())
                        .in(26916),
                BadFile.geoJson(
                                "lines in delimited text",
                                lines,
                                "1,2,3\n",
                                "lines.csv: lines and boundaries are read from GeoJSON only. Export them "
                                        + "as GeoJSON and let the name end in .geojson; breaklines can also be "
                                        + "made by codes in a file of points.")
                        .named("lines.csv"));
    }
}
