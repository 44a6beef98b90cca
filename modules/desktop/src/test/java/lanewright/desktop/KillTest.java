package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewright.desktop.Killing.Said;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The window is killed while somebody works in it, and opened again: by keys and pointer only. Each
 * edit writes its number as the width of the lane, in millimetres.
 */
class KillTest {

    private static final Path SAMPLE = Path.of("..", "..", "sample-surveys", "marrow-fold");
    private static final String WIDTH = "\"width\": \"12 ft\"";

    /** Twelve feet are less than this, so that every edit is a new width. */
    private static final int FIRST = 3700;

    @TempDir Path folder;

    @Test
    void aKillLosesNoKeptPlanAndAtMostTwoSecondsOfEdits() throws Exception {
        Path plan = folder.resolve("lane").resolve("plan.json");
        Files.createDirectories(plan.getParent());
        for (String file : List.of("plan.json", "points.csv", "probes.csv")) {
            Files.copy(SAMPLE.resolve(file), plan.resolveSibling(file));
        }
        String first = Files.readString(plan);
        Path home = folder.resolve("home");
        SplittableRandom random = new SplittableRandom(20260102);
        List<String> log = new ArrayList<>();
        int last = FIRST;
        int kept = FIRST;
        String before = first;
        for (int i = 0; i < Killing.times(); i++) {
            Said said =
                    Killing.kill(
                            KilledDesk.class,
                            headless(),
                            List.of(
                                    home.toString(),
                                    plan.toString(),
                                    Integer.toString(last),
                                    Long.toString(random.nextLong())),
                            300 + random.nextInt(5000));
            kept = said.last("kept", kept);
            int must = Math.max(kept, said.mustBeThere(last));

            String inFile = Files.readString(plan);
            int width = inFile.equals(before) ? kept : width(first, inFile);
            assertTrue(width >= kept, "kept " + kept + " and the file holds " + width);
            kept = Math.max(kept, width);
            before = inFile;

            int found = opened(plan, home);
            assertEquals(inFile, Files.readString(plan), "looking changes nothing");
            log.add(
                    "killed at edit "
                            + said.last("edit", last)
                            + ", "
                            + must
                            + " had to be there, "
                            + found
                            + " was");
            Files.write(Path.of("target", "kills.txt"), log);
            assertTrue(found >= must, String.join("\n", log));
            assertTrue(found <= said.last("typing", last), String.join("\n", log));
            last = found;
        }
    }

    /** The width that a plan holds which is the first one in everything else. */
    private static int width(String first, String inFile) {
        String digits = inFile.replaceFirst("(?s).*\"width\": \"(\\d+) mm\".*", "$1");
        assertTrue(digits.length() < 7, inFile);
        assertEquals(even(first.replace(WIDTH, "\"width\": \"" + digits + " mm\"")), even(inFile));
        return Integer.parseInt(digits);
    }

    /** Without blanks and line ends, which are made even when a plan is kept. */
    private static String even(String json) {
        return json.replaceAll("\\s+", "");
    }

    private static List<String> headless() {
        List<String> words = new ArrayList<>();
        words.add("-Xmx1g");
        for (String name :
                List.of(
                        "testfx.robot",
                        "testfx.headless",
                        "glass.platform",
                        "monocle.platform",
                        "prism.order",
                        "prism.text",
                        "headless.geometry",
                        "java.awt.headless",
                        "user.home",
                        "java.util.prefs.userRoot",
                        "EPSG-HSQL.directory")) {
            String value = System.getProperty(name);
            if (value != null) {
                words.add("-D" + name + "=" + value);
            }
        }
        return words;
    }

    /** Opens the plan again by keys and reads the width. */
    private static int opened(Path plan, Path home) {
        StartTest.Answers answers = new StartTest.Answers();
        answers.plan = plan;
        Hand.ready();
        Desk desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new Desk(answers, new Home(home));
                        });
        Hand hand = Hand.open(desk::root, 1000, 700);
        Hand.on(
                () -> {
                    desk.start();
                    return null;
                });
        hand.keys(KeyCode.CONTROL, KeyCode.O);
        hand.until("the plan", () -> desk.title().get().contains("lane"));
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT4);
        TextField field = (TextField) hand.see(KilledDesk.FIELD);
        String said = Hand.on(field::getText);
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
        List<String> words = Arrays.asList(said.split(" "));
        return words.equals(List.of("12", "ft")) ? FIRST : Integer.parseInt(words.get(0));
    }
}
