package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The texts that a plan went through stay over the end of the program, in measure. */
class TrailTest {

    @TempDir Path folder;

    private TrailFiles files() {
        return new TrailFiles(new Home(folder.resolve("home")));
    }

    private Path only() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("home").resolve("steps"))) {
            List<Path> found = all.toList();
            assertEquals(1, found.size());
            return found.get(0);
        }
    }

    private static Trail trail(int texts, int at, int letters) {
        List<String> all = new ArrayList<>();
        List<String> whats = new ArrayList<>();
        for (int i = 0; i < texts; i++) {
            all.add("{\n" + i + "\n" + "x".repeat(letters) + "}");
            if (i > 0) {
                whats.add("edit " + i);
            }
        }
        return new Trail(all, whats, at);
    }

    @Test
    void aTrailIsTheSameAtTheNextStart() throws IOException {
        Path plan = folder.resolve("strange ü\n name").resolve("plan.json");
        files().write(plan, trail(5, 3, 10));
        assertEquals(trail(5, 3, 10), files().read(plan));
        assertNull(files().read(folder.resolve("plan.json")));
        files().write(plan, trail(1, 0, 10));
        assertNull(files().read(plan), "a plan without edits needs no trail");
    }

    @Test
    void itIsBoundedAroundThePresentText() {
        Trail many = trail(500, 300, 10).bounded();
        assertEquals(Trail.MOST, many.whats().size());
        assertEquals("{\n300\n" + "x".repeat(10) + "}", many.texts().get(many.at()));
        assertEquals("edit 300", many.whats().get(many.at() - 1));
        assertTrue(many.at() > many.texts().size() / 2, "more can be undone than done again");
        Trail wide = trail(20, 19, Trail.LONGEST / 4).bounded();
        assertTrue(wide.texts().stream().mapToInt(String::length).sum() <= Trail.LONGEST);
        assertEquals(wide.texts().size() - 1, wide.at());
        assertEquals(0, trail(3, 0, Trail.LONGEST).bounded().whats().size());
    }

    @Test
    void itGoesOnFromWhicheverOfItsTextsIsThere() {
        Trail trail = trail(5, 4, 3);
        Trail back = trail.from(trail.texts().get(2));
        assertNotNull(back);
        assertEquals(2, back.at());
        assertNull(trail.from("another text"));
    }

    @Test
    void aSpoiledFileIsNoTrail() throws IOException {
        Path plan = folder.resolve("plan.json");
        files().write(plan, trail(4, 2, 6));
        String good = Files.readString(only());
        for (String bad :
                List.of(
                        "",
                        good.substring(0, good.length() - 3),
                        good.replace("edit 2", "edit 9"),
                        signed(good, "\n4\n", "\n99999999\n"),
                        signed(good, "\n2\n4\n", "\n7\n4\n"),
                        signed(good, "\n11\n", "\n99999999\n"),
                        signed(good, "\n11\n", "\n-1\n"))) {
            Files.writeString(only(), bad);
            assertNull(files().read(plan), bad);
        }
        Files.writeString(only(), "x".repeat((int) TrailFiles.LARGEST + 1));
        assertNull(files().read(plan));
        Files.writeString(only(), good);
        assertNotNull(files().read(plan));
    }

    /** Changes the body of a file and gives it the hash that the change has. */
    private static String signed(String file, String from, String to) {
        String[] parts = file.split("\n", 3);
        assertTrue(parts[2].contains(from), from);
        String body = parts[2].replace(from, to);
        byte[] bytes = body.getBytes(java.nio.charset.StandardCharsets.UTF_8);
        return parts[0]
                + "\n"
                + java.util.HexFormat.of().formatHex(Digests.sha256(bytes))
                + "\n"
                + body;
    }

    @Test
    void thePlansNotWorkedOnForLongestMakeRoom() throws IOException {
        for (int i = 0; i < TrailFiles.MOST + 3; i++) {
            files().write(folder.resolve(i + ".json"), trail(2, 1, 3));
        }
        try (Stream<Path> all = Files.list(folder.resolve("home").resolve("steps"))) {
            assertEquals(TrailFiles.MOST, all.count());
        }
    }

    @Test
    void partsThatDoNotFitAreRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new Trail(List.of("a"), List.of("b"), 0));
        assertThrows(IllegalArgumentException.class, () -> new Trail(List.of("a"), List.of(), 1));
    }
}
