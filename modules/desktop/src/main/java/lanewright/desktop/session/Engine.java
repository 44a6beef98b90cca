package lanewright.desktop.session;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import lanewright.desktop.session.Shown.Wrong;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * Works out plans away from the screen, the newest first: drafts on one thread, and on another the
 * whole outcome of the newest draft. A newer plan takes the place of an older one that still waits,
 * and stops the older one's outcome.
 */
final class Engine implements AutoCloseable {

    /** Is told what was worked out, on the engine's threads. */
    interface Listener {
        /** The land was read; of no matter to who wants only what comes of a plan on it. */
        default void landed(Run.Land land) {}

        /** A draft was made; of no matter to who wants only the whole outcome. */
        default void drafted(long edit, Draft draft) {}

        void settled(long edit, Outcome outcome);

        void refused(long edit, Wrong wrong);

        /** Work goes on; of no matter where it is over in moments. */
        default void working(long edit, double part, String doing) {}
    }

    /** A hand that asks nothing for so long rests, ns. Our choice: a moment that is not noticed. */
    private static final long REST = 120_000_000;

    private record Asked(long edit, PlanFile file, boolean moving) {}

    private record Ready(long edit, Draft draft) {}

    private final Supplier<Run> begins;
    private final Object runLock = new Object();
    private volatile @Nullable Run run;
    private final Listener listener;
    private final Object lock = new Object();
    private final AtomicLong newest = new AtomicLong(-1);
    private @Nullable Asked asked;
    private @Nullable Ready ready;

    /** The newest edit whose draft was made and told, or refused. */
    private long over = -1;

    private Run.@Nullable Land told;
    private volatile boolean closed;
    private final Thread drafting;
    private final Thread settling;

    /**
     * An engine.
     *
     * @param begins makes the run when something is asked for first, on the engine's thread
     */
    Engine(Supplier<Run> begins, Listener listener) {
        this.begins = begins;
        this.listener = listener;
        this.drafting = thread("lanewright-draft", this::draft);
        this.settling = thread("lanewright-outcome", this::settle);
    }

    private Run run() {
        synchronized (runLock) {
            Run made = run;
            if (made == null) {
                made = begins.get();
                run = made;
            }
            return made;
        }
    }

    /**
     * A run that begins with the survey and the ground that this engine has read last. Waits for a
     * draft that is being made.
     */
    Run beside() {
        synchronized (runLock) {
            return run().beside();
        }
    }

