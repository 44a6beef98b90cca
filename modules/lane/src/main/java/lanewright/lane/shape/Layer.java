package lanewright.lane.shape;

/**
 * One layer of stone in the typical section.
 *
 * @param role the plain role by which the owner and the tables name it, such as {@code base}
 * @param thickness compacted in place, measured vertically, m, over zero
 * @param edgeSlope run over rise of its edges when the bed is {@link Bed#ON_TOP}, zero or more
 */
public record Layer(String role, double thickness, double edgeSlope) {
    /** Checks the ranges. */
    public Layer {
        if (role.isBlank()) {
            throw new IllegalArgumentException("a layer needs a role");
        }
        if (!(thickness > 0 && thickness < 10)) {
            throw new IllegalArgumentException(
                    "layer thickness must be over 0 m, was " + thickness);
        }
        if (!(edgeSlope >= 0 && edgeSlope <= 20)) {
            throw new IllegalArgumentException("edge slope must be 0 to 20, was " + edgeSlope);
        }
    }
}
