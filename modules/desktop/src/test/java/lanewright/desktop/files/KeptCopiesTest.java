package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptCopiesTest {

    @TempDir Path folder;

    private KeptCopies copies(String plan) {
        return new KeptCopies(new Home(folder.resolve("home")), folder.resolve(plan));
    }

    @Test
    void copiesAreThereAgainAtTheNextStart() throws IOException {
        assertEquals(List.of(), copies("plan.json").all());
        KeptCopies.Kept first = copies("plan.json").add("one");
        copies("plan.json").add("two");
        copies("other.json").add("three");
        List<KeptCopies.Kept> found = copies("plan.json").all();
        assertEquals(2, found.size());
        assertEquals("one", found.get(0).text());
        assertEquals("two", found.get(1).text());
        assertTrue(first.name().matches("copy 1, .*[0-2][0-9]:[0-5][0-9]"), first.name());
        assertEquals(1, copies("other.json").all().size());
    }

    @Test
    void theOldestMakeRoom() throws IOException {
        KeptCopies copies = copies("plan.json");
        for (int i = 1; i <= KeptCopies.MOST + 3; i++) {
            copies.add("plan " + i);
        }
        List<KeptCopies.Kept> found = copies.all();
        assertEquals(KeptCopies.MOST, found.size());
        assertEquals(4, found.get(0).number());
        assertEquals("plan 4", found.get(0).text());
        assertEquals(KeptCopies.MOST + 4, copies.add("last").number());
    }

    @Test
    void otherFilesInTheFolderAreLeftAlone() throws IOException {
        KeptCopies copies = copies("plan.json");
        Path own = copies.add("one").file();
        Files.writeString(own.resolveSibling("notes.txt"), "mine");
        Files.writeString(own.resolveSibling("7-20269999T000000.json"), "no such day");
        assertEquals(1, copies.all().size());
    }
}
