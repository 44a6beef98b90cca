package lanewright.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.Spot;
import lanewright.planner.document.WaterPart;
import lanewright.planner.document.WorkPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Edits without a screen: the test's own thread takes its place. */
class SessionTest {

    private static final Path PLAN =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");
    private static final String WIDTH = "shapes[0].width";

    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();
    private PlanFile first;
    private Session session;

    @BeforeEach
    void open() throws Exception {
        first = PlanFile.read("plan.json", Files.readAllBytes(PLAN));
        session = new Session(first, PLAN.getParent(), screen::add);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void until(BooleanSupplier seen) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(180);
        while (!seen.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, "never seen");
            Runnable next = screen.poll(50, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
        }
    }

    private static UnaryOperator<Plan> interval(double metres) {
        return plan -> {
            WorkPart work = plan.work();
            return plan.with(
                    new WorkPart(
                            work.margin(),
                            metres,
                            work.stakesBeyond(),
                            work.instrumentHeight(),
                            work.heaps()));
        };
    }

    @Test
    void editsAreTakenBackAndDoneAgain() {
        assertNull(session.write("width", WIDTH, "13 ft"));
        PlanFile second = session.file();
        assertEquals("13 ft", second.said(WIDTH));
        assertEquals("width", session.undoable().get());
        assertNull(session.edit("sections", interval(7)));
        PlanFile third = session.file();
        assertEquals(7, third.plan().work().interval());
        session.undo();
        assertSame(second, session.file());
        assertEquals("sections", session.redoable().get());
        session.undo();
        assertSame(first, session.file());
        assertEquals("", session.undoable().get());
        session.undo();
        assertSame(first, session.file());
        session.redo();
        session.redo();
        assertSame(third, session.file());
        assertEquals("", session.redoable().get());
        session.redo();
        assertSame(third, session.file());
        session.undo();
        assertNull(session.write("width", WIDTH, "14 ft"));
        assertEquals("", session.redoable().get());
    }

    @Test
    void aPipeIsTakenOutAndComesBackWithUndo() {
        var pipe =
                new WaterPart.Pipe(
                        "a pipe",
                        new WaterPart.Mouth(Spot.at(1622, 620), 122.8),
                        new WaterPart.Mouth(Spot.at(1622, 610), 122.7),
                        0.45,
                        WaterPart.PipeState.TO_LAY);
        var another =
                new WaterPart.Pipe("another pipe", pipe.inlet(), pipe.outlet(), 0.45, pipe.state());
        assertNull(
                session.edit("pipe", plan -> plan.with(plan.water().with(List.of(pipe, another)))));
        assertNull(session.edit("take out", plan -> plan.with(plan.water().without(0))));
        assertEquals(1, session.plan().water().pipes().size());
        assertEquals("take out", session.undoable().get());
        session.undo();
        assertEquals(2, session.plan().water().pipes().size());
        assertEquals(WaterPart.PipeState.TO_LAY, session.plan().water().pipes().get(1).state());
    }

    @Test
    void aRefusedEditLeavesThePlanAndSaysWhy() {
        for (String bad : List.of("wide", "-3 ft", "12 %", "12 parsecs")) {
            Shown.Wrong wrong = session.write("width", WIDTH, bad);
            assertNotNull(wrong, bad);
            assertTrue(!wrong.what().isBlank(), bad);
            assertSame(first, session.file());
            assertEquals("", session.undoable().get());
        }
        assertNotNull(session.edit("sections", interval(-1)));
        assertNotNull(session.edit("sections", interval(Double.NaN)));
        Shown.Wrong told =
                session.edit(
                        "sections",
                        plan -> {
                            throw new IllegalArgumentException("no such thing");
                        });
        assertNotNull(told);
        assertEquals("no such thing", told.what());
        assertSame(first, session.file());
        assertEquals(0, session.shown().get().edit());
    }

    @Test
    void anEditThatChangesNothingIsNoStep() {
        assertNull(session.edit("nothing", plan -> plan));
        assertNull(session.write("width", WIDTH, "12 ft"));
        assertEquals("", session.undoable().get());
        assertSame(first, session.file());
    }

