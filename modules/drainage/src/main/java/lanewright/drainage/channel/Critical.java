package lanewright.drainage.channel;

/**
 * Critical flow, where a wave can just not run upstream: {@code Q² T = g A³} (Chow, Open-Channel
 * Hydraulics, 1959, chapter 4).
 */
public final class Critical {

    /** Standard gravity, m/s² (32.174 ft/s²). */
    public static final double GRAVITY = 9.80665;

    private Critical() {}

    /**
     * Critical depth, m; in a box that is too low for it, the height of the box.
     *
     * @param discharge m³/s, over zero
     */
    public static double depth(FlowShape shape, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        double deepest = shape.deepest();
        if (!Double.isInfinite(deepest) && carried(shape, deepest) <= discharge) {
            return deepest;
        }
        return Rising.where(depth -> carried(shape, depth), discharge, deepest);
    }

    /** Discharge that is critical at a depth: the root of {@code g A³ / T}. */
    private static double carried(FlowShape shape, double depth) {
        double area = shape.area(depth);
        if (area <= 0) {
            return 0;
        }
        double top = shape.topWidth(depth);
        return top > 0 ? area * Math.sqrt(GRAVITY * area / top) : Double.MAX_VALUE;
    }

    /** Depth and velocity head together at critical flow, m. */
    public static double energy(FlowShape shape, double discharge) {
        double depth = depth(shape, discharge);
        return energy(shape, depth, discharge);
    }

    /** Depth and velocity head together, {@code y + V²/2g}, m. */
    public static double energy(FlowShape shape, double depth, double discharge) {
        Check.positive("depth, m,", depth);
        double velocity = Check.notNegative("discharge, m³/s,", discharge) / shape.area(depth);
        return depth + velocity * velocity / (2 * GRAVITY);
    }

    /** Froude number, {@code V / √(g A / T)}: over 1 the flow shoots. */
    public static double froude(FlowShape shape, double depth, double discharge) {
        Check.positive("depth, m,", depth);
        double area = shape.area(depth);
        double velocity = Check.notNegative("discharge, m³/s,", discharge) / area;
        return velocity / Math.sqrt(GRAVITY * area / shape.topWidth(depth));
    }

    /** Slope on which {@code discharge} runs evenly at its critical depth, rise over run. */
    public static double slope(FlowShape shape, double discharge, double n) {
        Check.roughness(n);
        double depth = depth(shape, discharge);
        double velocity = discharge / shape.area(depth);
        double root = velocity * n / Math.pow(shape.hydraulicRadius(depth), 2.0 / 3);
        return root * root;
    }
}
