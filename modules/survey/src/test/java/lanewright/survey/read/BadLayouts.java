package lanewright.survey.read;

import static lanewright.survey.read.BadText.HEAD;
import static lanewright.survey.read.BadText.ROWS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import lanewright.measure.LengthUnit;

/** Delimited text whose columns, units or reference system are mixed up or not said. */
final class BadLayouts {

    private BadLayouts() {}

    static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>();
        all.addAll(layouts());
        all.addAll(units());
        all.addAll(mixedUp());
        return all;
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
                                "shots.csv, line 1: a column is declared as 'altitudes', which is not "
                                        + "known. Use the words name, east, north, height, code, skip; longitude "
                                        + "and latitude where places are in degrees.")
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
