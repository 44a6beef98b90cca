package lanewright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Units as people write them, each with its exact size in SI.
 *
 * <p>Sizes: NIST Special Publication 811 (2008), appendix B.8, where every factor used here is
 * exact or a product of exact ones. Foot, yard, acre, cubic yard and pound per cubic foot rest on
 * the international foot (85 FR 62698, October 2020); the ton is the short ton of 2,000 avoirdupois
 * pounds.
 */
enum Unit {
    METRE(Measure.LENGTH, true, "1", "m", "metre", "metres", "meter", "meters"),
    CENTIMETRE(Measure.LENGTH, true, "0.01", "cm", "centimetre", "centimetres", "centimeters"),
    MILLIMETRE(Measure.LENGTH, true, "0.001", "mm", "millimetre", "millimetres", "millimeters"),
    KILOMETRE(Measure.LENGTH, true, "1000", "km", "kilometre", "kilometres", "kilometers"),
    FOOT(Measure.LENGTH, false, "0.3048", "ft", "foot", "feet", "'"),
    INCH(Measure.LENGTH, false, "0.0254", "in", "inch", "inches", "\""),
    YARD(Measure.LENGTH, false, "0.9144", "yd", "yard", "yards"),
    MILE(Measure.LENGTH, false, "1609.344", "mi", "mile", "miles"),
    SURVEY_FOOT(
            Measure.LENGTH,
            false,
            "1200/3937",
            "ftUS",
            "sft",
            "usft",
            "us survey ft",
            "us survey foot",
            "us survey feet",
            "survey foot",
            "survey feet"),

    SQUARE_METRE(Measure.AREA, true, "1", "m²", "sq m", "square metres", "square meters"),
    HECTARE(Measure.AREA, true, "10000", "ha", "hectare", "hectares"),
    SQUARE_FOOT(Measure.AREA, false, "0.09290304", "ft²", "sq ft", "square feet", "square foot"),
    SQUARE_YARD(Measure.AREA, false, "0.83612736", "yd²", "sq yd", "square yards", "square yard"),
    ACRE(Measure.AREA, false, "4046.8564224", "acres", "acre", "ac"),

    CUBIC_METRE(Measure.VOLUME, true, "1", "m³", "cu m", "cubic metres", "cubic meters"),
    CUBIC_FOOT(
            Measure.VOLUME,
            false,
            "0.028316846592",
            "ft³",
            "cu ft",
            "cf",
            "cubic feet",
            "cubic foot"),
    CUBIC_YARD(
            Measure.VOLUME,
            false,
            "0.764554857984",
            "yd³",
            "cu yd",
            "cy",
            "cubic yards",
            "cubic yard"),

    KILOGRAM(Measure.MASS, true, "1", "kg", "kilogram", "kilograms"),
    TONNE(Measure.MASS, true, "1000", "t", "tonne", "tonnes", "metric ton", "metric tons"),
    POUND(Measure.MASS, false, "0.45359237", "lb", "lbs", "pound", "pounds"),
    SHORT_TON(Measure.MASS, false, "907.18474", "tons", "ton", "short ton", "short tons"),

    KILOGRAM_PER_CUBIC_METRE(Measure.DENSITY, true, "1", "kg/m³", "kg/cu m"),
    TONNE_PER_CUBIC_METRE(Measure.DENSITY, true, "1000", "t/m³", "t/cu m", "tonnes/m3"),
    POUND_PER_CUBIC_FOOT(
            Measure.DENSITY, false, "0.45359237/0.028316846592", "lb/ft³", "lb/cu ft", "pcf"),
    POUND_PER_CUBIC_YARD(
            Measure.DENSITY, false, "0.45359237/0.764554857984", "lb/yd³", "lb/cu yd", "lb/cy"),
    TON_PER_CUBIC_YARD(
            Measure.DENSITY,
            false,
            "907.18474/0.764554857984",
            "tons/yd³",
            "ton/yd3",
            "tons/cu yd",
            "ton/cu yd",
            "tons/cy",
            "ton/cy"),

    PERCENT(Measure.SLOPE, true, "0.01", "%", "percent", "per cent"),
    INCH_PER_FOOT(Measure.SLOPE, false, "1/12", "in/ft", "inch/foot", "inches/foot"),
    MILLIMETRE_PER_METRE(Measure.SLOPE, true, "0.001", "mm/m"),
    METRE_PER_METRE(Measure.SLOPE, true, "1", "m/m"),
    FOOT_PER_FOOT(Measure.SLOPE, false, "1", "ft/ft"),

