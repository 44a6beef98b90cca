package lanewright.desktop.land;

import javafx.application.Platform;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import lanewright.desktop.look.Theme;
import lanewright.drainage.WetGround;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;
import org.jspecify.annotations.Nullable;

/**
 * Where the land stays wet by its shape, as a picture of one pixel to the square. It is worked out
 * on a thread of its own, only when it is shown, and once for each ground.
 */
final class WetLand {

    /** How much it hides of the land below, 0 to 1. */
    private static final double COVER = 0.72;

    private final Runnable changed;
    private @Nullable WetGround ground;
    private WetGround.@Nullable Squares squares;
    private @Nullable WritableImage image;
    private Theme painted = Theme.LIGHT;

    /**
     * No land yet.
     *
     * @param changed is run, on the thread of the screen, when there is something to paint
     */
    WetLand(Runnable changed) {
        this.changed = changed;
    }

    /** Has this ground worked out, if it is another than before. */
    @SuppressWarnings("ReferenceEquality") // the same ground is the same object
    void show(WetGround wanted) {
        if (ground == wanted) {
            return;
        }
        ground = wanted;
        Thread worker =
                new Thread(
                        () -> {
                            WetGround.Squares made = wanted.squares();
                            Platform.runLater(() -> made(wanted, made));
                        },
                        "lanewright-wet");
        worker.setDaemon(true);
        worker.start();
    }

    @SuppressWarnings("ReferenceEquality") // the same ground is the same object
    private void made(WetGround of, WetGround.Squares made) {
        if (ground == of) {
            squares = made;
            image = null;
            changed.run();
        }
    }

    /** How wet a place is among all the land, in words; empty if not, or not known. */
    String words(double east, double north) {
        WetGround.Squares known = squares;
        WetGround.Step step = known == null ? null : known.at(east, north);
        return step == null ? "" : "   among " + step.words() + " by its shape";
    }

    /** Paints what is known. */
    void paint(GraphicsContext g, View view, Theme theme) {
        WetGround.Squares known = squares;
        if (known == null) {
            return;
        }
        WritableImage seen = image;
        if (seen == null || painted != theme) {
            seen = picture(known, theme);
            image = seen;
            painted = theme;
        }
        var cells = known.cells();
        double width = cells.columns() * cells.size() * view.scale();
        double height = cells.rows() * cells.size() * view.scale();
        g.save();
        g.setImageSmoothing(false);
        g.setGlobalAlpha(COVER);
        g.drawImage(seen, view.px(cells.west()), view.py(cells.south()) - height, width, height);
        g.restore();
    }

    private static WritableImage picture(WetGround.Squares of, Theme theme) {
        int columns = of.cells().columns();
        int rows = of.cells().rows();
        int[] pixels = new int[columns * rows];
        for (int square = 0; square < pixels.length; square++) {
            WetGround.Step step = of.step(square);
            int row = rows - 1 - square / columns; // the first row of a picture is at its top
            pixels[row * columns + square % columns] = step == null ? 0 : argb(step, theme);
        }
        var image = new WritableImage(columns, rows);
        image.getPixelWriter()
                .setPixels(
                        0, 0, columns, rows, PixelFormat.getIntArgbInstance(), pixels, 0, columns);
        return image;
    }

    private static int argb(WetGround.Step step, Theme theme) {
        Role role =
                switch (step) {
                    case WETTEST -> Role.WET_MOST;
                    case NEXT -> Role.WET_NEXT;
                    case DAMP -> Role.WET_DAMP;
                };
        Color colour = theme.colour(Style.of(role).fill());
        return 0xFF000000
                | (int) Math.round(255 * colour.getRed()) << 16
                | (int) Math.round(255 * colour.getGreen()) << 8
                | (int) Math.round(255 * colour.getBlue());
    }
}
