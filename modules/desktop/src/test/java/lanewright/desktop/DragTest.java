package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Run;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** While something is dragged, every answer changes, and each is the one a full run gives. */
class DragTest {

    private static final Path PLAN =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");

    private record Seen(PlanFile file, Draft draft) {}

    private PlanFile file;
    private Session session;
    private DeskWindow window;
    private Hand hand;

    @BeforeEach
    void open() throws Exception {
        Hand.ready();
        file = PlanFile.read("plan.json", Files.readAllBytes(PLAN));
        session = Hand.on(() -> new Session(file, PLAN.getParent(), Platform::runLater));
        window =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new DeskWindow(session);
                        });
        hand = Hand.open(window::root, 1440, 900);
        hand.until("the whole outcome", () -> session.shown().get().settled());
    }

    @AfterEach
    void close() {
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    @Test
    void draggingAPointBetweenGradesAnswersAllTheWay() throws Exception {
        hand.open("question-grade");
        Hand.pause(300);
        Node unrolled = hand.see("unrolled");
        double[] at = Hand.on(() -> handle(session, unrolled));
        Map<Long, PlanFile> files = new LinkedHashMap<>();
        List<Seen> seen = new ArrayList<>();
        Hand.on(
                () -> {
                    session.shown()
                            .addListener(
                                    (on, was, now) -> {
                                        files.put(now.edit(), now.file());
                                        Draft draft = now.draft();
                                        PlanFile of = files.get(now.draftEdit());
                                        if (draft != null
                                                && now.draftEdit() != was.draftEdit()
                                                && of != null) {
                                            seen.add(new Seen(of, draft));
                                        }
                                    });
                    return null;
                });
        hand.moveTo(unrolled, at[0], at[1]);
        hand.robot().press(MouseButton.PRIMARY);
        for (int i = 1; i <= 40; i++) {
            hand.moveTo(unrolled, at[0], at[1] - i);
            Hand.pause(60);
        }
        List<Seen> during = Hand.on(() -> List.copyOf(seen));
        hand.robot().release(MouseButton.PRIMARY);
        hand.until("the whole outcome", () -> session.shown().get().settled());
        hand.look("dragged");

        long distinct = during.stream().map(each -> cut(each.draft())).distinct().count();
        assertTrue(distinct >= 10, distinct + " distinct outcomes between press and release");
        // Each anew, but for the survey and the ground, which no drag touches.
        Run land = new Run(PLAN.getParent());
        land.draft(file, Progress.NONE);
        for (Seen each : during) {
            Draft fresh = land.beside().draft(each.file(), Progress.NONE);
            assertEquals(cut(fresh), cut(each.draft()));
            assertEquals(fresh.earth().balance(), each.draft().earth().balance());
            assertEquals(fresh.stone().needed(), each.draft().stone().needed());
            assertEquals(fresh.sections().sections(), each.draft().sections().sections());
        }

        Shown after = Hand.on(() -> session.shown().get());
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        hand.until("the plan before", () -> session.shown().get().settled());
        assertEquals(file.text(), Hand.on(() -> session.file().text()));
        assertNotEquals(file.text(), after.file().text());
        hand.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        assertEquals(after.file().text(), Hand.on(() -> session.file().text()));
    }

    @Test
    void aHandThatRestsSeesTheGradeLaidAnew() throws Exception {
        hand.open("question-line");
        Node land = hand.see("land");
        double[] at =
                Hand.on(
                        () -> {
                            var corner =
                                    session.shown()
                                            .get()
                                            .draft()
                                            .design()
                                            .alignment()
                                            .points()
                                            .get(1);
                            return window.land().place(corner.x(), corner.y());
                        });
        hand.moveTo(land, at[0], at[1]);
        hand.robot().press(MouseButton.PRIMARY);
        for (int i = 1; i <= 12; i++) {
            hand.moveTo(land, at[0], at[1] - 2 * i);
        }
        hand.until(
                "a grade of its own",
                () -> {
                    Shown now = session.shown().get();
                    return now.edit() > 0
                            && now.drafted()
                            && !now.draft().laidBefore()
                            && !now.stale(Finding.Topic.EARTH);
                });
        Shown held = Hand.on(() -> session.shown().get());
        assertTrue(Hand.on(session::isMoving), "the hand still holds it");
        Draft fresh = new Run(PLAN.getParent()).draft(held.file(), Progress.NONE);
        assertEquals(cut(fresh), cut(held.draft()));
        assertEquals(fresh.earth().balance(), held.draft().earth().balance());
        hand.robot().release(MouseButton.PRIMARY);
        hand.until("the whole outcome", () -> session.shown().get().settled());
        assertEquals(cut(fresh), cut(Hand.on(() -> session.shown().get().draft())));
    }

    private static long cut(Draft draft) {
        return Double.doubleToRawLongBits(draft.volumes().cut().corrected());
    }

    /** Where the diamond of the third point between grades stands on the board. */
    private static double[] handle(Session session, Node board) {
        var profile = session.shown().get().draft().design().profile();
        var point = profile.points().get(3);
        double width = board.getBoundsInLocal().getWidth();
        double height = board.getBoundsInLocal().getHeight();
        return lanewright.desktop.lane.Handles.place(session, width, height, point);
    }
}
