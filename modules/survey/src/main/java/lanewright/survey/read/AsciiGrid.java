package lanewright.survey.read;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import lanewright.measure.Progress;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Fields;
import lanewright.survey.text.Lines;
import lanewright.survey.text.Numbers;

/**
 * Reads an ASCII elevation grid: six lines of names and values, then heights row by row from the
 * north, each row from the west, with line ends wherever they fall.
 */
final class AsciiGrid {

    /** Bytes of the longest line: a row of the widest grid that is read. */
    private static final int LONGEST_LINE = 4_000_000;

    private static final double NO_MARK = Double.NaN;

    /** Cells narrower than this, with corners that can be degrees, are degrees. */
    static final double DEGREES_CELL = 0.02;

    private final Grids grid;
    private final SurveyFile file;
    private final Map<String, Double> head = new TreeMap<>();
    private final Map<String, Long> headLine = new TreeMap<>();

    private long columns;
    private long rows;
    private double west;
    private double south;
    private double cell;
    private double mark = NO_MARK;
    private long taken;

    private AsciiGrid(Grids grid, SurveyFile file) {
        this.grid = grid;
        this.file = file;
    }

    static void read(Grids grid, SurveyFile file, Progress progress) throws SurveyException {
        new AsciiGrid(grid, file).read(progress);
    }

    private void read(Progress progress) throws SurveyException {
        try (Lines lines = new Lines(file.path(), LONGEST_LINE)) {
            boolean begun = false;
            while (lines.next()) {
                if (!begun && isHead(lines)) {
                    continue;
                }
                if (!begun) {
                    begin();
                    begun = true;
                }
                heights(lines);
                progress.check();
                progress.report(lines.done(), "reading " + file.name());
            }
            if (!begun) {
                throw new SurveyException(
                        file.path(),
                        lines.number(),
                        "the grid has a head and no heights",
                        "Get the grid again.");
            }
        }
        if (taken != columns * rows) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "the grid says "
                            + columns
                            + " by "
                            + rows
                            + " cells and holds "
                            + taken
                            + " heights",
                    "The file is cut off or its head is wrong: get the grid again.");
        }
    }

    private boolean isHead(Lines lines) throws SurveyException {
        int at = lines.start();
        while (at < lines.end() && lines.bytes()[at] == ' ') {
            at++;
        }
        if (at == lines.end()) {
            return true;
        }
        if (!Character.isLetter(lines.bytes()[at])) {
            return false;
        }
        var fields = new Fields(' ');
        if (lines.end() - lines.start() > Lines.LONGEST || !fields.cut(lines.text())) {
            throw notAGrid(lines);
        }
        String name = fields.text(0).toLowerCase(Locale.ROOT);
        double value = fields.count() == 2 ? fields.number(1, '.') : Double.NaN;
        if (name.equals("nodata_value") && fields.count() == 2 && Double.isNaN(value)) {
            // Written for cells that hold the word itself; those are then marked in any case.
            value = Double.NaN;
        } else if (Double.isNaN(value)) {
            throw notAGrid(lines);
        }
        if (head.put(name, value) != null) {
            throw new SurveyException(
                    file.path(),
                    lines.number(),
                    "the head of the grid says " + name + " twice",
                    "Get the grid again.");
        }
        headLine.put(name, lines.number());
        return true;
    }

    private SurveyException notAGrid(Lines lines) throws SurveyException {
        return new SurveyException(
                file.path(),
                lines.number(),
                "this is no line of an ASCII elevation grid: "
                        + Signs.quoted(
                                lines.text(
                                        lines.start(), Math.min(lines.end(), lines.start() + 60))),
                "The head has ncols, nrows, xllcorner, yllcorner, cellsize and NODATA_value, each"
                        + " with one number.");
    }

    private void begin() throws SurveyException {
        columns = whole("ncols");
        rows = whole("nrows");
        cell = value("cellsize");
        if (!(cell > 0)) {
            throw new SurveyException(
                    file.path(),
                    headLine.getOrDefault("cellsize", 0L),
                    "cells are " + cell + " wide",
                    "Get the grid again.");
        }
        west = head.containsKey("xllcenter") ? value("xllcenter") : value("xllcorner") + cell / 2;
        south = head.containsKey("yllcenter") ? value("yllcenter") : value("yllcorner") + cell / 2;
        mark = head.getOrDefault("nodata_value", NO_MARK);
        boolean degrees =
                cell < DEGREES_CELL
                        && Math.abs(west) <= 180
                        && Math.abs(south) <= 90
                        && Math.abs(west + columns * cell) <= 181
                        && Math.abs(south + rows * cell) <= 91;
        grid.begin(new Grids.Described("ASCII elevation grid", columns, rows, null, degrees, cell));
    }

    private double value(String name) throws SurveyException {
        Double value = head.get(name);
        if (value == null) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "the head of the grid has no " + name,
                    "The head has ncols, nrows, xllcorner, yllcorner, cellsize and NODATA_value,"
                            + " each with one number.");
        }
        return value;
    }

    private long whole(String name) throws SurveyException {
        double value = value(name);
        if (value != Math.rint(value) || value < 1 || value > Grids.MOST_CELLS) {
            throw new SurveyException(
                    file.path(),
                    headLine.getOrDefault(name, 0L),
                    name + " is " + value,
                    "It must be a whole number of cells.");
        }
        return (long) value;
    }

    private void heights(Lines lines) throws SurveyException {
        byte[] bytes = lines.bytes();
        int at = lines.start();
        while (true) {
            while (at < lines.end() && (bytes[at] == ' ' || bytes[at] == '\t')) {
                at++;
            }
            if (at == lines.end()) {
                return;
            }
            int from = at;
            while (at < lines.end() && bytes[at] != ' ' && bytes[at] != '\t') {
                at++;
            }
            height(lines, from, at);
        }
    }

    private void height(Lines lines, int from, int to) throws SurveyException {
        double height = Numbers.parse(lines.bytes(), from, to, (byte) '.');
        boolean measured = height != mark;
        if (Double.isNaN(height)) {
            String text = lines.text(from, Math.min(to, from + 40));
            if (!text.equalsIgnoreCase("nan")) {
                throw new SurveyException(
                        file.path(),
                        lines.number(),
                        "the height " + Numbers.explain(text, '.'),
                        "Get the grid again.");
            }
            measured = false;
        }
        if (taken == columns * rows) {
            throw new SurveyException(
                    file.path(),
                    lines.number(),
                    "the grid says " + columns + " by " + rows + " cells and holds more heights",
                    "Its head is wrong, or two grids are joined: get the grid again.");
        }
        long row = taken / columns;
        long column = taken % columns;
        taken++;
        int line = (int) Math.min(lines.number(), Integer.MAX_VALUE);
        grid.cell(west + column * cell, south + (rows - 1 - row) * cell, height, measured, line);
    }
}
