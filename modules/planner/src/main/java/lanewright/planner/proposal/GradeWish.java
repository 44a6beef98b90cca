package lanewright.planner.proposal;

import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;

/**
 * What a first grade is asked to do.
 *
 * @param alignment where the lane runs
 * @param typical its shape across, by stretch
 * @param startHeight finished height at station 0, m
 * @param endHeight finished height at the end, m
 * @param steepest steepest grade, rise over run, over {@code flattest}
 * @param flattest flattest grade that still runs, rise over run, zero or more
 * @param edgeAbove height of the lane's edge over the higher ground beside it that is aimed at, m
 * @param topsoil depth that is stripped, m, as far as it is known
 */
public record GradeWish(
        Alignment alignment,
        List<Stretch<TypicalSection>> typical,
        double startHeight,
        double endHeight,
        double steepest,
        double flattest,
        double edgeAbove,
        double topsoil) {
    /** Copies the list and checks the ranges. */
    public GradeWish {
        typical = List.copyOf(typical);
        if (!Double.isFinite(startHeight) || !Double.isFinite(endHeight)) {
            throw new IllegalArgumentException(
                    "both ends need a height, were " + startHeight + ", " + endHeight);
        }
        if (!(flattest >= 0 && flattest < steepest && steepest <= 0.5)) {
            throw new IllegalArgumentException(
                    "grades must be 0 <= flattest < steepest <= 50 %, were "
                            + flattest
                            + ", "
                            + steepest);
        }
        if (!(edgeAbove >= -1 && edgeAbove <= 3 && topsoil >= 0 && topsoil <= 3)) {
            throw new IllegalArgumentException(
                    "heights out of range: " + edgeAbove + ", " + topsoil);
        }
    }
}
