package lanewright.ground;

/**
 * Order of points along a Hilbert curve: points that follow each other lie near each other, so that
 * a triangulation that takes them in turn only ever walks a few steps.
 */
final class Order {

    /** Steps of the curve along each axis, as a power of two. */
    private static final int BITS = 15;

    /** Bits sorted by at a time. */
    private static final int DIGIT = 10;

    /**
     * For each way the curve is turned (1 mirrored on the rising diagonal, 2 turned half round, 3
     * both) and each quadrant (left lower, left upper, right lower, right upper): which step of
     * four it is, and four times the turn inside it.
     */
    private static final int[] STEPS = steps();

    private static int[] steps() {
        int[] steps = new int[16];
        for (int turned = 0; turned < 4; turned++) {
            for (int quadrant = 0; quadrant < 4; quadrant++) {
                int x = quadrant >> 1;
                int y = quadrant & 1;
                if ((turned & 2) != 0) {
                    x = 1 - x;
                    y = 1 - y;
                }
                if ((turned & 1) != 0) {
                    int swap = x;
                    x = y;
                    y = swap;
                }
                int step = x == 0 ? y : 3 - y;
                int inner = step == 0 ? turned ^ 1 : step == 3 ? turned ^ 3 : turned;
                steps[turned << 2 | quadrant] = inner << 2 | step;
            }
        }
        return steps;
    }

    private Order() {}

    /** Numbers of the points named in {@code chosen}, in the order of the curve. */
    static int[] along(double[] x, double[] y, int[] chosen) {
        double left = Double.POSITIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (int i : chosen) {
            left = Math.min(left, x[i]);
            right = Math.max(right, x[i]);
            bottom = Math.min(bottom, y[i]);
            top = Math.max(top, y[i]);
        }
        double wide = Math.max(Math.max(right - left, top - bottom), Double.MIN_NORMAL);
        double scale = ((1 << BITS) - 1) / wide;
        int[] order = chosen.clone();
        int[] places = new int[order.length];
        for (int k = 0; k < order.length; k++) {
            int i = order[k];
            places[k] = place((int) ((x[i] - left) * scale), (int) ((y[i] - bottom) * scale));
        }
        return sorted(places, order);
    }

    /**
     * Sorts numbers by their places, digit by digit from the least; equal places keep their order.
     */
    private static int[] sorted(int[] places, int[] numbers) {
        int[] places1 = places;
        int[] numbers1 = numbers;
        int[] places2 = new int[places.length];
        int[] numbers2 = new int[places.length];
        for (int shift = 0; shift < 2 * BITS; shift += DIGIT) {
            int[] next = new int[(1 << DIGIT) + 1];
            for (int place : places1) {
                next[(place >> shift & (1 << DIGIT) - 1) + 1]++;
            }
            for (int d = 1; d < next.length; d++) {
                next[d] += next[d - 1];
            }
            for (int k = 0; k < places1.length; k++) {
                int to = next[places1[k] >> shift & (1 << DIGIT) - 1]++;
                places2[to] = places1[k];
                numbers2[to] = numbers1[k];
            }
            int[] swap = places1;
            places1 = places2;
            places2 = swap;
            swap = numbers1;
            numbers1 = numbers2;
            numbers2 = swap;
        }
        return numbers1;
    }

    /** Distance along the curve of a cell (D. Hilbert, Mathematische Annalen 38, 1891). */
    private static int place(int column, int row) {
        int place = 0;
        int turned = 0;
        for (int bit = BITS - 1; bit >= 0; bit--) {
            int quadrant = ((column >> bit) & 1) << 1 | ((row >> bit) & 1);
            int step = STEPS[turned << 2 | quadrant];
            place = (place << 2) | (step & 3);
            turned = step >> 2;
        }
        return place;
    }
}
