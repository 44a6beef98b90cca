package lanewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Stations with their plus sign: {@code 12+50} is 1,250 ft, {@code 1+250} is 1,250 m. */
final class Stations {

    private Stations() {}

    /**
     * A station in words.
     *
     * @param shown distance in the units that are shown, ft or m, finite
     * @param decimals decimals to round to
     * @param whole true to leave decimals out where they are all zero
     */
    static String write(double shown, UnitSystem units, int decimals, boolean whole) {
        BigDecimal rounded = Words.rounded(shown, decimals);
        if (whole && rounded.stripTrailingZeros().scale() <= 0) {
            rounded = rounded.setScale(0, RoundingMode.UNNECESSARY);
        }
        BigDecimal[] parts = rounded.abs().divideAndRemainder(BigDecimal.TEN.pow(after(units)));
        String rest = parts[1].setScale(rounded.scale(), RoundingMode.UNNECESSARY).toPlainString();
        int point = rest.indexOf('.');
        int digits = point < 0 ? rest.length() : point;
        return (rounded.signum() < 0 ? "-" : "")
                + parts[0].toBigInteger()
                + "+"
                + "0".repeat(after(units) - digits)
                + rest;
    }

    /**
     * The distance along the alignment of a station that is written with a plus, m.
     *
     * @param text without blanks at its ends, with a plus in it
     * @throws QuantityException if it is not a station of {@code units}
     */
    static double read(String text, UnitSystem units) throws QuantityException {
        int plus = text.indexOf('+');
        String before = text.substring(0, plus);
        String after = text.substring(plus + 1);
        int point = after.indexOf('.');
        String whole = point < 0 ? after : after.substring(0, point);
        String decimals = point < 0 ? "" : after.substring(point + 1);
        boolean digits = isDigits(before) && isDigits(whole) && (point < 0 || isDigits(decimals));
        if (!digits || before.length() > 6) {
            throw new QuantityException(
                    "\"" + text + "\" is not a station",
                    "Write it as " + example(units) + ", zero or more");
        }
        if (whole.length() != after(units)) {
            throw new QuantityException(
                    "\""
                            + text
                            + "\" has "
                            + whole.length()
                            + (whole.length() == 1 ? " digit" : " digits")
                            + " after the plus, and in "
                            + (units == UnitSystem.US ? "feet" : "metres")
                            + " a station has "
                            + after(units),
                    "Write it as " + example(units));
        }
        BigDecimal number =
                new BigDecimal(before)
                        .movePointRight(after(units))
                        .add(new BigDecimal(point < 0 ? whole : whole + "." + decimals));
        return (units == UnitSystem.US ? Unit.FOOT : Unit.METRE).toSi(number);
    }

    /** Digits between plus and point. */
    private static int after(UnitSystem units) {
        return units == UnitSystem.US ? 2 : 3;
    }

    static String example(UnitSystem units) {
        return units == UnitSystem.US ? "12+50 for 1,250 ft" : "1+250 for 1,250 m";
    }

    private static boolean isDigits(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
