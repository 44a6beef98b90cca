package lanewright.desktop.session;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import lanewright.desktop.files.Trail;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import org.jspecify.annotations.Nullable;

/** The plans that were, so that every edit can be undone and done again. */
final class History {

    /** Edits kept; a plan is a few kilobytes. */
    static final int MOST = 1000;

    /** A plan that was; one that comes from an earlier sitting is read only when it is wanted. */
    private record Step(String what, String text, @Nullable PlanFile plan) {

        static Step of(String what, PlanFile plan) {
            return new Step(what, plan.text(), plan);
        }

        PlanFile read() throws PlanException {
            return plan != null
                    ? plan
                    : PlanFile.read("an earlier step", text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private final Deque<Step> behind = new ArrayDeque<>();
    private final Deque<Step> ahead = new ArrayDeque<>();

    /** Nothing was edited yet. */
    History() {}

    /** Goes on where a trail ends. */
    History(@Nullable Trail trail) {
        if (trail != null) {
            for (int i = 0; i < trail.at(); i++) {
                behind.push(new Step(trail.whats().get(i), trail.texts().get(i), null));
            }
            for (int i = trail.texts().size() - 1; i > trail.at(); i--) {
                ahead.push(new Step(trail.whats().get(i - 1), trail.texts().get(i), null));
            }
        }
    }

    /**
     * The texts that the plan went through.
     *
     * @param before where an edit began that goes on still; null if none does
     * @param what that edit does
     * @param now the plan as it is
     */
    Trail trail(@Nullable PlanFile before, String what, PlanFile now) {
        List<String> texts = new ArrayList<>();
        List<String> whats = new ArrayList<>();
        for (Iterator<Step> back = behind.descendingIterator(); back.hasNext(); ) {
            Step step = back.next();
            texts.add(step.text());
            whats.add(step.what());
        }
        if (before != null) {
            texts.add(before.text());
            whats.add(what);
        }
        int at = texts.size();
        texts.add(now.text());
        if (before == null) {
            for (Step step : ahead) {
                texts.add(step.text());
                whats.add(step.what());
            }
        }
        return new Trail(texts, whats, at);
    }

    /** Notes that {@code before} was left by an edit called {@code what}. */
    void left(String what, PlanFile before) {
        behind.push(Step.of(what, before));
        ahead.clear();
        if (behind.size() > MOST) {
            behind.removeLast();
        }
    }

    /** What undo would take back, or null. */
    @Nullable String undoable() {
        Step step = behind.peek();
        return step == null ? null : step.what();
    }

    /** What redo would do again, or null. */
    @Nullable String redoable() {
        Step step = ahead.peek();
        return step == null ? null : step.what();
    }

    /** The plan before the last edit, or null if there is none. */
    @Nullable PlanFile undo(PlanFile now) {
        return move(behind, ahead, now);
    }

    /** The plan after the edit last undone, or null if there is none. */
    @Nullable PlanFile redo(PlanFile now) {
        return move(ahead, behind, now);
    }

    private static @Nullable PlanFile move(Deque<Step> from, Deque<Step> to, PlanFile now) {
        Step step = from.poll();
        if (step == null) {
            return null;
        }
        try {
            PlanFile plan = step.read();
            to.push(Step.of(step.what(), now));
            return plan;
        } catch (PlanException e) {
            // What was kept by a program that knew other plans: nothing behind it can be read.
            System.getLogger(History.class.getName())
                    .log(System.Logger.Level.WARNING, "an earlier step is no plan", e);
            from.clear();
            return null;
        }
    }
}
