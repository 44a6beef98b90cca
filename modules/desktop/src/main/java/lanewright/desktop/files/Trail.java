package lanewright.desktop.files;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The texts that a plan went through, so that edits can be undone and done again, also after the
 * plan was left and opened again.
 *
 * @param texts the plan's texts in their order, at least one
 * @param whats what each edit did, in a few words: the first leads from the first text to the
 *     second
 * @param at which text is the present one, from 0
 */
public record Trail(List<String> texts, List<String> whats, int at) {

    /** So many edits are kept over the end of the program. */
    static final int MOST = 60;

    /** Letters of all texts together that are kept over the end of the program. */
    static final int LONGEST = 2_000_000;

    /** Letters of what an edit did. */
    static final int WORDS = 200;

    /** Checks that the parts fit together. */
    public Trail {
        texts = List.copyOf(texts);
        whats = List.copyOf(whats);
        if (texts.size() != whats.size() + 1 || at < 0 || at >= texts.size()) {
            throw new IllegalArgumentException(
                    texts.size() + " texts, " + whats.size() + " edits, at " + at);
        }
    }

    /** As much of it around the present text as is worth keeping: what comes first goes first. */
    Trail bounded() {
        int from = at;
        int to = at;
        long letters = texts.get(at).length();
        while (to - from < MOST) {
            // Two edits that can be undone are kept for one that can be done again.
            boolean back = from > 0 && (to == texts.size() - 1 || at - from <= 2 * (to - at));
            int next = back ? from - 1 : to + 1;
            if (next >= texts.size()) {
                break;
            }
            letters += texts.get(next).length();
            if (letters > LONGEST) {
                break;
            }
            from = Math.min(from, next);
            to = Math.max(to, next);
        }
        return new Trail(texts.subList(from, to + 1), whats.subList(from, to), at - from);
    }

    /**
     * The same trail with another of its texts as the present one, the nearest to where it was.
     *
     * @return null if the text is none of it
     */
    public @Nullable Trail from(String present) {
        int best = -1;
        for (int i = 0; i < texts.size(); i++) {
            if (texts.get(i).equals(present)
                    && (best < 0 || Math.abs(i - at) < Math.abs(best - at))) {
                best = i;
            }
        }
        return best < 0 ? null : new Trail(texts, whats, best);
    }
}
