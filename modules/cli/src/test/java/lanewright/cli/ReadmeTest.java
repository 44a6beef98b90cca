package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that the first page shows are the commands that work. */
class ReadmeTest {

    private static final Path TOP = Path.of("..", "..");
    private static final Pattern BLOCK = Pattern.compile("```sh\\R(.*?)\\R```", Pattern.DOTALL);

    private static List<String> blocks() throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher matcher = BLOCK.matcher(Files.readString(TOP.resolve("README.md")));
        while (matcher.find()) {
            blocks.add(matcher.group(1));
        }
        return blocks;
    }

    @Test
    void theSecondBlockIsWhatRunsBeforeAChangeIsTaken() throws IOException {
        String second = blocks().get(1);
        assertTrue(Files.readString(TOP.resolve(".ci").resolve("run")).contains("exec " + second));
    }

    @Test
    void theFirstBlockPlansTheSampleAndSaysWhereThePlanLies(@TempDir Path temp)
            throws IOException, InterruptedException {
        String first = blocks().get(0);
        assertTrue(first.startsWith("mvn "), first);
        assertEquals(-1, first.indexOf('\n'), "one command");
        String run = first.substring(first.indexOf("&& ") + 3);
        List<String> words = new ArrayList<>(Arrays.asList(run.split(" ")));
        assertTrue(words.get(0).endsWith("/lanewright"), run);
        words.set(words.indexOf("--into") + 1, temp.resolve("plan").toString());
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xmx1500m",
                                "-Djava.awt.headless=true",
                                "-cp",
                                Child.classPath(),
                                "lanewright.cli.Main"));
        command.addAll(words.subList(1, words.size()));
        Process process =
                new ProcessBuilder(command)
                        .directory(TOP.toFile())
                        .redirectErrorStream(true)
                        .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertTrue(said.contains("tons of stone"), said);
        assertTrue(said.contains(temp.resolve("plan").toString()), said);
        for (String file :
                List.of("sheets.pdf", "outcome.json", "tables/stakes.csv", "maps/lane.geojson")) {
            assertTrue(Files.size(temp.resolve("plan").resolve(file)) > 0, file);
        }
    }
}
