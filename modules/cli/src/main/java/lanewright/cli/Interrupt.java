package lanewright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * An interrupt from the keyboard asks the work to stop, and gives it a moment to leave everything
 * as it was before the process ends.
 */
final class Interrupt {

    /** How long the work may take to clean up, s: a whole book of sheets on a busy machine. */
    private static final long PATIENCE = 20;

    private static final CountDownLatch ENDED = new CountDownLatch(1);
    private static volatile boolean asked;

    private Interrupt() {}

    /** Listens from now on; called once, by the process that is the command. */
    static void listen() {
        Runtime.getRuntime().addShutdownHook(new Thread(Interrupt::ask, "interrupt"));
    }

    private static void ask() {
        asked = true;
        try {
            if (!ENDED.await(PATIENCE, TimeUnit.SECONDS)) {
                System.err.println("The work did not stop in time.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Says that the work is over: nothing more is waited for. */
    static void ended() {
        ENDED.countDown();
    }

    /** Whether an interrupt came. */
    static boolean isAsked() {
        return asked;
    }
}
