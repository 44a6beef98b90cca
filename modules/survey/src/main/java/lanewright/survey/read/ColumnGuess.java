package lanewright.survey.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import lanewright.measure.LengthUnit;
import lanewright.survey.Frame;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Fields;

/**
 * Columns of rows without headings. Numbers alone do not say which column is east and which north,
 * so without a frame on the earth this always asks. With one, an order is taken only if it is the
 * single one in which every row lies in the frame's published area of use at a height that exists.
 */
final class ColumnGuess {

    private static final int[][] ORDERS = {
        {0, 1, 2}, {1, 0, 2}, {0, 2, 1}, {2, 0, 1}, {1, 2, 0}, {2, 1, 0}
    };

    private final Path path;
    private final SurveyFile file;
    private final Frame frame;
    private final Set<Column> needed;
    private final Signs.Found signs;
    private final List<Signs.Row> rows;

    ColumnGuess(
            SurveyFile file,
            Frame frame,
            Set<Column> needed,
            Signs.Found signs,
            List<Signs.Row> rows) {
        this.path = file.path();
        this.file = file;
        this.frame = frame;
        this.needed = needed;
        this.signs = signs;
        this.rows = rows;
    }

    List<Column> columns() throws SurveyException {
        if (needed.size() < 3) {
            throw ask("Put a line of headings on top, such as name,easting,northing,topsoil,met.");
        }
        List<Integer> numeric = new ArrayList<>();
        for (int k = 0; k < signs.numeric().size(); k++) {
            if (signs.numeric().get(k)) {
                numeric.add(k);
            }
        }
        boolean named = numeric.size() == 4 && numeric.get(0) == 0 && wholeNumbers(0);
        if (numeric.size() - (named ? 1 : 0) != 3) {
            throw ask(example(numeric, true));
        }
        List<Integer> three = named ? numeric.subList(1, 4) : numeric;
        if (frame.isLocal() || file.epsg() != null) {
            throw ask(example(numeric, named));
        }
        List<int[]> fitting = new ArrayList<>();
        for (int[] order : ORDERS) {
            if (fits(three, order)) {
                fitting.add(order);
            }
        }
        if (fitting.size() != 1) {
            throw ask(example(numeric, named));
        }
        int[] order = fitting.get(0);
        Column[] columns = new Column[signs.numeric().size()];
        Arrays.fill(columns, Column.SKIP);
        if (named || three.get(0) > 0) {
            columns[0] = Column.NAME;
        }
        columns[three.get(order[0])] = Column.EASTING;
        columns[three.get(order[1])] = Column.NORTHING;
        columns[three.get(order[2])] = Column.HEIGHT;
        int afterwards = three.get(2) + 1;
        if (afterwards < columns.length) {
            columns[afterwards] = Column.CODE;
        }
        return List.of(columns);
    }

    private boolean fits(List<Integer> three, int[] order) {
        double metres = unit().metres();
        var fields = new Fields(signs.separator());
        int read = 0;
        for (Signs.Row row : rows) {
            if (!fields.cut(row.text()) || fields.count() <= three.get(2)) {
                continue;
            }
            double east = fields.number(three.get(order[0]), signs.decimal()) * metres;
            double north = fields.number(three.get(order[1]), signs.decimal()) * metres;
            double height = fields.number(three.get(order[2]), signs.decimal()) * metres;
            if (Double.isNaN(east + north + height)) {
                continue;
            }
            read++;
            if (!Limits.heightExists(height) || !frame.mayHold(east, north)) {
                return false;
            }
        }
        return read > 0;
    }

    private LengthUnit unit() {
        LengthUnit declared = file.unit();
        return declared == null ? frame.unit() : declared;
    }

    private boolean wholeNumbers(int column) {
        var fields = new Fields(signs.separator());
        for (Signs.Row row : rows) {
            if (fields.cut(row.text()) && column < fields.count()) {
                double number = fields.number(column, signs.decimal());
                if (!Double.isNaN(number) && number != Math.rint(number)) {
                    return false;
                }
            }
        }
        return true;
    }

    private SurveyException ask(String remedy) {
        return new SurveyException(
                path,
                rows.get(0).line(),
                "there are no headings, and numbers alone do not say which column is easting and"
                        + " which is northing: "
                        + Signs.quoted(rows.get(0).text()),
                remedy,
                SurveyException.Asks.COLUMNS);
    }

    private String example(List<Integer> numeric, boolean named) {
        String before = named || numeric.get(0) > 0 ? "name, " : "";
        String after = numeric.get(numeric.size() - 1) + 1 < signs.numeric().size() ? ", code" : "";
        return "Declare the order in the plan: \"columns\": \""
                + before
                + "easting, northing, height"
                + after
                + "\" or \"columns\": \""
                + before
                + "northing, easting, height"
                + after
                + "\".";
    }
}
