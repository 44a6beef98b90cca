package lanewright.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewright.desktop.files.Trail;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.Test;

class HistoryTest {

    private static final Path PLAN =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");

    private static List<PlanFile> plans(int count) throws Exception {
        PlanFile first = PlanFile.read("plan.json", Files.readAllBytes(PLAN));
        List<PlanFile> plans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            plans.add(first.with("shapes[0].width", (4000 + i) + " mm"));
        }
        return plans;
    }

    @Test
    void aTrailGoesOnWhereItEnded() throws Exception {
        List<PlanFile> plans = plans(3);
        History history = new History();
        history.left("one", plans.get(0));
        history.left("two", plans.get(1));
        assertSame(plans.get(1), history.undo(plans.get(2)));
        Trail trail = history.trail(null, "", plans.get(1));
        assertEquals(plans.stream().map(PlanFile::text).toList(), trail.texts());
        assertEquals(List.of("one", "two"), trail.whats());
        assertEquals(1, trail.at());
        History again = new History(trail);
        assertEquals("two", again.redoable());
        assertEquals(plans.get(0).text(), again.undo(plans.get(1)).text());
        assertEquals(plans.get(1).text(), again.redo(plans.get(0)).text());
        assertEquals(plans.get(2).text(), again.redo(plans.get(1)).text());
        assertEquals(trail.texts(), again.trail(null, "", plans.get(2)).texts());
    }

    @Test
    void aDragThatGoesOnCanBeUndoneAfterACrash() throws Exception {
        List<PlanFile> plans = plans(3);
        History history = new History();
        history.left("one", plans.get(0));
        Trail trail = history.trail(plans.get(1), "drag", plans.get(2));
        assertEquals(List.of("one", "drag"), trail.whats());
        assertEquals(plans.get(1).text(), new History(trail).undo(plans.get(2)).text());
    }

    @Test
    void whatIsNoPlanEndsTheTrail() throws Exception {
        PlanFile plan = plans(1).get(0);
        History history =
                new History(new Trail(List.of("no plan", plan.text()), List.of("one"), 1));
        assertNull(history.undo(plan));
        assertNull(history.undoable());
        assertNull(history.redoable());
    }

    @Test
    void stepsAreTakenBackAndDoneAgainInOrder() throws Exception {
        List<PlanFile> plans = plans(3);
        History history = new History();
        assertNull(history.undo(plans.get(0)));
        assertNull(history.undoable());
        history.left("one", plans.get(0));
        history.left("two", plans.get(1));
        assertEquals("two", history.undoable());
        assertNull(history.redoable());
        assertSame(plans.get(1), history.undo(plans.get(2)));
        assertEquals("one", history.undoable());
        assertEquals("two", history.redoable());
        assertSame(plans.get(0), history.undo(plans.get(1)));
        assertNull(history.undo(plans.get(0)));
        assertSame(plans.get(1), history.redo(plans.get(0)));
        assertSame(plans.get(2), history.redo(plans.get(1)));
        assertNull(history.redo(plans.get(2)));
        assertEquals("two", history.undoable());
    }

    @Test
    void aNewStepForgetsWhatWasTakenBack() throws Exception {
        List<PlanFile> plans = plans(3);
        History history = new History();
        history.left("one", plans.get(0));
        history.undo(plans.get(1));
        history.left("other", plans.get(0));
        assertNull(history.redoable());
        assertNull(history.redo(plans.get(2)));
        assertSame(plans.get(0), history.undo(plans.get(2)));
    }

    @Test
    void theOldestStepsAreForgottenFirst() throws Exception {
        List<PlanFile> plans = plans(2);
        History history = new History();
        history.left("first", plans.get(0));
        for (int i = 0; i < History.MOST; i++) {
            history.left("step " + i, plans.get(1));
        }
        for (int i = History.MOST - 1; i >= 0; i--) {
            assertEquals("step " + i, history.undoable());
            assertSame(plans.get(1), history.undo(plans.get(1)));
        }
        assertNull(history.undoable());
    }
}