    @Test
    void aDragIsOneStep() {
        Session.Gesture drag = session.begin("sections");
        for (int i = 1; i <= 20; i++) {
            assertNull(drag.to(interval(5 + i)));
            assertEquals(5 + i, session.file().plan().work().interval(), 1e-9);
        }
        assertNotNull(drag.to(interval(-1)));
        assertEquals(25, session.file().plan().work().interval(), 1e-9, "as it was last");
        drag.done();
        PlanFile last = session.file();
        assertEquals("sections", session.undoable().get());
        assertNull(drag.to(interval(9)), "over is over");
        assertSame(last, session.file());
        session.undo();
        assertSame(first, session.file());
        assertEquals("", session.undoable().get());
        session.redo();
        assertSame(last, session.file());
    }

    @Test
    void aDragThatIsGivenUpLeavesNothing() {
        Session.Gesture drag = session.begin("sections");
        assertNull(drag.to(interval(6)));
        drag.cancel();
        drag.done();
        assertSame(first, session.file());
        assertEquals("", session.undoable().get());
        session.begin("sections").done();
        assertEquals("", session.undoable().get(), "pressed and let go");
    }

    @Test
    void anotherEditEndsADrag() {
        Session.Gesture drag = session.begin("sections");
        assertNull(drag.to(interval(6)));
        assertNull(session.write("width", WIDTH, "13 ft"));
        assertEquals("width", session.undoable().get());
        session.undo();
        assertEquals("sections", session.undoable().get());
        assertEquals(6, session.file().plan().work().interval(), 1e-9);
        session.undo();
        assertSame(first, session.file());
    }

    @Test
    void undoInADragTakesTheDragBack() {
        Session.Gesture drag = session.begin("sections");
        assertNull(drag.to(interval(6)));
        session.undo();
        assertSame(first, session.file());
        assertEquals("sections", session.redoable().get());
    }

    @Test
    void aProposalIsTakenInOneStepOrLeft() {
        assertNull(session.look("wider apart", interval(8)));
        assertSame(first, session.file(), "looking changes nothing");
        Ghost seen = session.ghost().get();
        assertNotNull(seen);
        assertEquals(8, seen.file().plan().work().interval(), 1e-9);
        session.leave();
        assertNull(session.ghost().get());
        session.take();
        assertSame(first, session.file(), "nothing was looked at");
        assertNull(session.look("wider apart", interval(8)));
        session.take();
        assertEquals(8, session.file().plan().work().interval(), 1e-9);
        assertEquals("wider apart", session.undoable().get());
        session.undo();
        assertSame(first, session.file());
        assertNotNull(session.look("backwards", interval(-8)));
        assertNull(session.ghost().get());
    }

    private Plan drafted() throws InterruptedException {
        until(() -> session.shown().get().drafted());
        Plan plan = session.plan();
        assertTrue(plan.grade().points().size() > 1, "a grade was laid");
        assertEquals(List.of(), session.file().plan().grade().points(), "and is not in the plan");
        return plan;
    }

    private static Plan raised(Plan plan) {
        List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
        GradePart.Point old = points.get(1);
        points.set(1, new GradePart.Point(old.station(), old.height() + 0.1, old.curve()));
        return plan.with(plan.grade().laid(points, List.of()));
    }

    @Test
    void anEditOfSomethingElseLeavesALaidGradeOutOfThePlan() throws Exception {
        drafted();
        assertNull(session.edit("sections", interval(7)));
        assertEquals(7, session.file().plan().work().interval(), 1e-9);
        drafted();
        Session.Gesture drag = session.begin("sections");
        assertNull(drag.to(interval(8)));
        drag.done();
        drafted();
        assertNull(session.look("wider apart", interval(9)));
        until(() -> session.ghost().get().draft() != null);
        session.take();
        assertEquals(9, session.file().plan().work().interval(), 1e-9);
        drafted();
        assertNull(session.edit("nothing", plan -> plan));
        assertEquals("wider apart", session.undoable().get());
    }

