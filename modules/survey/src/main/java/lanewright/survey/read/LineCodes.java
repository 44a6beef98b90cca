package lanewright.survey.read;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which codes mean something. A code is one whole word or several, told apart by blanks; capitals
 * and how many blanks stand between do not count. It is met wherever its words follow each other in
 * what a point is coded: {@code road edge} in {@code road edge st}. Of two codes that begin at one
 * word the longer is meant.
 *
 * <p>Points that follow each other in a file and carry the same breakline code make one line. A
 * point with both a breakline code and {@code startWord} begins a new line; one with {@code
 * endWord} is the last of its line. A point may carry several breakline codes and then belongs to
 * several lines.
 *
 * @param breaklines codes that make breaklines, such as {@code edge} or {@code road edge}
 * @param startWord code that begins a new line, or null
 * @param endWord code that ends a line, or null
 * @param notGround codes of shots that do not lie on the ground, such as a wire: they are left out,
 *     and counted in a finding
 */
public record LineCodes(
        Set<String> breaklines,
        @Nullable String startWord,
        @Nullable String endWord,
        Set<String> notGround) {

    /** Letters in the longest code; what is longer is a remark, not a code. */
    public static final int LONGEST = 100;

    /** No code means anything. */
    public static final LineCodes NONE = new LineCodes(Set.of(), null, null, Set.of());

    /**
     * Codes in lower case with single blanks, in the order given; one that is empty, too long or of
     * two meanings is refused.
     */
    public LineCodes {
        breaklines = codes(breaklines);
        notGround = codes(notGround);
        startWord = startWord == null ? null : code(startWord);
        endWord = endWord == null ? null : code(endWord);
        var seen = new LinkedHashSet<>(breaklines);
        for (String other : notGround) {
            refuseTwice(seen.add(other), other);
        }
        if (startWord != null) {
            refuseTwice(seen.add(startWord), startWord);
        }
        if (endWord != null) {
            refuseTwice(seen.add(endWord), endWord);
        }
    }

    /** Only breaklines, without codes for start and end. */
    public static LineCodes breaklines(String... codes) {
        return new LineCodes(new LinkedHashSet<>(List.of(codes)), null, null, Set.of());
    }

    private static Set<String> codes(Set<String> given) {
        var codes = new LinkedHashSet<String>();
        for (String each : given) {
            codes.add(code(each));
        }
        return Collections.unmodifiableSet(codes);
    }

    private static String code(String given) {
        String code = String.join(" ", words(given));
        if (code.isEmpty()) {
            throw new IllegalArgumentException("a code has no word in it");
        }
        if (code.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "a code has at most "
                            + LONGEST
                            + " letters, was '"
                            + code.substring(0, LONGEST)
                            + "…'");
        }
        return code;
    }

    /** The words of a code, in lower case: one and the same cut for what is declared and met. */
    static List<String> words(String code) {
        return Stream.of(code.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
    }

    /** All codes that are declared, by their words. */
    CodeTree tree() {
        var tree = new CodeTree();
        breaklines.forEach(tree::add);
        notGround.forEach(tree::add);
        Stream.of(startWord, endWord).filter(Objects::nonNull).forEach(tree::add);
        return tree;
    }

    private static void refuseTwice(boolean first, String code) {
        if (!first) {
            throw new IllegalArgumentException("code '" + code + "' has two meanings");
        }
    }
}
