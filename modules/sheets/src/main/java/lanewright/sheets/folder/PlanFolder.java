package lanewright.sheets.folder;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import lanewright.measure.Progress;
import lanewright.measure.SideBySide;

/**
 * Writes a plan folder whole or not at all: everything goes into a new folder beside the old one,
 * down to the disk, and only then do the two change places. Whatever goes wrong before leaves the
 * old folder as it was.
 *
 * <p>A folder that holds something which this program did not put there is never replaced.
 */
public final class PlanFolder {

    /** Lists what the folder holds, so that a stranger among its files is known. */
    static final String CONTENTS = "contents.txt";

    /** One file of the folder. */
    @FunctionalInterface
    public interface Content {
        /** Writes the file; the stream is closed by the caller. */
        void write(OutputStream out) throws IOException;
    }

    /**
     * A file to be written.
     *
     * @param name within the folder, with {@code /} between folders
     * @param content what goes into it
     */
    public record Entry(String name, Content content) {
        /** Checks that the name stays inside the folder. */
        public Entry {
            Path path = Path.of(name);
            if (name.isBlank()
                    || path.isAbsolute()
                    || !path.normalize().equals(path)
                    || path.startsWith("..")) {
                throw new IllegalArgumentException("no name for a file of the folder: " + name);
            }
        }

        /** A file of text, in UTF-8. */
        public static Entry text(String name, String text) {
            return bytes(name, text.getBytes(StandardCharsets.UTF_8));
        }

        /** A file of bytes. */
        public static Entry bytes(String name, byte[] bytes) {
            byte[] kept = bytes.clone();
            return new Entry(name, out -> out.write(kept));
        }
    }

    /** Folders left behind by writing that was cut short, before we give up. */
    private static final int MOST_LEFTOVERS = 100;

    private final Path target;
    private final Path parent;

    private PlanFolder(Path target) {
        this.target = target.toAbsolutePath().normalize();
        Path above = this.target.getParent();
        if (above == null) {
            throw new IllegalArgumentException("a plan folder cannot be " + target);
        }
        parent = above;
    }

    /**
     * Writes the folder.
     *
     * @param target where it shall lie; the folder above it must be there
     * @param entries in the order of writing
     * @param progress told of each file; cancelling leaves everything as it was
     * @throws FileAlreadyExistsException if something is in the way that is not ours to replace
     * @throws IOException if writing fails; the old folder is then as it was
     */
    public static void write(Path target, List<Entry> entries, Progress progress)
            throws IOException {
        new PlanFolder(target).write(entries, progress);
    }

    private void write(List<Entry> entries, Progress progress) throws IOException {
        refuseStrangers();
        Path fresh = besides("new");
        try {
            var names = new TreeSet<String>();
            for (Entry entry : entries) {
                if (!names.add(entry.name())) {
                    throw new IllegalArgumentException("two files named " + entry.name());
                }
            }
            Thread caller = Thread.currentThread();
            var begun = new AtomicInteger();
            SideBySide.each(
                    entries.size(),
                    () -> fresh,
                    (into, i) -> {
                        progress.check();
                        Entry entry = entries.get(i);
                        int before = begun.getAndIncrement();
                        if (Thread.currentThread() == caller) {
                            progress.report(
                                    (double) before / entries.size(), "Writing " + entry.name());
                        }
                        saveBeside(into.resolve(entry.name()), entry.content());
                    });
            save(fresh.resolve(CONTENTS), out -> out.write(contents(names)));
            progress.check();
            swap(fresh);
            progress.report(1, "Plan folder written");
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        } finally {
            remove(fresh);
        }
    }

    /** Files are saved side by side, where only unchecked exceptions come through. */
    private static void saveBeside(Path file, Content content) {
        try {
            save(file, content);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static byte[] contents(Set<String> names) {
        var text = new StringBuilder();
        names.forEach(name -> text.append(name).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void save(Path file, Content content) throws IOException {
        Files.createDirectories(file.getParent());
        try (var channel =
                        FileChannel.open(
                                file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                var out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16)) {
            content.write(out);
            out.flush();
            channel.force(true);
        }
    }

    /** Throws if the target is a file, or a folder with something in it that we did not write. */
    private void refuseStrangers() throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        if (!Files.isDirectory(target)) {
            throw new FileAlreadyExistsException(
                    target.toString(), null, "is a file; name another folder for the plan");
        }
        var ours = new TreeSet<String>();
        ours.add(CONTENTS);
        Path contents = target.resolve(CONTENTS);
        if (Files.isRegularFile(contents)) {
            ours.addAll(Files.readAllLines(contents, StandardCharsets.UTF_8));
        }
        try (Stream<Path> files = Files.walk(target)) {
            for (Path file : files.sorted().toList()) {
                String name = target.relativize(file).toString().replace('\\', '/');
                if (!Files.isDirectory(file) && !ours.contains(name)) {
                    throw new FileAlreadyExistsException(
                            file.toString(),
                            null,
                            "was not put there by this program; move it, or name another folder"
                                    + " for the plan");
                }
            }
        }
    }

    private void swap(Path fresh) throws IOException {
        if (!Files.exists(target)) {
            Files.move(fresh, target);
            return;
        }
        Path old = besides("old");
        Path kept = old.resolve("plan");
        Files.move(target, kept);
        try {
            Files.move(fresh, target);
        } catch (IOException failed) {
            Files.move(kept, target);
            Files.delete(old);
            throw failed;
        }
        remove(old);
    }

    /** A new folder beside the target, open to the same people as any other that is made there. */
    private Path besides(String what) throws IOException {
        for (int i = 0; i < MOST_LEFTOVERS; i++) {
            Path folder = parent.resolve("." + target.getFileName() + "-" + what + "-" + i);
            if (!Files.exists(folder)) {
                return Files.createDirectory(folder);
            }
        }
        throw new FileAlreadyExistsException(
                parent.toString(), null, "holds too many leftovers of plans; clear it up");
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            files.forEach(all::add);
        }
        all.sort(Comparator.reverseOrder());
        for (Path file : all) {
            Files.delete(file);
        }
    }
}
