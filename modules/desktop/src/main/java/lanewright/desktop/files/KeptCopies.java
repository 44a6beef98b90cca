package lanewright.desktop.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Copies of a plan that its owner kept while working, to look back at: each a plan file in the home
 * of the program, so that they are there again at the next start.
 */
public final class KeptCopies {

    /** So many are kept of a plan; older ones make room. */
    static final int MOST = 30;

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ROOT);
    private static final Pattern NAME = Pattern.compile("(\\d{1,6})-(\\d{8}T\\d{6})\\.json");

    /** Nothing larger is read. */
    private static final long LARGEST = 20_000_000;

    /**
     * A copy.
     *
     * @param number counted from one, in the order of keeping
     * @param when it was kept, by the clock of this machine
     * @param file where it lies
     */
    public record Kept(int number, LocalDateTime when, Path file) {

        /** Such as {@code copy 2, 14:05}; with its day if that is not today. */
        public String name() {
            boolean today = when.toLocalDate().equals(LocalDate.now(ZoneId.systemDefault()));
            return "copy " + number + ", " + when.format(today ? CLOCK : DAY);
        }

        /** The plan as it was. */
        public String text() throws IOException {
            if (Files.size(file) > LARGEST) {
                throw new IOException(file + " is too large to be a plan");
            }
            return Files.readString(file, StandardCharsets.UTF_8);
        }
    }

    private final Path folder;

    /** The copies of a plan. */
    public KeptCopies(Home home, Path plan) {
        byte[] name = plan.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
        folder =
                home.folder()
                        .resolve("copies")
                        .resolve(HexFormat.of().formatHex(Digests.sha256(name)).substring(0, 24));
    }

    /** All copies, the first first; none if there is no folder yet. */
    public List<Kept> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Kept> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Kept kept = named(file);
                if (kept != null) {
                    found.add(kept);
                }
            }
        }
        found.sort(Comparator.comparingInt(Kept::number));
        return found;
    }

    /** The copy that a file is, or null if its name is that of none. */
    private static @Nullable Kept named(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches()) {
            return null;
        }
        try {
            LocalDateTime when = LocalDateTime.parse(name.group(2), STAMP);
            return new Kept(Integer.parseInt(name.group(1)), when, file);
        } catch (DateTimeParseException e) {
            return null; // no day of any year, so not written by this program
        }
    }

    /**
     * Keeps a copy.
     *
     * @param text the plan as it is now
     * @throws IOException if it cannot be written; nothing is lost then
     */
    public Kept add(String text) throws IOException {
        List<Kept> before = all();
        int number = before.isEmpty() ? 1 : before.get(before.size() - 1).number() + 1;
        LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault());
        Path file = folder.resolve(number + "-" + now.format(STAMP) + ".json");
        SafeFile.write(file, text);
        for (Kept old : before.subList(0, Math.max(0, before.size() + 1 - MOST))) {
            Files.deleteIfExists(old.file());
        }
        return new Kept(number, now, file);
    }
}
