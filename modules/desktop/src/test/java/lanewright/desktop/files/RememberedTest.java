package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {

    @TempDir Path folder;

    private Home home() {
        return new Home(folder.resolve("home"));
    }

    private Path file() {
        return folder.resolve("home").resolve("remembered.properties");
    }

    private Path plan(String name) throws IOException {
        Path plan = folder.resolve(name);
        Files.writeString(plan, "{}");
        return plan;
    }

    @Test
    void whatWasPutIsThereAtTheNextStart() throws IOException {
        Remembered first = new Remembered(home());
        first.put("window.width", "1203.5");
        first.put("theme", "dark");
        first.put("odd", "# = : \n ü 道");
        first.keep();
        Remembered second = new Remembered(home());
        assertEquals(1203.5, second.number("window.width", 0));
        assertEquals("dark", second.word("theme", "light"));
        assertEquals("# = : \n ü 道", second.word("odd", ""));
        byte[] before = Files.readAllBytes(file());
        second.keep();
        assertEquals(
                new String(before, StandardCharsets.UTF_8),
                Files.readString(file()),
                "nothing changed");
    }

    @Test
    void recentPlansAreTheLastOpenedOnceEachAsFarAsTheyAreThere() throws IOException {
        Remembered remembered = new Remembered(home());
        List<Path> plans = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            plans.add(0, plan("plan " + i + ".json"));
            remembered.opened(plans.get(0));
        }
        assertEquals(plans.subList(0, 8), new Remembered(home()).recent());
        remembered.opened(folder.resolve("x").resolve("..").resolve("plan 5.json"));
        List<Path> expected = new ArrayList<>(plans.subList(0, 8));
        expected.remove(folder.resolve("plan 5.json"));
        expected.add(0, folder.resolve("plan 5.json"));
        assertEquals(expected, new Remembered(home()).recent());
        Files.delete(folder.resolve("plan 5.json"));
        assertEquals(expected.subList(1, 8), new Remembered(home()).recent());
    }

    @Test
    void whatCannotBeReadIsAsIfNothingWereRemembered() throws IOException {
        Files.createDirectories(folder.resolve("home"));
        List<byte[]> hostile =
                List.of(
                        "theme=dark\nx=\\u12".getBytes(StandardCharsets.UTF_8),
                        new byte[] {'t', '=', (byte) 0xff, (byte) 0xfe, '\n'},
                        new byte[0],
                        ("theme=" + "d".repeat(200_000)).getBytes(StandardCharsets.UTF_8));
        for (byte[] each : hostile) {
            Files.write(file(), each);
            Remembered remembered = new Remembered(home());
            assertEquals("light", remembered.word("theme", "light"));
            assertEquals(List.of(), remembered.recent());
            remembered.put("theme", "dark");
            remembered.keep();
            assertEquals("dark", new Remembered(home()).word("theme", "light"));
        }
        Files.delete(file());
        Files.createDirectories(file());
        assertEquals("light", new Remembered(home()).word("theme", "light"));
    }

    @Test
    void numbersThatAreNoneAreNotTaken() throws IOException {
        Files.createDirectories(folder.resolve("home"));
        Files.writeString(
                file(), "a=12,5\nb=NaN\nc=Infinity\nd=\ne=7\nrecent.0=a\\u0000b\nrecent.1=\n");
        Remembered remembered = new Remembered(home());
        for (String name : List.of("a", "b", "c", "d", "none")) {
            assertEquals(3, remembered.number(name, 3), name);
        }
        assertEquals(7, remembered.number("e", 3));
        assertEquals(List.of(), remembered.recent());
    }

    @Test
    void aHomeThatCannotBeWrittenIsTold() throws IOException {
        Path inTheWay = folder.resolve("home");
        Files.writeString(inTheWay, "a file where the folder should be");
        Remembered remembered = new Remembered(home());
        remembered.put("theme", "dark");
        assertThrows(IOException.class, remembered::keep);
        assertEquals("dark", remembered.word("theme", "light"));
    }
}
