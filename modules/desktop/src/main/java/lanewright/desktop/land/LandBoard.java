package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Picture;
import lanewright.desktop.session.Ghost;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Role;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * The land, with the lane on it. Drag the land to move it, roll the wheel to come nearer; drag a
 * point of the lane to move it, double-click the lane to put a point in, press Delete to take the
 * chosen one out.
 */
public final class LandBoard extends Board implements AutoCloseable {

    /** How near the pointer must be to take hold of something, px. */
    private static final double REACH = 11;

    /** How much areas over the land hide of it. */
    private static final double SEEN_THROUGH = 0.62;

    /** How much what words stand on hides of what is below. */
    private static final double WORDS_COVER = 0.86;

    private final BareLand land = new BareLand(this::repaint);
    private final WetLand wet = new WetLand(this::repaint);
    private final ReadOnlyStringWrapper readout = new ReadOnlyStringWrapper("");
    private final BooleanProperty taping = new SimpleBooleanProperty(false);
    private @Nullable Session session;
    private UnitSystem units = UnitSystem.METRIC;
    private View view = new View(0, 0, 1, 100, 100);
    private @Nullable View shown;
    private boolean fitted;
    private boolean asFitted;
    private Session.@Nullable Gesture gesture;
    private int chosen = -1;
    private int held = -1;
    private double pressX;
    private double pressY;
    private double lastX;
    private double lastY;
    private boolean dragged;
    private boolean panning;
    private List<LandMarks.Sign> signs = List.of();
    private @Nullable WaterMarks waterSigns;
    private List<Mark> drawn = List.of();
    private double @Nullable [] ringed;
    private final List<double[]> tape = new ArrayList<>();
    private final List<double[]> points = new ArrayList<>();
    private @Nullable Consumer<List<double[]>> drawing;

    /** An empty board. */
    public LandBoard() {
        setId("land");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("The land from above, with the lane");
        setOnMousePressed(this::pressed);
        setOnMouseDragged(this::dragging);
        setOnMouseReleased(this::released);
        setOnMouseMoved(this::moved);
        setOnScroll(this::scrolled);
        setOnKeyPressed(this::keyed);
        themeProperty().addListener((seen, was, now) -> land.look(view, units, now));
        widthProperty().addListener((seen, was, now) -> resized());
        heightProperty().addListener((seen, was, now) -> resized());
    }

    /** What lies under the pointer: place and height, in the owner's units. */
    public ReadOnlyStringProperty readout() {
        return readout.getReadOnlyProperty();
    }

    /** Whether the pointer measures distances instead of moving the land. */
    public BooleanProperty taping() {
        return taping;
    }

    /** Shows a plan that is being worked on. */
    public void show(Session opened) {
        session = opened;
        fitted = false;
        opened.shown()
                .addListener(
                        (seen, was, now) -> {
                            if (!now.looksLike(was)) {
                                newsOf(now);
                            }
                        });
        opened.marker().addListener((seen, was, now) -> repaint());
        opened.open().addListener((seen, was, now) -> repaint());
        opened.rainStep().addListener((seen, was, now) -> repaint());
        opened.wetGround().addListener((seen, was, now) -> repaint());
        opened.ghost().addListener((seen, was, now) -> repaint());
        opened.land()
                .addListener(
                        (seen, was, now) -> {
                            if (now != null) {
                                land(now.survey(), now.ground());
                            }
                        });
        newsOf(opened.shown().get());
    }

    /** Shows measured land on which there is no lane yet. */
    public void show(Survey measured, Ground made, UnitSystem shownUnits) {
        units = shownUnits;
        fitted = fitted && land.ground() == made;
        land(measured, made);
    }

    /**
     * Lets the owner draw the first lane: each click puts a point, and a double click or Enter ends
     * it.
     *
     * @param done is handed the points, local metres
     */
    public void draw(Consumer<List<double[]>> done) {
        points.clear();
        drawing = done;
        setCursor(Cursor.CROSSHAIR);
        repaint();
    }

