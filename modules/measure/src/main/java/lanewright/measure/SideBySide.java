package lanewright.measure;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Does the parts of one work side by side on the cores that are free. Which part is done first, and
 * by whom, is not told: each part must be a pure function of its number, and what the parts made is
 * put together by number. So a result is the same to the last bit on any number of cores.
 */
public final class SideBySide {

    private SideBySide() {}

    /**
     * Does every part once, and comes back when all are done.
     *
     * @param parts how many parts there are, numbered from zero
     * @param hands makes the memory that one thread uses again from part to part; asked for once by
     *     each thread, on that thread
     * @param work does a part
     * @throws RuntimeException what a part threw; of several, that of the lowest number. The parts
     *     not begun by then are left
     */
    public static <H> void each(int parts, Supplier<H> hands, ObjIntConsumer<H> work) {
        var crew = new Crew<H>(parts, hands, work);
        int helpers = Math.min(Runtime.getRuntime().availableProcessors(), parts) - 1;
        for (int i = 0; i < helpers; i++) {
            ForkJoinPool.commonPool().execute(crew::help);
        }
        crew.work();
        crew.close();
    }

    /** Those who work; a helper who comes when all is given out goes away again. */
    private static final class Crew<H> {
        private final int parts;
        private final Supplier<H> hands;
        private final ObjIntConsumer<H> work;
        private final AtomicInteger next = new AtomicInteger();
        private int helping;
        private boolean closed;
        private int failedPart = Integer.MAX_VALUE;
        private @Nullable RuntimeException failed;
        private @Nullable Error broken;

        Crew(int parts, Supplier<H> hands, ObjIntConsumer<H> work) {
            this.parts = parts;
            this.hands = hands;
            this.work = work;
        }

        void help() {
            synchronized (this) {
                if (closed) {
                    return;
                }
                helping++;
            }
            work();
            synchronized (this) {
                helping--;
                notifyAll();
            }
        }

        void work() {
            H own = null;
            for (int part = next.getAndIncrement(); part < parts; part = next.getAndIncrement()) {
                try {
                    if (own == null) {
                        own = hands.get();
                    }
                    work.accept(own, part);
                } catch (RuntimeException e) {
                    fail(part, e, null);
                } catch (Error e) {
                    fail(part, null, e);
                }
            }
        }

        private synchronized void fail(
                int part, @Nullable RuntimeException e, @Nullable Error error) {
            next.set(parts);
            if (part < failedPart) {
                failedPart = part;
                failed = e;
                broken = error;
            }
        }

        /** Waits for those who still work; an interrupt is kept for the caller. */
        void close() {
            boolean interrupted = false;
            synchronized (this) {
                closed = true;
                while (helping > 0) {
                    try {
                        wait();
                    } catch (InterruptedException e) {
                        interrupted = true;
                    }
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
            if (failed != null) {
                throw failed;
            }
            if (broken != null) {
                throw broken;
            }
        }
    }
}
