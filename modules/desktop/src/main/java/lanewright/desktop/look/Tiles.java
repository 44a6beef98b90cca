package lanewright.desktop.look;

import java.awt.TexturePaint;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.paint.PatternTile;

/**
 * Patterns as small pictures that repeat: an area is filled with one in a single stroke of work,
 * where its lines one by one, clipped to the area, would take many times as long.
 */
final class Tiles {

    private static final Map<Key, TexturePaint> MADE = new ConcurrentHashMap<>();

    private record Key(Pattern pattern, int colour, double width, double sharp) {}

    private Tiles() {}

    /**
     * A pattern to fill with, on the one grid that all areas share.
     *
     * @param colour 0xRRGGBB
     * @param width of its lines, px
     * @param sharp dots of the screen to a pixel, over 0
     */
    static TexturePaint of(Pattern pattern, int colour, double width, double sharp) {
        return MADE.computeIfAbsent(
                new Key(pattern, colour, width, sharp),
                key ->
                        new PatternTile(key.pattern(), key.colour(), key.width(), key.sharp())
                                .paint());
    }
}
