package lanewright.drainage.culvert;

import java.util.Optional;
import java.util.OptionalDouble;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Critical;
import lanewright.drainage.channel.Imperial;
import lanewright.measure.Row;
import lanewright.measure.Tables;

/**
 * Stone apron at a pipe's outlet: {@code D50 = 0.2 D (Q / (√g D^2.5))^(4/3) (D / TW)} with
 * tailwater kept within 0.4 D to 1.0 D, and size by class (FHWA HEC-14, 2006, section 10.2).
 *
 * <p>For one barrel; a level apron in a channel wider than the pipe. Stone larger than the table
 * has is no apron but a basin, which wants a licensed designer: then there is no class and no size.
 *
 * @param needed median stone by the formula, m
 * @param bed the class that has it, if there is one
 */
public record Apron(double needed, Optional<Bed> bed) {

    /**
     * A class of stone and the bed made of it.
     *
     * @param stone median stone of the class, m
     * @param length from the outlet on, m
     * @param depth of the stone, m
     * @param startWidth at the outlet, m
     * @param endWidth at the far end, m
     * @param source who published it, with edition
     */
    public record Bed(
            double stone,
            double length,
            double depth,
            double startWidth,
            double endWidth,
            String source) {}

    private static final double LEAST_TAILWATER = 0.4;

    /**
     * Apron of a barrel.
     *
     * @param discharge of the one barrel, m³/s
     * @param diameter inside, m; of a pipe-arch that of the circle with its area
     * @param tailwater depth above the outlet invert, m; empty if unknown, then 0.4 of the diameter
     *     is taken
     * @param shooting normal depth in the barrel, m, where the flow in it is supercritical: then
     *     the mean of diameter and depth takes the diameter's place in the formula; else empty
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static Apron of(
            double discharge, double diameter, OptionalDouble tailwater, OptionalDouble shooting) {
        Check.positive("discharge, m³/s,", discharge);
        Check.positive("diameter, m,", diameter);
        tailwater.ifPresent(depth -> Check.notNegative("tailwater, m,", depth));
        shooting.ifPresent(
                depth -> {
                    if (!(depth > 0 && depth <= diameter)) {
                        throw new IllegalArgumentException(
                                "normal depth in the barrel must lie between 0 and its diameter of "
                                        + diameter
                                        + " m, was "
                                        + depth
                                        + "; leave it out for a full barrel");
                    }
                });
        double across = shooting.isPresent() ? (diameter + shooting.getAsDouble()) / 2 : diameter;
        double tail = tailwater.orElse(LEAST_TAILWATER * across);
        double kept = Math.max(LEAST_TAILWATER * across, Math.min(across, tail));
        double intensity = discharge / (Math.sqrt(Critical.GRAVITY) * Math.pow(across, 2.5));
        double needed = 0.2 * across * Math.pow(intensity, 4.0 / 3) * across / kept;
        return new Apron(needed, bed(needed, diameter));
    }

    /**
     * Apron of a culvert at a headwater found before; arguments of the one, result of the other.
     */
    public static Apron of(
            Culvert culvert, OptionalDouble tailwater, double discharge, Headwater found) {
        double area = culvert.barrel().inside().fullArea();
        double across = Math.sqrt(4 * area / Math.PI);
        OptionalDouble shooting =
                found.normal().isPresent() && found.normal().getAsDouble() < found.critical()
                        ? OptionalDouble.of(Math.min(across, found.normal().getAsDouble()))
                        : OptionalDouble.empty();
        return of(discharge / culvert.barrels(), across, tailwater, shooting);
    }

    private static Optional<Bed> bed(double needed, double diameter) {
        for (Row row : Tables.read("apron-classes").rows()) {
            double stone = row.number("d50_in") * Imperial.INCH;
            if (stone >= needed) {
                double length = row.number("length_diameters") * diameter;
                return Optional.of(
                        new Bed(
                                stone,
                                length,
                                row.number("depth_d50") * stone,
                                3 * diameter,
                                3 * diameter + length * 2 / 3,
                                row.citation()));
            }
        }
        return Optional.empty();
    }
}
