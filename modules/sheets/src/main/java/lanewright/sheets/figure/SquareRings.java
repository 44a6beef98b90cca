package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The rims of areas made of squares, holes too, so that an area is drawn at once and no seam is
 * seen between its squares.
 */
final class SquareRings {

    private static final int[] EAST = {1, 0, -1, 0};
    private static final int[] NORTH = {0, 1, 0, -1};

    private final int columns;
    private final int rows;
    private final IntPredicate inside;

    private SquareRings(int columns, int rows, IntPredicate inside) {
        this.columns = columns;
        this.rows = rows;
        this.inside = inside;
    }

    /**
     * The rims.
     *
     * @param columns squares from west to east
     * @param rows squares from south to north
     * @param inside whether a square, counted by rows from the south-west, belongs to the area
     * @return rings of corners in turn, each how far east and north of the south-western corner in
     *     squares; the area on their left, so that they may be filled by even and odd
     */
    static List<int[]> of(int columns, int rows, IntPredicate inside) {
        return new SquareRings(columns, rows, inside).rings();
    }

    private List<int[]> rings() {
        List<int[]> rings = new ArrayList<>();
        var walked = new BitSet();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                // Every ring has a side that runs east, with the area north of it.
                if (is(column, row) && !is(column, row - 1) && !walked.get(at(column, row))) {
                    rings.add(walk(column, row, walked));
                }
            }
        }
        return rings;
    }

    /** Walks a rim, first east from the south-western corner of a square. */
    private int[] walk(int column, int row, BitSet walked) {
        List<Integer> corners = new ArrayList<>();
        int x = column;
        int y = row;
        int way = 0;
        do {
            if (way == 0) {
                walked.set(at(x, y));
            }
            x += EAST[way];
            y += NORTH[way];
            int next = turned(x, y, way);
            if (next != way) {
                corners.add(x);
                corners.add(y);
            }
            way = next;
        } while (x != column || y != row || way != 0);
        return corners.stream().mapToInt(Integer::intValue).toArray();
    }

    /**
     * The way that goes on from a corner: to the left if the area ends ahead, which parts squares
     * that meet in a corner only.
     */
    private int turned(int x, int y, int way) {
        boolean left = is(x + besideEast(way, true), y + besideNorth(way, true));
        boolean right = is(x + besideEast(way, false), y + besideNorth(way, false));
        if (!left) {
            return (way + 1) % 4;
        }
        return right ? (way + 3) % 4 : way;
    }

    /** The square ahead of a corner on the left or the right, from the corner, east. */
    private static int besideEast(int way, boolean left) {
        return switch (way) {
            case 0 -> 0;
            case 1 -> left ? -1 : 0;
            case 2 -> -1;
            default -> left ? 0 : -1;
        };
    }

    private static int besideNorth(int way, boolean left) {
        return switch (way) {
            case 0 -> left ? 0 : -1;
            case 1 -> 0;
            case 2 -> left ? -1 : 0;
            default -> -1;
        };
    }

    private boolean is(int column, int row) {
        return column >= 0
                && row >= 0
                && column < columns
                && row < rows
                && inside.test(at(column, row));
    }

    private int at(int column, int row) {
        return row * columns + column;
    }
}
