package lanewright.survey.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * Cuts one line after another into fields. Quotes as in RFC 4180: a field may stand in double
 * quotes, and a quote inside it is doubled. Blanks around a field do not count. With the blank as
 * separator, any run of blanks and tabs separates.
 *
 * <p>Holds places of one line at a time in arrays of its own, so that a million lines make no
 * garbage.
 */
public final class Fields {

    /** More fields than this are no survey row. */
    public static final int MOST = 64;

    private final byte separator;
    private final int[] start = new int[MOST];
    private final int[] end = new int[MOST];
    private final boolean[] doubled = new boolean[MOST];
    private int count;
    private byte[] bytes = {};
    private int lineEnd;
    private int afterQuoted;

    /**
     * Cuts at a separator.
     *
     * @param separator comma, semicolon, tab or blank
     */
    public Fields(char separator) {
        this.separator = (byte) separator;
    }

    /** Why a line cannot be cut. */
    private enum Trouble {
        TOO_MANY(
                "the row has more than " + MOST + " fields",
                "Check the separator; declare it in the plan as \"separator\"."),
        OPEN_QUOTE(
                "a quote is opened and not closed on the same line",
                "Close the quote; write a quote inside a field (as for inches) twice."),
        AFTER_QUOTE(
                "something follows a closing quote",
                "Put the whole field in quotes, and write a quote inside it twice.");

        private final String what;
        private final String remedy;

        Trouble(String what, String remedy) {
            this.what = what;
            this.remedy = remedy;
        }
    }

    /**
     * Cuts the present line.
     *
     * @throws SurveyException if a quote is not closed, something follows a closing quote, or there
     *     are more than {@value #MOST} fields
     */
    public void cut(Lines line) throws SurveyException {
        Trouble trouble = cut(line.bytes(), line.start(), line.end());
        if (trouble != null) {
            throw new SurveyException(line.file(), line.number(), trouble.what, trouble.remedy);
        }
    }

    /** Cuts a line that was kept as text; false if it cannot be cut with this separator. */
    public boolean cut(String line) {
        byte[] kept = line.getBytes(StandardCharsets.UTF_8);
        return cut(kept, 0, kept.length) == null;
    }

    private @Nullable Trouble cut(byte[] line, int from, int to) {
        bytes = line;
        lineEnd = to;
        count = 0;
        boolean blanks = separator == ' ';
        int at = skipBlanks(from, to);
        while (!blanks || at < to) {
            if (count == MOST) {
                return Trouble.TOO_MANY;
            }
            int after;
            if (at < to && line[at] == '"') {
                Trouble trouble = quoted(at, to);
                if (trouble != null) {
                    return trouble;
                }
                after = afterQuoted;
            } else {
                after = plain(at, to);
            }
            count++;
            if (after >= to) {
                break;
            }
            at = skipBlanks(blanks ? after : after + 1, to);
        }
        return null;
    }

    /** Takes a field without quotes; where it ends, separator not included. */
    private int plain(int at, int to) {
        int after = at;
        if (separator == ' ') {
            while (after < to && !blank(bytes[after])) {
                after++;
            }
        } else {
            while (after < to && bytes[after] != separator) {
                after++;
            }
        }
        int last = after;
        while (last > at && blank(bytes[last - 1])) {
            last--;
        }
        start[count] = at;
        end[count] = last;
        doubled[count] = false;
        return after;
    }

    /** Takes a field in quotes, and says in {@link #afterQuoted} where the next separator is. */
    private @Nullable Trouble quoted(int at, int to) {
        boolean twice = false;
        int close = at + 1;
        while (true) {
            while (close < to && bytes[close] != '"') {
                close++;
            }
            if (close == to) {
                return Trouble.OPEN_QUOTE;
            }
            if (close + 1 == to || bytes[close + 1] != '"') {
                break;
            }
            twice = true;
            close += 2;
        }
        start[count] = at + 1;
        end[count] = close;
        doubled[count] = twice;
        boolean blanks = separator == ' ';
        int after = blanks ? close + 1 : skipBlanks(close + 1, to);
        afterQuoted = after;
        boolean parted = after == to || (blanks ? blank(bytes[after]) : bytes[after] == separator);
        return parted ? null : Trouble.AFTER_QUOTE;
    }

    private int skipBlanks(int from, int to) {
        int at = from;
        while (at < to && blank(bytes[at])) {
            at++;
        }
        return at;
    }

    private boolean blank(byte b) {
        return b == ' ' || (b == '\t' && separator != '\t');
    }

    /** How many fields the line has. */
    public int count() {
        return count;
    }

    /** True if field {@code k} holds nothing. */
    public boolean isEmpty(int k) {
        return start[k] == end[k];
    }

    /** The number in field {@code k}, NaN if it holds none. */
    public double number(int k, char decimal) {
        return Numbers.parse(bytes, start[k], end[k], (byte) decimal);
    }

    /** Field {@code k} in words. */
    public String text(int k) {
        String text = new String(bytes, start[k], end[k] - start[k], StandardCharsets.UTF_8);
        return doubled[k] ? text.replace("\"\"", "\"") : text;
    }

    /** Everything from field {@code k} to the end of the line, in words, as it stands. */
    public String textFrom(int k) {
        if (k == count - 1) {
            return text(k);
        }
        return new String(bytes, start[k], lineEnd - start[k], StandardCharsets.UTF_8).strip();
    }

    /** True if field {@code k} holds the same bytes as {@code other}. */
    public boolean same(int k, byte[] other) {
        int length = end[k] - start[k];
        if (length != other.length) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (bytes[start[k] + i] != other[i]) {
                return false;
            }
        }
        return true;
    }

    /** All fields in words. */
    public List<String> all() {
        List<String> all = new ArrayList<>(count);
        for (int k = 0; k < count; k++) {
            all.add(text(k));
        }
        return all;
    }
}
