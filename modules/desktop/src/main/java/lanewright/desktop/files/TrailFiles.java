package lanewright.desktop.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The trails of plans in the home of the program, one file for each plan. */
final class TrailFiles {

    /** So many plans have a trail; those not worked on for longest make room. */
    static final int MOST = 40;

    /** Nothing larger is read. */
    static final long LARGEST = 4L * Trail.LONGEST;

    private static final String HEAD = "lanewright steps 1";
    private static final String ENDING = ".steps";

    private final Path folder;

    TrailFiles(Home home) {
        folder = home.folder().resolve("steps");
    }

    private Path at(Path plan) {
        return folder.resolve(hash(plan.toString()).substring(0, 24) + ENDING);
    }

    private static String hash(String text) {
        return HexFormat.of().formatHex(Digests.sha256(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes the trail of a plan, or removes it if there is nothing to undo or do again. */
    void write(Path plan, Trail whole) throws IOException {
        Trail trail = whole.bounded();
        if (trail.whats().isEmpty()) {
            Files.deleteIfExists(at(plan));
            return;
        }
        var body = new StringBuilder();
        body.append(plan.toUri()).append('\n');
        body.append(trail.at()).append('\n');
        body.append(trail.texts().size()).append('\n');
        for (int i = 0; i < trail.texts().size(); i++) {
            body.append(i == 0 ? "" : oneLine(trail.whats().get(i - 1))).append('\n');
            body.append(trail.texts().get(i).length()).append('\n');
            body.append(trail.texts().get(i)).append('\n');
        }
        String text = body.toString();
        boolean first = !Files.exists(at(plan));
        SafeFile.write(at(plan), HEAD + "\n" + hash(text) + "\n" + text);
        if (first) {
            makeRoom();
        }
    }

    private static String oneLine(String words) {
        String line = words.replaceAll("\\R", " ");
        return line.length() > Trail.WORDS ? line.substring(0, Trail.WORDS) : line;
    }

    private void makeRoom() throws IOException {
        Map<FileTime, List<Path>> byTime = new TreeMap<>(Comparator.reverseOrder());
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (file.toString().endsWith(ENDING)) {
                    byTime.computeIfAbsent(
                                    Files.getLastModifiedTime(file), time -> new ArrayList<>())
                            .add(file);
                }
            }
        }
        int kept = 0;
        for (List<Path> files : byTime.values()) {
            for (Path file : files) {
                if (++kept > MOST) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    /** The trail of a plan; null if there is none that can be read. */
    @Nullable Trail read(Path plan) {
        Path file = at(plan);
        if (!Files.isRegularFile(file)) {
            return null;
        }
        try {
            if (Files.size(file) > LARGEST) {
                throw new IOException("it is too large");
            }
            return parse(plan, Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException | IllegalArgumentException e) {
            System.getLogger(TrailFiles.class.getName())
                    .log(
                            System.Logger.Level.WARNING,
                            "the steps in {0} cannot be read: {1}",
                            file,
                            e);
            return null;
        }
    }

    private static Trail parse(Path plan, String text) throws IOException {
        String[] parts = text.split("\n", 3);
        if (parts.length < 3 || !parts[0].equals(HEAD) || !parts[1].equals(hash(parts[2]))) {
            throw new IOException("it is cut off or was changed");
        }
        var reader = new Reader(parts[2]);
        if (!reader.line().equals(plan.toUri().toString())) {
            throw new IOException("it is of another plan");
        }
        int at = reader.number();
        int count = reader.number();
        if (count > Trail.MOST + 1) {
            throw new IOException("it has too many steps");
        }
        List<String> texts = new ArrayList<>();
        List<String> whats = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String what = reader.line();
            if (i > 0) {
                whats.add(oneLine(what));
            }
            texts.add(reader.letters(reader.number()));
        }
        return new Trail(texts, whats, at);
    }

    /** Reads on and on in a text. */
    private static final class Reader {
        private final String text;
        private int next;

        Reader(String text) {
            this.text = text;
        }

        String line() throws IOException {
            int end = text.indexOf('\n', next);
            if (end < 0) {
                throw new IOException("it ends too soon");
            }
            String line = text.substring(next, end);
            next = end + 1;
            return line;
        }

        /** A line that is a number from 0 up. */
        int number() throws IOException {
            String line = line();
            if (!line.matches("\\d{1,8}")) {
                throw new IOException("it has no number where one belongs");
            }
            return Integer.parseInt(line);
        }

        /** So many letters, and the end of their line. */
        String letters(int count) throws IOException {
            int end = next + count;
            if (end >= text.length() || text.charAt(end) != '\n') {
                throw new IOException("a text in it ends elsewhere");
            }
            String letters = text.substring(next, end);
            next = end + 1;
            return letters;
        }
    }
}
