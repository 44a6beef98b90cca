package lanewright.planner.proposal;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.planner.proposal.GroundAlong.Look;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest heights at the knots that keep every limit, by dynamic programming over levels
 * of height (Bellman, Dynamic Programming, 1957): first on coarse levels over the whole range of
 * the land, then on finer and finer ones around the best so far. A limit that is not convex, such
 * as "not flatter than 1 % either way", costs nothing extra, and the same land gives the same
 * grade.
 *
 * <p>The first levels decide whether the lane crests or sags where: among heights between them a
 * cheaper grade of another pattern may exist.
 */
final class GradeSearch {

    /** Room around the land in which heights are looked for, m. */
    private static final double ROOM = 2;

    /** Levels at most on the first go. */
    private static final int MOST_LEVELS = 160;

    /** Finest step between levels, m. Our choice: finer than a machine can hold. */
    private static final double FINEST = 0.004;

    /** Coarsest first step, m, where the land allows. */
    private static final double COARSE = 0.06;

    /** A grade may pass its limit by this much through rounding only. */
    private static final double ROUNDING = 1e-9;

    /** Side slope used to reckon how earth widens with depth. Our choice of a middle figure. */
    private static final double SPREAD = 2.5;

    /**
     * What it costs to let the lane's water run to the road, m² of earth in a section: as much as
     * cutting its first hundred feet about a foot deep. Our choice.
     */
    private static final double TO_THE_ROAD = 60;

    /**
     * What a low point of the lane costs, m² of earth in a section: the ditches beside it end
     * there, and want a pipe. Our choice.
     */
    private static final double LOW_POINT = 30;

    /**
     * What it costs to let the lane's water run to the far end, m² of earth in a section: a ditch
     * stops there, and somebody lives there. Less than a low point, so that none is made to avoid
     * it. Our choice.
     */
    private static final double TO_THE_END = 25;

    /**
     * What each metre counts by which the edge lies under the height wanted over the ground, in
     * widths of earth, where a ditch can lead its water away. Our choice: over one, so that a lane
     * near the ground is lifted clear of it.
     */
    private static final double LOW_DITCHED = 2;

    /** A ditched lane this much under the wanted height lies in a cut, and no deeper counts, m. */
    private static final double IN_CUT = 0.5;

    /** The same where no ditch can be counted on: as much as building half a lane higher. */
    private static final double LOW_UNDRAINED = 3;

    /** The lane's edge must stand over the ground beside it by this for water to leave, m. */
    static final double WAY_OUT = 0.05;

    private final Knots knots;
    private final GradeLimits limits;
    private final GroundAlong land;
    private final boolean sagsAnywhere;
    private final BitSet noSag;
    private final int[][] looks;
    private int[] from = new int[0];
    private int[] count = new int[0];
    private double[] middle = new double[0];
    private double step;

    /**
     * A search.
     *
     * @param sagsAnywhere whether low points need no way out
     * @param noSag knots at which no low point may lie
     */
    GradeSearch(
            Knots knots, GradeLimits limits, GroundAlong land, boolean sagsAnywhere, BitSet noSag) {
        this.knots = knots;
        this.limits = limits;
        this.land = land;
        this.sagsAnywhere = sagsAnywhere;
        this.noSag = noSag;
        this.looks = new int[knots.size() - 1][];
        List<Look> all = land.looks();
        int at = 0;
        for (int piece = 0; piece < looks.length; piece++) {
            int first = at;
            boolean last = piece == looks.length - 1;
            while (at < all.size() && (last || all.get(at).station() < knots.station[piece + 1])) {
                at++;
            }
            looks[piece] = new int[] {first, at};
        }
    }

    /** The heights at the knots, m, or null if no heights keep every limit. */
    double @Nullable [] heights() {
        double low = 0;
        double high = 0;
        for (Look look : land.looks()) {
            double want = wanted(look);
            if (!Double.isNaN(want)) {
                double over = want - base(look.station());
                low = Math.min(low, over);
                high = Math.max(high, over);
            }
        }
        double room = ROOM + high - low;
        double first = Math.max(COARSE, (room + 2 * ROOM) / MOST_LEVELS);
        middle = knots.base.clone();
        double[] best = null;
        for (int trial = 0; trial < 2 && best == null; trial++) {
            step = first / (1 + trial);
            int below = (int) Math.ceil((ROOM - low) / step);
            int above = (int) Math.ceil((ROOM + high) / step);
            best = search(below, above);
        }
        while (best != null && step > FINEST) {
            middle = best;
            step = step / 4;
            double[] finer = search(8, 8);
            best = finer == null ? best : finer;
        }
        return best;
    }

