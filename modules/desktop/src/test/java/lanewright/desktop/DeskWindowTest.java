package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.drainage.culvert.Inlet;
import lanewright.measure.Finding.Topic;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.WaterPart;
import org.junit.jupiter.api.Test;

/** Both samples in the window: every question opened, and looked at. */
class DeskWindowTest {

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    private static Session session(String sample) throws Exception {
        Path plan = SAMPLES.resolve(sample).resolve("plan.json");
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(plan));
        return Hand.on(() -> new Session(file, plan.getParent(), Platform::runLater));
    }

    private static Hand hand() {
        return Hand.open(
                () -> {
                    Type.ready();
                    return new javafx.scene.layout.StackPane();
                },
                1440,
                900);
    }

    /** Shows a plan and waits until it is worked out. */
    private static DeskWindow show(Hand hand, Session session) {
        DeskWindow window =
                Hand.on(
                        () -> {
                            DeskWindow made = new DeskWindow(session);
                            hand.show(made.root());
                            return made;
                        });
        hand.until("the whole outcome", () -> session.shown().get().settled());
        Hand.pause(700);
        return window;
    }

    private static void close(DeskWindow window) {
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    private static void walk(String sample) throws Exception {
        Hand hand = hand();
        Session session = session(sample);
        DeskWindow window = show(hand, session);
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
        close(window);
    }

    @Test
    void aPipeIsTakenOnTheCardAndTakenOutAgainByItsButton() throws Exception {
        Hand hand = hand();
        Session session = session("marrow-fold");
        DeskWindow window = show(hand, session);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
        hand.click("see-water");
        hand.until(
                "the proposal",
                () -> session.ghost().get() != null && session.ghost().get().outcome() != null);
        hand.look("pipe-seen");
        hand.click("take");
        hand.until(
                "the pipe",
                () ->
                        session.plan().water().pipes().size() == 1
                                && session.shown().get().settled());
        Hand.pause(700);
        hand.look("pipe-taken");
        hand.click("pipe-out-0");
        hand.until("no pipe", () -> session.plan().water().pipes().isEmpty());
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertEquals(1, session.plan().water().pipes().size());
        close(window);
    }

    @Test
    void moreRainAsksForAWiderPipe() throws Exception {
        Hand hand = hand();
        Session session = session("marrow-fold");
        DeskWindow window = show(hand, session);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
        double before = widest(session);
        hand.write("field-water.rain.day", "9");
        assertEquals(9 * 0.0254, session.plan().water().rain().day(), 1e-12);
        hand.write("field-water.rain.years", "100");
        hand.choose("field-water.rain.soil", "d");
        hand.until(
                "the storm",
                () ->
                        session.shown().get().settled()
                                && session.plan().water().rain().soil() == WaterPart.SoilGroup.D);
        assertTrue(widest(session) > before, before + " and " + widest(session));
        // Where the least is no single round pipe, the offer must not say that it is enough.
        String offer = offered(hand);
        boolean round =
                session.shown().get().outcome().storm().sized().get(0).choices().stream()
                        .allMatch(
                                choice ->
                                        choice.chosen()
                                                .map(
                                                        each ->
                                                                each.barrels() == 1
                                                                        && each.size().shape()
                                                                                == Inlet.Shape
                                                                                        .ROUND)
                                                .orElse(false));
        assertEquals(round, offer.contains("which carries the storm"), offer);
        hand.write("field-water.rain.day", "no");
        hand.look("rain");
        assertEquals(9 * 0.0254, session.plan().water().rain().day(), 1e-12);
        close(window);
    }

    /** What the proposal of water says, all its words. */
    private static String offered(Hand hand) throws Exception {
        Hand.pause(300);
        return Hand.on(
                () -> {
                    var words = new StringBuilder();
                    for (var each : hand.see("see-water").getParent().lookupAll(".label")) {
                        words.append(((javafx.scene.control.Label) each).getText()).append(' ');
                    }
                    return words.toString();
                });
    }

    /** Span of the least pipe, or infinity where none does. */
    private static double widest(Session session) {
        return session.shown().get().outcome().storm().sized().get(0).choices().stream()
                .mapToDouble(
                        choice ->
                                choice.chosen()
                                        .map(each -> each.size().barrel().inside().span())
                                        .orElse(Double.POSITIVE_INFINITY))
                .max()
                .orElseThrow();
    }

    @Test
    void aBareNumberIsTakenInTheUnitOfItsField() throws Exception {
        Hand hand = hand();
        Session session = session("marrow-fold");
        DeskWindow window = show(hand, session);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT3);
        hand.write("field-grade.steepest", "10");
        assertEquals(0.10, session.plan().grade().steepest(), 1e-12);
        hand.until(
                "the unit in the field",
                () -> ((TextField) hand.see("field-grade.steepest")).getText().equals("10 %"));
        hand.click("key");
        hand.look("key-and-words");
        hand.click("key");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        hand.write("field-shapes[0].layers[1].thickness", "5");
        hand.until("the thinner base", () -> session.shown().get().settled());
        hand.until(
                "the answer of before",
                () -> ((Label) hand.see("question-stone").lookup(".before")).isVisible());
        hand.look("changed-answer");
        hand.write("field-stone.payload", "dozen");
        hand.look("value-refused");
        assertEquals("18 tons", session.file().said("stone.payload"));
        close(window);
    }

    @Test
    void aTriangleOnTheLandOpensItsText() throws Exception {
        Hand hand = hand();
        Session session = session("marrow-fold");
        DeskWindow window = show(hand, session);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        Node land = hand.see("land");
        double[] sign =
                hand.handOver(
                        land,
                        colour ->
                                colour.getRed() > 0.75
                                        && colour.getGreen() > 0.3
                                        && colour.getGreen() < 0.65
                                        && colour.getBlue() < 0.45);
        hand.clickAt(land, sign[0], sign[1]);
        hand.until(
                "its text",
                () ->
                        window.root().lookupAll(".evidence").stream()
                                .flatMap(text -> text.getPseudoClassStates().stream())
                                .anyMatch(of -> of.getPseudoClassName().equals("pointed")));
        hand.look("triangle-opened");
        close(window);
    }

    @Test
    void aTapeIsPulledByTwoClicksOrByADragAndBothReadTheSame() throws Exception {
        Hand hand = hand();
        Session session = session("marrow-fold");
        DeskWindow window = show(hand, session);
        Node land = hand.see("land");
        hand.click("tape");
        hand.drag(land, 300, 200, 500, 260, 6);
        String dragged = ((Label) hand.see("readout")).getText();
        hand.clickAt(land, 300, 200);
        hand.clickAt(land, 500, 260);
        assertEquals(dragged, ((Label) hand.see("readout")).getText());
        assertTrue(dragged.matches("[\\d.,]+ ft"), dragged);
        hand.look("tape");
        close(window);
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
