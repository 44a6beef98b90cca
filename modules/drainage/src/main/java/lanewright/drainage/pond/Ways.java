package lanewright.drainage.pond;

/**
 * Places with heights, and which of them water can pass between directly, as a flood asks for them
 * from the lowest place up.
 */
interface Ways {

    /** How many places there are, numbered from zero. */
    int size();

    /** Height of a place, m. */
    double height(int place);

    /** How many ways lead from this place. */
    int degree(int place);

    /**
     * Where way {@code i} of {@code place} leads, {@code i} from zero to its degree. The place
     * itself if that way decides nothing.
     */
    int next(int place, int i);

    /** Whether a place is taken before another: the lower first, of equal ones the lower number. */
    default boolean isBefore(int first, int second) {
        double low = height(first);
        double high = height(second);
        return low < high || (low == high && first < second);
    }
}
