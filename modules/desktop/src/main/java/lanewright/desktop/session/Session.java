package lanewright.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import lanewright.desktop.files.Trail;
import lanewright.desktop.session.Shown.Wrong;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Topic;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import org.jspecify.annotations.Nullable;

/**
 * A plan being worked on. All methods are called on the thread of the screen, and all properties
 * change on it; the work is done elsewhere.
 */
public final class Session implements AutoCloseable {

    private final PlanFile opened;
    private final Path folder;
    private final Executor screen;
    private final News news;
    private final Engine engine;
    private final Patience patience = new Patience();
    private final Looking looking;
    private final History history;
    private final ReadOnlyObjectWrapper<Shown> shown;
    private final ReadOnlyStringWrapper undoable = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper redoable = new ReadOnlyStringWrapper("");
    private final DoubleProperty marker = new SimpleDoubleProperty(0);
    private final IntegerProperty rainStep = new SimpleIntegerProperty(-1);
    private final BooleanProperty wetGround = new SimpleBooleanProperty(false);
    private final ObjectProperty<Topic> open = new SimpleObjectProperty<>(Topic.LINE);
    private final ReadOnlyObjectWrapper<@Nullable Finding> pointed = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<@Nullable WaterRow> pointedRow =
            new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<Run.@Nullable Land> land = new ReadOnlyObjectWrapper<>();
    private @Nullable Gesture gesture;

    /**
     * Opens a plan and begins to work it out.
     *
     * @param file the plan
     * @param folder folder that the paths of its survey are relative to
     * @param screen runs what it is given on the thread of the screen, later
     */
    public Session(PlanFile file, Path folder, Executor screen) {
        this(file, folder, screen, null);
    }

    /**
     * Opens a plan that was worked on before.
     *
     * @param file the plan
     * @param folder folder that the paths of its survey are relative to
     * @param screen runs what it is given on the thread of the screen, later
     * @param trail the texts that it went through, with this plan as the present one; null if they
     *     are not known
     */
    public Session(PlanFile file, Path folder, Executor screen, @Nullable Trail trail) {
        this.history = new History(trail);
        this.opened = file;
        this.folder = folder;
        this.screen = screen;
        this.shown =
                new ReadOnlyObjectWrapper<>(
                        new Shown(0, file, null, -1, null, -1, null, "Reading the survey", 0));
        this.news = new News(screen, land::set, said -> shown.set(said.apply(shown.get())));
        this.engine = new Engine(() -> new Run(folder), news);
        this.looking = new Looking(engine, screen);
        tellHistory();
        engine.ask(0, file, false);
    }

    /** The plan as it was opened. */
    public PlanFile opened() {
        return opened;
    }

    /** Folder that the paths of the survey are relative to. */
    public Path folder() {
        return folder;
    }

    /** What is known now. */
    public ReadOnlyObjectProperty<Shown> shown() {
        return shown.getReadOnlyProperty();
    }

    /** The plan as edited. */
    public PlanFile file() {
        return shown.get().file();
    }

    /**
     * The plan as edited; if it has no grade of its own, with the one that is seen, so that an edit
     * can begin from it.
     */
    public Plan plan() {
        Plan plan = file().plan();
        Draft draft = shown.get().draft();
        if (!plan.grade().points().isEmpty() || draft == null) {
            return plan;
        }
        GradePart seen = draft.plan().grade();
        return plan.with(plan.grade().laid(seen.points(), seen.reasons()));
    }

    /** The measured land, as soon as it is known; null before. */
    public ReadOnlyObjectProperty<Run.@Nullable Land> land() {
        return land.getReadOnlyProperty();
    }

    /** Where the one place marker stands, station in metres. */
    public DoubleProperty marker() {
        return marker;
    }

    /** The step of the plan's rain that is looked at, from 0; -1 for the last one. */
    public IntegerProperty rainStep() {
        return rainStep;
    }

    /**
     * The step that is looked at.
     *
     * @param steps how many there are
     * @return from 0; -1 if there are none
     */
    public int rainStepOf(int steps) {
        int chosen = rainStep.get();
        return chosen < 0 || chosen >= steps ? steps - 1 : chosen;
    }

    /** Whether the land shows where it stays wet by its shape, under the question of water. */
    public BooleanProperty wetGround() {
        return wetGround;
    }

    /** The question that is open. */
    public ObjectProperty<Topic> open() {
        return open;
    }

    /** The finding that was pointed at last, on the land or elsewhere; null if none was. */
    public ReadOnlyObjectProperty<@Nullable Finding> pointed() {
        return pointed.getReadOnlyProperty();
    }

    /** Opens the question that a finding belongs to, and points at its text. */
    public void pointTo(Finding finding) {
        open.set(finding.topic());
        pointed.set(null);
        pointed.set(finding);
    }

    /** The row of the card of water that was pointed at last; null if none was. */
    public ReadOnlyObjectProperty<@Nullable WaterRow> pointedRow() {
        return pointedRow.getReadOnlyProperty();
    }

    /** Opens the question of water, and points at a row of its card. */
    public void pointTo(WaterRow row) {
        open.set(Topic.WATER);
        pointedRow.set(null);
        pointedRow.set(row);
    }

