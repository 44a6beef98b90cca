package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Critical;

/**
 * Headwater where the inlet lets less through than the barrel would carry (FHWA HDS-5, 2001,
 * appendix A): by the unsubmerged equation up to {@code Q/AD^0.5 = 1.93} in metres, by the
 * submerged one from 2.21 on, straight between.
 *
 * <p>Fitted to tests with headwater of half a rise to three rises. All figures are for one barrel.
 */
public final class InletControl {

    /** Q/AD^0.5 up to which the inlet is unsubmerged, m^0.5/s (3.5 in feet). */
    static final double UNSUBMERGED = 1.93;

    /** Q/AD^0.5 from which it is submerged, m^0.5/s (4.0 in feet). */
    static final double SUBMERGED = 2.21;

    /** Turns Q/AD^0.5 in metres into feet, as published. Friction has another constant. */
    private static final double TO_FEET = 1.811;

    private static final double SLOPE = -0.5;
    private static final double SLOPE_MITRED = 0.7;

    private final Barrel barrel;
    private final Inlet inlet;
    private final double slope;

    private InletControl(Barrel barrel, Inlet inlet, double slope) {
        this.barrel = barrel;
        this.inlet = inlet;
        this.slope = Check.notRising(slope);
    }

    /**
     * Depth of water above the inlet invert, m, zero or more.
     *
     * @param slope fall of the barrel, rise over run, zero or more
     * @param discharge of one barrel, m³/s, over zero
     */
    public static double headwater(Barrel barrel, Inlet inlet, double slope, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        return Math.max(0, new InletControl(barrel, inlet, slope).at(discharge));
    }

    /** The unsubmerged equation alone; arguments as for {@link #headwater}. */
    public static double unsubmerged(Barrel barrel, Inlet inlet, double slope, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        return new InletControl(barrel, inlet, slope).open(discharge);
    }

    /** The submerged equation alone; arguments as for {@link #headwater}. */
    public static double submerged(Barrel barrel, Inlet inlet, double slope, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        return new InletControl(barrel, inlet, slope).drowned(discharge);
    }

    private double at(double discharge) {
        double unit = unit();
        double intensity = discharge / unit;
        if (intensity <= UNSUBMERGED) {
            return open(discharge);
        }
        if (intensity >= SUBMERGED) {
            return drowned(discharge);
        }
        double low = open(UNSUBMERGED * unit);
        double high = drowned(SUBMERGED * unit);
        return low + (high - low) * (intensity - UNSUBMERGED) / (SUBMERGED - UNSUBMERGED);
    }

    /** Discharge at which Q/AD^0.5 is 1. */
    private double unit() {
        return barrel.inside().fullArea() * Math.sqrt(barrel.inside().rise());
    }

    private double open(double discharge) {
        double rise = barrel.inside().rise();
        double power = inlet.k() * Math.pow(TO_FEET * discharge / unit(), inlet.m());
        return switch (inlet.form()) {
            case ONE -> Critical.energy(barrel.inside(), discharge) + rise * (power + slopeTerm());
            case TWO -> rise * power;
        };
    }

    private double drowned(double discharge) {
        double intensity = TO_FEET * discharge / unit();
        return barrel.inside().rise()
                * (inlet.c() * intensity * intensity + inlet.y() + slopeTerm());
    }

    private double slopeTerm() {
        return (inlet.mitred() ? SLOPE_MITRED : SLOPE) * slope;
    }
}