    private double base(double station) {
        int i = piece(station);
        double share = (station - knots.station[i]) / knots.length(i);
        return knots.base[i] + share * (knots.base[i + 1] - knots.base[i]);
    }

    private int piece(double station) {
        int at = Arrays.binarySearch(knots.station, station);
        int piece = at >= 0 ? at : -at - 2;
        return Math.min(Math.max(piece, 0), knots.size() - 2);
    }

    /** One go over levels from {@code below} under the middle to {@code above} over it. */
    private double @Nullable [] search(int below, int above) {
        int n = knots.size();
        from = new int[n];
        count = new int[n];
        for (int i = 0; i < n; i++) {
            from[i] = knots.fixed[i] ? 0 : -below;
            count[i] = knots.fixed[i] ? 1 : below + above + 1;
        }
        double[][] cost = first();
        short[][][] back = new short[n][][];
        for (int piece = 1; piece < n - 1; piece++) {
            back[piece + 1] = new short[count[piece + 1]][count[piece]];
            cost = next(piece, cost, back[piece + 1]);
        }
        return trace(cost, back);
    }

    private double height(int knot, int level) {
        return middle[knot] + (from[knot] + level) * step;
    }

    private double[][] first() {
        double[][] cost = new double[count[1]][count[0]];
        for (int b = 0; b < count[1]; b++) {
            for (int a = 0; a < count[0]; a++) {
                cost[b][a] = pieceCost(0, height(0, a), height(1, b));
            }
        }
        return cost;
    }

    private double[][] next(int piece, double[][] before, short[][] back) {
        double[][] cost = new double[count[piece + 1]][count[piece]];
        for (double[] row : cost) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        double[] last = heights(piece - 1);
        double[] now = heights(piece);
        double[] next = heights(piece + 1);
        double lengthBefore = knots.length(piece - 1);
        double length = knots.length(piece);
        double most = mostChange(piece);
        for (int b = 0; b < now.length; b++) {
            boolean mayBeSag = maySag(piece, now[b]);
            for (int c = reached(next, now[b], piece); c < next.length; c++) {
                double own = pieceCost(piece, now[b], next[c]);
                if (own == Double.POSITIVE_INFINITY) {
                    if (next[c] > now[b]
                            && !knots.tied[piece]
                            && !knots.pinned[piece]
                            && next[c] - now[b] > limits.steepest() * length + ROUNDING) {
                        break;
                    }
                    continue;
                }
                double after = (next[c] - now[b]) / length;
                double best = Double.POSITIVE_INFINITY;
                int bestA = -1;
                for (int a = reached(last, now[b], piece - 1); a < last.length; a++) {
                    double soFar = before[b][a];
                    if (soFar < best) {
                        double grade = (now[b] - last[a]) / lengthBefore;
                        boolean sag = grade < 0 && after > 0;
                        soFar += sag ? LOW_POINT : 0;
                        if (soFar < best && Math.abs(after - grade) <= most && (!sag || mayBeSag)) {
                            best = soFar;
                            bestA = a;
                        }
                    } else if (last[a] - now[b] > 2 * limits.steepest() * lengthBefore
                            && !knots.tied[piece - 1]) {
                        break;
                    }
                }
                cost[c][b] = best + own;
                back[c][b] = (short) bestA;
            }
        }
        return cost;
    }

