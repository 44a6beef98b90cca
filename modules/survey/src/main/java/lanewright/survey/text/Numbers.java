package lanewright.survey.text;

import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers in bytes: an optional sign, digits with at most one decimal sign, an optional
 * exponent. Nothing else is a number: no grouping, no unit, no {@code NaN}, no hexadecimal.
 *
 * <p>Up to 19 digits are read without making a string. Where the digits fit in 2^53 and the power
 * of ten is at most 22, one multiplication or division of two exact doubles rounds correctly (W. D.
 * Clinger, <i>How to read floating point numbers accurately</i>, PLDI 1990); everything else is
 * handed to {@link Double#parseDouble}.
 */
public final class Numbers {

    private static final long EXACT = 1L << 53;

    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
        1e17, 1e18, 1e19, 1e20, 1e21, 1e22
    };

    private Numbers() {}

    /**
     * The number that stands in some bytes.
     *
     * @param bytes where to look
     * @param from first byte
     * @param to byte after the last
     * @param decimal the decimal sign, a full stop or a comma
     * @return the number, finite; NaN if it is not one or is too large for a double
     */
    public static double parse(byte[] bytes, int from, int to, byte decimal) {
        int at = from;
        boolean negative = false;
        if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
            negative = bytes[at] == '-';
            at++;
        }
        long digits = 0;
        int count = 0;
        int afterPoint = 0;
        boolean point = false;
        for (; at < to; at++) {
            int b = bytes[at];
            if (b >= '0' && b <= '9') {
                if (count < 18 || digits == 0) {
                    digits = 10 * digits + (b - '0');
                }
                if (digits != 0) {
                    count++;
                }
                if (point) {
                    afterPoint++;
                }
            } else if (b == decimal && !point) {
                point = true;
            } else {
                break;
            }
        }
        boolean anyDigit = at > from && hasDigit(bytes, from, at);
        if (!anyDigit) {
            return Double.NaN;
        }
        if (at == to && count <= 18 && digits < EXACT && afterPoint <= 22) {
            double value = digits / POWERS[afterPoint];
            return negative ? -value : value;
        }
        return slow(bytes, from, at, to, decimal);
    }

    private static boolean hasDigit(byte[] bytes, int from, int to) {
        for (int at = to - 1; at >= from; at--) {
            if (bytes[at] >= '0' && bytes[at] <= '9') {
                return true;
            }
        }
        return false;
    }

    /** Numbers with an exponent or very many digits; {@code at} is where the digits end. */
    private static double slow(byte[] bytes, int from, int at, int to, byte decimal) {
        if (at < to) {
            int rest = at;
            if (bytes[rest] != 'e' && bytes[rest] != 'E') {
                return Double.NaN;
            }
            rest++;
            if (rest < to && (bytes[rest] == '-' || bytes[rest] == '+')) {
                rest++;
            }
            if (rest == to || to - rest > 5) {
                return Double.NaN;
            }
            for (; rest < to; rest++) {
                if (bytes[rest] < '0' || bytes[rest] > '9') {
                    return Double.NaN;
                }
            }
        }
        String text = new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        double value = Double.parseDouble(text.replace((char) decimal, '.'));
        return Double.isFinite(value) ? value : Double.NaN;
    }

    /** The number in a text with a decimal point or comma, NaN if there is none. */
    public static double parse(String text, char decimal) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return parse(bytes, 0, bytes.length, (byte) decimal);
    }

    /**
     * Why a text is not a number, for whoever wrote it: the text in quotes and what is wrong with
     * it, to follow the name of what it should be.
     *
     * @param text not a number by {@link #parse(String, char)}
     * @param decimal the decimal sign that was expected
     */
    public static String explain(String text, char decimal) {
        return text.isBlank()
                ? "is blank where a number should be"
                : "'" + text + "' " + fault(text, decimal);
    }

    private static String fault(String text, char decimal) {
        String lower = text.toLowerCase(java.util.Locale.ROOT);
        char other = decimal == '.' ? ',' : '.';
        if (lower.matches("[-+]?(nan|inf|infinity|1\\.#.*)")) {
            return "is not a finite number";
        }
        if (text.indexOf('°') >= 0 || lower.matches(".*\\d\\s*['\"′″].*[news]?\\s*")) {
            return "looks like degrees, minutes and seconds, or feet and inches";
        }
        if (text.matches("[-+]?\\d{1,3}([,. '\u00a0]\\d{3})+([.,]\\d*)?")) {
            return "has separators between thousands, or a decimal sign other than '"
                    + decimal
                    + "'";
        }
        if (text.matches("[-+]?\\d*[" + other + "]\\d+")) {
            return "has the decimal sign '" + other + "' where '" + decimal + "' was understood";
        }
        if (text.matches("[-+]?[\\d.,]+[eE][-+]?\\d+")) {
            return "is too large for a number";
        }
        if (lower.matches("[-+]?[\\d.,ol]*\\d[\\d.,ol]*")
                && lower.chars().anyMatch(Character::isLetter)) {
            return "has a letter where a digit should be";
        }
        if (lower.matches("[-+]?[\\d.,]+\\s*[a-z]+\\.?")) {
            return "has a unit or a letter behind the number";
        }
        if (text.matches("[-+]?[-+\\d.,]+")) {
            return "has more than one sign or decimal sign";
        }
        return "is not a number";
    }
}
