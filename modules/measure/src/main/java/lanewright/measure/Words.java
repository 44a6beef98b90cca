package lanewright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers in words: the only place where a quantity becomes text. The same in every locale, a comma
 * between thousands, a point before decimals, never a minus before zero.
 *
 * <p>Halves are rounded away from zero, in the decimal sense: the number is first taken to 13
 * significant digits, which takes away what turning units left behind, so that 7.25 in, kept as
 * 0.18415 m, is rounded as 7.25 and not as 7.249999999999999.
 *
 * <p>{@link #of} is for sentences: as many decimals as the size deserves, zeros at the end left
 * out. {@link #number} is for columns under a head with the unit: one count of decimals for a kind.
 */
public final class Words {

    private static final String UNKNOWN = "not known";

    /** Digits that a double holds through a turn of units and back, with two to spare. */
    private static final MathContext HELD = new MathContext(13, RoundingMode.HALF_UP);

    /** Depths from here on are told in feet or metres, not in inches or millimetres, m. */
    private static final double DEEP_US = 36 * 0.0254;

    private static final double DEEP_METRIC = 1;

    private Words() {}

    /** The number with its unit, such as {@code 684 ft}, {@code 7 in}, {@code 12+50}. */
    public static String of(Quantity quantity, UnitSystem units) {
        if (!Double.isFinite(quantity.value())) {
            return UNKNOWN;
        }
        if (quantity.kind() == Kind.STATION) {
            return number(quantity, units);
        }
        Quantity told = told(quantity, units);
        double shown = told.value() / factor(told.kind(), units);
        String number = fixed(shown, spoken(told.kind(), shown, units));
        if (!keepsZeros(told.kind())) {
            number = withoutZeros(number);
        }
        return joined(number, unit(told.kind(), units));
    }

    /**
     * The way from one number to another of its kind, with its sign and unit: from the numbers as
     * they are told, so that who subtracts them finds the same. Empty if they are told alike.
     */
    public static String change(Quantity from, Quantity to, UnitSystem units) {
        if (of(from, units).equals(of(to, units))) {
            return "";
        }
        Quantity was = told(from, units);
        Quantity is = told(to, units);
        if (was.kind() != is.kind() || !Double.isFinite(was.value() + is.value())) {
            return of(from, units) + " to " + of(to, units);
        }
        double factor = factor(is.kind(), units);
        int before = spoken(was.kind(), was.value() / factor, units);
        int after = spoken(is.kind(), is.value() / factor, units);
        double way =
                rounded(is.value() / factor, after)
                        .subtract(rounded(was.value() / factor, before))
                        .doubleValue();
        String number = fixed(Math.abs(way), Math.max(before, after));
        if (!keepsZeros(is.kind())) {
            number = withoutZeros(number);
        }
        return (way < 0 ? "-" : "+") + joined(number, unit(is.kind(), units));
    }

    /**
     * The number with its unit, rounded as a rule of thumb is told: 0.15 m is 150 mm or 6 in. For
     * limits and usual figures, never for what was measured.
     */
    public static String round(Quantity quantity, UnitSystem units) {
        Quantity told = told(quantity, units);
        if (!Double.isFinite(told.value()) || told.kind() == Kind.STATION) {
            return of(quantity, units);
        }
        double step = step(told.kind(), told.value(), units);
        if (step == 0) {
            return of(told, units);
        }
        double factor = factor(told.kind(), units);
        double rounded = Math.rint(told.value() / factor / step) * step * factor;
        return of(new Quantity(rounded, told.kind()), units);
    }

    /** To what a rule of thumb is rounded, in the shown unit; zero to leave it as it is. */
    private static double step(Kind kind, double value, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        double shown = kind == Kind.COUNT ? 0 : Math.abs(value / factor(kind, units));
        return switch (kind) {
            case DEPTH -> us ? shown < 1.5 ? 0.25 : 1 : shown < 20 ? 1 : shown < 100 ? 10 : 50;
            case LENGTH, OFFSET ->
                    us
                            ? shown < 10 ? 0.5 : shown < 50 ? 1 : 5
                            : shown < 3 ? 0.1 : shown < 10 ? 0.5 : shown < 50 ? 1 : 5;
            default -> 0;
        };
    }

    /** The number with its unit, as finely as in a column: for stakes and checks. */
    public static String fine(Quantity quantity, UnitSystem units) {
        return Double.isFinite(quantity.value())
                ? joined(number(quantity, units), unit(quantity.kind(), units))
                : UNKNOWN;
    }

    /** The number alone, for a column whose head names the unit; a dash if it is not known. */
    public static String number(Quantity quantity, UnitSystem units) {
        if (!Double.isFinite(quantity.value())) {
            return "–";
        }
        Kind kind = quantity.kind();
        double shown = quantity.value() / factor(kind, units);
        if (kind == Kind.STATION) {
            return Stations.write(shown, units, 1, units == UnitSystem.US);
        }
        String number = fixed(shown, decimals(kind, units));
        return kind == Kind.SIDE_SLOPE || kind == Kind.COUNT ? withoutZeros(number) : number;
    }

    /** The unit that {@link #number} is in; empty for stations, counts and money. */
    public static String unit(Kind kind, UnitSystem units) {
        return switch (kind) {
            case STATION, COUNT, MONEY -> "";
            case SIDE_SLOPE -> ":1";
            default -> shownIn(kind, units).symbol();
        };
    }

    /**
     * A plain number with a fixed count of decimals and commas between thousands.
     *
     * @param value finite
     * @param decimals 0 to 9
     */
    public static String fixed(double value, int decimals) {
        StringBuilder grouped = new StringBuilder(ungrouped(value, decimals));
        int first = grouped.charAt(0) == '-' ? 1 : 0;
        int point = grouped.indexOf(".");
        for (int at = (point < 0 ? grouped.length() : point) - 3; at > first; at -= 3) {
            grouped.insert(at, ',');
        }
        return grouped.toString();
    }

    /**
     * A plain number with a fixed count of decimals, for files that programs read.
     *
     * @param value finite
     * @param decimals 0 to 9
     */
    public static String ungrouped(double value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).round(HELD).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String joined(String number, String unit) {
        if (number.equals("1") && (unit.equals("tons") || unit.equals("acres"))) {
            return number + " " + unit.substring(0, unit.length() - 1);
        }
        boolean close = unit.isEmpty() || unit.startsWith(":") || unit.equals("°");
        return number + (close ? "" : " ") + unit;
    }

    /** A great depth as a length. */
    private static Quantity told(Quantity quantity, UnitSystem units) {
        double deep = units == UnitSystem.US ? DEEP_US : DEEP_METRIC;
        boolean asLength = quantity.kind() == Kind.DEPTH && Math.abs(quantity.value()) >= deep;
        return asLength ? Quantity.length(quantity.value()) : quantity;
    }

    private static String withoutZeros(String number) {
        int end = number.length();
        if (number.indexOf('.') >= 0) {
            while (number.charAt(end - 1) == '0') {
                end--;
            }
            if (number.charAt(end - 1) == '.') {
                end--;
            }
        }
        return number.substring(0, end);
    }

    /** Zeros at the end of a height or of money are told too: they say how finely it is known. */
    private static boolean keepsZeros(Kind kind) {
        return kind == Kind.HEIGHT || kind == Kind.MONEY;
    }

    /** SI size of one shown unit, for the marks of an axis; 1 of what is shown without a unit. */
    public static double factor(Kind kind, UnitSystem units) {
        return switch (kind) {
            case STATION -> units == UnitSystem.US ? Unit.FOOT.si() : 1;
            case SIDE_SLOPE, COUNT, MONEY -> 1;
            default -> shownIn(kind, units).si();
        };
    }

    private static Unit shownIn(Kind kind, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (kind) {
            case LENGTH, HEIGHT, OFFSET -> us ? Unit.FOOT : Unit.METRE;
            case DEPTH -> us ? Unit.INCH : Unit.MILLIMETRE;
            case AREA -> us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
            case LAND -> us ? Unit.ACRE : Unit.HECTARE;
            case VOLUME -> us ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
            case GRADE, SHARE -> Unit.PERCENT;
            case MASS -> us ? Unit.SHORT_TON : Unit.TONNE;
            case DENSITY -> us ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE;
            case ANGLE -> Unit.DEGREE;
            case HOURS -> Unit.HOUR;
            case FLOW -> us ? Unit.CUBIC_FOOT_PER_SECOND : Unit.CUBIC_METRE_PER_SECOND;
            case SPEED -> us ? Unit.FOOT_PER_SECOND : Unit.METRE_PER_SECOND;
            case SHEAR -> us ? Unit.POUND_PER_SQUARE_FOOT : Unit.PASCAL;
            case STATION, SIDE_SLOPE, COUNT, MONEY ->
                    throw new IllegalArgumentException(kind + " is shown without a unit");
        };
    }

    /** Decimals in a sentence: about three figures, and never finer than it can be known. */
    private static int spoken(Kind kind, double shown, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        double size = Math.abs(shown);
        boolean small = size < 1;
        return switch (kind) {
            case LENGTH, OFFSET -> size >= 100 ? 0 : size >= 10 || (us && !small) ? 1 : 2;
            case HEIGHT -> 2;
            case DEPTH -> us ? small ? 2 : 1 : size < 10 ? 1 : 0;
            case AREA -> size >= 100 ? 0 : us && !small ? 1 : 2;
            case LAND -> size >= 0.1 ? 2 : 3;
            case VOLUME -> size >= 10 ? 0 : small ? 2 : 1;
            // A grade under 1 % is held against limits such as 0.5 %.
            case GRADE -> small ? 2 : 1;
            case SHARE -> size >= 10 ? 0 : 1;
            case SIDE_SLOPE -> 2;
            // Stone is ordered and added up: sentences tell it as finely as tables do.
            case MASS -> small ? 2 : 1;
            case DENSITY -> us && size < 100 ? 1 : 0;
            case ANGLE, HOURS, COUNT, SPEED -> 1;
            case FLOW -> size >= 10 ? 0 : us && !small ? 1 : !us && small ? 3 : 2;
            case SHEAR -> us ? 2 : 0;
            case MONEY -> 2;
            case STATION -> throw new IllegalArgumentException("a station has its own words");
        };
    }

    /** Decimals in a column. A height is told to 0.01 ft or 0.001 m, both about 3 mm or finer. */
    private static int decimals(Kind kind, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (kind) {
            case LENGTH, OFFSET, AREA -> us ? 1 : 2;
            case HEIGHT, LAND -> us ? 2 : 3;
            case DEPTH, DENSITY -> us ? 1 : 0;
            case GRADE, SIDE_SLOPE, MONEY -> 2;
            case VOLUME, MASS, SHARE, ANGLE, HOURS, COUNT, SPEED -> 1;
            case FLOW -> us ? 1 : 3;
            case SHEAR -> us ? 2 : 0;
            case STATION -> throw new IllegalArgumentException("a station has its own words");
        };
    }
}
