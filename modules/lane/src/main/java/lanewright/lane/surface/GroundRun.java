package lanewright.lane.surface;

import java.util.Arrays;
import lanewright.ground.GroundLine;

/**
 * The ground under one side of a ray, from the alignment outward, as far as it is known without a
 * gap. Distances are in metres of offset.
 */
final class GroundRun {

    private final double[] out;
    private final double[] height;
    private final int size;
    private final boolean ends;

    private GroundRun(double[] out, double[] height, int size, boolean ends) {
        this.out = out;
        this.height = height;
        this.size = size;
        this.ends = ends;
    }

    /**
     * One side of a line that was cut right across the lane from left to right.
     *
     * @param line the ground along it
     * @param middle distance of the alignment along the line, m
     * @param scale length along the line of a metre of offset
     * @param right which side
     * @param reach how far out the line was asked for, m of offset
     */
    static GroundRun of(GroundLine line, double middle, double scale, boolean right, double reach) {
        int count = line.size();
        double[] out = new double[count + 1];
        double[] height = new double[count + 1];
        int size = 0;
        int first = 0;
        while (first < count && line.distance(first) < middle) {
            first++;
        }
        boolean bare =
                first == count
                        || (first == 0 && line.distance(0) > middle)
                        || (first > 0 && line.gapAfter(first - 1));
        if (bare) {
            return new GroundRun(out, height, 0, true);
        }
        height[size] = first == 0 ? line.z(0) : between(line, first, middle);
        size++;
        int i = right ? first : first - 1;
        boolean open = false;
        while (!open && i >= 0 && i < count) {
            double at = (right ? line.distance(i) - middle : middle - line.distance(i)) / scale;
            if (at > out[size - 1]) {
                out[size] = at;
                height[size++] = line.z(i);
            } else {
                height[size - 1] = size == 1 ? height[0] : line.z(i);
            }
            open = right ? i + 1 < count && line.gapAfter(i) : i > 0 && line.gapAfter(i - 1);
            i += right ? 1 : -1;
        }
        boolean ends = open || out[size - 1] < reach - 1e-6;
        return new GroundRun(Arrays.copyOf(out, size), Arrays.copyOf(height, size), size, ends);
    }

    private static double between(GroundLine line, int i, double at) {
        double from = line.distance(i - 1);
        double part = (at - from) / (line.distance(i) - from);
        return line.z(i - 1) + part * (line.z(i) - line.z(i - 1));
    }

    /** True if the ground ends where the run ends; false if it was only not read further. */
    boolean ends() {
        return ends;
    }

    /** How far out the ground is known, m; zero too if it is not known at the alignment. */
    double end() {
        return size == 0 ? 0 : out[size - 1];
    }

    /** Height at a distance out, m, or NaN where it is not known. */
    double at(double distance) {
        if (size == 0 || distance < 0 || distance > out[size - 1]) {
            return Double.NaN;
        }
        int i = after(distance);
        if (i == 0) {
            return height[0];
        }
        double part = (distance - out[i - 1]) / (out[i] - out[i - 1]);
        return height[i - 1] + part * (height[i] - height[i - 1]);
    }

    private int after(double distance) {
        int found = Arrays.binarySearch(out, 0, size, distance);
        return found >= 0 ? found : -found - 1;
    }

    /**
     * First place, going outward, where a straight line meets the ground.
     *
     * @param from where the line begins, m out
     * @param z its height there, m
     * @param rise its rise per metre going outward
     * @param until how far it goes, m out
     * @return m out, or NaN if they do not meet as far as the ground is known
     */
    double meet(double from, double z, double rise, double until) {
        double above = z - at(from);
        if (Double.isNaN(above) || above == 0) {
            return above == 0 ? from : Double.NaN;
        }
        double last = from;
        for (int i = after(from); i < size && last < until; i++) {
            double here = Math.min(out[i], until);
            if (here <= last) {
                continue;
            }
            double now = z + rise * (here - from) - (here == out[i] ? height[i] : at(here));
            if (now == 0) {
                return here;
            }
            if (now > 0 != above > 0) {
                return last + (here - last) * (above / (above - now));
            }
            above = now;
            last = here;
        }
        return Double.NaN;
    }
}
