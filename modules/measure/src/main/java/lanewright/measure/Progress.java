package lanewright.measure;

import java.util.concurrent.CancellationException;

/**
 * How long work tells its caller where it is, and learns that it should stop. Called from any
 * thread.
 */
public interface Progress {

    /** Listens to nothing and never cancels. */
    Progress NONE =
            new Progress() {
                @Override
                public void report(double done, String doing) {}

                @Override
                public boolean isCancelled() {
                    return false;
                }
            };

    /**
     * Tells how far the work has come.
     *
     * @param done part of the work done, 0 to 1
     * @param doing what is being done, in the owner's words
     */
    void report(double done, String doing);

    /** True once the caller has lost interest. */
    boolean isCancelled();

    /**
     * Leaves if the caller has lost interest. Called between steps, never inside a save.
     *
     * @throws CancellationException if cancelled
     */
    default void check() {
        if (isCancelled()) {
            throw new CancellationException("cancelled");
        }
    }

    /**
     * The same listener for a part of the work that runs from {@code from} to {@code to} of the
     * whole.
     */
    default Progress part(double from, double to) {
        Progress whole = this;
        return new Progress() {
            @Override
            public void report(double done, String doing) {
                whole.report(from + done * (to - from), doing);
            }

            @Override
            public boolean isCancelled() {
                return whole.isCancelled();
            }
        };
    }
}
