package lanewright.ground;

/**
 * Rules for building a ground.
 *
 * @param samePoint two shots closer than this in plan are one point, m; at least 0.1 mm. Our choice
 *     of 1 mm is well under what a tape or staff can tell
 * @param bluntest a triangle on the rim is left out if its rim side is seen from the opposite
 *     corner under a wider angle than this, degrees; such a sliver ties together shots that have
 *     nothing to do with each other. Our choice is 155°
 * @param longest a triangle on the rim is left out if its rim side is longer than this many times
 *     the middle length of all sides. Our choice is 12
 */
public record GroundOptions(double samePoint, double bluntest, double longest) {

    /** The rules used where a plan says nothing else. */
    public static final GroundOptions USUAL = new GroundOptions(0.001, 155, 12);

    /** Checks the ranges. */
    public GroundOptions {
        if (!(samePoint >= 1e-4 && samePoint <= 1)) {
            throw new IllegalArgumentException(
                    "same point must be 0.1 mm to 1 m, was " + samePoint);
        }
        if (!(bluntest > 90 && bluntest <= 180 && longest > 1)) {
            throw new IllegalArgumentException(
                    "rim rules out of range: " + bluntest + ", " + longest);
        }
    }
}
