package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever makes a plan gets the same files, byte for byte. */
class SameBytesTest {

    private static final List<String> SAMPLES = List.of("marrow-fold", "wickle-bank");
    private static final Path TOP = Path.of("..", "..").toAbsolutePath().normalize();

    @TempDir Path place;

    /**
     * Four processes cover one and two threads and processors, four languages (with a comma for
     * decimals, with the dotless i, with digits of its own) and four time zones.
     */
    @Test
    void bothSamplesAreTheSameInAnyProcessLanguageZoneAndNumberOfThreads() throws Exception {
        String plain = made("plain", 1, "en", "US", "UTC", "UTF-8");
        assertTrue(plain.contains("tons of stone"), plain);
        assertEquals(plain, made("comma", 2, "de", "DE", "Asia/Kathmandu", "UTF-8"));
        assertEquals(plain, made("dotless", 2, "tr", "TR", "America/St_Johns", "ISO-8859-9"));
        assertEquals(plain, made("digits", 1, "ar", "EG", "Pacific/Kiritimati", "US-ASCII"));
        for (String sample : SAMPLES) {
            Map<String, byte[]> expected = files(place.resolve("plain").resolve(sample));
            assertTrue(expected.containsKey("sheets.pdf"), expected.keySet().toString());
            assertTrue(expected.size() > 20, expected.keySet().toString());
            for (String other : List.of("comma", "dotless", "digits")) {
                Map<String, byte[]> found = files(place.resolve(other).resolve(sample));
                assertEquals(expected.keySet(), found.keySet());
                expected.forEach(
                        (name, bytes) ->
                                assertArrayEquals(
                                        bytes,
                                        found.get(name),
                                        sample + ", " + other + ": " + name));
            }
        }
    }

    /** Makes both samples in a new process; gives what it said, without where the folders lie. */
    private String made(
            String name, int threads, String language, String country, String zone, String encoding)
            throws Exception {
        Path into = Files.createDirectory(place.resolve(name));
        var arguments = new ArrayList<String>();
        arguments.add(Integer.toString(threads));
        for (String sample : SAMPLES) {
            arguments.add(TOP.resolve("sample-surveys/" + sample + "/plan.json").toString());
            arguments.add(into.resolve(sample).toString());
        }
        List<String> options =
                List.of(
                        "-Xmx700m",
                        "-XX:ActiveProcessorCount=" + threads,
                        "-Djava.util.concurrent.ForkJoinPool.common.parallelism=" + threads,
                        "-Duser.language=" + language,
                        "-Duser.country=" + country,
                        "-Duser.timezone=" + zone,
                        "-Dfile.encoding=" + encoding,
                        "-Duser.home=" + Files.createDirectory(place.resolve(name + "-home")));
        String said = new Child(options, MakePlans.class.getName(), arguments).run(0);
        return said.replace(into.toString(), "");
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        var files = new TreeMap<String, byte[]>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                files.put(
                        folder.relativize(path).toString().replace('\\', '/'),
                        Files.readAllBytes(path));
            }
        }
        return files;
    }
}
