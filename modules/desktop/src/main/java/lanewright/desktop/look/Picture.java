package lanewright.desktop.look;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.image.Image;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.paint.Painting;

/**
 * What a board shows, from the bottom up: told on the thread of the screen, painted on another.
 * Whoever hands it over does not change it any more, nor what it holds.
 */
public final class Picture {

    private interface Layer {
        void paint(Graphics2D graphics, double width, double height, double sharp)
                throws IOException;
    }

    private final Theme theme;
    private final List<Layer> layers = new ArrayList<>();
    private Runnable shown = () -> {};

    /** Nothing yet, in the colours of a theme. */
    public Picture(Theme theme) {
        this.theme = theme;
    }

    /** Covers all with a colour on paper, 0xRRGGBB. */
    public Picture ground(int paper) {
        return table(theme.rgb(paper));
    }

    /** Covers all with a colour on the screen, 0xRRGGBB. */
    public Picture table(int rgb) {
        layers.add(
                (graphics, width, height, sharp) -> {
                    graphics.setColor(new Color(rgb));
                    graphics.fillRect(0, 0, (int) Math.ceil(width), (int) Math.ceil(height));
                });
        return this;
    }

    /** A drawing, a pixel to the point. */
    public Picture drawing(Drawing drawing) {
        return drawing(drawing, 1);
    }

    /**
     * A drawing over something that shall be seen through its areas.
     *
     * @param cover how much areas hide, 0 to 1
     */
    public Picture drawing(Drawing drawing, double cover) {
        layers.add(
                (graphics, width, height, sharp) ->
                        Painting.paint(
                                drawing, new ScreenBrush(graphics, drawing, theme, cover, sharp)));
        return this;
    }

    /**
     * A drawing at another size.
     *
     * @param left of its left top, px
     * @param top likewise
     * @param larger px to the point
     */
    public Picture drawing(Drawing drawing, double left, double top, double larger) {
        layers.add(
                (graphics, width, height, sharp) -> {
                    var at = (Graphics2D) graphics.create();
                    at.translate(left, top);
                    at.scale(larger, larger);
                    Painting.paint(drawing, new ScreenBrush(at, drawing, theme, 1, sharp * larger));
                    at.dispose();
                });
        return this;
    }

    /** What an empty board says of itself. */
    public Picture note(String words) {
        var pen = new Pen();
        pen.words(Role.NOTE, words, 16, 24, Type.BODY, Anchor.START);
        return drawing(pen.drawing(32 + Face.of(false).width(words, Type.BODY), 40));
    }

    /**
     * Dots of a size of two pixels.
     *
     * @param places the middle of each, x and y in turn, px
     * @param paper their colour on paper, 0xRRGGBB
     */
    public Picture dots(double[] places, int paper) {
        layers.add(
                (graphics, width, height, sharp) -> {
                    graphics.setColor(new Color(theme.rgb(paper)));
                    for (int i = 0; i < places.length; i += 2) {
                        graphics.fillRect(
                                (int) Math.round(places[i]) - 1,
                                (int) Math.round(places[i + 1]) - 1,
                                2,
                                2);
                    }
                });
        return this;
    }

    /**
     * Pixels in a place. With a cover of one, those that are not to be seen hide it too.
     *
     * @param place px
     * @param cover how much they hide, 0 to 1
     * @param smooth whether what is shown larger has soft dots
     */
    public Picture pixels(Pixels pixels, Box place, double cover, boolean smooth) {
        layers.add(
                (graphics, width, height, sharp) -> {
                    graphics.setRenderingHint(
                            RenderingHints.KEY_INTERPOLATION,
                            smooth
                                    ? RenderingHints.VALUE_INTERPOLATION_BILINEAR
                                    : RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
                    // What hides all is laid down as it is, which is the quickest.
                    graphics.setComposite(
                            cover < 1
                                    ? AlphaComposite.getInstance(
                                            AlphaComposite.SRC_OVER, (float) cover)
                                    : AlphaComposite.Src);
                    var to = AffineTransform.getTranslateInstance(place.x(), place.y());
                    to.scale(place.width() / pixels.columns(), place.height() / pixels.rows());
                    graphics.drawImage(pixels.image(), to, null);
                    graphics.setComposite(AlphaComposite.SrcOver);
                });
        return this;
    }

    /** What is done on the thread of the screen once this is seen. */
    public Picture whenShown(Runnable then) {
        shown = then;
        return this;
    }

    /**
     * Paints it at once, for small ones that stay.
     *
     * @param width px
     * @param height px
     * @param sharp dots of the screen to a pixel
     */
    public Image image(double width, double height, double sharp) {
        return Surface.of(this, width, height, sharp).image();
    }

    /** Tells that it is seen. */
    void tell() {
        shown.run();
    }

    /**
     * Paints all of it.
     *
     * @param graphics has the scale of the screen
     * @param width of the board, px
     * @param height likewise
     * @param sharp dots of the screen to a pixel
     */
    void paint(Graphics2D graphics, double width, double height, double sharp) throws IOException {
        for (Layer layer : layers) {
            var own = (Graphics2D) graphics.create();
            try {
                layer.paint(own, width, height, sharp);
            } finally {
                own.dispose();
            }
        }
    }
}
