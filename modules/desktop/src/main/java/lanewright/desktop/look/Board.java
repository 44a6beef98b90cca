package lanewright.desktop.look;

import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Affine;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * A part of the window that shows a picture of its own. Whenever something changed, the picture is
 * told anew, on the thread of the screen and once a frame at most, and painted on another; until it
 * is there, the last one stays. While one is being painted no other is told: what changes meanwhile
 * is seen in the next. It rests as long as its last picture took to paint, so that what is dragged
 * has half of the time at least for its answers.
 */
public abstract class Board extends Region {

    /** One is shown, one may still be on its way to the screen, one is painted. */
    private static final int SURFACES = 3;

    private static final double NANOS_A_MILLI = 1e6;

    private final ImageView seen = new ImageView();
    private final Affine moved = new Affine();
    private final Rectangle ring = new Rectangle();
    private final @Nullable Surface[] surfaces = new Surface[SURFACES];
    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    private final Seldom seldom = new Seldom(this::want);
    private final PauseTransition rest = new PauseTransition();
    private long restsUntil = System.nanoTime();
    private int next;
    private double width = 1;
    private double height = 1;
    private double sharp = 1;
    private boolean wanted = true;
    private boolean beside;
    private boolean painting;

    /** An empty board, which can take the keyboard. */
    protected Board() {
        seen.setManaged(false);
        seen.setMouseTransparent(true);
        seen.setSmooth(false);
        seen.getTransforms().add(moved);
        ring.setManaged(false);
        ring.setMouseTransparent(true);
        ring.setFill(null);
        ring.setStrokeWidth(2);
        ring.visibleProperty().bind(focusedProperty());
        getChildren().addAll(seen, ring);
        setMinSize(80, 60);
        setFocusTraversable(true);
        theme.addListener((seen, was, now) -> repaint());
        rest.setOnFinished(event -> requestLayout());
    }

    /** Light or dark. */
    public final ObjectProperty<Theme> themeProperty() {
        return theme;
    }

    /** Light or dark, now. */
    public final Theme theme() {
        return theme.get();
    }

    /** Asks to be painted with the next frame. */
    public final void repaint() {
        beside = false;
        want();
    }

    private void want() {
        wanted = true;
        requestLayout();
    }

    /**
     * Asks to be painted for news of a plan.
     *
     * @param lies whether the hand drags something elsewhere, so that this may come later
     */
    protected final void repaint(boolean lies) {
        beside = lies;
        if (lies) {
            seldom.soon();
        } else {
            seldom.now();
        }
    }

    /** Whether the picture that is seen is the newest. */
    public final boolean isAtRest() {
        return !wanted && !painting;
    }

    /**
     * Moves what is seen, until another picture is shown.
     *
     * @param larger how much larger it is shown
     * @param left where its left top lies, px
     * @param top likewise
     */
    protected final void move(double larger, double left, double top) {
        moved.setToTransform(larger / sharp, 0, left, 0, larger / sharp, top);
    }

    @Override
    protected void layoutChildren() {
        double wide = Math.max(1, Math.floor(getWidth()));
        double tall = Math.max(1, Math.floor(getHeight()));
        if (width != wide || height != tall) {
            width = wide;
            height = tall;
            ring.setX(1);
            ring.setY(1);
            ring.setWidth(wide - 2);
            ring.setHeight(tall - 2);
            wanted = true;
        }
        if (wanted && !painting) {
            long left = restsUntil - System.nanoTime();
            if (left <= 0) {
                order();
            } else if (rest.getStatus() != PauseTransition.Status.RUNNING) {
                rest.setDuration(Duration.millis(left / NANOS_A_MILLI));
                rest.playFromStart();
            }
        }
    }

    private void order() {
        wanted = false;
        painting = true;
        ring.setStroke(theme.get().colour(0x0072B2));
        double wide = width;
        double tall = height;
        var scene = getScene();
        var window = scene == null ? null : scene.getWindow();
        double dots = window == null ? 1 : window.getOutputScaleX();
        Surface surface = surfaces[next];
        if (surface == null || !surface.fits(wide, tall, dots)) {
            surface = new Surface(wide, tall, dots);
            surfaces[next] = surface;
        }
        next = (next + 1) % SURFACES;
        Surface on = surface;
        Picture picture = picture(wide, tall);
        Painter.paint(
                beside,
                () -> {
                    try {
                        long begun = System.nanoTime();
                        on.paint(picture, wide, tall);
                        long took = System.nanoTime() - begun;
                        Platform.runLater(() -> painted(on, picture, took));
                    } catch (RuntimeException | Error e) {
                        Platform.runLater(() -> failed(e));
                    }
                });
    }

    private void painted(Surface surface, Picture picture, long took) {
        painting = false;
        restsUntil = System.nanoTime() + took;
        seen.setImage(surface.image());
        sharp = surface.sharp();
        move(1, 0, 0);
        picture.tell();
        if (wanted) {
            requestLayout();
        }
    }

    /** What went wrong on the painter's thread is told on the screen's, as if it had been there. */
    private void failed(Throwable e) {
        painting = false;
        throw new IllegalStateException("a board could not be painted", e);
    }

    /** Tells what is to be seen. */
    protected abstract Picture picture(double wide, double tall);
}
