package lanewright.lane.volume;

import java.util.ArrayList;
import java.util.List;

/**
 * One quantity along the lane: its area at every section, its volume in every span between two, and
 * running totals added in station order. A span between two sections at one station has no length
 * and no volume. Immutable.
 */
public final class Running {

    private final String name;
    private final State state;
    private final double[] station;
    private final double[] area;
    private final double[] carried;
    private final double[] plain;
    private final double[] corrected;

    private Running(
            String name,
            State state,
            double[] station,
            double[] area,
            double[] carried,
            double[] plain,
            double[] corrected) {
        this.name = name;
        this.state = state;
        this.station = station;
        this.area = area;
        this.carried = carried;
        this.plain = plain;
        this.corrected = corrected;
    }

    /**
     * A quantity from its sections.
     *
     * @param name what it is, in the owner's words
     * @param state the state it is measured in
     * @param station stations of the sections, m, never decreasing
     * @param area areas, m², zero or more, as many
     * @param centroid offsets of the areas' centroids, m, positive right, as many
     * @param curvature curvature of the alignment from each section to the next, 1/m, positive to
     *     the right, one fewer
     */
    public static Running of(
            String name,
            State state,
            double[] station,
            double[] area,
            double[] centroid,
            double[] curvature) {
        int n = station.length;
        if (area.length != n || centroid.length != n || curvature.length != Math.max(0, n - 1)) {
            throw new IllegalArgumentException("areas and stations must match");
        }
        double[] carried = new double[2 * n];
        double[] plain = new double[n];
        double[] corrected = new double[n];
        for (int i = 1; i < n; i++) {
            double length = station[i] - station[i - 1];
            double bend = curvature[i - 1];
            plain[i] = plain[i - 1] + AverageEndArea.volume(area[i - 1], area[i], length);
            corrected[i] =
                    corrected[i - 1]
                            + AverageEndArea.alongCurve(
                                    area[i - 1],
                                    centroid[i - 1],
                                    area[i],
                                    centroid[i],
                                    bend,
                                    length);
            carried[2 * i - 1] = area[i - 1] * (1 - centroid[i - 1] * bend);
            carried[2 * i] = area[i] * (1 - centroid[i] * bend);
        }
        return new Running(name, state, station.clone(), area.clone(), carried, plain, corrected);
    }

    /** A quantity of one area all along a straight stretch, m and m². */
    public static Running even(String name, State state, double from, double to, double area) {
        return of(
                name,
                state,
                new double[] {from, to},
                new double[] {area, area},
                new double[2],
                new double[1]);
    }

    /** What it is, in the owner's words. */
    public String name() {
        return name;
    }

    /** The state it is measured in. */
    public State state() {
        return state;
    }

    /** The whole. */
    public Volume volume() {
        return new Volume(name, state, plain(), corrected());
    }

    /** The whole by average end area, m³. */
    public double plain() {
        return plain.length == 0 ? 0 : plain[plain.length - 1];
    }

    /** The whole with curves corrected, m³. */
    public double corrected() {
        return corrected.length == 0 ? 0 : corrected[corrected.length - 1];
    }

    /** Number of sections. */
    public int size() {
        return station.length;
    }

    /** Station of section {@code i}, m. */
    public double station(int i) {
        return station[i];
    }

    /** Area in section {@code i}, m². */
    public double area(int i) {
        return area[i];
    }

    /** Running total by average end area as far as section {@code i}, m³. */
    public double plainTo(int i) {
        return plain[i];
    }

    /** Running total with curves corrected as far as section {@code i}, m³. */
    public double correctedTo(int i) {
        return corrected[i];
    }

    /** Station where it begins, m, or NaN where there is none of it. */
    public double begin() {
        for (int i = 1; i < corrected.length; i++) {
            if (corrected[i] > 0) {
                return station[i - 1];
            }
        }
        return Double.NaN;
    }

    /** Station where it ends, m, or NaN where there is none of it. */
    public double end() {
        for (int i = corrected.length - 1; i > 0; i--) {
            if (corrected[i] > corrected[i - 1]) {
                return station[i];
            }
        }
        return Double.NaN;
    }

    /**
     * Running total with curves corrected as far as a station, m³; areas change straight between.
     */
    public double correctedAt(double at) {
        int n = station.length;
        if (n == 0 || !(at > station[0])) {
            return 0;
        }
        for (int i = 1; i < n; i++) {
            if (at < station[i]) {
                double x = at - station[i - 1];
                return corrected[i - 1] + partOf(i, x);
            }
        }
        return corrected[n - 1];
    }

    private double partOf(int i, double x) {
        double first = carried[2 * i - 1];
        double grow = (carried[2 * i] - first) / (station[i] - station[i - 1]);
        return x * (first + grow * x / 2);
    }

    /**
     * The first station by which a volume has been reached, curves corrected.
     *
     * @param volume m³; zero or less is reached where it begins
     * @return m, or NaN if the whole is less or nothing
     */
    public double stationOf(double volume) {
        int n = station.length;
        if (n == 0 || !(volume <= corrected[n - 1])) {
            return Double.NaN;
        }
        if (volume <= 0) {
            return begin();
        }
        for (int i = 1; i < n; i++) {
            if (volume <= corrected[i]) {
                return station[i - 1] + lengthFor(i, volume - corrected[i - 1]);
            }
        }
        return station[n - 1];
    }

    /** Solves x (first + grow x / 2) = v in the form that does not cancel. */
    private double lengthFor(int i, double v) {
        double first = carried[2 * i - 1];
        double length = station[i] - station[i - 1];
        double grow = (carried[2 * i] - first) / length;
        double root = Math.sqrt(Math.max(0, first * first + 2 * grow * v));
        double x = first + root > 0 ? 2 * v / (first + root) : length;
        return Math.min(Math.max(x, 0), length);
    }

    /** Spans in which it runs out to nothing, with what the pyramid would give. */
    public List<RunOut> runOuts() {
        List<RunOut> found = new ArrayList<>();
        for (int i = 1; i < station.length; i++) {
            double length = station[i] - station[i - 1];
            boolean out = area[i - 1] == 0 != (area[i] == 0);
            if (out && length > 0) {
                double top = Math.max(area[i - 1], area[i]);
                found.add(
                        new RunOut(
                                station[i - 1],
                                station[i],
                                AverageEndArea.volume(top, 0, length),
                                AverageEndArea.pyramid(top, length)));
            }
        }
        return found;
    }

    /** The whole by average end area, but pyramids where it runs out to nothing, m³. */
    public double withPyramids() {
        double sum = 0;
        for (int i = 1; i < station.length; i++) {
            double length = station[i] - station[i - 1];
            sum +=
                    area[i - 1] == 0 || area[i] == 0
                            ? AverageEndArea.pyramid(area[i - 1] + area[i], length)
                            : AverageEndArea.volume(area[i - 1], area[i], length);
        }
        return sum;
    }
}
