package lanewright.desktop.session;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import lanewright.desktop.session.Shown.Wrong;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/** The one proposal that is looked at, worked out beside the present plan. */
final class Looking implements Engine.Listener, AutoCloseable {

    private final ReadOnlyObjectWrapper<@Nullable Ghost> ghost = new ReadOnlyObjectWrapper<>();
    private final Executor screen;
    private final Engine engine;
    private long edit;

    /** Whether a grade is to be laid in place of the plan's own. */
    private boolean gradeAnew;

    /**
     * Looks at nothing yet.
     *
     * @param beside whose land the proposals are worked out on
     * @param screen runs what it is given on the thread of the screen, later
     */
    Looking(Engine beside, Executor screen) {
        this.screen = screen;
        this.engine = new Engine(beside::beside, this);
    }

    ReadOnlyObjectProperty<@Nullable Ghost> ghost() {
        return ghost.getReadOnlyProperty();
    }

    /**
     * Looks at a proposal in place of any other.
     *
     * @param now the present plan
     * @param proposed the plan with the change in it
     */
    void at(String title, PlanFile now, PlanFile proposed) {
        gradeAnew =
                !now.plan().grade().points().isEmpty()
                        && proposed.plan().grade().points().isEmpty();
        ghost.set(new Ghost(title, proposed, null, null, null));
        engine.ask(++edit, proposed, false);
    }

    /** Looks at nothing more. */
    void leave() {
        edit++;
        ghost.set(null);
    }

    /** The plan that is agreed on by taking a proposal: with the grade that was laid for it. */
    PlanFile agreed(Ghost seen) {
        Draft draft = seen.draft();
        if (!gradeAnew || draft == null || draft.laid() == null) {
            return seen.file();
        }
        try {
            return seen.file().with(draft.plan());
        } catch (PlanException e) {
            throw new IllegalStateException("a grade that was laid does not stand in a plan", e);
        }
    }

    @Override
    public void drafted(long of, Draft draft) {
        screen.execute(() -> answer(of, draft, null, null));
    }

    @Override
    public void settled(long of, Outcome outcome) {
        screen.execute(() -> answer(of, null, outcome, null));
    }

    @Override
    public void refused(long of, Wrong wrong) {
        screen.execute(() -> answer(of, null, null, wrong));
    }

    private void answer(
            long of, @Nullable Draft draft, @Nullable Outcome outcome, @Nullable Wrong wrong) {
        Ghost seen = ghost.get();
        if (seen != null && of == edit) {
            ghost.set(
                    new Ghost(
                            seen.title(),
                            seen.file(),
                            draft == null ? seen.draft() : draft,
                            outcome,
                            wrong));
        }
    }

    @Override
    public void close() {
        engine.close();
    }
}
