package lanewright.earthwork;

import lanewright.lane.volume.State;

/**
 * Earth that leaves or comes by truck, in all three states.
 *
 * @param bank m³
 * @param loose m³ on the truck
 * @param compacted m³
 * @param loads truckloads, whole, or -1 if the truck or the soil's weight is not known
 */
public record Hauled(double bank, double loose, double compacted, int loads) {

    /** Nothing. */
    public static final Hauled NONE = new Hauled(0, 0, 0, 0);

    /**
     * A bank volume on trucks.
     *
     * @param bank m³, zero or more
     * @param soil what it is
     * @param payload what one truck carries, kg, or NaN
     */
    static Hauled of(double bank, Soil soil, double payload) {
        double loose = soil.convert(bank, State.BANK, State.LOOSE);
        double loads = Math.ceil(loose * soil.looseDensity() / payload - 1e-9);
        return new Hauled(
                bank,
                loose,
                soil.convert(bank, State.BANK, State.COMPACTED),
                bank == 0 ? 0 : Double.isNaN(loads) ? -1 : (int) loads);
    }
}
