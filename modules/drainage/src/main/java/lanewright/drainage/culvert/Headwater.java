package lanewright.drainage.culvert;

import java.util.OptionalDouble;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Critical;
import lanewright.drainage.channel.Manning;

/**
 * What a culvert does at a discharge: the higher of the headwaters by inlet and by outlet control
 * (FHWA HDS-5, 2001, chapter III).
 *
 * <p>Water does not go over the top here; see {@link Blocked} for that. An inlet open by a part has
 * that part of its area and width: by the inlet equations it behaves like a whole one at the
 * discharge over the part, and its loss grows by the part squared. The barrel behind it stays
 * whole.
 *
 * @param depth above the inlet invert, m
 * @param control which of the two gives it
 * @param byInlet depth by inlet control, m
 * @param byOutlet depth by outlet control, m, with whether that is in its range
 * @param critical critical depth in a barrel, m
 * @param normal normal depth in a barrel, m; empty where it runs full or lies level
 * @param outletDepth depth at the outlet, m
 * @param outletVelocity mean velocity at the outlet, m/s
 */
public record Headwater(
        double depth,
        Control control,
        double byInlet,
        OutletControl byOutlet,
        double critical,
        OptionalDouble normal,
        double outletDepth,
        double outletVelocity) {

    /** Where the flow is decided. */
    public enum Control {
        /** At the inlet: the barrel could carry more. */
        INLET,
        /** In the barrel or at its outlet. */
        OUTLET
    }

    /**
     * True if the depth is by outlet control where its full-flow formula is out of range, under
     * 0.75 D: it then comes from the water surface in the barrel.
     */
    public boolean doubtful() {
        return control == Control.OUTLET && !byOutlet.inRange();
    }

    /**
     * Headwater of barrels with clear inlets.
     *
     * @param length along the barrel, m
     * @param slope fall of the barrel, rise over run, zero or more
     * @param tailwater depth above the outlet invert, m, zero or more
     * @param discharge of all barrels together, m³/s, over zero
     * @param barrels how many, all alike
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static Headwater of(
            Barrel barrel,
            Inlet inlet,
            double length,
            double slope,
            double tailwater,
            double discharge,
            int barrels) {
        return of(new Culvert(barrel, inlet, length, slope, barrels), tailwater, discharge);
    }

    /** Headwater of a culvert; arguments as above. */
    public static Headwater of(Culvert culvert, double tailwater, double discharge) {
        Check.positive("discharge, m³/s,", discharge);
        Check.notNegative("tailwater, m above the outlet invert,", tailwater);
        Barrel barrel = culvert.barrel();
        double each = discharge / culvert.barrels();
        double open = culvert.open();
        double byInlet =
                InletControl.headwater(barrel, culvert.inlet(), culvert.slope(), each / open);
        OutletControl byOutlet =
                OutletControl.of(
                        barrel,
                        culvert.inlet().loss() / (open * open),
                        culvert.length(),
                        culvert.slope(),
                        tailwater,
                        each);
        Control control = byInlet >= byOutlet.headwater() ? Control.INLET : Control.OUTLET;
        double critical = Critical.depth(barrel.inside(), each);
        OptionalDouble normal = normal(barrel, culvert.slope(), each);
        double rise = barrel.inside().rise();
        double outletDepth =
                control == Control.INLET
                        ? normal.orElse(rise)
                        : Math.min(rise, Math.max(tailwater, critical));
        return new Headwater(
                Math.max(byInlet, byOutlet.headwater()),
                control,
                byInlet,
                byOutlet,
                critical,
                normal,
                outletDepth,
                each / barrel.inside().area(outletDepth));
    }

    private static OptionalDouble normal(Barrel barrel, double slope, double discharge) {
        if (slope <= 0 || discharge > Manning.most(barrel.inside(), barrel.n(), slope)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                Manning.normalDepth(barrel.inside(), discharge, barrel.n(), slope));
    }
}
