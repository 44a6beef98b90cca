package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Theme;
import lanewright.desktop.look.Type;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In the evening all is dark: the start, the plan, the comparison and what lies round a sheet. */
class DarkTest {

    private static final Path SAMPLE = Path.of("..", "..", "sample-surveys", "marrow-fold");

    @TempDir Path folder;

    @Test
    void everyPartOfTheWindowTakesTheColours() throws Exception {
        Path plan = folder.resolve("lane").resolve("plan.json");
        Files.createDirectories(folder.resolve("lane"));
        try (var files = Files.list(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve("lane").resolve(file.getFileName()));
            }
        }
        Hand.ready();
        Desk desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new Desk(
                                    new StartTest.Answers(), new Home(folder.resolve("home")));
                        });
        Hand hand = Hand.open(desk::root, 1440, 900);
        Hand.on(
                () -> {
                    desk.openPlan(plan);
                    return null;
                });
        Button dark = (Button) hand.see("dark");
        assertEquals("Dark", dark.getText());
        hand.click("dark");
        assertEquals("Light", dark.getText());
        hand.click("key");
        hand.look("dark-key");
        hand.click("key");
        hand.click("keep-copy");
        hand.click("compare");
        ComboBox<?> choice = (ComboBox<?>) hand.see("compare-with");
        String name = String.valueOf(choice.getItems().get(0));
        assertTrue(name.matches("copy 1, [0-2][0-9]:[0-5][0-9]"), name);
        hand.until("the table", () -> hand.has("compare-table"));
        isDark(hand, "dark-compare");
        hand.click("back");
        hand.click("sheets");
        hand.until("the sheets", () -> !hand.see("save-folder").isDisabled());
        Hand.pause(2500);
        isDark(hand, "dark-sheets");
        hand.click("back");
        hand.click("another");
        isDark(hand, "dark-start");
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }

    /** Whether three places near the rim of the window are darker than half way. */
    private static void isDark(Hand hand, String name) {
        hand.look(name);
        for (double[] at : new double[][] {{8, 450}, {1432, 450}, {720, 890}}) {
            double bright = hand.brightness(at[0], at[1]);
            assertTrue(bright < 0.4, name + " is " + bright + " at " + at[0] + ", " + at[1]);
        }
        assertTrue(Theme.DARK.colour(0xFFFFFF).getBrightness() < 0.4);
    }
}
