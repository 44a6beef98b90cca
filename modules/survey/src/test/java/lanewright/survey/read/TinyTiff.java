package lanewright.survey.read;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * Makes small TIFF files by hand (TIFF Revision 6.0, Adobe 1992, section 2), to say what they like.
 */
final class TinyTiff {

    private static final int SHORT = 3;
    private static final int LONG = 4;

    private TinyTiff() {}

    /**
     * A TIFF that claims a size and holds 64 bytes of picture (0 to 63), with a scale and a tie
     * point.
     *
     * @param width columns claimed
     * @param height rows claimed
     * @param bands values for each cell
     * @param rowsPerStrip rows in a strip
     */
    static byte[] of(int width, int height, int bands, int rowsPerStrip) {
        return of(width, height, bands, rowsPerStrip, 1);
    }

    /** The same with a kind of compression claimed: 1 for none, 8 for deflate. */
    static byte[] of(int width, int height, int bands, int rowsPerStrip, int compression) {
        ByteBuffer tiff = ByteBuffer.allocate(512).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        int strips = (height + rowsPerStrip - 1) / rowsPerStrip;
        if (strips != 1) {
            throw new IllegalArgumentException("one strip only");
        }
        int[][] tags = {
            {256, LONG, 1, width},
            {257, LONG, 1, height},
            {258, SHORT, 1, 8},
            {259, SHORT, 1, compression},
            {262, SHORT, 1, bands == 3 ? 2 : 1},
            {273, LONG, 1, 400},
            {277, SHORT, 1, bands},
            {278, LONG, 1, rowsPerStrip},
            {279, LONG, 1, 64},
            {33550, 12, 3, 300},
            {33922, 12, 6, 330}
        };
        if (bands == 3) {
            tags[2] = new int[] {258, SHORT, 3, 290};
        }
        tiff.putShort((short) tags.length);
        for (int[] tag : tags) {
            tiff.putShort((short) tag[0]).putShort((short) tag[1]).putInt(tag[2]).putInt(tag[3]);
        }
        tiff.putInt(0);
        tiff.position(290);
        tiff.putShort((short) 8).putShort((short) 8).putShort((short) 8);
        tiff.position(300);
        tiff.putDouble(10).putDouble(10).putDouble(0);
        tiff.position(330);
        tiff.putDouble(0).putDouble(0).putDouble(0);
        tiff.putDouble(100).putDouble(200).putDouble(0);
        tiff.position(400);
        for (int k = 0; k < 64; k++) {
            tiff.put((byte) k);
        }
        return Arrays.copyOf(tiff.array(), 464);
    }
}
