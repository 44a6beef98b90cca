package lanewright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Quantities in words that lose nothing, for files: {@link Parse} reads the same value again, to
 * two units in the last place of a double (a station to a hundredth of a micrometre). Where {@link
 * Words} is made for reading, this is made for keeping.
 */
public final class Written {

    /** So many digits are enough for any double turned into another unit, and so many for most. */
    private static final int MOST_DIGITS = 20;

    private static final int FEW_DIGITS = 12;

    /**
     * Up to here a value may be off by two units in its last place: 12 ft, not 12.000000000000001.
     */
    private static final int SHORT_DIGITS = 14;

    private Written() {}

    /**
     * The shortest words that mean a quantity, with its unit.
     *
     * @param quantity finite
     * @throws IllegalArgumentException if it is not finite
     */
    public static String exactly(Quantity quantity, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        double value = quantity.value();
        return switch (quantity.kind()) {
            case LENGTH, HEIGHT, OFFSET -> in(value, us ? Unit.FOOT : Unit.METRE);
            case DEPTH -> in(value, us ? Unit.INCH : Unit.MILLIMETRE);
            case STATION -> station(value, units);
            case AREA ->
                    us ? in(value, Unit.SQUARE_FOOT, "ft2") : in(value, Unit.SQUARE_METRE, "m2");
            case LAND -> us ? in(value, Unit.ACRE) : in(value, Unit.HECTARE);
            case VOLUME ->
                    us ? in(value, Unit.CUBIC_YARD, "yd3") : in(value, Unit.CUBIC_METRE, "m3");
            case GRADE, SHARE -> in(value, Unit.PERCENT);
            case SIDE_SLOPE -> number(value) + ":1";
            case MASS -> in(value, us ? Unit.SHORT_TON : Unit.TONNE);
            case DENSITY ->
                    us
                            ? in(value, Unit.POUND_PER_CUBIC_FOOT, "lb/ft3")
                            : in(value, Unit.KILOGRAM_PER_CUBIC_METRE, "kg/m3");
            case ANGLE -> number(value) + "°";
            case HOURS -> in(value, Unit.HOUR);
            case FLOW ->
                    us
                            ? in(value, Unit.CUBIC_FOOT_PER_SECOND, "ft3/s")
                            : in(value, Unit.CUBIC_METRE_PER_SECOND, "m3/s");
            case SPEED -> in(value, us ? Unit.FOOT_PER_SECOND : Unit.METRE_PER_SECOND);
            case SHEAR ->
                    us ? in(value, Unit.POUND_PER_SQUARE_FOOT, "lb/ft2") : in(value, Unit.PASCAL);
            case COUNT, MONEY -> number(value);
        };
    }

    /** Such as {@code 24 per ton}. */
    public static String price(Price price) {
        return number(price.amount()) + " per " + price.unit();
    }

    /**
     * The shortest plain digits that mean a number.
     *
     * @param value finite
     * @throws IllegalArgumentException if it is not
     */
    public static String number(double value) {
        return digits(decimal(value));
    }

    private static String in(double value, Unit unit) {
        return in(value, unit, unit.symbol());
    }

    /** The fewest digits that read back as the value. */
    private static String in(double value, Unit unit, String symbol) {
        BigDecimal exact = exact(value);
        // A double is near enough to tell which few digits may do, and nearly always enough.
        double near = value / unit.si();
        for (int digits = FEW_DIGITS; digits <= SHORT_DIGITS && Double.isFinite(near); digits++) {
            BigDecimal kept = new BigDecimal(near, new MathContext(digits, RoundingMode.HALF_EVEN));
            if (Math.abs(kept.doubleValue() * unit.si() - value) <= 16 * Math.ulp(value)
                    && Math.abs(unit.toSi(kept) - value) <= 2 * Math.ulp(value)) {
                return digits(kept) + " " + symbol;
            }
        }
        BigDecimal shown = exact.divide(unit.exact(BigDecimal.ONE), MathContext.DECIMAL128);
        BigDecimal kept = shown;
        for (int digits = SHORT_DIGITS + 1; digits <= MOST_DIGITS; digits++) {
            kept = shown.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (unit.toSi(kept) == value) {
                break;
            }
        }
        return digits(kept) + " " + symbol;
    }

    private static String station(double metres, UnitSystem units) {
        double size = units == UnitSystem.US ? Unit.FOOT.si() : 1;
        BigDecimal shown =
                decimal(metres)
                        .divide(BigDecimal.valueOf(size), MathContext.DECIMAL128)
                        .setScale(8, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        return Stations.write(shown.doubleValue(), units, Math.max(0, shown.scale()), true);
    }

    private static BigDecimal decimal(double value) {
        exact(value);
        return BigDecimal.valueOf(value);
    }

    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only finite numbers can be written: " + value);
        }
        return new BigDecimal(value);
    }

    private static String digits(BigDecimal number) {
        BigDecimal kept = number.stripTrailingZeros();
        return (kept.signum() == 0 ? BigDecimal.ZERO : kept).toPlainString();
    }
}