    private void newsOf(Shown now) {
        units = now.file().plan().units();
        Draft draft = now.draft();
        if (draft != null) {
            land(draft.survey(), draft.ground());
        }
        Session opened = session;
        repaint(opened != null && opened.isMoving() && gesture == null);
    }

    private void land(Survey measured, Ground made) {
        boolean another = land.ground() != made;
        land.take(measured, made);
        land.look(view, units, theme());
        if (another && !fitted) {
            fit();
        }
    }

    /** Shows all of the lane, or all of the land where there is no lane. */
    public void fit() {
        Ground made = land.ground();
        if (made == null || getWidth() < 2 || getHeight() < 2) {
            return;
        }
        double left = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Draft draft = draft();
        if (draft != null) {
            Alignment line = draft.design().alignment();
            double around = 25;
            for (double s = 0; s <= line.length(); s += Math.max(1, line.length() / 200)) {
                left = Math.min(left, line.x(s) - around);
                right = Math.max(right, line.x(s) + around);
                low = Math.min(low, line.y(s) - around);
                high = Math.max(high, line.y(s) + around);
            }
        } else {
            for (int v = 0; v < made.vertexCount(); v++) {
                left = Math.min(left, made.x(v));
                right = Math.max(right, made.x(v));
                low = Math.min(low, made.y(v));
                high = Math.max(high, made.y(v));
            }
        }
        fitted = true;
        look(View.fitting(left, low, right, high, getWidth(), getHeight()));
        asFitted = true;
    }

    /** Brings a place into the middle. */
    public void centre(double east, double north) {
        look(view.at(east, north));
    }

    /** Brings a place into the middle and rings it, until Escape, a click or another place. */
    public void point(double east, double north) {
        ringed = new double[] {east, north};
        centre(east, north);
    }

    /** Comes nearer (over 1) or goes farther (under 1). */
    public void zoom(double factor) {
        look(view.zoomed(factor, getWidth() / 2, getHeight() / 2));
    }

    /** Where a place on the land lies on the board, px from its left top. */
    public double[] place(double east, double north) {
        return new double[] {view.px(east), view.py(north)};
    }

    private void look(View next) {
        asFitted = false;
        view = next;
        land.look(view, units, theme());
        place();
        repaint();
    }

    private void resized() {
        view = view.sized(Math.max(1, getWidth()), Math.max(1, getHeight()));
        land.look(view, units, theme());
        // Whoever did not choose a part of the land sees all of it in the new room too.
        if (!fitted || asFitted) {
            fit();
        }
    }

    private @Nullable Draft draft() {
        Session opened = session;
        return opened == null ? null : opened.shown().get().draft();
    }

    @Override
    protected Picture picture(double width, double height) {
        Picture picture = land.picture(view);
        Terrain.Painted seen = land.seen();
        if (wetShown()) {
            wet.lay(picture, view, theme());
        }
        var plates = new Plates(view);
        plates.keepFree(new Box(0, height - 48, 230, 48));
        plates.keepFree(new Box(width - 40, 0, 40, 70));
        var marks = new LandMarks(plates, view, units);
        paintPlan(plates, marks);
        if (land.ground() != null) {
            marks.furniture();
        }
        if (seen != null) {
            heights(plates, seen);
        }
        drawn = plates.above();
        View now = view;
        return picture.drawing(new Drawing(width, height, plates.below()), SEEN_THROUGH)
                .drawing(new Drawing(width, height, drawn), WORDS_COVER)
                .whenShown(
                        () -> {
                            shown = now;
                            place();
                        });
    }

    /** Lays what is seen where it belongs, until it is painted anew. */
    private void place() {
        View of = shown;
        if (of != null) {
            move(view.scale() / of.scale(), view.px(of.east(0)), view.py(of.north(0)));
        }
    }

    /** The words that are drawn over the land now, with what they stand on. */
    public List<Mark> drawnWords() {
        return drawn;
    }

