package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.measure.Finding.Topic;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.Test;

/** Both samples in the window: every question opened, and looked at. */
class DeskWindowTest {

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    private static Session session(String sample) throws Exception {
        Path plan = SAMPLES.resolve(sample).resolve("plan.json");
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(plan));
        return Hand.on(() -> new Session(file, plan.getParent(), Platform::runLater));
    }

    private static void walk(String sample) throws Exception {
        Hand hand =
                Hand.open(
                        () -> {
                            Type.ready();
                            return new javafx.scene.layout.StackPane();
                        },
                        1440,
                        900);
        Session session = session(sample);
        DeskWindow window =
                Hand.on(
                        () -> {
                            DeskWindow made = new DeskWindow(session);
                            hand.show(made.root());
                            return made;
                        });
        hand.until("the whole outcome", () -> session.shown().get().settled());
        Hand.pause(700);
        hand.click("land");
        int digit = 0;
        for (Topic topic : Topic.values()) {
            String name = topic.name().toLowerCase(Locale.ROOT);
            hand.keys(KeyCode.CONTROL, KeyCode.valueOf("DIGIT" + (++digit)));
            assertEquals(topic, session.open().get());
            Hand.pause(250);
            hand.look(sample + "-" + name);
        }
        assertTrue(session.shown().get().settled());
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    /** Presses a button that may lie out of sight. */
    private static void press(Hand hand, String button) {
        Hand.on(
                () -> {
                    ((javafx.scene.control.Button) hand.see(button)).fire();
                    return null;
                });
    }

    @Test
    void aPipeIsTakenOnTheCardAndTakenOutAgainByItsButton() throws Exception {
        Hand hand =
                Hand.open(
                        () -> {
                            Type.ready();
                            return new javafx.scene.layout.StackPane();
                        },
                        1440,
                        900);
        Session session = session("marrow-fold");
        DeskWindow window =
                Hand.on(
                        () -> {
                            DeskWindow made = new DeskWindow(session);
                            hand.show(made.root());
                            session.open().set(Topic.WATER);
                            return made;
                        });
        hand.until("the whole outcome", () -> session.shown().get().settled());
        Hand.pause(700);
        press(hand, "see-water");
        hand.until(
                "the proposal",
                () -> session.ghost().get() != null && session.ghost().get().outcome() != null);
        Hand.pause(300);
        press(hand, "take");
        hand.until(
                "the pipe",
                () ->
                        session.plan().water().pipes().size() == 1
                                && session.shown().get().settled());
        Hand.pause(700);
        hand.look("pipe-taken");
        press(hand, "pipe-out-0");
        hand.until("no pipe", () -> session.plan().water().pipes().isEmpty());
        Hand.on(
                () -> {
                    session.undo();
                    return null;
                });
        assertEquals(1, session.plan().water().pipes().size());
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    @Test
    void everyQuestionOfTheFirstSampleOpens() throws Exception {
        walk("marrow-fold");
    }

    @Test
    void everyQuestionOfTheSecondSampleOpens() throws Exception {
        walk("wickle-bank");
    }
}
