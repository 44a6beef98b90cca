package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.desktop.Killing;
import lanewright.desktop.Killing.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program that writes all the time is killed in the middle of it. */
class KilledWriterTest {

    @TempDir Path folder;

    @Test
    void aKillLosesNoKeptPlanAndOnlyTheLastMomentsOfEdits() throws Exception {
        Path plan = folder.resolve("plan.json");
        Home home = new Home(folder.resolve("home"));
        SplittableRandom random = new SplittableRandom(20260101);
        int last = 0;
        int kept = 0;
        for (int i = 0; i < Killing.times(); i++) {
            Said said =
                    Killing.kill(
                            KilledWriter.class,
                            List.of("-Xmx64m"),
                            List.of(
                                    home.folder().toString(),
                                    plan.toString(),
                                    Integer.toString(last),
                                    Long.toString(random.nextLong())),
                            200 + random.nextInt(3500));
            kept = said.last("kept", kept);
            int must = Math.max(kept, said.mustBeThere(last));
            String inFile = Files.exists(plan) ? Files.readString(plan) : "";
            int inPlan = inFile.isEmpty() ? 0 : KilledWriter.edit(inFile);
            assertTrue(inPlan >= kept, "kept " + kept + " and the file holds " + inPlan);
            int found = inPlan;
            try (Draftbook book = new Draftbook(home, trouble -> fail(trouble))) {
                Draftbook.Copy copy = book.of(plan);
                assertEquals(
                        Files.exists(edits(home)) && copy != null ? 1 : 0, book.found().size());
                if (copy != null && !copy.text().equals(inFile)) {
                    assertTrue(copy.follows(inFile), "a copy is of what the file holds");
                    found = KilledWriter.edit(copy.text());
                    assertNotNull(copy.when());
                }
            }
            assertTrue(found >= must, "edit " + must + " is lost, " + found + " was found");
            // What was found is what its owner goes on from.
            last = found;
        }
    }

    private static Path edits(Home home) {
        return home.folder().resolve("edits");
    }

    private static void fail(IOException trouble) {
        throw new AssertionError(trouble);
    }
}
