package lanewright.drainage.along;

import java.util.List;

/**
 * How far water may run down a lane or a ditch before it is led off, by grade.
 *
 * <p>The published tables leave gaps between their grades (0–3, 4–6, …) and give 12 % twice. Our
 * rule: a row holds from just over the last row's upper grade up to its own, so that a grade in a
 * gap takes the steeper row, the safer one; 12 % itself belongs to the row that ends there.
 *
 * @param rows from the gentlest to the steepest
 */
public record Spacing(List<Row> rows) {

    /**
     * One row of a table.
     *
     * @param to grade up to which it holds, rise over run
     * @param lowErosion greatest distance on coarse rock, gravel, some clay, m
     * @param erosive greatest distance on silt, fine sand and other fine, friable soil, m
     * @param source who published it, with edition
     */
    public record Row(double to, double lowErosion, double erosive, String source) {}

    /** Copies the rows; there must be some, in rising order. */
    public Spacing {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a spacing table needs rows");
        }
        for (int i = 1; i < rows.size(); i++) {
            if (!(rows.get(i).to() > rows.get(i - 1).to())) {
                throw new IllegalArgumentException(
                        "grades of a spacing table must rise, row " + (i + 1));
            }
        }
    }

    /** The row for a grade, whichever way it falls; beyond the last, the last. */
    public Row row(double grade) {
        for (Row row : rows) {
            // A hair, so that 6 % written as 0.06 takes the row that ends at 6 %.
            if (Math.abs(grade) <= row.to() + 1e-12) {
                return row;
            }
        }
        return rows.get(rows.size() - 1);
    }
}
