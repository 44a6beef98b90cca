package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Parse;
import lanewright.measure.Quantity;
import lanewright.measure.QuantityException;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.measure.Words;
import lanewright.survey.Frame;
import lanewright.survey.Probe;
import lanewright.survey.Reading;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Fields;
import lanewright.survey.text.Lines;
import lanewright.survey.text.Numbers;
import org.jspecify.annotations.Nullable;

/**
 * Reads probe holes from delimited text. A depth is a number with its unit ({@code 8 in}); without
 * one the heading of its column must name it. {@code >12 in} and {@code 12+ in} mean at least that
 * much. A blank depth is not known.
 */
final class TextProbes {

    /** A depth beyond this is no hole that a person digs or pushes a rod into, m. */
    private static final double DEEPEST = 5;

    private static final int SAMPLES = 3;

    /** A depth with or without words for "at least" around it. */
    private static final Pattern DEPTH =
            Pattern.compile(
                    "(>=?|≥|over |more than |at least |deeper than )?\\s*"
                            + "([-+]?[0-9.,]+)\\s*(\\+)?(.*?)\\s*(\\+| or more| and more)?");

    private final Gathering all;
    private final SurveyFile file;
    private final Layout layout;
    private final Frame.@Nullable Bridge bridge;
    private final Fields fields;
    private final List<Reading.Sample> samples = new ArrayList<>();
    private int count;

    private TextProbes(Gathering all, SurveyFile file) throws SurveyException {
        this.all = all;
        this.file = file;
        this.layout = LayoutFinder.of(file, all.frame());
        this.bridge = all.bridge(file, layout);
        this.fields = new Fields(layout.separator());
    }

    /** Reads all probe holes of a file. */
    static void read(Gathering all, SurveyFile file) throws SurveyException {
        new TextProbes(all, file).read();
    }

    private void read() throws SurveyException {
        all.survey().file(file.name());
        int empty = 0;
        try (Lines lines = new Lines(file.path())) {
            while (lines.next()) {
                String text = lines.text();
                if (text.isBlank()
                        || text.stripLeading().startsWith("#")
                        || lines.number() == layout.headingLine()) {
                    continue;
                }
                fields.cut(lines);
                if (fields.all().stream().allMatch(String::isEmpty)) {
                    empty++;
                } else {
                    take(lines);
                }
            }
        }
        all.leftOut(file, 0, empty);
        all.survey()
                .reading(
                        new Reading(
                                file.name(),
                                layout.understood(),
                                samples,
                                layout.told(),
                                0,
                                0,
                                count));
    }

    private void take(Lines lines) throws SurveyException {
        if (fields.count() > layout.columns().size()
                && layout.at(Column.MET) != layout.columns().size() - 1) {
            throw bad(
                    lines,
                    "the row has "
                            + fields.count()
                            + " fields where "
                            + layout.columns().size()
                            + " are expected",
                    "Mend the row; put words with commas in quotes.");
        }
        boolean degrees = layout.degrees();
        double[] place = {
            number(degrees ? Column.LONGITUDE : Column.EASTING, lines),
            number(degrees ? Column.LATITUDE : Column.NORTHING, lines)
        };
        if (bridge == null) {
            place[0] *= layout.unit().metres();
            place[1] *= layout.unit().metres();
        } else {
            try {
                bridge.carry(place, 1);
            } catch (SurveyException outside) {
                throw bad(lines, outside.what(), outside.remedy());
            }
        }
        if (!Limits.placeExists(place[0]) || !Limits.placeExists(place[1])) {
            throw bad(
                    lines,
                    "the hole is further away than the earth is wide",
                    "Check the row for digits that run together.");
        }
        String name = text(Column.NAME);
        Depth topsoil = depth(Column.TOPSOIL, lines);
        Depth bearing = depth(Column.BEARING, lines);
        String met = text(Column.MET);
        if (Double.isNaN(topsoil.metres()) && Double.isNaN(bearing.metres())) {
            throw bad(
                    lines,
                    "the hole has neither a depth of topsoil nor of bearing soil",
                    "Write one, or put # in front of the line.");
        }
        lookAt(name, place, topsoil, bearing, lines);
        all.survey()
                .probe(
                        new Probe(
                                name,
                                place[0],
                                place[1],
                                topsoil.metres(),
                                topsoil.atLeast(),
                                bearing.metres(),
                                bearing.atLeast(),
                                met));
        count++;
        if (samples.size() < SAMPLES) {
            samples.add(
                    new Reading.Sample(
                            lines.number(),
                            lines.text(),
                            "topsoil " + topsoil.words() + ", bearing soil " + bearing.words()));
        }
    }

