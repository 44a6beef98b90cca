package lanewright.sheets.folder;

import java.io.IOException;
import java.util.ArrayList;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A listing as comma-separated text (RFC 4180: CRLF line ends, quotes where needed). The unit
 * stands in the head, so the cells of a column are bare numbers, without commas between thousands.
 */
public final class CsvTable {

    /** What a spreadsheet would take for a formula at the beginning of a cell of words. */
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private CsvTable() {}

    /** The whole text of the table. */
    public static String of(Listing listing, UnitSystem units) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            var heads = new ArrayList<String>();
            for (Listing.Column column : listing.columns()) {
                String unit = column.unit(units);
                heads.add(unit.isEmpty() ? column.head() : column.head() + " (" + unit + ")");
            }
            printer.printRecord(heads);
            for (int row = 0; row < listing.rows().size(); row++) {
                var cells = new ArrayList<String>();
                for (int i = 0; i < listing.columns().size(); i++) {
                    cells.add(cell(listing, row, i, units));
                }
                printer.printRecord(cells);
            }
        } catch (IOException impossible) {
            throw new IllegalStateException("writing to memory failed", impossible);
        }
        return text.toString();
    }

    private static String cell(Listing listing, int row, int column, UnitSystem units) {
        Saying cell = listing.rows().get(row).get(column);
        String shown = listing.shown(row, column, units);
        if (listing.columns().get(column).kind() != null) {
            boolean unknown =
                    !cell.quantities().isEmpty()
                            && !Double.isFinite(cell.quantities().get(0).value());
            return unknown ? "" : shown.replace(",", "");
        }
        boolean formula =
                !cell.pattern().startsWith("{}")
                        && !shown.isEmpty()
                        && FORMULA_STARTS.indexOf(shown.charAt(0)) >= 0;
        return formula ? "'" + shown : shown;
    }
}
