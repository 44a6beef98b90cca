package lanewright.desktop.session;

import java.util.ArrayDeque;
import java.util.Deque;
import lanewright.planner.document.PlanFile;
import org.jspecify.annotations.Nullable;

/** The plans that were, so that every edit can be undone and done again. */
final class History {

    /** Edits kept; a plan is a few kilobytes. */
    static final int MOST = 1000;

    private record Step(String what, PlanFile plan) {}

    private final Deque<Step> behind = new ArrayDeque<>();
    private final Deque<Step> ahead = new ArrayDeque<>();

    /** Notes that {@code before} was left by an edit called {@code what}. */
    void left(String what, PlanFile before) {
        behind.push(new Step(what, before));
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
        Step step = behind.poll();
        if (step == null) {
            return null;
        }
        ahead.push(new Step(step.what(), now));
        return step.plan();
    }

    /** The plan after the edit last undone, or null if there is none. */
    @Nullable PlanFile redo(PlanFile now) {
        Step step = ahead.poll();
        if (step == null) {
            return null;
        }
        behind.push(new Step(step.what(), now));
        return step.plan();
    }
}
