package lanewright.measure;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rows of quantities under named heads. One listing is the table on a sheet, the CSV file and the
 * rows in the outcome alike, so that the three cannot disagree.
 *
 * @param name a short, stable, lower-case name, words joined by hyphens
 * @param title what the rows show, in the owner's words
 * @param columns the heads, left to right
 * @param rows the cells, row by row, each as long as there are columns
 * @param totals how many of the last rows are sums of those above
 */
public record Listing(
        String name, String title, List<Column> columns, List<List<Saying>> rows, int totals) {

    /** An empty cell. */
    public static final Saying BLANK = Saying.plain("");

    /** Checks that every row has a cell for every head, of the kind that the head names. */
    public Listing {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        if (totals < 0 || totals > rows.size()) {
            throw new IllegalArgumentException(totals + " totals in " + rows.size() + " rows");
        }
        for (List<Saying> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "listing "
                                + name
                                + " has "
                                + columns.size()
                                + " heads and a row of "
                                + row.size());
            }
            for (int i = 0; i < row.size(); i++) {
                columns.get(i).check(row.get(i));
            }
        }
    }

    /**
     * One head.
     *
     * @param head what the cells below it are
     * @param kind what the cells measure, each then being one quantity or blank; null for words
     */
    public record Column(String head, @Nullable Kind kind) {

        /** A column of words. */
        public static Column words(String head) {
            return new Column(head, null);
        }

        /** A column of quantities of one kind; the unit goes with the head. */
        public static Column of(String head, Kind kind) {
            return new Column(head, kind);
        }

        private void check(Saying cell) {
            boolean blank = cell.quantities().isEmpty() && cell.pattern().isEmpty();
            if (kind != null && !blank && !isOne(cell)) {
                throw new IllegalArgumentException(
                        "under " + head + " goes one " + kind + ", not " + cell);
            }
        }

        private boolean isOne(Saying cell) {
            return cell.pattern().equals("{}") && cell.quantities().get(0).kind() == kind;
        }

        /** The unit for the head, empty where there is none. */
        public String unit(UnitSystem units) {
            return kind == null ? "" : Words.unit(kind, units);
        }

        /** What a cell below this head shows: the number alone where the head names the unit. */
        public String shown(Saying cell, UnitSystem units) {
            return kind == null || cell.quantities().isEmpty()
                    ? cell.in(units)
                    : Words.number(cell.quantities().get(0), units);
        }
    }

    /**
     * What a cell shows. A sum shows what the rows above it show, added up, so that whoever adds
     * them finds it; that moves it by less than its rows were rounded by.
     *
     * @param row from zero
     * @param column from zero
     */
    public String shown(int row, int column, UnitSystem units) {
        Column head = columns.get(column);
        String text = head.shown(rows.get(row).get(column), units);
        int parts = rows.size() - totals;
        if (row < parts || !isFigure(row, column)) {
            return text;
        }
        BigDecimal total = plain(text);
        BigDecimal sum = BigDecimal.ZERO;
        int added = 0;
        for (int i = 0; i < parts; i++) {
            if (isFigure(i, column)) {
                sum = sum.add(plain(head.shown(rows.get(i).get(column), units)));
                added++;
            }
        }
        // Each part is off by half its last digit at most, and so is the sum.
        BigDecimal rounding =
                total.ulp().multiply(BigDecimal.valueOf(added + 1L)).divide(BigDecimal.valueOf(2));
        boolean isSum = added > 0 && sum.subtract(total).abs().compareTo(rounding) <= 0;
        return !isSum || sum.compareTo(total) == 0
                ? text
                : Words.fixed(sum.doubleValue(), total.scale());
    }

    /** Whether a cell holds a finite amount that can be added. */
    private boolean isFigure(int row, int column) {
        Kind kind = columns.get(column).kind();
        List<Quantity> held = rows.get(row).get(column).quantities();
        return kind != null
                && kind != Kind.STATION
                && !held.isEmpty()
                && Double.isFinite(held.get(0).value());
    }

    private static BigDecimal plain(String number) {
        return new BigDecimal(number.replace(",", ""));
    }

    /** A cell that holds one quantity. */
    public static Saying cell(Quantity quantity) {
        return new Saying("{}", List.of(quantity));
    }

    /** A cell that holds words. */
    public static Saying cell(String words) {
        return Saying.plain(words);
    }
}
