package lanewright.drainage.culvert;

import lanewright.drainage.channel.Critical;
import lanewright.drainage.channel.Manning;

/**
 * Water surface in a barrel that runs partly full, from its outlet up to its inlet, by the direct
 * step method (Chow, Open-Channel Hydraulics, 1959, section 10-2). Takes the place of the full-flow
 * formula where headwater is too low for that.
 *
 * <p>Depth at the outlet is the greater of critical depth and tailwater; from there it goes towards
 * normal depth, or where the barrel is steep towards critical depth, in steps of depth.
 */
final class Backwater {

    /** Steps of depth; twice as many move the headwater by less than a millimetre. */
    private static final int STEPS = 200;

    private final Barrel barrel;
    private final double slope;
    private final double discharge;

    private Backwater(Barrel barrel, double slope, double discharge) {
        this.barrel = barrel;
        this.slope = slope;
        this.discharge = discharge;
    }

    /**
     * Depth at the inlet end of the barrel, m; its rise where the water meets the crown on the way.
     *
     * @param tailwater depth above the outlet invert, m
     * @param discharge of one barrel, m³/s, over zero
     */
    static double inletDepth(
            Barrel barrel, double length, double slope, double tailwater, double discharge) {
        BarrelShape inside = barrel.inside();
        double critical = Critical.depth(inside, discharge);
        double start = Math.max(critical, tailwater);
        if (start >= inside.rise()) {
            return inside.rise();
        }
        double target = inside.rise();
        if (slope > 0 && discharge <= Manning.most(inside, barrel.n(), slope)) {
            double normal = Manning.normalDepth(inside, discharge, barrel.n(), slope);
            target = Math.max(critical, normal);
        }
        return new Backwater(barrel, slope, discharge).run(start, target, length);
    }

    private double run(double start, double target, double length) {
        double gone = 0;
        double depth = start;
        for (int i = 1; i <= STEPS; i++) {
            double next = start + (target - start) * i / STEPS;
            double step = distance(depth, next);
            // No distance, or one the wrong way: the target itself, which is met only far off.
            if (!(step >= 0)) {
                return next;
            }
            if (gone + step >= length) {
                return step > 0 ? depth + (next - depth) * (length - gone) / step : next;
            }
            gone += step;
            depth = next;
        }
        return target;
    }

    /** How far upstream the depth is {@code next} if it is {@code depth} here, m. */
    private double distance(double depth, double next) {
        double energy =
                Critical.energy(barrel.inside(), next, discharge)
                        - Critical.energy(barrel.inside(), depth, discharge);
        double friction = (friction(depth) + friction(next)) / 2;
        return energy / (friction - slope);
    }

    /** Slope of the energy line by Manning. */
    private double friction(double depth) {
        double radius = barrel.inside().hydraulicRadius(depth);
        double root =
                discharge / barrel.inside().area(depth) * barrel.n() / Math.pow(radius, 2.0 / 3);
        return root * root;
    }
}
