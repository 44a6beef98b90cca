package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.List;
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

    /** Narrower than this, words are no longer pleasant to read, pt. */
    private static final double LEAST_WORDS = 62;

    private final Listing listing;
    private final UnitSystem units;
    private final double[] widths;
    private final List<List<String>> heads;
    private final double headHeight;

    TableBlock(Listing listing, UnitSystem units, double width) {
        this.listing = withoutBlanks(listing);
        this.units = units;
        widths = widths(width);
        heads = new ArrayList<>();
        int most = 1;
        for (int c = 0; c < widths.length; c++) {
            Listing.Column column = listing.columns().get(c);
            var lines =
                    new ArrayList<>(
                            Type.lines(column.head(), SIZE, true, widths[c] - 2 * PAD + 0.01));
            String unit = column.unit(units);
            if (!unit.isEmpty()) {
                lines.add(unit);
            }
            heads.add(lines);
            most = Math.max(most, lines.size());
        }
        headHeight = most * LINE + 2 * PAD;
    }

    /** The listing without columns of quantities in which no row has any. */
    private static Listing withoutBlanks(Listing listing) {
        var kept = new ArrayList<Integer>();
        for (int c = 0; c < listing.columns().size(); c++) {
            int column = c;
            boolean blank =
                    listing.columns().get(c).kind() != null
                            && listing.rows().stream()
                                    .allMatch(row -> row.get(column).quantities().isEmpty());
            if (!blank) {
                kept.add(c);
            }
        }
        return new Listing(
                listing.name(),
                listing.title(),
                kept.stream().map(listing.columns()::get).toList(),
                listing.rows().stream().map(row -> kept.stream().map(row::get).toList()).toList(),
                listing.totals());
    }

    private double[] widths(double width) {
        int count = listing.columns().size();
        double[] least = new double[count];
        double[] wished = new double[count];
        for (int c = 0; c < count; c++) {
            Listing.Column column = listing.columns().get(c);
            for (String word : column.head().split(" ", -1)) {
                least[c] = Math.max(least[c], Face.of(true).width(word, SIZE));
            }
            least[c] = Math.max(least[c], Face.of(true).width(column.unit(units), SIZE));
            wished[c] = Math.max(least[c], Face.of(true).width(column.head(), SIZE) * 0.6);
            for (int r = 0; r < listing.rows().size(); r++) {
                String shown = column.shown(listing.rows().get(r).get(c), units);
                double wide = Face.of(isTotal(r)).width(shown, SIZE);
                wished[c] = Math.max(wished[c], wide);
                if (column.kind() != null) {
                    least[c] = Math.max(least[c], wide);
                } else {
                    least[c] = Math.max(least[c], Math.min(wide, LEAST_WORDS));
                }
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
                    "listing " + listing.name() + " needs " + needed + " pt and has " + width);
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
        return most * LINE + PAD;
    }

    int rows() {
        return listing.rows().size();
    }

    private double width() {
        double sum = 0;
        for (double wide : widths) {
            sum += wide;
        }
        return sum;
    }

    private boolean isTotal(int row) {
        return row >= listing.rows().size() - listing.totals();
    }

    private List<String> cell(int row, int c) {
        Saying cell = listing.rows().get(row).get(c);
        String shown = listing.columns().get(c).shown(cell, units);
        return Type.lines(shown, SIZE, isTotal(row), widths[c] - 2 * PAD + 0.01);
    }

    void drawHead(Pen pen, double x, double y) {
        pen.fill(Role.BAND, new Box(x, y, width(), headHeight));
        double left = x;
        for (int c = 0; c < widths.length; c++) {
            List<String> lines = heads.get(c);
            double base = y + headHeight - PAD - 2.2 - (lines.size() - 1) * LINE;
            boolean unit = !listing.columns().get(c).unit(units).isEmpty();
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
            double base = y + PAD / 2 + SIZE * 0.98;
            for (String line : cell(row, c)) {
                put(pen, Role.TEXT, line, isTotal(row), left, c, base);
                base += LINE;
            }
            left += widths[c];
        }
        double bottom = y + rowHeight(row);
        boolean sumsFollow = listing.totals() > 0 && row == rows() - listing.totals() - 1;
        pen.line(sumsFollow ? Role.FRAME : Role.HAIRLINE, x, bottom, x + width(), bottom);
    }

    private void put(
            Pen pen, Role role, String text, boolean bold, double left, int c, double base) {
        boolean number = listing.columns().get(c).kind() != null;
        double at = number ? left + widths[c] - PAD : left + PAD;
        pen.words(role, text, at, base, SIZE, bold, number ? Anchor.END : Anchor.START, 0);
    }
}