    private static Thread thread(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    /**
     * Asks for a plan to be worked out.
     *
     * @param edit its number, greater than any before
     * @param moving whether it is one of many in a drag, whose whole outcome can wait
     */
    void ask(long edit, PlanFile file, boolean moving) {
        synchronized (lock) {
            newest.set(edit);
            asked = new Asked(edit, file, moving);
            ready = null;
            lock.notifyAll();
        }
    }

    /**
     * Waits for the draft of a plan that was asked for, if it is there soon.
     *
     * @param edit its number
     * @param patience how long to wait at most, ns
     * @return whether that plan has been drafted and told, or refused
     */
    boolean soon(long edit, long patience) {
        long until = System.nanoTime() + patience;
        synchronized (lock) {
            while (over < edit && !closed) {
                long left = until - System.nanoTime();
                if (left <= 0) {
                    return false;
                }
                try {
                    TimeUnit.NANOSECONDS.timedWait(lock, left);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return false;
                }
            }
            return over >= edit;
        }
    }

    private Asked nextAsked() throws InterruptedException {
        synchronized (lock) {
            Asked next = asked;
            while (next == null) {
                lock.wait();
                next = asked;
            }
            asked = null;
            return next;
        }
    }

    private Ready nextReady() throws InterruptedException {
        synchronized (lock) {
            Ready next = ready;
            while (next == null) {
                lock.wait();
                next = ready;
            }
            ready = null;
            return next;
        }
    }

    private void draft() {
        while (!closed) {
            Asked next;
            try {
                next = nextAsked();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            UnitSystem units = next.file().plan().units();
            Draft made = tried(next.edit(), units, () -> worked(next));
            if (made != null) {
                listener.drafted(next.edit(), made);
            }
            synchronized (lock) {
                over = next.edit();
                if (made != null && !next.moving() && newest.get() == next.edit()) {
                    ready = new Ready(next.edit(), made);
                }
                lock.notifyAll();
            }
            if (made != null && made.laidBefore() && rests()) {
                Draft anew = tried(next.edit(), units, () -> laidAnew(next));
                if (anew != null) {
                    listener.drafted(next.edit(), anew);
                }
            }
        }
    }

    /** Waits a little whether the hand that drags something rests. */
    private boolean rests() {
        long until = System.nanoTime() + REST;
        synchronized (lock) {
            while (asked == null && !closed) {
                long left = until - System.nanoTime();
                if (left <= 0) {
                    return true;
                }
                try {
                    TimeUnit.NANOSECONDS.timedWait(lock, left);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return false;
                }
            }
            return false;
        }
    }

    /** The draft of what is being dragged with a grade of its own; left if the hand goes on. */
    private Draft laidAnew(Asked rested) throws SurveyException, DesignRefused, PlanException {
        synchronized (runLock) {
            return run().draft(rested.file(), listening(rested.edit(), false));
        }
    }

    /** The land first, so that it is seen even where the lane cannot be laid out. */
    private Draft worked(Asked next) throws SurveyException, DesignRefused, PlanException {
        Progress progress = listening(next.edit(), true);
        synchronized (runLock) {
            Run.Land land = run().land(next.file(), progress.part(0, 0.8));
            Run.Land last = told;
            if (last == null || last.ground() != land.ground()) {
                told = land;
                listener.landed(land);
            }
            return next.moving()
                    ? run().moving(next.file(), progress)
                    : run().draft(next.file(), progress);
        }
    }

    private void settle() {
        while (!closed) {
            Ready next;
            try {
                next = nextReady();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            UnitSystem units = next.draft().plan().units();
            Run drafter = Objects.requireNonNull(run, "a draft was made without a run");
            Outcome made =
                    tried(
                            next.edit(),
                            units,
                            () -> drafter.settled(next.draft(), listening(next.edit(), false)));
            if (made != null) {
                listener.settled(next.edit(), made);
            }
        }
    }

    private interface Work<T> {
        T make() throws SurveyException, DesignRefused, PlanException;
    }

    private <T> @Nullable T tried(long edit, UnitSystem units, Work<T> work) {
        try {
            return work.make();
        } catch (CancellationException e) {
            return null;
        } catch (SurveyException e) {
            listener.refused(edit, new Wrong(e.what() + ".", e.remedy(), List.of()));
        } catch (DesignRefused e) {
            listener.refused(edit, refused(e, units));
        } catch (PlanException e) {
            listener.refused(edit, new Wrong(String.valueOf(e.getMessage()), "", List.of()));
        } catch (RuntimeException | OutOfMemoryError e) {
            System.getLogger(Engine.class.getName())
                    .log(System.Logger.Level.ERROR, "working out a plan failed", e);
            listener.refused(
                    edit,
                    new Wrong(
                            "The program failed to work this out (" + e + ").",
                            "Undo the last edit; your plan is kept. The log says more.",
                            List.of()));
        }
        return null;
    }

    /** The first thing that is wrong with a lane, with its remedy. */
    private static Wrong refused(DesignRefused e, UnitSystem units) {
        Finding first = e.findings().get(0);
        return new Wrong(first.says().in(units), first.remedy().in(units), e.findings());
    }

    /** Drafts are short and are finished even if a newer plan waits; outcomes are not. */
    private Progress listening(long edit, boolean finish) {
        return new Progress() {
            @Override
            public void report(double done, String doing) {
                listener.working(edit, done, doing);
            }

            @Override
            public boolean isCancelled() {
                return closed || (!finish && newest.get() != edit);
            }
        };
    }

    @Override
    public void close() {
        closed = true;
        drafting.interrupt();
        settling.interrupt();
    }
}
