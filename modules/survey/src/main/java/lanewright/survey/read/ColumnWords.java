package lanewright.survey.read;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Words for the columns of delimited text, to be offered before they are asked for. */
public final class ColumnWords {

    private ColumnWords() {}

    /**
     * A word that a column can be given, where columns are declared in their order.
     *
     * @param word the word
     * @param about what such a column holds, where the word alone may not tell; or empty
     */
    public record Choice(String word, String about) {

        /** What it stands for, as in {@code 'topsoil' (its depth)}. */
        @Override
        public String toString() {
            return about.isEmpty() ? word : word + " (" + about + ")";
        }
    }

    private static final Choice SKIP = new Choice("skip", "not to be read");

    private static final List<Choice> POINTS =
            List.of(
                    new Choice("name", "name or number"),
                    new Choice("east", ""),
                    new Choice("north", ""),
                    new Choice("height", ""),
                    new Choice("code", "what was shot"),
                    SKIP);

    private static final List<Choice> PROBES =
            List.of(
                    new Choice("hole", "name or number"),
                    new Choice("east", ""),
                    new Choice("north", ""),
                    new Choice("topsoil", "how deep it goes"),
                    new Choice("soft to", "how deep the soft soil goes, down to soil that bears"),
                    new Choice("note", "what was found"),
                    SKIP);

    /** What the columns of a file can be called. */
    public static List<Choice> of(Holds holds) {
        return holds == Holds.PROBES ? PROBES : POINTS;
    }

    /** The choices for a column that are left when others are taken already, in words of a plan. */
    public static List<Choice> left(Holds holds, List<String> taken) {
        return of(holds).stream()
                .filter(
                        choice ->
                                choice.equals(SKIP)
                                        || taken.stream()
                                                .noneMatch(
                                                        word ->
                                                                meant(holds, word)
                                                                        == meant(
                                                                                holds,
                                                                                choice.word())))
                .toList();
    }

    private static @Nullable Column meant(Holds holds, String word) {
        return Column.heading(word).column(holds);
    }

    /** True if these first lines of delimited text have a heading over depths of probe holes. */
    public static boolean headsDepths(String lines) {
        for (String line : lines.lines().toList()) {
            if (headsDepth(line)) {
                return true;
            }
            if (!line.isBlank() && !line.startsWith("#")) {
                return false;
            }
        }
        return false;
    }

    private static boolean headsDepth(String line) {
        String[] parted = line.split("[,;\t]");
        String[] fields = parted.length > 1 ? parted : line.strip().split("\\s+");
        return Stream.of(fields)
                .map(field -> Column.heading(field.replace("\"", "")).column())
                .anyMatch(column -> column == Column.TOPSOIL || column == Column.BEARING);
    }
}
