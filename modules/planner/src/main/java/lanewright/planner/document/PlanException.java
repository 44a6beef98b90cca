package lanewright.planner.document;

import java.util.List;

/** A plan that cannot be read as it stands. Says every trouble that could be told apart. */
public final class PlanException extends Exception {

    private final String file;
    private final transient List<Trouble> troubles;

    /**
     * A refusal.
     *
     * @param file name of the file, without folders
     * @param troubles what is wrong, at least one, in the order of the file
     */
    public PlanException(String file, List<Trouble> troubles) {
        super(words(file, troubles));
        this.file = file;
        this.troubles = List.copyOf(troubles);
    }

    /** A refusal with one reason. */
    public PlanException(String file, Trouble trouble) {
        this(file, List.of(trouble));
    }

    private static String words(String file, List<Trouble> troubles) {
        if (troubles.isEmpty()) {
            throw new IllegalArgumentException("a refusal needs a reason");
        }
        StringBuilder words = new StringBuilder();
        for (Trouble trouble : troubles) {
            words.append(words.isEmpty() ? "" : System.lineSeparator());
            words.append(file).append(trouble.line() > 0 ? ", " : ": ").append(trouble.words());
        }
        return words.toString();
    }

    /** Name of the file, without folders. */
    public String file() {
        return file;
    }

    /** What is wrong, at least one, in the order of the file. */
    public List<Trouble> troubles() {
        return troubles;
    }
}
