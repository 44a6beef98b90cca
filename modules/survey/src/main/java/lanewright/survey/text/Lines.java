package lanewright.survey.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a text file as bytes, one at a time. A line ends with a line feed, a carriage
 * return, or both. Only UTF-8 without control characters is let through, and no line longer than
 * {@value #LONGEST} bytes; a byte order mark of UTF-8 is passed over.
 *
 * <p>Never holds more than one buffer, so any file can be walked through.
 */
public final class Lines implements AutoCloseable {

    /** Longest line that is read, bytes: a hundred times what a survey row needs. */
    public static final int LONGEST = 8192;

    private static final int BUFFER = 1 << 18;

    private final Path file;
    private final int longest;
    private final InputStream in;
    private final long length;
    private byte[] buffer = new byte[BUFFER];
    private int filled;
    private int next;
    private boolean ended;
    private boolean afterReturn;
    private long passed;

    private int start;
    private int end;
    private long number;

    /**
     * Opens a file.
     *
     * @throws SurveyException if there is no such file, it cannot be read, or its first bytes show
     *     that it is not text
     */
    public Lines(Path file) throws SurveyException {
        this(file, LONGEST);
    }

    /**
     * Opens a file with longer lines, such as a row of an elevation grid.
     *
     * @param longest longest line that is read, bytes
     */
    public Lines(Path file, int longest) throws SurveyException {
        this.file = file;
        this.longest = longest;
        try {
            if (Files.isDirectory(file)) {
                throw new SurveyException(
                        file, 0, "this is a folder", "Name a file inside it in the plan.");
            }
            length = Files.size(file);
            if (length == 0) {
                throw new SurveyException(
                        file, 0, "the file is empty", "Export it again, or take it out.");
            }
            in = Files.newInputStream(file);
        } catch (IOException failed) {
            throw cannotRead(file, failed);
        }
        try {
            fill();
            refuseKnownBinaries();
        } catch (SurveyException refused) {
            try {
                in.close();
            } catch (IOException alsoFailed) {
                refused.addSuppressed(alsoFailed);
            }
            throw refused;
        }
    }

    /** What to say when a file cannot be opened or read. */
    public static SurveyException cannotRead(Path file, IOException failed) {
        SurveyException said;
        if (failed instanceof NoSuchFileException) {
            said =
                    new SurveyException(
                            file,
                            0,
                            "there is no such file at " + file,
                            "Paths in a plan are relative to the plan's own folder; check the"
                                    + " spelling.");
        } else if (failed instanceof AccessDeniedException) {
            said =
                    new SurveyException(
                            file, 0, "the file may not be read", "Change its permissions.");
        } else {
            String reason = failed.getMessage();
            said =
                    new SurveyException(
                            file,
                            0,
                            "the file cannot be read: "
                                    + (reason == null ? failed.getClass().getSimpleName() : reason),
                            "Copy it to this machine's own disk and try again.");
        }
        said.initCause(failed);
        return said;
    }

    /** The file. */
    public Path file() {
        return file;
    }

    /**
     * Goes to the next line.
     *
     * @return false when there is none
     * @throws SurveyException if the line is too long, not UTF-8, or holds control characters
     */
    public boolean next() throws SurveyException {
        if (afterReturn) {
            // The line before ended with a carriage return: a line feed right behind belongs to it.
            afterReturn = false;
            if (next < filled || fill()) {
                if (buffer[next] == '\n') {
                    next++;
                }
            }
        }
        int at = next;
        int high = 0;
        while (true) {
            byte[] bytes = buffer;
            int limit = filled;
            while (at < limit) {
                int b = bytes[at];
                if (b < ' ' && b != '\t') {
                    if (b >= 0) {
                        break;
                    }
                    high = 1;
                }
                at++;
            }
            if (at < limit) {
                break;
            }
            if (at - next > longest) {
                throw tooLong();
            }
            int done = at - next;
            if (!fill()) {
                if (done == 0) {
                    return false;
                }
                at = filled;
                break;
            }
            at = next + done;
        }
        number++;
        if (at - next > longest) {
            number--;
            throw tooLong();
        }
        start = next;
        end = at;
        if (at < filled) {
            byte ending = buffer[at];
            if (ending != '\n' && ending != '\r') {
                throw control(ending);
            }
            afterReturn = ending == '\r';
            next = at + 1;
        } else {
            next = at;
        }
        if (high != 0) {
            text();
        }
        return true;
    }

    /** The buffer in which the present line lies, from {@link #start()} to {@link #end()}. */
    public byte[] bytes() {
        return buffer;
    }

    /** Where the present line starts in {@link #bytes()}. */
    public int start() {
        return start;
    }

    /** Where it ends, exclusive. */
    public int end() {
        return end;
    }

    /** Number of the present line, from 1. */
    public long number() {
        return number;
    }

    /** The present line as words. */
    public String text() throws SurveyException {
        return text(start, end);
    }

    /** A part of the present line as words. */
    public String text(int from, int to) throws SurveyException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(buffer, from, to - from))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            throw new SurveyException(
                    file,
                    number,
                    "the text is not UTF-8",
                    "Save the file as UTF-8; it was probably saved with an old Windows or Latin"
                            + " character set.");
        }
    }

    /** How much of the file has been read, 0 to 1. */
    public double done() {
        return length == 0 ? 1 : Math.min(1, (passed - (filled - next)) / (double) length);
    }

    /** Length of the file, bytes. */
    public long length() {
        return length;
    }

    @Override
    public void close() throws SurveyException {
        try {
            in.close();
        } catch (IOException failed) {
            throw cannotRead(file, failed);
        }
    }

    /** Reads on, keeping what is not used yet; false at the end of the file. */
    private boolean fill() throws SurveyException {
        if (ended) {
            return false;
        }
        int kept = filled - next;
        if (next > 0) {
            System.arraycopy(buffer, next, buffer, 0, kept);
        }
        next = 0;
        filled = kept;
        if (filled == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        try {
            int read = in.read(buffer, filled, buffer.length - filled);
            if (read <= 0) {
                ended = true;
                return false;
            }
            filled += read;
            passed += read;
            return true;
        } catch (IOException failed) {
            throw cannotRead(file, failed);
        }
    }

    private void refuseKnownBinaries() throws SurveyException {
        if (starts(0xEF, 0xBB, 0xBF)) {
            next = 3;
            return;
        }
        if (starts(0xFF, 0xFE) || starts(0xFE, 0xFF)) {
            throw new SurveyException(
                    file, 0, "the text is UTF-16, not UTF-8", "Save the file as UTF-8.");
        }
        String kind = knownBinary();
        if (kind != null) {
            throw new SurveyException(
                    file,
                    0,
                    "this is " + kind + ", not text",
                    "Export the points as delimited text (CSV), or name the right file.");
        }
    }

    private @Nullable String knownBinary() {
        if (starts('P', 'K', 3, 4)) {
            return "a zip archive or a spreadsheet";
        }
        if (starts(0x1F, 0x8B)) {
            return "a gzip archive";
        }
        if (starts('%', 'P', 'D', 'F')) {
            return "a PDF";
        }
        if (starts('L', 'A', 'S', 'F')) {
            return "a lidar point cloud (LAS)";
        }
        if (starts('I', 'I', 42, 0) || starts('M', 'M', 0, 42) || starts('I', 'I', 43, 0)) {
            return "a TIFF picture or elevation grid";
        }
        if (starts(0x89, 'P', 'N', 'G') || starts(0xFF, 0xD8, 0xFF)) {
            return "a picture";
        }
        if (starts(0xD0, 0xCF, 0x11, 0xE0)) {
            return "an old spreadsheet or document";
        }
        return null;
    }

    private boolean starts(int... bytes) {
        if (filled < bytes.length) {
            return false;
        }
        for (int k = 0; k < bytes.length; k++) {
            if ((buffer[k] & 0xFF) != bytes[k]) {
                return false;
            }
        }
        return true;
    }

    private SurveyException tooLong() {
        return new SurveyException(
                file,
                number + 1,
                "the line is longer than " + longest + " characters",
                "A survey row is far shorter: check that this is a text file with one point on each"
                        + " line.");
    }

    private SurveyException control(int character) {
        return new SurveyException(
                file,
                number,
                character == 0
                        ? "there is a zero byte in the text"
                        : "there is a control character (" + character + ") in the text",
                "This is not plain text: export the points again as delimited text in UTF-8.");
    }
}
