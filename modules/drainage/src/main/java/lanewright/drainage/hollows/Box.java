package lanewright.drainage.hollows;

/**
 * A rectangle of cells.
 *
 * @param column its westernmost column, from zero
 * @param row its southernmost row, from zero
 * @param columns how many columns, one or more
 * @param rows how many rows, one or more
 */
public record Box(int column, int row, int columns, int rows) {

    /** Checks that it holds a cell. */
    public Box {
        if (column < 0 || row < 0 || columns < 1 || rows < 1) {
            throw new IllegalArgumentException(
                    "a box must hold cells, was "
                            + columns
                            + " by "
                            + rows
                            + " from column "
                            + column
                            + ", row "
                            + row);
        }
    }
}
