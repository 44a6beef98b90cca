package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;

/**
 * Length of a barrel through a fill, from where its invert line meets one foreslope to where it
 * meets the other (US Army, subcourse EN5465, Drainage, chapter 5). Measured in plan; a barrel that
 * falls 10 % is half a percent longer.
 *
 * @param inletRun from the lane's edge to the inlet, m
 * @param outletRun from the lane's edge to the outlet, m
 * @param length all together, m
 */
public record FillLength(double inletRun, double outletRun, double length) {

    /**
     * Length of a barrel square to the lane.
     *
     * @param edge height of both edges of the lane, m
     * @param inlet height of the inlet invert, m
     * @param outlet height of the outlet invert, m, not over the inlet's
     * @param width of the lane from edge to edge, m
     * @param foreslope run over rise of both foreslopes
     * @param ends added for end treatment, m
     * @throws IllegalArgumentException if a figure is out of range or the pipe higher than the lane
     */
    public static FillLength of(
            double edge, double inlet, double outlet, double width, double foreslope, double ends) {
        Check.positive("width of the lane, m,", width);
        Check.notNegative("foreslope, run over rise,", foreslope);
        Check.notNegative("length added for end treatment, m,", ends);
        if (!(inlet < edge)) {
            throw new IllegalArgumentException(
                    "the inlet invert at "
                            + inlet
                            + " m is not under the lane's edge at "
                            + edge
                            + " m; lay the pipe lower than the lane");
        }
        if (!(outlet <= inlet)) {
            throw new IllegalArgumentException(
                    "the outlet at "
                            + outlet
                            + " m is higher than the inlet at "
                            + inlet
                            + " m; lay the outlet lower than the inlet");
        }
        double inletRun = (edge - inlet) * foreslope;
        double outletRun = (edge - outlet) * foreslope;
        return new FillLength(inletRun, outletRun, inletRun + width + outletRun + ends);
    }

    /**
     * The length rounded up to whole pieces.
     *
     * @param piece length that pipe is sold in steps of, m
     * @return m
     */
    public double sold(double piece) {
        Check.positive("length of a sold piece, m,", piece);
        // A hair, so that a whole number of pieces is not rounded up by its last digit.
        return Math.ceil(length / piece - 1e-9) * piece;
    }
}
