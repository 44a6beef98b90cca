package lanewright.drainage.flow;

import java.util.Arrays;
import java.util.List;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.Trace;

/** Which low spot each cell lies in. */
final class SpotCells {

    private SpotCells() {}

    /**
     * The number of the low spot over the middle of each cell, or -1. The cell of a deepest point
     * always belongs to its own, so that none is too small to be seen.
     */
    static int[] of(Cells cells, List<LowSpot> spots) {
        int[] in = new int[cells.count()];
        Arrays.fill(in, -1);
        for (int spot = 0; spot < spots.size(); spot++) {
            fill(cells, spots.get(spot), spot, in);
        }
        for (int spot = 0; spot < spots.size(); spot++) {
            int deepest = cells.at(spots.get(spot).x(), spots.get(spot).y());
            if (deepest >= 0) {
                in[deepest] = spot;
            }
        }
        return in;
    }

    private static void fill(Cells cells, LowSpot spot, int number, int[] in) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (Trace ring : spot.outline()) {
            for (int i = 0; i < ring.size(); i++) {
                west = Math.min(west, ring.x(i));
                east = Math.max(east, ring.x(i));
                south = Math.min(south, ring.y(i));
                north = Math.max(north, ring.y(i));
            }
        }
        int first = cells.at(west, south);
        int last = cells.at(east, north);
        if (first < 0 || last < 0) {
            return;
        }
        int columns = cells.columns();
        int bottom = first / columns;
        double[][] crossings = crossings(cells, spot, bottom, last / columns);
        for (int row = 0; row < crossings.length; row++) {
            int at = (bottom + row) * columns;
            double[] across = crossings[row];
            for (int i = 0; i + 1 < across.length; i += 2) {
                for (int column = first % columns; column <= last % columns; column++) {
                    double x = cells.x(at + column);
                    if (x >= across[i] && x < across[i + 1]) {
                        in[at + column] = number;
                    }
                }
            }
        }
    }

    /** Eastings where the outline crosses the middle of each row, from west to east. */
    private static double[][] crossings(Cells cells, LowSpot spot, int bottom, int top) {
        double[][] found = new double[top - bottom + 1][8];
        int[] count = new int[found.length];
        for (Trace ring : spot.outline()) {
            if (ring.size() == 0) {
                continue;
            }
            double x = ring.x(ring.size() - 1);
            double y = ring.y(ring.size() - 1);
            for (int i = 0; i < ring.size(); i++) {
                double nextX = ring.x(i);
                double nextY = ring.y(i);
                // One row more on each side, for rounding; the heights below decide.
                int from = row(cells, Math.min(y, nextY)) - 1 - bottom;
                int to = row(cells, Math.max(y, nextY)) + 1 - bottom;
                for (int row = Math.max(0, from); row <= Math.min(found.length - 1, to); row++) {
                    double middle = cells.y((bottom + row) * cells.columns());
                    if (y > middle != nextY > middle) {
                        if (count[row] == found[row].length) {
                            found[row] = Arrays.copyOf(found[row], 2 * count[row]);
                        }
                        found[row][count[row]++] = x + (middle - y) / (nextY - y) * (nextX - x);
                    }
                }
                x = nextX;
                y = nextY;
            }
        }
        for (int row = 0; row < found.length; row++) {
            found[row] = Arrays.copyOf(found[row], count[row]);
            Arrays.sort(found[row]);
        }
        return found;
    }

    private static int row(Cells cells, double y) {
        return (int) Math.floor((y - cells.south()) / cells.size());
    }
}