    /** The texts that the plan went through, the present one among them. */
    public Trail trail() {
        Gesture going = gesture;
        return going == null
                ? history.trail(null, "", file())
                : history.trail(going.before, going.what, file());
    }

    /** What undo would take back, or empty. */
    public ReadOnlyStringProperty undoable() {
        return undoable.getReadOnlyProperty();
    }

    /** What redo would do again, or empty. */
    public ReadOnlyStringProperty redoable() {
        return redoable.getReadOnlyProperty();
    }

    /** A proposal that is looked at, or null. */
    public ReadOnlyObjectProperty<@Nullable Ghost> ghost() {
        return looking.ghost();
    }

    /**
     * A plan after an edit that began from what is seen: a grade that was only laid goes into the
     * plan if the edit changed a point of it, and stays out if it did not.
     *
     * @param file the plan before
     * @param from what the edit began from, perhaps with a laid grade
     * @param to what the edit made of it
     */
    private static PlanFile edited(PlanFile file, Plan from, Plan to) throws PlanException {
        boolean unlaid = file.plan().grade().points().isEmpty();
        if (unlaid && to.grade().points().equals(from.grade().points())) {
            List<String> reasons = file.plan().grade().reasons();
            return file.with(to.with(to.grade().laid(List.of(), reasons)));
        }
        return file.with(to);
    }

    /**
     * Writes the grade that the program laid into the plan, so that it stays whatever else changes;
     * in one step that can be undone. Does nothing if the plan has one of its own, or none is laid
     * yet.
     */
    public void keepGrade() {
        finishGesture();
        PlanFile before = file();
        Plan seen = plan();
        if (!before.plan().grade().points().isEmpty() || seen.grade().points().isEmpty()) {
            return;
        }
        try {
            PlanFile after = before.with(seen);
            history.left("the laid grade kept", before);
            show(after, false);
        } catch (PlanException e) {
            throw new IllegalStateException("a grade that was laid does not stand in a plan", e);
        }
    }

    /**
     * Edits the plan, in one step that can be undone. A grade that the program laid stays out of
     * the plan unless the edit changes a point of it.
     *
     * @param what the edit in a few words, such as {@code width}
     * @param change makes the new plan of the present one ({@link #plan})
     * @return what is wrong with the edit, which then was not made; or null
     */
    public @Nullable Wrong edit(String what, UnaryOperator<Plan> change) {
        finishGesture();
        PlanFile before = file();
        try {
            Plan from = plan();
            PlanFile after = edited(before, from, change.apply(from));
            if (!after.plan().equals(before.plan())) {
                history.left(what, before);
                show(after, false);
            }
            return null;
        } catch (PlanException e) {
            return wrong(e);
        } catch (IllegalArgumentException e) {
            return new Wrong(String.valueOf(e.getMessage()), "", List.of());
        }
    }

    /**
     * Writes one value of the plan in the owner's own words, in one step that can be undone.
     *
     * @param what the edit in a few words
     * @param path which value, such as {@code grade.steepest}
     * @param value what to write, such as {@code 12 %}
     * @return what is wrong with it, in which case the plan stays as it is; or null
     */
    public @Nullable Wrong write(String what, String path, String value) {
        return write(what, Map.of(path, value.strip()));
    }

    /**
     * Writes several values of the plan that stand or fall together, in one step that can be
     * undone.
     *
     * @param what the edit in a few words
     * @param values what to write at which path, in this order
     * @return what is wrong with them, in which case the plan stays as it is; or null
     */
    public @Nullable Wrong write(String what, Map<String, String> values) {
        finishGesture();
        PlanFile before = file();
        try {
            boolean grade = values.keySet().stream().anyMatch(p -> p.startsWith("grade.points"));
            PlanFile from = grade ? before.with(plan()) : before;
            PlanFile after = from.with(values);
            if (!after.text().equals(before.text())) {
                history.left(what, before);
                show(after, false);
            }
            return null;
        } catch (PlanException e) {
            return wrong(e);
        }
    }

    private static Wrong wrong(PlanException e) {
        var first = e.troubles().get(0);
        return new Wrong(first.what(), first.remedy(), List.of());
    }

    /** Whether something is being dragged. */
    public boolean isMoving() {
        return gesture != null;
    }

    /** Begins a drag: many edits that are one step to undo. */
    public Gesture begin(String what) {
        finishGesture();
        Gesture begun = new Gesture(what, file(), plan());
        gesture = begun;
        return begun;
    }

    private void finishGesture() {
        Gesture going = gesture;
        if (going != null) {
            going.done();
        }
    }

    /** A drag. */
    public final class Gesture {
        private final String what;
        private final PlanFile before;
        private final Plan from;
        private boolean moved;
        private boolean over;

        private Gesture(String what, PlanFile before, Plan from) {
            this.what = what;
            this.before = before;
            this.from = from;
        }

        /** The plan that the drag began from. */
        public Plan from() {
            return from;
        }