    @Test
    void anEditOfAGradePointWritesTheLaidGradeIntoThePlan() throws Exception {
        Plan seen = drafted();
        int points = seen.grade().points().size();
        double height = seen.grade().points().get(1).height();
        assertNull(session.edit("a point between grades", SessionTest::raised));
        List<GradePart.Point> own = session.file().plan().grade().points();
        assertEquals(points, own.size());
        assertEquals(height + 0.1, own.get(1).height(), 0.002);
        session.undo();
        assertEquals(List.of(), session.file().plan().grade().points());
        // The draft of the edit may still stand, or be gone: a drag begins from what is seen.
        Session.Gesture drag = session.begin("a point between grades");
        assertNull(drag.to(SessionTest::raised));
        drag.done();
        assertEquals(points, session.file().plan().grade().points().size());
        assertNull(session.edit("sections", interval(7)));
        assertEquals(points, session.file().plan().grade().points().size(), "its own now");
    }

    @Test
    void aLaidGradeIsKeptOrAgreedOnWhenItsOwnerSaysSo() throws Exception {
        List<GradePart.Point> laid = drafted().grade().points();
        session.keepGrade();
        assertEquals(laid.size(), session.file().plan().grade().points().size());
        assertEquals("the laid grade kept", session.undoable().get());
        session.keepGrade();
        assertNull(session.edit("a point between grades", SessionTest::raised));
        assertNull(
                session.look(
                        "a new grade", plan -> plan.with(plan.grade().laid(List.of(), List.of()))));
        until(() -> session.ghost().get().draft() != null);
        session.take();
        assertEquals(laid.size(), session.file().plan().grade().points().size());
        assertEquals(
                laid.get(1).height(),
                session.file().plan().grade().points().get(1).height(),
                0.002,
                "what was looked at");
        session.undo();
        session.undo();
        session.undo();
        assertSame(first, session.file());
    }

    @Test
    void anEditLeavesAProposalThatKnowsNothingOfIt() {
        assertNull(session.look("wider apart", interval(8)));
        assertNull(session.write("width", WIDTH, "13 ft"));
        assertNull(session.ghost().get());
        session.take();
        assertEquals("13 ft", session.file().said(WIDTH));
    }

    @Test
    void theLastOfManyEditsIsTheOneThatIsAnswered() throws Exception {
        List<Long> drafted = new ArrayList<>();
        session.shown()
                .addListener(
                        (seen, was, now) -> {
                            if (now.draft() != null) {
                                assertTrue(now.draftEdit() <= now.edit());
                                drafted.add(now.draftEdit());
                            }
                        });
        for (int i = 0; i < 30; i++) {
            assertNull(session.edit("sections", interval(10 + i)));
        }
        until(() -> session.shown().get().settled());
        Shown shown = session.shown().get();
        assertEquals(30, shown.edit());
        assertEquals(39, shown.draft().plan().work().interval(), 1e-9);
        assertEquals(39, shown.outcome().plan().work().interval(), 1e-9);
        assertEquals("", shown.doing());
        List<Long> sorted = new ArrayList<>(drafted);
        sorted.sort(null);
        assertEquals(sorted, drafted, "never back to an older answer");
    }

    @Test
    void aDragBackToWhereItBeganIsWorkedOutToItsEnd() throws Exception {
        until(() -> session.shown().get().settled());
        for (boolean given : new boolean[] {false, true}) {
            Session.Gesture drag = session.begin("sections");
            assertNull(drag.to(interval(9)));
            long away = session.shown().get().edit();
            until(() -> session.shown().get().draftEdit() >= away);
            assertNull(drag.to(interval(first.plan().work().interval())));
            if (given) {
                drag.cancel();
            } else {
                drag.done();
            }
            until(() -> session.shown().get().settled());
            assertEquals(first.plan(), session.file().plan());
            assertEquals("", session.undoable().get(), "nothing to take back");
        }
    }
}
