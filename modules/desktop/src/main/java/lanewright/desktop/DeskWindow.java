package lanewright.desktop;

import java.util.List;
import java.util.Locale;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.SplitPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import lanewright.desktop.ask.Questions;
import lanewright.desktop.ask.Steps;
import lanewright.desktop.land.LandBoard;
import lanewright.desktop.land.LandPlaces;
import lanewright.desktop.lane.AcrossBoard;
import lanewright.desktop.lane.ListingTable;
import lanewright.desktop.lane.LoadsBoard;
import lanewright.desktop.lane.UnrolledBoard;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Theme;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Where;
import lanewright.planner.listing.WorkListings;
import lanewright.planner.run.Draft;

/**
 * A plan in its window: questions at the left, the land at the right, and below it the views that
 * the open question needs.
 */
public final class DeskWindow implements AutoCloseable {

    private final Session session;
    private final BorderPane root = new BorderPane();
    private final LandBoard land = new LandBoard();
    private final UnrolledBoard unrolled;
    private final AcrossBoard across;
    private final LoadsBoard loads;
    private final Steps steps;
    private final ListingTable stakes;
    private final SplitPane views = new SplitPane();
    private final SplitPane below = new SplitPane();
    private final Label name = new Label();
    private final Label kept = new Label();
    private final Label doing = new Label();
    private final ProgressBar bar = new ProgressBar(0);
    private final Button undo = new Button("Undo");
    private final Button redo = new Button("Redo");
    private final HBox actions = new HBox(6);
    private final Button dark = new Button("Dark");
    private final ReadOnlyObjectWrapper<Theme> theme = new ReadOnlyObjectWrapper<>(Theme.LIGHT);

    /** The window of a plan. */
    public DeskWindow(Session session) {
        this.session = session;
        unrolled = new UnrolledBoard(session);
        across = new AcrossBoard(session);
        loads = new LoadsBoard(session);
        steps = new Steps(session);
        stakes =
                new ListingTable(
                        session, "stakes", outcome -> WorkListings.stakes(outcome.stakes()));
        root.getStyleClass().add("desk");
        root.getStylesheets()
                .add(DeskWindow.class.getResource("/lanewright/desktop/look.css").toExternalForm());
        Questions questions = new Questions(session, this::jump);
        Node side = questions.node();
        if (side instanceof Region region) {
            region.setPrefWidth(364);
            region.setMinWidth(300);
        }
        root.setLeft(side);
        root.setTop(header());
        views.setOrientation(Orientation.VERTICAL);
        views.getStyleClass().add("views");
        below.getStyleClass().add("views");
        root.setCenter(views);
        root.setBottom(footer());
        land.show(session);
        session.open().addListener((seen, was, now) -> arrange(now));
        session.shown().addListener((seen, was, now) -> news(now));
        root.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
        arrange(session.open().get());
        news(session.shown().get());
    }

    /** What to put into a scene. */
    public Parent root() {
        return root;
    }

    /** The plan that is worked on. */
    public Session session() {
        return session;
    }

    /** The land. */
    public LandBoard land() {
        return land;
    }

    /** The right end of the head, where further actions belong. */
    public HBox actions() {
        return actions;
    }

    /** Says when the plan was last kept. */
    public void sayKept(String words) {
        kept.setText(words);
    }

    private Node header() {
        name.getStyleClass().add("plan-name");
        kept.setId("kept");
        kept.getStyleClass().add("note");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        undo.setId("undo");
        redo.setId("redo");
        undo.setOnAction(event -> session.undo());
        redo.setOnAction(event -> session.redo());
        undo.disableProperty().bind(session.undoable().isEmpty());
        redo.disableProperty().bind(session.redoable().isEmpty());
        for (Button button : List.of(undo, redo)) {
            button.getStyleClass().add("quiet");
        }
        told(undo, "Undo ", session.undoable());
        told(redo, "Redo ", session.redoable());
        HBox head = new HBox(12, name, kept, gap, undo, redo, actions);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("head");
        return head;
    }

    /** Says what a button would undo or do again, to the pointer and to a reader. */
    private static void told(Button button, String does, ObservableValue<String> what) {
        Tooltip tip = new Tooltip();
        tip.textProperty().bind(what.map(does::concat));
        button.setTooltip(tip);
        button.accessibleTextProperty().bind(tip.textProperty());
    }

    private Node footer() {
        Label readout = new Label();
        readout.textProperty().bind(land.readout());
        readout.getStyleClass().add("readout");
        readout.setId("readout");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        ToggleButton tape = new ToggleButton("Tape");
        tape.setId("tape");
        tape.getStyleClass().add("quiet");
        tape.selectedProperty().bindBidirectional(land.taping());
        ToggleButton key = new ToggleButton("Key and words");
        key.setId("key");
        key.getStyleClass().add("quiet");
        key.setOnAction(
                event ->
                        root.setRight(
                                key.isSelected()
                                        ? new KeyPane(theme.getReadOnlyProperty()).node()
                                        : null));
        Button whole = quiet("Whole lane", "fit");
        whole.setOnAction(event -> land.fit());
        Button nearer = quiet("Nearer", "nearer");
        nearer.setOnAction(event -> land.zoom(1.4));
        Button farther = quiet("Farther", "farther");
        farther.setOnAction(event -> land.zoom(1 / 1.4));
        dark.setId("dark");
        dark.getStyleClass().add("quiet");
        dark.setOnAction(event -> setTheme(theme() == Theme.DARK ? Theme.LIGHT : Theme.DARK));
        doing.getStyleClass().add("note");
        bar.setPrefWidth(120);
        HBox foot = new HBox(10, readout, gap, doing, bar, key, tape, whole, nearer, farther, dark);
        for (Node each : foot.getChildren()) {
            if (each instanceof javafx.scene.control.ButtonBase button) {
                button.setMinWidth(Region.USE_PREF_SIZE);
            }
        }
        doing.setMinWidth(40);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("foot");
        return foot;
    }

