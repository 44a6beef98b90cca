package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.flow.FlowGrid;

/**
 * A ditch as a channel, piece by piece, with what drains into each.
 *
 * @param ditch the ditch
 * @param pieces from section to section, in station order
 * @param onward where water that leaves it comes into a ditch again
 */
public record DitchWater(DitchReach ditch, List<Piece> pieces, List<Onward> onward) {

    /**
     * A piece of a ditch between two sections.
     *
     * @param from station where it begins, m
     * @param to station where it ends, m
     * @param length its own length in plan, m, over zero
     * @param grade rise over run, positive uphill up-station
     * @param lane travelled way that drains into it: half of a crown, or all or nothing of one
     *     plane, m²
     * @param slopes shoulder, foreslope, ditch and backslope, m²
     * @param land land beyond the lane's own slopes whose water comes in here, m²
     * @param isLeast whether more land may drain to it from beyond the survey
     * @param way the longest way of that water
     * @param shape of the ditch across
     * @param depth from the hinge, beside the lane, down to the bottom, where that is least, m
     * @param bank from the ground at the outer side down to the bottom, where that is least, m; NaN
     *     where the ditch begins or runs out
     */
    public record Piece(
            double from,
            double to,
            double length,
            double grade,
            double lane,
            double slopes,
            double land,
            boolean isLeast,
            FlowGrid.Way way,
            ChannelShape shape,
            double depth,
            double bank) {}

    /**
     * Water that leaves at a low point and comes into a ditch again.
     *
     * @param outlet number of the low point among the ditch's outlets
     * @param ditch number of the ditch that it comes into
     * @param piece number of the piece there
     */
    public record Onward(int outlet, int ditch, int piece) {}

    /** Copies the lists. */
    public DitchWater {
        pieces = List.copyOf(pieces);
        onward = List.copyOf(onward);
    }

    /** Flatter than this water stands, rise over run: the rounding of heights, nothing else. */
    private static final double LEVEL = 1e-6;

    /** Its flattest grade, rise over run, over zero; NaN if none of it falls. */
    public double flattest() {
        double flattest = Double.NaN;
        for (Piece piece : pieces) {
            double grade = Math.abs(piece.grade());
            if (grade > LEVEL && !(grade >= flattest)) {
                flattest = grade;
            }
        }
        return flattest;
    }

    /** Its shape at a station, or at the end that is nearer. */
    public ChannelShape shapeAt(double station) {
        for (Piece piece : pieces) {
            if (station <= piece.to()) {
                return piece.shape();
            }
        }
        return pieces.get(pieces.size() - 1).shape();
    }
}
