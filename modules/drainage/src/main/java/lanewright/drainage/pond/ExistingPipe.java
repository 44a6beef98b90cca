package lanewright.drainage.pond;

/**
 * A pipe that is there already and lets water through.
 *
 * @param name how the owner calls it
 * @param inletX local easting of its inlet, m
 * @param inletY local northing of its inlet, m
 * @param inletInvert height of the bottom of its bore at the inlet, m
 * @param outletX local easting of its outlet, m
 * @param outletY local northing of its outlet, m
 * @param outletInvert height of the bottom of its bore at the outlet, m
 * @param diameter clear width, m, over zero
 */
public record ExistingPipe(
        String name,
        double inletX,
        double inletY,
        double inletInvert,
        double outletX,
        double outletY,
        double outletInvert,
        double diameter) {
    /** Checks that the figures are finite and the diameter is over zero. */
    public ExistingPipe {
        double sum = inletX + inletY + inletInvert + outletX + outletY + outletInvert;
        if (!Double.isFinite(sum) || !(diameter > 0 && diameter <= 10)) {
            throw new IllegalArgumentException(
                    "pipe "
                            + name
                            + " must have finite ends and a diameter over 0 and at most 10 m");
        }
    }
}
