package lanewright.desktop.look;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.drawing.Style;
import lanewright.sheets.paint.Brush;
import lanewright.sheets.paint.Painting;

/** Paints a drawing on the screen, one pixel to the point. */
public final class CanvasBrush implements Brush {

    /** Corners that lie nearer than this to the line without them are not seen, px. */
    private static final Thin THIN = new Thin(0.15);

    private final GraphicsContext g;
    private final Theme theme;

    private final double cover;
    private boolean begun;

    private CanvasBrush(GraphicsContext g, Theme theme, double cover) {
        this.g = g;
        this.theme = theme;
        this.cover = cover;
    }

    /** Paints {@code drawing} as {@code theme} has it. */
    public static void paint(GraphicsContext g, Theme theme, Drawing drawing) {
        paint(g, theme, drawing, 1);
    }

    /**
     * Paints {@code drawing} over something that shall be seen through its areas.
     *
     * @param cover how much areas hide, 0 to 1
     */
    public static void paint(GraphicsContext g, Theme theme, Drawing drawing, double cover) {
        try {
            Painting.paint(drawing, new CanvasBrush(g, theme, cover));
        } catch (IOException never) {
            throw new UncheckedIOException("a canvas failed to be painted", never);
        }
    }

    @Override
    public void fill(List<Outline> rings, int colour) {
        g.setFill(theme.colour(colour));
        path(rings);
        g.setFillRule(FillRule.EVEN_ODD);
        g.setGlobalAlpha(cover);
        g.fill();
        g.setGlobalAlpha(1);
    }

    @Override
    public void stroke(
            List<Outline> lines, int colour, double width, Style.Dash dash, boolean round) {
        g.setStroke(theme.colour(colour));
        g.setLineWidth(width);
        g.setLineDashes(dash.lengths());
        g.setLineCap(round ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
        // Round joins of a thin line take long to paint and look the same.
        g.setLineJoin(width < 2 ? StrokeLineJoin.BEVEL : StrokeLineJoin.ROUND);
        path(lines);
        g.stroke();
    }

    @Override
    public void cover(List<Outline> rings, Box seen, Pattern pattern, int colour, double width) {
        var scene = g.getCanvas().getScene();
        double sharp = scene == null ? 1 : scene.getWindow().getOutputScaleX();
        g.setFill(Tiles.of(pattern, theme.colour(colour), width, sharp));
        path(rings);
        g.setFillRule(FillRule.EVEN_ODD);
        g.fill();
    }

    private void path(List<Outline> lines) {
        g.beginPath();
        for (Outline line : lines) {
            begun = false;
            THIN.follow(line, this::to);
            if (line.isClosed()) {
                g.closePath();
            }
        }
    }

    private void to(double x, double y) {
        if (begun) {
            g.lineTo(x, y);
        } else {
            g.moveTo(x, y);
            begun = true;
        }
    }

    @Override
    public void words(Mark.Words words, int colour) {
        g.save();
        g.setFill(theme.colour(colour));
        g.setFont(Type.at(words.size(), words.bold()));
        g.translate(words.x(), words.y());
        g.rotate(words.turn());
        g.fillText(words.text(), -words.anchor().part() * words.width(), 0);
        g.restore();
    }

    @Override
    public void picture(Mark.Picture picture) {
        int columns = picture.columns();
        int rows = picture.rows();
        int[] pixels = new int[columns * rows];
        for (int i = 0; i < pixels.length; i++) {
            int grey = picture.grey().grey(i);
            int seen = theme == Theme.DARK ? 255 - grey + 30 : grey;
            pixels[i] = 0xFF000000 | seen << 16 | seen << 8 | seen;
        }
        var image = new WritableImage(columns, rows);
        image.getPixelWriter()
                .setPixels(
                        0, 0, columns, rows, PixelFormat.getIntArgbInstance(), pixels, 0, columns);
        Box place = picture.place();
        g.drawImage(image, place.x(), place.y(), place.width(), place.height());
    }

    /** Holds to the whole pixels around: the canvas is quick to clip to those only. */
    @Override
    public void hold(List<Outline> rings) {
        Box box = Box.around(rings);
        double left = Math.floor(box.x());
        double top = Math.floor(box.y());
        g.save();
        g.beginPath();
        g.rect(left, top, Math.ceil(box.right()) - left, Math.ceil(box.bottom()) - top);
        g.clip();
    }

    @Override
    public void release() {
        g.restore();
    }
}
