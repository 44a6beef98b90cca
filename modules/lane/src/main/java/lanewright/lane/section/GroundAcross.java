package lanewright.lane.section;

import java.util.Arrays;

/**
 * The ground on a straight line square to the alignment: heights, depth of topsoil and depth to
 * bearing soil, linear between points. Only the stretch without a gap that holds the alignment
 * counts: past a hole in the survey nothing is known. Immutable.
 */
public final class GroundAcross {

    /** In place of depths that were not read. */
    private static final double[] UNREAD = {};

    private final GroundSide left;
    private final GroundSide right;

    private GroundAcross(GroundSide left, GroundSide right) {
        this.left = left;
        this.right = right;
    }

    /**
     * Ground without topsoil, bearing depth not known, that ends at its first and last point.
     *
     * @param offsets m, positive right, never decreasing
     * @param heights m, as many
     */
    public static GroundAcross of(double[] offsets, double[] heights) {
        double[] unknown = new double[offsets.length];
        Arrays.fill(unknown, Double.NaN);
        return of(offsets, heights, new double[offsets.length], unknown, true, true);
    }

    /**
     * Ground with what lies in it.
     *
     * @param offsets m, positive right, never decreasing
     * @param heights m, as many
     * @param topsoil depths of topsoil, m, zero or more, as many
     * @param bearing depths to soil that bears, m, as many; NaN where not known
     * @param endsLeft whether the ground ends at the first point; false if it goes on unread
     * @param endsRight whether the ground ends at the last point; false if it goes on unread
     * @return the ground; empty if the points do not reach from one side of the alignment to the
     *     other
     * @throws IllegalArgumentException if lengths differ, a value is out of its range or offsets
     *     decrease
     */
    public static GroundAcross of(
            double[] offsets,
            double[] heights,
            double[] topsoil,
            double[] bearing,
            boolean endsLeft,
            boolean endsRight) {
        check(offsets, heights, topsoil, bearing);
        return of(offsets, endsLeft, endsRight, heights, topsoil, bearing);
    }

    /**
     * Heights alone, the same as with what lies in the ground; nothing else of it may be read. For
     * points that are known to be in order.
     */
    static GroundAcross heights(
            double[] offsets, double[] heights, boolean endsLeft, boolean endsRight) {
        return of(offsets, endsLeft, endsRight, heights);
    }

    private static GroundAcross of(
            double[] offsets, boolean endsLeft, boolean endsRight, double[]... values) {
        int n = offsets.length;
        if (n < 2 || offsets[0] > 0 || offsets[n - 1] < 0) {
            return new GroundAcross(GroundSide.NONE, GroundSide.NONE);
        }
        return new GroundAcross(
                side(offsets, values, -1, endsLeft), side(offsets, values, 1, endsRight));
    }

    private static void check(
            double[] offsets, double[] heights, double[] topsoil, double[] bearing) {
        int n = offsets.length;
        if (heights.length != n || topsoil.length != n || bearing.length != n) {
            throw new IllegalArgumentException("ground across needs as many values as offsets");
        }
        for (int i = 0; i < n; i++) {
            if (!Double.isFinite(offsets[i])
                    || !Double.isFinite(heights[i])
                    || !(topsoil[i] >= 0)
                    || (i > 0 && offsets[i] < offsets[i - 1])) {
                throw new IllegalArgumentException(
                        "ground point "
                                + i
                                + " must be finite, in order and with topsoil of 0 or more, was "
                                + offsets[i]
                                + ", "
                                + heights[i]
                                + ", "
                                + topsoil[i]);
            }
        }
    }

    /** One side, outward, beginning with what lies on the alignment itself. */
    private static GroundSide side(double[] offsets, double[][] values, int sign, boolean ends) {
        int n = offsets.length;
        int beyond = 0;
        while (beyond < n && offsets[beyond] <= 0) {
            beyond++;
        }
        if (sign < 0) {
            beyond = 0;
            while (beyond < n && offsets[n - 1 - beyond] >= 0) {
                beyond++;
            }
        }
        int count = n - beyond;
        double[] out = new double[count + 1];
        double[][] taken = new double[values.length][count + 1];
        for (int i = 0; i < count; i++) {
            int from = sign > 0 ? beyond + i : n - 1 - beyond - i;
            out[i + 1] = sign * offsets[from];
            for (int v = 0; v < values.length; v++) {
                taken[v][i + 1] = values[v][from];
            }
        }
        int inner = sign > 0 ? beyond - 1 : n - beyond;
        int outer = sign > 0 ? Math.min(beyond, n - 1) : Math.max(n - 1 - beyond, 0);
        for (int v = 0; v < values.length; v++) {
            taken[v][0] =
                    GroundSide.lerp(
                            sign * offsets[inner],
                            sign * offsets[outer],
                            values[v][inner],
                            values[v][outer],
                            0);
        }
        if (count == 0) {
            out = new double[] {0, 0};
            for (int v = 0; v < values.length; v++) {
                taken[v] = new double[] {taken[v][0], taken[v][0]};
            }
        }
        return values.length == 1
                ? new GroundSide(out, taken[0], UNREAD, UNREAD, ends)
                : new GroundSide(out, taken[0], taken[1], taken[2], ends);
    }

    GroundSide left() {
        return left;
    }

    GroundSide right() {
        return right;
    }

    /** True if there is no ground at the alignment. */
    public boolean isEmpty() {
        return left.isEmpty();
    }

    /** Height of the ground at an offset, m, or NaN where it is not known. */
    public double heightAt(double offset) {
        return offset < 0 ? left.heightAt(-offset) : right.heightAt(offset);
    }
}
