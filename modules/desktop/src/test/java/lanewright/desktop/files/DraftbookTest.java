package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftbookTest {

    @TempDir Path folder;

    private final BlockingQueue<IOException> failed = new LinkedBlockingQueue<>();

    private Draftbook open() {
        return new Draftbook(new Home(folder.resolve("home")), failed::add);
    }

    private Path edits() {
        return folder.resolve("home").resolve("edits");
    }

    private List<Path> files() throws IOException {
        if (Files.notExists(edits())) {
            return List.of();
        }
        try (Stream<Path> each = Files.list(edits())) {
            return each.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @Test
    void theLastNoteOfEveryPlanIsFoundAtTheNextStart() throws IOException {
        Path one = folder.resolve("one.json");
        Path two = folder.resolve("strange ü\n#% name").resolve("two.json");
        try (Draftbook book = open()) {
            book.begin(one, "in file");
            book.begin(two, "");
            for (int i = 0; i < 50; i++) {
                book.note(one, "first " + i);
                book.note(two, "second\n\n" + i + "\r\n");
            }
        }
        try (Draftbook book = open()) {
            assertEquals(2, book.found().size());
            Draftbook.Copy copy = book.of(one);
            assertNotNull(copy);
            assertEquals(one, copy.plan());
            assertEquals("first 49", copy.text());
            assertTrue(copy.follows("in file"));
            assertFalse(copy.follows("first 49"));
            Draftbook.Copy other = book.of(two);
            assertNotNull(other);
            assertEquals(two, other.plan());
            assertEquals("second\n\n49\r\n", other.text());
            assertTrue(other.follows(""));
        }
    }

    @Test
    void editsThatWereTakenBackLeaveNoCopy() throws IOException {
        Path plan = folder.resolve("plan.json");
        try (Draftbook book = open()) {
            book.begin(plan, "in file");
            book.note(plan, "edited");
            book.flush();
            assertNotNull(book.of(plan));
            book.note(plan, "in file");
            book.flush();
            assertNull(book.of(plan));
        }
        assertEquals(List.of(), files());
    }

    @Test
    void aPlanThatIsKeptLiesInItsFileAndLeavesNoCopy() throws Exception {
        Path plan = folder.resolve("plan.json");
        BlockingQueue<String> told = new LinkedBlockingQueue<>();
        try (Draftbook book = open()) {
            book.begin(plan, "");
            book.note(plan, "one");
            book.flush();
            book.note(plan, "two");
            book.keep(plan, "two", trouble -> told.add(String.valueOf(trouble)));
            assertEquals("null", told.poll(60, TimeUnit.SECONDS));
            assertEquals("two", Files.readString(plan));
            assertNull(book.of(plan));
            book.note(plan, "three");
            book.flush();
            Draftbook.Copy copy = book.of(plan);
            assertNotNull(copy);
            assertTrue(copy.follows("two"), "the edit was made on what was kept");
        }
    }

    @Test
    void whatWaitsToBeKeptIsKeptBeforeTheProgramEnds() throws IOException {
        Path plan = folder.resolve("plan.json");
        try (Draftbook book = open()) {
            book.begin(plan, "");
            book.keep(plan, "one", trouble -> {});
            book.note(plan, "two");
        }
        assertEquals("one", Files.readString(plan));
        try (Draftbook book = open()) {
            Draftbook.Copy copy = book.of(plan);
            assertNotNull(copy);
            assertEquals("two", copy.text());
            assertTrue(copy.follows("one"));
        }
    }

    @Test
    void aPlanThatCannotBeKeptIsInItsCopy() throws Exception {
        Path inTheWay = folder.resolve("file");
        Files.writeString(inTheWay, "a file");
        Path plan = inTheWay.resolve("plan.json");
        BlockingQueue<String> told = new LinkedBlockingQueue<>();
        try (Draftbook book = open()) {
            book.begin(plan, "");
            book.keep(plan, "one", trouble -> told.add(String.valueOf(trouble)));
            assertFalse("null".equals(told.poll(60, TimeUnit.SECONDS)));
            Draftbook.Copy copy = book.of(plan);
            assertNotNull(copy);
            assertEquals("one", copy.text());
            assertTrue(copy.follows(""));
        }
    }

    @Test
    void aHomeThatCannotBeWrittenIsToldAndTriedAgain() throws Exception {
        Path inTheWay = folder.resolve("home");
        Files.writeString(inTheWay, "a file where the folder should be");
        Path plan = folder.resolve("plan.json");
        try (Draftbook book = open()) {
            book.begin(plan, "in file");
            book.note(plan, "edited");
            assertNotNull(failed.poll(60, TimeUnit.SECONDS));
            Files.delete(inTheWay);
            book.flush();
            book.flush();
            Draftbook.Copy copy = book.of(plan);
            assertNotNull(copy, "the edit waits until it can be written");
            assertEquals("edited", copy.text());
        }
    }

    @Test
    void aPlanIsKeptEvenIfNoCopyCanBeWritten() throws Exception {
        Files.writeString(folder.resolve("home"), "a file where the folder should be");
        Path plan = folder.resolve("plan.json");
        try (Draftbook book = open()) {
            book.begin(plan, "");
            book.keep(plan, "one", trouble -> {});
        }
        assertEquals("one", Files.readString(plan));
    }

    @Test
    void copiesThatAreCutOffOrSpoiledHideNoneOfTheOthers() throws IOException {
        Path whole = folder.resolve("whole.json");
        try (Draftbook book = open()) {
            book.begin(whole, "");
            book.note(whole, "text of a plan");
        }
        byte[] good = Files.readAllBytes(files().get(0));
        List<byte[]> hostile = new ArrayList<>();
        for (int length = 0; length < good.length; length += 7) {
            hostile.add(java.util.Arrays.copyOf(good, length));
        }
        byte[] flipped = good.clone();
        flipped[good.length - 3] ^= 1;
        hostile.add(flipped);
        String text = new String(good, StandardCharsets.UTF_8);
        hostile.add(text.replace("file:///", "nowhere:///").getBytes(StandardCharsets.UTF_8));
        hostile.add(text.replace("file:///", "file://%%").getBytes(StandardCharsets.UTF_8));
        hostile.add(text.replaceFirst("\n20", "\nnever").getBytes(StandardCharsets.UTF_8));
        hostile.add(new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        for (int i = 0; i < hostile.size(); i++) {
            Files.write(edits().resolve(String.format("%024d.edits", i)), hostile.get(i));
        }
        Files.createDirectory(edits().resolve("folder.edits"));
        try (Draftbook book = open()) {
            List<Draftbook.Copy> found = book.found();
            assertEquals(1, found.size());
            assertEquals("text of a plan", found.get(0).text());
        }
        assertEquals(hostile.size() + 1, files().size(), "what cannot be read is left");
    }

    @Test
    void aCopyPutAsideIsAPlanFileAndNoLongerFound() throws IOException {
        Path plan = folder.resolve("My lane.json");
        try (Draftbook book = open()) {
            book.begin(plan, "old");
            book.note(plan, "edited");
            Path aside = book.putAside(plan);
            assertEquals("edited", Files.readString(aside));
            assertTrue(aside.getFileName().toString().matches("My lane-[0-9TZ]+\\.json"));
            assertNull(book.of(plan));
            assertEquals(List.of(), book.found());
        }
    }
}
