package lanewright.measure;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with quantities in it, kept apart so that it can be said in either unit system.
 *
 * @param pattern the sentence, each {@code {}} standing for the next quantity, and each {@code {~}}
 *     for one that is told roundly, as a rule of thumb is
 * @param quantities what fills the gaps, in order; as many as the pattern has gaps
 */
public record Saying(String pattern, List<Quantity> quantities) {

    private static final Pattern GAP = Pattern.compile("\\{~?}");

    /** Checks that gaps and quantities are equally many. */
    public Saying {
        quantities = List.copyOf(quantities);
        long gaps = GAP.matcher(pattern).results().count();
        if (gaps != quantities.size()) {
            throw new IllegalArgumentException(
                    "saying has "
                            + gaps
                            + " gaps and "
                            + quantities.size()
                            + " quantities: "
                            + pattern);
        }
    }

    /** A saying of {@code pattern} with {@code quantities} in its gaps. */
    public static Saying of(String pattern, Quantity... quantities) {
        return new Saying(pattern, List.of(quantities));
    }

    /** The words for one thing, or for none or several. */
    public static String number(double count, String one, String many) {
        return count == 1 ? one : many;
    }

    /** Words that hold no quantity; braces in them are taken as they stand. */
    public static Saying plain(String words) {
        return new Saying(words.replace("{}", "{ }").replace("{~}", "{ ~}"), List.of());
    }

    /** The sentence with its quantities written in {@code units}. */
    public String in(UnitSystem units) {
        StringBuilder said = new StringBuilder();
        Matcher gap = GAP.matcher(pattern);
        int from = 0;
        for (Quantity quantity : quantities) {
            gap.find();
            said.append(pattern, from, gap.start());
            said.append(
                    gap.group().equals("{}") ? quantity.in(units) : Words.round(quantity, units));
            from = gap.end();
        }
        return said.append(pattern.substring(from)).toString();
    }
}
