package lanewright.desktop.look;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.paint.PatternTile;

/**
 * Patterns as small pictures that repeat. A canvas fills an area with one in a single stroke of
 * work; its lines one by one, clipped to the area, take it a thousand times as long, for it paints
 * all of itself again for each area that it clips to.
 */
final class Tiles {

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
        Color colour = key.colour();
        int rgb =
                part(colour.getRed()) << 16 | part(colour.getGreen()) << 8 | part(colour.getBlue());
        var tile = new PatternTile(key.pattern(), rgb, key.width(), key.sharp());
        var image = new WritableImage(tile.columns(), tile.rows());
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        tile.columns(),
                        tile.rows(),
                        PixelFormat.getIntArgbInstance(),
                        tile.pixels(),
                        0,
                        tile.columns());
        return new ImagePattern(image, 0, 0, tile.wide(), tile.tall(), false);
    }

    private static int part(double of) {
        return (int) Math.round(of * 255);
    }
}
