package lanewright.survey.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding.Level;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Words;
import lanewright.survey.Frame;
import lanewright.survey.Reading;
import lanewright.survey.Reading.Understood;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyException.Asks;
import lanewright.survey.text.Lines;
import org.jspecify.annotations.Nullable;

/**
 * Takes the cells of an elevation grid as points at their centres, inside the corridor if there is
 * one. The file formats are read by {@link AsciiGrid} and {@link TiffGrid}.
 */
final class Grids {

    /** Most cells a grid may have: 10,000 by 10,000, a whole lidar tile and more. */
    static final long MOST_CELLS = 100_000_000;

    /** How a grid describes its own place. */
    record Described(
            String format,
            long columns,
            long rows,
            @Nullable String wkt,
            boolean looksLikeDegrees,
            double cell) {}

    /** Takes cells from a reader, with their centres in the grid's own coordinates. */
    interface Sink {
        void cell(double x, double y, double height, boolean measured, int row)
                throws SurveyException;
    }

    private final Gathering all;
    private final SurveyFile file;
    private final List<Understood> understood = new ArrayList<>();
    private final double[] place = new double[2];
    private Frame.@Nullable Bridge bridge;
    private double unit = 1;
    private double heightUnit = 1;
    private int without;
    private int outside;

    private Grids(Gathering all, SurveyFile file) {
        this.all = all;
        this.file = file;
    }

    /** Reads a grid. */
    static void read(Gathering all, SurveyFile file, Progress progress) throws SurveyException {
        new Grids(all, file).read(progress);
    }

    private void read(Progress progress) throws SurveyException {
        all.survey().file(file.name());
        int first = all.survey().size();
        if (isTiff()) {
            TiffGrid.read(this, file, progress);
        } else {
            AsciiGrid.read(this, file, progress);
        }
        int taken = all.survey().size() - first;
        if (taken == 0) {
            throw new SurveyException(
                    file.path(),
                    0,
                    outside > 0
                            ? "no cell with a height lies in the corridor of the lane"
                            : "no cell has a height",
                    outside > 0
                            ? "Check the frame and the places of the lane, or get the grid of this"
                                    + " land."
                            : "Get the grid again: every cell is marked as not measured.");
        }
        if (without > 0) {
            all.say(
                    "grid-cells-without-height",
                    Level.NOTE,
                    Saying.of(
                            "Cells of "
                                    + Gathering.inSaying(file.name())
                                    + " that have no height and are left out: {}",
                            Quantity.count(without)),
                    "Shoot these places if the lane comes near them");
        }
        understood.add(
                new Understood(
                        "corridor",
                        all.corridor() == null ? "none, the whole grid" : "cells inside it only",
                        all.corridor() == null ? "the plan names none" : "as the plan says"));
        all.survey()
                .reading(new Reading(file.name(), understood, List.of(), List.of(), taken, 0, 0));
    }

    private boolean isTiff() throws SurveyException {
        byte[] head = new byte[4];
        try (InputStream in = Files.newInputStream(file.path())) {
            if (in.readNBytes(head, 0, 4) < 4) {
                throw new SurveyException(
                        file.path(), 0, "the file is empty or cut off", "Get the grid again.");
            }
        } catch (IOException failed) {
            throw Lines.cannotRead(file.path(), failed);
        }
        boolean little = head[0] == 'I' && head[1] == 'I' && (head[2] == 42 || head[2] == 43);
        boolean big = head[0] == 'M' && head[1] == 'M' && (head[3] == 42 || head[3] == 43);
        return little || big;
    }

