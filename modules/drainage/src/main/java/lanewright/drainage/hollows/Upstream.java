package lanewright.drainage.hollows;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Cells whose water comes to a cell, from the nearest up, each with the length of its way. Memory
 * for one thread.
 */
final class Upstream {

    private final Downhill downhill;
    private final Hollows hollows;
    private final Layout layout;
    private final double straight;
    private final double slanted;
    private int[] cells = new int[1024];
    private double[] lengths = new double[1024];
    private int count;

    Upstream(Downhill downhill, Hollows hollows) {
        this.downhill = downhill;
        this.hollows = hollows;
        layout = hollows.terrain().layout();
        straight = hollows.terrain().cellSize();
        slanted = Math.sqrt(2) * straight;
    }

    /** How many were found, the cell itself included, which is the first. */
    int count() {
        return count;
    }

    int cell(int i) {
        return cells[i];
    }

    /** Length of the way of water, from middle to middle of cells, straight across a pool, m. */
    double length(int i) {
        return lengths[i];
    }

    /**
     * Finds all cells whose water comes to a cell.
     *
     * @param places cells where water is stopped before are those with a number here that is zero
     *     or more; null for none
     */
    void climb(int from, int @Nullable [] places) {
        count = 0;
        add(from, 0, null);
        for (int i = 0; i < count; i++) {
            beside(cells[i], lengths[i], places);
            for (int source : downhill.sources(cells[i])) {
                add(source, lengths[i] + hollows.distance(cells[i], source), places);
            }
        }
    }

    private void beside(int cell, double length, int @Nullable [] places) {
        int columns = layout.columns();
        int row = cell / columns;
        int column = cell - row * columns;
        int side = layout.side();
        int east = column & (side - 1);
        int north = row & (side - 1);
        boolean within =
                east > 0
                        && north > 0
                        && east < side - 1
                        && north < side - 1
                        && column < columns - 1
                        && row < layout.rows() - 1;
        byte[] ways = hollows.tile(layout.tile(cell)).ways();
        int local = (north << layout.shift()) | east;
        for (int way = 0; way < 8; way++) {
            int there = Layout.east(way) + (Layout.north(way) << layout.shift());
            int back = within ? ways[local + there] & Ways.MASK : backFrom(cell, way);
            if (back == (way ^ 4)) {
                add(
                        cell + Layout.north(way) * columns + Layout.east(way),
                        length + ((way & 1) == 0 ? straight : slanted),
                        places);
            }
        }
    }

    private int backFrom(int cell, int way) {
        int other = layout.neighbour(cell, way);
        return other < 0 ? Ways.NONE : downhill.way(other);
    }

    private void add(int cell, double length, int @Nullable [] places) {
        if (places != null && places[cell] >= 0) {
            return;
        }
        if (count == cells.length) {
            cells = Arrays.copyOf(cells, 2 * count);
            lengths = Arrays.copyOf(lengths, 2 * count);
        }
        cells[count] = cell;
        lengths[count++] = length;
    }
}
