package lanewright.desktop;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.Draftbook;
import lanewright.desktop.files.Home;
import lanewright.desktop.files.KeptCopies;
import lanewright.desktop.files.Remembered;
import lanewright.desktop.files.Trail;
import lanewright.desktop.look.Theme;
import lanewright.desktop.paper.ComparePane;
import lanewright.desktop.paper.SheetsPane;
import lanewright.desktop.session.Session;
import lanewright.desktop.start.StartPane;
import lanewright.desktop.start.Warming;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import org.jspecify.annotations.Nullable;

/**
 * The one window: the start, a survey that was just dropped on it, or a plan. Files may be dropped
 * on it at any time. Every edit is in a safe copy within a second; the plan's own file is written
 * when its owner says so.
 */
public final class Desk implements AutoCloseable, StartPane.Opening {

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Chooser chooser;
    private final Home home;
    private final Remembered remembered;
    private final Draftbook copies;
    private final StackPane root = new StackPane();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Lanewright");
    private @Nullable DeskWindow window;
    private @Nullable StartPane start;
    private @Nullable Warming warming;
    private @Nullable Path planPath;
    private String keptText = "";

    /**
     * A desk with nothing on it yet.
     *
     * @param chooser asks for files
     * @param home where to remember
     */
    public Desk(Chooser chooser, Home home) {
        this.chooser = chooser;
        this.home = home;
        this.remembered = new Remembered(home);
        this.copies = new Draftbook(home, this::copyFailed);
        root.getStyleClass().add("desk");
        root.getStylesheets()
                .add(Desk.class.getResource("/lanewright/desktop/look.css").toExternalForm());
        theme().dress(root);
        root.setOnDragOver(
                event -> {
                    if (event.getDragboard().hasFiles()) {
                        event.acceptTransferModes(TransferMode.COPY);
                    }
                    event.consume();
                });
        root.setOnDragDropped(
                event -> {
                    List<Path> files =
                            event.getDragboard().getFiles().stream().map(File::toPath).toList();
                    event.setDropCompleted(!files.isEmpty());
                    event.consume();
                    drop(files);
                });
        root.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    }

    /** What to put into a scene. */
    public Parent root() {
        return root;
    }

    /** What the window is called. */
    public ReadOnlyStringProperty title() {
        return title.getReadOnlyProperty();
    }

    /** Puts the window where it stood last, and remembers where it stands. */
    public void live(Stage stage) {
        stage.setWidth(Math.max(900, remembered.number("window.width", 1440)));
        stage.setHeight(Math.max(600, remembered.number("window.height", 900)));
        double x = remembered.number("window.x", Double.NaN);
        double y = remembered.number("window.y", Double.NaN);
        boolean seen = !javafx.stage.Screen.getScreensForRectangle(x, y, 200, 100).isEmpty();
        if (Double.isFinite(x + y) && seen) {
            stage.setX(x);
            stage.setY(y);
        }
        stage.setMaximized(remembered.word("window.maximized", "false").equals("true"));
        stage.setOnCloseRequest(
                event -> {
                    remembered.put("window.maximized", Boolean.toString(stage.isMaximized()));
                    if (!stage.isMaximized()) {
                        remembered.put("window.width", Double.toString(stage.getWidth()));
                        remembered.put("window.height", Double.toString(stage.getHeight()));
                        remembered.put("window.x", Double.toString(stage.getX()));
                        remembered.put("window.y", Double.toString(stage.getY()));
                    }
                });
    }

    /** Light or dark, as it was remembered. */
    private Theme theme() {
        return remembered.word("theme", "light").equals("dark") ? Theme.DARK : Theme.LIGHT;
    }

    /** Takes what goes on unseen only until a plan or a survey is opened. */
    public void untilOpened(Warming begun) {
        warming = begun;
    }

    private void opening() {
        Warming begun = warming;
        if (begun != null) {
            begun.close();
            warming = null;
        }
    }

    /** Shows the start: recent plans, survey files, samples, stone without a survey. */
    public void start() {
        leavePlan();
        StartPane pane = new StartPane(this, chooser, home, theme(), remembered, found());
        start = pane;
        title.set("Lanewright");
        root.getChildren().setAll(pane.node());
    }

    private List<Draftbook.Copy> found() {
        try {
            return copies.found();
        } catch (IOException e) {
            System.getLogger(Desk.class.getName())
                    .log(System.Logger.Level.WARNING, "safe copies cannot be read", e);
            return List.of();
        }
    }

