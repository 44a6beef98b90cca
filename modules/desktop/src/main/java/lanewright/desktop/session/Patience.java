package lanewright.desktop.session;

import java.util.function.LongPredicate;

/**
 * How long the thread of the screen may wait for an answer while something is dragged, so that the
 * picture painted next already shows it. An answer that is there within two frames comes without a
 * detour; one that takes longer comes later by itself. Never waits longer than it was free since it
 * waited last, so that half of the time at least is left to the pointer and to painting.
 */
final class Patience {

    /** At most, ns: less than two frames of a screen that shows sixty a second. Our choice. */
    private static final long MOST = 30_000_000;

    private long freeSince = System.nanoTime() - MOST;

    /**
     * Waits, if it may.
     *
     * @param answer waits for so many nanoseconds at most, and says whether there is an answer
     * @return whether there is one
     */
    boolean wait(LongPredicate answer) {
        long most = Math.min(MOST, System.nanoTime() - freeSince);
        try {
            return answer.test(most);
        } finally {
            freeSince = System.nanoTime();
        }
    }
}
