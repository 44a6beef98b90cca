package lanewright.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was understood of one file, to be shown to whoever gave it.
 *
 * @param file name of the file
 * @param understood what it was taken for, one line each
 * @param samples a few of its rows as they were understood
 * @param columns its columns, if it is delimited text
 * @param points how many points of ground were taken from it
 * @param lines how many lines
 * @param probes how many probe holes
 */
public record Reading(
        String file,
        List<Understood> understood,
        List<Sample> samples,
        List<Column> columns,
        int points,
        int lines,
        int probes) {

    /** Copies the lists. */
    public Reading {
        understood = List.copyOf(understood);
        samples = List.copyOf(samples);
        columns = List.copyOf(columns);
    }

    /** What was understood under a name, or null. */
    public @Nullable Understood understood(String what) {
        return understood.stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElse(null);
    }

    /**
     * One thing that was understood.
     *
     * @param what the question, such as {@code separator}
     * @param answer the answer, such as {@code comma}
     * @param why how that is known
     */
    public record Understood(String what, String answer, String why) {}

    /**
     * One column of delimited text.
     *
     * @param heading the words over it, or its number if there are none
     * @param meaning what it was taken for, in the word of a plan: {@code skip} if for nothing
     * @param unused true if it holds numbers with which nothing is done, and nobody said so
     */
    public record Column(String heading, String meaning, boolean unused) {}

    /**
     * One row of the file beside what was made of it.
     *
     * @param line line of the file from 1
     * @param text the row as it stands
     * @param meaning what was understood
     */
    public record Sample(long line, String text, String meaning) {}
}
