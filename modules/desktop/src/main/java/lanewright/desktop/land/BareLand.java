package lanewright.desktop.land;

import javafx.application.Platform;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Theme;
import lanewright.ground.Ground;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;
import lanewright.survey.Survey;
import org.apache.commons.math3.util.ResizableDoubleArray;
import org.jspecify.annotations.Nullable;

/**
 * The land as it was measured: shaded, with contours, and the points. Shading and contours are
 * painted on a thread of their own and kept, so that an edit of the plan paints none of them again.
 */
final class BareLand implements AutoCloseable {

    /** Points that are seen stand about so far from each other where they are many, px. */
    private static final double APART = 7;

    private final Terrain terrain = new Terrain(this::painted);
    private final Runnable changed;
    private @Nullable Survey survey;
    private @Nullable Ground ground;
    private @Nullable Shots shots;
    private Terrain.@Nullable Painted seen;
    private View view = new View(0, 0, 1, 100, 100);
    private UnitSystem units = UnitSystem.METRIC;
    private Theme theme = Theme.LIGHT;

    /**
     * No land yet.
     *
     * @param changed is run, on the thread of the screen, when contours or points have come
     */
    BareLand(Runnable changed) {
        this.changed = changed;
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

    /** Looks at a part of it, with heights in such units and the colours of a theme. */
    void look(View next, UnitSystem shownIn, Theme colours) {
        if (!view.equals(next) || units != shownIn || theme != colours) {
            view = next;
            units = shownIn;
            theme = colours;
            ask();
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
            changed.run();
        }
    }

    private void ask() {
        Ground made = ground;
        if (made != null && view.width() > 2 && view.height() > 2) {
            terrain.ask(made, view, units, theme);
        }
    }

    private void painted(Terrain.Painted done) {
        Platform.runLater(
                () -> {
                    seen = done;
                    changed.run();
                });
    }

    /** Begins a picture with what is known of it. */
    Picture picture(View now) {
        var picture = new Picture(theme).ground(0xFBFAF6);
        Terrain.Painted done = seen;
        if (done != null) {
            View of = done.view();
            double k = now.scale() / of.scale();
            picture.pixels(
                    done.pixels(),
                    new Box(
                            now.px(of.east(0)),
                            now.py(of.north(0)),
                            done.pixels().columns() * k,
                            done.pixels().rows() * k),
                    1,
                    true);
        }
        Survey measured = survey;
        Shots sorted = shots;
        if (measured != null && sorted != null) {
            var places = new ResizableDoubleArray();
            sorted.seen(
                    now,
                    APART,
                    i -> {
                        places.addElement(now.px(measured.x(i)));
                        places.addElement(now.py(measured.y(i)));
                    });
            picture.dots(places.getElements(), Style.of(Role.SHOT).fill());
        }
        if (ground == null) {
            picture.note("The ground appears here.");
        }
        return picture;
    }

    @Override
    public void close() {
        terrain.close();
    }
}
