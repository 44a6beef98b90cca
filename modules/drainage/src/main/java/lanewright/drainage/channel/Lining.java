package lanewright.drainage.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewright.measure.Row;
import lanewright.measure.Table;
import lanewright.measure.Tables;

/**
 * What a ditch is lined with, from the table {@code channel-linings}.
 *
 * @param name as it is called
 * @param kind what sort of thing it is
 * @param effort rising with the work it takes, zero for bare soil
 * @param proposed whether it may be proposed: tall grass is not, nobody can promise it
 * @param roughness Manning's n by depth
 * @param velocity greatest velocity it bears, m/s, if one is published
 * @param shear greatest shear it bears, Pa, if one is published
 * @param stone median size of its stone, m, if it is stone
 * @param source who published it, with edition
 */
public record Lining(
        String name,
        Kind kind,
        int effort,
        boolean proposed,
        Roughness roughness,
        OptionalDouble velocity,
        OptionalDouble shear,
        OptionalDouble stone,
        String source) {

    /** Sorts of lining. */
    public enum Kind {
        /** The ground as it was dug. */
        SOIL,
        /** A closed stand of grass; class A is the tallest, E the shortest. */
        GRASS,
        /** A net or mat over seed, which holds until the grass does. */
        NET,
        /** Loose gravel. */
        GRAVEL,
        /** Loose rock. */
        RIPRAP
    }

    /**
     * Manning's n of a lining.
     *
     * @param shallow up to half a foot of water
     * @param middle from there to two feet
     * @param deep over two feet
     * @param grass coefficient Cn of {@code n = Cn τ^-0.4}, τ the mean shear in Pa, or zero where
     *     the first three hold
     */
    public record Roughness(double shallow, double middle, double deep, double grass) {

        /** Grass at next to no shear would get rougher without end; no table goes over this. */
        private static final double MOST = 0.5;

        private static final double HALF_FOOT = Imperial.FOOT / 2;
        private static final double TWO_FEET = Imperial.FOOT * 2;

        double at(FlowShape shape, double depth, double slope) {
            if (grass > 0) {
                double shear = Shear.WATER * shape.hydraulicRadius(depth) * slope;
                return Math.min(MOST, grass * Math.pow(shear, -0.4));
            }
            if (depth <= HALF_FOOT) {
                return shallow;
            }
            return depth <= TWO_FEET ? middle : deep;
        }
    }

    /**
     * How water runs over a lining.
     *
     * @param lining over which
     * @param n Manning's roughness at this depth
     * @param depth normal depth, m
     * @param velocity mean, m/s
     * @param shear greatest on the bed, Pa
     * @param froude Froude number
     * @param holds whether neither velocity nor shear is over what the lining bears
     */
    public record Flow(
            Lining lining,
            double n,
            double depth,
            double velocity,
            double shear,
            double froude,
            boolean holds) {}

    /** All of the table, by rising effort. */
    public static List<Lining> published() {
        return Known.ALL;
    }

    /** The table, read once. */
    private static final class Known {
        static final Table TABLE = Tables.read("channel-linings");
        static final List<Lining> ALL =
                TABLE.rows().stream()
                        .map(Lining::of)
                        .sorted(Comparator.comparingInt(Lining::effort))
                        .toList();
    }

    /**
     * The lining of a name.
     *
     * @throws IllegalArgumentException if there is none, with the nearest one there is
     */
    public static Lining named(String name) {
        return of(Known.TABLE.row("lining", name));
    }

    private static Lining of(Row row) {
        boolean grass = row.has("grass_cn");
        Roughness roughness =
                grass
                        ? new Roughness(0, 0, 0, row.number("grass_cn"))
                        : new Roughness(
                                row.number("n_to_half_ft"),
                                row.number("n_to_2_ft"),
                                row.number("n_over_2_ft"),
                                0);
        return new Lining(
                row.text("lining"),
                kind(row),
                row.whole("effort"),
                row.text("proposed").equals("yes"),
                roughness,
                figure(row, "velocity_ft_s", Imperial.FOOT),
                figure(row, "shear_lb_ft2", Imperial.POUND_PER_SQUARE_FOOT),
                figure(row, "d50_in", Imperial.INCH),
                row.citation());
    }

    private static OptionalDouble figure(Row row, String column, double unit) {
        return row.has(column)
                ? OptionalDouble.of(row.number(column) * unit)
                : OptionalDouble.empty();
    }

    private static Kind kind(Row row) {
        return switch (row.text("kind")) {
            case "soil" -> Kind.SOIL;
            case "grass" -> Kind.GRASS;
            case "net" -> Kind.NET;
            case "gravel" -> Kind.GRAVEL;
            case "riprap" -> Kind.RIPRAP;
            default ->
                    throw new IllegalStateException(
                            row + ": kind \"" + row.text("kind") + "\" is not known");
        };
    }

    /** True if neither figure is over what this bears; what has no published limit is not held. */
    public boolean bears(double metresPerSecond, double pascal) {
        return metresPerSecond <= velocity.orElse(Double.POSITIVE_INFINITY)
                && pascal <= shear.orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * How an even flow runs over this lining.
     *
     * @param discharge m³/s, over zero
     * @param slope of the bed, rise over run, over zero
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Flow flow(ChannelShape shape, double discharge, double slope) {
        double depth =
                Manning.normalDepth(shape, discharge, at -> roughness.at(shape, at, slope), slope);
        double speed = discharge / shape.area(depth);
        double drag = Shear.onBed(depth, slope);
        return new Flow(
                this,
                roughness.at(shape, depth, slope),
                depth,
                speed,
                drag,
                Critical.froude(shape, depth, discharge),
                bears(speed, drag));
    }

    /**
     * The lining of least effort that holds, and how water runs over it; bare soil where that
     * holds.
     *
     * <p>Effort rises from soil over short and longer grass, nets, gravel to rock. A net stands for
     * the time until grass does: where one is proposed, seed goes under it.
     *
     * @param soil name of the soil in the table, such as {@code sandy loam}
     * @return empty if not even the largest rock of the table holds
     * @throws IllegalArgumentException if a figure is out of range or the soil not in the table
     */
    public static Optional<Flow> least(
            ChannelShape shape, double discharge, double slope, String soil) {
        Lining bare = named(soil);
        if (bare.kind() != Kind.SOIL) {
            throw new IllegalArgumentException(
                    soil + " is a lining and no soil; name the soil that the ditch is dug in");
        }
        List<Lining> tried = new ArrayList<>(List.of(bare));
        for (Lining lining : published()) {
            if (lining.kind() != Kind.SOIL && lining.proposed()) {
                tried.add(lining);
            }
        }
        return tried.stream()
                .map(lining -> lining.flow(shape, discharge, slope))
                .filter(Flow::holds)
                .findFirst();
    }
}
