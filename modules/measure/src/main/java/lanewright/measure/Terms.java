package lanewright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/**
 * A short text taken apart into numbers and the words that follow them: {@code 6 ft 3 1/2 in} gives
 * 6 with {@code ft} and 3.5 with {@code in}. Knows no units.
 */
final class Terms {

    /** Longer than any quantity; what is longer is not looked at. */
    static final int LONGEST = 60;

    private static final String LETTERLIKE = "%°/^²³$€£¥'\"";

    /**
     * One number and the words after it.
     *
     * @param number the number, with its sign
     * @param written the number as it was written, blanks at its ends left out
     * @param twoReadings true for one comma before three digits and no point, such as {@code
     *     1,250}: a thousand or a decimal sign
     * @param unit the words up to the next number, empty where there are none
     */
    record Term(BigDecimal number, String written, boolean twoReadings, String unit) {}

    private final String text;
    private final List<Term> terms = new ArrayList<>();
    private int at;

    private Terms(String text) {
        this.text = text;
    }

    /**
     * The terms of {@code text}, at least one.
     *
     * @throws QuantityException if the text is empty, too long, or does not begin with a number
     */
    static List<Term> of(String text) throws QuantityException {
        var terms = new Terms(tidy(text));
        do {
            terms.readTerm();
        } while (terms.at < terms.text.length());
        return List.copyOf(terms.terms);
    }

