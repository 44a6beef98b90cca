package lanewright.survey.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.measure.Words;
import lanewright.survey.Frame;
import lanewright.survey.Reading;
import lanewright.survey.SurveyBuilder;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Fields;
import lanewright.survey.text.Lines;
import lanewright.survey.text.Numbers;
import org.jspecify.annotations.Nullable;

/** Reads measured points from delimited text. */
final class TextPoints {

    private static final int SAMPLES = 3;

    /** Rows between two looks at whether the reader has lost interest. */
    private static final int CHECK_EVERY = 1 << 14;

    private final Gathering all;
    private final SurveyFile file;
    private final Layout layout;
    private final Frame.@Nullable Bridge bridge;
    private final Fields fields;
    private final char decimal;
    private final int east;
    private final int north;
    private final int height;
    private final int code;
    private final int width;
    private final double unit;
    private final double heightUnit;
    private final double[] place = new double[2];
    private final List<Reading.Sample> samples = new ArrayList<>();
    private final Plausible plausible;

    private byte[] lastCodeBytes = {};
    private String lastCode = "";
    private int rows;
    private int notGround;
    private int emptyRows;

    private TextPoints(Gathering all, SurveyFile file) throws SurveyException {
        this.all = all;
        this.file = file;
        this.layout = LayoutFinder.of(file, all.frame());
        this.bridge = all.bridge(file, layout);
        this.fields = new Fields(layout.separator());
        this.decimal = layout.decimal();
        boolean degrees = layout.degrees();
        this.east = layout.at(degrees ? Column.LONGITUDE : Column.EASTING);
        this.north = layout.at(degrees ? Column.LATITUDE : Column.NORTHING);
        this.height = layout.at(Column.HEIGHT);
        this.code = layout.at(Column.CODE);
        this.width = layout.columns().size();
        this.unit = layout.unit().metres();
        this.heightUnit = layout.heightUnit().metres();
        this.plausible = new Plausible(file, layout.degrees(), true);
    }

    /** Reads all points of a file. */
    static void read(Gathering all, SurveyFile file, Progress progress) throws SurveyException {
        new TextPoints(all, file).read(progress);
    }

    private void read(Progress progress) throws SurveyException {
        SurveyBuilder survey = all.survey();
        survey.file(file.name());
        int first = survey.size();
        int linesBefore = all.lines().made();
        try (Lines lines = new Lines(file.path())) {
            while (lines.next()) {
                if (isRow(lines)) {
                    fields.cut(lines);
                    take(lines);
                    if (rows % CHECK_EVERY == 0) {
                        progress.check();
                        progress.report(lines.done(), "reading " + file.name());
                    }
                }
            }
        }
        all.lines().endOfFile(survey);
        plausible.check(all, first);
        all.leftOut(file, notGround, emptyRows);
        survey.reading(
                new Reading(
                        file.name(),
                        layout.understood(),
                        samples,
                        layout.told(),
                        survey.size() - first,
                        all.lines().made() - linesBefore,
                        0));
    }

    private boolean isRow(Lines lines) {
        byte[] bytes = lines.bytes();
        for (int at = lines.start(); at < lines.end(); at++) {
            if (bytes[at] != ' ' && bytes[at] != '\t') {
                return bytes[at] != '#' && lines.number() != layout.headingLine();
            }
        }
        return false;
    }

    private void take(Lines lines) throws SurveyException {
        if (isEmptyRow()) {
            emptyRows++;
            return;
        }
        checkWidth(lines);
        double rawEast = number(east, lines);
        double rawNorth = number(north, lines);
        double rawHeight = number(height, lines);
        place[0] = rawEast * unit;
        place[1] = rawNorth * unit;
        double metres = rawHeight * heightUnit;
        plausible.row(rawEast, rawNorth, rawHeight);
        if (!Limits.heightExists(metres)) {
            throw heightOutOfRange(lines, rawHeight, metres);
        }
        if (layout.degrees()) {
            refuseNoDegrees(lines, rawEast, rawNorth);
        }
        if (bridge != null) {
            carry(bridge, lines);
        } else if (!Limits.placeExists(place[0]) || !Limits.placeExists(place[1])) {
            throw bad(
                    lines,
                    "coordinate "
                            + fields.text(Limits.placeExists(place[0]) ? north : east)
                            + " is further away than the earth is wide",
                    "Check the row for digits that run together, and the unit of the file.");
        }
        rows++;
        String words = code();
        if (samples.size() < SAMPLES) {
            samples.add(
                    new Reading.Sample(
                            lines.number(),
                            lines.text(),
                            meaning(rawEast, rawNorth, rawHeight, words)));
        }
        CodedLines.Meaning meaning = all.lines().meaning(words);
        if (meaning.notGround()) {
            notGround++;
            return;
        }
        all.refuseTooMany(file);
        int line = (int) Math.min(lines.number(), Integer.MAX_VALUE);
        int point = all.survey().size();
        all.survey().point(place[0], place[1], metres, words, line);
        if (code >= 0) {
            all.lines().next(point, words, meaning, all.survey());
        }
    }

