package lanewright.sheets.paint;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import lanewright.sheets.drawing.Drawing;

/**
 * Paints a drawing into a PNG file. Letters are filled outlines; no font of the machine is used.
 */
public final class PngPicture {

    private static final double POINTS_PER_INCH = 72;

    private PngPicture() {}

    /**
     * The drawing as a PNG file on white.
     *
     * @param dotsPerInch 20 to 600
     */
    public static byte[] of(Drawing drawing, double dotsPerInch) {
        if (!(dotsPerInch >= 20 && dotsPerInch <= 600)) {
            throw new IllegalArgumentException("dots per inch must be 20 to 600: " + dotsPerInch);
        }
        double scale = dotsPerInch / POINTS_PER_INCH;
        int columns = (int) Math.ceil(drawing.width() * scale);
        int rows = (int) Math.ceil(drawing.height() * scale);
        var image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, columns, rows);
            graphics.scale(scale, scale);
            Painting.paint(drawing, new GraphicsBrush(graphics, drawing));
        } catch (IOException impossible) {
            throw new IllegalStateException("painting in memory failed", impossible);
        } finally {
            graphics.dispose();
        }
        int[] colours = image.getRGB(0, 0, columns, rows, null, 0, columns);
        byte[] pixels = new byte[3 * colours.length];
        for (int i = 0; i < colours.length; i++) {
            pixels[3 * i] = (byte) (colours[i] >> 16);
            pixels[3 * i + 1] = (byte) (colours[i] >> 8);
            pixels[3 * i + 2] = (byte) colours[i];
        }
        return PngFile.colour(columns, rows, pixels);
    }
}