    private double[] heights(int knot) {
        double[] heights = new double[count[knot]];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = height(knot, i);
        }
        return heights;
    }

    /** The first of rising heights that a piece which keeps the steepest grade can reach. */
    private int reached(double[] rising, double from, int piece) {
        if (knots.tied[piece]) {
            return 0;
        }
        double lowest = from - limits.steepest() * knots.length(piece) - ROUNDING;
        int at = Arrays.binarySearch(rising, lowest);
        return at >= 0 ? at : -at - 1;
    }

    private double @Nullable [] trace(double[][] cost, short[][][] back) {
        int n = knots.size();
        double best = Double.POSITIVE_INFINITY;
        int last = -1;
        int lastButOne = -1;
        for (int c = 0; c < cost.length; c++) {
            for (int b = 0; b < cost[c].length; b++) {
                if (cost[c][b] < best) {
                    best = cost[c][b];
                    last = c;
                    lastButOne = b;
                }
            }
        }
        if (last < 0) {
            return null;
        }
        double[] heights = new double[n];
        heights[n - 1] = height(n - 1, last);
        heights[n - 2] = height(n - 2, lastButOne);
        for (int i = n - 1; i >= 2; i--) {
            int a = back[i][last][lastButOne];
            heights[i - 2] = height(i - 2, a);
            last = lastButOne;
            lastButOne = a;
        }
        return heights;
    }

    /** Greatest change of grade at a knot for which its curve takes half of either piece. */
    private double mostChange(int knot) {
        double shorter = Math.min(knots.length(knot - 1), knots.length(knot));
        return limits.curve() == 0 ? Double.POSITIVE_INFINITY : shorter / limits.curve() + ROUNDING;
    }

    /** Longest curve at a knot, a whole multiple of {@code unit}, m. */
    static double room(Knots knots, int knot, double unit) {
        double shorter = Math.min(knots.length(knot - 1), knots.length(knot));
        return Math.floor(shorter / unit + 1e-6) * unit;
    }

    private boolean maySag(int knot, double height) {
        if (sagsAnywhere) {
            return true;
        }
        if (noSag.get(knot)) {
            return false;
        }
        double half = knots.length(Math.min(knot, knots.size() - 2)) / 2;
        for (double outlet : limits.outlets()) {
            if (Math.abs(outlet - knots.station[knot]) <= half) {
                return true;
            }
        }
        return waterLeaves(land.nearest(knots.station[knot]), height);
    }

    /** Whether the ground beside the lane is lower than its edge on one side at least. */
    static boolean waterLeaves(Look look, double height) {
        return look.lower() < height - look.drop() - WAY_OUT;
    }

    /** Cost of one straight piece; infinite if it breaks a limit. */
    private double pieceCost(int piece, double a, double b) {
        double length = knots.length(piece);
        double grade = (b - a) / length;
        double steep = Math.abs(grade);
        boolean tied = knots.tied[piece];
        if (!tied
                && (steep > limits.steepest() + ROUNDING || steep < limits.flattest() - ROUNDING)) {
            return Double.POSITIVE_INFINITY;
        }
        if (knots.pinned[piece]) {
            double pin = (knots.base[piece] + knots.base[piece + 1]) / 2;
            if (Math.abs((a + b) / 2 - pin) > 1e-7) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double cost = piece == 0 && grade > 0 && !tied ? TO_THE_ROAD : 0;
        cost += piece == knots.size() - 2 && grade < 0 && !tied ? TO_THE_END : 0;
        List<Look> all = land.looks();
        for (int k = looks[piece][0]; k < looks[piece][1]; k++) {
            Look look = all.get(k);
            double height = a + grade * (look.station() - knots.station[piece]);
            cost += cost(look, height);
        }
        return cost;
    }

    private double wanted(Look look) {
        double higher = look.higher();
        return Double.isNaN(higher) ? look.level() : higher + limits.edgeAbove() + look.drop();
    }

    /** Earth in the section, m², and as much again for an edge that lies too low. */
    private double cost(Look look, double height) {
        double level = look.level();
        if (Double.isNaN(level)) {
            return 0;
        }
        double cost = earth(look, height);
        double low = wanted(look) - height;
        if (low > 0) {
            cost +=
                    look.ditched()
                            ? LOW_DITCHED * look.width() * Math.min(low, IN_CUT)
                            : LOW_UNDRAINED * look.width() * low;
        }
        return cost;
    }

    /** About how much earth is cut or filled in a section, m². */
    static double earth(Look look, double height) {
        double up = Math.abs(height - look.level());
        return Double.isNaN(up) ? 0 : up * (look.width() + SPREAD * up);
    }
}
