package lanewright.desktop.paper;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * Which findings two plans share: those of one code at one place, whatever numbers they tell.
 *
 * @param gone only of the one before, in its order
 * @param come only of the one now, in its order
 * @param both of both, in the order of the one now
 */
record SameFindings(List<Finding> gone, List<Finding> come, List<Pair> both) {

    /** How far a place may move and still be the same, m. */
    private static final double NEAR = 10;

    SameFindings {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
        both = List.copyOf(both);
    }

    /** One matter as it was and as it is. */
    record Pair(Finding then, Finding now) {}

    static SameFindings of(List<Finding> then, List<Finding> now) {
        List<Finding> gone = new ArrayList<>(then);
        List<Finding> come = new ArrayList<>();
        List<Pair> both = new ArrayList<>();
        for (Finding each : now) {
            int best = nearest(gone, each);
            if (best < 0) {
                come.add(each);
            } else {
                both.add(new Pair(gone.remove(best), each));
            }
        }
        return new SameFindings(gone, come, both);
    }

    /** The nearest finding of the same code, or -1 if none is near. */
    private static int nearest(List<Finding> among, Finding to) {
        int best = -1;
        double least = NEAR;
        for (int i = 0; i < among.size(); i++) {
            Finding each = among.get(i);
            if (each.code().equals(to.code())) {
                double away = away(each.where(), to.where());
                if (away <= least && (best < 0 || away < least)) {
                    best = i;
                    least = away;
                }
            }
        }
        return best;
    }

    /** How far two places lie apart, m; without end where they cannot be the same. */
    private static double away(Where one, Where other) {
        double across = apart(one.offset(), other.offset());
        Double from = one.from();
        Double otherFrom = other.from();
        if (from != null && otherFrom != null) {
            double to = end(one.to(), from);
            double otherTo = end(other.to(), otherFrom);
            double gap = Math.max(0, Math.max(otherFrom - to, from - otherTo));
            // Stretches that overlap are the nearer the more alike they are.
            double unlike = Math.abs(from - otherFrom) + Math.abs(to - otherTo);
            return Math.hypot(gap, across) + unlike / (1 + unlike) / 2;
        }
        if (from != null || otherFrom != null) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.hypot(apart(one.x(), other.x()), apart(one.y(), other.y()));
    }

    private static double end(@Nullable Double to, double from) {
        return to == null ? from : to;
    }

    private static double apart(@Nullable Double one, @Nullable Double other) {
        if (one == null || other == null) {
            return one == null && other == null ? 0 : Double.POSITIVE_INFINITY;
        }
        return Math.abs(one - other);
    }
}
