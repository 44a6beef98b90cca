package lanewright.ground;

/**
 * Rules for building a ground.
 *
 * <p>Where a survey has no boundary, triangles along its rim that tie together shots that have
 * nothing to do with each other are left out, from the rim inward and never past a breakline. The
 * usual side is one that nine in ten do not pass in length, so that a survey that is dense in one
 * part keeps its open parts.
 *
 * @param samePoint two shots closer than this in plan are one point, m; at least 0.1 mm. Our choice
 *     of 1 mm is well under what a tape or staff can tell
 * @param bluntest a rim triangle is thin if its rim side is seen from the opposite corner under a
 *     wider angle than this, degrees. Our choice is 150°
 * @param thinOver a thin rim triangle is left out if its rim side is longer than this many usual
 *     sides. Our choice is 1.5
 * @param longest any rim triangle is left out if its rim side is longer than this many usual sides.
 *     Our choice is 5
 */
public record GroundOptions(double samePoint, double bluntest, double thinOver, double longest) {

    /** The rules used where a plan says nothing else. */
    public static final GroundOptions USUAL = new GroundOptions(0.001, 150, 1.5, 5);

    /** Keeps every triangle up to the convex hull of the shots. */
    public static final GroundOptions WHOLE_HULL = new GroundOptions(0.001, 180, 1e9, 1e9);

    /** Checks the ranges. */
    public GroundOptions {
        if (!(samePoint >= 1e-4 && samePoint <= 1)) {
            throw new IllegalArgumentException(
                    "same point must be 0.1 mm to 1 m, was " + samePoint);
        }
        if (!(bluntest > 90 && bluntest <= 180 && thinOver > 0 && longest > 1)) {
            throw new IllegalArgumentException(
                    "rim rules out of range: " + bluntest + ", " + thinOver + ", " + longest);
        }
    }
}
