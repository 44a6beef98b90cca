package lanewright.measure;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The known name that a mistyped one is nearest to.
 *
 * <p>Nearest by the fewest letters put in, left out, changed, or swapped with their neighbour
 * (optimal string alignment: Damerau, Communications of the ACM 7(3), 1964, with no letter touched
 * twice). Upper and lower case count as the same.
 */
public final class Nearest {

    /** Longer names are not compared, so that a hostile one costs nothing. */
    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The nearest of {@code known}, if it is near enough to be meant: at most one slip in three
     * letters of the longer name, and one slip is always allowed where a letter is left right.
     *
     * @param name what was written
     * @param known what it could be; of two that are equally near the first is taken
     */
    public static Optional<String> to(String name, Collection<String> known) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty() || wanted.length() > LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int fewest = Integer.MAX_VALUE;
        for (String candidate : known) {
            if (candidate.length() > LONGEST) {
                continue;
            }
            int slips = slips(wanted, candidate.toLowerCase(Locale.ROOT));
            int longer = Math.max(wanted.length(), candidate.length());
            boolean near = slips < longer && slips <= Math.max(1, longer / 3);
            if (near && slips < fewest) {
                fewest = slips;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Fewest slips that turn {@code a} into {@code b}. Costs the product of their lengths. */
    static int slips(String a, String b) {
        int[] twoBack = new int[b.length() + 1];
        int[] back = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            back[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(back[j - 1] + change, Math.min(back[j], now[j - 1]) + 1);
                boolean swapped =
                        i > 1
                                && j > 1
                                && a.charAt(i - 1) == b.charAt(j - 2)
                                && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    now[j] = Math.min(now[j], twoBack[j - 2] + 1);
                }
            }
            int[] free = twoBack;
            twoBack = back;
            back = now;
            now = free;
        }
        return back[b.length()];
    }
}
