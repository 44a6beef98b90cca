package lanewright.planner.document;

import java.util.LinkedHashMap;
import java.util.Map;
import lanewright.measure.Row;
import lanewright.measure.Tables;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * What a plan is taken to say where it says nothing, from the table {@code plan-defaults}: each
 * value with its reason and source, so that none is hidden.
 */
final class Defaults {

    private static final Defaults TABLE = new Defaults();

    private final Map<String, Row> rows = new LinkedHashMap<>();

    private Defaults() {
        for (Row row : Tables.read("plan-defaults").rows()) {
            if (rows.put(row.text("field"), row) != null) {
                throw new IllegalStateException("two defaults for " + row.text("field"));
            }
        }
    }

    /** The one table. */
    static Defaults table() {
        return TABLE;
    }

    /** The rows by field, in the order of the table. */
    Map<String, Row> rows() {
        return rows;
    }

    /**
     * The row for a field, or null.
     *
     * @param field names joined by full stops, list positions left out
     */
    @Nullable Row row(String field) {
        return rows.get(field);
    }

    /**
     * Whether a plan that leaves the field out is taken to say this; else only a first plan does.
     */
    static boolean usedWhenAbsent(Row row) {
        return row.text("use").equals("absent");
    }

    /** The text that stands for a row in a plan of these units. */
    static String text(Row row, UnitSystem units) {
        return row.text(units == UnitSystem.US ? "us" : "metric");
    }

    /** The value of a row in a plan of these units. */
    static <T> T value(Row row, Codec<T> codec, UnitSystem units) {
        String text = text(row, units);
        try {
            return codec.read(text, units);
        } catch (Codec.Unread e) {
            throw new IllegalStateException(
                    "default for " + row.text("field") + " is not understood: " + text, e);
        }
    }
}
