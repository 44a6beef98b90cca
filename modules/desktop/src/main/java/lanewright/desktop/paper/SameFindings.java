package lanewright.desktop.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
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

    private static final double FAR = Double.POSITIVE_INFINITY;

    SameFindings {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
        both = List.copyOf(both);
    }

    /** One matter as it was and as it is. */
    record Pair(Finding then, Finding now) {}

    static SameFindings of(List<Finding> then, List<Finding> now) {
        Matching matching = new Matching(then, now);
        // First what says the same but for its numbers: a left ditch is no right one.
        matching.match((was, is) -> alike(was, is) ? away(was.where(), is.where()) : FAR);
        matching.match((was, is) -> sides(was, is) ? away(was.where(), is.where()) : FAR);
        matching.match((was, is) -> isOfTheWhole(is) && alike(was, is) ? 0 : FAR);
        return matching.result();
    }

    /** How far two findings of one code are from being the same. */
    private interface Apart {
        double of(Finding was, Finding is);
    }

    /** Pairs findings, the ones nearest to each other first. */
    private static final class Matching {
        private final List<Finding> gone;
        private final List<Finding> now;
        private final Map<Integer, Finding> pairs = new TreeMap<>();

        Matching(List<Finding> then, List<Finding> now) {
            this.gone = new ArrayList<>(then);
            this.now = now;
        }

        void match(Apart apart) {
            while (true) {
                int bestNow = -1;
                int bestThen = -1;
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i < now.size(); i++) {
                    for (int k = 0; k < gone.size() && !pairs.containsKey(i); k++) {
                        if (gone.get(k).code().equals(now.get(i).code())) {
                            double away = apart.of(gone.get(k), now.get(i));
                            if (away <= NEAR && away < least) {
                                least = away;
                                bestNow = i;
                                bestThen = k;
                            }
                        }
                    }
                }
                if (bestNow < 0) {
                    return;
                }
                pairs.put(bestNow, gone.remove(bestThen));
            }
        }

        SameFindings result() {
            List<Finding> come = new ArrayList<>();
            List<Pair> both = new ArrayList<>();
            for (int i = 0; i < now.size(); i++) {
                Finding was = pairs.get(i);
                if (was == null) {
                    come.add(now.get(i));
                } else {
                    both.add(new Pair(was, now.get(i)));
                }
            }
            return new SameFindings(gone, come, both);
        }
    }

    /**
     * Whether a finding is about an amount of the whole plan, such as stone that runs out: then its
     * place is part of what is found, and moves with the amount.
     */
    private static boolean isOfTheWhole(Finding finding) {
        return switch (finding.topic()) {
            case GRADE, EARTH, STONE, ORDER -> true;
            case GROUND, LINE, SHAPE, WATER, FIELD -> false;
        };
    }

    /** Whether two findings say the same but for their numbers. */
    private static boolean alike(Finding one, Finding other) {
        return bare(one).equals(bare(other));
    }

    private static String bare(Finding finding) {
        return finding.says().in(UnitSystem.METRIC).replaceAll("[0-9][0-9.,+]*", "0");
    }

    /** Whether two findings name the same sides of the lane. */
    private static boolean sides(Finding one, Finding other) {
        String was = bare(one);
        String is = bare(other);
        return was.contains("left") == is.contains("left")
                && was.contains("right") == is.contains("right");
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
