package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.CanvasBrush;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Ghost;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.drainage.Pool;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
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
        session.shown().addListener((seen, was, now) -> repaint());
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
    protected void paint(GraphicsContext g, double width, double height) {
        g.setFill(theme().colour(0xFFFFFF));
        g.fillRect(0, 0, width, height);
        Draft draft = session.shown().get().draft();
        if (draft == null || width < 140 || height < 90) {
            frame = null;
            g.setFill(theme().colour(0x4F5A60));
            g.setFont(Type.at(Type.BODY, false));
            g.fillText("The lane unrolled appears here.", 16, 24);
            return;
        }
        Frame made = heldFrame == null ? fitted(draft, width, height) : heldFrame;
        frame = made;
        Pen pen = new Pen();
        draw(pen, made, draft, session.shown().get().outcome());
        CanvasBrush.paint(g, theme(), pen.drawing(width, height));
    }

    /** The picture of a lane on a board of a size. */
    static Frame fitted(Draft draft, double width, double height) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Profile profile = draft.design().profile();
        for (Section section : draft.sections().sections()) {
            for (double z :
                    new double[] {
                        section.ground().at(0),
                        profile.height(section.station()),
                        section.subgrade().at(0),
                        ditch(section.left().ditchInner()),
                        ditch(section.right().ditchInner())
                    }) {
                if (Double.isFinite(z)) {
                    low = Math.min(low, z);
                    high = Math.max(high, z);
                }
            }
        }
        double room = Math.max(0.6, (high - low) * 0.12);
        Box box = new Box(52, 26, Math.max(40, width - 66), Math.max(30, height - 48));
        return new Frame(box, 0, draft.design().length(), low - room, high + room);
    }

    private static double ditch(@Nullable Corner bottom) {
        return bottom == null ? Double.NaN : bottom.height();
    }

    private void draw(Pen pen, Frame f, Draft draft, @Nullable Outcome outcome) {
        f.heights(pen, units());
        f.stations(pen, units());
        Pen inside = new Pen();
        Frame.Room room = new Frame.Room(f.box().inset(1));
        List<Section> sections = draft.sections().sections();
        Profile profile = draft.design().profile();
        between(inside, f, sections, profile);
        if (outcome != null) {
            water(inside, f, sections, outcome);
        }
        along(inside, f, Role.GROUND_LINE, sections, s -> s.ground().at(0));
        along(inside, f, Role.SUBGRADE, sections, s -> s.subgrade().at(0));
        along(inside, f, Role.DITCH_LEFT, sections, s -> ditch(s.left().ditchInner()));
        along(inside, f, Role.DITCH_RIGHT, sections, s -> ditch(s.right().ditchInner()));
        inside.line(Role.FINISHED, f.line(sampled(f, profile)));
        Ghost ghost = session.ghost().get();
        Draft other = ghost == null ? null : ghost.draft();
        if (other != null) {
            inside.line(Role.ACCENT, f.line(sampled(f, other.design().profile())));
        }
        marker(inside, f, draft);
        if (editing()) {
            handles(inside, f, profile, room);
        }
        grades(inside, f, profile, room);
        if (outcome != null) {
            depths(inside, f, outcome, room);
        }
        pen.framed(f.box(), inside);
        pen.frame(Role.FRAME, f.box());
        pen.words(
                Role.NOTE,
                "the lane unrolled · "
                        + f.stretchWords()
                        + " · heights in "
                        + (units() == UnitSystem.US ? "ft" : "m"),
                f.box().x() + 2,
                16,
                Type.NOTE,
                Anchor.START);
    }

    private static List<double[]> sampled(Frame f, Profile profile) {
        List<double[]> places = new ArrayList<>();
        double to = Math.min(profile.to(), f.a1());
        int n = (int) Math.max(2, f.box().width() / 3);
        for (int i = 0; i <= n; i++) {
            double s = profile.from() + (to - profile.from()) * i / n;
            places.add(new double[] {s, profile.height(s)});
        }
        return places;
    }

    /** Runs of places where a height is known. */
    private static void along(
            Pen pen, Frame f, Role role, List<Section> sections, ToDoubleFunction<Section> height) {
        List<double[]> run = new ArrayList<>();
        for (Section section : sections) {
            double z = height.applyAsDouble(section);
            if (Double.isFinite(z)) {
                run.add(new double[] {section.station(), z});
            }
            if (!Double.isFinite(z) && !run.isEmpty()) {
                flush(pen, f, role, run);
            }
        }
        flush(pen, f, role, run);
    }

    private static void flush(Pen pen, Frame f, Role role, List<double[]> run) {
        if (run.size() > 1) {
            pen.line(role, f.line(run));
        }
        run.clear();
    }

    /** What is dug and built up at the middle, piece by piece between sections. */
    private static void between(Pen pen, Frame f, List<Section> sections, Profile profile) {
        List<double[]> over = new ArrayList<>();
        int sign = 0;
        double lastS = Double.NaN;
        double lastGround = Double.NaN;
        double lastGrade = Double.NaN;
        for (Section section : sections) {
            double s = section.station();
            double ground = section.ground().at(0);
            double grade = profile.height(s);
            if (!Double.isFinite(ground)) {
                fill(pen, f, over, sign);
                sign = 0;
                lastS = Double.NaN;
                continue;
            }
            int now = grade >= ground ? 1 : -1;
            if (sign != 0 && now != sign && s > lastS) {
                double a = lastGrade - lastGround;
                double b = grade - ground;
                double cross = lastS + (s - lastS) * a / (a - b);
                double z = lastGround + (ground - lastGround) * a / (a - b);
                over.add(new double[] {cross, z, z});
                fill(pen, f, over, sign);
                over.add(new double[] {cross, z, z});
            }
            sign = now;
            over.add(new double[] {s, ground, grade});
            lastS = s;
            lastGround = ground;
            lastGrade = grade;
        }
        fill(pen, f, over, sign);
    }

    private static void fill(Pen pen, Frame f, List<double[]> pieces, int sign) {
        int n = pieces.size();
        if (n > 1 && sign != 0) {
            double[] xy = new double[4 * n];
            for (int i = 0; i < n; i++) {
                xy[2 * i] = f.x(pieces.get(i)[0]);
                xy[2 * i + 1] = f.y(pieces.get(i)[1]);
                int back = 2 * n - 1 - i;
                xy[2 * back] = f.x(pieces.get(i)[0]);
                xy[2 * back + 1] = f.y(pieces.get(i)[2]);
            }
            pen.area(sign > 0 ? Role.FILL : Role.CUT, Outline.closed(xy));
        }
        pieces.clear();
    }

    /** Water over the ground at the middle, or a line at its level where it sits beside. */
    private static void water(Pen pen, Frame f, List<Section> sections, Outcome outcome) {
        for (Pool pool : outcome.water().after()) {
            Pool.Beside beside = pool.beside();
            if (beside == null || !beside.inLimits()) {
                continue;
            }
            double level = pool.spot().level();
            List<double[]> wet = new ArrayList<>();
            for (Section section : sections) {
                double ground = section.ground().at(0);
                if (section.station() >= beside.from()
                        && section.station() <= beside.to()
                        && ground < level) {
                    wet.add(new double[] {section.station(), level, ground});
                }
            }
            if (wet.size() > 1) {
                int n = wet.size();
                double[] xy = new double[4 * n];
                for (int i = 0; i < n; i++) {
                    xy[2 * i] = f.x(wet.get(i)[0]);
                    xy[2 * i + 1] = f.y(level);
                    int back = 2 * n - 1 - i;
                    xy[2 * back] = f.x(wet.get(i)[0]);
                    xy[2 * back + 1] = f.y(wet.get(i)[2]);
                }
                pen.area(Role.WATER, Outline.closed(xy));
            } else {
                double from = f.x(beside.from());
                double to = Math.max(from + 6, f.x(beside.to()));
                pen.line(Role.WATER, from, f.y(level), to, f.y(level));
            }
        }
    }

    private void depths(Pen pen, Frame f, Outcome outcome, Frame.Room room) {
        for (Pool pool : outcome.water().after()) {
            Pool.Beside beside = pool.beside();
            if (beside != null && beside.inLimits()) {
                String words = Words.fine(Quantity.depth(pool.spot().depth()), units()) + " deep";
                double x = f.x(beside.station());
                double y = f.y(pool.spot().level());
                for (double by : new double[] {18, 34, -8, -24}) {
                    if (room.put(pen, Role.WATER_TEXT, words, x, y + by, true)) {
                        break;
                    }
                }
            }
        }
    }

    private void grades(Pen pen, Frame f, Profile profile, Frame.Room room) {
        List<VerticalPoint> points = profile.points();
        for (int i = 1; i < points.size(); i++) {
            VerticalPoint a = points.get(i - 1);
            VerticalPoint b = points.get(i);
            double wide = f.x(b.station()) - f.x(a.station());
            if (wide < 44) {
                continue;
            }
            double grade = (b.height() - a.height()) / (b.station() - a.station());
            double middle = (a.station() + b.station()) / 2;
            String words = Words.fine(Quantity.grade(grade), units());
            double y = f.y(profile.height(Math.min(profile.to(), middle)));
            for (double by : new double[] {-10, 22, -26, 38}) {
                if (room.put(pen, Role.TEXT, words, f.x(middle), y + by, true)) {
                    break;
                }
            }
        }
    }

    private void handles(Pen pen, Frame f, Profile profile, Frame.Room room) {
        List<VerticalPoint> points = profile.points();
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            double x = f.x(point.station());
            double y = f.y(point.height());
            double r = i == chosen ? 9 : 7;
            Outline diamond = Outline.closed(x, y - r, x + r, y, x, y + r, x - r, y);
            pen.area(Role.MARKER, diamond).line(i == chosen ? Role.ACCENT : Role.PLACE, diamond);
            room.block(new Box(x - r, y - r, 2 * r, 2 * r));
            if (point.curve() > 0) {
                for (double end : new double[] {-0.5, 0.5}) {
                    double s = point.station() + end * point.curve();
                    double ex = f.x(s);
                    double ey = f.y(profile.height(bounded(profile, s)));
                    Outline dot = Outline.circle(ex, ey, 4, 14);
                    pen.area(Role.MARKER, dot).line(Role.PLACE, dot);
                }
            }
        }
    }

    private static double bounded(Profile profile, double s) {
        return Math.max(profile.from(), Math.min(profile.to(), s));
    }

    private void marker(Pen pen, Frame f, Draft draft) {
        double s = Math.max(0, Math.min(draft.design().length(), session.marker().get()));
        double x = f.x(s);
        pen.line(Role.PLATE_LINE, x, f.box().y(), x, f.box().bottom());
        pen.line(Role.PLACE, x, f.box().y(), x, f.box().bottom());
        double y = f.y(draft.design().profile().height(s));
        pen.area(Role.MARKER, Outline.circle(x, y, 5, 20));
        pen.line(Role.PLACE, Outline.circle(x, y, 5, 20));
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
                double s = bounded(profile, point.station() + end * point.curve());
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
