package lanewright.cli;

/** How a command ends, for scripts. */
enum Exit {
    /** Done. */
    DONE(0, "done"),
    /**
     * Checked, laid, or made with {@code --strict}, but the plan must not be built as it stands:
     * see the findings. Without {@code --strict}, a plan that was made is done: sheets that say
     * what is wrong are what the owner asked for.
     */
    STOP(
            1,
            "checked, laid, or made with --strict, but the plan must not be built as it stands: see the"
                    + " findings"),
    /** The command was not understood. */
    USAGE(2, "the command was not understood"),
    /** A survey, a plan or a quantity cannot be used as it stands. */
    INPUT(3, "a survey, a plan or a quantity cannot be used as it stands"),
    /** A file cannot be read or written. */
    FILE(4, "a file cannot be read or written"),
    /** A fault of this program. */
    FAULT(70, "a fault of this program"),
    /** Cancelled. */
    CANCELLED(130, "cancelled");

    private final int code;
    private final String words;

    Exit(int code, String words) {
        this.code = code;
        this.words = words;
    }

    int code() {
        return code;
    }

    String words() {
        return words;
    }
}