        /**
         * Moves on.
         *
         * @param change makes the new plan of the one that the drag began from
         * @return what is wrong with that, in which case the plan stays as it was last; or null
         */
        public @Nullable Wrong to(UnaryOperator<Plan> change) {
            if (over) {
                return null;
            }
            try {
                PlanFile after = edited(before, from, change.apply(from));
                if (!after.plan().equals(file().plan())) {
                    moved = true;
                    show(after, true);
                }
                return null;
            } catch (PlanException e) {
                return wrong(e);
            } catch (IllegalArgumentException e) {
                return new Wrong(String.valueOf(e.getMessage()), "", List.of());
            }
        }

        /** Lets go: the last plan stays, as one step to undo if it is another than before. */
        public void done() {
            if (!over) {
                over = true;
                gesture = null;
                boolean same = file().plan().equals(before.plan());
                if (!same) {
                    history.left(what, before);
                }
                if (moved) {
                    // Even where it began: the drag's drafts were not to be settled.
                    show(same ? before : file(), false);
                }
            }
        }

        /** Goes back to where the drag began. */
        public void cancel() {
            if (!over) {
                over = true;
                gesture = null;
                if (moved) {
                    show(before, false);
                }
            }
        }
    }

    /** Takes back the last edit, if there is one. */
    public void undo() {
        finishGesture();
        PlanFile back = history.undo(file());
        if (back != null) {
            show(back, false);
        } else {
            tellHistory();
        }
    }

    /** Does again what was last taken back, if there is something. */
    public void redo() {
        finishGesture();
        PlanFile again = history.redo(file());
        if (again != null) {
            show(again, false);
        } else {
            tellHistory();
        }
    }

    /**
     * Looks at a proposal beside the present plan.
     *
     * @param title what it would change
     * @param change makes the proposed plan
     * @return what is wrong with it, or null
     */
    public @Nullable Wrong look(String title, UnaryOperator<Plan> change) {
        try {
            PlanFile now = file();
            Plan from = plan();
            looking.at(title, now, edited(now, from, change.apply(from)));
            return null;
        } catch (PlanException e) {
            return wrong(e);
        } catch (IllegalArgumentException e) {
            return new Wrong(String.valueOf(e.getMessage()), "", List.of());
        }
    }

    /** Takes the proposal that is looked at. */
    public void take() {
        Ghost seen = looking.ghost().get();
        if (seen != null) {
            finishGesture();
            looking.leave();
            history.left(seen.title(), file());
            show(looking.agreed(seen), false);
        }
    }

    /** Leaves the proposal that is looked at. */
    public void leave() {
        looking.leave();
    }

    /** Is told, on the thread of the screen, what becomes of a plan that is worked out beside. */
    public interface Beside {
        /** It goes on: how much is done, 0 to 1, and what is being done. */
        void working(double part, String doing);

        /** It is worked out. */
        void done(Outcome outcome);

        /** It has no answer. */
        void refused(Wrong wrong);
    }

    /** A plan being worked out beside this one. */
    public interface Working extends AutoCloseable {
        /**
         * Ends the work; what is running still is left to end by itself, and tells nothing more.
         */
        @Override
        void close();
    }

    /**
     * Works out another plan, once, beside this one.
     *
     * @param file the other plan
     * @param in folder that the paths of its survey are relative to
     * @return stops the work when closed
     */
    public Working workOut(PlanFile file, Path in, Beside told) {
        boolean sameLand = in.equals(folder) && file.plan().survey().equals(plan().survey());
        var other =
                new Engine(sameLand ? engine::beside : () -> new Run(in), new TellingBeside(told));
        other.ask(0, file, false);
        return other::close;
    }

    private void show(PlanFile file, boolean moving) {
        if (looking.ghost().get() != null) {
            // It was made of the plan before this edit, and taking it would take the edit back.
            leave();
        }
        Shown now = shown.get();
        long edit = now.edit() + 1;
        shown.set(
                new Shown(
                        edit,
                        file,
                        now.draft(),
                        now.draftEdit(),
                        now.outcome(),
                        now.outcomeEdit(),
                        null,
                        "",
                        0));
        tellHistory();
        engine.ask(edit, file, moving);
        if (moving && patience.wait(most -> engine.soon(edit, most))) {
            news.tell();
        }
    }

    private void tellHistory() {
        String undo = history.undoable();
        String redo = history.redoable();
        undoable.set(undo == null ? "" : undo);
        redoable.set(redo == null ? "" : redo);
    }

    /** Hands what comes of a plan beside this one to who asked for it. */
    private final class TellingBeside implements Engine.Listener {
        private final Beside told;

        TellingBeside(Beside told) {
            this.told = told;
        }

        @Override
        public void settled(long edit, Outcome outcome) {
            screen.execute(() -> told.done(outcome));
        }

        @Override
        public void refused(long edit, Wrong wrong) {
            screen.execute(() -> told.refused(wrong));
        }

        @Override
        public void working(long edit, double part, String doing) {
            screen.execute(() -> told.working(part, doing));
        }
    }

    /** Stops working. What is running is left to end by itself. */
    @Override
    public void close() {
        engine.close();
        looking.close();
    }
}
