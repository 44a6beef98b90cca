package lanewright.lane.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * The height of the finished surface at the alignment, by station: straight grades joined by
 * parabolas of equal tangents, or meeting in a break. Immutable.
 *
 * <p>On a parabola of length L between grades g1 and g2 that starts at height e0, the height at x
 * from its start is e0 + g1 x + (g2 − g1) x² / 2L: common to every surveying text.
 *
 * <p>Where the grade breaks, {@link #grade} tells what holds just after and {@link #gradeBefore}
 * just before; at the ends both tell the one that there is.
 */
public final class Profile {

    /**
     * A station this little past an end is read off the end's own grade, m: written stations are
     * rounded to a hundredth of a foot.
     */
    public static final double END = 0.005;

    /** Curves may run into each other by this much through rounding, m. */
    private static final double ROUNDING = 1e-6;

    private final List<VerticalPoint> points;
    private final double[] start;
    private final double[] height;
    private final double[] grade;
    private final double[] rate;
    private final double to;

    private Profile(
            List<VerticalPoint> points,
            double[] start,
            double[] height,
            double[] grade,
            double[] rate) {
        this.points = points;
        this.start = start;
        this.height = height;
        this.grade = grade;
        this.rate = rate;
        this.to = points.get(points.size() - 1).station();
    }

    /**
     * The profile through vertical points.
     *
     * @param points where grades meet, at least two, stations increasing; the first and last are
     *     the ends and have no curve
     * @throws DesignRefused if stations do not increase, or curves overlap or run past an end
     */
    public static Profile of(List<VerticalPoint> points) throws DesignRefused {
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "a profile needs two points or more, got " + points.size());
        }
        List<VerticalPoint> kept = List.copyOf(points);
        check(kept);
        return lay(kept);
    }

    private static void check(List<VerticalPoint> points) throws DesignRefused {
        List<Finding> findings = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            VerticalPoint a = points.get(i - 1);
            VerticalPoint b = points.get(i);
            if (!(b.station() - a.station() > ROUNDING)) {
                findings.add(
                        Finding.of(
                                "grade-points-out-of-order",
                                Level.STOP,
                                Topic.GRADE,
                                Where.station(b.station()),
                                Saying.of(
                                        "The grade point at {} does not lie past the one before"
                                                + " it, at {}.",
                                        Quantity.station(b.station()),
                                        Quantity.station(a.station())),
                                Saying.plain("Put the grade points in order of station.")));
            } else if (curve(points, i - 1) / 2 + curve(points, i) / 2
                    > b.station() - a.station() + ROUNDING) {
                findings.add(overlap(a, b, curve(points, i - 1), curve(points, i)));
            }
        }
        if (!findings.isEmpty()) {
            throw new DesignRefused(findings);
        }
    }

    private static Finding overlap(VerticalPoint a, VerticalPoint b, double ca, double cb) {
        double room = b.station() - a.station();
        return new Finding(
                "grade-curves-overlap",
                Level.STOP,
                Topic.GRADE,
                Where.stretch(a.station(), b.station()),
                Saying.of(
                        "The grade curves at {} and {} need {} between them, but only {} are"
                                + " there.",
                        Quantity.station(a.station()),
                        Quantity.station(b.station()),
                        Quantity.length((ca + cb) / 2),
                        Quantity.length(room)),
                Quantity.length((ca + cb) / 2),
                Quantity.length(room),
                "your plan",
                Saying.of(
                        "Make both curves together at most {} long, or move the points apart.",
                        Quantity.length(2 * room)));
    }

    /** Length of the curve at point {@code i}; the ends have none. */
    private static double curve(List<VerticalPoint> points, int i) {
        return i == 0 || i == points.size() - 1 ? 0 : points.get(i).curve();
    }

    private static Profile lay(List<VerticalPoint> points) {
        int most = 2 * points.size();
        double[] start = new double[most];
        double[] height = new double[most];
        double[] grade = new double[most];
        double[] rate = new double[most];
        int n = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            VerticalPoint a = points.get(i);
            VerticalPoint b = points.get(i + 1);
            double slope = slope(a, b);
            double from = a.station() + curve(points, i) / 2;
            double end = b.station() - curve(points, i + 1) / 2;
            if (end - from > ROUNDING) {
                start[n] = from;
                height[n] = a.height() + slope * curve(points, i) / 2;
                grade[n++] = slope;
            }
            double curve = curve(points, i + 1);
            if (curve > ROUNDING) {
                start[n] = end;
                height[n] = b.height() - slope * curve / 2;
                grade[n] = slope;
                rate[n++] = (slope(b, points.get(i + 2)) - slope) / curve;
            }
        }
        return new Profile(
                points,
                Arrays.copyOf(start, n),
                Arrays.copyOf(height, n),
                Arrays.copyOf(grade, n),
                Arrays.copyOf(rate, n));
    }

    private static double slope(VerticalPoint a, VerticalPoint b) {
        return (b.height() - a.height()) / (b.station() - a.station());
    }

    /** The points that it was made from. */
    public List<VerticalPoint> points() {
        return points;
    }

    /** First station, m. */
    public double from() {
        return start[0];
    }

    /** Last station, m. */
    public double to() {
        return to;
    }

    /** Height of the finished surface at the alignment, m. */
    public double height(double station) {
        int i = after(station);
        double x = station - start[i];
        return height[i] + x * (grade[i] + rate[i] * x / 2);
    }

    /** Grade, rise over run, positive uphill up-station. */
    public double grade(double station) {
        int i = after(station);
        return grade[i] + rate[i] * (station - start[i]);
    }

    /** Grade just before a station, rise over run. */
    public double gradeBefore(double station) {
        int i = before(station);
        return grade[i] + rate[i] * (station - start[i]);
    }

    /** Change of grade with station, rise over run per metre; zero on a straight grade. */
    public double rate(double station) {
        return rate[after(station)];
    }

    /** Stations where straight grades and parabolas join or the grade breaks, ends left out. */
    public double[] joins() {
        return Arrays.copyOfRange(start, 1, start.length);
    }

    /** Highest and lowest places between the ends, in station order. */
    public List<TurningPoint> turningPoints() {
        return new Turns().list();
    }

    /** Follows the sign of the grade along the profile; lives for one question. */
    private final class Turns {
        private final List<TurningPoint> found = new ArrayList<>();
        private double sign;
        private double until;

        List<TurningPoint> list() {
            for (int i = 0; i < start.length; i++) {
                double end = i + 1 < start.length ? start[i + 1] : to;
                double last = grade[i] + rate[i] * (end - start[i]);
                boolean curved = rate[i] != 0;
                see(start[i], curved && grade[i] == 0 ? last : grade[i]);
                if (grade[i] * last < 0) {
                    double top = start[i] - grade[i] / rate[i];
                    see(top, grade[i]);
                    see(top, last);
                }
                see(end, curved && last == 0 ? grade[i] : last);
            }
            return found;
        }

        private void see(double station, double slope) {
            if (slope == 0) {
                return;
            }
            if (sign * slope < 0) {
                found.add(new TurningPoint(until, station, height(station), slope > 0));
            }
            sign = Math.signum(slope);
            until = station;
        }
    }

    private int after(double station) {
        check(station);
        int i = 0;
        while (i < start.length - 1 && station >= start[i + 1]) {
            i++;
        }
        return i;
    }

    private int before(double station) {
        check(station);
        int i = start.length - 1;
        while (i > 0 && station <= start[i]) {
            i--;
        }
        return i;
    }

    private void check(double station) {
        if (!(station >= start[0] - END && station <= to + END)) {
            throw new IllegalArgumentException(
                    "station " + station + " is not on a profile from " + start[0] + " to " + to);
        }
    }

    /** Equal if made from equal points. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Profile that && points.equals(that.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }
}
