package lanewright.desktop.look;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/**
 * Dots of which the screen shows a picture, and into which another thread paints it: first the one,
 * then the other, never both at once.
 */
final class Surface {

    private final double sharp;
    private final BufferedImage dots;
    private final PixelBuffer<IntBuffer> buffer;
    private final WritableImage image;

    /**
     * An empty one.
     *
     * @param width px
     * @param height px
     * @param sharp dots of the screen to a pixel
     */
    Surface(double width, double height, double sharp) {
        this.sharp = sharp;
        int columns = (int) Math.max(1, Math.ceil(width * sharp));
        int rows = (int) Math.max(1, Math.ceil(height * sharp));
        dots = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB_PRE);
        int[] data = ((DataBufferInt) dots.getRaster().getDataBuffer()).getData();
        buffer =
                new PixelBuffer<>(
                        columns, rows, IntBuffer.wrap(data), PixelFormat.getIntArgbPreInstance());
        image = new WritableImage(buffer);
    }

    /** A surface with a picture on it. */
    static Surface of(Picture picture, double width, double height, double sharp) {
        var surface = new Surface(width, height, sharp);
        surface.paint(picture, width, height);
        return surface;
    }

    /** Whether it has the dots for a board of such a size. */
    boolean fits(double width, double height, double dotsToPixel) {
        return sharp == dotsToPixel
                && dots.getWidth() == (int) Math.max(1, Math.ceil(width * sharp))
                && dots.getHeight() == (int) Math.max(1, Math.ceil(height * sharp));
    }

    /** Dots of the screen to a pixel. */
    double sharp() {
        return sharp;
    }

    /** Paints a picture in place of what was there. */
    void paint(Picture picture, double width, double height) {
        Graphics2D graphics = dots.createGraphics();
        try {
            graphics.setBackground(new Color(0, true));
            graphics.clearRect(0, 0, dots.getWidth(), dots.getHeight());
            graphics.scale(sharp, sharp);
            picture.paint(graphics, width, height, sharp);
        } catch (IOException never) {
            throw new UncheckedIOException("painting in memory failed", never);
        } finally {
            graphics.dispose();
        }
    }

    /** What the screen shows, on its thread, once something was painted. */
    Image image() {
        buffer.updateBuffer(all -> null);
        return image;
    }
}
