package lanewright.desktop.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Keeps a safe copy of every plan with edits that are not in its file yet, so that a machine that
 * dies takes no more than the last moments with it. Written on a thread of its own, at most {@value
 * #EVERY} ms after an edit; the newest edit takes the place of those that wait.
 */
public final class Draftbook implements AutoCloseable {

    /** Time that edits are gathered before they are written, ms. */
    static final long EVERY = 400;

    private static final String PLACE = "place.txt";
    private static final String PLAN = "plan.json";

    private final Path folder;
    private final Consumer<IOException> failed;
    private final Object lock = new Object();
    private final Thread thread;
    private @Nullable Note waiting;
    private boolean writing;
    private boolean closed;

    private record Note(Path plan, String text) {}

    /**
     * A safe copy that was found.
     *
     * @param plan the plan's own file, which may not exist yet
     * @param text the plan with the edits
     * @param when it was written
     */
    public record Copy(Path plan, String text, Instant when) {}

    /**
     * The safe copies in a home.
     *
     * @param failed is told if a copy cannot be written, on the writing thread
     */
    public Draftbook(Home home, Consumer<IOException> failed) {
        this.folder = home.folder().resolve("edits");
        this.failed = failed;
        thread = new Thread(this::work, "lanewright-safe-copy");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Notes the plan as it is now.
     *
     * @param plan its own file
     * @param text the plan with its edits
     */
    public void note(Path plan, String text) {
        synchronized (lock) {
            waiting = new Note(plan.toAbsolutePath().normalize(), text);
            lock.notifyAll();
        }
    }

    /** Forgets the copy of a plan, whose edits are in its file or were given up. */
    public void forget(Path plan) throws IOException {
        flush();
        Path at = at(plan.toAbsolutePath().normalize());
        Files.deleteIfExists(at.resolve(PLACE));
        Files.deleteIfExists(at.resolve(PLAN));
        Files.deleteIfExists(at);
    }

    /** Waits until everything noted is written. */
    public void flush() {
        synchronized (lock) {
            try {
                while ((waiting != null || writing) && thread.isAlive()) {
                    lock.wait(50);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** All safe copies, the newest first. What cannot be read is left where it is. */
    public List<Copy> found() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Copy> copies = new ArrayList<>();
        try (Stream<Path> each = Files.list(folder)) {
            for (Path at : each.sorted().toList()) {
                Path place = at.resolve(PLACE);
                Path plan = at.resolve(PLAN);
                if (Files.isRegularFile(place) && Files.isRegularFile(plan)) {
                    List<String> lines = Files.readAllLines(place, StandardCharsets.UTF_8);
                    if (!lines.isEmpty()) {
                        copies.add(
                                new Copy(
                                        Path.of(lines.get(0)),
                                        Files.readString(plan, StandardCharsets.UTF_8),
                                        when(plan, lines)));
                    }
                }
            }
        }
        copies.sort(Comparator.comparing(Copy::when).reversed());
        return copies;
    }

    private static Instant when(Path plan, List<String> lines) throws IOException {
        if (lines.size() > 1) {
            try {
                return Instant.parse(lines.get(1));
            } catch (DateTimeParseException e) {
                return Files.getLastModifiedTime(plan).toInstant();
            }
        }
        return Files.getLastModifiedTime(plan).toInstant();
    }

    private Path at(Path plan) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256")
                            .digest(plan.toString().getBytes(StandardCharsets.UTF_8));
            return folder.resolve(HexFormat.of().formatHex(hash, 0, 12));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void work() {
        while (true) {
            Note next;
            synchronized (lock) {
                try {
                    while (waiting == null && !closed) {
                        lock.wait();
                    }
                    if (waiting == null) {
                        return;
                    }
                    long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(EVERY);
                    long left = until - System.nanoTime();
                    while (!closed && left > 0) {
                        TimeUnit.NANOSECONDS.timedWait(lock, left);
                        left = until - System.nanoTime();
                    }
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return;
                }
                next = waiting;
                waiting = null;
                writing = true;
            }
            try {
                if (next != null) {
                    Path at = at(next.plan());
                    SafeFile.write(at.resolve(PLACE), next.plan() + "\n" + Instant.now() + "\n");
                    SafeFile.write(at.resolve(PLAN), next.text());
                }
            } catch (IOException e) {
                failed.accept(e);
            } finally {
                synchronized (lock) {
                    writing = false;
                    lock.notifyAll();
                }
            }
        }
    }

    /** Writes what waits and stops. */
    @Override
    public void close() {
        synchronized (lock) {
            closed = true;
            lock.notifyAll();
        }
        try {
            thread.join(TimeUnit.SECONDS.toMillis(5));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
