package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** A listing set as a table: heads with their units, numbers to the right, words broken to fit. */
final class TableBlock {

    private static final double SIZE = Type.TABLE;
    private static final double LINE = SIZE * Type.LEAD;
    private static final double PAD = 4;

    /** Free paper above and below the words of a row, together, pt. */
    private static final double ROW_PAD = 2.2;

    /** Narrower than this, words are no longer pleasant to read, pt. */
    private static final double LEAST_WORDS = 62;

    /**
     * A column as it is shown: head and cells from one column of the listing, so that leaving one
     * out cannot put the others under the wrong heads.
     */
    private record Shown(
            Listing.Column column, List<Saying> cells, List<String> texts, UnitSystem units) {
        Shown {
            cells = List.copyOf(cells);
            texts = List.copyOf(texts);
        }

        String text(int row) {
            return texts.get(row);
        }

        String unit() {
            return column.unit(units);
        }

        boolean isNumber() {
            return column.kind() != null;
        }

        /** Whether it tells nothing: all cells blank, or an amount that is zero all the way. */
        boolean isEmpty() {
            boolean blank = cells.stream().allMatch(Listing.BLANK::equals);
            boolean amount = column.kind() == Kind.AREA || column.kind() == Kind.VOLUME;
            return blank
                    || (amount
                            && IntStream.range(0, cells.size())
                                    .allMatch(row -> isNothing(text(row))));
        }

        private static boolean isNothing(String text) {
            return text.chars().noneMatch(c -> c >= '1' && c <= '9');
        }
    }

    private final String name;
    private final List<Shown> columns;
    private final int rows;
    private final int totals;
    private final double[] least;
    private final double[] widths;
    private final List<List<String>> heads;
    private final double headHeight;

