package lanewright.measure;

import java.util.List;

/** One row of a {@link Table}. */
public final class Row {

    /** How sure a row is of its figures. */
    public enum Mark {
        /** Read in the publication, or on a page that quotes it, as the source says. */
        PUBLISHED("published"),
        /** Published, but written down from memory and not read again. */
        FROM_MEMORY("from-memory"),
        /** Common practice in the trade, no source. */
        COMMON_PRACTICE("common-practice");

        private final String written;

        Mark(String written) {
            this.written = written;
        }
    }

    /** What stands under edition where the thing has none. */
    private static final String NO_EDITION = "none";

    private final Table table;
    private final int line;
    private final List<String> fields;
    private final Mark mark;

    Row(Table table, Csv.Line line) {
        this.table = table;
        this.line = line.line();
        this.fields = line.fields();
        if (fields.size() != table.columns().size()) {
            throw broken(fields.size() + " fields under " + table.columns().size() + " heads");
        }
        for (String needed : List.of(Table.SOURCE, Table.EDITION)) {
            if (text(needed).isBlank()) {
                throw broken("nothing under " + needed);
            }
        }
        mark = readMark(text(Table.MARK));
    }

    private Mark readMark(String written) {
        for (Mark known : Mark.values()) {
            if (known.written.equals(written)) {
                return known;
            }
        }
        throw broken(
                "mark is \"" + written + "\", must be published, from-memory or common-practice");
    }

    /** Line of the file on which the row begins, from 1. */
    public int line() {
        return line;
    }

    /**
     * The words under {@code column}, empty where there are none.
     *
     * @throws IllegalArgumentException if there is no such column
     */
    public String text(String column) {
        return fields.get(table.indexOf(column));
    }

    /**
     * True if something stands under {@code column}.
     *
     * @throws IllegalArgumentException if there is no such column
     */
    public boolean has(String column) {
        return !text(column).isBlank();
    }

    /**
     * The figure under {@code column}, in the unit that its head names.
     *
     * @return a finite number
     * @throws IllegalArgumentException if there is no such column
     * @throws IllegalStateException if there is no plain number, with table and line
     */
    public double number(String column) {
        String written = text(column);
        if (!isPlain(written)) {
            throw broken("under " + column + " stands \"" + written + "\", not a number");
        }
        return Double.parseDouble(written);
    }

    /**
     * The whole number under {@code column}.
     *
     * @throws IllegalArgumentException if there is no such column
     * @throws IllegalStateException if there is no whole number, with table and line
     */
    public int whole(String column) {
        double number = number(column);
        if (number != Math.rint(number) || Math.abs(number) > 1e9) {
            throw broken("under " + column + " stands " + text(column) + ", not a whole number");
        }
        return (int) number;
    }

    /** Digits with at most one sign in front and one point among them, and not absurdly many. */
    private static boolean isPlain(String written) {
        boolean signed = written.startsWith("-");
        String digits = signed ? written.substring(1) : written;
        long points = digits.chars().filter(c -> c == '.').count();
        return digits.length() <= 20
                && digits.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'))
                && points <= 1
                && digits.length() > points;
    }

    /** Who published the figures: title, table or page. */
    public String source() {
        return text(Table.SOURCE);
    }

    /** Year or revision of the source; {@code none} where it has none. */
    public String edition() {
        return text(Table.EDITION);
    }

    /** How sure the row is of its figures. */
    public Mark mark() {
        return mark;
    }

    /** Source and edition, fit to be printed beside the figure; says so if it is from memory. */
    public String citation() {
        String edition = edition().equals(NO_EDITION) ? "" : ", " + edition();
        String doubt = mark == Mark.FROM_MEMORY ? " (from memory)" : "";
        return source() + edition + doubt;
    }

    /** An assumption that rests on this row. */
    public Assumption assumption(String name, Saying value) {
        Assumption.Mark kind =
                mark == Mark.COMMON_PRACTICE
                        ? Assumption.Mark.COMMON_PRACTICE
                        : Assumption.Mark.PUBLISHED;
        return new Assumption(name, value, kind, citation());
    }

    private IllegalStateException broken(String what) {
        return new IllegalStateException(table + ", line " + line + ": " + what);
    }

    @Override
    public String toString() {
        return table + ", line " + line;
    }
}
