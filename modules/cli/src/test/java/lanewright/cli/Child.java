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
import java.util.concurrent.TimeUnit;

/** A Java of its own for a test, set up as the start scripts do and as the test asks. */
record Child(List<String> options, String main, List<String> arguments) {

    /** Longer than anything that a test starts may take even on a busy machine, s. */
    private static final long LONGEST = 300;

    /** A child that runs the command line. */
    static Child command(List<String> options, String... arguments) {
        return new Child(options, Main.class.getName(), Arrays.asList(arguments));
    }

    /** Starts it; what it says goes into the file. */
    Process start(Path said) throws IOException {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                List.of(
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Djava.awt.headless=true",
                        "-DEPSG-HSQL.directory=" + System.getProperty("EPSG-HSQL.directory")));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), main));
        command.addAll(arguments);
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
    }

    /** Runs it to its end and gives what it said. */
    String run(int exit) throws IOException, InterruptedException {
        Path said = Files.createTempFile("lanewright-child", ".txt");
        try {
            Process process = start(said);
            if (!process.waitFor(LONGEST, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
            String words = Files.readString(said, StandardCharsets.UTF_8);
            assertEquals(exit, process.exitValue(), words);
            return words;
        } finally {
            assertTrue(Files.deleteIfExists(said));
        }
    }

    /**
     * The class path of the command line alone. The window stands on it only for the tests of the
     * architecture, and the manifest of its jar would bring every library in a second time.
     */
    static String classPath() {
        return java.util.Arrays.stream(
                        System.getProperty("java.class.path").split(java.io.File.pathSeparator, -1))
                .filter(entry -> !entry.contains("lanewright-desktop"))
                .collect(java.util.stream.Collectors.joining(java.io.File.pathSeparator));
    }
}
