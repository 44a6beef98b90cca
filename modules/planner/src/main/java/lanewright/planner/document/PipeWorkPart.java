package lanewright.planner.document;

import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Price;
import org.jspecify.annotations.Nullable;

/**
 * How pipes are dug in, and what that costs. Prices are the owner's own: without one a quantity
 * stands and no money is said.
 *
 * @param sideRoom room in the trench on each side of the pipe, m
 * @param bedding packed thickness of the stone under the pipe, m
 * @param soldBy pipe is sold in multiples of this length, m
 * @param beyond how far a pipe whose ends stick out goes on beyond the foot of each slope, m
 * @param axle load of the heaviest axle that crosses it while the lane is built, kg
 * @param beddingKind name of a row of the table of densities
 * @param riprapKind name of a row of the table of densities
 * @param trenchPerHour bank volume that is dug and put back in an hour, m³; NaN if not given
 * @param prices of pipe by its length
 * @param beddingPrice for a mass, a volume or a load, or null
 * @param riprapPrice for a mass, a volume or a load, or null
 * @param fabricPrice for an area, or null
 * @param trenchPrice for an hour or a volume, or null
 * @param headwallPrice for one headwall, or null
 */
public record PipeWorkPart(
        double sideRoom,
        double bedding,
        double soldBy,
        double beyond,
        double axle,
        String beddingKind,
        String riprapKind,
        double trenchPerHour,
        List<PipePrice> prices,
        @Nullable Price beddingPrice,
        @Nullable Price riprapPrice,
        @Nullable Price fabricPrice,
        @Nullable Price trenchPrice,
        @Nullable Price headwallPrice) {

    /** Copies the list and checks the ranges. */
    public PipeWorkPart {
        prices = List.copyOf(prices);
        if (!(sideRoom >= 0.1 && sideRoom <= 3)) {
            throw new IllegalArgumentException(
                    "beside a pipe there are 0.1 to 3 m of room: earth must be packed there");
        }
        if (!(bedding >= 0 && bedding <= 1)) {
            throw new IllegalArgumentException("bedding is 0 to 1 m thick");
        }
        if (!(soldBy > 0 && soldBy <= 15)) {
            throw new IllegalArgumentException("pipe is sold by over 0 and at most 15 m");
        }
        if (!(beyond >= 0 && beyond <= 5)) {
            throw new IllegalArgumentException("a pipe goes on 0 to 5 m beyond a slope's foot");
        }
        if (!(axle > 0 && axle <= 68_000)) {
            throw new IllegalArgumentException(
                    "an axle carries over 0 and at most 68,000 kg (150,000 lb); keep heavier"
                            + " machines off the pipe");
        }
        if (trenchPerHour <= 0) {
            throw new IllegalArgumentException("what is dug in an hour is over 0");
        }
        paid(beddingPrice, "bedding", Kind.MASS, Kind.VOLUME);
        paid(riprapPrice, "riprap", Kind.MASS, Kind.VOLUME);
        paid(fabricPrice, "fabric", Kind.AREA);
        paid(trenchPrice, "a trench", Kind.HOURS, Kind.VOLUME);
        paid(headwallPrice, "a headwall", Kind.COUNT);
    }

    private static void paid(@Nullable Price price, String what, Kind... by) {
        if (price != null && !List.of(by).contains(price.kind())) {
            throw new IllegalArgumentException(
                    "the price of "
                            + what
                            + " is for "
                            + (by[0] == Kind.COUNT
                                    ? "a piece"
                                    : by[0] == Kind.AREA
                                            ? "an area, such as yd2 or m2"
                                            : by[0] == Kind.HOURS
                                                    ? "an hour or a volume, such as h, yd3 or m3"
                                                    : "a mass or a volume, such as ton, t, yd3 or m3"));
        }
    }

    /**
     * What a pipe costs by its length.
     *
     * @param size clear width, m
     * @param rise clear height of a pipe-arch, m; null for round pipe
     * @param material what it is made of; {@code NOT_KNOWN} for any
     * @param price for a length
     */
    public record PipePrice(
            double size, @Nullable Double rise, WaterPart.PipeMaterial material, Price price) {
        /** Checks the ranges. */
        public PipePrice {
            if (!(size > 0 && size <= 5) || (rise != null && !(rise > 0 && rise <= 5))) {
                throw new IllegalArgumentException("a pipe is over 0 and at most 5 m wide");
            }
            if (price.kind() != Kind.LENGTH) {
                throw new IllegalArgumentException(
                        "a pipe's price is for a length, such as 21.50 per ft or 70 per m");
            }
        }
    }
}
