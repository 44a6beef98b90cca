package lanewright.survey.read;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;

import java.util.ArrayList;
import java.util.List;

/** Delimited text that cannot be read as it stands. */
final class BadText {

    static final String HEAD = "name,easting,northing,height,code\n";
    static final String ROWS =
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
}
