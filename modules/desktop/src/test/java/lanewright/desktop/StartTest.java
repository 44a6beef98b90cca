package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the start to a plan: by pointer and keys only. */
class StartTest {

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    @TempDir Path folder;

    /** Answers for the owner. */
    static final class Answers implements Chooser {
        List<Path> surveys = List.of();
        @Nullable Path plan;
        @Nullable Path keep;
        @Nullable Path sheets;

        @Override
        public List<Path> surveys() {
            return surveys;
        }

        @Override
        public @Nullable Path plan() {
            return plan;
        }

        @Override
        public @Nullable Path keepPlan(@Nullable Path in, String name) {
            return keep;
        }

        @Override
        public @Nullable Path sheets(@Nullable Path in, String name) {
            return sheets;
        }
    }

    private static String said(Hand hand, String id) {
        Node node = hand.see(id);
        return Hand.on(() -> ((Label) node).getText());
    }

    @Test
    void stoneIsAnsweredAsOneTypes() throws Exception {
        Hand.ready();
        Desk desk = Hand.on(() -> desk(new Answers()));
        Hand hand = Hand.open(desk::root, 1440, 900);
        Hand.on(
                () -> {
                    desk.start();
                    return null;
                });
        hand.look("start");
        String before = said(hand, "stone-answer");
        hand.write("stone-length", "1200 ft");
        String after = said(hand, "stone-answer");
        assertTrue(!before.equals(after), before + " / " + after);
        hand.write("stone-price", "30 per ton");
        assertTrue(said(hand, "stone-answer").contains("delivered"));
        hand.look("start-stone");
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }

    private Desk desk(Chooser chooser) {
        Type.ready();
        return new Desk(chooser, new Home(folder.resolve("home")));
    }

    @Test
    void surveyFilesBecomeAPlanAndSheets() throws Exception {
        Path survey = folder.resolve("survey");
        Files.createDirectories(survey);
        for (String file : List.of("points.csv", "probes.csv")) {
            Files.copy(SAMPLES.resolve("marrow-fold").resolve(file), survey.resolve(file));
        }
        Answers answers = new Answers();
        answers.surveys = List.of(survey.resolve("points.csv"), survey.resolve("probes.csv"));
        Hand.ready();
        Desk desk = Hand.on(() -> desk(answers));
        Hand hand = Hand.open(desk::root, 1440, 900);
        Hand.on(
                () -> {
                    desk.start();
                    return null;
                });
        hand.click("open-surveys");
        Hand.pause(1500);
        hand.look("survey-asked");
        hand.choose("unit-points.csv", "ft");
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        Hand.pause(600);
        hand.look("survey-understood");
        hand.click("draw-lane");
        Node land = hand.see("land");
        double w = Hand.on(() -> land.getBoundsInLocal().getWidth());
        double h = Hand.on(() -> land.getBoundsInLocal().getHeight());
        hand.clickAt(land, w * 0.10, h * 0.55);
        hand.clickAt(land, w * 0.5, h * 0.5);
        hand.clickAt(land, w * 0.9, h * 0.5);
        hand.keys(javafx.scene.input.KeyCode.ENTER);
        hand.until("a plan", () -> desk.title().get().contains("My lane"));
        hand.look("first-lane-begins");
        hand.until(
                "an answer",
                () ->
                        ((Label) hand.see("question-stone").lookup(".answer"))
                                .getText()
                                .contains("loads"));
        hand.until("the window at rest", () -> !hand.bar());
        hand.look("first-lane");
        answers.sheets = folder.resolve("out");
        hand.click("sheets");
        hand.until("sheets", () -> !hand.see("save-folder").isDisabled());
        hand.until(
                "the sheets laid out",
                () -> ((Label) hand.see("sheets-say")).getText().endsWith("sheets"));
        hand.click("pages");
        hand.keys(javafx.scene.input.KeyCode.HOME);
        hand.look("sheets-cover");
        hand.keys(javafx.scene.input.KeyCode.DOWN);
        hand.keys(javafx.scene.input.KeyCode.DOWN);
        hand.look("sheets");
        hand.click("save-folder");
        hand.until("the folder", () -> Files.isRegularFile(folder.resolve("out/sheets.pdf")));
        hand.until(
                "the folder is told",
                () -> ((Label) hand.see("sheets-say")).getText().contains("lies in"));
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            assertTrue(files.count() > 3);
        }
        hand.click("back");
        hand.click("keep");
        hand.until("the plan's file", () -> Files.isRegularFile(survey.resolve("plan.json")));
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }
}
