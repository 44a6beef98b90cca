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
