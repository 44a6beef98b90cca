package lanewright.survey.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.LengthUnit;
import lanewright.survey.Frame;
import lanewright.survey.Reading.Understood;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyException.Asks;
import lanewright.survey.text.Fields;
import lanewright.survey.text.Lines;
import org.jspecify.annotations.Nullable;

/**
 * Finds out how a file of delimited text is laid out, from what is declared, from its headings, and
 * from its first rows held against the frame. Where two readings remain it asks.
 */
final class LayoutFinder {

    /** So many rows are looked at. */
    private static final int SAMPLE = 300;

    private final SurveyFile file;
    private final Frame frame;
    private final Set<Column> needed;
    private final List<Understood> understood = new ArrayList<>();
    private final List<Signs.Row> rows = new ArrayList<>();

    /** The comment right above the first row: some exports write their headings so. */
    private Signs.@Nullable Row comment;

    private LayoutFinder(SurveyFile file, Frame frame) {
        this.file = file;
        this.frame = frame;
        this.needed =
                file.holds() == Holds.PROBES
                        ? EnumSet.of(Column.EASTING, Column.NORTHING)
                        : EnumSet.of(Column.EASTING, Column.NORTHING, Column.HEIGHT);
    }

    /** The layout of a file in a frame. */
    static Layout of(SurveyFile file, Frame frame) throws SurveyException {
        return new LayoutFinder(file, frame).find();
    }

    private Layout find() throws SurveyException {
        takeSample();
        Signs.Found signs = Signs.of(file, rows, needed.size());
        say(
                "separator",
                Signs.word(signs.separator()),
                file.separator() != null ? "declared" : "only so the rows fall into columns");
        say(
                "decimal sign",
                signs.decimal() == '.' ? "point" : "comma",
                file.decimal() != null
                        ? "declared"
                        : signs.wrote() ? "as the numbers are written" : "no number has one");
        List<Column.Heading> headings = headings(signs);
        List<Column> columns = columns(signs, headings);
        var units = new UnitFinder(file, frame, headings, columns, sampleOf(signs, columns));
        var unused = new UnusedColumns(file, signs, rows, headings, columns);
        Layout layout =
                new Layout(
                        signs.separator(),
                        signs.decimal(),
                        columns,
                        signs.heading() == null ? 0 : signs.heading().line(),
                        units.coordinates(understood),
                        units.heights(understood),
                        units.depths(understood),
                        unused.tell(understood),
                        understood);
        return layout;
    }

