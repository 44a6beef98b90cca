package lanewright.survey.read;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which words in the code of a point mean something. Words are whole words, told apart by blanks,
 * and capitals do not count.
 *
 * <p>Points that follow each other in a file and carry the same breakline word make one line. A
 * point with both a breakline word and {@code startWord} begins a new line; one with {@code
 * endWord} is the last of its line. A point may carry several breakline words and then belongs to
 * several lines.
 *
 * @param breaklines words that make breaklines, such as {@code edge} or {@code ditch}
 * @param startWord word that begins a new line, or null
 * @param endWord word that ends a line, or null
 * @param notGround words of shots that do not lie on the ground, such as a wire: they are left out,
 *     and counted in a finding
 */
public record LineCodes(
        Set<String> breaklines,
        @Nullable String startWord,
        @Nullable String endWord,
        Set<String> notGround) {

    /** No word means anything. */
    public static final LineCodes NONE = new LineCodes(Set.of(), null, null, Set.of());

    /**
     * Words in lower case, in the order given; a word with a blank or with two meanings refused.
     */
    public LineCodes {
        breaklines = words(breaklines);
        notGround = words(notGround);
        startWord = startWord == null ? null : word(startWord);
        endWord = endWord == null ? null : word(endWord);
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

    /** Only breaklines, without words for start and end. */
    public static LineCodes breaklines(String... words) {
        return new LineCodes(new LinkedHashSet<>(List.of(words)), null, null, Set.of());
    }

    private static Set<String> words(Set<String> given) {
        var words = new LinkedHashSet<String>();
        for (String each : given) {
            words.add(word(each));
        }
        return Collections.unmodifiableSet(words);
    }

    private static String word(String given) {
        String word = given.strip().toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.chars().anyMatch(Character::isWhitespace)) {
            throw new IllegalArgumentException("a code is one whole word, was '" + given + "'");
        }
        return word;
    }

    private static void refuseTwice(boolean first, String word) {
        if (!first) {
            throw new IllegalArgumentException("code '" + word + "' has two meanings");
        }
    }
}
