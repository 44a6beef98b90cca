package lanewright.survey.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.LengthUnit;

/** GeoJSON, grids and lists of probe holes that cannot be read as they stand. */
final class BadOthers {

    private static final String GRID_HEAD =
            "ncols 3\nnrows 2\nxllcorner 0\nyllcorner 0\ncellsize 10\nNODATA_value -9999\n";
    private static final String HOLE_HEAD = "name,easting,northing,topsoil,bearing,met\n";

    private BadOthers() {}

    static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>();
        all.addAll(brokenJson());
        all.addAll(geoJson());
        all.addAll(grids());
        all.addAll(tiffs());
        all.addAll(probes());
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
                        .declaring(file -> file),
                BadFile.geoJson(
                                "plain metres not declared",
                                points,
                                feature("Point", "[5000.5, 4000.5, 200]", "{}"),
                                "land.geojson, line 2: 5000.5, 4000.5 is no longitude and latitude. If "
                                        + "these are plain coordinates, declare \"coordinates\": \"local\" or \"epsg\" for "
                                        + "this file in the plan.")
                        .declaring(file -> file)
                        .in(26916),
                BadFile.geoJson(
                                "latitude first",
                                points,
                                feature("Point", "[39.2, -106.5, 200]", "{}"),
                                "land.geojson, line 2: 39.2, -106.5 is no longitude and latitude. "
                                        + "Latitude stands first: GeoJSON wants longitude first (RFC 7946, section "
                                        + "3.1.1).")
                        .declaring(file -> file)
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
                        .declaring(file -> file)
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
                        .declaring(file -> file)
                        .in(26916),
                BadFile.geoJson(
                                "height without a unit",
                                points,
                                feature("Point", "[-86.5, 39.2]", "{\"elevation\": 200}"),
                                "land.geojson, line 2: nothing says the unit of the heights. Declare "
                                        + "\"heightUnit\": \"m\", \"ft\" (international foot) or \"ftUS\" (US "
                                        + "survey foot) for this file in the plan.")
                        .declaring(file -> file)
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

    private static List<BadFile> grids() {
        return List.of(
                BadFile.grid(
                        "no cell size",
                        "ncols 3\nnrows 2\nxllcorner 0\nyllcorner 0\n1 2 3\n",
                        "land.asc: the head of the grid has no cellsize. The head has ncols, "
                                + "nrows, xllcorner, yllcorner, cellsize and NODATA_value, each with one "
                                + "number."),
                BadFile.grid(
                        "half a column",
                        GRID_HEAD.replace("ncols 3", "ncols 3.5") + "1 2\n",
                        "land.asc, line 1: ncols is 3.5. It must be a whole number of cells."),
                BadFile.grid(
                        "head said twice",
                        "ncols 3\n" + GRID_HEAD + "1 2 3 4 5 6\n",
                        "land.asc, line 2: the head of the grid says ncols twice. Get the grid "
                                + "again."),
                BadFile.grid(
                        "head without heights",
                        GRID_HEAD,
                        "land.asc, line 6: the grid has a head and no heights. Get the grid "
                                + "again."),
                BadFile.grid(
                        "negative cells",
                        GRID_HEAD.replace("cellsize 10", "cellsize -1") + "1\n",
                        "land.asc, line 5: cells are -1.0 wide. Get the grid again."),
                BadFile.grid(
                        "too few heights",
                        GRID_HEAD + "1 2 3\n4 5\n",
                        "land.asc: the grid says 3 by 2 cells and holds 5 heights. The file is "
                                + "cut off or its head is wrong: get the grid again."),
                BadFile.grid(
                        "too many heights",
                        GRID_HEAD + "1 2 3\n4 5 6\n7\n",
                        "land.asc, line 9: the grid says 3 by 2 cells and holds more heights. "
                                + "Its head is wrong, or two grids are joined: get the grid again."),
                BadFile.grid(
                        "word among heights",
                        GRID_HEAD + "1 2 x3\n4 5 6\n",
                        "land.asc, line 7: the height 'x3' is not a number. Get the grid again."),
                BadFile.grid(
                        "nothing measured",
                        GRID_HEAD + "-9999 -9999 -9999 ".repeat(2),
                        "land.asc: no cell has a height. Get the grid again: every cell is "
                                + "marked as not measured."),
                BadFile.grid(
                        "other mark for not measured",
                        GRID_HEAD + "1 2 -32768\n4 5 6\n",
                        "land.asc, line 7: the height -32768.0 is no height of dry land. If it "
                                + "marks cells that were not measured, the file must say so (NODATA_value, "
                                + "or the no-data tag of a TIFF); else check the unit of heights."),
                BadFile.grid(
                        "points declared as grid",
                        "name;x;y;z\n1;2;3;4\n",
                        "land.asc, line 1: this is no line of an ASCII elevation grid: "
                                + "'name;x;y;z'. The head has ncols, nrows, xllcorner, yllcorner, cellsize "
                                + "and NODATA_value, each with one number."),
                BadFile.grid(
                        "huge grid",
                        GRID_HEAD
                                        .replace("ncols 3", "ncols 99999")
                                        .replace("nrows 2", "nrows 99999")
                                + "1\n",
                        "land.asc: the grid is 99999 by 99999 cells. Cut it down to the land "
                                + "that the lane may touch."),
                BadFile.grid(
                        "grid in degrees",
                        GRID_HEAD.replace("cellsize 10", "cellsize 0.0001") + "1 2 3\n4 5 6\n",
                        "land.asc: its cells are 0.000100 wide and look like degrees of "
                                + "longitude and latitude. Declare \"epsg\": 4326 or the code of its own "
                                + "geographic system for this file, and a projected frame for the plan."),
                BadFile.grid(
                                "grid without a unit",
                                GRID_HEAD + "1 2 3\n4 5 6\n",
                                "land.asc: nothing says the unit of its coordinates. Declare \"unit\": "
                                        + "\"m\", \"ft\" or \"ftUS\" for this file in the plan.")
                        .declaring(file -> file),
                BadFile.grid(
                        "one row",
                        GRID_HEAD.replace("nrows 2", "nrows 1") + "1 2 3\n",
                        "land.asc: the grid is 3 by 1 cells. A grid of heights needs two of each."));
    }

