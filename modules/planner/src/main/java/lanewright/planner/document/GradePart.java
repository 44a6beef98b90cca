package lanewright.planner.document;

import java.util.List;

/**
 * What grade the lane takes: its limits, the heights it must meet, and the grade itself once one is
 * laid.
 *
 * @param steepest greatest grade allowed, rise over run
 * @param flattest least grade wanted, rise over run, so that water runs; not held at the turning
 *     points of curves
 * @param edgeAboveGround how high the lane's edge is wanted above the higher ground beside it, m
 * @param curvePerPercent least length of vertical curve for each percent (0.01) that the grade
 *     changes, m
 * @param through heights it must pass through besides its ends
 * @param sagOutlets where water is led away, so that a low point may lie there
 * @param points where its grades meet; empty until one is laid
 * @param reasons why the points lie where they do, in the proposal's words
 */
public record GradePart(
        double steepest,
        double flattest,
        double edgeAboveGround,
        double curvePerPercent,
        List<Through> through,
        List<Outlet> sagOutlets,
        List<Point> points,
        List<String> reasons) {
    /** Copies the lists and checks the ranges. */
    public GradePart {
        through = List.copyOf(through);
        sagOutlets = List.copyOf(sagOutlets);
        points = List.copyOf(points);
        reasons = List.copyOf(reasons);
        if (!(steepest > 0 && steepest <= 0.4)) {
            throw new IllegalArgumentException(
                    "the steepest grade must be over 0 and at most 40 %");
        }
        if (!(flattest >= 0 && flattest < steepest)) {
            throw new IllegalArgumentException(
                    "the flattest grade must be 0 or more, and less than the steepest");
        }
        if (!(edgeAboveGround >= 0 && edgeAboveGround <= 3)) {
            throw new IllegalArgumentException("the edge above the ground must be 0 to 3 m");
        }
        if (!(curvePerPercent >= 0 && curvePerPercent <= 500)) {
            throw new IllegalArgumentException("the curve must be 0 to 500 m per percent");
        }
        if (points.size() == 1) {
            throw new IllegalArgumentException("a grade needs two points, or none yet");
        }
    }

    /** The same limits with a grade laid. */
    public GradePart laid(List<Point> newPoints, List<String> newReasons) {
        return new GradePart(
                steepest,
                flattest,
                edgeAboveGround,
                curvePerPercent,
                through,
                sagOutlets,
                newPoints,
                newReasons);
    }

    /**
     * A height that the finished surface must pass through at the alignment.
     *
     * @param station m
     * @param height m above the datum
     */
    public record Through(double station, double height) {
        /** Checks that both are finite. */
        public Through {
            if (!Double.isFinite(station) || !Double.isFinite(height)) {
                throw new IllegalArgumentException("station and height must be finite");
            }
        }
    }

    /**
     * A place where water is led out of a low point of the lane.
     *
     * @param station m
     * @param how how it gets away, such as {@code pipe} or {@code dip with outlet}
     */
    public record Outlet(double station, String how) {
        /** Checks that the station is finite and something is said. */
        public Outlet {
            if (!Double.isFinite(station) || how.isBlank()) {
                throw new IllegalArgumentException("say where, and how the water gets away");
            }
        }
    }

    /**
     * A point where two grades meet, or an end.
     *
     * @param station m; positive infinity for the end of the lane
     * @param height m above the datum
     * @param curve length in plan of the curve centred on it, m
     */
    public record Point(double station, double height, double curve) {
        /** Checks the ranges. */
        public Point {
            if (!(station >= 0) || !Double.isFinite(height) || !(curve >= 0 && curve <= 10_000)) {
                throw new IllegalArgumentException(
                        "station and curve must be 0 or more and the height finite");
            }
        }
    }
}
