package lanewright.lane.shape;

/**
 * One layer of stone in the typical section.
 *
 * @param role the plain role by which the owner and the tables name it, such as {@code base}
 * @param thickness compacted in place, measured vertically, m, over zero
 * @param edgeSlope run over rise of its edges when the bed is {@link Bed#ON_TOP}, zero or more
 * @param width width of its top, m, half each side; NaN to begin where the layer above ends: at the
 *     foot of its edges, or at the travelled width for the top layer
 */
public record Layer(String role, double thickness, double edgeSlope, double width) {
    /** Checks the ranges. */
    public Layer {
        if (role.isBlank()) {
            throw new IllegalArgumentException("a layer needs a role");
        }
        if (!(thickness > 0 && thickness < 10)) {
            throw new IllegalArgumentException(
                    "layer thickness must be over 0 m and under 10 m, was " + thickness);
        }
        if (!(edgeSlope >= 0 && edgeSlope <= 20)) {
            throw new IllegalArgumentException("edge slope must be 0 to 20, was " + edgeSlope);
        }
        if (!(Double.isNaN(width) || (width > 0 && width <= 50))) {
            throw new IllegalArgumentException(
                    "layer width must be over 0 and at most 50 m, was " + width);
        }
    }

    /** A layer that begins where the one above it ends. */
    public Layer(String role, double thickness, double edgeSlope) {
        this(role, thickness, edgeSlope, Double.NaN);
    }
}
