package lanewright.survey.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Declared codes by their words, to find them in the codes of points. One word costs at most as
 * many steps as a declared code has words, however many codes are declared.
 */
final class CodeTree {

    private final Map<String, CodeTree> next = new HashMap<>();
    private @Nullable String ends;

    /** Takes in a code as {@link LineCodes} keeps it. */
    void add(String code) {
        CodeTree at = this;
        for (String word : LineCodes.words(code)) {
            at = at.next.computeIfAbsent(word, w -> new CodeTree());
        }
        at.ends = code;
    }

    /**
     * The declared codes in the words of a point's code, from left to right. Of two that begin at
     * one word the longer is meant, and its words count for no other: a point coded {@code road
     * edge} is no point of {@code edge} where both are declared.
     */
    List<String> in(List<String> words) {
        List<String> found = new ArrayList<>();
        int from = 0;
        while (from < words.size()) {
            CodeTree at = next.get(words.get(from));
            int to = from + 1;
            int after = to;
            String longest = null;
            while (at != null) {
                if (at.ends != null) {
                    longest = at.ends;
                    after = to;
                }
                at = to < words.size() ? at.next.get(words.get(to)) : null;
                to++;
            }
            if (longest != null) {
                found.add(longest);
            }
            from = after;
        }
        return found;
    }
}
