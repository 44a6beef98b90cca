package lanewright.ground;

import java.util.ArrayDeque;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

/** Leaves out triangles that are not ground: beyond the boundary, or long and thin at the rim. */
final class Rim {

    /** Sides looked at to find the usual length: enough to be steady, few enough to be quick. */
    private static final int SAMPLE = 30_000;

    private final Net net;
    private final GroundOptions options;

    Rim(Net net, GroundOptions options) {
        this.net = net;
        this.options = options;
    }

    /** Leaves out every triangle whose middle lies beyond the boundary or in a hole of it. */
    void leaveOutBeyond(Boundary boundary) {
        IndexedPointInAreaLocator outer = locator(boundary.outer());
        var holes = boundary.holes().stream().map(Rim::locator).toList();
        for (int t = 0; t < net.triangles; t++) {
            if (net.isGhost(t)) {
                continue;
            }
            double x = 0;
            double y = 0;
            for (int s = 3 * t; s < 3 * t + 3; s++) {
                x += net.x[net.corner[s]] / 3;
                y += net.y[net.corner[s]] / 3;
            }
            var middle = new Coordinate(x, y);
            boolean inside = outer.locate(middle) != Location.EXTERIOR;
            for (var hole : holes) {
                inside &= hole.locate(middle) == Location.EXTERIOR;
            }
            if (!inside) {
                net.leaveOut(t);
            }
        }
    }

    private static IndexedPointInAreaLocator locator(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i < corners.length; i++) {
            int at = i % ring.size();
            corners[i] = new Coordinate(ring.x(at), ring.y(at));
        }
        return new IndexedPointInAreaLocator(new GeometryFactory().createPolygon(corners));
    }

    /**
     * Leaves out rim triangles by the rule of {@link GroundOptions}, from the rim inward, never
     * past a line; returns how many there were.
     */
    int leaveOutSlivers() {
        double usual = usual();
        double bluntest = StrictMath.cos(StrictMath.toRadians(options.bluntest()));
        var rim = new ArrayDeque<Integer>();
        int begin = net.anyGhost();
        int ghost = begin;
        do {
            rim.add(net.twin[3 * ghost + net.cornerOf(ghost, Mesh.NONE)]);
            ghost = net.turn(ghost, Mesh.NONE);
        } while (ghost != begin);
        int left = 0;
        while (!rim.isEmpty()) {
            int side = rim.remove();
            int t = side / 3;
            if (net.isVoid(t) || net.isLine(side)) {
                continue;
            }
            boolean flat = isFlat(side);
            if (!flat && isSound(side, usual, bluntest)) {
                continue;
            }
            net.leaveOut(t);
            left += flat ? 0 : 1;
            for (int s = 3 * t; s < 3 * t + 3; s++) {
                int next = net.twin[s] / 3;
                if (!net.isGhost(next) && !net.isVoid(next)) {
                    rim.add(net.twin[s]);
                }
            }
        }
        return left;
    }

    /**
     * True if the three corners are on one line within the tolerance, as along the rim of a grid.
     */
    private boolean isFlat(int side) {
        int a = net.start(side);
        int b = net.end(side);
        double high = net.side(a, b, net.corner[side]) / net.distance(a, b);
        return options.bluntest() < 180 && high <= options.samePoint();
    }

    private boolean isSound(int side, double usual, double bluntest) {
        int a = net.start(side);
        int b = net.end(side);
        int c = net.corner[side];
        double length = net.distance(a, b);
        if (length > options.longest() * usual) {
            return false;
        }
        if (length <= options.thinOver() * usual) {
            return true;
        }
        double ax = net.x[a] - net.x[c];
        double ay = net.y[a] - net.y[c];
        double bx = net.x[b] - net.x[c];
        double by = net.y[b] - net.y[c];
        double cosine = (ax * bx + ay * by) / Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
        return cosine > bluntest;
    }

    /** The least length that nine sides in ten do not pass. */
    private double usual() {
        int sides = 3 * net.triangles;
        int step = Math.max(1, sides / SAMPLE);
        double[] lengths = new double[sides / step + 1];
        int count = 0;
        for (int side = 0; side < sides; side += step) {
            if (!net.isGhost(side / 3)) {
                lengths[count++] = net.distance(net.start(side), net.end(side));
            }
        }
        return count == 0
                ? 0
                : new Percentile()
                        .withEstimationType(EstimationType.R_1)
                        .evaluate(lengths, 0, count, 90);
    }
}
