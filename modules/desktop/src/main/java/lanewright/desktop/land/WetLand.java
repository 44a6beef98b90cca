package lanewright.desktop.land;

import javafx.application.Platform;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Pixels;
import lanewright.desktop.look.Theme;
import lanewright.drainage.WetGround;
import lanewright.sheets.drawing.Box;
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
    private @Nullable Pixels image;
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

    /** Adds what is known to a picture. */
    void lay(Picture picture, View view, Theme theme) {
        WetGround.Squares known = squares;
        if (known == null) {
            return;
        }
        Pixels seen = image;
        if (seen == null || painted != theme) {
            seen = picture(known, theme);
            image = seen;
            painted = theme;
        }
        var cells = known.cells();
        double width = cells.columns() * cells.size() * view.scale();
        double height = cells.rows() * cells.size() * view.scale();
        picture.pixels(
                seen,
                new Box(view.px(cells.west()), view.py(cells.south()) - height, width, height),
                COVER,
                false);
    }

    private static Pixels picture(WetGround.Squares of, Theme theme) {
        int columns = of.cells().columns();
        int rows = of.cells().rows();
        var pixels = new Pixels(columns, rows);
        for (int square = 0; square < columns * rows; square++) {
            WetGround.Step step = of.step(square);
            int row = rows - 1 - square / columns; // the first row of a picture is at its top
            if (step != null) {
                pixels.set(row * columns + square % columns, rgb(step, theme));
            }
        }
        return pixels;
    }

    private static int rgb(WetGround.Step step, Theme theme) {
        Role role =
                switch (step) {
                    case WETTEST -> Role.WET_MOST;
                    case NEXT -> Role.WET_NEXT;
                    case DAMP -> Role.WET_DAMP;
                };
        return theme.rgb(Style.of(role).fill());
    }
}
