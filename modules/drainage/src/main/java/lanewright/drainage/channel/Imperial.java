package lanewright.drainage.channel;

/**
 * What one unit of a formula or table published in feet and pounds is in SI. The only place of the
 * hydraulics where feet are turned.
 */
public final class Imperial {

    /** International foot, m. */
    public static final double FOOT = 0.3048;

    /** Inch, m. */
    public static final double INCH = FOOT / 12;

    /** Square foot, m². */
    public static final double SQUARE_FOOT = FOOT * FOOT;

    /** Cubic foot a second, m³/s. */
    public static final double CUBIC_FOOT = FOOT * FOOT * FOOT;

    /** Pound (force), N: 0.45359237 kg at 9.80665 m/s². */
    public static final double POUND = 0.45359237 * 9.80665;

    /** Pound a square foot, Pa. */
    public static final double POUND_PER_SQUARE_FOOT = POUND / SQUARE_FOOT;

    /**
     * Metric coefficient of a weir, m^0.5/s, for one of feet: {@code Q = C L h^1.5} has feet^0.5 in
     * its coefficient (published rounded as 0.552).
     */
    public static final double WEIR = Math.sqrt(FOOT);

    private Imperial() {}
}
