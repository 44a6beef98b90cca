package lanewright.sheets.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import lanewright.measure.Progress;
import lanewright.sheets.folder.PlanFolder.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanFolderTest {

    @TempDir Path place;

    private Path target() {
        return place.resolve("plan");
    }

    private static List<String> below(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void whatIsWrittenIsThereAndNothingElse() throws IOException {
        PlanFolder.write(
                target(),
                List.of(Entry.text("a.txt", "first"), Entry.text("maps/b.txt", "second")),
                Progress.NONE);
        assertEquals(List.of("plan/a.txt", "plan/contents.txt", "plan/maps/b.txt"), below(place));
        assertEquals("second", Files.readString(target().resolve("maps/b.txt")));
    }

    @Test
    void aSecondPlanReplacesTheFirstWhole() throws IOException {
        PlanFolder.write(target(), List.of(Entry.text("old.txt", "1")), Progress.NONE);
        PlanFolder.write(target(), List.of(Entry.text("new.txt", "2")), Progress.NONE);
        assertEquals(List.of("plan/contents.txt", "plan/new.txt"), below(place));
    }

    @Test
    void aFailureHalfwayLeavesTheOldPlanAsItWas() throws IOException {
        PlanFolder.write(target(), List.of(Entry.text("a.txt", "old")), Progress.NONE);
        var breaks =
                new Entry(
                        "b.txt",
                        out -> {
                            out.write(1);
                            throw new IOException("disk full");
                        });
        assertThrows(
                IOException.class,
                () ->
                        PlanFolder.write(
                                target(),
                                List.of(Entry.text("a.txt", "new"), breaks),
                                Progress.NONE));
        assertEquals(List.of("plan/a.txt", "plan/contents.txt"), below(place));
        assertEquals("old", Files.readString(target().resolve("a.txt")));
    }

    @Test
    void cancellingLeavesTheOldPlanAsItWas() throws IOException {
        PlanFolder.write(target(), List.of(Entry.text("a.txt", "old")), Progress.NONE);
        Progress tired =
                new Progress() {
                    private int asked;

                    @Override
                    public void report(double done, String doing) {}

                    @Override
                    public boolean isCancelled() {
                        return ++asked > 2;
                    }
                };
        assertThrows(
                CancellationException.class,
                () ->
                        PlanFolder.write(
                                target(),
                                List.of(
                                        Entry.text("a.txt", "new"),
                                        Entry.text("b.txt", "new"),
                                        Entry.text("c.txt", "new")),
                                tired));
        assertEquals(List.of("plan/a.txt", "plan/contents.txt"), below(place));
        assertEquals("old", Files.readString(target().resolve("a.txt")));
    }

    @Test
    void theOwnersOwnFilesAreNeverLost() throws IOException {
        PlanFolder.write(target(), List.of(Entry.text("a.txt", "old")), Progress.NONE);
        Files.writeString(target().resolve("notes.txt"), "mine");
        var refused =
                assertThrows(
                        FileAlreadyExistsException.class,
                        () ->
                                PlanFolder.write(
                                        target(),
                                        List.of(Entry.text("a.txt", "new")),
                                        Progress.NONE));
        assertTrue(refused.getMessage().contains("notes.txt"), refused.getMessage());
        assertEquals("mine", Files.readString(target().resolve("notes.txt")));
        assertEquals("old", Files.readString(target().resolve("a.txt")));
    }

    @Test
    void namesThatLeadOutOfTheFolderAreRefused() {
        for (String name : List.of("../a", "/a", "", "a/../b", "./a")) {
            assertThrows(
                    IllegalArgumentException.class, () -> Entry.text(name, "x"), "name: " + name);
        }
    }
}
