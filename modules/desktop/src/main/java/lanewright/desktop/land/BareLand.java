package lanewright.desktop.land;

import javafx.application.Platform;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Type;
import lanewright.ground.Ground;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * The land as it was measured: shaded, with contours, and the points. Lies under what is planned on
 * it, so that an edit of the plan paints none of it again.
 */
final class BareLand extends Board implements AutoCloseable {

    /** Points that are seen stand about so far from each other where they are many, px. */
    private static final double APART = 7;

    private final Terrain terrain = new Terrain(this::painted);
    private final Runnable changed;
    private @Nullable Survey survey;
    private @Nullable Ground ground;
    private @Nullable Shots shots;
    private Terrain.@Nullable Painted seen;
    private @Nullable WritableImage image;
    private View view = new View(0, 0, 1, 100, 100);
    private UnitSystem units = UnitSystem.METRIC;

    /**
     * No land yet.
     *
     * @param changed is run, on the thread of the screen, when contours or points have come
     */
    BareLand(Runnable changed) {
        this.changed = changed;
        setFocusTraversable(false);
        setMouseTransparent(true);
        themeProperty().addListener((was, before, now) -> ask());
    }

    @Nullable Survey survey() {
        return survey;
    }

    @Nullable Ground ground() {
        return ground;
    }

    /** The points by place, as soon as they are sorted; null before. */
    @Nullable Shots shots() {
        return shots;
    }

    /** What of the land was painted last, with its contours; null before. */
    Terrain.@Nullable Painted seen() {
        return seen;
    }

    /** Takes measured land, if it is another. */
    void take(Survey measured, Ground made) {
        if (survey != measured) {
            survey = measured;
            shots = null;
            sort(measured);
        }
        if (ground != made) {
            ground = made;
            ask();
        }
    }

    /** Looks at a part of it, with heights in such units. */
    void look(View next, UnitSystem shownIn) {
        if (!view.equals(next) || units != shownIn) {
            view = next;
            units = shownIn;
            ask();
            repaint();
        }
    }

    private void sort(Survey measured) {
        Thread sorter =
                new Thread(
                        () -> {
                            Shots sorted = new Shots(measured);
                            Platform.runLater(() -> sorted(measured, sorted));
                        },
                        "lanewright-shots");
        sorter.setDaemon(true);
        sorter.start();
    }

    private void sorted(Survey measured, Shots sorted) {
        if (survey == measured) {
            shots = sorted;
            repaint();
            changed.run();
        }
    }

    private void ask() {
        Ground made = ground;
        if (made != null && view.width() > 2 && view.height() > 2) {
            terrain.ask(made, view, units, theme());
        }
    }

    private void painted(Terrain.Painted done) {
        Platform.runLater(
                () -> {
                    var next = new WritableImage(done.columns(), done.rows());
                    next.getPixelWriter()
                            .setPixels(
                                    0,
                                    0,
                                    done.columns(),
                                    done.rows(),
                                    PixelFormat.getIntArgbInstance(),
                                    done.pixels(),
                                    0,
                                    done.columns());
                    seen = done;
                    image = next;
                    repaint();
                    changed.run();
                });
    }

    @Override
    protected void paint(GraphicsContext g, double width, double height) {
        g.setFill(theme().colour(0xFBFAF6));
        g.fillRect(0, 0, width, height);
        Terrain.Painted done = seen;
        if (done != null) {
            View of = done.view();
            double k = view.scale() / of.scale();
            double x = view.px(of.east(0));
            double y = view.py(of.north(0));
            g.drawImage(image, x, y, done.columns() * k, done.rows() * k);
        }
        Survey measured = survey;
        Shots sorted = shots;
        if (measured != null && sorted != null) {
            g.setFill(theme().colour(Style.of(Role.SHOT).fill()));
            sorted.seen(
                    view,
                    APART,
                    i -> g.fillRect(view.px(measured.x(i)) - 1, view.py(measured.y(i)) - 1, 2, 2));
        }
        if (ground == null) {
            g.setFill(theme().colour(0x4F5A60));
            g.setFont(Type.at(Type.BODY, false));
            g.fillText("The ground appears here.", 24, 34);
        }
    }

    @Override
    public void close() {
        terrain.close();
    }
}