    /** Whether it is shown where the land stays wet; if so, that is asked for. */
    private boolean wetShown() {
        Session opened = session;
        if (opened == null || !opened.wetGround().get() || opened.open().get() != Topic.WATER) {
            return false;
        }
        Outcome outcome = opened.shown().get().outcome();
        if (outcome != null) {
            wet.show(outcome.water().wet());
        }
        return true;
    }

    private void heights(Plates plates, Terrain.Painted seen) {
        int decimals = seen.step() * 5 < 1 ? 2 : 0;
        for (Terrain.Label label : seen.labels()) {
            if (view.sees(label.x(), label.y())) {
                plates.turned(
                        Role.NOTE,
                        Words.fixed(label.height(), decimals),
                        view.px(label.x()),
                        view.py(label.y()) - 3,
                        label.turn());
            }
        }
    }

    private void paintPlan(Plates plates, LandMarks marks) {
        Survey measured = land.survey();
        Shots sorted = land.shots();
        Session opened = session;
        boolean trust = opened != null && opened.open().get() == Topic.GROUND;
        if (measured != null && sorted != null) {
            marks.probes(measured);
        }
        boolean named = trust || view.scale() > 12;
        Draft draft = draft();
        if (opened == null || draft == null) {
            if (named && measured != null && sorted != null) {
                marks.codes(measured, sorted);
            }
            if (drawing != null) {
                marks.tape(points, points.size() > 1 ? length(points) : "");
            } else if (opened != null && corners().size() > 1) {
                marks.tape(corners(), "");
                corners(marks);
            }
            paintTape(marks);
            return;
        }
        Shown shown = opened.shown().get();
        keepCornersFree(plates);
        marks.lane(draft);
        Outcome outcome = shown.outcome();
        // What matters most comes first, and has its place: what can hurt, and where water stands.
        WaterMarks told = null;
        if (outcome != null) {
            told = water(plates, opened, outcome);
            told.shapes();
            marks.hazards(outcome.hazards());
            told.places();
        }
        marks.stations(draft);
        marks.keepMarkerFree(draft, opened.marker().get());
        marks.looks(shown.findings(), draft.design().alignment());
        signs = marks.signs();
        if (outcome != null && told != null) {
            told.rest();
            Topic asked = opened.open().get();
            if (asked == Topic.EARTH || asked == Topic.ORDER || asked == Topic.FIELD) {
                new HeapMarks(plates, view, units).heaps(outcome.heaps().heaps());
            }
            if (asked == Topic.FIELD) {
                marks.stakes(outcome.stakes().stakes());
            }
        }
        waterSigns = told;
        if (named && measured != null && sorted != null) {
            marks.codes(measured, sorted);
        }
        Ghost ghost = opened.ghost().get();
        Draft other = ghost == null ? null : ghost.draft();
        if (other != null) {
            marks.ghost(other);
        }
        marks.marker(draft, opened.marker().get());
        double[] place = ringed;
        if (place != null) {
            marks.ring(place[0], place[1]);
        }
        corners(marks);
        paintTape(marks);
    }

    private WaterMarks water(Plates plates, Session opened, Outcome outcome) {
        Topic asked = opened.open().get();
        int steps = outcome.water().land().steps().size();
        return new WaterMarks(
                plates,
                view,
                units,
                outcome,
                asked == Topic.WATER || asked == Topic.GROUND,
                asked == Topic.WATER ? opened.rainStepOf(steps) : -1);
    }

    private void keepCornersFree(Plates plates) {
        if (editing()) {
            for (double[] corner : corners()) {
                double x = view.px(corner[0]);
                double y = view.py(corner[1]);
                plates.keepFree(new Box(x - 8, y - 8, 16, 16));
            }
        }
    }

    private void corners(LandMarks marks) {
        if (editing()) {
            List<double[]> corners = corners();
            for (int i = 0; i < corners.size(); i++) {
                boolean end = i == 0 || i == corners.size() - 1;
                marks.handle(corners.get(i)[0], corners.get(i)[1], end, i == chosen);
            }
        }
    }

    private void paintTape(LandMarks marks) {
        if (!tape.isEmpty()) {
            marks.tape(tape, tape.size() == 2 ? length(tape) : "");
        }
    }

