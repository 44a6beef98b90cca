package lanewright.survey.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lanewright.measure.LengthUnit;

/** Delimited text that cannot be read as it stands. */
final class BadText {

    private static final String HEAD = "name,easting,northing,height,code\n";
    private static final String ROWS =
            """
                1,100.1,200.2,30.3,edge
                2,110.4,205.1,30.9,edge
                3,120.7,215.9,31.4,
                4,130.2,218.4,31.7,
                5,139.8,229.0,32.2,
                """;

    private BadText() {}

    static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>();
        all.addAll(notText());
        all.addAll(rows());
        all.addAll(numbers());
        all.addAll(layouts());
        all.addAll(units());
        all.addAll(mixedUp());
        return all;
    }

    private static List<BadFile> notText() {
        return List.of(
                BadFile.points(
                        "empty file",
                        "",
                        "shots.csv: the file is empty. Export it again, or take it out."),
                BadFile.points(
                        "only remarks",
                        "# a remark\n\n   \n",
                        "shots.csv: there are only blank lines and comments. Export the points "
                                + "again, or take the file out of the plan."),
                BadFile.points(
                        "headings without rows",
                        HEAD,
                        "shots.csv, line 1: there are headings and no rows. Export the points "
                                + "again, or take the file out of the plan."),
                BadFile.points(
                                "UTF-16",
                                "",
                                "shots.csv: the text is UTF-16, not UTF-8. Save the file as UTF-8.")
                        .bytes(("\uFEFF" + HEAD + ROWS).getBytes(UTF_16LE)),
                BadFile.points(
                                "Latin-1 letters",
                                "",
                                "shots.csv, line 2: the text is not UTF-8. Save the file as UTF-8; it "
                                        + "was probably saved with an old Windows or Latin character set.")
                        .bytes(
                                (HEAD + "1,100.1,200.2,30.3,Böschung\n" + ROWS)
                                        .getBytes(ISO_8859_1)),
                BadFile.points(
                        "zero byte",
                        HEAD + "1,100.1,200.2,30.3,ed\0ge\n" + ROWS,
                        "shots.csv, line 2: there is a zero byte in the text. This is not plain "
                                + "text: export the points again as delimited text in UTF-8."),
                BadFile.points(
                        "control character",
                        HEAD + "1,100.1,200.2\u0007,30.3,\n",
                        "shots.csv, line 2: there is a control character (7) in the text. This "
                                + "is not plain text: export the points again as delimited text in UTF-8."),
                BadFile.points(
                                "spreadsheet",
                                "",
                                "shots.csv: this is a zip archive or a spreadsheet, not text. Export the "
                                        + "points as delimited text (CSV), or name the right file.")
                        .bytes(new byte[] {'P', 'K', 3, 4, 20, 0}),
                BadFile.points(
                                "gzip archive",
                                "",
                                "shots.csv: this is a gzip archive, not text. Export the points as "
                                        + "delimited text (CSV), or name the right file.")
                        .bytes(new byte[] {0x1F, (byte) 0x8B, 8, 0, 0}),
                BadFile.points(
                        "PDF",
                        "%PDF-1.7\n",
                        "shots.csv: this is a PDF, not text. Export the points as delimited text "
                                + "(CSV), or name the right file."),
                BadFile.points(
                        "point cloud",
                        "LASF\0\0\0\0",
                        "shots.csv: this is a lidar point cloud (LAS), not text. Export the "
                                + "points as delimited text (CSV), or name the right file."),
                BadFile.points(
                                "picture",
                                "",
                                "shots.csv: this is a picture, not text. Export the points as delimited "
                                        + "text (CSV), or name the right file.")
                        .bytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10}),
                BadFile.points(
                        "endless line",
                        HEAD + "1,".repeat(10_000) + "\n",
                        "shots.csv, line 2: the line is longer than 8192 characters. A survey "
                                + "row is far shorter: check that this is a text file with one point on "
                                + "each line."),
                BadFile.points(
                        "XML",
                        "<?xml version=\"1.0\"?>\n<points/>\n",
                        "shots.csv, line 1: this is XML or a web page, not delimited text. "
                                + "Export the points as delimited text (CSV)."),
                BadFile.points(
                        "JSON named as text",
                        "{\"type\": \"Feature\"}\n",
                        "shots.csv, line 1: this is JSON, not delimited text. Give a GeoJSON "
                                + "file a name that ends in .geojson or .json."),
                BadFile.points(
                        "grid declared as points",
                        "ncols 2\nnrows 2\n1 2\n3 4\n",
                        "shots.csv, line 1: this is an ASCII elevation grid, not a list of "
                                + "points. Declare \"holds\": \"grid\" for it in the plan."));
    }

    private static List<BadFile> rows() {
        return List.of(
                BadFile.points(
                        "too few fields",
                        HEAD + ROWS + "6,141.0\n",
                        "shots.csv, line 7: the row has 2 fields where 4 or more are expected: "
                                + "'6,141.0'. Mend the row, or put # in front of it if it is a remark."),
                BadFile.points(
                        "too many fields",
                        "name,easting,northing,height\n1,100.1,200.2,30.3\n2,110,4,205,1,30,9\n",
                        "shots.csv, line 3: the row has 7 fields where 4 are expected: "
                                + "'2,110,4,205,1,30,9'. Mend the row: a decimal or thousands comma may "
                                + "have split a number."),
                BadFile.points(
                        "open quote",
                        HEAD + ROWS + "6,141.0,230.0,32.4,\"big oak\n",
                        "shots.csv, line 7: a quote is opened and not closed on the same line. "
                                + "Close the quote; write a quote inside a field (as for inches) twice."),
                BadFile.points(
                        "words after a quote",
                        HEAD + ROWS + "6,141.0,230.0,32.4,\"6\"in\"\n",
                        "shots.csv, line 7: something follows a closing quote. Put the whole "
                                + "field in quotes, and write a quote inside it twice."),
                BadFile.points(
                        "too many separators",
                        HEAD + ROWS + ",".repeat(80) + "\n",
                        "shots.csv, line 7: the row has more than 64 fields. Check the "
                                + "separator; declare it in the plan as \"separator\"."),
                BadFile.points(
                        "headings in the middle",
                        HEAD + ROWS + HEAD + ROWS,
                        "shots.csv, line 7: the headings stand here again. Two files seem to be "
                                + "joined: check that both have the same columns and unit, and take this "
                                + "line out."),
                BadFile.points(
                        "text without numbers",
                        "Notes of the crew\nrained, went home\n",
                        "shots.csv, line 2: no 3 columns of numbers are found: 'rained, went "
                                + "home'. Write one point on each line: coordinates and height as plain "
                                + "decimal numbers, with commas, semicolons, tabs or blanks between them."),
                BadFile.points(
                        "strange separator",
                        "1|100.1|200.2|30.3\n2|110.4|205.1|30.9\n",
                        "shots.csv, line 1: fields are parted neither by commas, semicolons, "
                                + "tabs nor blanks: '1|100.1|200.2|30.3'. Export the points with one of "
                                + "these between the fields."));
    }

    private static List<BadFile> numbers() {
        return List.of(
                BadFile.points(
                        "blank coordinate",
                        HEAD + ROWS + "6,,230.0,32.4,\n",
                        "shots.csv, line 7: the easting is blank where a number should be. Mend "
                                + "the number, or put # in front of the line if it is no point."),
                BadFile.points(
                        "word for a number",
                        HEAD + ROWS + "6,141.0,none,32.4,\n",
                        "shots.csv, line 7: the northing 'none' is not a number. Mend the "
                                + "number, or put # in front of the line if it is no point."),
                BadFile.points(
                        "NaN",
                        HEAD + ROWS + "6,141.0,230.0,NaN,\n",
                        "shots.csv, line 7: the height 'NaN' is not a finite number. Mend the "
                                + "number, or put # in front of the line if it is no point."),
                BadFile.points(
                        "infinity",
                        HEAD + ROWS + "6,141.0,-Infinity,32.4,\n",
                        "shots.csv, line 7: the northing '-Infinity' is not a finite number. "
                                + "Mend the number, or put # in front of the line if it is no point."),
                BadFile.points(
                        "1e400",
                        HEAD + ROWS + "6,1e400,230.0,32.4,\n",
                        "shots.csv, line 7: the easting '1e400' is too large for a number. Mend "
                                + "the number, or put # in front of the line if it is no point."),
                BadFile.points(
                        "unit in the number",
                        HEAD + ROWS + "6,141.0,230.0,32.4m,\n",
                        "shots.csv, line 7: the height '32.4m' has a unit or a letter behind the "
                                + "number. Mend the number, or put # in front of the line if it is no "
                                + "point."),
                BadFile.points(
                        "letter O for nought",
                        HEAD + ROWS + "6,141.O,230.0,32.4,\n",
                        "shots.csv, line 7: the easting '141.O' has a letter where a digit "
                                + "should be. Mend the number, or put # in front of the line if it is no "
                                + "point."),
                BadFile.points(
                        "thousands separator",
                        HEAD + ROWS + "6,\"1,141.0\",230.0,32.4,\n",
                        "shots.csv, line 7: the easting '1,141.0' has separators between "
                                + "thousands, or a decimal sign other than '.'. Mend the number, or put # "
                                + "in front of the line if it is no point."),
                BadFile.points(
                        "two points in a number",
                        HEAD + ROWS + "6,14.1.0,230.0,32.4,\n",
                        "shots.csv, line 7: the easting '14.1.0' has more than one sign or "
                                + "decimal sign. Mend the number, or put # in front of the line if it is "
                                + "no point."),
                BadFile.points(
                        "one decimal comma among points",
                        HEAD.replace(',', ';') + ROWS.replace(',', ';') + "6;141,0;230.0;32.4;\n",
                        "shots.csv, line 7: the easting '141,0' has the decimal sign ',' where "
                                + "'.' was understood. Mend the number, or put # in front of the line if "
                                + "it is no point."),
                BadFile.points(
                        "degrees, minutes and seconds",
                        HEAD + ROWS + "6,86°30'00\"W,230.0,32.4,\n",
                        "shots.csv, line 7: the easting '86°30'00\"W' looks like degrees, "
                                + "minutes and seconds, or feet and inches. Mend the number, or put # in "
                                + "front of the line if it is no point."),
                BadFile.points(
                        "feet and inches",
                        HEAD + ROWS + "6,141.0,230.0,32' 4\"\"\n",
                        "shots.csv, line 7: the height '32' 4\"\"' looks like degrees, minutes "
                                + "and seconds, or feet and inches. Mend the number, or put # in front of "
                                + "the line if it is no point."),
                BadFile.points(
                        "mark for not measured",
                        HEAD + ROWS + "6,141.0,230.0,-9999,\n",
                        "shots.csv, line 7: the height -9999 is a mark for 'not measured'. Take "
                                + "the row out, or put # in front of it."),
                BadFile.points(
                        "height above Everest",
                        HEAD + ROWS + "6,141.0,230.0,32400,\n",
                        "shots.csv, line 7: the height 32400 (32,400 m) is no height of dry "
                                + "land. Check the row, the order of the columns and the unit of heights."),
                BadFile.points(
                        "digits run together",
                        HEAD + ROWS + "6,1410230324,230.0,32.4,\n",
                        "shots.csv, line 7: coordinate 1410230324 is further away than the earth "
                                + "is wide. Check the row for digits that run together, and the unit of "
                                + "the file."));
    }

    private static List<BadFile> layouts() {
        return List.of(
                BadFile.points(
                        "no headings, no columns declared",
                        "1,5000.1,4000.2,30.3,edge\n2,5010.4,4005.1,30.9,edge\n",
                        "shots.csv, line 1: there are no headings, and numbers alone do not say "
                                + "which column is easting and which is northing: "
                                + "'1,5000.1,4000.2,30.3,edge'. Declare the order in the plan: "
                                + "\"columns\": \"name, easting, northing, height, code\" or \"columns\": "
                                + "\"name, northing, easting, height, code\"."),
                BadFile.points(
                        "no height column",
                        """
                name,easting,northing
                1,2,3
                2,3,5
                """,
                        "shots.csv, line 1: no column is height (understood: name, easting, "
                                + "northing). Declare the order in the plan, such as \"columns\": "
                                + "\"easting, northing, height\"."),
                BadFile.points(
                        "unknown headings",
                        "aa,bb,cc,dd\n1,100.1,200.2,30.3\n",
                        "shots.csv, line 1: none of the headings is known: 'aa,bb,cc,dd'. "
                                + "Declare the order in the plan, such as \"columns\": \"name, easting, "
                                + "northing, height, code\"."),
                BadFile.points(
                        "two columns of one meaning",
                        "x,easting,northing,height\n1,100.1,200.2,30.3\n",
                        "shots.csv, line 1: two columns are easting. Declare \"columns\" in the "
                                + "plan, with skip for the one that is not meant."),
                BadFile.points(
                        "plane and degrees side by side",
                        "easting,northing,lon,lat,height\n100.1,200.2,-86.5,39.2,30.3\n",
                        "shots.csv, line 1: there are columns both of easting and northing and "
                                + "of longitude and latitude. Declare \"columns\" in the plan, with skip "
                                + "for the pair that is not meant."),
                BadFile.points(
                                "unknown word in declared columns",
                                HEAD + ROWS,
                                "shots.csv, line 1: the plan declares a column 'altitudes', which is not "
                                        + "known. Use the words name, easting, northing, height, code, longitude, "
                                        + "latitude, topsoil, bearing, met and skip.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("name, easting, northing, altitudes")),
                BadFile.points(
                                "declared against the headings",
                                HEAD + ROWS,
                                "shots.csv, line 1: column 2 is headed easting, and the plan declares it "
                                        + "as northing. Mend \"columns\" in the plan, or the headings of the file.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("name, northing, easting, height, code")),
                BadFile.points(
                        "whole numbers or split decimals",
                        "1,5000,12,4000,20,30,3\n2,5010,44,4005,14,30,9\n",
                        "shots.csv, line 1: the row can be read as 7 whole numbers, or as fewer "
                                + "numbers with decimal commas that the separator splits. If the numbers "
                                + "are whole, declare \"columns\" in the plan; if not, export with "
                                + "semicolons between the fields."),
                BadFile.points(
                                "declared separator not there",
                                HEAD + ROWS,
                                "shots.csv, line 2: no 3 columns of numbers are found: "
                                        + "'1,100.1,200.2,30.3,edge'. Check the \"separator\" and \"decimal\" that "
                                        + "the plan declares for it.")
                        .declaring(file -> file.unit(LengthUnit.METRE).signs(';', '.')),
                BadFile.points(
                        "longitude and latitude without a system",
                        "lon,lat,height\n-86.5,39.2,200.1\n-86.4999,39.2001,200.4\n",
                        "shots.csv, line 1: the columns are longitude and latitude, in degrees. "
                                + "Declare \"epsg\": 4326 (WGS 84) or the code of their own geographic "
                                + "system for this file, and a projected frame for the plan."));
    }

    private static List<BadFile> units() {
        return List.of(
                BadFile.points(
                                "no unit anywhere",
                                HEAD + ROWS,
                                "shots.csv: nothing says the unit of the coordinates. Declare \"unit\": "
                                        + "\"m\", \"ft\" (international foot) or \"ftUS\" (US survey foot) for "
                                        + "this file in the plan.")
                        .declaring(UnaryOperator.identity()),
                BadFile.points(
                                "feet of either kind, far from zero",
                                """
                easting_ft,northing_ft,height_ft
                2963503.913,254759.801,30.1
                2963513.1,254769.2,30.4
                """,
                                "shots.csv: the easting is headed in feet, and the two feet in use would "
                                        + "put points 1,807 mm apart. Declare \"unit\": \"ft\" (international "
                                        + "foot) or \"unit\": \"ftUS\" (US survey foot) for this file in the plan.")
                        .declaring(UnaryOperator.identity()),
                BadFile.points(
                                "easting and northing in different units",
                                "easting_m,northing_ft,height_m\n100.1,200.2,30.3\n",
                                "shots.csv: easting is headed in m and northing in ft. Mend the "
                                        + "headings: both are in one unit.")
                        .declaring(UnaryOperator.identity()),
                BadFile.points(
                                "headed in kilometres",
                                "easting (km),northing (km),height (m)\n1.1,2.2,30.3\n",
                                "shots.csv: the easting is headed in 'km'. Surveys are read in m, ft "
                                        + "(international) and ftUS (US survey foot): convert the column, or mend "
                                        + "its heading.")
                        .declaring(UnaryOperator.identity()),
                BadFile.points(
                        "declared unit against the headings",
                        "easting_ft,northing_ft,height_ft\n100.1,200.2,30.3\n",
                        "shots.csv: coordinates are headed in ft, and the plan declares m. Mend "
                                + "the unit in the plan, or the headings of the file."),
                BadFile.points(
                                "unit of heights not said",
                                "easting_m,northing_m,height\n100.1,200.2,30.3\n",
                                "shots.csv: nothing says the unit of the heights. Declare "
                                        + "\"heightUnit\": \"m\", \"ft\" (international foot) or \"ftUS\" (US "
                                        + "survey foot) for this file in the plan.")
                        .declaring(UnaryOperator.identity()));
    }

    private static List<BadFile> mixedUp() {
        String utm =
                """
                543173.836,4339090.244,201.2
                543183.1,4339095.3,201.9
                543193.5,4339100.2,202.7
                543203.9,4339111.8,203.3
                """;
        return List.of(
                BadFile.points(
                                "degrees taken for metres",
                                """
                -86.50001,39.20001,200.1
                -86.49992,39.20008,200.4
                -86.49981,39.20003,200.9
                -86.49977,39.20011,201.3
                """,
                                "shots.csv: all places lie within half a unit of each other and look "
                                        + "like degrees. If they are longitude and latitude, say so in \"columns\" "
                                        + "with \"epsg\": 4326, and give the plan a projected frame.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("easting, northing, height")),
                BadFile.points(
                                "easting and northing swapped",
                                utm,
                                "shots.csv, line 1: the point lies outside the area of NAD83 / UTM zone "
                                        + "16N (EPSG:26916), and inside with its coordinates swapped. Easting and "
                                        + "northing look swapped: mend \"columns\" in the plan.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("northing, easting, height"))
                        .in(26916),
                BadFile.points(
                                "height and northing swapped",
                                utm,
                                "shots.csv, line 1: the height 4339090.244 (4,339,090 m) is no height of "
                                        + "dry land. Check the row, the order of the columns and the unit of "
                                        + "heights.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("easting, height, northing"))
                        .in(26916),
                BadFile.points(
                        "heights wider than the land",
                        """
                easting,height,northing
                101.1,11.9,200.1
                101.4,85.2,201.0
                102.0,140.3,202.2
                101.7,190.1,201.4
                """,
                        "shots.csv: heights differ more than the land is wide. The columns look "
                                + "swapped: mend \"columns\" in the plan, and the units."),
                BadFile.points(
                                "point numbers taken for easting",
                                "1,5000.1,30.3\n2,5010.4,30.9\n3,5020.6,31.1\n4,5031.9,31.6\n",
                                "shots.csv: the easting column counts 1 by 1. It looks like point "
                                        + "numbers: mend \"columns\" in the plan.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("easting, northing, height")),
                BadFile.points(
                        "every easting the same",
                        "easting,northing,height\n5,10.2,1.1\n5,20.3,1.2\n5,31.1,1.4\n5,44.9,1.5\n",
                        "shots.csv: every point has the same easting. Check the order of the "
                                + "columns; ground needs points that do not lie on one line."),
                BadFile.points(
                                "wrong reference system",
                                utm,
                                "shots.csv, line 1: the point lies outside the area of NAD83 / Indiana "
                                        + "East (ftUS) (EPSG:2965). Check the EPSG code, the unit and the order of "
                                        + "the columns.")
                        .declaring(
                                file ->
                                        file.unit(LengthUnit.METRE)
                                                .columns("easting, northing, height"))
                        .in(2965),
                BadFile.points(
                                "feet in a metre system",
                                "1782066.4,14235859.7,660.1\n",
                                "shots.csv: the coordinates do not lie in the area of NAD83 / UTM zone "
                                        + "16N (EPSG:26916) in its own unit, m, but would if they were in ft. "
                                        + "Declare \"unit\" for this file in the plan.")
                        .declaring(
                                file ->
                                        file.columns("easting, northing, height")
                                                .heightUnit(LengthUnit.FOOT))
                        .in(26916),
                BadFile.points(
                                "unknown EPSG code",
                                HEAD + ROWS,
                                "EPSG:999999 is not a known reference system. Look the code up again; "
                                        + "the data set here is EPSG 11.031.")
                        .in(999_999),
                BadFile.points(
                                "geographic system as the frame",
                                HEAD + ROWS,
                                "EPSG:4326 is not a projected system. A lane is planned in metres on a "
                                        + "flat map: state the code of a projected system, such as the UTM zone or "
                                        + "state plane zone of the place.")
                        .in(4326),
                BadFile.points(
                                "latitude before longitude",
                                "lon,lat,height\n39.2,-106.5,200.1\n39.2001,-106.4999,200.4\n",
                                "shots.csv, line 2: longitude 39.2, latitude -106.5 is no place on the "
                                        + "earth. Longitude and latitude look swapped: mend \"columns\" in the "
                                        + "plan.")
                        .declaring(file -> file.epsg(4326).heightUnit(LengthUnit.METRE))
                        .in(26916),
                BadFile.points(
                                "degrees declared, metres in the file",
                                HEAD + ROWS,
                                "shots.csv, line 1: WGS 84 (EPSG:4326) is written in degrees, and the "
                                        + "columns are easting and northing. Mend \"epsg\" or \"columns\" for this "
                                        + "file in the plan.")
                        .declaring(file -> file.unit(LengthUnit.METRE).epsg(4326))
                        .in(26916),
                BadFile.points(
                                "own system without a frame on the earth",
                                HEAD + ROWS,
                                "shots.csv: plain local coordinates have no known place on the earth. "
                                        + "State the EPSG code of a projected system, or a local zone, as the "
                                        + "frame.")
                        .declaring(file -> file.unit(LengthUnit.METRE).epsg(26916)));
    }
}
