package lanewright.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A published table: rows under a header, each with the source, edition and mark of its figures.
 *
 * <p>Immutable. Read it once and keep what is wanted of it.
 */
public final class Table {

    static final String SOURCE = "source";
    static final String EDITION = "edition";
    static final String MARK = "mark";

    private final String name;
    private final List<String> columns;
    private final List<Row> rows;

    Table(String name, List<Csv.Line> lines) {
        this.name = name;
        if (lines.size() < 2) {
            throw new IllegalStateException("table " + name + " has no rows");
        }
        columns = header(lines.get(0));
        List<Row> read = new ArrayList<>();
        for (Csv.Line line : lines.subList(1, lines.size())) {
            read.add(new Row(this, line));
        }
        rows = List.copyOf(read);
    }

    private List<String> header(Csv.Line line) {
        List<String> heads = new ArrayList<>();
        for (String head : line.fields()) {
            if (head.isBlank() || !head.strip().equals(head) || heads.contains(head)) {
                throw new IllegalStateException(
                        "table "
                                + name
                                + ": column \""
                                + head
                                + "\" is blank, padded or twice there");
            }
            heads.add(head);
        }
        for (String needed : List.of(SOURCE, EDITION, MARK)) {
            if (!heads.contains(needed)) {
                throw new IllegalStateException("table " + name + " has no column " + needed);
            }
        }
        return List.copyOf(heads);
    }

    /** The name of its file without {@code .csv}. */
    public String name() {
        return name;
    }

    /** The heads in the order of the file. */
    public List<String> columns() {
        return columns;
    }

    /** The rows in the order of the file, at least one. */
    public List<Row> rows() {
        return rows;
    }

    /**
     * The one row that has {@code value} under {@code column}.
     *
     * @throws IllegalArgumentException if there is no such column, no such row, or more than one;
     *     an unknown value is told together with the nearest known one
     */
    public Row row(String column, String value) {
        List<Row> found = rows.stream().filter(row -> row.text(column).equals(value)).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        if (!found.isEmpty()) {
            throw new IllegalArgumentException(
                    "table "
                            + name
                            + " has "
                            + found.size()
                            + " rows with "
                            + column
                            + " "
                            + value);
        }
        String nearest =
                Nearest.to(value, rows.stream().map(row -> row.text(column)).toList())
                        .map(near -> ", nearest is " + near)
                        .orElse("");
        throw new IllegalArgumentException(
                "table " + name + " has no " + column + " \"" + value + "\"" + nearest);
    }

    int indexOf(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalArgumentException("table " + name + " has no column " + column);
        }
        return index;
    }

    @Override
    public String toString() {
        return "table " + name;
    }
}
