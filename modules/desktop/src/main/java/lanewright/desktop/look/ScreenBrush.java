package lanewright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.paint.GraphicsBrush;

/** Paints a drawing for the screen, one pixel to the point, in the colours of a theme. */
final class ScreenBrush extends GraphicsBrush {

    /** Corners that lie nearer than this to the line without them are not seen, px. */
    private static final Thin THIN = new Thin(0.15);

    /** A box less wide or tall than this is painted softly, or it could be missed, px. */
    private static final double LEAST_SHARP = 3;

    private final Theme theme;
    private final double cover;
    private final double sharp;

    /**
     * A brush.
     *
     * @param cover how much areas hide of what lies below, 0 to 1
     * @param sharp dots of the screen to a pixel of the drawing, for patterns
     */
    ScreenBrush(Graphics2D graphics, Drawing drawing, Theme theme, double cover, double sharp) {
        super(graphics, drawing);
        this.theme = theme;
        this.cover = cover;
        this.sharp = sharp;
    }

    @Override
    protected Color colour(int paper) {
        return new Color(theme.rgb(paper));
    }

    @Override
    protected int grey(int paper) {
        return theme == Theme.DARK ? Math.min(255, 255 - paper + 30) : paper;
    }

    /** Round joins of a thin line take long to paint and look the same. */
    @Override
    protected int join(double width) {
        return width < 2 ? BasicStroke.JOIN_BEVEL : BasicStroke.JOIN_ROUND;
    }

    @Override
    protected Path2D path(List<Outline> lines) {
        var path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (Outline line : lines) {
            path.moveTo(line.x(0), line.y(0));
            THIN.follow(line, path::lineTo);
            if (line.isClosed()) {
                path.closePath();
            }
        }
        return path;
    }

    @Override
    public void fill(List<Outline> rings, int colour) {
        Color whole = colour(colour);
        int alpha = (int) Math.round(255 * cover);
        graphics().setColor(new Color(whole.getRed(), whole.getGreen(), whole.getBlue(), alpha));
        Box box = rings.size() == 1 ? rings.get(0).asBox() : null;
        if (box == null || Math.min(box.width(), box.height()) < LEAST_SHARP) {
            graphics().fill(path(rings));
        } else {
            // On whole dots, as what words stand on looks best and is painted soonest.
            graphics()
                    .setRenderingHint(
                            RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            graphics().fill(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
            graphics()
                    .setRenderingHint(
                            RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        }
    }

    @Override
    public void cover(List<Outline> rings, Box seen, Pattern pattern, int colour, double width) {
        graphics().setPaint(Tiles.of(pattern, theme.rgb(colour), width, sharp));
        graphics().fill(path(rings));
    }

    @Override
    public void words(Mark.Words words, int colour) {
        if (!Letters.write(graphics(), words, theme.rgb(colour))) {
            graphics().setColor(colour(colour));
            graphics().fill(Letters.path(words));
        }
    }

    /** Holds to the whole pixels around: a clip of any other form takes long. */
    @Override
    public void hold(List<Outline> rings) {
        Box box = Box.around(rings);
        double left = Math.floor(box.x());
        double top = Math.floor(box.y());
        hold(
                new Rectangle2D.Double(
                        left, top, Math.ceil(box.right()) - left, Math.ceil(box.bottom()) - top));
    }
}
