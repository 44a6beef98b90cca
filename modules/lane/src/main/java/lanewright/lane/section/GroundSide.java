package lanewright.lane.section;

/**
 * The ground on one side of the alignment, outward from it, as far as it was read or goes. Package
 * rooms read the arrays and never write them.
 */
final class GroundSide {

    /** Nothing known. */
    static final GroundSide NONE =
            new GroundSide(new double[0], new double[0], new double[0], new double[0], true);

    /** Distances out, the first zero, never decreasing, m. */
    final double[] out;

    /** Heights of the ground, m. */
    final double[] height;

    /** Depths of topsoil, m, zero or more. */
    final double[] topsoil;

    /** Depths to soil that bears, m; NaN where not known. */
    final double[] bearing;

    /** True if the ground ends after the last point, false if it was only read so far. */
    final boolean ends;

    GroundSide(double[] out, double[] height, double[] topsoil, double[] bearing, boolean ends) {
        this.out = out;
        this.height = height;
        this.topsoil = topsoil;
        this.bearing = bearing;
        this.ends = ends;
    }

    boolean isEmpty() {
        return out.length == 0;
    }

    /** How far out it is known, m; nothing is known of an empty side. */
    double end() {
        return isEmpty() ? Double.NEGATIVE_INFINITY : out[out.length - 1];
    }

    /** Height at a distance out, m, or NaN beyond the end. */
    double heightAt(double at) {
        if (!(at <= end())) {
            return Double.NaN;
        }
        int k = segment(at);
        return lerp(out[k], out[k + 1], height[k], height[k + 1], at);
    }

    /** The first segment that reaches past a distance out, or the last one. */
    int segment(double at) {
        int low = 0;
        int high = out.length - 2;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (out[middle + 1] > at) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The value at a place of a segment; exact at both ends. */
    static double lerp(double a, double b, double va, double vb, double at) {
        if (at <= a) {
            return va;
        }
        return at >= b ? vb : va + (at - a) / (b - a) * (vb - va);
    }
}
