package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.Sections;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Scale;
import lanewright.sheets.figure.SectionDrawing;
import lanewright.sheets.figure.StandingWater;
import org.jspecify.annotations.Nullable;

/**
 * The section nearest the place marker, looking up the lane. With the question of shape open, drag
 * a ditch bottom deeper, an edge of the travelled way outward, or the underside of the stone down.
 */
public final class AcrossBoard extends Board {

    private static final double REACH = 11;
    private static final double FOOT = 0.3048;

    private enum Grip {
        LEFT_DITCH,
        RIGHT_DITCH,
        WIDTH,
        STONE
    }

    private record Handle(Grip grip, double x, double y) {}

    private final Session session;
    private @Nullable Frame frame;
    private @Nullable Frame heldFrame;
    private @Nullable Section seen;
    private @Nullable Draft seenOf;
    private final List<Handle> handles = new ArrayList<>();
    private @Nullable Grip held;
    private Session.@Nullable Gesture gesture;
    private @Nullable Section heldSection;

    /** The view of a plan that is being worked on. */
    public AcrossBoard(Session session) {
        this.session = session;
        setId("across");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("The section across the lane at the place marker");
        session.shown()
                .addListener(
                        (at, was, now) -> {
                            if (!now.looksLike(was)) {
                                repaint(session.isMoving() && gesture == null);
                            }
                        });
        session.marker().addListener((at, was, now) -> repaint());
        session.open().addListener((at, was, now) -> repaint());
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragging);
        setOnMouseReleased(event -> released());
        setOnMouseMoved(this::moved);
        setOnKeyPressed(this::keyed);
    }

    private UnitSystem units() {
        return session.file().plan().units();
    }

    @Override
    protected Picture picture(double width, double height) {
        var picture = new Picture(theme()).ground(0xFFFFFF);
        handles.clear();
        Draft draft = session.shown().get().draft();
        if (draft == null || width < 120 || height < 110) {
            frame = null;
            return picture.note("The section appears here.");
        }
        Section section = section(draft);
        seen = section;
        Frame made = heldFrame == null ? fitted(section, width, height) : heldFrame;
        frame = made;
        Pen pen = new Pen();
        draw(pen, made, section, draft);
        return picture.drawing(pen.drawing(width, height));
    }

    /** The section right at the marker, cut anew where none stands. */
    @SuppressWarnings("ReferenceEquality") // another draft of equal parts is as good cut anew
    private Section section(Draft draft) {
        double marker = session.marker().get();
        double station = Math.max(0, Math.min(draft.design().length(), marker));
        Section last = seen;
        if (seenOf == draft && last != null && last.station() == station) {
            return last;
        }
        Section near = draft.sections().nearest(station);
        seenOf = draft;
        return near.station() == station
                ? near
                : Sections.at(
                        draft.design(), draft.ground(), draft.topsoil(), draft.bearing(), station);
    }

    private static Frame fitted(Section section, double width, double height) {
        double out = Math.max(Math.abs(section.left().limit()), Math.abs(section.right().limit()));
        double reach = Math.max(4, out * 1.12);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SectionLine line : List.of(section.ground(), section.subgrade(), section.finished())) {
            for (int i = 0; i < line.size(); i++) {
                if (Math.abs(line.offset(i)) <= reach) {
                    low = Math.min(low, line.height(i));
                    high = Math.max(high, line.height(i));
                }
            }
        }
        double room = Math.max(0.25, (high - low) * 0.16);
        Box box = new Box(44, 42, Math.max(40, width - 56), Math.max(30, height - 64));
        double tall = Math.max(high - low + 2 * room, 2 * reach * box.height() / box.width() / 3);
        double middle = (low + high) / 2;
        return new Frame(box, -reach, reach, middle - tall / 2, middle + tall / 2);
    }

    private void draw(Pen pen, Frame f, Section section, Draft draft) {
        f.heights(pen, units());
        f.offsets(pen, units());
        Pen inside = new Pen();
        Outcome outcome = session.shown().get().outcome();
        Scale scale =
                Scale.in(
                        f.box(),
                        f.a0(),
                        f.z0(),
                        f.box().width() / (f.a1() - f.a0()),
                        f.box().height() / (f.z1() - f.z0()));
        List<StandingWater> water =
                outcome == null
                        ? List.of()
                        : WaterAcross.of(section, draft.design().alignment(), outcome);
        SectionDrawing.draw(section, typical(draft, section), water, scale, inside, f.box());
        Frame.Room room = new Frame.Room(f.box().inset(1));
        words(inside, f, section, room);
        if (session.open().get() == Topic.SHAPE) {
            grips(inside, f, section);
        }
        double x = f.x(0);
        inside.line(Role.TICK, x, f.box().y(), x, f.box().y() + 8);
        pen.framed(f.box(), inside);
        pen.frame(Role.FRAME, f.box());
        String place = "across at " + Words.of(Quantity.station(section.station()), units());
        String title = place + " · looking up the lane · " + f.stretchWords();
        double left = f.box().x() + 2;
        double wide = f.box().width() - 4;
        pen.words(
                Role.NOTE,
                Frame.fitting(title, false, Type.NOTE, wide),
                left,
                16,
                Type.NOTE,
                Anchor.START);
        String answer = Frame.fitting(answer(section), true, Type.NOTE + 1, wide);
        pen.bold(Role.TEXT, answer, left, 34, Type.NOTE + 1, Anchor.START);
    }

    private static TypicalSection typical(Draft draft, Section section) {
        List<Stretch<TypicalSection>> all = draft.design().typical();
        for (Stretch<TypicalSection> stretch : all) {
            if (stretch.holds(section.station())) {
                return stretch.value();
            }
        }
        return all.get(all.size() - 1).value();
    }

    /** What is done at the middle, in a line. */
    private String answer(Section section) {
        double stripped = section.stripped().at(0);
        double subgrade = section.subgrade().at(0);
        double topsoil = section.ground().at(0) - stripped;
        double up = subgrade - stripped;
        double stone = section.profileHeight() - subgrade;
        String earth =
                Math.abs(up) < 0.005
                        ? "no earth to move"
                        : (up < 0 ? "dig " : "build up ")
                                + Words.fine(Quantity.length(Math.abs(up)), units());
        return earth
                + " at the middle · topsoil "
                + Words.of(Quantity.depth(topsoil), units())
                + " · stone "
                + Words.of(Quantity.depth(stone), units());
    }

    private static void words(Pen pen, Frame f, Section section, Frame.Room room) {
        for (SideResult side : List.of(section.left(), section.right())) {
            Corner caught = side.catchPoint();
            if (caught != null) {
                double x = f.x(caught.offset());
                double y = f.y(caught.height());
                if (!room.put(pen, Role.TEXT, "catch", x, y - 10, false)) {
                    room.put(pen, Role.TEXT, "catch", x, y + 22, false);
                }
            }
            Corner ditch = side.ditchInner();
            if (ditch != null) {
                room.put(
                        pen,
                        Role.TEXT,
                        "ditch",
                        f.x(ditch.offset()),
                        f.y(ditch.height()) + 20,
                        false);
            }
        }
    }

    private void grips(Pen pen, Frame f, Section section) {
        Corner left = section.left().ditchInner();
        Corner right = section.right().ditchInner();
        if (left != null) {
            grip(pen, f, Grip.LEFT_DITCH, left.offset(), left.height());
        }
        if (right != null) {
            grip(pen, f, Grip.RIGHT_DITCH, right.offset(), right.height());
        }
        Corner edge = section.right().edge();
        grip(pen, f, Grip.WIDTH, edge.offset(), edge.height());
        double under = section.subgrade().at(0);
        if (section.profileHeight() - under > 0.01) {
            grip(pen, f, Grip.STONE, 0, under);
        }
    }

    private void grip(Pen pen, Frame f, Grip grip, double offset, double height) {
        double x = f.x(offset);
        double y = f.y(height);
        Outline dot = Outline.circle(x, y, 6, 20);
        pen.area(Role.MARKER, dot).line(Role.PLACE, dot);
        handles.add(new Handle(grip, x, y));
    }

    private @Nullable Handle at(double px, double py) {
        Handle best = null;
        double bestAway = REACH;
        for (Handle handle : handles) {
            double away = Math.hypot(handle.x() - px, handle.y() - py);
            if (away <= bestAway) {
                best = handle;
                bestAway = away;
            }
        }
        return best;
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        Handle handle = at(event.getX(), event.getY());
        held = handle == null ? null : handle.grip();
        heldSection = seen;
    }

    private void dragging(MouseEvent event) {
        Grip grip = held;
        Section section = heldSection;
        Frame f = frame;
        if (grip == null || section == null || f == null) {
            return;
        }
        Session.Gesture moving = gesture;
        if (moving == null) {
            heldFrame = f;
            moving = session.begin(name(grip));
            gesture = moving;
        }
        double offset = f.along(event.getX());
        double height = f.height(event.getY());
        UnaryOperator<ShapePart> change = change(grip, section, offset, height);
        double station = section.station();
        moving.to(plan -> reshaped(plan, station, change));
    }

    private static String name(Grip grip) {
        return switch (grip) {
            case LEFT_DITCH -> "the left ditch's depth";
            case RIGHT_DITCH -> "the right ditch's depth";
            case WIDTH -> "the width";
            case STONE -> "the thickness of the lowest layer";
        };
    }

    private double snap(double metres, double us, double metric) {
        double step = units() == UnitSystem.US ? us : metric;
        return Math.rint(metres / step) * step;
    }

    private UnaryOperator<ShapePart> change(
            Grip grip, Section section, double offset, double height) {
        return switch (grip) {
            case LEFT_DITCH -> {
                double depth = snap(section.left().hinge().height() - height, 0.0254, 0.01);
                yield shape -> Shapes.sides(shape, Shapes.deep(shape.left(), depth), shape.right());
            }
            case RIGHT_DITCH -> {
                double depth = snap(section.right().hinge().height() - height, 0.0254, 0.01);
                yield shape -> Shapes.sides(shape, shape.left(), Shapes.deep(shape.right(), depth));
            }
            case WIDTH -> {
                double width = snap(2 * Math.abs(offset), 0.25 * FOOT, 0.05);
                yield shape -> Shapes.wide(shape, width);
            }
            case STONE -> {
                double stone = section.profileHeight() - height;
                yield shape -> {
                    double others = 0;
                    for (int i = 0; i + 1 < shape.layers().size(); i++) {
                        others += shape.layers().get(i).thickness();
                    }
                    double lowest = Math.max(0.0254, snap(stone - others, 0.0254 / 2, 0.005));
                    return Shapes.thick(shape, shape.layers().size() - 1, lowest);
                };
            }
        };
    }

    /** The plan with the shape that holds at a station changed. */
    private static Plan reshaped(Plan plan, double station, UnaryOperator<ShapePart> change) {
        return Shapes.changed(plan, Shapes.nameAt(plan, station), change);
    }

    private void released() {
        Session.Gesture moving = gesture;
        heldFrame = null;
        held = null;
        heldSection = null;
        if (moving != null) {
            gesture = null;
            moving.done();
            repaint();
        }
    }

    private void moved(MouseEvent event) {
        setCursor(at(event.getX(), event.getY()) == null ? Cursor.DEFAULT : Cursor.HAND);
    }

    private void keyed(KeyEvent event) {
        Session.Gesture moving = gesture;
        if (event.getCode() == KeyCode.ESCAPE && moving != null) {
            gesture = null;
            heldFrame = null;
            held = null;
            moving.cancel();
            event.consume();
        }
    }
}
