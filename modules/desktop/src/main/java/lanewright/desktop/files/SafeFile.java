package lanewright.desktop.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes a file whole or not at all: whoever reads it finds the old text or the new one. */
public final class SafeFile {

    private static final Pattern PART = Pattern.compile("\\.lanewright-(\\d{1,18})-\\d+\\.part");

    /** Parts younger than this are left alone: another machine on a shared disk may write them. */
    private static final Duration YOUNG = Duration.ofMinutes(1);

    private static final AtomicLong COUNT = new AtomicLong();
    private static final Set<Path> TIDIED = ConcurrentHashMap.newKeySet();

    private SafeFile() {}

    /**
     * Writes text as UTF-8 in place of what was there. A link stays a link, and who may read the
     * file stays as it was.
     *
     * @throws IOException if it cannot be written; then what was there is still there
     */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes likewise.
     *
     * @throws IOException if they cannot be written; then what was there is still there
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path named = file.toAbsolutePath();
        Path whole = Files.exists(named) ? named.toRealPath() : named;
        Path folder = whole.getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        // Asked first, because making a folder that is a link to one fails on Java 17.
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
        if (TIDIED.add(folder)) {
            tidy(folder);
        }
        Path beside =
                folder.resolve(
                        ".lanewright-"
                                + ProcessHandle.current().pid()
                                + "-"
                                + COUNT.incrementAndGet()
                                + ".part");
        try {
            try (FileChannel out =
                    FileChannel.open(
                            beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
                ByteBuffer bytes = ByteBuffer.wrap(content);
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
            }
            sameReaders(whole, beside);
            move(beside, whole);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void sameReaders(Path old, Path made) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(made, PosixFileAttributeView.class);
        if (view != null && Files.exists(old)) {
            view.setPermissions(Files.getPosixFilePermissions(old));
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(
                    from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Removes what programs that died left half written in a folder. */
    static void tidy(Path folder) throws IOException {
        Instant old = Instant.now().minus(YOUNG);
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".lanewright-*.part")) {
            for (Path part : parts) {
                Matcher name = PART.matcher(String.valueOf(part.getFileName()));
                if (name.matches()
                        && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty()
                        && Files.getLastModifiedTime(part).toInstant().isBefore(old)) {
                    Files.deleteIfExists(part);
                }
            }
        }
    }
}
