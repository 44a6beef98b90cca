package lanewright.planner.proposal;

import java.util.List;

/**
 * What a grade must keep to.
 *
 * @param steepest greatest grade, rise over run, over zero
 * @param flattest least grade, rise over run, zero or more, less than the steepest
 * @param edgeAbove how high the lane's edge is wanted above the higher ground beside it, m
 * @param curve length of vertical curve for each unit of change of grade, m; 100 m gives 1 m for
 *     each percent
 * @param start height at the start, m
 * @param startGrade grade that the start must take up, or NaN
 * @param end height at the end, m, or NaN where it is free
 * @param endGrade grade that the end must take up, or NaN
 * @param tie length over which a start or end grade holds, m, over zero
 * @param through heights to pass through, in station order
 * @param outlets stations where water is led away from a low point, m
 * @param unit stations and curves are whole multiples of this, heights of a hundredth of it, m: a
 *     foot or a metre
 */
public record GradeLimits(
        double steepest,
        double flattest,
        double edgeAbove,
        double curve,
        double start,
        double startGrade,
        double end,
        double endGrade,
        double tie,
        List<Fixed> through,
        List<Double> outlets,
        double unit) {
    /** Copies the lists and checks the ranges. */
    public GradeLimits {
        through = List.copyOf(through);
        outlets = List.copyOf(outlets);
        if (!(steepest > 0) || !(flattest >= 0 && flattest < steepest) || !(curve >= 0)) {
            throw new IllegalArgumentException(
                    "grades from " + flattest + " to " + steepest + ", curve " + curve);
        }
        if (!Double.isFinite(start) || !(tie > 0) || !(unit > 0)) {
            throw new IllegalArgumentException(
                    "the start must have a height, and tie and unit a length");
        }
    }

    /**
     * A height to pass through.
     *
     * @param station m
     * @param height m
     */
    public record Fixed(double station, double height) {}

    GradeLimits steepest(double other) {
        return new GradeLimits(
                other,
                flattest,
                edgeAbove,
                curve,
                start,
                startGrade,
                end,
                endGrade,
                tie,
                through,
                outlets,
                unit);
    }

    GradeLimits flattest(double other) {
        return new GradeLimits(
                steepest,
                other,
                edgeAbove,
                curve,
                start,
                startGrade,
                end,
                endGrade,
                tie,
                through,
                outlets,
                unit);
    }

    GradeLimits curve(double other) {
        return new GradeLimits(
                steepest,
                flattest,
                edgeAbove,
                other,
                start,
                startGrade,
                end,
                endGrade,
                tie,
                through,
                outlets,
                unit);
    }
}