    private void lookAt(String name, double[] place, Depth topsoil, Depth bearing, Lines lines) {
        boolean above = bearing.metres() < topsoil.metres() && !bearing.atLeast();
        if (above) {
            all.findings()
                    .add(
                            Finding.of(
                                    "bearing-above-topsoil",
                                    Level.LOOK,
                                    Topic.GROUND,
                                    Where.map(place[0], place[1]),
                                    Saying.of(
                                            "Probe hole "
                                                    + Gathering.inSaying(name)
                                                    + " ("
                                                    + Gathering.inSaying(file.name())
                                                    + ", line "
                                                    + lines.number()
                                                    + ") tells of bearing soil at {}, inside"
                                                    + " {} of topsoil",
                                            Quantity.depth(bearing.metres()),
                                            Quantity.depth(topsoil.metres())),
                                    Saying.plain(
                                            "Topsoil does not bear: check which depth is meant")));
        }
        for (Probe other : all.survey().probes()) {
            if (Math.hypot(other.x() - place[0], other.y() - place[1]) < 0.001) {
                all.findings()
                        .add(
                                Finding.of(
                                        "probe-twice",
                                        Level.LOOK,
                                        Topic.GROUND,
                                        Where.map(place[0], place[1]),
                                        Saying.plain(
                                                "Probe holes "
                                                        + other.name()
                                                        + " and "
                                                        + name
                                                        + " lie at one place ("
                                                        + file.name()
                                                        + ", line "
                                                        + lines.number()
                                                        + ")"),
                                        Saying.plain("Keep the one that is right")));
            }
        }
    }

    private String text(Column column) {
        int at = layout.at(column);
        if (at < 0 || at >= fields.count()) {
            return "";
        }
        return at == layout.columns().size() - 1 && fields.count() > layout.columns().size()
                ? fields.textFrom(at)
                : fields.text(at);
    }

    private double number(Column column, Lines lines) throws SurveyException {
        String text = text(column);
        double number = Numbers.parse(text, layout.decimal());
        if (Double.isNaN(number)) {
            throw bad(
                    lines,
                    "the " + column.word() + " " + Numbers.explain(text, layout.decimal()),
                    "Mend the number, or put # in front of the line.");
        }
        return number;
    }

    /** A depth, m, NaN if not known. */
    private record Depth(double metres, boolean atLeast) {
        String words() {
            if (Double.isNaN(metres)) {
                return "not known";
            }
            Quantity depth = Quantity.depth(metres);
            return (atLeast ? "at least " : "")
                    + Words.of(depth, UnitSystem.US)
                    + " or "
                    + Words.of(depth, UnitSystem.METRIC);
        }
    }

    private Depth depth(Column column, Lines lines) throws SurveyException {
        String text = text(column).strip();
        if (text.isEmpty() || text.equals("-") || text.equals("?")) {
            return new Depth(Double.NaN, false);
        }
        Matcher parts = DEPTH.matcher(text.toLowerCase(Locale.ROOT));
        double number =
                parts.matches() ? Numbers.parse(parts.group(2), layout.decimal()) : Double.NaN;
        if (Double.isNaN(number)) {
            throw bad(
                    lines,
                    "the depth '" + text + "' is not understood",
                    "Write it as a number with its unit, such as 8 in or 0.2 m; >12 in if the hole"
                            + " did not get through.");
        }
        if (number < 0) {
            throw bad(
                    lines,
                    "the depth '" + text + "' is negative",
                    "Depths count downwards from the grass: write it without the minus.");
        }
        String unit = parts.group(4).strip();
        double metres =
                unit.isEmpty()
                        ? number * headed(text, column, lines).metres()
                        : written(parts.group(2), unit, text, lines);
        if (metres > DEEPEST) {
            throw bad(
                    lines,
                    "the depth '" + text + "' is no probe hole's",
                    "Check the depth and its unit.");
        }
        boolean atLeast =
                parts.group(1) != null || parts.group(3) != null || parts.group(5) != null;
        return new Depth(metres, atLeast);
    }

    private double written(String number, String unit, String text, Lines lines)
            throws SurveyException {
        try {
            return Parse.depth(number.replace(layout.decimal(), '.') + " " + unit);
        } catch (QuantityException unknown) {
            throw bad(
                    lines,
                    "the depth '" + text + "' is not understood: " + unknown.what(),
                    unknown.remedy() + ".");
        }
    }

    private DepthUnit headed(String text, Column column, Lines lines) throws SurveyException {
        DepthUnit unit = layout.depthUnit();
        if (unit == null) {
            throw bad(
                    lines,
                    "nothing says the unit of the depth '" + text + "'",
                    "Write 8 in or 0.2 m, head the column \""
                            + column.word()
                            + " (in)\", or declare \"depthUnit\" for this file in the plan.");
        }
        return unit;
    }

    private SurveyException bad(Lines lines, String what, String remedy) {
        return new SurveyException(file.path(), lines.number(), what, remedy);
    }
}
