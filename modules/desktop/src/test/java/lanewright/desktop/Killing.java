package lanewright.desktop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A program that is started, listened to and killed while it works. */
public final class Killing {

    /** Edits younger than this may be lost, ms. */
    public static final long MAY_BE_LOST = 2000;

    private Killing() {}

    /** How often to kill: a few times in the ordinary test, more in the one that is named. */
    public static int times() {
        return Integer.getInteger("lanewright.kills", 5);
    }

    /** What a program said until it was killed. */
    public record Said(List<String> lines) {

        /** The greatest number said with a word, or {@code otherwise}. */
        public int last(String word, int otherwise) {
            int last = otherwise;
            for (String line : lines) {
                if (line.startsWith(word + " ")) {
                    last = Math.max(last, Integer.parseInt(line.split(" ")[1]));
                }
            }
            return last;
        }

        /** The last edit that was made longer than may be lost before the program's last word. */
        public int mustBeThere(int otherwise) {
            long end = 0;
            for (String line : lines) {
                String[] words = line.split(" ");
                if (words.length == 3) {
                    end = Math.max(end, Long.parseLong(words[2]));
                }
            }
            int last = otherwise;
            for (String line : lines) {
                String[] words = line.split(" ");
                if (words[0].equals("edit") && Long.parseLong(words[2]) < end - MAY_BE_LOST) {
                    last = Math.max(last, Integer.parseInt(words[1]));
                }
            }
            return last;
        }
    }

    /**
     * Starts a program of the tests, waits for its first edit, and kills it a while later.
     *
     * @param main its class
     * @param more arguments of the Java that runs it
     * @param arguments its own arguments
     * @param after time from its first edit to its end, ms
     */
    public static Said kill(Class<?> main, List<String> more, List<String> arguments, long after)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(more);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader reader =
                new BufferedReader(
                        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            List<String> other = new ArrayList<>();
            String line = reader.readLine();
            while (line != null && !line.startsWith("edit ")) {
                other.add(line);
                line = reader.readLine();
            }
            if (line == null) {
                throw new AssertionError("it ended before its first edit: " + other);
            }
            Thread killer =
                    new Thread(
                            () -> {
                                try {
                                    TimeUnit.MILLISECONDS.sleep(after);
                                } catch (InterruptedException e) {
                                    Thread.currentThread().interrupt();
                                }
                                // By its handle: the process itself would also close what it
                                // said last before that was read.
                                process.toHandle().destroyForcibly();
                            });
            killer.start();
            while (line != null) {
                lines.add(line);
                line = reader.readLine();
            }
            killer.join();
        } finally {
            process.destroyForcibly();
        }
        process.waitFor();
        // The last line may be cut off in the middle.
        List<String> whole =
                lines.stream()
                        .filter(each -> each.matches("(edit|typing|keeping|kept|beat) \\d+ \\d+"))
                        .toList();
        List<String> wrong = lines.stream().filter(each -> each.startsWith("failed ")).toList();
        if (!wrong.isEmpty()) {
            throw new AssertionError(String.join("\n", wrong));
        }
        return new Said(whole);
    }
}
