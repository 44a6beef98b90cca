package lanewright.lane.shape;

/**
 * One side of the typical section, outward from the travelled way.
 *
 * @param shoulder width from the toe of the lowest layer (on top) or the edge of the travelled way
 *     (boxed) out to the hinge, m, zero or more
 * @param foreslope run over rise from the hinge down, over zero
 * @param ditch the ditch at its foot
 * @param backslope run over rise from the ditch up to the ground, over zero
 * @param cutSlope run over rise up to the ground where the hinge lies below the ground and no ditch
 *     is dug, over zero
 */
public record SideShape(
        double shoulder, double foreslope, Ditch ditch, double backslope, double cutSlope) {
    /** Checks the ranges. */
    public SideShape {
        if (!(shoulder >= 0 && shoulder <= 30)) {
            throw new IllegalArgumentException("shoulder must be 0 to 30 m, was " + shoulder);
        }
        if (!(foreslope > 0 && foreslope <= 50 && backslope > 0 && backslope <= 50)
                || !(cutSlope > 0 && cutSlope <= 50)) {
            throw new IllegalArgumentException(
                    "side slopes must be over 0 and at most 50:1, were "
                            + foreslope
                            + " / "
                            + backslope
                            + " / "
                            + cutSlope);
        }
    }
}
