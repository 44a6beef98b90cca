package lanewright.sheets.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;

/** A pattern as a small picture that repeats, for painters that fill with pictures. */
public final class PatternTile {

    /** So many periods at most in a tile, to have it end near a whole dot. */
    private static final int MOST = 12;

    private final double wide;
    private final double tall;
    private final BufferedImage image;

    /**
     * A tile on the grid that all areas share.
     *
     * @param colour of its lines, 0xRRGGBB
     * @param width of its lines, pt
     * @param sharp dots to a pt, over 0
     */
    public PatternTile(Pattern pattern, int colour, double width, double sharp) {
        wide = whole(pattern.wide(), sharp);
        tall = whole(pattern.tall(), sharp);
        int columns = (int) Math.max(1, Math.round(wide * sharp));
        int rows = (int) Math.max(1, Math.round(tall * sharp));
        image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(
                    RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.scale(columns / wide, rows / tall);
            graphics.setColor(new Color(colour));
            graphics.setStroke(
                    new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            double around = 2 * Math.max(pattern.wide(), pattern.tall());
            Path2D path = new Path2D.Double();
            pattern.cover(
                    -around, -around, wide + around, tall + around, piece -> add(path, piece));
            graphics.draw(path);
        } finally {
            graphics.dispose();
        }
    }

    /** What fills an area with it. */
    public TexturePaint paint() {
        return new TexturePaint(image, new Rectangle2D.Double(0, 0, wide, tall));
    }

    /** Few periods together that come nearest to whole dots. */
    private static double whole(double period, double sharp) {
        double best = period;
        double bestOff = 1;
        for (int k = 1; k <= MOST; k++) {
            double dots = k * period * sharp;
            double off = Math.abs(dots - Math.rint(dots));
            if (off < bestOff - 1e-6) {
                bestOff = off;
                best = k * period;
            }
        }
        return best;
    }

    private static void add(Path2D path, Outline piece) {
        path.moveTo(piece.x(0), piece.y(0));
        for (int i = 1; i < piece.size(); i++) {
            path.lineTo(piece.x(i), piece.y(i));
        }
        if (piece.isClosed()) {
            path.closePath();
        }
    }
}
