package lanewright.planner.document;

import java.util.List;
import lanewright.measure.UnitSystem;

/** How one kind of value stands in the plan: as text, with its unit inside. */
interface Codec<T> {

    /**
     * The value that a text means.
     *
     * @param units the plan's units, for stations such as {@code 12+50}
     * @throws Unread if it means none, with what is wrong and what to write instead
     */
    T read(String text, UnitSystem units) throws Unread;

    /** The text that means a value, exactly. */
    String write(T value, UnitSystem units);

    /** A regular expression (ECMA 262) that every legal text matches; empty for any text. */
    String pattern();

    /** The words that are allowed, if only some are; otherwise empty. */
    default List<String> words() {
        return List.of();
    }

    /** What stands here, such as {@code a length with its unit}. */
    String what();

    /** Some legal value. */
    T sample();

    /** A text that means no value. */
    final class Unread extends Exception {
        private final String what;
        private final String remedy;

        Unread(String what, String remedy) {
            super(what + ". " + remedy);
            this.what = what;
            this.remedy = remedy;
        }

        String what() {
            return what;
        }

        String remedy() {
            return remedy;
        }
    }
}