    /** Says what the grid is, and settles how its coordinates come into the frame. */
    void begin(Described grid) throws SurveyException {
        if (grid.columns() < 2 || grid.rows() < 2) {
            throw refused(
                    "the grid is " + grid.columns() + " by " + grid.rows() + " cells",
                    "A grid of heights needs two of each.");
        }
        if (grid.columns() > MOST_CELLS / grid.rows()) {
            throw refused(
                    "the grid is " + grid.columns() + " by " + grid.rows() + " cells",
                    "Cut it down to the land that the lane may touch.");
        }
        say("format", grid.format(), "as the file begins");
        say("size", grid.columns() + " columns, " + grid.rows() + " rows", "as the file says");
        if (file.local() || (grid.wkt() == null && file.epsg() == null)) {
            plain(grid);
        } else {
            carried(grid);
        }
        LengthUnit heights = file.heightUnit() == null ? file.unit() : file.heightUnit();
        if (heights == null) {
            throw refused(
                    "nothing says the unit of its heights",
                    "Declare \"heightUnit\": \"m\", \"ft\" or \"ftUS\" for this file in the plan.",
                    Asks.UNIT_OF_HEIGHTS);
        }
        heightUnit = heights.metres();
        say("unit of heights", heights.symbol(), "declared");
    }

    private void plain(Described grid) throws SurveyException {
        if (grid.looksLikeDegrees()) {
            throw refused(
                    "its cells are "
                            + Words.fixed(grid.cell(), 6)
                            + " wide and look like degrees of longitude and latitude",
                    "Declare \"epsg\": 4326 or the code of its own geographic system for this"
                            + " file, and a projected frame for the plan.");
        }
        LengthUnit declared = file.unit();
        LengthUnit own = declared;
        if (own == null && !all.frame().isLocal()) {
            own = all.frame().unit();
        }
        if (own == null) {
            throw refused(
                    "nothing says the unit of its coordinates",
                    "Declare \"unit\": \"m\", \"ft\" or \"ftUS\" for this file in the plan.",
                    Asks.UNIT);
        }
        unit = own.metres();
        say(
                "places",
                "coordinates of the frame in " + own.symbol(),
                declared != null ? "declared" : "the unit of " + all.frame().name());
    }

    private void carried(Described grid) throws SurveyException {
        if (all.frame().isLocal()) {
            throw refused(
                    "the grid lies on the earth, and the plan has no frame there",
                    "State the EPSG code of a projected system, or a local zone, as the frame; or"
                            + " declare \"coordinates\": \"local\" if its coordinates are plain metres or"
                            + " feet.");
        }
        Integer code = file.epsg();
        String wkt = grid.wkt();
        if (code != null) {
            bridge = all.bridge(file, code);
        } else if (wkt != null) {
            bridge = all.frame().fromText(wkt);
            all.sayDatum(file, bridge);
        }
        if (bridge != null) {
            if (grid.looksLikeDegrees() != bridge.degrees()) {
                throw refused(
                        "its cells look like "
                                + (bridge.degrees() ? "metres or feet" : "degrees")
                                + ", and "
                                + bridge.from()
                                + " is written in "
                                + (bridge.degrees() ? "degrees" : bridge.unit().symbol()),
                        "Mend \"epsg\" for this file in the plan.");
            }
            say(
                    "places",
                    bridge.from() + ", carried to " + all.frame().name(),
                    code == null ? "as the file says" : "declared");
        }
    }

    /** Takes one cell. */
    void cell(double x, double y, double height, boolean measured, int row) throws SurveyException {
        place[0] = x * unit;
        place[1] = y * unit;
        if (bridge != null) {
            bridge.carry(place, 1);
        }
        Corridor corridor = all.corridor();
        if (corridor != null && !corridor.contains(place[0], place[1])) {
            outside++;
            return;
        }
        if (!measured) {
            without++;
            return;
        }
        double metres = height * heightUnit;
        if (!Limits.heightExists(metres) || !Double.isFinite(metres)) {
            throw new SurveyException(
                    file.path(),
                    row,
                    "the height " + height + " is no height of dry land",
                    "If it marks cells that were not measured, the file must say so (NODATA_value,"
                            + " or the no-data tag of a TIFF); else check the unit of heights.");
        }
        all.refuseTooMany(file);
        all.survey().point(place[0], place[1], metres, "", row);
    }

    private void say(String what, String answer, String why) {
        understood.add(new Understood(what, answer, why));
    }

    private SurveyException refused(String what, String remedy) {
        return refused(what, remedy, Asks.NOTHING);
    }

    private SurveyException refused(String what, String remedy, Asks asks) {
        return new SurveyException(file.path(), 0, what, remedy, asks);
    }
}
