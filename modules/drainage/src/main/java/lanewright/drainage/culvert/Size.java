package lanewright.drainage.culvert;

import java.util.Comparator;
import java.util.List;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Imperial;
import lanewright.measure.Row;
import lanewright.measure.Tables;

/**
 * A size that pipe is sold in, from the table {@code culvert-sizes}; cover over it from {@code
 * culvert-cover}.
 *
 * @param name as it is sold, in inches
 * @param shape round or pipe-arch
 * @param barrel what it is to water
 * @param source who published it, with edition
 */
public record Size(String name, Inlet.Shape shape, Barrel barrel, String source) {

    /** The tables, read once. */
    private static final class Known {
        static final List<Size> ALL =
                Tables.read("culvert-sizes").rows().stream()
                        .map(Size::of)
                        .sorted(
                                Comparator.comparing(Size::shape)
                                        .thenComparingDouble(
                                                size -> size.barrel.inside().fullArea()))
                        .toList();
        static final List<Row> COVERS = Tables.read("culvert-cover").rows();
    }

    /** Every size of a material: the round ones, then the pipe-arches, each by rising area. */
    public static List<Size> sold(Material material) {
        return Known.ALL.stream().filter(size -> size.barrel.material() == material).toList();
    }

    /** Whether a cover is published for a width under a load. */
    public static boolean hasCover(Material material, double span, Load load) {
        double inches = span / Imperial.INCH;
        return Known.COVERS.stream()
                .anyMatch(
                        row ->
                                row.text("material").equals(material.words())
                                        && row.text("load").equals(load.words())
                                        && inches <= row.number("span_to_in") + 1e-6);
    }

    /**
     * A round barrel of a width that may lie between two that are sold: roughness and wall of the
     * next larger one, or of the largest.
     *
     * @param span clear width, m, over zero
     */
    public static Barrel round(Material material, double span) {
        Check.positive("clear width of a pipe, m,", span);
        Barrel like = null;
        for (Size size : sold(material)) {
            if (size.shape == Inlet.Shape.ROUND) {
                like = size.barrel;
                if (span <= like.inside().span() + 1e-3) {
                    break;
                }
            }
        }
        if (like == null) {
            throw new IllegalStateException("no round pipe of " + material.words() + " is sold");
        }
        return new Barrel(material, new Circle(span), like.n(), like.wall());
    }

    private static Size of(Row row) {
        boolean arch = row.has("rise_in");
        double span = row.number("span_in") * Imperial.INCH;
        BarrelShape inside =
                arch
                        ? PipeArch.of(
                                span,
                                row.number("rise_in") * Imperial.INCH,
                                row.number("area_ft2") * Imperial.SQUARE_FOOT)
                        : new Circle(span);
        return new Size(
                row.text("size"),
                arch ? Inlet.Shape.ARCH : Inlet.Shape.ROUND,
                new Barrel(
                        Material.of(row.text("material")),
                        inside,
                        row.number("n"),
                        row.number("wall_in") * Imperial.INCH),
                row.citation());
    }

    /**
     * Least earth and stone over the outside of the crown, with who says so.
     *
     * @param least from the top of the pipe to the surface, m
     * @param source who published it, with edition
     */
    public record Cover(double least, String source) {}

    /**
     * Least cover under a load.
     *
     * @throws IllegalArgumentException if none is published for this size
     */
    public Cover cover(Load load) {
        return cover(barrel.material(), barrel.inside().span(), load);
    }

    /**
     * Least cover over a pipe of any width under a load.
     *
     * @param span clear width, m
     * @throws IllegalArgumentException if none is published for that width
     */
    public static Cover cover(Material material, double span, Load load) {
        double inches = span / Imperial.INCH;
        for (Row row : Known.COVERS) {
            if (row.text("material").equals(material.words())
                    && row.text("load").equals(load.words())
                    && inches <= row.number("span_to_in") + 1e-6) {
                double fixed = row.number("cover_in") * Imperial.INCH;
                double bySpan = row.has("span_over") ? span / row.number("span_over") : 0;
                return new Cover(Math.max(fixed, bySpan), row.citation());
            }
        }
        throw new IllegalArgumentException(
                "no least cover is published for "
                        + Math.round(inches)
                        + " in of "
                        + material.words()
                        + " under "
                        + load.words()
                        + "; take a smaller pipe or ask its maker");
    }

    /** Height from the inlet invert to the surface over the pipe that this size needs, m. */
    public double room(Load load) {
        return Check.positive("rise of a pipe, m,", barrel.inside().rise())
                + barrel.wall()
                + cover(load).least();
    }
}