    private String length(List<double[]> corners) {
        double sum = 0;
        for (int i = 1; i < corners.size(); i++) {
            sum +=
                    Math.hypot(
                            corners.get(i)[0] - corners.get(i - 1)[0],
                            corners.get(i)[1] - corners.get(i - 1)[1]);
        }
        return Words.of(Quantity.length(sum), units);
    }

    /** True while the line may be moved: when its question is open. */
    private boolean editing() {
        Session opened = session;
        return opened != null && opened.open().get() == Topic.LINE;
    }

    private @Nullable LaneCorners lane() {
        Session opened = session;
        Survey measured = land.survey();
        return opened == null || measured == null ? null : new LaneCorners(opened, measured);
    }

    private List<double[]> corners() {
        LaneCorners lane = lane();
        return lane == null ? List.of() : lane.places();
    }

    private int cornerAt(double px, double py) {
        List<double[]> corners = corners();
        int best = -1;
        double bestAway = REACH;
        for (int i = 0; i < corners.size(); i++) {
            double away =
                    Math.hypot(view.px(corners.get(i)[0]) - px, view.py(corners.get(i)[1]) - py);
            if (away <= bestAway) {
                best = i;
                bestAway = away;
            }
        }
        return best;
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        pressX = event.getX();
        pressY = event.getY();
        lastX = pressX;
        lastY = pressY;
        dragged = false;
        if (event.getButton() != MouseButton.PRIMARY) {
            panning = true;
            return;
        }
        if (taping.get()) {
            pull(event);
            return;
        }
        if (drawing == null && editing()) {
            held = cornerAt(pressX, pressY);
            if (held >= 0) {
                chosen = held;
                repaint();
                return;
            }
        }
        panning = true;
    }

    /** Puts an end of the tape: by two clicks, or by a press and where it is let go. */
    private void pull(MouseEvent event) {
        if (tape.size() != 1) {
            tape.clear();
        }
        tape.add(under(event));
        if (tape.size() == 2) {
            readout.set(length(tape));
        }
        repaint();
    }

    private double[] under(MouseEvent event) {
        return new double[] {view.east(event.getX()), view.north(event.getY())};
    }

    private void dragging(MouseEvent event) {
        if (!dragged && Math.hypot(event.getX() - pressX, event.getY() - pressY) < 3) {
            return;
        }
        dragged = true;
        Session opened = session;
        if (!tape.isEmpty() && taping.get()) {
            while (tape.size() > 1) {
                tape.remove(1);
            }
            tape.add(under(event));
            readout.set(length(tape));
            repaint();
        } else if (held >= 0 && opened != null) {
            Session.Gesture moving = gesture;
            if (moving == null) {
                moving = opened.begin("moving a point of the lane");
                gesture = moving;
            }
            double[] to = under(event);
            int point = held;
            LaneCorners lane = lane();
            if (lane != null) {
                moving.to(plan -> lane.moved(plan, point, to));
            }
        } else if (panning) {
            look(view.moved(event.getX() - lastX, event.getY() - lastY));
        }
        lastX = event.getX();
        lastY = event.getY();
    }

    private void released(MouseEvent event) {
        Session opened = session;
        Session.Gesture moving = gesture;
        if (moving != null) {
            moving.done();
            gesture = null;
        } else if (!dragged && event.getButton() == MouseButton.PRIMARY) {
            clicked(event, opened);
        }
        held = -1;
        panning = false;
    }

