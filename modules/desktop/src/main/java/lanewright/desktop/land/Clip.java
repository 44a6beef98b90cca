package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;

/** Cuts what reaches far beyond the board, which would only cost time to paint. */
final class Clip {

    /** Kept beyond the board, px, so that cut edges are not seen. */
    private static final double BEYOND = 24;

    private final double right;
    private final double bottom;

    Clip(double width, double height) {
        right = width + BEYOND;
        bottom = height + BEYOND;
    }

    /**
     * What of a ring lies on the board, by Sutherland and Hodgman (1974, Reentrant polygon
     * clipping); x and y in turn, empty if nothing does.
     */
    double[] ring(double[] xy) {
        double[] cut = xy;
        for (int side = 0; side < 4 && cut.length > 0; side++) {
            cut = half(cut, side);
        }
        return cut.length < 6 ? new double[0] : cut;
    }

    private double[] half(double[] xy, int side) {
        double[] out = new double[2 * xy.length];
        int n = 0;
        int count = xy.length / 2;
        for (int i = 0; i < count; i++) {
            int k = (i + 1) % count;
            double ax = xy[2 * i];
            double ay = xy[2 * i + 1];
            double bx = xy[2 * k];
            double by = xy[2 * k + 1];
            double a = inside(ax, ay, side);
            double b = inside(bx, by, side);
            if (a >= 0) {
                out[n++] = ax;
                out[n++] = ay;
            }
            if ((a < 0 && b >= 0) || (a >= 0 && b < 0)) {
                double t = a / (a - b);
                out[n++] = ax + t * (bx - ax);
                out[n++] = ay + t * (by - ay);
            }
        }
        return java.util.Arrays.copyOf(out, n);
    }

    private double inside(double x, double y, int side) {
        return switch (side) {
            case 0 -> x + BEYOND;
            case 1 -> right - x;
            case 2 -> y + BEYOND;
            default -> bottom - y;
        };
    }

    /** The pieces of a line that may be seen: whole runs of its points, x and y in turn. */
    List<double[]> line(double[] xy) {
        List<double[]> runs = new ArrayList<>();
        double[] run = new double[xy.length];
        int n = 0;
        for (int i = 0; i + 3 < xy.length; i += 2) {
            if (misses(xy[i], xy[i + 1], xy[i + 2], xy[i + 3])) {
                if (n > 2) {
                    runs.add(java.util.Arrays.copyOf(run, n));
                }
                n = 0;
                continue;
            }
            if (n == 0) {
                run[n++] = xy[i];
                run[n++] = xy[i + 1];
            }
            run[n++] = xy[i + 2];
            run[n++] = xy[i + 3];
        }
        if (n > 2) {
            runs.add(java.util.Arrays.copyOf(run, n));
        }
        return runs;
    }

    private boolean misses(double ax, double ay, double bx, double by) {
        return Math.max(ax, bx) < -BEYOND
                || Math.min(ax, bx) > right
                || Math.max(ay, by) < -BEYOND
                || Math.min(ay, by) > bottom;
    }
}