    DEGREE(Measure.ANGLE, true, "1", "°", "deg", "degree", "degrees"),
    HOUR(Measure.TIME, true, "1", "h", "hr", "hrs", "hour", "hours"),
    MINUTE(Measure.TIME, true, "1/60", "min", "minute", "minutes"),

    CUBIC_METRE_PER_SECOND(Measure.FLOW, true, "1", "m³/s", "cu m/s"),
    CUBIC_FOOT_PER_SECOND(
            Measure.FLOW, false, "0.028316846592", "ft³/s", "cu ft/s", "cfs", "cubic feet/second"),
    METRE_PER_SECOND(Measure.SPEED, true, "1", "m/s", "metres/second", "meters/second"),
    FOOT_PER_SECOND(Measure.SPEED, false, "0.3048", "ft/s", "feet/second", "fps"),
    MILLIMETRE_PER_HOUR(Measure.SPEED, true, "1/3600000", "mm/h", "mm/hr", "mm/hour"),
    INCH_PER_HOUR(Measure.SPEED, false, "0.0254/3600", "in/h", "in/hr", "in/hour", "inches/hour"),

    PASCAL(Measure.SHEAR, true, "1", "Pa", "pascal", "N/m²"),
    POUND_PER_SQUARE_FOOT(
            Measure.SHEAR, false, "4.4482216152605/0.09290304", "lb/ft²", "lb/sq ft", "psf");

    /** What can be measured in units; several kinds of quantity may share one. */
    enum Measure {
        LENGTH("a length"),
        AREA("an area"),
        VOLUME("a volume"),
        MASS("a mass"),
        DENSITY("a density"),
        SLOPE("a slope"),
        ANGLE("an angle"),
        TIME("a time"),
        FLOW("a flow of water"),
        SPEED("a speed"),
        SHEAR("a drag of water");

        private final String words;

        Measure(String words) {
            this.words = words;
        }

        /** Such as {@code a length}. */
        String words() {
            return words;
        }
    }

    private static final Map<String, Unit> BY_NAME = names();

    private final Measure measure;
    private final boolean metric;
    private final BigDecimal times;
    private final BigDecimal over;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives one that cannot be changed
    private final List<String> names;

    private final double si;

    Unit(Measure measure, boolean metric, String ratio, String... names) {
        this.measure = measure;
        this.metric = metric;
        int bar = ratio.indexOf('/');
        this.times = new BigDecimal(bar < 0 ? ratio : ratio.substring(0, bar));
        this.over = bar < 0 ? BigDecimal.ONE : new BigDecimal(ratio.substring(bar + 1));
        this.names = List.of(names);
        this.si = toSi(BigDecimal.ONE);
    }

    /** What it measures. */
    Measure measure() {
        return measure;
    }

    /** True if it is used with decimal commas somewhere: anything but feet, pounds and the like. */
    boolean isMetric() {
        return metric;
    }

    /** How we write it. */
    String symbol() {
        return names.get(0);
    }

    /** {@code number} of this unit in SI, the nearest double to the exact value. */
    double toSi(BigDecimal number) {
        return exact(number).doubleValue();
    }

    /** {@code number} of this unit in SI, to 34 digits. */
    BigDecimal exact(BigDecimal number) {
        BigDecimal product = number.multiply(times);
        return over.compareTo(BigDecimal.ONE) == 0
                ? product.round(MathContext.DECIMAL128)
                : product.divide(over, MathContext.DECIMAL128);
    }

    /** One of this unit in SI. */
    double si() {
        return si;
    }

    /** The unit that is written as {@code name}, whatever its case, blanks and dots; else null. */
    static @Nullable Unit named(String name) {
        return BY_NAME.get(squash(name));
    }

    /** Everything that a unit of {@code measure} may be called, for offering the nearest. */
    static List<String> names(Measure measure) {
        List<String> names = new ArrayList<>();
        for (Unit unit : values()) {
            if (unit.measure == measure) {
                names.addAll(unit.names);
            }
        }
        return names;
    }

    private static Map<String, Unit> names() {
        Map<String, Unit> names = new LinkedHashMap<>();
        for (Unit unit : values()) {
            for (String name : unit.names) {
                Unit other = names.put(squash(name), unit);
                if (other != null && other != unit) {
                    throw new IllegalStateException(name + " is both " + other + " and " + unit);
                }
            }
        }
        return Collections.unmodifiableMap(names);
    }

    /** So that {@code lb per cu. ft.}, {@code lb/cu ft} and {@code LB/CUFT} are one name. */
    private static String squash(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replace(" per ", "/")
                .replace('²', '2')
                .replace('³', '3')
                .replace("^", "")
                .replace(".", "")
                .replace(" ", "");
    }
}
