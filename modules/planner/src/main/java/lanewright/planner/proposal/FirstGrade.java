package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Lays a first grade through two fixed heights.
 *
 * <p>Vertical points stand at even stations, and each may lie at one of many heights a few
 * centimetres apart. Of all lines through them that keep between the flattest and the steepest
 * grade, up or down, the one with the least effort is found by dynamic programming (R. Bellman,
 * Dynamic Programming, Princeton University Press, 1957): exactly the best on these heights, always
 * the same one, and if there is none then no line can meet the limits. Effort is earth moved, by
 * the area of a level section, with a charge where the lane's edge would lie under the ground
 * beside it and one for hard changes of grade.
 */
public final class FirstGrade {

    /**
     * Distance between vertical points, m: room for a parabola that a car does not feel. Our
     * choice.
     */
    private static final double SPACING = 25;

    private static final double LEAST_SPACING = 8;

    /** Changes of grade below this get no curve and no point, rise over run. Our choice. */
    private static final double FLAT_BREAK = 0.002;

    /**
     * Length of curve for each 1 % of change, m: about the 10 ft of a sag at 15 mph (AASHTO K of
     * 10).
     */
    private static final double CURVE_PER_PERCENT = 3;

    private static final double SHORTEST_CURVE = 6;

    private final GradeWish wish;
    private final GroundBeside beside;
    private final Progress progress;
    private final double spacing;
    private final int count;
    private final List<Finding> findings = new ArrayList<>();

    private FirstGrade(GradeWish wish, Ground ground, Progress progress) {
        this.wish = wish;
        this.progress = progress;
        double length = wish.alignment().length();
        int pieces = Math.max(1, (int) Math.ceil(length / SPACING));
        if (length / pieces < LEAST_SPACING) {
            pieces = Math.max(1, (int) (length / LEAST_SPACING));
        }
        count = pieces + 1;
        spacing = length / pieces;
        beside = new GroundBeside(wish, ground, spacing);
    }

    /**
     * The first grade.
     *
     * @param ground the ground; where it is not known the line runs as if it lay on it
     */
    public static GradeProposal of(GradeWish wish, Ground ground, Progress progress) {
        return new FirstGrade(wish, ground, progress).lay();
    }

    private GradeProposal lay() {
        double[] heights =
                new GradeSearch(wish, beside, count, spacing, progress)
                        .best(wish.flattest(), wish.steepest());
        if (heights.length == 0) {
            heights = relaxed();
        }
        List<VerticalPoint> points = points(heights);
        List<Saying> reasons = new ArrayList<>();
        reasons.add(
                Saying.of(
                        "Laid to move little earth with grades from {} to {}, the edge aimed {} over the higher ground beside it",
                        Quantity.grade(wish.flattest()),
                        Quantity.grade(wish.steepest()),
                        Quantity.depth(wish.edgeAbove())));
        double effort = effort(heights);
        double[] straight = new double[count];
        for (int i = 0; i < count; i++) {
            straight[i] =
                    wish.startHeight()
                            + (wish.endHeight() - wish.startHeight()) * i / (count - 1.0);
        }
        double straightEffort = effort(straight);
        reasons.add(
                Saying.of(
                        "About {} of earth moved, against {} on one straight grade from end to end",
                        Quantity.volume(effort),
                        Quantity.volume(straightEffort)));
        sags(heights, reasons);
        return new GradeProposal(points, reasons, findings, effort, straightEffort);
    }

    /** Gives up the flattest grade first, then the steepest, and says so. */
    private double[] relaxed() {
        var search = new GradeSearch(wish, beside, count, spacing, progress);
        double[] heights = search.best(0, wish.steepest());
        double length = wish.alignment().length();
        double straight = Math.abs(wish.endHeight() - wish.startHeight()) / length;
        if (heights.length > 0) {
            findings.add(
                    collision(
                            "grade-too-flat",
                            Saying.of(
                                    "No line between the two ends stays steeper than {} everywhere",
                                    Quantity.grade(wish.flattest())),
                            Quantity.grade(straight),
                            Quantity.grade(wish.flattest()),
                            Saying.plain(
                                    "Change the height of one end, allow flatter grades there, or put in a hump or a dip")));
            return heights;
        }
        findings.add(
                collision(
                        "grade-too-steep",
                        Saying.of(
                                "The ends lie {} apart in height over {}: that alone is {}",
                                Quantity.height(Math.abs(wish.endHeight() - wish.startHeight())),
                                Quantity.length(length),
                                Quantity.grade(straight)),
                        Quantity.grade(straight),
                        Quantity.grade(wish.steepest()),
                        Saying.plain(
                                "Make the lane longer by winding it up the hill, or change the height of an end")));
        double needed = Math.max(straight * 1.02, wish.steepest());
        heights = search.best(0, needed);
        if (heights.length > 0) {
            return heights;
        }
        return new double[] {wish.startHeight(), wish.endHeight()};
    }

    private static Finding collision(
            String code, Saying says, Quantity measured, Quantity limit, Saying remedy) {
        return new Finding(
                code,
                Level.STOP,
                Topic.GRADE,
                Where.ANYWHERE,
                says,
                measured,
                limit,
                "your plan",
                remedy);
    }

    private List<VerticalPoint> points(double[] heights) {
        double step = wish.alignment().length() / (heights.length - 1);
        List<VerticalPoint> points = new ArrayList<>();
        points.add(new VerticalPoint(0, heights[0], 0));
        int last = 0;
        for (int i = 1; i + 1 < heights.length; i++) {
            double in = (heights[i] - heights[i - 1]) / step;
            double out = (heights[i + 1] - heights[i]) / step;
            double change = Math.abs(out - in);
            if (change >= FLAT_BREAK) {
                double curve =
                        Math.min(
                                0.9 * step,
                                Math.max(SHORTEST_CURVE, CURVE_PER_PERCENT * change * 100));
                points.add(new VerticalPoint(i * step, heights[i], curve));
                last = i;
            } else if (i - last > 0) {
                straighten(heights, last, i);
            }
        }
        points.add(new VerticalPoint(wish.alignment().length(), heights[heights.length - 1], 0));
        return points;
    }

    /**
     * A point that is left out must lie on the line between its neighbours, or grades would shift.
     */
    private static void straighten(double[] heights, int from, int at) {
        double grade = (heights[at + 1] - heights[from]) / (at + 1 - from);
        for (int i = from + 1; i <= at; i++) {
            heights[i] = heights[from] + grade * (i - from);
        }
    }

    private double effort(double[] heights) {
        double sum = 0;
        double length = wish.alignment().length();
        for (int i = 0; i < beside.size(); i++) {
            double at = beside.station(i) / length * (heights.length - 1);
            int piece = Math.min(heights.length - 2, (int) at);
            double height = heights[piece] + (at - piece) * (heights[piece + 1] - heights[piece]);
            sum += beside.earth(i, height) * beside.reach(i);
        }
        return sum;
    }

    private void sags(double[] heights, List<Saying> reasons) {
        double step = wish.alignment().length() / (heights.length - 1);
        for (int i = 1; i + 1 < heights.length; i++) {
            if (heights[i] < heights[i - 1] && heights[i] <= heights[i + 1]) {
                reasons.add(beside.wayOut(i * step, heights[i]));
            }
        }
    }
}
