package lanewright.drainage.channel;

/** Drag of water on the bed, and stone that stays under it. */
public final class Shear {

    /** Weight of water, N/m³: 62.4 lb/ft³. */
    public static final double WATER = 62.4 * Imperial.POUND / Imperial.CUBIC_FOOT;

    /** Specific gravity of stone that weighs 165 lb/ft³, the usual figure of HEC-15. */
    public static final double STONE_GRAVITY = 165 / 62.4;

    /** Shields parameter for a particle Reynolds number up to 4·10⁴ (HEC-15, from memory). */
    public static final double SHIELDS_LOW = 0.047;

    /** Shields parameter for a particle Reynolds number of 2·10⁵ and more (HEC-15, from memory). */
    public static final double SHIELDS_HIGH = 0.15;

    private static final double REYNOLDS_LOW = 4e4;
    private static final double REYNOLDS_HIGH = 2e5;

    /** Kinematic viscosity of water at about 20 °C (HEC-15 uses 1.217e-5 ft²/s), m²/s. */
    private static final double VISCOSITY = 1.131e-6;

    private Shear() {}

    /**
     * Greatest shear on the bed, {@code τ = γ d S}, Pa (FHWA HEC-15, 2005, equation 2.4).
     *
     * @param depth greatest depth, m
     * @param slope fall of the water's surface, rise over run
     */
    public static double onBed(double depth, double slope) {
        return WATER * Check.notNegative("depth, m,", depth) * Check.notRising(slope);
    }

    /**
     * Median stone that stays, {@code D50 = SF d S / (F* (SG − 1))}, m (FHWA HEC-15, 2005, chapter
     * 6).
     *
     * @param depth greatest depth, m
     * @param slope fall of the bed, rise over run; the formula is for beds under 0.1
     * @param safety factor of safety, at least 1; usual 1.0 to 1.5
     * @param shields Shields parameter, {@link #SHIELDS_LOW} to {@link #SHIELDS_HIGH}
     * @param gravity specific gravity of the stone, over 1
     */
    public static double stone(
            double depth, double slope, double safety, double shields, double gravity) {
        Check.positive("depth, m,", depth);
        Check.falling(slope);
        if (!(safety >= 1) || !Double.isFinite(safety)) {
            throw new IllegalArgumentException(
                    "factor of safety must be at least 1, was " + safety + "; give 1 to 1.5");
        }
        if (!(shields >= SHIELDS_LOW && shields <= SHIELDS_HIGH)) {
            throw new IllegalArgumentException(
                    "Shields parameter must lie between 0.047 and 0.15, was "
                            + shields
                            + "; take it from the particle Reynolds number");
        }
        if (!(gravity > 1) || !(gravity < 4)) {
            throw new IllegalArgumentException(
                    "specific gravity of stone must lie between 1 and 4, was "
                            + gravity
                            + "; stone of 165 lb/ft³ has 2.64");
        }
        return safety * depth * slope / (shields * (gravity - 1));
    }

    /**
     * Median stone that stays, with the Shields parameter that goes with it: straight between
     * {@link #SHIELDS_LOW} and {@link #SHIELDS_HIGH} over the particle Reynolds number {@code √(g d
     * S) D50 / ν}; stone of {@link #STONE_GRAVITY}.
     *
     * @param safety factor of safety, at least 1
     * @return D50, m
     */
    public static double stone(double depth, double slope, double safety) {
        double large = stone(depth, slope, safety, SHIELDS_LOW, STONE_GRAVITY);
        double speed = Math.sqrt(Critical.GRAVITY * depth * slope);
        // Held stone over needed stone rises with the stone, since the parameter never falls.
        return Rising.where(
                size -> size * shields(speed * size / VISCOSITY) / SHIELDS_LOW, large, large);
    }

    /** Shields parameter for a particle Reynolds number. */
    static double shields(double reynolds) {
        double part = (reynolds - REYNOLDS_LOW) / (REYNOLDS_HIGH - REYNOLDS_LOW);
        double held = Math.max(0, Math.min(1, part));
        return SHIELDS_LOW + held * (SHIELDS_HIGH - SHIELDS_LOW);
    }
}