    private static List<BadFile> tiffs() {
        return List.of(
                BadFile.grid(
                                "TIFF cut off",
                                "",
                                "land.tif: the GeoTIFF cannot be read: I/O error reading image metadata. "
                                        + "The file may be cut off or of an unusual kind: get it again as a plain "
                                        + "GeoTIFF of heights.")
                        .named("land.tif")
                        .bytes(new byte[] {'I', 'I', 42, 0, 8, 0, 0, 0}),
                BadFile.grid(
                                "TIFF that is a picture",
                                "",
                                "land.tif: the TIFF has 3 bands and looks like a picture. An elevation "
                                        + "grid has one band, the height.")
                        .named("land.tif")
                        .bytes(TinyTiff.of(3, 2, 3, 2)),
                BadFile.grid(
                                "TIFF of enormous size",
                                "",
                                "land.tif: the grid is 60000 by 60000 cells. Cut it down to the land "
                                        + "that the lane may touch.")
                        .named("land.tif")
                        .bytes(TinyTiff.of(60_000, 60_000, 1, 60_000)),
                BadFile.grid(
                                "TIFF of one enormous strip",
                                "",
                                "land.tif: the TIFF is cut into tiles of 9000 by 9000 cells. Write it "
                                        + "again in tiles or strips of at most 16 million cells.")
                        .named("land.tif")
                        .bytes(TinyTiff.of(9_000, 9_000, 1, 9_000)));
    }

    private static List<BadFile> probes() {
        return List.of(
                BadFile.probes(
                        "no depth column",
                        "name,easting,northing\nA,1.5,2.5\n",
                        "holes.csv, line 1: no column holds a depth of topsoil or of bearing "
                                + "soil (understood: name, easting, northing). Head a column \"topsoil\" "
                                + "or \"bearing\", or declare \"columns\"."),
                BadFile.probes(
                        "depth without a unit",
                        HOLE_HEAD + "A,1.5,2.5,8,,loam\n",
                        "holes.csv, line 2: nothing says the unit of the depth '8'. Write 8 in "
                                + "or 0.2 m, head the column \"topsoil (in)\", or declare \"depthUnit\" "
                                + "for this file in the plan."),
                BadFile.probes(
                        "depth in words",
                        HOLE_HEAD + "A,1.5,2.5,a boot,,loam\n",
                        "holes.csv, line 2: the depth 'a boot' is not understood. Write it as a "
                                + "number with its unit, such as 8 in or 0.2 m; >12 in if the hole did not "
                                + "get through."),
                BadFile.probes(
                        "negative depth",
                        HOLE_HEAD + "A,1.5,2.5,-8 in,,loam\n",
                        "holes.csv, line 2: the depth '-8 in' is negative. Depths count "
                                + "downwards from the grass: write it without the minus."),
                BadFile.probes(
                        "depth of a well",
                        HOLE_HEAD + "A,1.5,2.5,80 ft,,loam\n",
                        "holes.csv, line 2: the depth '80 ft' is no probe hole's. Check the "
                                + "depth and its unit."),
                BadFile.probes(
                        "unknown unit of depth",
                        HOLE_HEAD + "A,1.5,2.5,8 hands,,loam\n",
                        "holes.csv, line 2: the depth '8 hands' is not understood: \"hands\" is "
                                + "not a unit known here. Write 7 in or 180 mm."),
                BadFile.probes(
                        "no depth in the row",
                        HOLE_HEAD + "A,1.5,2.5,,,loam\n",
                        "holes.csv, line 2: the hole has neither a depth of topsoil nor of "
                                + "bearing soil. Write one, or put # in front of the line."),
                BadFile.probes(
                        "hole without a place",
                        HOLE_HEAD + "A,,2.5,8 in,,loam\n" + "B,2.5,2.6,8 in,,loam\n",
                        "holes.csv, line 2: the easting is blank where a number should be. Mend "
                                + "the number, or put # in front of the line."),
                BadFile.probes(
                        "depths headed in two units",
                        "easting,northing,topsoil (in),bearing (ft)\n1.5,2.5,8,2\n",
                        "holes.csv: the depths have two units, in and ft. Give both depths one "
                                + "unit in their headings and in \"depthUnit\"."),
                BadFile.probes(
                        "holes without headings",
                        "A,1.5,2.5,8,24,loam\nB,2.5,7.5,9,30,clay\n",
                        "holes.csv, line 1: there are no headings, and numbers alone do not say "
                                + "which column is easting and which is northing: 'A,1.5,2.5,8,24,loam'. "
                                + "Put a line of headings on top, such as "
                                + "name,easting,northing,topsoil,met."));
    }
}
