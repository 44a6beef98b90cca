package lanewright.survey.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import lanewright.survey.Reading;
import lanewright.survey.Reading.Understood;
import lanewright.survey.text.Fields;

/**
 * Which columns of numbers nothing is done with, though nobody said so: a depth or a height that
 * its owner measured must not be lost without a word.
 */
final class UnusedColumns {

    /** Letters of a heading that are told. */
    private static final int TOLD = 40;

    private static final Set<Column> OF_POINTS =
            EnumSet.of(
                    Column.NAME,
                    Column.EASTING,
                    Column.NORTHING,
                    Column.LONGITUDE,
                    Column.LATITUDE,
                    Column.HEIGHT,
                    Column.CODE);

    private static final Set<Column> OF_PROBES =
            EnumSet.of(
                    Column.NAME,
                    Column.EASTING,
                    Column.NORTHING,
                    Column.LONGITUDE,
                    Column.LATITUDE,
                    Column.TOPSOIL,
                    Column.BEARING,
                    Column.MET);

    /** A number as it is measured: alone, with its unit, or as "at least". */
    private static final Pattern NUMBER =
            Pattern.compile(
                    "[<>=≥~]{0,3} ?[-+]?[0-9][0-9.,]* ?[+]?"
                            + " ?(?:m|cm|mm|in|inch|inches|ft|foot|feet|yd|[\"'″′])?\\.? ?[+]?");

    private final SurveyFile file;
    private final Signs.Found signs;
    private final List<Signs.Row> rows;
    private final List<Column.Heading> headings;
    private final List<Column> columns;

    UnusedColumns(
            SurveyFile file,
            Signs.Found signs,
            List<Signs.Row> rows,
            List<Column.Heading> headings,
            List<Column> columns) {
        this.file = file;
        this.signs = signs;
        this.rows = rows;
        this.headings = headings;
        this.columns = columns;
    }

    /** All columns, as they are told, and what is not used of them. */
    List<Reading.Column> tell(List<Understood> understood) {
        List<Reading.Column> told = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        List<String> needless = new ArrayList<>();
        Set<Column> used = file.holds() == Holds.PROBES ? OF_PROBES : OF_POINTS;
        for (int k = 0; k < Math.max(columns.size(), signs.numeric().size()); k++) {
            Column column = k < columns.size() ? columns.get(k) : Column.SKIP;
            boolean saidSo = column == Column.SKIP && isSaidToSkip(k);
            boolean unused = !used.contains(column) && !saidSo && holdsNumbers(k);
            if (unused) {
                (column == Column.SKIP ? unknown : needless).add(heading(k));
            }
            told.add(new Reading.Column(heading(k), column.word(), unused));
        }
        if (!unknown.isEmpty()) {
            understood.add(
                    new Understood(
                            "not used",
                            String.join(", ", unknown),
                            "nothing says what stands there: if it is needed, name the columns in"
                                    + " their order"));
        }
        if (!needless.isEmpty()) {
            understood.add(
                    new Understood(
                            "not used",
                            String.join(", ", needless),
                            file.holds() == Holds.PROBES
                                    ? "a file of probe holes has no place for it"
                                    : "a file of points has no place for it"));
        }
        return told;
    }

    /** True if the column is declared to be left out; {@code ?} only says that it is not known. */
    private boolean isSaidToSkip(int k) {
        String declared = file.columns();
        if (declared == null) {
            return false;
        }
        String[] words = declared.split(",", -1);
        return k < words.length && !words[k].strip().equals("?");
    }

    private String heading(int k) {
        String text = k < headings.size() ? headings.get(k).text() : "";
        if (text.isBlank()) {
            return "column " + (k + 1);
        }
        return text.length() > TOLD ? text.substring(0, TOLD) + "…" : text;
    }

    /** True if most of what is filled in is a number, and something is. */
    private boolean holdsNumbers(int k) {
        var fields = new Fields(signs.separator());
        int filled = 0;
        int numbers = 0;
        for (Signs.Row row : rows) {
            if (row.equals(signs.heading())
                    || !fields.cut(row.text())
                    || k >= fields.count()
                    || fields.isEmpty(k)) {
                continue;
            }
            filled++;
            if (NUMBER.matcher(fields.text(k).strip()).matches()) {
                numbers++;
            }
        }
        return 2 * numbers > filled;
    }
}
