package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * Consecutive sections that have something in common.
 *
 * @param first number of the first
 * @param last number of the last, not before the first
 */
record Run(int first, int last) {

    /** The longest runs of numbers below {@code count} for which {@code holds}. */
    static List<Run> of(int count, IntPredicate holds) {
        List<Run> runs = new ArrayList<>();
        int first = -1;
        for (int i = 0; i <= count; i++) {
            boolean now = i < count && holds.test(i);
            if (now && first < 0) {
                first = i;
            } else if (!now && first >= 0) {
                runs.add(new Run(first, i - 1));
                first = -1;
            }
        }
        return runs;
    }

    /**
     * Where the run begins: halfway from the section before it, for a section speaks for the lane
     * halfway to its neighbours.
     *
     * @param station station of a section by its number, m
     */
    double from(IntToDoubleFunction station) {
        double at = station.applyAsDouble(first);
        return first == 0 ? at : (station.applyAsDouble(first - 1) + at) / 2;
    }

    /**
     * Where the run ends: halfway to the section after it.
     *
     * @param station station of a section by its number, m
     * @param count how many sections there are
     */
    double to(IntToDoubleFunction station, int count) {
        double at = station.applyAsDouble(last);
        return last == count - 1 ? at : (at + station.applyAsDouble(last + 1)) / 2;
    }
}
