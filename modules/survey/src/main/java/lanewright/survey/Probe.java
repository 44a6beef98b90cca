package lanewright.survey;

/**
 * A hole dug or a rod pushed in to learn what lies under the grass.
 *
 * @param name what it is called in the field; may be empty
 * @param x easting, local metres
 * @param y northing, local metres
 * @param topsoil depth of topsoil, m, zero or more; NaN if the hole does not tell
 * @param topsoilAtLeast true if {@code topsoil} is only a lower bound ("more than 12 in")
 * @param bearing depth from the surface to soil that bears, m, zero or more; NaN if not known
 * @param bearingAtLeast true if {@code bearing} is only a lower bound: none was met that deep
 * @param met what was met, in the words of whoever dug; may be empty
 */
public record Probe(
        String name,
        double x,
        double y,
        double topsoil,
        boolean topsoilAtLeast,
        double bearing,
        boolean bearingAtLeast,
        String met) {

    /** Checks that the place is finite and depths are not negative. */
    public Probe {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("probe " + name + " is at " + x + " / " + y);
        }
        check(name, "topsoil", topsoil, topsoilAtLeast);
        check(name, "bearing", bearing, bearingAtLeast);
    }

    private static void check(String name, String what, double depth, boolean atLeast) {
        if (depth < 0 || Double.isInfinite(depth) || (Double.isNaN(depth) && atLeast)) {
            throw new IllegalArgumentException(
                    "probe " + name + " has " + what + " depth " + depth);
        }
    }

    /** The same probe moved, m. */
    public Probe moved(double east, double north) {
        return new Probe(
                name, x + east, y + north, topsoil, topsoilAtLeast, bearing, bearingAtLeast, met);
    }
}
