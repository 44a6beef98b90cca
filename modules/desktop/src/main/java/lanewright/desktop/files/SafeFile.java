package lanewright.desktop.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a file whole or not at all: whoever reads it finds the old text or the new one. */
public final class SafeFile {

    private SafeFile() {}

    /**
     * Writes text as UTF-8 in place of what was there.
     *
     * @throws IOException if it cannot be written; then what was there is still there
     */
    public static void write(Path file, String text) throws IOException {
        Path whole = file.toAbsolutePath();
        Path folder = whole.getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        Files.createDirectories(folder);
        Path beside = Files.createTempFile(folder, ".keeping", ".part");
        try {
            try (FileChannel out = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    out.write(bytes);
                }
                out.force(true);
            }
            move(beside, whole);
        } finally {
            Files.deleteIfExists(beside);
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
}
