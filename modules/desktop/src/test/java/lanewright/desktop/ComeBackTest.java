package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan is left and opened again, by pointer and keys: its edits, its undo and its copies. */
class ComeBackTest {

    private static final Path SAMPLE = Path.of("..", "..", "sample-surveys", "marrow-fold");
    private static final String IN_HAND = "field-stone.materials[1].inHand";

    @TempDir Path folder;

    private final StartTest.Answers answers = new StartTest.Answers();
    private Hand hand;
    private Desk desk;

    /** Starts the program and opens the plan by keys. */
    private void start() {
        desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            Desk made = new Desk(answers, new Home(folder.resolve("home")));
                            made.start();
                            return made;
                        });
        hand = Hand.open(() -> new javafx.scene.layout.StackPane(desk.root()), 1440, 900);
        hand.keys(KeyCode.CONTROL, KeyCode.O);
        hand.until("the plan", () -> hand.has("undo"));
        hand.until("the window at rest", () -> !hand.bar());
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        Hand.pause(200);
    }

    private void end() {
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }

    private String inHand() {
        return Hand.on(() -> ((TextField) hand.see(IN_HAND)).getText());
    }

    private boolean canUndo() {
        return Hand.on(() -> !((Button) hand.see("undo")).isDisabled());
    }

    private List<String> words(String id) {
        Node part = hand.see(id);
        return Hand.on(
                () -> {
                    List<String> words = new ArrayList<>();
                    part.lookupAll(".label").forEach(each -> words.add(((Labeled) each).getText()));
                    return words;
                });
    }

    private Path plan() throws IOException {
        Path own = folder.resolve("lane");
        Files.createDirectories(own);
        try (var files = Files.list(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, own.resolve(file.getFileName()));
            }
        }
        return own.resolve("plan.json");
    }

    @Test
    void whatWasEditedIsBackAndCanStillBeUndone() throws Exception {
        Path plan = plan();
        answers.plan = plan;
        Hand.ready();
        start();
        assertEquals("200 tons", inHand());
        assertTrue(!canUndo());
        hand.click("keep-copy");
        hand.write(IN_HAND, "7 loads");
        hand.until("the loads", () -> inHand().equals("126 tons") && !hand.bar());
        hand.write("field-stone.payload", "17 tons");
        hand.until("the truck", () -> !hand.bar());
        hand.click("another");
        hand.look("left-with-edits");
        String note = ((Label) hand.see("trouble")).getText();
        assertTrue(note.contains("Marrow Fold lane") && note.contains("safe copy"), note);
        end();

        start();
        assertEquals("126 tons", inHand());
        assertEquals(
                "17 tons", Hand.on(() -> ((TextField) hand.see("field-stone.payload")).getText()));
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        hand.until("the truck of before", () -> !hand.bar());
        assertEquals(
                "18 tons", Hand.on(() -> ((TextField) hand.see("field-stone.payload")).getText()));
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("200 tons", inHand());
        assertTrue(!canUndo(), "nothing was edited before");
        hand.keys(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        assertEquals("126 tons", inHand());
        hand.until("the window at rest", () -> !hand.bar());
        stoneThatRunsOutElsewhereIsChangedOnly();
        end();

        String text = Files.readString(plan);
        Files.writeString(plan, text.replace("\"18 tons\"", "\"16 tons\""));
        start();
        String said = ((Label) hand.see("kept")).getText();
        assertTrue(said.contains("undo begins anew"), said);
        assertTrue(!canUndo(), "the plan was changed elsewhere");
        end();
    }

    @Test
    void aPlanThatWasNeverKeptComesBackWithItsUndo() throws Exception {
        Path plan = plan();
        answers.plan = plan;
        Hand.ready();
        start();
        hand.write(IN_HAND, "7 loads");
        hand.until("the loads", () -> inHand().equals("126 tons") && !hand.bar());
        end();
        // As if it had never been written: what is left is the safe copy.
        Files.delete(plan);
        desk =
                Hand.on(
                        () -> {
                            Desk made = new Desk(answers, new Home(folder.resolve("home")));
                            made.start();
                            return made;
                        });
        hand = Hand.open(() -> new javafx.scene.layout.StackPane(desk.root()), 1440, 900);
        hand.click("never-kept-0");
        hand.until("the plan", () -> hand.has("undo") && !hand.bar());
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        assertEquals("126 tons", inHand());
        assertTrue(canUndo());
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("200 tons", inHand());
        end();
    }

    private void stoneThatRunsOutElsewhereIsChangedOnly() {
        hand.click("compare");
        ComboBox<?> choice = (ComboBox<?>) hand.see("compare-with");
        String copy = String.valueOf(choice.getItems().get(choice.getItems().size() - 1));
        assertTrue(copy.matches("copy 1, [0-2][0-9]:[0-5][0-9]"), copy);
        hand.until("the table", () -> hand.has("compare-table"));
        hand.look("compare-in-hand");
        String changed = String.join("\n", words("compare-changed"));
        assertTrue(changed.contains("126 tons") && changed.contains("before: "), changed);
        String rest = words("compare-gone") + " " + words("compare-new");
        assertTrue(!rest.contains("stone in hand"), rest);
        String table = String.join("|", words("compare-table"));
        assertTrue(table.contains("In hand of base|200 tons|126 tons|-74 tons"), table);
        assertTrue(table.contains("|the same"), table);
        hand.click("back");
    }
}
