package lanewright.measure;

import java.util.List;

/**
 * A sentence with quantities in it, kept apart so that it can be said in either unit system.
 *
 * @param pattern the sentence, each {@code {}} standing for the next quantity
 * @param quantities what fills the gaps, in order; as many as the pattern has gaps
 */
public record Saying(String pattern, List<Quantity> quantities) {

    private static final String GAP = "{}";

    /** Checks that gaps and quantities are equally many. */
    public Saying {
        quantities = List.copyOf(quantities);
        int gaps = 0;
        for (int at = pattern.indexOf(GAP); at >= 0; at = pattern.indexOf(GAP, at + GAP.length())) {
            gaps++;
        }
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

    /** Words that hold no quantity; braces in them are taken as they stand. */
    public static Saying plain(String words) {
        return new Saying(words.replace(GAP, "{ }"), List.of());
    }

    /** The sentence with its quantities written in {@code units}. */
    public String in(UnitSystem units) {
        StringBuilder said = new StringBuilder();
        int from = 0;
        for (Quantity quantity : quantities) {
            int gap = pattern.indexOf(GAP, from);
            said.append(pattern, from, gap).append(quantity.in(units));
            from = gap + GAP.length();
        }
        return said.append(pattern.substring(from)).toString();
    }
}
