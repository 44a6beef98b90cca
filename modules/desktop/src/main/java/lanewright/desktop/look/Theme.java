package lanewright.desktop.look;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.Node;
import javafx.scene.paint.Color;

/**
 * Light as paper, or dark for the evening. Roles keep the colours of {@code Style}; in the dark
 * each is turned over in lightness, so that ink becomes chalk and every hue stays what it means.
 */
@SuppressWarnings("ImmutableEnumChecker") // a memory of colours that never change
public enum Theme {
    /** Dark ink on warm paper. */
    LIGHT,
    /** Pale ink on a dark ground. */
    DARK;

    private static final double DARKEST = 0.13;
    private static final double PALEST = 0.93;

    private final Map<Integer, Color> colours = new ConcurrentHashMap<>();

    /** The colour on the screen of a colour on paper, 0xRRGGBB. */
    public Color colour(int paper) {
        return colours.computeIfAbsent(paper, this::turned);
    }

    /** The same, 0xRRGGBB. */
    public int rgb(int paper) {
        Color colour = colour(paper);
        return part(colour.getRed()) << 16 | part(colour.getGreen()) << 8 | part(colour.getBlue());
    }

    private static int part(double of) {
        return (int) Math.round(of * 255);
    }

    /** Gives a part of the window, and all in it, the colours of this theme. */
    public void dress(Node part) {
        part.getStyleClass().remove("dark");
        if (this == DARK) {
            part.getStyleClass().add("dark");
        }
    }

    private Color turned(int paper) {
        Color colour = Color.rgb(paper >> 16 & 255, paper >> 8 & 255, paper & 255);
        if (this == LIGHT) {
            return colour;
        }
        double max = Math.max(colour.getRed(), Math.max(colour.getGreen(), colour.getBlue()));
        double min = Math.min(colour.getRed(), Math.min(colour.getGreen(), colour.getBlue()));
        double lightness = (max + min) / 2;
        double wanted = DARKEST + (PALEST - DARKEST) * (1 - lightness);
        return lit(colour, lightness, wanted);
    }

    /** The same hue with another lightness (of hue, saturation, lightness). */
    private static Color lit(Color colour, double from, double to) {
        double room = from <= 0.5 ? from : 1 - from;
        double wide = to <= 0.5 ? to : 1 - to;
        double keep = room <= 0 ? 0 : wide / room;
        return Color.color(
                bounded(to + (colour.getRed() - from) * keep),
                bounded(to + (colour.getGreen() - from) * keep),
                bounded(to + (colour.getBlue() - from) * keep));
    }

    private static double bounded(double part) {
        return Math.max(0, Math.min(1, part));
    }
}
