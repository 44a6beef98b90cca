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
        for (int row = first / columns; row <= last / columns; row++) {
            double y = cells.y(row * columns);
            double[] crossings = crossings(spot, y);
            for (int i = 0; i + 1 < crossings.length; i += 2) {
                for (int column = first % columns; column <= last % columns; column++) {
                    double x = cells.x(row * columns + column);
                    if (x >= crossings[i] && x < crossings[i + 1]) {
                        in[row * columns + column] = number;
                    }
                }
            }
        }
    }

    /** Eastings where the outline crosses a northing, from west to east. */
    private static double[] crossings(LowSpot spot, double y) {
        double[] found = new double[16];
        int count = 0;
        for (Trace ring : spot.outline()) {
            for (int i = 0; i < ring.size(); i++) {
                int j = (i + 1) % ring.size();
                if (ring.y(i) > y != ring.y(j) > y) {
                    if (count == found.length) {
                        found = Arrays.copyOf(found, 2 * count);
                    }
                    found[count++] =
                            ring.x(i)
                                    + (y - ring.y(i))
                                            / (ring.y(j) - ring.y(i))
                                            * (ring.x(j) - ring.x(i));
                }
            }
        }
        double[] sorted = Arrays.copyOf(found, count);
        Arrays.sort(sorted);
        return sorted;
    }
}
