package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

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
}