    private void takeSample() throws SurveyException {
        try (Lines lines = new Lines(file.path())) {
            while (rows.size() < SAMPLE && lines.next()) {
                String text = lines.text();
                if (text.isBlank()) {
                    continue;
                }
                if (text.stripLeading().startsWith("#")) {
                    if (rows.isEmpty()) {
                        comment = new Signs.Row(lines.number(), text);
                    }
                    continue;
                }
                rows.add(new Signs.Row(lines.number(), text));
            }
        }
        if (rows.isEmpty()) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "there are only blank lines and comments",
                    "Export the points again, or take the file out of the plan.");
        }
    }

    private List<Column.Heading> headings(Signs.Found signs) throws SurveyException {
        Signs.Row row = signs.heading();
        var fields = new Fields(signs.separator());
        if (row != null) {
            fields.cut(row.text());
            return fields.all().stream().map(Column::heading).toList();
        }
        if (comment != null) {
            fields.cut(comment.text());
            List<Column.Heading> above = fields.all().stream().map(Column::heading).toList();
            if (above.stream().filter(heading -> heading.column() != null).count() >= 3) {
                return above;
            }
        }
        return List.of();
    }

    private List<Column> columns(Signs.Found signs, List<Column.Heading> headings)
            throws SurveyException {
        String declared = file.columns();
        List<Column> columns;
        String why;
        if (declared != null) {
            columns = declared(declared);
            refuseContradiction(columns, headings);
            why = "declared";
        } else if (!headings.isEmpty()) {
            columns = fromHeadings(signs, headings);
            why = "as the headings say";
        } else {
            columns = new ColumnGuess(file, frame, needed, signs, rows).columns();
            why =
                    "only so the points lie in the area of "
                            + frame.name()
                            + " with heights that exist";
        }
        if (file.holds() == Holds.PROBES && !columns.contains(Column.MET)) {
            // A note on a probe hole is what was met there.
            columns =
                    columns.stream().map(each -> each == Column.CODE ? Column.MET : each).toList();
        }
        refuseRepeats(columns);
        for (Column each : needed) {
            boolean there =
                    columns.contains(each)
                            || (each == Column.EASTING && columns.contains(Column.LONGITUDE))
                            || (each == Column.NORTHING && columns.contains(Column.LATITUDE));
            if (!there) {
                throw ask(
                        "no column is " + each.word() + " (understood: " + words(columns) + ")",
                        orderRemedy(signs),
                        Asks.COLUMNS);
            }
        }
        if (file.holds() == Holds.PROBES
                && !columns.contains(Column.TOPSOIL)
                && !columns.contains(Column.BEARING)) {
            throw ask(
                    "no column holds a depth of topsoil or of bearing soil (understood: "
                            + words(columns)
                            + ")",
                    "Head a column \"topsoil\" or \"soft to\" with its unit, or declare"
                            + " \"columns\".");
        }
        say("columns", words(columns), why);
        return columns;
    }

    private List<Column> declared(String declared) throws SurveyException {
        List<String> unknown = new ArrayList<>();
        List<Column> columns = Column.declared(declared, unknown);
        if (columns == null) {
            throw ask(
                    "a column is declared as '" + unknown.get(0) + "', which is not known",
                    "Use the words "
                            + String.join(
                                    ", ",
                                    ColumnWords.of(file.holds()).stream()
                                            .map(ColumnWords.Choice::word)
                                            .toList())
                            + "; longitude and latitude where places are in degrees.");
        }
        return columns;
    }

    /** A heading that is known and says otherwise than the plan is one mistake or the other. */
    private void refuseContradiction(List<Column> declared, List<Column.Heading> headings)
            throws SurveyException {
        for (int k = 0; k < Math.min(declared.size(), headings.size()); k++) {
            Column stands = headings.get(k).column();
            Column says = declared.get(k);
            if (stands != null && says != Column.SKIP && needed.contains(says) && stands != says) {
                throw ask(
                        "column "
                                + (k + 1)
                                + " is headed "
                                + stands.word()
                                + ", and the plan declares it as "
                                + says.word(),
                        "Mend \"columns\" in the plan, or the headings of the file.");
            }
        }
    }

    private List<Column> fromHeadings(Signs.Found signs, List<Column.Heading> headings)
            throws SurveyException {
        List<Column> columns = new ArrayList<>();
        int known = 0;
        for (Column.Heading heading : headings) {
            Column column = heading.column();
            columns.add(column == null ? Column.SKIP : column);
            known += column == null ? 0 : 1;
        }
        if (known == 0) {
            throw ask(
                    "none of the headings is known: " + Signs.quoted(rows.get(0).text()),
                    orderRemedy(signs),
                    Asks.COLUMNS);
        }
        return columns;
    }

    private void refuseRepeats(List<Column> columns) throws SurveyException {
        Set<Column> seen = EnumSet.noneOf(Column.class);
        for (Column each : columns) {
            if (each != Column.SKIP && !seen.add(each)) {
                throw ask(
                        "two columns are " + each.word(),
                        "Declare \"columns\" in the plan, with skip for the one that is not meant.");
            }
        }
        boolean plane = seen.contains(Column.EASTING) || seen.contains(Column.NORTHING);
        boolean earth = seen.contains(Column.LONGITUDE) || seen.contains(Column.LATITUDE);
        if (plane && earth) {
            throw ask(
                    "there are columns both of easting and northing and of longitude and latitude",
                    "Declare \"columns\" in the plan, with skip for the pair that is not meant.");
        }
    }

    private SurveyException ask(String what, String remedy) {
        return ask(what, remedy, Asks.NOTHING);
    }

    private SurveyException ask(String what, String remedy, Asks asks) {
        return new SurveyException(file.path(), rows.get(0).line(), what, remedy, asks);
    }

    private String orderRemedy(Signs.Found signs) {
        return "Declare the order in the plan, such as \"columns\": \"" + example(signs) + "\".";
    }

    private String example(Signs.Found signs) {
        if (file.holds() == Holds.PROBES) {
            return "name, easting, northing, topsoil, bearing, met";
        }
        return signs.numeric().size() > 3
                ? "name, easting, northing, height, code"
                : "easting, northing, height";
    }

    /** Coordinates of the sample rows that can be read: first, second and height in turn. */
    private double[] sampleOf(Signs.Found signs, List<Column> columns) {
        int first = firstOf(columns, Column.EASTING, Column.LONGITUDE);
        int second = firstOf(columns, Column.NORTHING, Column.LATITUDE);
        int height = columns.indexOf(Column.HEIGHT);
        double[] sample = new double[3 * rows.size()];
        int count = 0;
        var fields = new Fields(signs.separator());
        for (Signs.Row row : rows) {
            if (row.equals(signs.heading())
                    || !fields.cut(row.text())
                    || Math.max(first, second) >= fields.count()) {
                continue;
            }
            double a = fields.number(first, signs.decimal());
            double b = fields.number(second, signs.decimal());
            if (!Double.isNaN(a) && !Double.isNaN(b)) {
                sample[count] = a;
                sample[count + 1] = b;
                sample[count + 2] =
                        height < 0 || height >= fields.count()
                                ? Double.NaN
                                : fields.number(height, signs.decimal());
                count += 3;
            }
        }
        return java.util.Arrays.copyOf(sample, count);
    }

    private static int firstOf(List<Column> columns, Column one, Column other) {
        return Math.max(columns.indexOf(one), columns.indexOf(other));
    }

    private static String words(List<Column> columns) {
        return String.join(", ", columns.stream().map(Column::word).toList());
    }

    private void say(String what, String answer, String why) {
        understood.add(new Understood(what, answer, why));
    }

    /**
     * What a unit that a heading names is, or null if it is none of a length in which one surveys.
     */
    static @Nullable LengthUnit unit(String word) {
        return switch (word.replace('_', ' ')) {
            case "m", "metre", "metres", "meter", "meters" -> LengthUnit.METRE;
            case "ift",
                    "int ft",
                    "intl ft",
                    "international ft",
                    "international feet",
                    "international foot" ->
                    LengthUnit.FOOT;
            case "ftus",
                    "us ft",
                    "usft",
                    "sft",
                    "us survey ft",
                    "us survey feet",
                    "us survey foot",
                    "survey ft",
                    "survey feet",
                    "survey foot" ->
                    LengthUnit.SURVEY_FOOT;
            default -> null;
        };
    }
}
