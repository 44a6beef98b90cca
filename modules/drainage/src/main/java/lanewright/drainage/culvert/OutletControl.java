package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Critical;

/**
 * Headwater where barrel and tailwater hold water back (FHWA HDS-5, 2001, chapter III): {@code HW =
 * H + ho − L S} with {@code H = (1 + Ke + 19.63 n² L / R^1.33) V² / 2g} of the barrel running full
 * and {@code ho} the greater of tailwater and {@code (dc + D) / 2}.
 *
 * <p>Good where the barrel runs full for part of its length. Below a headwater of 0.75 D it is out
 * of its range and gives too much; {@link #inRange} says so, and the headwater is then that of the
 * water surface in the barrel, stepped up from the outlet by the direct step method (Chow, 1959,
 * section 10-2) with entrance loss and velocity head at the inlet, if that is lower. All figures
 * are for one barrel.
 *
 * @param head loss H from headwater to outlet, m
 * @param outlet height ho of the pressure line above the outlet invert, m
 * @param headwater depth above the inlet invert, m; under zero where the fall is more than enough
 * @param inRange whether the headwater by the formula is at least 0.75 of the rise
 */
public record OutletControl(double head, double outlet, double headwater, boolean inRange) {

    /** Headwater over rise under which the method is out of its range. */
    private static final double LEAST = 0.75;

    /** Friction constant in metres, and exponent, as published (29 in feet). */
    private static final double FRICTION = 19.63;

    private static final double RADIUS_EXPONENT = 1.33;

    /**
     * Headwater by outlet control.
     *
     * @param length of the barrel, m
     * @param slope fall of the barrel, rise over run, zero or more
     * @param tailwater depth above the outlet invert, m, zero or more
     * @param discharge of one barrel, m³/s, over zero
     */
    public static OutletControl of(
            Barrel barrel,
            Inlet inlet,
            double length,
            double slope,
            double tailwater,
            double discharge) {
        return of(barrel, inlet.loss(), length, slope, tailwater, discharge);
    }

    static OutletControl of(
            Barrel barrel,
            double loss,
            double length,
            double slope,
            double tailwater,
            double discharge) {
        Check.positive("length of a barrel, m,", length);
        Check.notRising(slope);
        Check.notNegative("tailwater, m above the outlet invert,", tailwater);
        Check.positive("discharge, m³/s,", discharge);
        BarrelShape inside = barrel.inside();
        double velocity = discharge / inside.fullArea();
        double friction =
                FRICTION
                        * barrel.n()
                        * barrel.n()
                        * length
                        / Math.pow(inside.fullRadius(), RADIUS_EXPONENT);
        double head = (1 + loss + friction) * velocity * velocity / (2 * Critical.GRAVITY);
        double critical = Critical.depth(inside, discharge);
        double outlet = Math.max(tailwater, (critical + inside.rise()) / 2);
        double full = head + outlet - length * slope;
        boolean inRange = full >= LEAST * inside.rise();
        double headwater = full;
        if (!inRange && tailwater < inside.rise()) {
            double depth = Backwater.inletDepth(barrel, length, slope, tailwater, discharge);
            double speed = discharge / inside.area(depth);
            double open = depth + (1 + loss) * speed * speed / (2 * Critical.GRAVITY);
            headwater = Math.min(full, open);
        }
        return new OutletControl(head, outlet, headwater, inRange);
    }
}
