package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the grade may change: stations about evenly apart, with the heights that must be met. A
 * height to pass through lies in the middle of a piece, so that no vertical curve lifts the lane
 * off it.
 */
final class Knots {

    /** Grade changes are about this far apart, m. Our choice: two lengths of a truck. */
    static final double APART = 15;

    /** No closer than this, m: a curve must fit between. */
    static final double LEAST = 6;

    /** No more pieces than this; a longer lane has longer ones. */
    static final int MOST = 80;

    final double[] station;

    /** Height from which levels are counted, m: straight from one fixed height to the next. */
    final double[] base;

    /** Whether the height at a knot is fixed at its base. */
    final boolean[] fixed;

    /** Whether the piece that begins at a knot has a fixed height in its middle. */
    final boolean[] pinned;

    /** Whether the piece that begins at a knot takes up the grade of what is there. */
    final boolean[] tied;

    private Knots(List<Knot> knots) {
        int count = knots.size();
        station = new double[count];
        base = new double[count];
        fixed = new boolean[count];
        pinned = new boolean[count];
        tied = new boolean[count];
        for (int i = 0; i < count; i++) {
            Knot knot = knots.get(i);
            station[i] = knot.station;
            base[i] = knot.height;
            fixed[i] = knot.fixed;
            pinned[i] = knot.pinned;
            tied[i] = knot.tied;
        }
        fillBase();
    }

    private record Knot(
            double station, double height, boolean fixed, boolean pinned, boolean tied) {}

    /**
     * The knots of a lane.
     *
     * @param freeEnd height near which a free end is looked for, m
     * @return empty if the fixed heights lie too near each other for curves between them
     */
    static Optional<Knots> of(GradeLimits limits, double length, double freeEnd) {
        double apart = Math.max(APART, length / MOST);
        List<Knot> fixed = new ArrayList<>();
        fixed.add(new Knot(0, limits.start(), true, false, !Double.isNaN(limits.startGrade())));
        if (!Double.isNaN(limits.startGrade())) {
            double height = limits.start() + limits.startGrade() * limits.tie();
            fixed.add(new Knot(limits.tie(), height, true, false, false));
        }
        for (GradeLimits.Fixed through : limits.through()) {
            double half = Math.ceil(apart / 2 / limits.unit()) * limits.unit();
            fixed.add(
                    new Knot(neat(through.station() - half), through.height(), false, true, false));
            fixed.add(
                    new Knot(
                            neat(through.station() + half), through.height(), false, false, false));
        }
        boolean free = Double.isNaN(limits.end());
        double end = free ? freeEnd : limits.end();
        if (!Double.isNaN(limits.endGrade()) && !free) {
            double height = end - limits.endGrade() * limits.tie();
            fixed.add(new Knot(length - limits.tie(), height, true, false, true));
        }
        fixed.add(new Knot(length, end, !free, false, false));
        List<Knot> all = new ArrayList<>();
        for (int i = 0; i < fixed.size(); i++) {
            Knot knot = fixed.get(i);
            if (i > 0) {
                Knot last = fixed.get(i - 1);
                double gap = knot.station() - last.station();
                boolean whole = last.pinned() || last.tied();
                if (gap < LEAST * 0.999 && !(whole && gap > 0)) {
                    return Optional.empty();
                }
                int pieces = whole ? 1 : Math.max(1, (int) Math.round(gap / apart));
                for (int k = 1; k < pieces; k++) {
                    double even = last.station() + gap * k / pieces;
                    all.add(
                            new Knot(
                                    neat(Math.rint(even / limits.unit()) * limits.unit()),
                                    Double.NaN,
                                    false,
                                    false,
                                    false));
                }
            }
            all.add(knot);
        }
        return Optional.of(new Knots(all));
    }

    /** Without the tail that multiplying leaves: to a micrometre. */
    private static double neat(double metres) {
        return Math.rint(metres * 1e6) / 1e6;
    }

    int size() {
        return station.length;
    }

    double length(int piece) {
        return station[piece + 1] - station[piece];
    }

    /** Between known heights the base runs straight. */
    private void fillBase() {
        int last = 0;
        for (int i = 1; i < base.length; i++) {
            if (!Double.isNaN(base[i])) {
                for (int k = last + 1; k < i; k++) {
                    double share = (station[k] - station[last]) / (station[i] - station[last]);
                    base[k] = base[last] + share * (base[i] - base[last]);
                }
                last = i;
            }
        }
    }
}
