package lanewright.lane.section;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A line across the lane: heights over offsets that never decrease. Two points at one offset are a
 * vertical step. Immutable.
 */
public final class SectionLine {

    private final double[] offsets;
    private final double[] heights;

    private SectionLine(double[] offsets, double[] heights) {
        this.offsets = offsets;
        this.heights = heights;
    }

    /**
     * A line through the given points.
     *
     * @param offsets m, positive right, never decreasing
     * @param heights m, as many
     * @throws IllegalArgumentException if lengths differ, a value is not finite or an offset
     *     decreases
     */
    public static SectionLine of(double[] offsets, double[] heights) {
        if (offsets.length != heights.length) {
            throw new IllegalArgumentException(
                    offsets.length + " offsets for " + heights.length + " heights");
        }
        for (int i = 0; i < offsets.length; i++) {
            if (!Double.isFinite(offsets[i]) || !Double.isFinite(heights[i])) {
                throw new IllegalArgumentException("section point " + i + " is not finite");
            }
            if (i > 0 && offsets[i] < offsets[i - 1]) {
                throw new IllegalArgumentException(
                        "offsets decrease from " + offsets[i - 1] + " to " + offsets[i]);
            }
        }
        return new SectionLine(offsets.clone(), heights.clone());
    }

    /** A line that keeps the arrays it is given; its caller lets go of them. */
    static SectionLine owning(double[] offsets, double[] heights) {
        return new SectionLine(offsets, heights);
    }

    /** Number of points. */
    public int size() {
        return offsets.length;
    }

    /** Offset of point {@code i}, m, positive right. */
    public double offset(int i) {
        return offsets[i];
    }

    /** Height of point {@code i}, m. */
    public double height(int i) {
        return heights[i];
    }

    /**
     * Height at an offset, the outer one of the two at a step.
     *
     * @return m, or NaN beyond the ends of the line
     */
    public double at(double offset) {
        if (offsets.length == 0 || offset < offsets[0] || offset > offsets[offsets.length - 1]) {
            return Double.NaN;
        }
        int i = 1;
        if (!(offset > offsets[0])) {
            while (i < offsets.length && offsets[i] == offset) {
                i++;
            }
        } else {
            i = firstNotBefore(offset);
        }
        if (i == offsets.length) {
            return heights[0];
        }
        double part = (offset - offsets[i - 1]) / (offsets[i] - offsets[i - 1]);
        return heights[i - 1] + part * (heights[i] - heights[i - 1]);
    }

    /** The first point at an offset or beyond it. */
    private int firstNotBefore(double offset) {
        int low = 0;
        int high = offsets.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (offsets[middle] < offset) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Equal if all points are equal. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SectionLine that
                && Arrays.equals(offsets, that.offsets)
                && Arrays.equals(heights, that.heights);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(offsets) + Arrays.hashCode(heights);
    }
}