    /** Opens what was dropped: one plan, or survey files. */
    public void drop(List<Path> files) {
        opening();
        if (files.size() == 1 && isPlan(files.get(0))) {
            openPlan(files.get(0));
            return;
        }
        StartPane pane = start;
        if (pane == null) {
            start();
            pane = start;
        }
        if (pane != null) {
            pane.surveys(files);
        }
    }

    /** A plan says which version of a plan it is, near its head; a survey in GeoJSON does not. */
    private static boolean isPlan(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".json")) {
            return false;
        }
        try (var in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(2000), StandardCharsets.UTF_8);
            return head.contains("\"version\"") && !head.contains("\"FeatureCollection\"");
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void openPlan(Path path) {
        opening();
        Path plan = path.toAbsolutePath().normalize();
        try {
            copies.flush();
            PlanFile own = PlanFile.read(plan.getFileName().toString(), Files.readAllBytes(plan));
            // As a plan is written, so that other blanks in the owner's file are no edit.
            String inFile = own.text();
            Draftbook.Copy copy = copies.of(plan);
            if (copy == null || copy.text().equals(inFile)) {
                goOn(own, plan, inFile, "");
                return;
            }
            PlanFile edited = copy.follows(inFile) ? readable(copy) : null;
            if (edited != null) {
                goOn(edited, plan, inFile, "Edits that were not kept are back");
            } else {
                Path aside = copies.putAside(plan);
                goOn(own, plan, inFile, "Older edits that were not kept lie in " + aside);
            }
        } catch (IOException e) {
            say("The plan " + plan + " cannot be read: " + e.getMessage());
        } catch (PlanException e) {
            say(String.valueOf(e.getMessage()));
        }
    }

    private static @Nullable PlanFile readable(Draftbook.Copy copy) {
        try {
            return PlanFile.read("the safe copy", copy.text().getBytes(StandardCharsets.UTF_8));
        } catch (PlanException e) {
            System.getLogger(Desk.class.getName())
                    .log(System.Logger.Level.WARNING, "a safe copy is no plan", e);
            return null;
        }
    }

    @Override
    public void openNew(PlanFile file, Path plan) {
        work(file, plan.toAbsolutePath().normalize(), "", "", null);
    }

    @Override
    public void goOn(PlanFile file, Path plan) {
        goOn(file, plan.toAbsolutePath().normalize(), "", "");
    }

    /** Goes on with a plan that was worked on before, with what can still be undone. */
    private void goOn(PlanFile file, Path plan, String inFile, String note) {
        // Its last edits may wait to be written still.
        Trail kept = copies.trail(plan);
        Trail trail = kept == null ? null : kept.from(file.text());
        String lost =
                kept != null && trail == null
                        ? "The plan was changed elsewhere meanwhile: undo begins anew."
                        : "";
        work(
                file,
                plan,
                inFile,
                note.isEmpty() || lost.isEmpty() ? note + lost : note + ". " + lost,
                trail);
    }

    private void say(String trouble) {
        StartPane pane = start;
        if (pane == null) {
            start();
            pane = start;
        }
        if (pane != null) {
            pane.say(trouble);
        }
    }

    private void work(PlanFile file, Path plan, String inFile, String note, @Nullable Trail trail) {
        String left = plan.equals(planPath) ? "" : unkept();
        leavePlan();
        start = null;
        planPath = plan;
        keptText = inFile;
        copies.begin(plan, inFile);
        Path folder = plan.getParent();
        Session session =
                new Session(file, folder == null ? Path.of("") : folder, Platform::runLater, trail);
        DeskWindow made = new DeskWindow(session);
        window = made;
        made.themeProperty()
                .addListener(
                        (seen, was, now) -> {
                            remembered.put("theme", now == Theme.DARK ? "dark" : "light");
                            now.dress(root);
                        });
        made.setTheme(theme());
        actions(made, session, plan);
        session.shown()
                .addListener(
                        (seen, was, now) -> {
                            if (was.file() != now.file()) {
                                edited(made, now.file());
                            }
                        });
        root.getChildren().setAll(made.root());
        edited(made, file);
        if (!note.isEmpty() || !left.isEmpty()) {
            made.sayKept(note.isEmpty() ? left : note);
        }
        try {
            if (Files.isRegularFile(plan)) {
                remembered.opened(plan);
            }
        } catch (IOException e) {
            made.sayKept("Recent plans cannot be remembered: " + e.getMessage());
        }
    }

    private static void keepCopy(DeskWindow in, Session session, KeptCopies kept) {
        try {
            in.sayKept("Kept as " + kept.add(session.file().text()).name());
        } catch (IOException e) {
            in.sayKept("The copy could not be kept: " + e.getMessage());
        }
    }

    private void actions(DeskWindow made, Session session, Path plan) {
        KeptCopies kept = new KeptCopies(home, plan);
        Button keep = quiet("Keep", "keep");
        keep.setOnAction(event -> keep());
        Button copy = quiet("Keep a copy", "keep-copy");
        copy.setOnAction(event -> keepCopy(made, session, kept));
        Button compare = quiet("Compare", "compare");
        compare.setOnAction(
                event -> over(new ComparePane(session, kept, chooser, this::back).node()));
        Button sheets = quiet("Sheets", "sheets");
        sheets.setOnAction(
                event -> over(new SheetsPane(session, chooser, made.theme(), this::back).node()));
        Button other = quiet("Another plan", "another");
        other.setOnAction(event -> another());
        made.actions().getChildren().addAll(keep, copy, compare, sheets, other);
    }

    /** Leaves the plan for the start, and says where edits are that are not in its file yet. */
    private void another() {
        String unkept = unkept();
        start();
        StartPane pane = start;
        if (!unkept.isEmpty() && pane != null) {
            pane.note(unkept + " Open the plan again and they are back, then press Keep.");
        }
    }

    /** Where the edits of the plan are that its file does not hold; empty if it holds all. */
    private String unkept() {
        DeskWindow open = window;
        if (open == null || open.session().file().text().equals(keptText)) {
            return "";
        }
        return "Your edits of "
                + open.session().plan().name()
                + " are not in its file yet: a safe copy holds them.";
    }

    private static Button quiet(String words, String id) {
        Button button = new Button(words);
        button.setId(id);
        button.getStyleClass().add("quiet");
        return button;
    }

    private void over(javafx.scene.Node pane) {
        root.getChildren().add(pane);
        pane.requestFocus();
    }

    private void back() {
        if (root.getChildren().size() > 1) {
            root.getChildren().remove(root.getChildren().size() - 1);
        }
    }

    private void edited(DeskWindow made, PlanFile file) {
        Path plan = planPath;
        if (plan == null) {
            return;
        }
        String text = file.text();
        boolean same = text.equals(keptText);
        title.set(file.plan().name() + (same ? "" : " · edits not kept") + " · Lanewright");
        copies.note(plan, text);
        copies.note(plan, made.session().trail());
        made.sayKept(same ? "kept" : "a safe copy holds your edits");
    }

    /** Writes the plan into its own file. */
    public void keep() {
        DeskWindow open = window;
        Path plan = planPath;
        if (open == null || plan == null) {
            return;
        }
        String text = open.session().file().text();
        copies.keep(
                plan, text, trouble -> Platform.runLater(() -> kept(open, plan, text, trouble)));
    }

    private void kept(DeskWindow in, Path plan, String text, @Nullable IOException trouble) {
        if (window != in) {
            return;
        }
        if (trouble != null) {
            in.sayKept("The plan could not be kept: " + trouble.getMessage());
            return;
        }
        keptText = text;
        edited(in, in.session().file());
        in.sayKept(
                "kept at "
                        + CLOCK.format(LocalTime.now(ZoneId.systemDefault()))
                        + " in "
                        + plan.getFileName());
        try {
            remembered.opened(plan);
        } catch (IOException e) {
            in.sayKept("Recent plans cannot be remembered: " + e.getMessage());
        }
    }

    private void keyed(KeyEvent event) {
        if (event.isShortcutDown() && event.getCode() == KeyCode.S) {
            keep();
            event.consume();
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.O) {
            Path plan = chooser.plan();
            if (plan != null) {
                openPlan(plan);
            }
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && root.getChildren().size() > 1) {
            back();
            event.consume();
        }
    }

    private void copyFailed(IOException trouble) {
        Platform.runLater(
                () -> {
                    DeskWindow open = window;
                    if (open != null) {
                        open.sayKept("No safe copy could be written: " + trouble.getMessage());
                    }
                });
    }

    private void leavePlan() {
        DeskWindow open = window;
        if (open != null) {
            copies.flush();
            open.close();
            window = null;
        }
        StartPane pane = start;
        if (pane != null) {
            pane.close();
            start = null;
        }
    }

    @Override
    public void close() {
        leavePlan();
        copies.close();
        try {
            remembered.keep();
        } catch (IOException e) {
            System.getLogger(Desk.class.getName())
                    .log(System.Logger.Level.WARNING, "the window's state cannot be kept", e);
        }
    }
}
