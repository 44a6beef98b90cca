package lanewright.survey.read;

import java.util.ArrayList;
import java.util.List;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Fields;
import org.jspecify.annotations.Nullable;

/**
 * Finds separator and decimal sign of delimited text from its first rows, by trying each pair: in
 * the right one the rows fall into columns of numbers.
 */
final class Signs {

    /** A row kept from the beginning of the file. */
    record Row(long line, String text) {}

    /**
     * One way to read the rows.
     *
     * @param separator what stands between fields
     * @param decimal decimal sign
     * @param heading the first row if it holds headings, or null
     * @param numeric which columns hold numbers
     * @param wrote true if some number does hold the decimal sign
     */
    record Found(
            char separator,
            char decimal,
            @Nullable Row heading,
            List<Boolean> numeric,
            boolean wrote) {

        int numbers() {
            return (int) numeric.stream().filter(each -> each).count();
        }
    }

    /** A column is of numbers if so many of its fields are, so that one bad row is not all rows. */
    private static final double MOST = 0.8;

    /** Whole numbers in so many columns split by commas may be decimal commas instead. */
    private static final int SPLIT_COLUMNS = 6;

    private static final char[] SEPARATORS = {'\t', ';', ',', ' '};
    private static final char[] DECIMALS = {'.', ','};

    private final SurveyFile file;
    private final List<Row> rows;
    private final int needed;

    private Signs(SurveyFile file, List<Row> rows, int needed) {
        this.file = file;
        this.rows = rows;
        this.needed = needed;
    }

    /**
     * Finds the signs.
     *
     * @param rows first rows of the file, none blank or a comment, at least one
     * @param needed how many columns of numbers there must be
     */
    static Found of(SurveyFile file, List<Row> rows, int needed) throws SurveyException {
        return new Signs(file, rows, needed).find();
    }

    private Found find() throws SurveyException {
        refuseOtherFormats();
        List<Found> fitting = new ArrayList<>();
        for (char separator : SEPARATORS) {
            Found best = null;
            for (char decimal : DECIMALS) {
                if (allowed(separator, decimal)) {
                    Found found = read(separator, decimal);
                    if (found.numbers() >= needed
                            && (best == null || found.numbers() > best.numbers())) {
                        best = found;
                    }
                }
            }
            if (best != null) {
                fitting.add(best);
            }
        }
        // Runs of blanks and tabs part the fields of a tabbed file just as well: tab is meant.
        if (fitting.size() > 1 && fitting.get(0).separator() == '\t') {
            fitting.removeIf(found -> found.separator() == ' ');
        }
        if (fitting.isEmpty()) {
            throw noNumbers();
        }
        if (fitting.size() > 1) {
            throw new SurveyException(
                    file.path(),
                    rows.get(rows.size() - 1).line(),
                    "the fields can be parted by "
                            + word(fitting.get(0).separator())
                            + " or by "
                            + word(fitting.get(1).separator()),
                    "Declare \"separator\" and \"decimal\" for this file in the plan.");
        }
        Found found = fitting.get(0);
        refuseSplitDecimals(found);
        return found;
    }

    private boolean allowed(char separator, char decimal) {
        Character declaredSeparator = file.separator();
        Character declaredDecimal = file.decimal();
        return separator != decimal
                && (declaredSeparator == null || declaredSeparator == separator)
                && (declaredDecimal == null || declaredDecimal == decimal);
    }

    private Found read(char separator, char decimal) {
        var fields = new Fields(separator);
        Row heading = null;
        int[] numbers = new int[Fields.MOST];
        int[] blanks = new int[Fields.MOST];
        int body = 0;
        int width = 0;
        boolean wrote = false;
        for (Row row : rows) {
            if (!fields.cut(row.text())) {
                body++;
                continue;
            }
            if (row.equals(rows.get(0)) && isHeading(fields, decimal)) {
                heading = row;
                continue;
            }
            body++;
            width = Math.max(width, fields.count());
            for (int k = 0; k < fields.count(); k++) {
                if (fields.isEmpty(k)) {
                    blanks[k]++;
                } else if (!Double.isNaN(fields.number(k, decimal))) {
                    numbers[k]++;
                    wrote |= fields.text(k).indexOf(decimal) >= 0;
                }
            }
        }
        List<Boolean> numeric = new ArrayList<>();
        for (int k = 0; k < width; k++) {
            int filled = body - blanks[k];
            numeric.add(filled > 0 && numbers[k] > 0 && numbers[k] >= MOST * filled);
        }
        return new Found(separator, decimal, heading, numeric, wrote);
    }

