package lanewright.sheets.paint;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * PNG files (W3C Recommendation, second edition, 2003) of eight bits a channel, written by hand: no
 * plug-in of the machine's has a say in the bytes.
 */
final class PngFile {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int GREY = 0;
    private static final int COLOUR = 2;

    private PngFile() {}

    /** Grey pixels, one byte each, row by row from the top. */
    static byte[] grey(int columns, int rows, byte[] pixels) {
        return file(columns, rows, GREY, 1, pixels);
    }

    /** Coloured pixels, red, green and blue byte each, row by row from the top. */
    static byte[] colour(int columns, int rows, byte[] pixels) {
        return file(columns, rows, COLOUR, 3, pixels);
    }

    private static byte[] file(int columns, int rows, int type, int channels, byte[] pixels) {
        try {
            var head = new ByteArrayOutputStream();
            var numbers = new DataOutputStream(head);
            numbers.writeInt(columns);
            numbers.writeInt(rows);
            numbers.write(new byte[] {8, (byte) type, 0, 0, 0});
            var packed = new ByteArrayOutputStream();
            try (var deflater = new DeflaterOutputStream(packed)) {
                for (int row = 0; row < rows; row++) {
                    deflater.write(0);
                    deflater.write(pixels, row * columns * channels, columns * channels);
                }
            }
            var file = new ByteArrayOutputStream();
            file.write(SIGNATURE);
            chunk(file, "IHDR", head.toByteArray());
            chunk(file, "IDAT", packed.toByteArray());
            chunk(file, "IEND", new byte[0]);
            return file.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException("writing to memory failed", impossible);
        }
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] data)
            throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        var sum = new CRC32();
        sum.update(name);
        sum.update(data);
        var out = new DataOutputStream(file);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) sum.getValue());
    }
}
