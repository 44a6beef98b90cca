package lanewright.desktop.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Writes plans: into their own files when their owner says so, and before that as safe copies of
 * edits, so that a machine that dies takes no more than the last moments with it. All writing is
 * done on a thread of its own, in order. An edit is written at most {@value #EVERY} ms after it was
 * made, together with all that came in between.
 *
 * <p>A safe copy knows which text of the plan's file its edits were made on. If the file holds
 * another text by then, it was kept or changed since, and the copy is not the newer of the two.
 */
public final class Draftbook implements AutoCloseable {

    /** Time that edits are gathered before they are written, ms. */
    static final long EVERY = 400;

    /** Time until writing is tried again after it failed, ms. */
    static final long AGAIN = 2000;

    private static final String HEAD = "lanewright edits 1";
    private static final String ENDING = ".edits";

    private final Path folder;
    private final TrailFiles trails;
    private final Consumer<IOException> failed;
    private final Object lock = new Object();
    private final Thread thread;

    // Guarded by lock.
    private final Map<Path, Task> tasks = new LinkedHashMap<>();
    private final Map<Path, String> bases = new HashMap<>();
    private boolean writing;
    private boolean hurry;
    private boolean closed;
    private long pause = EVERY;
    private long waves;

    /** What is to be written of one plan: what is to be kept, then the edits made since. */
    private static final class Task {
        private final List<Keep> keeps = new ArrayList<>();
        private @Nullable String note;
        private @Nullable Trail trail;
    }

    private record Keep(String text, Consumer<@Nullable IOException> told) {}

    /**
     * A safe copy that was found.
     *
     * @param plan the plan's own file, which may not exist yet
     * @param text the plan with the edits
     * @param when it was written
     * @param base hash of the text that the plan's file held when the edits were made
     */
    public record Copy(Path plan, String text, Instant when, String base) {

        /**
         * Whether the edits were made on this text.
         *
         * @param inFile what the plan's file holds, empty if there is none
         */
        public boolean follows(String inFile) {
            return base.equals(hash(inFile));
        }
    }

    /**
     * The safe copies in a home.
     *
     * @param failed is told if a copy cannot be written, on the writing thread
     */
    public Draftbook(Home home, Consumer<IOException> failed) {
        this.folder = home.folder().resolve("edits");
        this.trails = new TrailFiles(home);
        this.failed = failed;
        thread = new Thread(this::work, "lanewright-safe-copy");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Says that a plan is worked on.
     *
     * @param plan its own file
     * @param inFile what that file holds, as a plan is written; empty if there is no file yet
     */
    public void begin(Path plan, String inFile) {
        synchronized (lock) {
            bases.put(whole(plan), hash(inFile));
        }
    }

    /**
     * Notes the plan as it is now. If that is what its file holds, no copy is needed, and one that
     * was there is removed.
     *
     * @param plan its own file
     * @param text the plan with its edits
     */
    public void note(Path plan, String text) {
        synchronized (lock) {
            task(plan).note = text;
            lock.notifyAll();
        }
    }

    /**
     * Notes the texts that a plan went through, so that edits can be undone when it is opened
     * again.
     */
    public void note(Path plan, Trail trail) {
        synchronized (lock) {
            task(plan).trail = trail;
            lock.notifyAll();
        }
    }

    /** The texts that a plan went through when it was worked on last, or null. */
    public @Nullable Trail trail(Path plan) {
        flush();
        return trails.read(whole(plan));
    }

    /**
     * Writes the plan into its own file.
     *
     * @param plan its own file
     * @param text the plan with its edits
     * @param told is told on the writing thread: null once the file is written, or why it could not
     *     be, in which case a safe copy holds the text
     */
    public void keep(Path plan, String text, Consumer<@Nullable IOException> told) {
        synchronized (lock) {
            Task task = task(plan);
            task.keeps.add(new Keep(text, told));
            task.note = null;
            hurry = true;
            lock.notifyAll();
        }
    }

    private Task task(Path plan) {
        return tasks.computeIfAbsent(whole(plan), name -> new Task());
    }

    private static Path whole(Path plan) {
        return plan.toAbsolutePath().normalize();
    }

    /** Waits until everything that was said before is written, or failed to be. */
    public void flush() {
        synchronized (lock) {
            long until = waves + (writing ? 2 : 1);
            try {
                while (thread.isAlive() && (writing || !tasks.isEmpty()) && waves < until) {
                    hurry = true;
                    lock.notifyAll();
                    lock.wait(50);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** The safe copy of a plan, or null if there is none that can be read. */
    public @Nullable Copy of(Path plan) throws IOException {
        flush();
        Path at = at(whole(plan));
        return Files.isRegularFile(at) ? read(at) : null;
    }

    /** All safe copies, the newest first. One that cannot be read is left where it is. */
    public List<Copy> found() throws IOException {
        flush();
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Copy> copies = new ArrayList<>();
        try (Stream<Path> each = Files.list(folder)) {
            for (Path at : each.sorted().toList()) {
                if (at.toString().endsWith(ENDING) && Files.isRegularFile(at)) {
                    Copy copy = read(at);
                    if (copy != null) {
                        copies.add(copy);
                    }
                }
            }
        }
        copies.sort(Comparator.comparing(Copy::when).reversed());
        return copies;
    }

    /**
     * Puts the safe copy of a plan where it is no longer in the way and can be looked up.
     *
     * @return the plan file that now holds the edits
     * @throws IOException if there is no copy, or it cannot be put there
     */
    public Path putAside(Path plan) throws IOException {
        Copy copy = of(plan);
        if (copy == null) {
            throw new IOException("there is no safe copy of " + plan);
        }
        String name = String.valueOf(copy.plan().getFileName());
        String bare = name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
        String day = copy.when().toString().replaceAll("[^0-9TZ]", "");
        Path aside = folder.resolve("aside").resolve(bare + "-" + day + ".json");
        SafeFile.write(aside, copy.text());
        Files.deleteIfExists(at(whole(plan)));
        return aside;
    }

    private Path at(Path plan) {
        return folder.resolve(hash(plan.toString()).substring(0, 24) + ENDING);
    }

    private static String hash(String text) {
        return HexFormat.of().formatHex(Digests.sha256(text.getBytes(StandardCharsets.UTF_8)));
    }

    private void write(Path plan, String text) throws IOException {
        String base;
        synchronized (lock) {
            base = bases.getOrDefault(plan, hash(""));
        }
        String hash = hash(text);
        if (hash.equals(base)) {
            Files.deleteIfExists(at(plan));
            return;
        }
        // One file and not two, so that a copy and what is known of it never part.
        SafeFile.write(
                at(plan),
                String.join(
                        "\n",
                        HEAD,
                        plan.toUri().toString(),
                        Instant.now().toString(),
                        base,
                        hash,
                        text));
    }

    private static @Nullable Copy read(Path at) {
        try {
            String[] lines = Files.readString(at, StandardCharsets.UTF_8).split("\n", 6);
            if (lines.length == 6 && lines[0].equals(HEAD) && lines[4].equals(hash(lines[5]))) {
                return new Copy(
                        Path.of(java.net.URI.create(lines[1])),
                        lines[5],
                        Instant.parse(lines[2]),
                        lines[3].toLowerCase(Locale.ROOT));
            }
            spoiled(at, "it is cut off or was changed");
        } catch (IOException
                | IllegalArgumentException
                | DateTimeException
                | FileSystemNotFoundException e) {
            spoiled(at, e.toString());
        }
        return null;
    }

    private static void spoiled(Path at, String why) {
        System.getLogger(Draftbook.class.getName())
                .log(System.Logger.Level.WARNING, "the safe copy {0} cannot be read: {1}", at, why);
    }

    private void work() {
        while (true) {
            Map<Path, Task> wave;
            boolean last;
            synchronized (lock) {
                try {
                    await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return;
                }
                last = closed;
                wave = new LinkedHashMap<>(tasks);
                tasks.clear();
                hurry = false;
                writing = true;
            }
            boolean all = true;
            for (Map.Entry<Path, Task> each : wave.entrySet()) {
                all &= done(each.getKey(), each.getValue());
            }
            synchronized (lock) {
                writing = false;
                waves++;
                pause = all ? EVERY : AGAIN;
                lock.notifyAll();
            }
            if (last) {
                return;
            }
        }
    }

    /** Waits until there is something to write and time to write it. Called with the lock held. */
    private void await() throws InterruptedException {
        while (tasks.isEmpty() && !closed) {
            lock.wait();
        }
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(pause);
        long left = until - System.nanoTime();
        while (!closed && !hurry && left > 0) {
            TimeUnit.NANOSECONDS.timedWait(lock, left);
            left = until - System.nanoTime();
        }
    }

    private boolean done(Path plan, Task task) {
        boolean all = true;
        for (Keep keep : task.keeps) {
            keep.told().accept(tried(() -> kept(plan, keep.text())));
        }
        String note = task.note;
        if (note != null) {
            IOException trouble = tried(() -> write(plan, note));
            if (trouble != null) {
                all = false;
                failed.accept(trouble);
                synchronized (lock) {
                    Task newer = task(plan);
                    if (newer.note == null && newer.keeps.isEmpty()) {
                        newer.note = note;
                    }
                }
            }
        }
        Trail trail = task.trail;
        if (trail != null) {
            // What cannot be undone later is a smaller loss than edits: it is told, not retried.
            IOException trouble = tried(() -> trails.write(plan, trail));
            if (trouble != null) {
                failed.accept(trouble);
            }
        }
        return all;
    }

    private void kept(Path plan, String text) throws IOException {
        // The copy first: whenever the machine dies, it is either this text or gone.
        IOException trouble = tried(() -> write(plan, text));
        if (trouble != null) {
            failed.accept(trouble);
        }
        SafeFile.write(plan, text);
        synchronized (lock) {
            bases.put(plan, hash(text));
        }
        Files.deleteIfExists(at(plan));
    }

    private interface Writing {
        void run() throws IOException;
    }

    /** Whatever goes wrong, the thread lives on: the next edit must find it. */
    private static @Nullable IOException tried(Writing writing) {
        try {
            writing.run();
            return null;
        } catch (IOException e) {
            return e;
        } catch (RuntimeException | OutOfMemoryError e) {
            return new IOException(e);
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
