package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Elevation grids and lists of probe holes that cannot be read as they stand. */
final class BadGridsAndProbes {

    private static final String GRID_HEAD =
            "ncols 3\nnrows 2\nxllcorner 0\nyllcorner 0\ncellsize 10\nNODATA_value -9999\n";
    private static final String HOLE_HEAD = "name,easting,northing,topsoil,bearing,met\n";

    private BadGridsAndProbes() {}

    static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>();
        all.addAll(grids());
        all.addAll(tiffs());
        all.addAll(probes());
        return all;
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
                        .declaring(UnaryOperator.identity()),
                BadFile.grid(
                        "one row",
                        GRID_HEAD.replace("nrows 2", "nrows 1") + "1 2 3\n",
                        "land.asc: the grid is 3 by 1 cells. A grid of heights needs two of each."));
    }

    private static List<BadFile> tiffs() {
        return List.of(
                BadFile.grid(
                                "TIFF with less in it than it says",
                                "",
                                "land.tif: the TIFF is cut off: it says that it holds more than there is. "
                                        + "Copy it or get it again, in whole.")
                        .named("land.tif")
                        .bytes(TinyTiff.of(16, 16, 1, 16)),
                BadFile.grid(
                                "TIFF that cannot be unpacked",
                                "",
                                "land.tif: the GeoTIFF cannot be read: incorrect header check. The file may be"
                                        + " cut off or of an unusual kind: get it again as a plain GeoTIFF of heights.")
                        .named("land.tif")
                        .bytes(TinyTiff.of(8, 8, 1, 8, 8)),
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
                        .bytes(TinyTiff.of(9_000, 9_000, 1, 9_000, 8)));
    }

    private static List<BadFile> probes() {
        return List.of(
                BadFile.probes(
                        "no depth column",
                        "name,easting,northing\nA,1.5,2.5\n",
                        "holes.csv, line 1: no column holds a depth of topsoil or of bearing "
                                + "soil (understood: name, easting, northing). Head a column \"topsoil\" "
                                + "or \"soft to\" with its unit, or declare \"columns\"."),
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
