package lanewright.desktop.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

/** What is remembered from one start to the next: recent plans, and how the window stood. */
public final class Remembered {

    private static final int MOST_RECENT = 8;

    private final Path file;
    private final Properties values = new Properties();

    /** What a home remembers; nothing if it remembers nothing or what it kept cannot be read. */
    public Remembered(Home home) {
        file = home.folder().resolve("remembered.properties");
        try {
            if (Files.isRegularFile(file) && Files.size(file) < 100_000) {
                values.load(new StringReader(Files.readString(file, StandardCharsets.UTF_8)));
            }
        } catch (IOException | IllegalArgumentException e) {
            System.getLogger(Remembered.class.getName())
                    .log(System.Logger.Level.WARNING, "what was remembered cannot be read: {0}", e);
            values.clear();
        }
    }

    /** Plans that were opened, the last one first, as far as they are still there. */
    public List<Path> recent() {
        List<Path> plans = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            String path = values.getProperty("recent." + i);
            if (path != null) {
                try {
                    Path plan = Path.of(path);
                    if (Files.isRegularFile(plan)) {
                        plans.add(plan);
                    }
                } catch (InvalidPathException e) {
                    values.remove("recent." + i);
                }
            }
        }
        return plans;
    }

    /** Puts a plan at the head of the recent ones. */
    public void opened(Path plan) throws IOException {
        Path whole = plan.toAbsolutePath().normalize();
        List<Path> plans = new ArrayList<>(recent());
        plans.remove(whole);
        plans.add(0, whole);
        for (int i = 0; i < MOST_RECENT; i++) {
            if (i < plans.size()) {
                values.setProperty("recent." + i, plans.get(i).toString());
            } else {
                values.remove("recent." + i);
            }
        }
        keep();
    }

    /** A number that was put, or {@code otherwise}. */
    public double number(String name, double otherwise) {
        try {
            String text = values.getProperty(name);
            double value = text == null ? otherwise : Double.parseDouble(text);
            return Double.isFinite(value) ? value : otherwise;
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    /** A word that was put, or {@code otherwise}. */
    public String word(String name, String otherwise) {
        return values.getProperty(name, otherwise);
    }

    /** Remembers something, until {@link #keep} only here. */
    public void put(String name, String value) {
        values.setProperty(name, value);
    }

    /** Writes all that is remembered. */
    public void keep() throws IOException {
        StringBuilder sorted = new StringBuilder();
        StringWriter written = new StringWriter();
        values.store(written, null);
        // Without the date that Java puts on top, so that nothing changes when nothing did.
        written.toString()
                .lines()
                .filter(line -> !line.startsWith("#"))
                .sorted()
                .forEach(line -> sorted.append(line).append('\n'));
        SafeFile.write(file, sorted.toString());
    }
}
