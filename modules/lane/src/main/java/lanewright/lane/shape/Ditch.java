package lanewright.lane.shape;

/**
 * A ditch beside the lane.
 *
 * @param rule when it is dug
 * @param depth vertical, from the hinge to the bottom after any topsoil is put back, m, over zero
 * @param bottom width of the flat bottom, m; zero makes a V
 */
public record Ditch(DitchRule rule, double depth, double bottom) {
    /** No ditch, ever. */
    public static final Ditch NONE = new Ditch(DitchRule.NEVER, 0.3, 0);

    /** Checks the ranges. */
    public Ditch {
        if (!(depth > 0 && depth <= 10)) {
            throw new IllegalArgumentException("ditch depth must be 0 to 10 m, was " + depth);
        }
        if (!(bottom >= 0 && bottom <= 20)) {
            throw new IllegalArgumentException("ditch bottom must be 0 to 20 m, was " + bottom);
        }
    }
}
