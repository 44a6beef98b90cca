package lanewright.drainage.channel;

/** Arguments of hydraulic formulas, refused in words that say what to give instead. */
public final class Check {

    /** Steepest bed that is taken, rise over run; anything steeper is most likely a percentage. */
    private static final double STEEPEST = 1.0;

    private Check() {}

    /**
     * A finite number over zero.
     *
     * @param what how it is called, with its unit
     * @throws IllegalArgumentException if it is not
     */
    public static double positive(String what, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    what + " must be a number over zero, was " + value + "; give one");
        }
        return value;
    }

    /**
     * A finite number, zero or more.
     *
     * @param what how it is called, with its unit
     * @throws IllegalArgumentException if it is not
     */
    public static double notNegative(String what, double value) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    what + " must be zero or more, was " + value + "; give it without a sign");
        }
        return value;
    }

    /**
     * Manning's roughness.
     *
     * @throws IllegalArgumentException if it is not over zero and at most 1
     */
    public static double roughness(double n) {
        if (!(n > 0) || !(n <= 1)) {
            throw new IllegalArgumentException(
                    "Manning's n must be over zero and at most 1, was "
                            + n
                            + "; take one from a table, such as 0.024 for corrugated metal");
        }
        return n;
    }

    /**
     * Slope of a bed that falls the way water runs.
     *
     * @param slope rise over run
     * @throws IllegalArgumentException if it is level, rises or is steeper than 1
     */
    public static double falling(double slope) {
        if (!(slope > 0)) {
            throw new IllegalArgumentException(
                    "slope must be over zero, was "
                            + slope
                            + "; on a level or rising bed water has no normal depth, give it a"
                            + " fall");
        }
        return steepest(slope);
    }

    /**
     * Slope of a bed that falls or is level.
     *
     * @param slope rise over run
     * @throws IllegalArgumentException if it rises or is steeper than 1
     */
    public static double notRising(double slope) {
        if (!(slope >= 0)) {
            throw new IllegalArgumentException(
                    "slope must be zero or more, was "
                            + slope
                            + "; lay the outlet lower than the inlet");
        }
        return steepest(slope);
    }

    private static double steepest(double slope) {
        if (!(slope <= STEEPEST)) {
            throw new IllegalArgumentException(
                    "slope is rise over run and at most 1, was "
                            + slope
                            + "; write 2 percent as 0.02");
        }
        return slope;
    }
}