    TableBlock(Listing listing, UnitSystem units, double width) {
        name = listing.name();
        rows = listing.rows().size();
        totals = listing.totals();
        columns = shown(listing, units);
        least = new double[columns.size()];
        widths = widths(width);
        heads = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            Shown shown = columns.get(c);
            var lines =
                    new ArrayList<>(
                            Type.lines(
                                    shown.column().head(), SIZE, true, widths[c] - 2 * PAD + 0.01));
            if (!shown.unit().isEmpty()) {
                lines.add(shown.unit());
            }
            heads.add(lines);
            most = Math.max(most, lines.size());
        }
        headHeight = most * LINE + 2 * PAD;
    }

    /** Heads of the columns that are shown, left to right. */
    static List<String> heads(Listing listing, UnitSystem units) {
        return shown(listing, units).stream().map(shown -> shown.column().head()).toList();
    }

    /** The least width in which the listing can be set, pt; words are broken into lines there. */
    static double least(Listing listing, UnitSystem units) {
        double sum = 0;
        for (double wide : new TableBlock(listing, units, Double.MAX_VALUE).least) {
            sum += wide;
        }
        return sum;
    }

    /** Height of some rows, pt. */
    double height(int from, int to) {
        double sum = 0;
        for (int row = from; row < to; row++) {
            sum += rowHeight(row);
        }
        return sum;
    }

    /** Height of head and all rows, pt. */
    double height() {
        return headHeight + height(0, rows);
    }

    /** The columns that tell something; all of them where there is no row. */
    private static List<Shown> shown(Listing listing, UnitSystem units) {
        var kept = new ArrayList<Shown>();
        for (int c = 0; c < listing.columns().size(); c++) {
            int column = c;
            List<Saying> cells = listing.rows().stream().map(row -> row.get(column)).toList();
            List<String> texts =
                    IntStream.range(0, cells.size())
                            .mapToObj(row -> listing.shown(row, column, units))
                            .toList();
            var shown = new Shown(listing.columns().get(c), cells, texts, units);
            if (cells.isEmpty() || !shown.isEmpty()) {
                kept.add(shown);
            }
        }
        return List.copyOf(kept);
    }

    private double[] widths(double width) {
        int count = columns.size();
        double[] wished = new double[count];
        for (int c = 0; c < count; c++) {
            Shown shown = columns.get(c);
            for (String word : shown.column().head().split(" ", -1)) {
                least[c] = Math.max(least[c], Face.of(true).width(word, SIZE));
            }
            least[c] = Math.max(least[c], Face.of(true).width(shown.unit(), SIZE));
            wished[c] = Math.max(least[c], Face.of(true).width(shown.column().head(), SIZE) * 0.6);
            for (int r = 0; r < rows; r++) {
                double wide = Face.of(isTotal(r)).width(shown.text(r), SIZE);
                wished[c] = Math.max(wished[c], wide);
                least[c] =
                        Math.max(least[c], shown.isNumber() ? wide : Math.min(wide, LEAST_WORDS));
            }
            least[c] += 2 * PAD;
            wished[c] += 2 * PAD;
        }
        return shared(least, wished, width);
    }

    /** Every column gets what it needs; what is left goes to those that wish for more. */
    private double[] shared(double[] least, double[] wished, double width) {
        double needed = 0;
        double wishes = 0;
        for (int c = 0; c < least.length; c++) {
            needed += least[c];
            wishes += wished[c] - least[c];
        }
        if (needed > width) {
            throw new IllegalArgumentException(
                    "listing " + name + " needs " + needed + " pt and has " + width);
        }
        double part = wishes > 0 ? Math.min(1, (width - needed) / wishes) : 0;
        double[] widths = new double[least.length];
        for (int c = 0; c < least.length; c++) {
            widths[c] = least[c] + part * (wished[c] - least[c]);
        }
        return widths;
    }

    double headHeight() {
        return headHeight;
    }

    double rowHeight(int row) {
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            most = Math.max(most, cell(row, c).size());
        }
        return most * LINE + ROW_PAD;
    }

    int rows() {
        return rows;
    }

    /** Width that it takes, pt. */
    double width() {
        double sum = 0;
        for (double wide : widths) {
            sum += wide;
        }
        return sum;
    }

    private boolean isTotal(int row) {
        return row >= rows - totals;
    }

    private List<String> cell(int row, int c) {
        return Type.lines(columns.get(c).text(row), SIZE, isTotal(row), widths[c] - 2 * PAD + 0.01);
    }

    void drawHead(Pen pen, double x, double y) {
        pen.fill(Role.BAND, new Box(x, y, width(), headHeight));
        double left = x;
        for (int c = 0; c < widths.length; c++) {
            List<String> lines = heads.get(c);
            double base = y + headHeight - PAD - 2.2 - (lines.size() - 1) * LINE;
            boolean unit = !columns.get(c).unit().isEmpty();
            for (int i = 0; i < lines.size(); i++) {
                boolean isUnit = unit && i == lines.size() - 1;
                put(pen, isUnit ? Role.NOTE : Role.TEXT, lines.get(i), !isUnit, left, c, base);
                base += LINE;
            }
            left += widths[c];
        }
    }

    void drawRow(Pen pen, int row, double x, double y) {
        double left = x;
        for (int c = 0; c < widths.length; c++) {
            double base = y + ROW_PAD / 2 + SIZE * 0.98;
            for (String line : cell(row, c)) {
                put(pen, Role.TEXT, line, isTotal(row), left, c, base);
                base += LINE;
            }
            left += widths[c];
        }
        double bottom = y + rowHeight(row);
        boolean sumsFollow = totals > 0 && row == rows - totals - 1;
        pen.line(sumsFollow ? Role.FRAME : Role.HAIRLINE, x, bottom, x + width(), bottom);
    }

    private void put(
            Pen pen, Role role, String text, boolean bold, double left, int c, double base) {
        boolean number = columns.get(c).isNumber();
        double at = number ? left + widths[c] - PAD : left + PAD;
        pen.words(role, text, at, base, SIZE, bold, number ? Anchor.END : Anchor.START, 0);
    }
}
