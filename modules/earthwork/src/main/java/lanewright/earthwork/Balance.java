package lanewright.earthwork;

import lanewright.lane.volume.State;

/**
 * Whether what is cut makes what is filled, in bank measure. Topsoil, edge refill and earth that
 * does not bear are not in it.
 *
 * @param cut bank m³
 * @param fill compacted m³, edge refill left out
 * @param fillBank what that fill takes out of the bank, m³
 * @param over bank m³ left over; negative if it is short
 * @param haulAway what is left over
 * @param bringIn what is short
 */
public record Balance(
        double cut, double fill, double fillBank, double over, Hauled haulAway, Hauled bringIn) {

    /**
     * Balances cut and fill.
     *
     * @param cut bank m³, zero or more
     * @param fill compacted m³, zero or more
     * @param soil what is cut and what fill is made of
     * @param payload what one truck carries, kg, or NaN
     */
    public static Balance of(double cut, double fill, Soil soil, double payload) {
        if (!(cut >= 0 && fill >= 0)) {
            throw new IllegalArgumentException(
                    "cut and fill must be 0 or more, were " + cut + " / " + fill);
        }
        double fillBank = soil.convert(fill, State.COMPACTED, State.BANK);
        double over = cut - fillBank;
        return new Balance(
                cut,
                fill,
                fillBank,
                over,
                over > 0 ? Hauled.of(over, soil, payload) : Hauled.NONE,
                over < 0 ? Hauled.of(-over, soil, payload) : Hauled.NONE);
    }
}
