package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import lanewright.sheets.folder.PlanFolder;
import lanewright.sheets.set.PlanFiles;
import org.junit.jupiter.api.io.TempDir;

/**
 * The main job by pointer, keys and dropped files alone: from survey files to sheets in a folder,
 * which are those that the same plan comes to without a window, byte for byte. Each kind of survey
 * is a class of its own, so that two can be at work at once.
 */
abstract class FilesToSheets {

    static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    @TempDir Path folder;

    private final StartTest.Answers answers = new StartTest.Answers();

    /** Where the lane is clicked, as parts of the board's width and height. */
    record Clicks(List<Double> xy) {
        static Clicks at(Double... xy) {
            return new Clicks(List.of(xy));
        }
    }

    private Desk desk;
    Hand hand;

    void begin(Path from, List<String> files) throws IOException {
        begin(from, files, 1440, 900);
    }

    /** Drops files on a window of a size, px. */
    void begin(Path from, List<String> files, double width, double height) throws IOException {
        Path survey = folder.resolve("survey");
        Files.createDirectories(survey);
        for (String file : files) {
            Files.copy(from.resolve(file), survey.resolve(file));
        }
        Hand.ready();
        desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new Desk(answers, new Home(folder.resolve("home")));
                        });
        hand = Hand.open(desk::root, width, height);
        Hand.on(
                () -> {
                    desk.start();
                    desk.drop(files.stream().map(survey::resolve).toList());
                    return null;
                });
        Hand.pause(1500);
    }

    void ground(String sample) {
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        Hand.pause(600);
        hand.look(sample + "-survey-understood");
    }

    void draw(String sample, Clicks clicks) {
        hand.click("draw-lane");
        Node land = hand.see("land");
        double w = Hand.on(() -> land.getBoundsInLocal().getWidth());
        double h = Hand.on(() -> land.getBoundsInLocal().getHeight());
        for (int i = 0; i < clicks.xy().size(); i += 2) {
            hand.clickAt(land, w * clicks.xy().get(i), h * clicks.xy().get(i + 1));
        }
        hand.look(sample + "-lane-clicked");
        hand.keys(KeyCode.ENTER);
        hand.until("a plan", () -> desk.title().get().contains("My lane"));
        hand.until("an answer", () -> said("question-stone").contains("loads"));
        hand.until("the window at rest", () -> !hand.bar());
        hand.look(sample + "-first-lane");
    }

    private String said(String question) {
        return ((Label) hand.see(question).lookup(".answer")).getText();
    }

    /** Writes another width, and sees it answered. */
    void widen(String width, String told) {
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT4);
        hand.write("field-shapes[0].width", width);
        hand.until("the width", () -> said("question-shape").contains(told));
        hand.until("the window at rest", () -> !hand.bar());
    }

    void print(String sample) throws Exception {
        answers.sheets = folder.resolve("out");
        hand.click("sheets");
        hand.until("sheets", () -> !hand.see("save-folder").isDisabled());
        hand.until(
                "the sheets laid out",
                () -> ((Label) hand.see("sheets-say")).getText().endsWith("sheets"));
        hand.click("pages");
        hand.keys(KeyCode.HOME);
        hand.look(sample + "-sheets-cover");
        hand.keys(KeyCode.DOWN);
        hand.keys(KeyCode.DOWN);
        hand.look(sample + "-sheets");
        someSheets();
        hand.click("larger");
        hand.click("larger");
        Node page = hand.see("page");
        hand.drag(page, 500, 300, 640, 420, 4);
        hand.look(sample + "-sheets-larger");
        hand.click("whole-page");
        hand.click("save-folder");
        hand.until("the folder", () -> Files.isRegularFile(folder.resolve("out/sheets.pdf")));
        hand.until(
                "the folder is told",
                () -> ((Label) hand.see("sheets-say")).getText().contains("lies in"));
        hand.click("back");
        hand.click("keep");
        Path plan = folder.resolve("survey/plan.json");
        hand.until("the plan's file", () -> Files.isRegularFile(plan));
        hand.until("it is kept", () -> !desk.title().get().contains("not kept"));
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
        sameWithoutAWindow(plan);
    }

    /** The sheet that is seen and the one below it, in a file of their own. */
    private void someSheets() throws Exception {
        answers.pages = folder.resolve("two.pdf");
        hand.keys(KeyCode.SHIFT, KeyCode.DOWN);
        assertEquals("Save 2 sheets", ((Button) hand.see("save-pages")).getText());
        hand.click("save-pages");
        hand.until(
                "the file is told",
                () -> ((Label) hand.see("sheets-say")).getText().startsWith("Saved"));
        String pdf = Files.readString(answers.pages, StandardCharsets.ISO_8859_1);
        assertTrue(pdf.startsWith("%PDF-"));
        assertEquals(2, pdf.split("/Type */Page\\b", -1).length - 1, "pages");
    }

    private void sameWithoutAWindow(Path plan) throws Exception {
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(plan));
        Outcome outcome = new Run(plan.getParent()).outcome(file, Progress.NONE);
        Path other = folder.resolve("without");
        PlanFolder.write(other, PlanFiles.of(outcome), Progress.NONE);
        List<Path> files = files(other);
        assertEquals(files, files(folder.resolve("out")));
        assertTrue(files.contains(Path.of("outcome.json")), files.toString());
        for (Path each : files) {
            assertArrayEquals(
                    Files.readAllBytes(other.resolve(each)),
                    Files.readAllBytes(folder.resolve("out").resolve(each)),
                    each.toString());
        }
    }

    private static List<Path> files(Path in) throws IOException {
        try (Stream<Path> all = Files.walk(in)) {
            return all.filter(Files::isRegularFile).map(in::relativize).sorted().toList();
        }
    }
}
