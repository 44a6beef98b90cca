package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Draft;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.LoadStrip;
import lanewright.stone.LayerStone;
import org.jspecify.annotations.Nullable;

/** Where each load of stone starts and stops, layer under layer. */
public final class LoadsBoard extends Board {

    private static final double SIDE = 14;

    /** The strip is drawn for paper; this much larger its small numbers read on a screen. */
    private static final double LARGER = 1.45;

    /** Height of the words over the strip, before they are made larger. */
    private static final double HEAD = 26;

    private final Session session;
    private double larger = LARGER;

    /** The view of a plan that is being worked on. */
    public LoadsBoard(Session session) {
        this.session = session;
        setId("loads");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Loads of stone along the lane");
        session.shown()
                .addListener(
                        (at, was, now) -> {
                            if (!now.looksLike(was)) {
                                repaint(session.isMoving());
                            }
                        });
        session.marker().addListener((at, was, now) -> repaint());
        setOnMousePressed(this::place);
        setOnMouseDragged(this::place);
    }

    private @Nullable Draft draft() {
        return session.shown().get().draft();
    }

    private void place(MouseEvent event) {
        requestFocus();
        Draft draft = draft();
        if (draft != null) {
            double wide = getWidth() / larger;
            double part = (event.getX() / larger - SIDE - 6) / Math.max(1, wide - 2 * SIDE - 12);
            session.marker().set(Math.max(0, Math.min(1, part)) * draft.design().length());
        }
    }

    @Override
    protected Picture picture(double width, double height) {
        var picture = new Picture(theme()).ground(0xFFFFFF);
        Draft draft = draft();
        if (draft == null || width < 160) {
            return picture.note("The loads appear here.");
        }
        double tall = HEAD + LoadStrip.height(draft.stone().layers().size());
        // Where there is little room it is smaller, so that the last layer is seen too.
        larger = Math.max(1, Math.min(LARGER, height / tall));
        return picture.drawing(strip(draft, width / larger, height / larger), 0, 0, larger);
    }

    private Drawing strip(Draft draft, double width, double height) {
        UnitSystem units = session.file().plan().units();
        List<LoadStrip.Layer> layers = new ArrayList<>();
        List<LayerStone> laid = new ArrayList<>(draft.stone().layers());
        for (LayerStone layer : laid) {
            List<Double> stops = new ArrayList<>();
            for (var load : layer.loads()) {
                if (stops.isEmpty()) {
                    stops.add(load.from());
                }
                stops.add(load.to());
            }
            LayerStone.Reach reach = layer.reach();
            layers.add(
                    new LoadStrip.Layer(
                            layer.supply().role()
                                    + ", "
                                    + Words.of(Quantity.depth(layer.thickness()), units)
                                    + " packed: "
                                    + Words.of(Quantity.mass(layer.needed()), units)
                                    + " in "
                                    + layer.loadCount()
                                    + " loads",
                            stops,
                            reach == null || reach.shortBy() <= 0 ? Double.NaN : reach.station()));
        }
        Pen pen = new Pen();
        pen.words(
                Role.NOTE,
                "where each load starts and stops, in the order of laying",
                SIDE + 6,
                14,
                Type.NOTE / larger,
                Anchor.START);
        Box box = new Box(SIDE, HEAD, width - 2 * SIDE, LoadStrip.height(layers.size()));
        LoadStrip.draw(layers, List.of(), draft.design().length(), units, pen, box);
        double at = Math.max(0, Math.min(draft.design().length(), session.marker().get()));
        double x = SIDE + 6 + at / draft.design().length() * (width - 2 * SIDE - 12);
        for (int i = 0; i < layers.size(); i++) {
            // On the bar alone: the words over it and the stations under it stay readable.
            Box bar = LoadStrip.bar(box, i);
            pen.line(Role.PLACE, x, bar.y() + 2, x, bar.bottom());
            pen.area(
                    Role.TICK,
                    Outline.closed(x - 4, bar.y() - 1, x + 4, bar.y() - 1, x, bar.y() + 6));
        }
        return pen.drawing(width, Math.max(height, 1));
    }
}