    private static Button quiet(String words, String id) {
        Button button = new Button(words);
        button.setId(id);
        button.getStyleClass().add("quiet");
        return button;
    }

    /** Light or dark, everywhere. */
    public void setTheme(Theme now) {
        theme.set(now);
        now.dress(root);
        // The button says what pressing it does.
        dark.setText(now == Theme.DARK ? "Light" : "Dark");
        for (Board board : List.of(land, unrolled, across, loads)) {
            board.themeProperty().set(now);
        }
    }

    /** Light or dark. */
    public Theme theme() {
        return theme.get();
    }

    /** Light or dark, for what is laid over the plan. */
    public ReadOnlyObjectProperty<Theme> themeProperty() {
        return theme.getReadOnlyProperty();
    }

    /** The views that a question needs, the land always among them. */
    private void arrange(Topic topic) {
        List<Node> under =
                switch (topic) {
                    case GROUND -> List.of();
                    case ORDER -> List.of(steps.node());
                    case FIELD -> List.of(stakes.node());
                    case LINE -> List.of(unrolled);
                    case GRADE, WATER, EARTH -> List.of(unrolled, across);
                    case SHAPE -> List.of(across, unrolled);
                    case STONE -> List.of(loads);
                };
        below.getItems().setAll(under);
        if (under.size() == 2) {
            below.setDividerPositions(0.6);
        }
        if (under.isEmpty()) {
            views.getItems().setAll(land);
        } else {
            views.getItems().setAll(land, below);
            views.setDividerPositions(topic == Topic.ORDER ? 0.45 : 0.58);
        }
    }

    private void news(Shown now) {
        name.setText(now.file().plan().name());
        boolean busy = !now.settled() && now.wrong() == null;
        bar.setVisible(busy);
        bar.setProgress(now.part());
        Shown.Wrong wrong = now.wrong();
        doing.setText(
                wrong != null ? wrong.what() + " " + wrong.remedy() : busy ? working(now) : "");
        doing.getStyleClass().remove("wrong");
        if (wrong != null) {
            doing.getStyleClass().add("wrong");
        }
    }

    /** What of the plan is being worked out, and which work of it goes on. */
    private static String working(Shown now) {
        String what =
                now.drafted()
                        ? "Working out water, order and stakes"
                        : now.draft() == null
                                ? "Working out the ground and the lane"
                                : "Working out the lane, its dirt and its stone";
        // Only work that goes on, such as "cutting sections": the word of a part that is over,
        // such as "done", would say that all is.
        boolean going = now.doing().matches("\\p{L}+ing\\b.*");
        return what
                + (going
                        ? ": "
                                + now.doing().substring(0, 1).toLowerCase(Locale.ROOT)
                                + now.doing().substring(1)
                        : "");
    }

    private void jump(Where where) {
        Draft draft = session.shown().get().draft();
        if (draft == null) {
            return;
        }
        Double from = where.from();
        if (from != null) {
            Double to = where.to();
            session.marker().set(to == null ? from : (from + to) / 2);
        }
        double[] at = LandPlaces.of(where, draft.design().alignment());
        if (at != null) {
            land.point(at[0], at[1]);
        }
    }

    private void keyed(KeyEvent event) {
        if (event.isShortcutDown() && event.getCode() == KeyCode.Z) {
            if (event.isShiftDown()) {
                session.redo();
            } else {
                session.undo();
            }
            event.consume();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.Y) {
            session.redo();
            event.consume();
        } else if (event.isShortcutDown()
                && event.getCode().isDigitKey()
                && event.getCode() != KeyCode.DIGIT0) {
            int question = event.getCode().getName().charAt(0) - '1';
            session.open().set(List.of(Topic.values()).get(question));
            event.consume();
        } else if (event.getTarget() instanceof Board
                && !event.isShiftDown()
                && !event.isAltDown()
                && (event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT)) {
            step(event.getCode() == KeyCode.LEFT ? -1 : 1);
            event.consume();
        }
    }

    /** Moves the marker from section to section. */
    private void step(int by) {
        Draft draft = session.shown().get().draft();
        if (draft == null) {
            return;
        }
        double now = session.marker().get();
        double next = by > 0 ? draft.design().length() : 0;
        for (var section : draft.sections().sections()) {
            double s = section.station();
            if (by > 0 && s > now + 1e-6) {
                next = Math.min(next, s);
            } else if (by < 0 && s < now - 1e-6) {
                next = Math.max(next, s);
            }
        }
        session.marker().set(next);
    }

    @Override
    public void close() {
        land.close();
        session.close();
    }
}
