package lanewright.measure;

import org.jspecify.annotations.Nullable;

/**
 * The only way to say that something is wrong or worth a look.
 *
 * @param code a short, stable, lower-case name of the check, words joined by hyphens, such as
 *     {@code ditch-no-outlet}
 * @param level how bad it is
 * @param topic which question of the owner's it belongs to
 * @param where the place
 * @param says what was found, in the owner's words, with number and place
 * @param measured the measured value, or null if the check has none
 * @param limit the limit it was held against, or null if there is none
 * @param source published source of the limit, or {@code common practice, no source}, or {@code
 *     your plan}; empty if there is no limit
 * @param remedy what to do
 */
public record Finding(
        String code,
        Level level,
        Topic topic,
        Where where,
        Saying says,
        @Nullable Quantity measured,
        @Nullable Quantity limit,
        String source,
        Saying remedy) {

    /** Checks that the code is one, and that a limit has a source. */
    public Finding {
        boolean named = !code.isEmpty() && code.charAt(0) >= 'a' && code.charAt(0) <= 'z';
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            named &= (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
        }
        if (!named) {
            throw new IllegalArgumentException(
                    "a finding's code has lower case letters, digits and hyphens, was " + code);
        }
        if (limit != null && source.isBlank()) {
            throw new IllegalArgumentException("finding " + code + " has a limit and no source");
        }
    }

    /** How bad a finding is, worst first. */
    public enum Level {
        /** The plan must not be built as it stands, or a figure is missing because of it. */
        STOP,
        /** Look here before building. */
        LOOK,
        /** Good to know. */
        NOTE
    }

    /** The owner's questions, in the order they are asked. */
    public enum Topic {
        /** Can I trust the ground? */
        GROUND,
        /** Where does the lane run? */
        LINE,
        /** What grade does it take? */
        GRADE,
        /** How is it shaped? */
        SHAPE,
        /** Where does water go? */
        WATER,
        /** How much topsoil and dirt? */
        EARTH,
        /** How much stone? */
        STONE,
        /** What do I do, in what order? */
        ORDER,
        /** What do I carry to the field? */
        FIELD
    }

    /** A finding without measured value or limit. */
    public static Finding of(
            String code, Level level, Topic topic, Where where, Saying says, Saying remedy) {
        return new Finding(code, level, topic, where, says, null, null, "", remedy);
    }
}
