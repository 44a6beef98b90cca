package lanewright.planner.document;

import java.util.List;
import lanewright.measure.Price;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the stone, its trucks and its price.
 *
 * @param loss part of the order that never becomes lane: the owner's own figure, 0.1 for 10 %
 * @param payload what one truck brings, kg
 * @param raisedBed height of the truck's bed when it tips, m
 * @param materials the stones by role
 * @param fabric whether a separation fabric is laid under the stone
 */
public record StonePart(
        double loss, double payload, double raisedBed, List<Material> materials, boolean fabric) {
    /** Copies the list and checks the ranges. */
    public StonePart {
        materials = List.copyOf(materials);
        if (!(loss >= 0 && loss <= 1)) {
            throw new IllegalArgumentException("the loss must be 0 to 100 %");
        }
        if (!(payload >= 200 && payload <= 60_000)) {
            throw new IllegalArgumentException("a truck brings 200 to 60,000 kg (0.2 to 66 tons)");
        }
        if (!(raisedBed > 0 && raisedBed <= 20)) {
            throw new IllegalArgumentException("a raised bed reaches over 0 and at most 20 m");
        }
    }

    /**
     * One stone.
     *
     * @param role the role of the layers it is for
     * @param density compacted in place, kg/m³; NaN to take the table's for {@code kind}
     * @param kind name of a row of the table of densities
     * @param loose name of a row of the table of loose depths
     * @param gradation published name of its sizes, or null
     * @param price the owner's price, for a mass or a load, or null if there is none
     * @param inHand what the owner already has or can pay for, kg, or NaN
     */
    public record Material(
            String role,
            double density,
            String kind,
            String loose,
            @Nullable String gradation,
            @Nullable Price price,
            double inHand) {
        /** Checks the ranges. */
        public Material {
            if (role.isBlank()) {
                throw new IllegalArgumentException("a stone needs the role of its layer");
            }
            if (density < 500 || density > 4000) {
                throw new IllegalArgumentException(
                        "a density is 500 to 4,000 kg/m3 (31 to 250 lb/ft3)");
            }
            if (inHand < 0) {
                throw new IllegalArgumentException("what is in hand is 0 or more");
            }
        }
    }
}
