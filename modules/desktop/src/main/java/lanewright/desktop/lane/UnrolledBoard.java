package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Picture;
import lanewright.desktop.session.Ghost;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding.Topic;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.run.Draft;
import lanewright.sheets.drawing.Pen;
import org.jspecify.annotations.Nullable;

/**
 * The lane unrolled: ground, grade, earth as shaped, ditches, what is dug and built up, and where
 * water sits. With the question of grade open, drag a diamond to move a point between grades, a
 * small circle to make its curve longer; double-click to put a point in, Delete to take the chosen
 * one out.
 */
public final class UnrolledBoard extends Board {

    private static final double REACH = 11;
    private static final double FOOT = 0.3048;

    private final Session session;
    private @Nullable Frame frame;
    private Session.@Nullable Gesture gesture;
    private int chosen = -1;
    private int held = -1;
    private boolean holdsCurve;
    private double pressX;
    private double pressY;
    private boolean dragged;
    private @Nullable Frame heldFrame;

    /** The view of a plan that is being worked on. */
    public UnrolledBoard(Session session) {
        this.session = session;
        setId("unrolled");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("The lane unrolled: ground and grade along it");
        session.shown()
                .addListener(
                        (seen, was, now) -> {
                            if (!now.looksLike(was)) {
                                repaint(session.isMoving() && gesture == null);
                            }
                        });
        session.marker().addListener((seen, was, now) -> repaint());
        session.open().addListener((seen, was, now) -> repaint());
        session.ghost().addListener((seen, was, now) -> repaint());
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragging);
        setOnMouseReleased(this::released);
        setOnMouseMoved(this::moved);
        setOnKeyPressed(this::keyed);
    }

    private UnitSystem units() {
        return session.file().plan().units();
    }

    @Override
    protected Picture picture(double width, double height) {
        var picture = new Picture(theme()).ground(0xFFFFFF);
        Draft draft = session.shown().get().draft();
        if (draft == null || width < 140 || height < 90) {
            frame = null;
            return picture.note("The lane unrolled appears here.");
        }
        Frame made = heldFrame == null ? Unrolled.fitted(draft, width, height) : heldFrame;
        frame = made;
        Pen pen = new Pen();
        Ghost ghost = session.ghost().get();
        new Unrolled(made, draft, session.shown().get().outcome(), units())
                .draw(
                        pen,
                        session.marker().get(),
                        ghost == null ? null : ghost.draft(),
                        chosen,
                        editing());
        return picture.drawing(pen.drawing(width, height));
    }

    private boolean editing() {
        return session.open().get() == Topic.GRADE;
    }

    private List<VerticalPoint> points() {
        Draft draft = session.shown().get().draft();
        return draft == null ? List.of() : draft.design().profile().points();
    }

    /** Takes hold of a point or of an end of its curve. */
    private void take(double px, double py) {
        Frame f = frame;
        held = -1;
        holdsCurve = false;
        if (f == null || !editing()) {
            return;
        }
        double best = REACH;
        List<VerticalPoint> points = points();
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            double away = Math.hypot(f.x(point.station()) - px, f.y(point.height()) - py);
            if (away <= best) {
                best = away;
                held = i;
                holdsCurve = false;
            }
        }
        Draft draft = session.shown().get().draft();
        if (held >= 0 || draft == null) {
            return;
        }
        Profile profile = draft.design().profile();
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            for (double end : new double[] {-0.5, 0.5}) {
                double s = Unrolled.bounded(profile, point.station() + end * point.curve());
                double away = Math.hypot(f.x(s) - px, f.y(profile.height(s)) - py);
                if (point.curve() > 0 && away <= best) {
                    best = away;
                    held = i;
                    holdsCurve = true;
                }
            }
        }
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        pressX = event.getX();
        pressY = event.getY();
        dragged = false;
        take(pressX, pressY);
        if (held >= 0) {
            chosen = held;
            repaint();
        }
    }

    private void dragging(MouseEvent event) {
        Frame f = frame;
        if (f == null
                || (!dragged && Math.hypot(event.getX() - pressX, event.getY() - pressY) < 3)) {
            return;
        }
        dragged = true;
        if (held < 0) {
            session.marker().set(Math.max(f.a0(), Math.min(f.a1(), f.along(event.getX()))));
            return;
        }
        Session.Gesture moving = gesture;
        if (moving == null) {
            heldFrame = f;
            moving = session.begin(holdsCurve ? "the length of a curve" : "a point between grades");
            gesture = moving;
        }
        int index = held;
        double station = f.along(event.getX());
        double height = f.height(event.getY());
        boolean curve = holdsCurve;
        double length = f.a1();
        moving.to(
                plan ->
                        curve
                                ? curved(plan, index, station)
                                : moved(plan, index, station, height, length));
    }

    private double snap(double metres, double feet, double metric) {
        double step = units() == UnitSystem.US ? feet * FOOT : metric;
        return Math.rint(metres / step) * step;
    }

    private Plan moved(Plan plan, int index, double station, double height, double length) {
        List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
        GradePart.Point old = points.get(index);
        boolean end = index == 0 || index == points.size() - 1;
        double s = old.station();
        if (!end) {
            double next = points.get(index + 1).station();
            double least = points.get(index - 1).station() + 1;
            double most = (Double.isInfinite(next) ? length : next) - 1;
            s = Math.max(least, Math.min(most, snap(station, 1, 0.5)));
        }
        points.set(index, new GradePart.Point(s, snap(height, 0.02, 0.005), old.curve()));
        return plan.with(plan.grade().laid(points, List.of()));
    }

    private Plan curved(Plan plan, int index, double station) {
        List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
        GradePart.Point old = points.get(index);
        double curve = Math.max(0, snap(2 * Math.abs(station - old.station()), 2, 0.5));
        points.set(index, new GradePart.Point(old.station(), old.height(), curve));
        return plan.with(plan.grade().laid(points, List.of()));
    }

    private void released(MouseEvent event) {
        Session.Gesture moving = gesture;
        Frame f = frame;
        heldFrame = null;
        if (moving != null) {
            gesture = null;
            moving.done();
            repaint();
        } else if (f != null && event.getButton() == MouseButton.PRIMARY && !dragged) {
            double s = Math.max(f.a0(), Math.min(f.a1(), f.along(event.getX())));
            session.marker().set(s);
            if (event.getClickCount() > 1 && editing() && held < 0) {
                putIn(s);
            }
        }
        held = -1;
    }

    private void putIn(double station) {
        Draft draft = session.shown().get().draft();
        if (draft == null) {
            return;
        }
        double height = draft.design().profile().height(station);
        session.edit(
                "a point between grades put in",
                plan -> {
                    List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
                    int at = 1;
                    while (at < points.size() - 1 && points.get(at).station() < station) {
                        at++;
                    }
                    points.add(
                            at,
                            new GradePart.Point(
                                    snap(station, 1, 0.5), snap(height, 0.02, 0.005), 0));
                    return plan.with(plan.grade().laid(points, List.of()));
                });
    }

    private void moved(MouseEvent event) {
        if (gesture == null) {
            int before = held;
            boolean curve = holdsCurve;
            take(event.getX(), event.getY());
            setCursor(held >= 0 ? Cursor.HAND : Cursor.DEFAULT);
            held = before;
            holdsCurve = curve;
        }
    }

    private void keyed(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE && gesture != null) {
            Session.Gesture moving = gesture;
            gesture = null;
            heldFrame = null;
            held = -1;
            moving.cancel();
            event.consume();
        } else if ((event.getCode() == KeyCode.DELETE || event.getCode() == KeyCode.BACK_SPACE)
                && editing()
                && chosen > 0) {
            int index = chosen;
            chosen = -1;
            session.edit(
                    "a point between grades taken out",
                    plan -> {
                        List<GradePart.Point> points = new ArrayList<>(plan.grade().points());
                        if (index < points.size() - 1) {
                            points.remove(index);
                        }
                        return plan.with(plan.grade().laid(points, List.of()));
                    });
            event.consume();
        } else if (event.isAltDown()
                && editing()
                && chosen >= 0
                && (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN)) {
            double by =
                    (units() == UnitSystem.US ? 0.1 * FOOT : 0.02)
                            * (event.getCode() == KeyCode.UP ? 1 : -1);
            int index = chosen;
            Shown shown = session.shown().get();
            Draft draft = shown.draft();
            if (draft != null) {
                double length = draft.design().length();
                session.edit(
                        "the height of a point between grades",
                        plan -> {
                            GradePart.Point old = plan.grade().points().get(index);
                            return moved(plan, index, old.station(), old.height() + by, length);
                        });
            }
            event.consume();
        }
    }
}
