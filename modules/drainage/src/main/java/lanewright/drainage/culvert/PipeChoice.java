package lanewright.drainage.culvert;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.channel.Check;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * The least pipe of a material that carries a storm, with its neighbours; or why there is none.
 *
 * <p>One round pipe before one pipe-arch, one barrel before two and two before three. Among those
 * the smallest that fits under its cover and stays within the headwater.
 *
 * @param material of what
 * @param chosen the least that does
 * @param smaller the next smaller sold, as many barrels, if there is one
 * @param larger the next larger sold, as many barrels, if there is one
 * @param refusal why there is none; empty where there is one
 */
public record PipeChoice(
        Material material,
        Optional<Option> chosen,
        Optional<Option> smaller,
        Optional<Option> larger,
        Optional<Saying> refusal) {

    private static final int MOST_BARRELS = 3;

    /**
     * What is asked of a pipe.
     *
     * @param discharge of the storm, m³/s, over zero
     * @param headwater greatest depth allowed above the inlet invert, m
     * @param tailwater depth above the outlet invert, m
     * @param slope fall of the barrel, rise over run, zero or more
     * @param length along the barrel, m
     * @param room from the inlet invert to the surface at the lowest wheel track, m
     * @param load that goes over it
     * @param end how its inlet is made
     */
    public record Wanted(
            double discharge,
            double headwater,
            double tailwater,
            double slope,
            double length,
            double room,
            Load load,
            Inlet.End end) {

        /**
         * @throws IllegalArgumentException if a figure is out of range
         */
        public Wanted {
            Check.positive("discharge, m³/s,", discharge);
            Check.positive("headwater allowed, m above the inlet invert,", headwater);
            Check.notNegative("tailwater, m above the outlet invert,", tailwater);
            Check.notRising(slope);
            Check.positive("length of a barrel, m,", length);
            Check.positive("room from the inlet invert to the surface, m,", room);
        }
    }

    /**
     * A size and what it does.
     *
     * @param size as sold
     * @param barrels how many side by side
     * @param headwater at the storm
     * @param room from the inlet invert to the surface that it needs, m
     * @param fits whether there is that room
     * @param carries whether its headwater is within the allowed
     */
    public record Option(
            Size size,
            int barrels,
            Headwater headwater,
            double room,
            boolean fits,
            boolean carries) {

        /** True if it fits and carries. */
        public boolean does() {
            return fits && carries;
        }
    }

    /**
     * The choice for one material.
     *
     * @throws IllegalArgumentException if no inlet is published for this end and material
     */
    public static PipeChoice of(Wanted wanted, Material material) {
        List<List<Size>> families = families(material);
        for (int barrels = 1; barrels <= MOST_BARRELS; barrels++) {
            for (List<Size> family : families) {
                for (int i = 0; i < family.size(); i++) {
                    Option option = option(wanted, family.get(i), barrels);
                    if (option.does()) {
                        return new PipeChoice(
                                material,
                                Optional.of(option),
                                beside(wanted, family, i - 1, barrels),
                                beside(wanted, family, i + 1, barrels),
                                Optional.empty());
                    }
                }
            }
        }
        return new PipeChoice(
                material,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(refusal(wanted, families)));
    }

    /** The choice for each material, in the order given. */
    public static List<PipeChoice> of(Wanted wanted, List<Material> materials) {
        if (materials.isEmpty()) {
            throw new IllegalArgumentException(
                    "no material is given; name one that pipe can be bought in");
        }
        return materials.stream().map(material -> of(wanted, material)).toList();
    }

    /** Round sizes, then pipe-arches, of those there are. */
    private static List<List<Size>> families(Material material) {
        List<List<Size>> families = new ArrayList<>();
        for (Inlet.Shape shape : List.of(Inlet.Shape.ROUND, Inlet.Shape.ARCH)) {
            List<Size> family =
                    Size.sold(material).stream().filter(size -> size.shape() == shape).toList();
            if (!family.isEmpty()) {
                families.add(family);
            }
        }
        return families;
    }

    private static Optional<Option> beside(Wanted wanted, List<Size> family, int i, int barrels) {
        return i >= 0 && i < family.size()
                ? Optional.of(option(wanted, family.get(i), barrels))
                : Optional.empty();
    }

    private static Option option(Wanted wanted, Size size, int barrels) {
        Inlet inlet = Inlet.of(size.barrel(), wanted.end());
        Headwater headwater =
                Headwater.of(
                        size.barrel(),
                        inlet,
                        wanted.length(),
                        wanted.slope(),
                        wanted.tailwater(),
                        wanted.discharge(),
                        barrels);
        double room = size.room(wanted.load());
        return new Option(
                size,
                barrels,
                headwater,
                room,
                room <= wanted.room(),
                headwater.depth() <= wanted.headwater());
    }

    private static Saying refusal(Wanted wanted, List<List<Size>> families) {
        double leastRoom = Double.POSITIVE_INFINITY;
        double leastHeadwater = Double.POSITIVE_INFINITY;
        for (List<Size> family : families) {
            for (Size size : family) {
                Option option = option(wanted, size, MOST_BARRELS);
                leastRoom = Math.min(leastRoom, option.room());
                if (option.fits()) {
                    leastHeadwater = Math.min(leastHeadwater, option.headwater().depth());
                }
            }
        }
        if (leastRoom > wanted.room()) {
            return Saying.of(
                    "cover is too small: the smallest pipe with its cover needs {} from the inlet"
                            + " invert to the surface, there is {}; raise the lane or lower the"
                            + " pipe",
                    Quantity.height(leastRoom),
                    Quantity.height(wanted.room()));
        }
        return Saying.of(
                "headwater is too low: three barrels of the size that does best under this cover"
                        + " need {} above the inlet invert, {} is allowed; raise the lane, or build"
                        + " a ford or a bridge",
                Quantity.height(leastHeadwater),
                Quantity.height(wanted.headwater()));
    }
}
