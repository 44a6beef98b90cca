package lanewright.desktop.session;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import lanewright.desktop.session.Shown.Wrong;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import org.jspecify.annotations.Nullable;

/**
 * Hands the engine's news to the screen: only the newest of each, once each time that the screen
 * looks, so that a quick engine never floods it.
 */
final class News implements Engine.Listener {

    private final Executor screen;
    private final Consumer<Run.Land> land;
    private final Consumer<UnaryOperator<Shown>> shown;
    private final AtomicBoolean coming = new AtomicBoolean();
    private final Object lock = new Object();
    private Heard heard = new Heard();

    /** What the engine has told since the screen last looked. */
    private static final class Heard {
        private long draftEdit = -1;
        private @Nullable Draft draft;
        private long outcomeEdit = -1;
        private @Nullable Outcome outcome;
        private long wrongEdit = -1;
        private @Nullable Wrong wrong;
        private long workedEdit = -1;
        private String doing = "";
        private double part;

        Shown onto(Shown now) {
            boolean newDraft = draft != null && draftEdit >= now.draftEdit();
            boolean newOutcome = outcome != null && outcomeEdit >= now.outcomeEdit();
            long settled = newOutcome ? outcomeEdit : now.outcomeEdit();
            boolean failed = wrong != null && wrongEdit == now.edit();
            // What is still told of an earlier plan says nothing of this one.
            boolean worked = workedEdit == now.edit();
            boolean over = failed || settled == now.edit();
            return new Shown(
                    now.edit(),
                    now.file(),
                    newDraft ? draft : now.draft(),
                    newDraft ? draftEdit : now.draftEdit(),
                    newOutcome ? outcome : now.outcome(),
                    settled,
                    failed ? wrong : now.wrong(),
                    over ? "" : worked ? doing : now.doing(),
                    over ? 1 : worked ? part : now.part());
        }
    }

    /**
     * News for a screen.
     *
     * @param screen runs what it is given on the thread of the screen, later
     * @param land is given new land, on that thread
     * @param shown is given what to make of what is shown, on that thread
     */
    News(Executor screen, Consumer<Run.Land> land, Consumer<UnaryOperator<Shown>> shown) {
        this.screen = screen;
        this.land = land;
        this.shown = shown;
    }

    private void hear(Consumer<Heard> tells) {
        synchronized (lock) {
            tells.accept(heard);
        }
        if (coming.compareAndSet(false, true)) {
            screen.execute(this::tell);
        }
    }

    /** Tells at once what was heard; on the thread of the screen. */
    void tell() {
        coming.set(false);
        Heard newest;
        synchronized (lock) {
            newest = heard;
            heard = new Heard();
        }
        shown.accept(newest::onto);
    }

    @Override
    public void landed(Run.Land made) {
        screen.execute(() -> land.accept(made));
    }

    @Override
    public void drafted(long edit, Draft draft) {
        hear(
                told -> {
                    told.draft = draft;
                    told.draftEdit = edit;
                });
    }

    @Override
    public void settled(long edit, Outcome outcome) {
        hear(
                told -> {
                    told.outcome = outcome;
                    told.outcomeEdit = edit;
                });
    }

    @Override
    public void refused(long edit, Wrong wrong) {
        hear(
                told -> {
                    told.wrong = wrong;
                    told.wrongEdit = edit;
                });
    }

    @Override
    public void working(long edit, double part, String doing) {
        hear(
                told -> {
                    told.workedEdit = edit;
                    told.doing = doing;
                    told.part = part;
                });
    }
}
