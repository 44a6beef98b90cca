package lanewright.drainage.runoff;

import java.util.List;
import java.util.Locale;
import lanewright.drainage.channel.Check;
import lanewright.measure.Row;
import lanewright.measure.Tables;

/**
 * What grows or lies on the land that drains to a place, with what it makes of rain.
 *
 * @param name as in the table {@code curve-numbers}, such as {@code pasture, fair}
 * @param group how readily its soil takes water
 */
public record Cover(String name, SoilGroup group) {

    /**
     * A figure from a table.
     *
     * @param value the figure
     * @param source who published it, with edition
     */
    public record Figure(double value, String source) {}

    /**
     * @throws IllegalArgumentException if the name is in no row of the table, with the nearest
     */
    public Cover {
        Tables.read("curve-numbers").row("cover", name);
    }

    /** All names, in the order of the table. */
    public static List<String> names() {
        return Tables.read("curve-numbers").rows().stream().map(row -> row.text("cover")).toList();
    }

    Row row() {
        return Tables.read("curve-numbers").row("cover", name);
    }

    /** Its curve number. */
    public Figure curveNumber() {
        Row row = row();
        return new Figure(row.number(group.name().toLowerCase(Locale.ROOT)), row.citation());
    }

    /**
     * Its coefficient in the rational method, before any rise for rare storms. Which texture of the
     * published table a soil group has is a choice of ours: A sandy loam, B and C clay and silt
     * loam, D tight clay.
     *
     * @param slope mean of the land, rise over run
     */
    public Figure coefficient(double slope) {
        Row row = coefficientRow();
        return new Figure(row.number(column(slope)), row.citation());
    }

    /** The column for land of a slope: to 5 %, to 10 %, or steeper. */
    static String column(double slope) {
        Check.notNegative("slope of the land, rise over run,", slope);
        return slope <= 0.05 ? "to_5_pct" : slope <= 0.10 ? "to_10_pct" : "over_10_pct";
    }

    Row coefficientRow() {
        String like = row().text("like");
        for (Row row : Tables.read("runoff-coefficients").rows()) {
            if (row.text("like").equals(like) && row.text("groups").contains(group.name())) {
                return row;
            }
        }
        throw new IllegalStateException("runoff-coefficients has no row for " + like);
    }
}
