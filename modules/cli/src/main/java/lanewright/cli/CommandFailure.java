package lanewright.cli;

/** A command cannot go on, in words for the person who gave it. */
final class CommandFailure extends Exception {

    private static final long serialVersionUID = 1;

    private final Exit exit;

    CommandFailure(Exit exit, String words) {
        super(words);
        this.exit = exit;
    }

    Exit exit() {
        return exit;
    }
}
