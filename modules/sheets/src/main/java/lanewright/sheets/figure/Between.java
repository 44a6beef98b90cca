package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lanewright.lane.section.SectionLine;

/** The areas in which one line across the lane lies above another, as rings to be hatched. */
final class Between {

    /** Thinner than this an area is not drawn, m: a hair on any paper. */
    private static final double HAIR = 1e-4;

    private Between() {}

    /** A ring of offsets and heights, m. */
    @SuppressWarnings("ArrayRecordComponent") // made here, drawn at once, never kept
    record Ring(double[] offsets, double[] heights) {

        /** Its area, m². */
        double area() {
            double twice = 0;
            int n = offsets.length;
            for (int i = 0; i < n; i++) {
                int k = (i + 1) % n;
                twice += offsets[i] * heights[k] - offsets[k] * heights[i];
            }
            return Math.abs(twice) / 2;
        }

        /** From its lowest to its highest place, m. */
        double tall() {
            return Arrays.stream(heights).max().orElse(0) - Arrays.stream(heights).min().orElse(0);
        }

        /** A place well inside it: the middle of its upright where it is thickest. */
        double[] inside() {
            int half = offsets.length / 2;
            int best = 0;
            for (int i = 1; i < half; i++) {
                if (thick(i) > thick(best)) {
                    best = i;
                }
            }
            int other = offsets.length - 1 - best;
            return new double[] {offsets[best], (heights[best] + heights[other]) / 2};
        }

        private double thick(int i) {
            return heights[i] - heights[offsets.length - 1 - i];
        }
    }

    /**
     * Rings in which {@code upper} lies above {@code lower}, from one offset to another.
     *
     * @param from offset, m
     * @param to offset, m
     */
    static List<Ring> of(SectionLine upper, SectionLine lower, double from, double to) {
        if (upper.size() < 2 || lower.size() < 2) {
            return List.of();
        }
        double begin = Math.max(from, Math.max(upper.offset(0), lower.offset(0)));
        double end = Math.min(to, Math.min(last(upper), last(lower)));
        var stops = new TreeSet<Double>();
        gather(stops, upper, begin, end);
        gather(stops, lower, begin, end);
        stops.add(begin);
        stops.add(end);
        var rings = new ArrayList<Ring>();
        var run = new Run(rings);
        double left = Double.NaN;
        for (double right : stops) {
            if (left < right && right <= end) {
                step(run, upper, lower, left, right);
            }
            left = right;
        }
        run.close();
        return rings;
    }

    private static double last(SectionLine line) {
        return line.offset(line.size() - 1);
    }

    private static void gather(Set<Double> stops, SectionLine line, double from, double to) {
        for (int i = 0; i < line.size(); i++) {
            if (line.offset(i) >= from && line.offset(i) <= to) {
                stops.add(line.offset(i));
            }
        }
    }

    private static void step(
            Run run, SectionLine upper, SectionLine lower, double left, double right) {
        double middle = (left + right) / 2;
        int u = segment(upper, middle);
        int l = segment(lower, middle);
        double upperLeft = on(upper, u, left);
        double upperRight = on(upper, u, right);
        double lowerLeft = on(lower, l, left);
        double lowerRight = on(lower, l, right);
        double highLeft = upperLeft - lowerLeft;
        double highRight = upperRight - lowerRight;
        if (highLeft > 0 && highRight > 0) {
            run.add(left, upperLeft, lowerLeft);
            run.add(right, upperRight, lowerRight);
        } else if (highLeft > 0 || highRight > 0) {
            double cross = left + (right - left) * highLeft / (highLeft - highRight);
            double height = on(upper, u, cross);
            if (highLeft > 0) {
                run.add(left, upperLeft, lowerLeft);
                run.add(cross, height, height);
                run.close();
            } else {
                run.close();
                run.add(cross, height, height);
                run.add(right, upperRight, lowerRight);
            }
        } else {
            run.close();
        }
    }

    /** The segment that holds an offset strictly inside it. */
    private static int segment(SectionLine line, double offset) {
        int i = 0;
        while (i < line.size() - 2 && line.offset(i + 1) < offset) {
            i++;
        }
        return i;
    }

    private static double on(SectionLine line, int i, double offset) {
        double wide = line.offset(i + 1) - line.offset(i);
        double part = wide > 0 ? (offset - line.offset(i)) / wide : 0;
        return line.height(i) + part * (line.height(i + 1) - line.height(i));
    }

    /** Neighbouring pieces joined into one ring. */
    private static final class Run {
        private final List<Ring> rings;
        private final List<double[]> pieces = new ArrayList<>();
        private double thickest;

        Run(List<Ring> rings) {
            this.rings = rings;
        }

        void add(double offset, double upper, double lower) {
            pieces.add(new double[] {offset, upper, lower});
            thickest = Math.max(thickest, upper - lower);
        }

        void close() {
            int n = pieces.size();
            if (n > 1 && thickest > HAIR) {
                double[] offsets = new double[2 * n];
                double[] heights = new double[2 * n];
                for (int i = 0; i < n; i++) {
                    offsets[i] = pieces.get(i)[0];
                    heights[i] = pieces.get(i)[1];
                    offsets[2 * n - 1 - i] = pieces.get(i)[0];
                    heights[2 * n - 1 - i] = pieces.get(i)[2];
                }
                rings.add(new Ring(offsets, heights));
            }
            pieces.clear();
            thickest = 0;
        }
    }
}
