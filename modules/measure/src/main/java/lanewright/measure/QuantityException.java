package lanewright.measure;

/**
 * A quantity that cannot be read as it stands. The reader of the file adds where it stands.
 *
 * <p>Nothing in it is guessed: a text that could be read in two ways is not read at all.
 */
public final class QuantityException extends Exception {

    private final String what;
    private final String remedy;

    /**
     * What is wrong and what to do about it.
     *
     * @param what what is wrong with the text, a sentence without its full stop
     * @param remedy what to write instead, a sentence without its full stop
     */
    public QuantityException(String what, String remedy) {
        super(what + ". " + remedy + ".");
        this.what = what;
        this.remedy = remedy;
    }

    /** What is wrong with the text, a sentence without its full stop. */
    public String what() {
        return what;
    }

    /** What to write instead, a sentence without its full stop. */
    public String remedy() {
        return remedy;
    }
}
