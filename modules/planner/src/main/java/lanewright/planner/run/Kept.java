package lanewright.planner.run;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The last result of one stage, kept as long as what went into it stays equal. There is no flag to
 * set and none to forget: an input that changed is an input that is not equal.
 *
 * @param <V> what the stage makes
 */
final class Kept<V> {

    private final String name;
    private final Tally tally;
    private List<Object> inputs = List.of();
    private @Nullable V result;

    /**
     * A stage that has not run.
     *
     * @param name what it makes
     * @param tally is told whenever it runs
     */
    Kept(String name, Tally tally) {
        this.name = name;
        this.tally = tally;
    }

    /** A stage that begins with what another has. */
    Kept(Kept<V> other, Tally tally) {
        this(other.name, tally);
        inputs = other.inputs;
        result = other.result;
    }

    /** Work that may fail with a checked exception. */
    interface Work<V, E extends Exception> {
        V make() throws E;
    }

    /** The last result, whatever went into it; null before the first. */
    @Nullable V last() {
        return result;
    }

    /** Whether the last result is of equal inputs. */
    boolean isOf(List<Object> now) {
        return result != null && inputs.equals(now);
    }

    /** The result of {@code work} on {@code now}: kept if these are equal to the last ones. */
    <E extends Exception> V of(List<Object> now, Work<V, E> work) throws E {
        V last = result;
        if (last != null && isOf(now)) {
            return last;
        }
        tally.runs(name);
        V made = work.make();
        inputs = List.copyOf(now);
        result = made;
        return made;
    }
}