    private void clicked(MouseEvent event, @Nullable Session opened) {
        if (ringed != null) {
            ringed = null;
            repaint();
        }
        double[] at = under(event);
        if (drawing != null) {
            if (event.getClickCount() > 1 && points.size() > 1) {
                finishDrawing();
            } else if (event.getClickCount() == 1) {
                Ground made = land.ground();
                if (made != null && Double.isNaN(made.heightAt(at[0], at[1]))) {
                    readout.set("No ground was measured there: click where there is some.");
                } else {
                    points.add(at);
                }
                repaint();
            }
            return;
        }
        Draft draft = draft();
        if (opened == null || draft == null || taping.get()) {
            return;
        }
        LandMarks.Sign sign = signAt(event.getX(), event.getY());
        if (sign != null) {
            opened.pointTo(sign.finding());
            return;
        }
        Consumer<Session> row = waterAt(event.getX(), event.getY());
        if (row != null) {
            row.accept(opened);
            return;
        }
        Alignment line = draft.design().alignment();
        Place place = line.place(at[0], at[1]);
        if (place != null && Math.abs(place.offset()) * view.scale() < 40) {
            opened.marker().set(place.station());
            if (event.getClickCount() > 1 && editing()) {
                LaneCorners lane = lane();
                chosen = lane == null ? -1 : lane.putIn(line, place.station());
            }
        }
    }

    private LandMarks.@Nullable Sign signAt(double x, double y) {
        return signs.stream().filter(each -> each.box().holds(x, y)).findFirst().orElse(null);
    }

    /** What the sign of water at a place of the board opens, or null if there is none. */
    private @Nullable Consumer<Session> waterAt(double x, double y) {
        WaterMarks told = waterSigns;
        return told == null ? null : told.at(x, y);
    }

    private void finishDrawing() {
        Consumer<List<double[]>> done = drawing;
        if (done != null && points.size() > 1) {
            drawing = null;
            setCursor(Cursor.DEFAULT);
            done.accept(List.copyOf(points));
            points.clear();
        }
    }

    private void moved(MouseEvent event) {
        boolean pulling = taping.get() && tape.size() == 1;
        readout.set(
                pulling
                        ? length(List.of(tape.get(0), under(event)))
                        : read(view.east(event.getX()), view.north(event.getY())));
        if (drawing == null) {
            setCursor(
                    (editing() && cornerAt(event.getX(), event.getY()) >= 0)
                                    || signAt(event.getX(), event.getY()) != null
                                    || waterAt(event.getX(), event.getY()) != null
                            ? Cursor.HAND
                            : Cursor.DEFAULT);
        }
    }

    private String read(double east, double north) {
        Survey measured = land.survey();
        Ground made = land.ground();
        Session opened = session;
        return measured == null || made == null
                ? ""
                : Readout.of(
                                measured,
                                made,
                                opened == null ? null : opened.shown().get().outcome(),
                                east,
                                north,
                                units)
                        + (wetShown() ? wet.words(east, north) : "");
    }

    private void scrolled(ScrollEvent event) {
        if (event.getDeltaY() != 0) {
            look(view.zoomed(Math.pow(1.0018, event.getDeltaY()), event.getX(), event.getY()));
            event.consume();
        }
    }

    private void keyed(KeyEvent event) {
        KeyCode code = event.getCode();
        double step = event.isShiftDown() ? 60 : 0;
        switch (code) {
            case PLUS, EQUALS, ADD -> zoom(1.25);
            case MINUS, SUBTRACT -> zoom(0.8);
            case DIGIT0, HOME -> fit();
            case ENTER -> finishDrawing();
            case ESCAPE -> escape();
            case DELETE, BACK_SPACE -> takeOut();
            case LEFT, RIGHT, UP, DOWN -> {
                if (step == 0) {
                    return;
                }
                double dx = code == KeyCode.LEFT ? step : code == KeyCode.RIGHT ? -step : 0;
                double dy = code == KeyCode.UP ? step : code == KeyCode.DOWN ? -step : 0;
                look(view.moved(dx, dy));
            }
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void escape() {
        Session.Gesture moving = gesture;
        if (moving != null) {
            moving.cancel();
            gesture = null;
            held = -1;
        }
        tape.clear();
        points.clear();
        ringed = null;
        repaint();
    }

    private void takeOut() {
        LaneCorners lane = lane();
        if (lane != null && editing() && chosen > 0) {
            lane.takeOut(chosen);
            chosen = -1;
        }
    }

    @Override
    public void close() {
        land.close();
    }
}
