package lanewright.drainage.culvert;

import java.util.List;
import java.util.Locale;
import lanewright.measure.Row;
import lanewright.measure.Table;
import lanewright.measure.Tables;

/**
 * How water gets into a barrel, from the table {@code culvert-inlets} (FHWA HDS-5, appendix, table
 * of inlet constants, and table 12 of entrance losses).
 *
 * @param name as it is called in the table
 * @param shape what barrels it is for
 * @param material what barrels it is for
 * @param end how the end is made
 * @param form which of the two unsubmerged equations its constants belong to
 * @param k constant K of the unsubmerged equation
 * @param m exponent M of the unsubmerged equation
 * @param c constant c of the submerged equation
 * @param y constant Y of the submerged equation
 * @param mitred cut to the slope: {@code +0.7 S} takes the place of {@code −0.5 S}
 * @param loss entrance loss coefficient Ke of outlet control
 * @param source who published it, with edition
 */
public record Inlet(
        String name,
        Shape shape,
        Material material,
        End end,
        Form form,
        double k,
        double m,
        double c,
        double y,
        boolean mitred,
        double loss,
        String source) {

    /** Shapes of barrel that inlets are published for. */
    public enum Shape {
        /** Round. */
        ROUND,
        /** Pipe-arch. */
        ARCH,
        /** Rectangular. */
        BOX
    }

    /** Ends that can be asked for; the others are reached by name. */
    public enum End {
        /** Sticks out of the fill. */
        PROJECTING,
        /** Stands in an upright wall. */
        HEADWALL,
        /** Cut to the slope of the fill. */
        MITRED,
        /** A flared end section set on the pipe. */
        END_SECTION,
        /** Another, such as wings. */
        OTHER;

        /** In the words of the trade, such as {@code cut to the slope (mitred)}. */
        public String words() {
            return switch (this) {
                case PROJECTING -> "sticking out (projecting)";
                case HEADWALL -> "in headwalls";
                case MITRED -> "cut to the slope (mitred)";
                case END_SECTION -> "flared end sections";
                case OTHER -> "made otherwise";
            };
        }
    }

    /** The two published forms of the unsubmerged equation. */
    public enum Form {
        /** With specific energy at critical depth and a slope term. */
        ONE,
        /** A plain power. */
        TWO
    }

    /**
     * @throws IllegalArgumentException if a constant is out of range
     */
    public Inlet {
        if (!(k > 0 && k < 2) || !(m > 0 && m < 5) || !(c > 0 && c < 1) || !(y > 0 && y < 2)) {
            throw new IllegalArgumentException(
                    "inlet "
                            + name
                            + ": K, M, c, Y were "
                            + List.of(k, m, c, y)
                            + "; take all four from one row of the published table");
        }
        if (!(loss > 0 && loss <= 2)) {
            throw new IllegalArgumentException(
                    "inlet " + name + ": Ke was " + loss + "; published ones are 0.2 to 0.9");
        }
    }

    /** The table, read once. */
    private static final class Known {
        static final Table TABLE = Tables.read("culvert-inlets");
        static final List<Inlet> ALL = TABLE.rows().stream().map(Inlet::of).toList();
    }

    /** All of the table. */
    public static List<Inlet> published() {
        return Known.ALL;
    }

    /**
     * The inlet of a name.
     *
     * @throws IllegalArgumentException if there is none, with the nearest one there is
     */
    public static Inlet named(String name) {
        return of(Known.TABLE.row("inlet", name));
    }

    /**
     * The inlet for a barrel and an end.
     *
     * @throws IllegalArgumentException if none is published for the two together
     */
    public static Inlet of(Barrel barrel, End end) {
        Shape shape = shapeOf(barrel.inside());
        return published().stream()
                .filter(inlet -> inlet.shape == shape && inlet.end == end)
                .filter(inlet -> inlet.material == barrel.material())
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "no inlet "
                                                + end
                                                + " is published for "
                                                + shape
                                                + " barrels of "
                                                + barrel.material().words()
                                                + "; take HEADWALL or PROJECTING, or name one"));
    }

    private static Shape shapeOf(BarrelShape inside) {
        if (inside instanceof Circle) {
            return Shape.ROUND;
        }
        return inside instanceof PipeArch ? Shape.ARCH : Shape.BOX;
    }

    private static Inlet of(Row row) {
        return new Inlet(
                row.text("inlet"),
                word(Shape.values(), row, "shape"),
                Material.of(row.text("material")),
                word(End.values(), row, "end"),
                row.whole("form") == 1 ? Form.ONE : Form.TWO,
                row.number("k"),
                row.number("m"),
                row.number("c"),
                row.number("y"),
                row.text("mitred").equals("yes"),
                row.number("ke"),
                row.citation());
    }

    private static <E extends Enum<E>> E word(E[] all, Row row, String column) {
        for (E one : all) {
            if (one.name().toLowerCase(Locale.ROOT).equals(row.text(column))) {
                return one;
            }
        }
        throw new IllegalStateException(
                row + ": " + column + " \"" + row.text(column) + "\" is not known");
    }
}
