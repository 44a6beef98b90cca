package lanewright.planner.pipes;

import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * One thing of a pipe that is bought or done.
 *
 * @param what it is
 * @param amount how much of it, with what state it is in
 * @param paid what of it the price is for: a length, a mass, a volume, an area or hours, SI; null
 *     if nothing is paid for
 * @param price the owner's price, or null
 */
public record CostLine(What what, Saying amount, @Nullable Quantity paid, @Nullable Price price) {

    /** What is bought or done for a pipe. */
    public enum What {
        /** Digging its trench, and putting earth back. */
        TRENCH("trench, dug and filled again"),
        /** Stone under it. */
        BEDDING("bedding"),
        /** Earth around and over it, up to the top of the trench. */
        BACKFILL("backfill"),
        /** The pipe. */
        BARREL("barrel"),
        /** What is done at its ends. */
        ENDS("end treatment"),
        /** Digging for what its headwalls stand on. */
        FOOTINGS("footings of its headwalls, dug"),
        /** Digging the pit that it begins in. */
        BASIN("catch basin at its inlet, dug"),
        /** Stone in that. */
        BASIN_STONE("stone in the basin"),
        /** Stone across the ditch below its inlet. */
        DAM("dam in the ditch below its inlet"),
        /** Stone at its outlet. */
        RIPRAP("riprap at the outlet"),
        /** Filter fabric under that. */
        FABRIC("filter fabric under it");

        private final String words;

        What(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Whether it is digging, so that nothing of it is bought. */
    public boolean isDigging() {
        return what == What.TRENCH || what == What.FOOTINGS || what == What.BASIN;
    }

    /** Whether it costs something. */
    public boolean isPaid() {
        return paid != null;
    }

    /** Money, NaN if it is paid for and no price is given; zero if nothing is paid for. */
    public double money() {
        if (paid == null) {
            return 0;
        }
        return price == null ? Double.NaN : price.of(paid.value());
    }
}
