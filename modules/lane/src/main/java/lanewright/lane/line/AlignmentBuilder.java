package lanewright.lane.line;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Alignment.Piece;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** Lays tangents and arcs through intersection points, or says why that cannot be. */
final class AlignmentBuilder {

    /**
     * Points nearer than this give no direction, m. Our choice: well under what a tape can tell.
     */
    private static final double SAME_POINT = 0.001;

    /** Tangents may run into each other by this much through rounding, m. */
    private static final double ROUNDING = 1e-6;

    /** A radius is proposed this much under the largest, so that it still fits when rounded. */
    private static final double SAFE = 0.99;

    /** A line that turns by more than this cannot be told from one that runs back, radians. */
    private static final double BACK = Math.PI - 1e-3;

    private final List<IntersectionPoint> points;
    private final int last;
    private final double[] dx;
    private final double[] dy;
    private final double[] gap;
    private final double[] turn;
    private final double[] tangent;

    AlignmentBuilder(List<IntersectionPoint> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "an alignment needs two points or more, got " + points.size());
        }
        this.points = List.copyOf(points);
        last = points.size() - 1;
        dx = new double[last];
        dy = new double[last];
        gap = new double[last];
        turn = new double[last + 1];
        tangent = new double[last + 1];
    }

    Alignment build() throws DesignRefused {
        directions();
        turns();
        overlaps();
        return lay();
    }

    private void directions() throws DesignRefused {
        for (int i = 0; i < last; i++) {
            IntersectionPoint a = points.get(i);
            IntersectionPoint b = points.get(i + 1);
            gap[i] = Math.hypot(b.x() - a.x(), b.y() - a.y());
            if (gap[i] < SAME_POINT) {
                throw refused(
                        "line-points-coincide",
                        b,
                        Saying.of(
                                "Points {} and {} of the lane lie on one another.",
                                Quantity.count(i + 1),
                                Quantity.count(i + 2)),
                        Saying.plain("Take one of the two out, or move it."));
            }
            dx[i] = (b.x() - a.x()) / gap[i];
            dy[i] = (b.y() - a.y()) / gap[i];
        }
    }

    private void turns() throws DesignRefused {
        for (int i = 1; i < last; i++) {
            double cross = dx[i] * dy[i - 1] - dy[i] * dx[i - 1];
            double dot = dx[i - 1] * dx[i] + dy[i - 1] * dy[i];
            turn[i] = StrictMath.atan2(cross, dot);
            if (Math.abs(turn[i]) > BACK) {
                throw refused(
                        "line-turns-back",
                        points.get(i),
                        Saying.of(
                                "The lane runs back on itself at its point {}.",
                                Quantity.count(i + 1)),
                        Saying.plain("Put more points round the turn."));
            }
            if (Math.abs(turn[i]) < Alignment.STRAIGHT) {
                turn[i] = 0;
            }
            tangent[i] = turn[i] == 0 ? 0 : points.get(i).radius() * Math.abs(cross) / (1 + dot);
        }
    }

    private void overlaps() throws DesignRefused {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            if (tangent[i] + tangent[i + 1] > gap[i] + ROUNDING) {
                findings.add(overlap(i));
            }
        }
        if (!findings.isEmpty()) {
            throw new DesignRefused(findings);
        }
    }

    private Finding overlap(int i) {
        int wide = tangent[i + 1] >= tangent[i] ? i + 1 : i;
        int other = wide == i ? i + 1 : i;
        double left = gap[i] - tangent[other];
        double radius = SAFE * left / tangent[wide] * points.get(wide).radius();
        Saying remedy =
                left > 0
                        ? Saying.of(
                                "Give the curve at point {} a radius of at most {}, or move the"
                                        + " points apart.",
                                Quantity.count(wide + 1),
                                Quantity.length(radius))
                        : Saying.of(
                                "Give the curves at points {} and {} smaller radii, or move the"
                                        + " points apart.",
                                Quantity.count(i + 1),
                                Quantity.count(i + 2));
        IntersectionPoint p = points.get(wide);
        return new Finding(
                "curves-overlap",
                Level.STOP,
                Topic.LINE,
                Where.map(p.x(), p.y()),
                Saying.of(
                        "The curve at point {} of the lane needs {} of straight tangent, but only"
                                + " {} are left for it between points {} and {}.",
                        Quantity.count(wide + 1),
                        Quantity.length(tangent[wide]),
                        Quantity.length(Math.max(left, 0)),
                        Quantity.count(i + 1),
                        Quantity.count(i + 2)),
                Quantity.length(tangent[wide]),
                Quantity.length(Math.max(left, 0)),
                "your plan",
                remedy);
    }

    private Alignment lay() {
        List<Piece> pieces = new ArrayList<>();
        List<Arc> arcs = new ArrayList<>();
        double station = 0;
        for (int i = 0; i < last; i++) {
            double straight = gap[i] - tangent[i] - tangent[i + 1];
            IntersectionPoint a = points.get(i);
            if (straight > ROUNDING) {
                pieces.add(
                        new Piece(
                                station,
                                station + straight,
                                a.x() + tangent[i] * dx[i],
                                a.y() + tangent[i] * dy[i],
                                dx[i],
                                dy[i],
                                0));
                station += straight;
            }
            int next = i + 1;
            if (tangent[next] > 0) {
                IntersectionPoint b = points.get(next);
                double arc = b.radius() * Math.abs(turn[next]);
                pieces.add(
                        new Piece(
                                station,
                                station + arc,
                                b.x() - tangent[next] * dx[i],
                                b.y() - tangent[next] * dy[i],
                                dx[i],
                                dy[i],
                                Math.signum(turn[next]) / b.radius()));
                arcs.add(new Arc(next, station, station + arc, b.radius(), turn[next]));
                station += arc;
            }
        }
        return new Alignment(points, arcs, pieces.toArray(new Piece[0]));
    }

    private static DesignRefused refused(
            String code, IntersectionPoint at, Saying says, Saying remedy) {
        return new DesignRefused(
                List.of(
                        Finding.of(
                                code,
                                Level.STOP,
                                Topic.LINE,
                                Where.map(at.x(), at.y()),
                                says,
                                remedy)));
    }
}
