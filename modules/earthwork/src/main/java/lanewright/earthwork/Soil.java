package lanewright.earthwork;

import java.util.List;
import lanewright.lane.volume.State;
import lanewright.measure.Assumption;
import lanewright.measure.Quantity;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Table;
import lanewright.measure.Tables;

/**
 * How a soil changes its volume: swells when it is dug, and shrinks when it is packed.
 *
 * @param name as in the table of volume change
 * @param loosePerBank loose volume of one volume in the bank, 1 to 3
 * @param compactedPerBank compacted volume of one volume in the bank, 0.4 to 2; over one for rock
 * @param looseDensity weight heaped or on a truck, kg/m³, or NaN if the table has none
 * @param from the source of the figures
 */
public record Soil(
        String name,
        double loosePerBank,
        double compactedPerBank,
        double looseDensity,
        Assumption from) {

    private static final String TABLE = "earth-volume-change";

    /**
     * One pound per cubic yard, kg/m³: 0.45359237 kg over (0.9144 m)³ (NIST SP 811, appendix B).
     */
    private static final double POUND_PER_CUBIC_YARD = 0.45359237 / (0.9144 * 0.9144 * 0.9144);

    /** Checks the ranges. */
    public Soil {
        if (!(loosePerBank >= 1 && loosePerBank <= 3)) {
            throw new IllegalArgumentException(
                    "loose over bank must be 1 to 3, was " + loosePerBank);
        }
        if (!(compactedPerBank >= 0.4 && compactedPerBank <= 2)) {
            throw new IllegalArgumentException(
                    "compacted over bank must be 0.4 to 2, was " + compactedPerBank);
        }
        if (looseDensity <= 0) {
            throw new IllegalArgumentException("density must be over 0, was " + looseDensity);
        }
    }

    /**
     * A soil of the published table.
     *
     * @param name a name in the table of volume change
     * @throws IllegalArgumentException if there is no such soil; names the nearest
     */
    public static Soil published(String name) {
        Table table = Tables.read(TABLE);
        Row row = table.row("soil", name);
        double loose = row.number("loose_per_bank");
        double compacted = row.number("compacted_per_bank");
        double weight =
                row.has("loose_lb_per_yd3")
                        ? row.number("loose_lb_per_yd3") * POUND_PER_CUBIC_YARD
                        : Double.NaN;
        Saying says =
                Saying.of(
                        "dug it takes {}, packed {} of its room as it lies",
                        Quantity.share(loose),
                        Quantity.share(compacted));
        return new Soil(
                name, loose, compacted, weight, row.assumption("volume change of " + name, says));
    }

    /** Names of all published soils, in table order. */
    public static List<String> names() {
        return Tables.read(TABLE).rows().stream().map(row -> row.text("soil")).toList();
    }

    /**
     * A volume in another state.
     *
     * @param volume m³ in the state it is in
     * @param is the state it is in
     * @param wanted the state asked for
     * @return m³ in the state asked for
     */
    public double convert(double volume, State is, State wanted) {
        return is == wanted ? volume : volume / perBank(is) * perBank(wanted);
    }

    private double perBank(State state) {
        return switch (state) {
            case BANK -> 1;
            case LOOSE -> loosePerBank;
            case COMPACTED -> compactedPerBank;
        };
    }
}