    /** Headings hold no number, and words in more than half of their fields. */
    private static boolean isHeading(Fields fields, char decimal) {
        int words = 0;
        for (int k = 0; k < fields.count(); k++) {
            if (!Double.isNaN(fields.number(k, decimal))) {
                return false;
            }
            if (fields.text(k).chars().anyMatch(Character::isLetter)) {
                words++;
            }
        }
        return words >= 2 && 2 * words > fields.count();
    }

    private void refuseOtherFormats() throws SurveyException {
        String first = rows.get(0).text().strip();
        if (first.startsWith("<")) {
            throw new SurveyException(
                    file.path(),
                    rows.get(0).line(),
                    "this is XML or a web page, not delimited text",
                    "Export the points as delimited text (CSV).");
        }
        if (first.startsWith("{") || first.startsWith("[")) {
            throw new SurveyException(
                    file.path(),
                    rows.get(0).line(),
                    "this is JSON, not delimited text",
                    "Give a GeoJSON file a name that ends in .geojson or .json.");
        }
        if (first.toLowerCase(java.util.Locale.ROOT).startsWith("ncols")) {
            throw new SurveyException(
                    file.path(),
                    rows.get(0).line(),
                    "this is an ASCII elevation grid, not a list of points",
                    "Declare \"holds\": \"grid\" for it in the plan.");
        }
    }

    private SurveyException noNumbers() {
        Row shown = rows.get(Math.min(1, rows.size() - 1));
        if (rows.size() == 1 && rows.get(0).text().chars().noneMatch(Character::isDigit)) {
            return new SurveyException(
                    file.path(),
                    shown.line(),
                    "there are headings and no rows",
                    "Export the points again, or take the file out of the plan.");
        }
        if (file.separator() == null) {
            for (Row row : rows) {
                if (row.text().indexOf('|') >= 0 || row.text().indexOf(':') >= 0) {
                    return new SurveyException(
                            file.path(),
                            row.line(),
                            "fields are parted neither by commas, semicolons, tabs nor blanks: "
                                    + quoted(row.text()),
                            "Export the points with one of these between the fields.");
                }
            }
        }
        String declared =
                file.separator() == null && file.decimal() == null
                        ? "Write one point on each line: coordinates and height as plain decimal"
                                + " numbers, with commas, semicolons, tabs or blanks between them."
                        : "Check the \"separator\" and \"decimal\" that the plan declares for it.";
        return new SurveyException(
                file.path(),
                shown.line(),
                "no " + needed + " columns of numbers are found: " + quoted(shown.text()),
                declared);
    }

    private void refuseSplitDecimals(Found found) throws SurveyException {
        if (found.separator() == ','
                && !found.wrote()
                && found.numbers() >= SPLIT_COLUMNS
                && found.heading() == null
                && file.columns() == null
                && file.decimal() == null) {
            throw new SurveyException(
                    file.path(),
                    rows.get(0).line(),
                    "the row can be read as "
                            + found.numbers()
                            + " whole numbers, or as fewer numbers with decimal commas that the"
                            + " separator splits",
                    "If the numbers are whole, declare \"columns\" in the plan; if not, export with"
                            + " semicolons between the fields.");
        }
    }

    /** A separator in words. */
    static String word(char separator) {
        return switch (separator) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            default -> "blanks";
        };
    }

    /** A row in quotes, cut short if it is long. */
    static String quoted(String text) {
        String shown = text.length() > 80 ? text.substring(0, 80) + "…" : text;
        return "'" + shown + "'";
    }
}
