package lanewright.desktop.look;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/**
 * A picture that was painted dot by dot, row by row, each either whole or not at all to be seen.
 * Not changed once it is handed to a {@link Picture}.
 */
public final class Pixels {

    private final BufferedImage image;
    private final int[] dots;

    /** A picture that cannot be seen at all. */
    public Pixels(int columns, int rows) {
        image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB_PRE);
        dots = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    /** Dots across. */
    public int columns() {
        return image.getWidth();
    }

    /** Dots down. */
    public int rows() {
        return image.getHeight();
    }

    /** Paints one dot, numbered by row, 0xRRGGBB. */
    public void set(int dot, int rgb) {
        dots[dot] = 0xFF000000 | rgb;
    }

    /** Takes over so many dots of another picture, from one of its dots to one of this. */
    public void take(Pixels from, int first, int to, int count) {
        System.arraycopy(from.dots, first, dots, to, count);
    }

    BufferedImage image() {
        return image;
    }
}
