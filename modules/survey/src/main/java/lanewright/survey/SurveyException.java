package lanewright.survey;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Measured ground that cannot be read as it stands: which file, which line, what is wrong with it
 * and what to do.
 */
public final class SurveyException extends Exception {

    /** What has to be said of a file before it can be read. */
    public enum Asks {
        /** Nothing: the file or the plan is to be mended. */
        NOTHING,
        /** In which unit its coordinates are. */
        UNIT,
        /** In which unit its heights are. */
        UNIT_OF_HEIGHTS,
        /** Which of the two feet its feet are. */
        WHICH_FOOT,
        /** What its columns are. */
        COLUMNS
    }

    private final @Nullable Path file;
    private final long line;
    private final String what;
    private final String remedy;
    private final Asks asks;

    /**
     * Says that a file cannot be read.
     *
     * @param file the file, or null if the trouble is not in a file
     * @param line line from 1, or 0 if no single line is to blame
     * @param what what is wrong, without a full stop at its end
     * @param remedy what to do, as a sentence
     */
    public SurveyException(@Nullable Path file, long line, String what, String remedy) {
        this(file, line, what, remedy, Asks.NOTHING);
    }

    /**
     * Says that something has to be said of a file before it can be read.
     *
     * @param file the file, or null if the trouble is not in a file
     * @param line line from 1, or 0 if no single line is to blame
     * @param what what is wrong, without a full stop at its end
     * @param remedy what to do, as a sentence
     * @param asks what has to be said
     */
    public SurveyException(@Nullable Path file, long line, String what, String remedy, Asks asks) {
        super(words(file, line, what, remedy));
        this.file = file;
        this.line = line;
        this.what = what;
        this.remedy = remedy;
        this.asks = asks;
    }

    private static String words(@Nullable Path file, long line, String what, String remedy) {
        var words = new StringBuilder();
        if (file != null) {
            Path name = file.getFileName();
            words.append(name == null ? file : name);
            if (line > 0) {
                words.append(", line ").append(line);
            }
            words.append(": ");
        }
        return words.append(what).append(". ").append(remedy).toString();
    }

    /** The file, or null if the trouble is not in a file. */
    public @Nullable Path file() {
        return file;
    }

    /** The line from 1, or 0 if no single line is to blame. */
    public long line() {
        return line;
    }

    /** What is wrong. */
    public String what() {
        return what;
    }

    /** What to do. */
    public String remedy() {
        return remedy;
    }

    /** What has to be said of the file before it can be read. */
    public Asks asks() {
        return asks;
    }
}
