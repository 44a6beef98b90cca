package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lanewright.measure.Progress;
import lanewright.sheets.folder.PlanFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C leaves everything as it was. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "an interrupt is sent by kill")
class InterruptTest {

    private static final Path SAMPLE =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json")
                    .toAbsolutePath()
                    .normalize();

    /** Long enough for any machine, s. */
    private static final long LONGEST = 240;

    @TempDir Path folder;
    @TempDir Path beside;

    private Path made;

    @BeforeEach
    void aFolderFromBefore() throws IOException {
        made = folder.resolve("made");
        PlanFolder.write(
                made, List.of(PlanFolder.Entry.text("outcome.json", "from before")), Progress.NONE);
    }

    @Test
    void inTheMiddleOfTheWorkItEndsAndLeavesTheOldFolderWhole() throws Exception {
        LargeSurvey.write(folder, 1250, 320);
        Path classes = beside.resolve("classes.txt");
        Process process =
                child(List.of("-Xlog:class+load:file=" + classes), folder.resolve("plan.json"));
        // By now all is read, and four hundred thousand points are on their way to be joined.
        until(
                process,
                () ->
                        Files.exists(classes)
                                && Files.readString(classes, StandardCharsets.UTF_8)
                                        .contains("lanewright.ground.Delaunay"));
        assertEquals(interrupt(process), exit(process));
        assertEquals("from before", Files.readString(made.resolve("outcome.json")));
        assertEquals(List.of("contents.txt", "outcome.json"), names(made));
        assertEquals(List.of("made", "plan.json", "points.csv"), names(folder));
        assertEquals(List.of(), names(beside.resolve("temporary")));
    }

    /** The signal may come when the new folder is just done: then it must be whole instead. */
    @Test
    void whileFilesAreWrittenItLeavesTheOldFolderOrTheNewOneButNoPart() throws Exception {
        Process process = child(List.of(), SAMPLE);
        until(process, () -> Files.exists(folder.resolve(".made-new-0")));
        int interrupted = interrupt(process);
        int exit = exit(process);
        assertTrue(exit == interrupted || exit == 0, "ended with " + exit);
        if (Files.readString(made.resolve("outcome.json")).equals("from before")) {
            assertEquals(List.of("contents.txt", "outcome.json"), names(made));
            assertEquals(interrupted, exit);
        } else {
            for (String name : Files.readAllLines(made.resolve("contents.txt"))) {
                assertTrue(Files.size(made.resolve(name)) > 0, name);
            }
            assertTrue(Files.exists(made.resolve("maps/stakes.geojson")));
        }
        assertEquals(List.of("made"), names(folder));
    }

    private Process child(List<String> options, Path plan) throws IOException {
        Path temporary = Files.createDirectory(beside.resolve("temporary"));
        return Child.command(
                        Stream.concat(
                                        options.stream(),
                                        Stream.of("-Xmx700m", "-Djava.io.tmpdir=" + temporary))
                                .toList(),
                        "make",
                        plan.toString(),
                        "--into",
                        made.toString())
                .start(beside.resolve("said.txt"));
    }

    private void until(Process process, Callable<Boolean> arrived) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST);
        while (!arrived.call()) {
            assertTrue(process.isAlive(), Files.readString(beside.resolve("said.txt")));
            assertTrue(System.nanoTime() < end, "it never came so far");
            Thread.sleep(5);
        }
    }

    /**
     * Sends what Ctrl-C sends, and gives the exit code that it must lead to: 130, as the help says.
     * Where the tests themselves run in the background of a shell, they and all that they start are
     * deaf to it; then a request to terminate is sent, whose code is 143 by the same custom.
     */
    private static int interrupt(Process process) throws IOException, InterruptedException {
        boolean deaf = false;
        Path status = Path.of("/proc/self/status");
        if (Files.exists(status)) {
            Matcher ignored =
                    Pattern.compile("SigIgn:\\s*([0-9a-f]+)").matcher(Files.readString(status));
            deaf = ignored.find() && (Long.parseUnsignedLong(ignored.group(1), 16) & 2) != 0;
        }
        String signal = deaf ? "-TERM" : "-INT";
        new ProcessBuilder("kill", signal, Long.toString(process.pid())).start().waitFor();
        return deaf ? 143 : Exit.CANCELLED.code();
    }

    private static int exit(Process process) throws InterruptedException {
        if (!process.waitFor(LONGEST, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
        return process.exitValue();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
