package lanewright.desktop.look;

import javafx.animation.PauseTransition;
import javafx.util.Duration;

/**
 * Something that need not follow every move of the hand: it is done at once if it was not done for
 * a while, and else once when that while is over; and never two such things in one picture, but one
 * after another, for all of them together would keep the hand waiting. So what the hand is on has
 * the time of a frame for itself. On the thread of the screen.
 */
public final class Seldom {

    /** Ten times a second. Our choice: what changes beside the hand is still seen to follow. */
    private static final long WHILE = 100_000_000;

    /** The time of two frames between one such thing and the next. Our choice. */
    private static final long APART = 33_000_000;

    private static final double NANOS_A_MILLI = 1e6;

    /** When the last of all was done, or is to be done. */
    private static long lastOfAll = System.nanoTime() - WHILE;

    private final Runnable work;
    private final PauseTransition later = new PauseTransition();
    private long done = System.nanoTime() - WHILE;

    /**
     * Work that is done ten times a second at most.
     *
     * @param work what is done
     */
    public Seldom(Runnable work) {
        this.work = work;
        later.setOnFinished(event -> now());
    }

    /** Does it, now or soon: when its while is over and it is its turn. */
    public void soon() {
        if (later.getStatus() == PauseTransition.Status.RUNNING) {
            return;
        }
        long now = System.nanoTime();
        // As differences: this clock may run through zero.
        long left = Math.max(done + WHILE - now, lastOfAll + APART - now);
        lastOfAll = now + Math.max(0, left);
        if (left <= 0) {
            now();
        } else {
            later.setDuration(Duration.millis(left / NANOS_A_MILLI));
            later.playFromStart();
        }
    }

    /** Does it now. */
    public void now() {
        later.stop();
        done = System.nanoTime();
        work.run();
    }
}
