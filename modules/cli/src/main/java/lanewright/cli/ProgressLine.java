package lanewright.cli;

import java.io.PrintWriter;
import lanewright.measure.Progress;

/**
 * One line that says how far the work has come: only on a terminal, and only after half a second.
 */
final class ProgressLine implements Progress, AutoCloseable {

    private static final long HALF_A_SECOND = 500_000_000L;
    private static final int WIDTH = 24;

    private final PrintWriter err;

    /**
     * Java 22 and later have a console without a terminal too; then the line goes into the pipe.
     */
    @SuppressWarnings("SystemConsoleNull")
    private final boolean shown = System.console() != null;

    private final long begun = System.nanoTime();
    private int longest;

    ProgressLine(PrintWriter err) {
        this.err = err;
    }

    @Override
    public void report(double done, String doing) {
        if (shown && System.nanoTime() - begun > HALF_A_SECOND) {
            int full = (int) Math.round(Math.max(0, Math.min(1, done)) * WIDTH);
            String line = "[" + "=".repeat(full) + " ".repeat(WIDTH - full) + "] " + doing;
            err.print("\r" + line + " ".repeat(Math.max(0, longest - line.length())));
            err.flush();
            longest = Math.max(longest, line.length());
        }
    }

    @Override
    public boolean isCancelled() {
        return Interrupt.isAsked() || Thread.currentThread().isInterrupted();
    }

    @Override
    public void close() {
        if (longest > 0) {
            err.print("\r" + " ".repeat(longest) + "\r");
            err.flush();
        }
    }
}
