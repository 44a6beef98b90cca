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
 * Paints a drawing into a picture in memory. Letters are filled outlines; no font of the machine is
 * used. For one thread.
 */
public class GraphicsBrush implements Brush {

    private final Graphics2D graphics;
    private final Deque<Shape> seen = new ArrayDeque<>();

    /**
     * A brush.
     *
     * @param graphics what is painted into; its scale is kept, its clip becomes the drawing's
     */
    public GraphicsBrush(Graphics2D graphics, Drawing drawing) {
        this.graphics = graphics;
        graphics.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(
                RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(
                RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.clip(new Rectangle2D.Double(0, 0, drawing.width(), drawing.height()));
    }

    /** What is painted into. */
    protected final Graphics2D graphics() {
        return graphics;
    }

    /** The colour that stands for one on paper, 0xRRGGBB. */
    protected Color colour(int paper) {
        return new Color(paper);
    }

    /** The grey that stands for one on paper, 0 black to 255 white. */
    protected int grey(int paper) {
        return paper;
    }

    /** How the lines of a stroke meet: one of the joins of {@link BasicStroke}. */
    protected int join(double width) {
        return BasicStroke.JOIN_ROUND;
    }

    /** Lines and rings as one path to fill, even-odd, or to stroke. */
    protected Path2D path(List<Outline> lines) {
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
    public void fill(List<Outline> rings, int colour) {
        graphics.setColor(colour(colour));
        graphics.fill(path(rings));
    }

    @Override
    public void stroke(
            List<Outline> lines, int colour, double width, Style.Dash dash, boolean round) {
        graphics.setColor(colour(colour));
        double[] lengths = dash.lengths();
        float[] gaps = new float[lengths.length];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = (float) lengths[i];
        }
        graphics.setStroke(
                new BasicStroke(
                        (float) width,
                        round ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
                        join(width),
                        10,
                        gaps.length == 0 ? null : gaps,
                        0));
        graphics.draw(path(lines));
    }

    @Override
    public void words(Mark.Words words, int colour) {
        graphics.setColor(colour(colour));
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
                new BufferedImage(picture.columns(), picture.rows(), BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < picture.rows(); row++) {
            for (int column = 0; column < picture.columns(); column++) {
                int grey = grey(picture.grey().grey(row * picture.columns() + column));
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
        hold(path(rings));
    }

    /** From here on only what lies in a shape is seen, until {@link #release()}. */
    protected final void hold(Shape shape) {
        seen.push(graphics.getClip());
        graphics.clip(shape);
    }

    @Override
    public void release() {
        graphics.setClip(seen.pop());
    }
}
