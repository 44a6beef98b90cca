package lanewright.sheets.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Style;

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
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(
                    RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
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

    private static final class GraphicsBrush implements Brush {

        private final Graphics2D graphics;
        private final Deque<Shape> seen = new ArrayDeque<>();

        GraphicsBrush(Graphics2D graphics, Drawing drawing) {
            this.graphics = graphics;
            graphics.setClip(new Rectangle2D.Double(0, 0, drawing.width(), drawing.height()));
        }

        @Override
        public void fill(List<Outline> rings, int colour) {
            graphics.setColor(new Color(colour));
            graphics.fill(path(rings));
        }

        @Override
        public void stroke(
                List<Outline> lines, int colour, double width, Style.Dash dash, boolean round) {
            graphics.setColor(new Color(colour));
            double[] lengths = dash.lengths();
            float[] gaps = new float[lengths.length];
            for (int i = 0; i < gaps.length; i++) {
                gaps[i] = (float) lengths[i];
            }
            graphics.setStroke(
                    new BasicStroke(
                            (float) width,
                            round ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
                            BasicStroke.JOIN_ROUND,
                            10,
                            gaps.length == 0 ? null : gaps,
                            0));
            graphics.draw(path(lines));
        }

        private static Path2D path(List<Outline> lines) {
            var path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            for (Outline line : lines) {
                path.moveTo(line.x(0), line.y(0));
                for (int i = 1; i < line.size(); i++) {
                    path.lineTo(line.x(i), line.y(i));
                }
                if (line.isClosed()) {
                    path.closePath();
                }
            }
            return path;
        }

        @Override
        public void words(Mark.Words words, int colour) {
            graphics.setColor(new Color(colour));
            Face face = Face.of(words.bold());
            AffineTransform before = graphics.getTransform();
            graphics.translate(words.x(), words.y());
            graphics.rotate(StrictMath.toRadians(words.turn()));
            graphics.scale(words.size(), -words.size());
            graphics.translate(-words.anchor().part() * words.width() / words.size(), 0);
            for (int point : words.text().codePoints().toArray()) {
                graphics.fill(face.shape(point));
                graphics.translate(face.advance(point), 0);
            }
            graphics.setTransform(before);
        }

        @Override
        public void picture(Mark.Picture picture) {
            var image =
                    new BufferedImage(
                            picture.columns(), picture.rows(), BufferedImage.TYPE_INT_RGB);
            for (int row = 0; row < picture.rows(); row++) {
                for (int column = 0; column < picture.columns(); column++) {
                    int grey = picture.grey().grey(row * picture.columns() + column);
                    image.setRGB(column, row, grey << 16 | grey << 8 | grey);
                }
            }
            Box place = picture.place();
            var to = AffineTransform.getTranslateInstance(place.x(), place.y());
            to.scale(place.width() / picture.columns(), place.height() / picture.rows());
            graphics.drawImage(image, to, null);
        }

        @Override
        public void hold(List<Outline> rings) {
            seen.push(graphics.getClip());
            graphics.clip(path(rings));
        }

        @Override
        public void release() {
            graphics.setClip(seen.pop());
        }
    }
}
