package lanewright.stone;

import lanewright.measure.Assumption;
import org.jspecify.annotations.Nullable;

/**
 * What the owner says of one layer's stone.
 *
 * @param role plain role of the layer, such as {@code base}
 * @param density in place, compacted, kg/m³, 500 to 3,500
 * @param densityFrom where the density comes from, shown beside every figure that rests on it it
 * @param looseRatio loose spread depth over compacted depth, 1 to 2
 * @param looseFrom where the ratio comes from
 * @param loss part of the stone that is lost (into soft ground, over the edge, in the yard), 0 to 1
 * @param payload what one truck brings, kg, over zero
 * @param price in the owner's money per kg delivered, or NaN where the owner gave none
 * @param inHand stone that is there or paid for, kg, or NaN if the owner did not say
 * @param gradation name of a published gradation that was chosen for it, or null
 */
public record Supply(
        String role,
        double density,
        Assumption densityFrom,
        double looseRatio,
        Assumption looseFrom,
        double loss,
        double payload,
        double price,
        double inHand,
        @Nullable String gradation) {
    /** Checks the ranges. */
    public Supply {
        require(!role.isBlank(), "a layer needs a role", 0);
        require(density >= 500 && density <= 3500, "density must be 500 to 3,500 kg/m³", density);
        require(looseRatio >= 1 && looseRatio <= 2, "loose ratio must be 1 to 2", looseRatio);
        require(loss >= 0 && loss <= 1, "loss must be 0 to 100 %", loss);
        require(
                payload > 0 && payload <= 100_000,
                "payload must be over 0 and at most 100 t",
                payload);
        require(
                Double.isNaN(price) || (price >= 0 && price < 1e9),
                "price must be zero or more",
                price);
        require(Double.isNaN(inHand) || (inHand >= 0 && inHand < 1e12), "stone in hand", inHand);
    }

    private static void require(boolean holds, String what, double was) {
        if (!holds) {
            throw new IllegalArgumentException(what + ", was " + was);
        }
    }
}
