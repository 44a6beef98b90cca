package lanewright.stone;

import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.Quantity;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Table;
import lanewright.measure.Tables;

/** The published tables of stone: weights, loose depths, sizes. */
public final class StoneTables {

    /**
     * One pound per cubic yard, kg/m³: 0.45359237 kg over (0.9144 m)³ (NIST SP 811, appendix B).
     */
    private static final double POUND_PER_CUBIC_YARD = 0.45359237 / (0.9144 * 0.9144 * 0.9144);

    private static final String COMPACTED = "compacted";

    private StoneTables() {}

    /** A figure from a table, and what the report says of it. */
    public record Figure(double value, Assumption from) {}

    /** Names of stones whose compacted weight is published, in table order. */
    public static List<String> weighed() {
        return weights().rows().stream()
                .filter(row -> row.text("state").equals(COMPACTED))
                .map(row -> row.text("name"))
                .toList();
    }

    /**
     * In-place density of a published stone, kg/m³.
     *
     * @param role the layer it is used for, named in the report
     * @param name one of {@link #weighed}
     * @throws IllegalArgumentException if there is no such stone
     */
    public static Figure density(String role, String name) {
        for (Row row : weights().rows()) {
            if (row.text("name").equals(name) && row.text("state").equals(COMPACTED)) {
                double density = row.number("weight_lb_per_yd3") * POUND_PER_CUBIC_YARD;
                Saying words = Saying.of("{}, as for " + name, Quantity.density(density));
                return new Figure(
                        density, row.assumption("in-place density of " + role + " stone", words));
            }
        }
        throw new IllegalArgumentException("no compacted weight of " + name);
    }

    /** Names of stones whose loose depth is published, in table order. */
    public static List<String> spread() {
        return Tables.read("stone-loose-depth").rows().stream()
                .map(row -> row.text("name"))
                .toList();
    }

    /**
     * Loose spread depth over compacted depth of a published stone.
     *
     * @param role the layer it is used for, named in the report
     * @param name one of {@link #spread}
     */
    public static Figure loose(String role, String name) {
        Row row = Tables.read("stone-loose-depth").row("name", name);
        double ratio = row.number("loose_over_compacted");
        Saying words = Saying.of("{} of the compacted depth, " + name, Quantity.share(ratio));
        return new Figure(ratio, row.assumption("loose depth of " + role + " stone", words));
    }

    /** A published size of stone by its number in AASHTO M 43, or by nominal name. */
    public static Row size(String number) {
        return Tables.read("stone-sizes").row("number", number);
    }

    /** A figure that the owner gave. */
    public static Figure yours(String name, double value, Saying words) {
        return new Figure(value, new Assumption(name, words, Assumption.Mark.YOURS, "your plan"));
    }

    private static Table weights() {
        return Tables.read("stone-weights");
    }
}
