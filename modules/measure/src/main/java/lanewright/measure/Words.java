package lanewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers in words: the only place where a quantity becomes text. The same in every locale, halves
 * rounded away from zero, a comma between thousands, a point before decimals.
 *
 * <p>Factors: NIST Special Publication 811 (2008), appendix B; the foot is the international foot.
 */
public final class Words {

    static final double FOOT = 0.3048;
    static final double INCH = 0.0254;
    static final double ACRE = 43_560 * FOOT * FOOT;
    static final double CUBIC_YARD = 27 * FOOT * FOOT * FOOT;
    static final double POUND = 0.45359237;
    static final double SHORT_TON = 2000 * POUND;
    static final double POUND_PER_CUBIC_FOOT = POUND / (FOOT * FOOT * FOOT);
    static final double HECTARE = 10_000;

    private static final String UNKNOWN = "not known";

    private Words() {}

    /** The number with its unit, such as {@code 684 ft}, {@code 7 in}, {@code 12+50}. */
    public static String of(Quantity quantity, UnitSystem units) {
        if (!Double.isFinite(quantity.value())) {
            return UNKNOWN;
        }
        String unit = unit(quantity, units);
        String gap = unit.isEmpty() || unit.startsWith(":") ? "" : " ";
        return number(quantity, units) + gap + unit;
    }

    /** The number alone, for a column whose head names the unit. */
    public static String number(Quantity quantity, UnitSystem units) {
        if (!Double.isFinite(quantity.value())) {
            return "–";
        }
        if (quantity.kind() == Kind.STATION) {
            return station(quantity.value(), units);
        }
        double shown = quantity.value() / factor(quantity, units);
        return fixed(shown, decimals(quantity.kind(), Math.abs(shown), units));
    }

    /**
     * The unit that {@link #number} is in where the kind has one unit for all sizes; empty without.
     */
    public static String unit(Kind kind, UnitSystem units) {
        return unit(new Quantity(kind == Kind.DEPTH ? 0.01 : 1, kind), units);
    }

    private static String unit(Quantity quantity, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (quantity.kind()) {
            case LENGTH, HEIGHT, OFFSET -> us ? "ft" : "m";
            case DEPTH -> us ? "in" : "mm";
            case AREA -> us ? "ft²" : "m²";
            case LAND -> us ? "acres" : "ha";
            case VOLUME -> us ? "yd³" : "m³";
            case GRADE, SHARE -> "%";
            case SIDE_SLOPE -> ":1";
            case MASS -> us ? "tons" : "t";
            case DENSITY -> us ? "lb/ft³" : "kg/m³";
            case ANGLE -> "°";
            case HOURS -> "h";
            case STATION, COUNT, MONEY -> "";
        };
    }

    /** SI value of one shown unit. */
    private static double factor(Quantity quantity, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (quantity.kind()) {
            case LENGTH, HEIGHT, OFFSET -> us ? FOOT : 1;
            case DEPTH -> us ? INCH : 0.001;
            case AREA -> us ? FOOT * FOOT : 1;
            case LAND -> us ? ACRE : HECTARE;
            case VOLUME -> us ? CUBIC_YARD : 1;
            case GRADE, SHARE -> 0.01;
            case MASS -> us ? SHORT_TON : 1000;
            case DENSITY -> us ? POUND_PER_CUBIC_FOOT : 1;
            case SIDE_SLOPE, ANGLE, HOURS, STATION, COUNT, MONEY -> 1;
        };
    }

    private static int decimals(Kind kind, double shown, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (kind) {
            case LENGTH -> shown >= 100 ? 0 : 1;
            case HEIGHT -> us ? 2 : 3;
            case OFFSET -> us ? 1 : 2;
            case DEPTH -> us ? 1 : 0;
            case AREA -> shown >= 100 ? 0 : us ? 1 : 2;
            case LAND -> us ? 2 : 3;
            case VOLUME -> shown >= 10 ? 0 : 1;
            case GRADE -> 1;
            case SHARE -> shown >= 10 ? 0 : 1;
            case SIDE_SLOPE -> shown == Math.rint(shown) ? 0 : 1;
            case MASS -> shown >= 100 ? 0 : 1;
            case DENSITY -> us ? shown >= 100 ? 0 : 1 : 0;
            case ANGLE -> 1;
            case HOURS -> 1;
            case COUNT -> shown == Math.rint(shown) ? 0 : 1;
            case MONEY -> 2;
            case STATION -> us ? 0 : 1;
        };
    }

    /** {@code 12+50} for 1,250 ft in US customary, {@code 1+250.0} for 1,250 m in metric. */
    private static String station(double metres, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        BigDecimal shown =
                BigDecimal.valueOf(us ? metres / FOOT : metres)
                        .setScale(us ? 0 : 1, RoundingMode.HALF_UP);
        BigDecimal whole = BigDecimal.valueOf(us ? 100 : 1000);
        BigDecimal[] parts = shown.abs().divideAndRemainder(whole);
        String rest = parts[1].setScale(us ? 0 : 1, RoundingMode.HALF_UP).toPlainString();
        int wide = us ? 2 : 5;
        String sign = shown.signum() < 0 ? "-" : "";
        return sign
                + parts[0].toBigInteger()
                + "+"
                + "0".repeat(Math.max(0, wide - rest.length()))
                + rest;
    }

    /**
     * A plain number with a fixed count of decimals.
     *
     * @param value finite
     * @param decimals 0 to 9
     */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        int end = point < 0 ? digits.length() : point;
        StringBuilder grouped = new StringBuilder(digits);
        for (int at = end - 3; at > 0; at -= 3) {
            grouped.insert(at, ',');
        }
        return (rounded.signum() < 0 ? "-" : "") + grouped;
    }

    /** Lower case that does not follow the machine's language. */
    static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
