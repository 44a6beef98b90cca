package lanewright.drainage.channel;

import java.util.function.DoubleUnaryOperator;

/**
 * Steady, even flow by Manning's formula, {@code V = R^(2/3) S^(1/2) / n} in metres and seconds
 * (Chow, Open-Channel Hydraulics, 1959, section 5-6).
 *
 * <p>Holds where slope, shape and flow stay the same for a good length; wrong close to a fall, a
 * sill or a culvert that holds water back. In feet the constant is 1.486 and not 1.
 */
public final class Manning {

    private Manning() {}

    /**
     * Mean velocity, m/s.
     *
     * @param depth depth of water, m
     * @param n Manning's roughness
     * @param slope fall of the bed, rise over run, over zero
     */
    public static double velocity(FlowShape shape, double depth, double n, double slope) {
        Check.roughness(n);
        Check.falling(slope);
        return Math.pow(shape.hydraulicRadius(depth), 2.0 / 3) * Math.sqrt(slope) / n;
    }

    /** Discharge, m³/s; arguments as for {@link #velocity}. */
    public static double discharge(FlowShape shape, double depth, double n, double slope) {
        return velocity(shape, depth, n, slope) * shape.area(depth);
    }

    /** The most that the shape carries without pressure, m³/s; infinite for an open channel. */
    public static double most(FlowShape shape, double n, double slope) {
        double rising = shape.risingTo();
        return Double.isInfinite(rising)
                ? Double.POSITIVE_INFINITY
                : discharge(shape, rising, n, slope);
    }

    /**
     * Depth at which the shape carries {@code discharge}, m. In a pipe that two depths would do
     * for, the lower.
     *
     * @param discharge m³/s, over zero
     * @throws IllegalArgumentException if an argument is out of its range, or a pipe cannot carry
     *     as much without pressure
     */
    public static double normalDepth(FlowShape shape, double discharge, double n, double slope) {
        Check.roughness(n);
        double most = most(shape, n, slope);
        if (discharge > most) {
            throw new IllegalArgumentException(
                    "the pipe runs full: it carries at most "
                            + most
                            + " m³/s without pressure, asked for "
                            + discharge
                            + "; take a larger one or treat it as full");
        }
        return normalDepth(shape, discharge, depth -> n, slope);
    }

    /**
     * Depth of an even flow over a bed whose roughness falls as depth grows, m.
     *
     * @param n roughness by depth in m, never rising
     */
    static double normalDepth(
            FlowShape shape, double discharge, DoubleUnaryOperator n, double slope) {
        Check.positive("discharge, m³/s,", discharge);
        Check.falling(slope);
        return Rising.where(
                depth -> depth == 0 ? 0 : discharge(shape, depth, n.applyAsDouble(depth), slope),
                discharge,
                shape.risingTo());
    }
}
