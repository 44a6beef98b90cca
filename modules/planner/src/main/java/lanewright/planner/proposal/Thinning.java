package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes out points of a grade that change it by less than a machine can hold, so that few are left
 * to stake. No limit is broken by it, and the lane climbs and falls where it did before.
 */
final class Thinning {

    /** A grade may move by this much, m: 2 in. Our choice. */
    private static final double MOVED = 0.05;

    private final Knots knots;
    private final double[] heights;
    private final GradeLimits limits;
    private final List<Integer> kept = new ArrayList<>();

    private Thinning(Knots knots, double[] heights, GradeLimits limits) {
        this.knots = knots;
        this.heights = heights;
        this.limits = limits;
        for (int i = 0; i < heights.length; i++) {
            kept.add(i);
        }
    }

    /** Numbers of the knots that stay, in order, the ends among them. */
    static List<Integer> of(Knots knots, double[] heights, GradeLimits limits) {
        var thinning = new Thinning(knots, heights, limits);
        while (thinning.takeOne()) {
            // one at a time, the one that matters least
        }
        return thinning.kept;
    }

    private boolean takeOne() {
        int least = -1;
        double leastMoved = MOVED;
        for (int k = 1; k + 1 < kept.size(); k++) {
            int i = kept.get(k);
            boolean held = knots.fixed[i] || knots.pinned[i] || knots.pinned[i - 1];
            if (!held && keepsLimits(k)) {
                double moved = moved(kept.get(k - 1), kept.get(k + 1));
                if (moved < leastMoved) {
                    leastMoved = moved;
                    least = k;
                }
            }
        }
        if (least < 0) {
            return false;
        }
        kept.remove(least);
        return true;
    }

    /** How far the grade moves at most between two knots if all between are taken out, m. */
    private double moved(int from, int to) {
        double grade = grade(from, to);
        double moved = 0;
        for (int i = from + 1; i < to; i++) {
            double straight = heights[from] + grade * (knots.station[i] - knots.station[from]);
            moved = Math.max(moved, Math.abs(straight - heights[i]));
        }
        return moved;
    }

    /** Whether the grade without the k-th of the kept points keeps to the limits. */
    private boolean keepsLimits(int k) {
        int a = kept.get(k - 1);
        int b = kept.get(k);
        int c = kept.get(k + 1);
        double grade = grade(a, c);
        boolean sameWay = grade * grade(a, b) > 0 && grade * grade(b, c) > 0;
        double steep = Math.abs(grade);
        if (!sameWay || steep > limits.steepest() || steep < limits.flattest()) {
            return false;
        }
        return changeFits(k - 1, k - 2 >= 0 ? grade(kept.get(k - 2), a) : grade, grade, a, c)
                && changeFits(
                        k + 1,
                        grade,
                        k + 2 < kept.size() ? grade(c, kept.get(k + 2)) : grade,
                        a,
                        c);
    }

    /**
     * Whether the curve at a kept point has room beside a new piece from {@code a} to {@code c}.
     */
    private boolean changeFits(int k, double before, double after, int a, int c) {
        if (k <= 0 || k >= kept.size() - 1 || limits.curve() == 0) {
            return true;
        }
        int other = kept.get(k) == a ? kept.get(k - 1) : kept.get(k + 1);
        double room =
                Math.min(
                        knots.station[c] - knots.station[a],
                        Math.abs(knots.station[other] - knots.station[kept.get(k)]));
        return Math.abs(after - before) * limits.curve() <= room - limits.unit();
    }

    private double grade(int from, int to) {
        return (heights[to] - heights[from]) / (knots.station[to] - knots.station[from]);
    }
}
