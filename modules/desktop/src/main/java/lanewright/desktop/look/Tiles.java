package lanewright.desktop.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;

/**
 * Patterns as small pictures that repeat. A canvas fills an area with one in a single stroke of
 * work; its lines one by one, clipped to the area, take it a thousand times as long, for it paints
 * all of itself again for each area that it clips to.
 */
final class Tiles {

    /** So many periods at most in a tile, to have it end near a whole pixel. */
    private static final int MOST = 12;

    private static final Map<Key, ImagePattern> MADE = new ConcurrentHashMap<>();

    private record Key(Pattern pattern, Color colour, double width, double sharp) {}

    private Tiles() {}

    /**
     * A pattern to fill with, on the one grid that all areas share.
     *
     * @param width of its lines, px
     * @param sharp dots of the screen to a pixel, over 0
     */
    static ImagePattern of(Pattern pattern, Color colour, double width, double sharp) {
        return MADE.computeIfAbsent(new Key(pattern, colour, width, sharp), Tiles::made);
    }

    private static ImagePattern made(Key key) {
        double wide = whole(key.pattern().wide(), key.sharp());
        double tall = whole(key.pattern().tall(), key.sharp());
        int columns = (int) Math.max(1, Math.round(wide * key.sharp()));
        int rows = (int) Math.max(1, Math.round(tall * key.sharp()));
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(
                    RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.scale(columns / wide, rows / tall);
            Color colour = key.colour();
            graphics.setColor(
                    new java.awt.Color(
                            (float) colour.getRed(),
                            (float) colour.getGreen(),
                            (float) colour.getBlue()));
            graphics.setStroke(
                    new BasicStroke(
                            (float) key.width(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            double around = 2 * Math.max(key.pattern().wide(), key.pattern().tall());
            Path2D path = new Path2D.Double();
            key.pattern()
                    .cover(
                            -around,
                            -around,
                            wide + around,
                            tall + around,
                            piece -> add(path, piece));
            graphics.draw(path);
        } finally {
            graphics.dispose();
        }
        var tile = new WritableImage(columns, rows);
        tile.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        columns,
                        rows,
                        PixelFormat.getIntArgbInstance(),
                        image.getRGB(0, 0, columns, rows, null, 0, columns),
                        0,
                        columns);
        return new ImagePattern(tile, 0, 0, wide, tall, false);
    }

    /** Few periods together that come nearest to whole dots of the screen. */
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
