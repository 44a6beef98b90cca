package lanewright.planner.document;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One object of the plan, described once: {@link PlanForm} names its fields one after the other,
 * and the same description reads it, writes it and makes its schema. Fields that have a row in
 * {@link Defaults} may be left out; so may those whose method ends in {@code IfAny} or {@code Or}.
 *
 * @param <P> the record that the object becomes
 */
interface Form<P> {

    /** A field that must be there, unless there is a default for it. */
    <T> T value(String name, Codec<T> codec, Function<P, T> get, String about);

    /** A field that may be left out, and then is {@code none}. */
    <T> T valueOr(String name, Codec<T> codec, T none, Function<P, T> get, String about);

    /** A field that may be left out, and then is null. */
    <T> @Nullable T valueIfAny(String name, Codec<T> codec, Function<P, T> get, String about);

    /** A field that is true or false, with a default. */
    boolean flag(String name, Function<P, Boolean> get, String about);

    /** A whole number that may be left out, and then is zero. */
    int wholeIfAny(String name, Function<P, Integer> get, String about);

    /** A list of texts that may be left out, and then is empty. */
    List<String> words(String name, Function<P, List<String>> get, String about);

    /** A list of objects that may be left out, and then is empty. */
    <E> List<E> parts(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about);

    /**
     * The same, of objects that only the whole can check: the schema makes none to stand in for
     * them.
     */
    default <E> List<E> partsIfAny(
            String name, Function<P, List<E>> get, Function<Form<E>, E> each, String about) {
        return parts(name, get, each, about);
    }

    /** An object inside; left out, it is read as an empty one. */
    <E> E part(String name, Function<P, E> get, Function<Form<E>, E> inner, String about);

    /** A place: {@code east} and {@code north}, or {@code longitude} and {@code latitude}. */
    Spot spot(Function<P, Spot> get);
}
