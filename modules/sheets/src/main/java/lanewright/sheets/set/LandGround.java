package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import lanewright.ground.Contour;
import lanewright.ground.Contours;
import lanewright.ground.Ground;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;
import lanewright.sheets.figure.MapScale;
import lanewright.survey.Boundary;
import lanewright.survey.Probe;
import lanewright.survey.Ring;
import lanewright.survey.Survey;

/** What was measured: contours, points, probe holes, and the edge of the survey. */
final class LandGround {

    private static final double FOOT = 0.3048;

    /** More shots than this would hide the map. */
    private static final int MOST_SHOTS = 4000;

    /** Contours closer than this on paper run together, so their interval is widened, pt. */
    private static final double CONTOURS_APART = 7;

    private final Land land;
    private final Survey survey;
    private final Ground ground;
    private final UnitSystem units;

    LandGround(Land land, Survey survey, Ground ground, UnitSystem units) {
        this.land = land;
        this.survey = survey;
        this.ground = ground;
        this.units = units;
    }

    /**
     * Contours, shots and boundary within what is seen.
     *
     * @return height between contours, in shown units
     */
    double draw(MapScale scale, double[] seen) {
        Boundary boundary = survey.boundary();
        if (boundary != null) {
            ring(boundary.outer());
            boundary.holes().forEach(this::ring);
        } else {
            rim();
        }
        double contourStep = contourStep(scale, seen);
        double metre = metre();
        for (Contour contour : Contours.of(ground, contourStep * metre, Progress.NONE)) {
            int n = contour.size();
            double[] x = new double[contour.isClosed() ? n + 1 : n];
            double[] y = new double[x.length];
            boolean inside = false;
            for (int i = 0; i < x.length; i++) {
                x[i] = contour.x(i % n);
                y[i] = contour.y(i % n);
                inside |= x[i] >= seen[0] && x[i] <= seen[2] && y[i] >= seen[1] && y[i] <= seen[3];
            }
            if (inside && n > 1) {
                long level = Math.round(contour.height() / metre / contourStep);
                land.contour(
                        x,
                        y,
                        level % 5 == 0,
                        contour.height(),
                        contourWords(contour.height() / metre));
            }
        }
        shots(seen);
        return contourStep;
    }

    private void ring(Ring ring) {
        double[] x = new double[ring.size()];
        double[] y = new double[ring.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = ring.x(i);
            y[i] = ring.y(i);
        }
        land.ring(Role.BOUNDARY, x, y);
    }

    /** Where the measured ground ends: every side of a triangle that has no neighbour. */
    private void rim() {
        var next = new TreeMap<Integer, Integer>();
        for (int t = 0; t < ground.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                if (ground.neighbour(t, k) < 0) {
                    next.put(ground.corner(t, (k + 1) % 3), ground.corner(t, (k + 2) % 3));
                }
            }
        }
        while (!next.isEmpty()) {
            int start = next.firstKey();
            var x = new ArrayList<Double>();
            var y = new ArrayList<Double>();
            Integer at = start;
            while (at != null) {
                x.add(ground.x(at));
                y.add(ground.y(at));
                at = next.remove(at);
            }
            land.line(Role.BOUNDARY, flat(x), flat(y));
        }
    }

    static double[] flat(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void shots(double[] seen) {
        var places = new ArrayList<double[]>();
        for (int i = 0; i < survey.size() && places.size() <= MOST_SHOTS; i++) {
            double x = survey.x(i);
            double y = survey.y(i);
            if (x > seen[0] && x < seen[2] && y > seen[1] && y < seen[3]) {
                places.add(new double[] {x, y});
            }
        }
        if (places.size() <= MOST_SHOTS) {
            places.forEach(at -> land.shot(at[0], at[1]));
        }
        for (Probe probe : survey.probes()) {
            land.spot(Role.PROBE, probe.x(), probe.y());
            land.label(probe.name(), probe.x(), probe.y(), Role.NOTE, false, 3);
        }
    }

    /** Metres in one of the units in which contours are counted. */
    double metre() {
        return units == UnitSystem.US ? FOOT : 1;
    }

    /** In shown units: 0.5, 1, 2, 5 or 10 times ten, wide enough apart on the steepest land. */
    private double contourStep(MapScale scale, double[] seen) {
        double steepest = steepness(seen);
        double metre = metre();
        for (double step : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100}) {
            if (units == UnitSystem.US && step < 1) {
                continue;
            }
            if (step * metre / steepest * scale.points() >= CONTOURS_APART) {
                return step;
            }
        }
        return 200;
    }

    /** Mean slope of what is seen, rise over run. */
    private double steepness(double[] seen) {
        int n = 24;
        double sum = 0;
        int count = 0;
        double dx = (seen[2] - seen[0]) / n;
        double dy = (seen[3] - seen[1]) / n;
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double x = seen[0] + i * dx;
                double y = seen[1] + k * dy;
                double here = ground.heightAt(x, y);
                double east = ground.heightAt(x + dx, y);
                double north = ground.heightAt(x, y + dy);
                if (Double.isFinite(here + east + north)) {
                    sum += Math.hypot((east - here) / dx, (north - here) / dy);
                    count++;
                }
            }
        }
        return Math.max(0.005, count == 0 ? 0.05 : sum / count);
    }

    static String contourWords(double shown) {
        return Words.fixed(shown, Math.abs(shown - Math.rint(shown)) < 1e-6 ? 0 : 1);
    }
}
