package lanewright.drainage.runoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import lanewright.measure.Assumption;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Tables;

/** Figures of land from the published tables, each with the assumption that it makes. */
public final class Covers {

    private static final String BY_COVER = "runoff-coefficients-by-cover";
    private static final String SHEET = "sheet-flow-roughness";
    private static final String KERBY = "kerby-retardance";
    private static final String RUNS_OFF = "part of a rain that runs off";

    private Covers() {}

    /**
     * A figure that was looked up.
     *
     * @param value the figure, no unit
     * @param assumption what it is assumed for, with the source of its row
     */
    public record Assumed(double value, Assumption assumption) {}

    /** The curve number of a cover on its soil. */
    public static Assumed curveNumber(Cover cover) {
        Row row = cover.row();
        double value = row.number(cover.group().name().toLowerCase(Locale.ROOT));
        return assumed("how much of a rain runs off", value, "curve number", on(cover), row);
    }

    /**
     * The coefficient of a cover in the rational method, by soil and slope.
     *
     * @param slope mean of the land, rise over run
     */
    public static Assumed coefficient(Cover cover, double slope) {
        Row row = cover.coefficientRow();
        double value = row.number(Cover.column(slope));
        return assumed(RUNS_OFF, value, "coefficient", on(cover), row);
    }

    /**
     * The coefficient of a cover that is published without soil or slope.
     *
     * @param cover one of {@link #namedAlone}
     * @param share where in the published range: 0 its low end, 1 its high one
     * @throws IllegalArgumentException if the cover is in no row, or the share is out of range
     */
    public static Assumed coefficientAlone(String cover, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException(
                    "a place in a range is a share from 0 to 1, was "
                            + share
                            + "; take 1 for the most water");
        }
        Row row = Tables.read(BY_COVER).row("cover", cover);
        double low = row.number("low");
        double value = low + share * (row.number("high") - low);
        return assumed(RUNS_OFF, value, "coefficient", cover, row);
    }

    /** Covers for {@link #coefficientAlone}, in the order of the table. */
    public static List<String> namedAlone() {
        return names(BY_COVER, "cover");
    }

    /**
     * Roughness for {@link Concentration#sheet}.
     *
     * @param surface one of {@link #sheetSurfaces}
     * @throws IllegalArgumentException if it is in no row, with the nearest
     */
    public static Assumed sheetRoughness(String surface) {
        Row row = Tables.read(SHEET).row("surface", surface);
        return assumed("roughness where water runs as a sheet", row.number("n"), "n", surface, row);
    }

    /** Surfaces for {@link #sheetRoughness}, in the order of the table. */
    public static List<String> sheetSurfaces() {
        return names(SHEET, "surface");
    }

    /**
     * N for {@link Concentration#kerby}.
     *
     * @param surface one of {@link #kerbySurfaces}
     * @throws IllegalArgumentException if it is in no row, with the nearest
     */
    public static Assumed retardance(String surface) {
        Row row = Tables.read(KERBY).row("surface", surface);
        return assumed("how land holds water back", row.number("n"), "N", surface, row);
    }

    /** Surfaces for {@link #retardance}, in the order of the table. */
    public static List<String> kerbySurfaces() {
        return names(KERBY, "surface");
    }

    private static List<String> names(String table, String column) {
        return Tables.read(table).rows().stream().map(row -> row.text(column)).toList();
    }

    private static String on(Cover cover) {
        return cover.name() + " on soil of group " + cover.group();
    }

    private static Assumed assumed(
            String name, double value, String called, String where, Row row) {
        // Written in full: a roughness of 0.011 would be lost in the decimals of a count.
        String figure =
                BigDecimal.valueOf(value)
                        .setScale(3, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
        Saying saying = Saying.plain(called + " " + figure + ", " + where);
        return new Assumed(value, row.assumption(name, saying));
    }
}
