package lanewright.drainage.hollows;

/**
 * A stretch of even rain.
 *
 * @param name what its owner calls it, not blank
 * @param depth how much falls in all, m, zero or more
 * @param seconds how long it takes, s, over zero
 */
public record RainStep(String name, double depth, double seconds) {

    /** Checks that it can rain so. */
    public RainStep {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a step of rain must have a name");
        }
        if (!(depth >= 0) || Double.isInfinite(depth)) {
            throw new IllegalArgumentException("rain must be zero or more, was " + depth + " m");
        }
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("rain must take some time, was " + seconds + " s");
        }
    }

    /** A step given in hours. */
    public static RainStep ofHours(String name, double depth, double hours) {
        return new RainStep(name, depth, hours * 3600);
    }

    /** How fast it falls, m/s. */
    public double rate() {
        return depth / seconds;
    }
}
