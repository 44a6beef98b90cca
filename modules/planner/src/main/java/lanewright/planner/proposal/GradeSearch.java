package lanewright.planner.proposal;

import java.util.Arrays;
import lanewright.measure.Progress;

/** Finds the line of least effort through heights on a ladder at each vertical point. */
final class GradeSearch {

    /** Rungs of a ladder are about this far apart, m. */
    private static final double RUNG = 0.05;

    private static final int MOST_RUNGS = 220;

    /** How far off the ground a ladder reaches, m, where the limits leave it free. */
    private static final double REACH = 5;

    /** Charge for a change of grade, m³ over its square: 5 % costs about a barrow. Our choice. */
    private static final double BREAK = 60;

    private static final double ROUNDING = 1e-9;

    private final GradeWish wish;
    private final GroundBeside beside;
    private final int count;
    private final double spacing;
    private final Progress progress;

    GradeSearch(GradeWish wish, GroundBeside beside, int count, double spacing, Progress progress) {
        this.wish = wish;
        this.beside = beside;
        this.count = count;
        this.spacing = spacing;
        this.progress = progress;
    }

    /**
     * Heights of the vertical points.
     *
     * @return empty if no line keeps the limits
     */
    double[] best(double flattest, double steepest) {
        double[][] ladders = new double[count][];
        for (int i = 0; i < count; i++) {
            ladders[i] = ladder(i, steepest);
            if (ladders[i].length == 0) {
                return new double[0];
            }
        }
        return search(ladders, flattest, steepest);
    }

    private double[] ladder(int i, double steepest) {
        if (i == 0) {
            return new double[] {wish.startHeight()};
        }
        if (i == count - 1) {
            return new double[] {wish.endHeight()};
        }
        double back = i * spacing * steepest;
        double on = (count - 1 - i) * spacing * steepest;
        double low = Math.max(wish.startHeight() - back, wish.endHeight() - on);
        double high = Math.min(wish.startHeight() + back, wish.endHeight() + on);
        if (low > high + ROUNDING) {
            return new double[0];
        }
        double ground = beside.level(i * GroundBeside.steps());
        double from = Math.max(low, Math.min(high, ground - REACH));
        double to = Math.min(high, Math.max(low, ground + REACH));
        int rungs = Math.max(2, Math.min(MOST_RUNGS, (int) Math.ceil((to - from) / RUNG) + 1));
        double[] ladder = new double[rungs];
        for (int r = 0; r < rungs; r++) {
            ladder[r] = from + (to - from) * r / (rungs - 1);
        }
        return ladder;
    }

    /** Best effort to each pair of rungs at one piece, carried on piece by piece. */
    private double[] search(double[][] ladders, double flattest, double steepest) {
        int pieces = count - 1;
        double[][][] effort = new double[pieces][][];
        int[][][] cameFrom = new int[pieces][][];
        for (int p = 0; p < pieces; p++) {
            progress.check();
            progress.report((p + 1.0) / pieces, "laying a first grade");
            effort[p] = new double[ladders[p].length][ladders[p + 1].length];
            cameFrom[p] = new int[ladders[p].length][ladders[p + 1].length];
            for (int a = 0; a < ladders[p].length; a++) {
                for (int b = 0; b < ladders[p + 1].length; b++) {
                    double grade = (ladders[p + 1][b] - ladders[p][a]) / spacing;
                    boolean keeps =
                            Math.abs(grade) <= steepest + ROUNDING
                                    && Math.abs(grade) >= flattest - ROUNDING;
                    effort[p][a][b] =
                            keeps
                                    ? piece(p, ladders[p][a], ladders[p + 1][b])
                                    : Double.POSITIVE_INFINITY;
                }
            }
            if (p > 0) {
                carry(p, ladders, effort, cameFrom);
            }
        }
        return trace(ladders, effort, cameFrom);
    }

    private void carry(int p, double[][] ladders, double[][][] effort, int[][][] cameFrom) {
        for (int a = 0; a < ladders[p].length; a++) {
            for (int b = 0; b < ladders[p + 1].length; b++) {
                if (effort[p][a][b] == Double.POSITIVE_INFINITY) {
                    continue;
                }
                double grade = (ladders[p + 1][b] - ladders[p][a]) / spacing;
                double least = Double.POSITIVE_INFINITY;
                int from = 0;
                for (int c = 0; c < ladders[p - 1].length; c++) {
                    double before = effort[p - 1][c][a];
                    if (before < least) {
                        double change = grade - (ladders[p][a] - ladders[p - 1][c]) / spacing;
                        double sum = before + BREAK * change * change * spacing;
                        if (sum < least) {
                            least = sum;
                            from = c;
                        }
                    }
                }
                effort[p][a][b] += least;
                cameFrom[p][a][b] = from;
            }
        }
    }

    private double piece(int p, double from, double to) {
        int steps = GroundBeside.steps();
        double sum = 0;
        for (int k = 0; k <= steps; k++) {
            double height = from + (to - from) * k / steps;
            double weight = k == 0 || k == steps ? 0.5 : 1;
            sum += weight * beside.effort(p * steps + k, height);
        }
        return sum * spacing / steps;
    }

    private double[] trace(double[][] ladders, double[][][] effort, int[][][] cameFrom) {
        int last = count - 2;
        double least = Double.POSITIVE_INFINITY;
        int a = 0;
        int b = 0;
        for (int i = 0; i < ladders[last].length; i++) {
            for (int j = 0; j < ladders[last + 1].length; j++) {
                if (effort[last][i][j] < least) {
                    least = effort[last][i][j];
                    a = i;
                    b = j;
                }
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            return new double[0];
        }
        double[] heights = new double[count];
        Arrays.fill(heights, Double.NaN);
        heights[last + 1] = ladders[last + 1][b];
        for (int p = last; p >= 0; p--) {
            heights[p] = ladders[p][a];
            int before = cameFrom[p][a][b];
            b = a;
            a = before;
        }
        return heights;
    }
}
