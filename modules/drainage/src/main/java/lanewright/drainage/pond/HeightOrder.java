package lanewright.drainage.pond;

import java.util.Arrays;
import lanewright.measure.Progress;

/**
 * Numbers sorted from low to high, keeping equal ones in the order of their index.
 *
 * <p>A radix sort over the 64 bits of the double, 16 bits a pass: a million heights take a few
 * hundredths of a second, and no objects.
 */
final class HeightOrder {

    private static final int BITS = 16;
    private static final int BUCKETS = 1 << BITS;

    private HeightOrder() {}

    /**
     * The indices of {@code heights} from the lowest to the highest.
     *
     * @throws IllegalArgumentException if a height is not a number
     */
    static int[] of(double[] heights) {
        return of(heights, Progress.NONE);
    }

    /** The same, asking {@code progress} whether to go on. */
    static int[] of(double[] heights, Progress progress) {
        int n = heights.length;
        long[] keys = new long[n];
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            keys[i] = key(heights[i]);
            order[i] = i;
        }
        long[] sortedKeys = new long[n];
        int[] sorted = new int[n];
        int[] starts = new int[BUCKETS];
        for (int shift = 0; shift < Long.SIZE; shift += BITS) {
            progress.check();
            Arrays.fill(starts, 0);
            for (long key : keys) {
                starts[bucket(key, shift)]++;
            }
            if (n > 0 && starts[bucket(keys[0], shift)] == n) {
                continue; // all alike in these bits
            }
            int at = 0;
            for (int b = 0; b < BUCKETS; b++) {
                int count = starts[b];
                starts[b] = at;
                at += count;
            }
            for (int i = 0; i < n; i++) {
                int to = starts[bucket(keys[i], shift)]++;
                sortedKeys[to] = keys[i];
                sorted[to] = order[i];
            }
            long[] spareKeys = keys;
            keys = sortedKeys;
            sortedKeys = spareKeys;
            int[] spare = order;
            order = sorted;
            sorted = spare;
        }
        return order;
    }

    private static int bucket(long key, int shift) {
        return (int) (key >>> shift) & (BUCKETS - 1);
    }

    /** Bits that sort, unsigned, as the doubles do; minus zero as zero. */
    private static long key(double height) {
        if (Double.isNaN(height)) {
            throw new IllegalArgumentException("a height is not a number");
        }
        long bits = Double.doubleToLongBits(height + 0.0);
        return bits < 0 ? ~bits : bits | Long.MIN_VALUE;
    }
}