    private boolean isEmptyRow() {
        for (int k = 0; k < fields.count(); k++) {
            if (!fields.isEmpty(k)) {
                return false;
            }
        }
        return true;
    }

    private void checkWidth(Lines lines) throws SurveyException {
        int needed = Math.max(Math.max(east, north), height) + 1;
        if (fields.count() < needed) {
            throw bad(
                    lines,
                    "the row has "
                            + fields.count()
                            + (fields.count() == 1 ? " field" : " fields")
                            + " where "
                            + needed
                            + " or more are expected: "
                            + Signs.quoted(lines.text()),
                    "Mend the row, or put # in front of it if it is a remark.");
        }
        boolean wordsAtTheEnd = code == width - 1 && code >= 0;
        if (fields.count() > width && !wordsAtTheEnd) {
            for (int k = width; k < fields.count(); k++) {
                if (!fields.isEmpty(k)) {
                    throw bad(
                            lines,
                            "the row has "
                                    + fields.count()
                                    + " fields where "
                                    + width
                                    + " are expected: "
                                    + Signs.quoted(lines.text()),
                            "Mend the row: a decimal or thousands comma may have split a number.");
                }
            }
        }
    }

    private double number(int column, Lines lines) throws SurveyException {
        double number = fields.number(column, decimal);
        if (!Double.isNaN(number)) {
            return number;
        }
        String text = fields.text(column);
        Column meant = layout.columns().get(column);
        if (Column.heading(text).column() == meant) {
            throw bad(
                    lines,
                    "the headings stand here again",
                    "Two files seem to be joined: check that both have the same columns and unit,"
                            + " and take this line out.");
        }
        throw bad(
                lines,
                "the " + meant.word() + " " + Numbers.explain(text, decimal),
                "Mend the number, or put # in front of the line if it is no point.");
    }

    private SurveyException heightOutOfRange(Lines lines, double raw, double metres)
            throws SurveyException {
        boolean marker = raw == -9999 || raw == -99999 || raw == -32768 || raw == -32767;
        return bad(
                lines,
                "the height "
                        + fields.text(height)
                        + (marker
                                ? " is a mark for 'not measured'"
                                : " (" + Words.fixed(metres, 0) + " m) is no height of dry land"),
                marker
                        ? "Take the row out, or put # in front of it."
                        : "Check the row, the order of the columns and the unit of heights.");
    }

    private void refuseNoDegrees(Lines lines, double longitude, double latitude)
            throws SurveyException {
        if (Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90) {
            return;
        }
        boolean swapped = Math.abs(latitude) <= 180 && Math.abs(longitude) <= 90;
        throw bad(
                lines,
                "longitude "
                        + fields.text(east)
                        + ", latitude "
                        + fields.text(north)
                        + " is no place on the earth",
                swapped
                        ? "Longitude and latitude look swapped: mend \"columns\" in the plan."
                        : "Degrees go to 180 and 90: these look like metres or feet.");
    }

    private void carry(Frame.Bridge over, Lines lines) throws SurveyException {
        if (!over.degrees()) {
            place[0] /= unit;
            place[1] /= unit;
        }
        try {
            over.carry(place, 1);
        } catch (SurveyException outside) {
            throw bad(lines, outside.what(), outside.remedy());
        }
    }

    private String code() {
        if (code < 0 || code >= fields.count()) {
            return "";
        }
        if (code == width - 1 && fields.count() > width) {
            return fields.textFrom(code);
        }
        if (!fields.same(code, lastCodeBytes)) {
            lastCode = fields.text(code);
            lastCodeBytes = lastCode.getBytes(StandardCharsets.UTF_8);
        }
        return lastCode;
    }

    private String meaning(double rawEast, double rawNorth, double rawHeight, String words) {
        boolean degrees = layout.degrees();
        String in = degrees ? "°" : " " + layout.unit().symbol();
        int decimals = degrees ? 7 : 3;
        LengthUnit heights = layout.heightUnit();
        return layout.columns().get(east).word()
                + " "
                + Words.fixed(rawEast, decimals)
                + in
                + ", "
                + layout.columns().get(north).word()
                + " "
                + Words.fixed(rawNorth, decimals)
                + in
                + ", height "
                + Words.fixed(rawHeight, 3)
                + " "
                + heights.symbol()
                + (words.isEmpty() ? "" : ", code '" + words + "'");
    }

    private SurveyException bad(Lines lines, String what, String remedy) {
        return new SurveyException(file.path(), lines.number(), what, remedy);
    }
}
