package lanewright.desktop.look;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/** A part of the window that is painted, once a frame at most, whenever something changed. */
public abstract class Board extends Region {

    private final Canvas canvas = new Canvas();
    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    private final Seldom seldom = new Seldom(this::repaint);
    private boolean wanted = true;

    /** An empty board, which can take the keyboard. */
    protected Board() {
        getChildren().add(canvas);
        setMinSize(80, 60);
        setFocusTraversable(true);
        theme.addListener((seen, was, now) -> repaint());
        focusedProperty().addListener((seen, was, now) -> repaint());
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
        wanted = true;
        requestLayout();
    }

    /**
     * Asks to be painted for news of a plan.
     *
     * @param beside whether the hand drags something elsewhere, so that this may come later
     */
    protected final void repaint(boolean beside) {
        if (beside) {
            seldom.soon();
        } else {
            seldom.now();
        }
    }

    @Override
    protected void layoutChildren() {
        double width = Math.max(1, Math.floor(getWidth()));
        double height = Math.max(1, Math.floor(getHeight()));
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            wanted = true;
        }
        if (wanted) {
            wanted = false;
            GraphicsContext g = canvas.getGraphicsContext2D();
            g.clearRect(0, 0, width, height);
            g.save();
            paint(g, width, height);
            g.restore();
            if (isFocused()) {
                g.setStroke(theme.get().colour(0x0072B2));
                g.setLineWidth(2);
                g.setLineDashes();
                g.strokeRect(1, 1, width - 2, height - 2);
            }
        }
    }

    /** Paints what is to be seen. */
    protected abstract void paint(GraphicsContext g, double width, double height);
}