    /**
     * The text with one kind of blank, minus, foot and inch mark, and no blanks at its ends.
     *
     * @throws QuantityException if it is empty, too long or holds characters no quantity has
     */
    static String tidy(String text) throws QuantityException {
        if (text.length() > LONGEST) {
            throw new QuantityException(
                    "A text of " + text.length() + " characters is too long for a quantity",
                    "Write a number and its unit, nothing else");
        }
        StringBuilder tidy = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            tidy.append(plain(text.charAt(i)));
        }
        String stripped = tidy.toString().strip().replace("''", "\"");
        if (stripped.isEmpty()) {
            throw new QuantityException("There is nothing here", "Write a number and its unit");
        }
        return stripped;
    }

    private static String plain(char c) throws QuantityException {
        return switch (c) {
            case '\u00a0', '\u2007', '\u2009', '\u202f', '\t' -> " ";
            case '\u2212' -> "-";
            case '\u2032', '\u2019' -> "'";
            case '\u2033', '\u201d' -> "\"";
            case '\u2044' -> "/";
            case '¼' -> " 1/4";
            case '½' -> " 1/2";
            case '¾' -> " 3/4";
            default -> {
                boolean usual = (c >= ' ' && c < 0x7f) || LETTERLIKE.indexOf(c) >= 0 || isLetter(c);
                if (!usual) {
                    throw new QuantityException(
                            "There is a character no quantity has (U+"
                                    + Integer.toHexString(0x10000 + c).substring(1)
                                    + ")",
                            "Write the number with the digits 0 to 9, then its unit");
                }
                yield String.valueOf(c);
            }
        };
    }

    private static boolean isLetter(char c) {
        return Character.isLetter(c);
    }

    private void readTerm() throws QuantityException {
        if (!terms.isEmpty() && peek() == '-' && at > 0 && text.charAt(at - 1) != ' ') {
            at++; // the hyphen of 6'-3"
        }
        int from = at;
        boolean minus = false;
        if (terms.isEmpty() && (peek() == '-' || peek() == '+')) {
            minus = peek() == '-';
            at++;
        }
        BigDecimal number = readNumber(from);
        String written = text.substring(from, at).strip();
        boolean twoReadings = hasTwoReadings(written);
        terms.add(new Term(minus ? number.negate() : number, written, twoReadings, readUnit()));
    }

    private BigDecimal readNumber(int from) throws QuantityException {
        String first = digits();
        if (first.isEmpty()) {
            throw notANumber(from);
        }
        if (peek() == '/' && isDigit(at + 1)) {
            return fraction(first, from);
        }
        BigDecimal whole = decimal(first);
        int blank = at;
        if (peek() == ' ' || peek() == '-') {
            at++;
            String above = digits();
            if (!above.isEmpty() && peek() == '/' && isDigit(at + 1)) {
                return whole.add(fraction(above, from));
            }
        }
        at = blank;
        return whole;
    }

    /** The fraction whose upper part was just read. */
    private BigDecimal fraction(String above, int from) throws QuantityException {
        at++;
        String below = digits();
        boolean plain = isWhole(above) && isWhole(below) && above.length() <= 3;
        int parts = plain && below.length() <= 2 ? Integer.parseInt(below) : 0;
        if (parts == 0) {
            throw new QuantityException(
                    "\"" + text.substring(from, at) + "\" is not a fraction",
                    "Write it as 7 1/2 or as 7.5, the lower number at most 99");
        }
        return new BigDecimal(above).divide(BigDecimal.valueOf(parts), MathContext.DECIMAL128);
    }

    private static boolean isWhole(String digits) {
        return digits.indexOf('.') < 0 && digits.indexOf(',') < 0;
    }

    private String digits() {
        int from = at;
        while (isDigit(at) || ((peek() == '.' || peek() == ',') && isNumberMark())) {
            at++;
        }
        return text.substring(from, at);
    }

    /** A point or comma belongs to the number if a digit stands next to it. */
    private boolean isNumberMark() {
        return isDigit(at + 1) || (at > 0 && isDigit(at - 1));
    }

    private BigDecimal decimal(String digits) throws QuantityException {
        boolean comma = digits.indexOf(',') >= 0;
        if (comma && !isGrouped(digits)) {
            throw new QuantityException(
                    "\"" + digits + "\" has a comma where no thousands end",
                    "Write decimals with a point, as in 4.5, and leave commas out");
        }
        String plain = digits.replace(",", "");
        if (plain.indexOf('.') != plain.lastIndexOf('.') || plain.equals(".")) {
            throw new QuantityException(
                    "\"" + digits + "\" has more than one point",
                    "Write one point, before the decimals, and leave thousands unmarked");
        }
        return new BigDecimal(plain.startsWith(".") ? "0" + plain : plain);
    }

    /** Commas before every three digits of the whole part, none elsewhere. */
    private static boolean isGrouped(String digits) {
        int point = digits.indexOf('.');
        String whole = point < 0 ? digits : digits.substring(0, point);
        String[] groups = whole.split(",", -1);
        boolean grouped =
                digits.lastIndexOf(',') < whole.length()
                        && !groups[0].isEmpty()
                        && groups[0].length() <= 3
                        && groups[0].charAt(0) != '0';
        for (int i = 1; i < groups.length; i++) {
            grouped &= groups[i].length() == 3;
        }
        return grouped;
    }

    private static boolean hasTwoReadings(String written) {
        return written.indexOf(',') >= 0
                && written.indexOf(',') == written.lastIndexOf(',')
                && written.indexOf('.') < 0;
    }

    /** Up to the end, past a foot or inch mark, or up to a blank or hyphen before a digit. */
    private String readUnit() {
        skipBlanks();
        int from = at;
        if (peek() == '\'' || peek() == '"') {
            at++;
            String mark = text.substring(from, at);
            skipBlanks();
            return mark;
        }
        while (at < text.length() && !endsUnit()) {
            at++;
        }
        String unit = text.substring(from, at).strip();
        skipBlanks();
        return unit;
    }

    private boolean endsUnit() {
        char c = peek();
        boolean before = isDigit(at + 1) || (peek(1) == '.' && isDigit(at + 2));
        return c == '\'' || c == '"' || ((c == ' ' || c == '-') && before);
    }

    private void skipBlanks() {
        while (peek() == ' ') {
            at++;
        }
    }

    private boolean isDigit(int index) {
        return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
    }

    private char peek() {
        return peek(0);
    }

    private char peek(int ahead) {
        return at + ahead < text.length() ? text.charAt(at + ahead) : '\0';
    }

    private QuantityException notANumber(int from) {
        String rest = text.substring(from);
        return terms.isEmpty()
                ? new QuantityException(
                        "\"" + text + "\" does not begin with a number",
                        "Write the number first, then its unit")
                : new QuantityException(
                        "\"" + rest + "\" in \"" + text + "\" is not understood",
                        "Write one number and its unit, or feet and inches");
    }
}
