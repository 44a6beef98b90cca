package lanewright.survey.read;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Lines;

/**
 * Whether a TIFF file holds all the strips or tiles that it says it holds. The library that reads
 * the cells takes those beyond the end of the file for zeros and says nothing.
 *
 * <p>TIFF Revision 6.0 (Adobe, 1992), section 2, and the 64-bit form of it, from memory.
 */
final class TiffStrips {

    private static final int WIDTH = 256;
    private static final int HEIGHT = 257;
    private static final int BITS = 258;
    private static final int COMPRESSION = 259;
    private static final int SAMPLES = 277;
    private static final int NOT_COMPRESSED = 1;
    private static final int STRIP_OFFSETS = 273;
    private static final int STRIP_LENGTHS = 279;
    private static final int TILE_OFFSETS = 324;
    private static final int TILE_LENGTHS = 325;

    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int LONG8 = 16;

    /**
     * More strips or tiles than cells in the largest grid, or more tags than there are, is no TIFF.
     */
    private static final long MOST_PARTS = Grids.MOST_CELLS;

    private static final long MOST_TAGS = 4096;

    private final Path path;
    private final SeekableByteChannel in;
    private final ByteOrder order;
    private final boolean big;

    /** Size of the picture in cells, bits of a value, values of a cell, kind of compression. */
    private long width;

    private long height;
    private long bits = 1;
    private long samples = 1;
    private long compression = NOT_COMPRESSED;

    private long offsetsAt = -1;
    private int offsetsType;
    private long offsetsCount;
    private long lengthsAt = -1;
    private int lengthsType;
    private long lengthsCount;

    private TiffStrips(Path path, SeekableByteChannel in) throws IOException {
        this.path = path;
        this.in = in;
        ByteBuffer head = bytes(0, 4, ByteOrder.BIG_ENDIAN);
        this.order = head.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        this.big = bytes(2, 2, order).getShort() == 43;
    }

    /**
     * Refuses a TIFF that is cut off.
     *
     * @throws SurveyException if a strip, a tile or the list of them lies beyond the end of the
     *     file
     */
    static void refuseIfCutOff(Path path) throws SurveyException {
        try (SeekableByteChannel in = Files.newByteChannel(path)) {
            new TiffStrips(path, in).check();
        } catch (EOFException cutOff) {
            throw cutOff(path);
        } catch (IOException failed) {
            throw Lines.cannotRead(path, failed);
        }
    }

    private static SurveyException cutOff(Path path) {
        return new SurveyException(
                path,
                0,
                "the TIFF is cut off: it says that it holds more than there is",
                "Copy it or get it again, in whole.");
    }

    private void check() throws IOException, SurveyException {
        long directory = big ? number(8, LONG8) : number(4, LONG);
        long tags = big ? number(directory, LONG8) : number(directory, SHORT);
        if (tags < 0 || tags > MOST_TAGS) {
            throw cutOff(path);
        }
        long first = directory + (big ? 8 : 2);
        for (int k = 0; k < tags; k++) {
            tag(first + (long) k * (big ? 20 : 12));
        }
        if (offsetsAt < 0 || lengthsAt < 0 || offsetsCount != lengthsCount) {
            throw new SurveyException(
                    path,
                    0,
                    "the TIFF does not say where its cells lie",
                    "Write it again as a plain GeoTIFF of heights.");
        }
        if (offsetsCount > MOST_PARTS) {
            throw cutOff(path);
        }
        double held = 0;
        for (long k = 0; k < offsetsCount; k++) {
            long offset = number(offsetsAt + k * size(offsetsType), offsetsType);
            long length = number(lengthsAt + k * size(lengthsType), lengthsType);
            if (offset < 0 || length < 0 || offset > in.size() - length) {
                throw cutOff(path);
            }
            held += length;
        }
        double said = (double) width * height * samples * bits / 8;
        if (compression == NOT_COMPRESSED && held < said) {
            throw cutOff(path);
        }
    }

    private void tag(long at) throws IOException {
        int name = (int) number(at, SHORT);
        int type = (int) number(at + 2, SHORT);
        long count = number(at + 4, big ? LONG8 : LONG);
        long value = at + (big ? 12 : 8);
        boolean inside = count * size(type) <= (big ? 8 : 4);
        long where = inside ? value : number(value, big ? LONG8 : LONG);
        switch (name) {
            case WIDTH -> width = number(where, type);
            case HEIGHT -> height = number(where, type);
            case BITS -> bits = number(where, type);
            case COMPRESSION -> compression = number(where, type);
            case SAMPLES -> samples = number(where, type);
            default -> list(name, type, count, where);
        }
    }

    private void list(int name, int type, long count, long where) {
        if (name == STRIP_OFFSETS || name == TILE_OFFSETS) {
            offsetsAt = where;
            offsetsType = type;
            offsetsCount = count;
        } else if (name == STRIP_LENGTHS || name == TILE_LENGTHS) {
            lengthsAt = where;
            lengthsType = type;
            lengthsCount = count;
        }
    }

    private static int size(int type) {
        return switch (type) {
            case SHORT -> 2;
            case LONG8 -> 8;
            default -> 4;
        };
    }

    private long number(long at, int type) throws IOException {
        ByteBuffer bytes = bytes(at, size(type), order);
        return switch (type) {
            case SHORT -> Short.toUnsignedLong(bytes.getShort());
            case LONG8 -> bytes.getLong();
            default -> Integer.toUnsignedLong(bytes.getInt());
        };
    }

    private ByteBuffer bytes(long at, int count, ByteOrder in) throws IOException {
        if (at < 0) {
            throw new EOFException("byte " + at);
        }
        ByteBuffer bytes = ByteBuffer.allocate(count).order(in);
        this.in.position(at);
        while (bytes.hasRemaining()) {
            if (this.in.read(bytes) < 0) {
                throw new EOFException("byte " + at);
            }
        }
        return bytes.flip();
    }
}
