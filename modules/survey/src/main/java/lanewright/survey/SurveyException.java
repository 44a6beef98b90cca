package lanewright.survey;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Measured ground that cannot be read as it stands: which file, which line, what is wrong with it
 * and what to do.
 */
public final class SurveyException extends Exception {

    private final @Nullable Path file;
    private final long line;
    private final String what;
    private final String remedy;

    /**
     * Says that a file cannot be read.
     *
     * @param file the file, or null if the trouble is not in a file
     * @param line line from 1, or 0 if no single line is to blame
     * @param what what is wrong, without a full stop at its end
     * @param remedy what to do, as a sentence
     */
    public SurveyException(@Nullable Path file, long line, String what, String remedy) {
        super(words(file, line, what, remedy));
        this.file = file;
        this.line = line;
        this.what = what;
        this.remedy = remedy;
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
}
