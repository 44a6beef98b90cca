package lanewright.desktop.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.collections.ListChangeListener.Change;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.SelectionMode;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.SafeFile;
import lanewright.desktop.look.Board;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Theme;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Progress;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.folder.PlanFolder;
import lanewright.sheets.paint.PdfBook;
import lanewright.sheets.set.PlanFiles;
import lanewright.sheets.set.PlanSet;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/** The sheets page by page as they will be printed, and the way to put them into a folder. */
public final class SheetsPane {

    private final Session session;
    private final Chooser chooser;
    private final Runnable back;
    private final BorderPane pane = new BorderPane();
    private final ListView<PdfBook.Leaf> pages = new ListView<>();
    private final Page page = new Page();
    private final Label says = new Label();
    private final ProgressBar bar = new ProgressBar(0);
    private final Button some = new Button("Save this sheet");
    private final Button save = new Button("Put the whole plan into a folder");
    private final Button stop = new Button("Stop");
    private final ChangeListener<Shown> news = (seen, was, now) -> news(now);
    private long laidOut = -1;
    private volatile boolean stopped;

    /**
     * The sheets of a plan.
     *
     * @param theme of what lies round the paper
     * @param back closes this
     */
    public SheetsPane(Session session, Chooser chooser, Theme theme, Runnable back) {
        this.session = session;
        this.chooser = chooser;
        this.back = back;
        pane.getStyleClass().addAll("over");
        pane.setId("sheets-pane");
        page.themeProperty().set(theme);
        pages.setId("pages");
        pages.setPrefWidth(240);
        pages.setAccessibleText("Sheets");
        pages.setCellFactory(
                list ->
                        new ListCell<>() {
                            @Override
                            protected void updateItem(PdfBook.Leaf leaf, boolean empty) {
                                super.updateItem(leaf, empty);
                                setText(
                                        empty || leaf == null
                                                ? ""
                                                : (getIndex() + 1) + "  " + name(getIndex()));
                            }
                        });
        pages.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
        pages.getSelectionModel().getSelectedIndices().addListener((Change<?> seen) -> chosen());
        pages.getSelectionModel()
                .selectedItemProperty()
                .addListener((seen, was, now) -> page.show(now == null ? null : now.drawing()));
        Label title = new Label("Sheets");
        title.getStyleClass().add("plan-name");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        some.setId("save-pages");
        some.setOnAction(event -> saveSome());
        some.setTooltip(
                new Tooltip("Choose more than one in the list with Shift or Ctrl and a click."));
        save.setId("save-folder");
        save.getStyleClass().add("acting");
        save.setOnAction(event -> save());
        stop.setId("stop-saving");
        stop.setOnAction(event -> stopped = true);
        stop.setVisible(false);
        bar.setVisible(false);
        says.setId("sheets-say");
        says.setWrapText(true);
        Button close = new Button("Back to the plan");
        close.setId("back");
        close.setOnAction(event -> close());
        Button smaller = sized("smaller", "Smaller", () -> page.size(1 / Page.STEP));
        Button larger = sized("larger", "Larger", () -> page.size(Page.STEP));
        Button whole = sized("whole-page", "Whole page", page::whole);
        for (Button button : List.of(smaller, larger, whole, some, save, stop, close)) {
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        title.setMinWidth(Region.USE_PREF_SIZE);
        HBox buttons = new HBox(8, title, gap, smaller, larger, whole, some, save, close);
        buttons.setAlignment(Pos.CENTER_LEFT);
        HBox state = new HBox(12, says, bar, stop);
        state.setAlignment(Pos.CENTER_LEFT);
        VBox head = new VBox(4, buttons, state);
        head.getStyleClass().add("head");
        pane.setTop(head);
        pane.setLeft(pages);
        pane.setCenter(page);
        pane.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        close();
                        event.consume();
                    }
                });
        session.shown().addListener(news);
        news(session.shown().get());
    }

    private static Button sized(String id, String words, Runnable work) {
        Button button = new Button(words);
        button.setId(id);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> work.run());
        return button;
    }

    /** What to lay over the plan. */
    public Node node() {
        return pane;
    }

    private void close() {
        stopped = true;
        session.shown().removeListener(news);
        back.run();
    }

    private void news(Shown now) {
        Outcome outcome = now.outcome();
        save.setDisable(!now.settled());
        if (!now.settled() || outcome == null) {
            says.setText(
                    now.wrong() == null
                            ? "The plan is still being worked out."
                            : now.wrong().what() + " " + now.wrong().remedy());
            return;
        }
        if (now.outcomeEdit() == laidOut) {
            return;
        }
        laidOut = now.outcomeEdit();
        says.setText("Laying out the sheets …");
        background(
                () -> {
                    try {
                        List<PdfBook.Leaf> leaves = PlanSet.of(outcome);
                        Platform.runLater(() -> pages(leaves));
                    } catch (SurveyException e) {
                        Platform.runLater(() -> says.setText(e.what() + ". " + e.remedy()));
                    }
                });
    }

    /** What a page is called; one that continues another has the other's last name. */
    private String name(int index) {
        List<PdfBook.Leaf> leaves = pages.getItems();
        for (int i = Math.min(index, leaves.size() - 1); i >= 0; i--) {
            List<String> names = leaves.get(i).names();
            if (!names.isEmpty()) {
                return i == index
                        ? String.join(", ", names)
                        : names.get(names.size() - 1) + ", continued";
            }
        }
        return "";
    }

    private void pages(List<PdfBook.Leaf> leaves) {
        int kept = Math.max(0, pages.getSelectionModel().getSelectedIndex());
        pages.getItems().setAll(leaves);
        pages.getSelectionModel().clearAndSelect(Math.min(kept, leaves.size() - 1));
        says.setText(leaves.size() + " sheets");
    }

    private static void background(Runnable work) {
        Thread thread = new Thread(work, "lanewright-sheets");
        thread.setDaemon(true);
        thread.start();
    }

    /** Tells how many sheets are chosen. */
    private void chosen() {
        int count = pages.getSelectionModel().getSelectedIndices().size();
        some.setText(count > 1 ? "Save " + count + " sheets" : "Save this sheet");
        some.setDisable(count == 0);
    }

    /** Writes the chosen sheets into one file. */
    private void saveSome() {
        List<PdfBook.Leaf> leaves = pages.getItems();
        List<PdfBook.Leaf> chosen =
                pages.getSelectionModel().getSelectedIndices().stream()
                        .sorted()
                        .map(at -> new PdfBook.Leaf(List.of(name(at)), leaves.get(at).drawing()))
                        .toList();
        if (chosen.isEmpty()) {
            return;
        }
        String plan = session.file().plan().name();
        String first = chosen.get(0).name();
        Path target = chooser.pages(session.folder(), file(plan + " " + first) + ".pdf");
        if (target == null) {
            return;
        }
        background(
                () -> {
                    String told;
                    try {
                        var out = new ByteArrayOutputStream();
                        PdfBook.write(plan, chosen, out);
                        SafeFile.write(target, out.toByteArray());
                        told = "Saved: " + target;
                    } catch (IOException e) {
                        told = "The sheets could not be written: " + e.getMessage();
                    }
                    String words = told;
                    Platform.runLater(() -> says.setText(words));
                });
    }

    private static String file(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private void save() {
        Outcome outcome = session.shown().get().outcome();
        if (outcome == null || !session.shown().get().settled()) {
            return;
        }
        String name = file(outcome.plan().name()) + "-plan";
        Path target = chooser.sheets(session.folder(), name);
        if (target == null) {
            return;
        }
        stopped = false;
        save.setDisable(true);
        stop.setVisible(true);
        bar.setVisible(true);
        Progress progress =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {
                        Platform.runLater(
                                () -> {
                                    bar.setProgress(done);
                                    says.setText(doing);
                                });
                    }

                    @Override
                    public boolean isCancelled() {
                        return stopped;
                    }
                };
        background(
                () -> {
                    String told;
                    try {
                        PlanFolder.write(target, PlanFiles.of(outcome), progress);
                        told = "The plan folder lies in " + target;
                    } catch (CancellationException e) {
                        told = "Stopped. Nothing was written.";
                    } catch (IOException e) {
                        told = "The folder could not be written: " + e.getMessage();
                    } catch (SurveyException e) {
                        told = e.what() + ". " + e.remedy();
                    }
                    String words = told;
                    Platform.runLater(
                            () -> {
                                says.setText(words);
                                bar.setVisible(false);
                                stop.setVisible(false);
                                save.setDisable(!session.shown().get().settled());
                            });
                });
    }

    /**
     * One page: whole, or larger and moved by the pointer, the wheel or the keys. Larger, it stays
     * over the same place of the next page.
     */
    private static final class Page extends Board {
        /** So much larger or smaller at a time. */
        static final double STEP = 1.25;

        private static final double MOST = 8;
        private static final double AROUND = 16;

        /** How far a key moves the page, px. */
        private static final double MOVE = 80;

        /** Darker than anything about it, so that the white of the paper is all that shines. */
        private static final int DARK_TABLE = 0x121618;

        private @Nullable Drawing drawing;

        /** How much larger than whole. */
        private double larger = 1;

        /** What of the page lies in the middle of the window, as shares of its width and height. */
        private double across = 0.5;

        private double down = 0.5;
        private double lastX;
        private double lastY;

        Page() {
            setId("page");
            setAccessibleText("The sheet as it will be printed");
            setOnMousePressed(
                    event -> {
                        requestFocus();
                        lastX = event.getX();
                        lastY = event.getY();
                    });
            setOnMouseDragged(
                    event -> {
                        move(event.getX() - lastX, event.getY() - lastY);
                        lastX = event.getX();
                        lastY = event.getY();
                    });
            setOnScroll(
                    event -> {
                        size(Math.pow(1.0018, event.getDeltaY()));
                        event.consume();
                    });
            setOnKeyPressed(this::keyed);
        }

        void show(@Nullable Drawing now) {
            drawing = now;
            repaint();
        }

        void whole() {
            larger = 1;
            across = 0.5;
            down = 0.5;
            repaint();
        }

        void size(double by) {
            larger = Math.max(1, Math.min(MOST, larger * by));
            hold();
        }

        private void keyed(KeyEvent event) {
            switch (event.getCode()) {
                case PLUS, EQUALS, ADD -> size(STEP);
                case MINUS, SUBTRACT -> size(1 / STEP);
                case DIGIT0, HOME -> whole();
                case LEFT -> move(MOVE, 0);
                case RIGHT -> move(-MOVE, 0);
                case UP -> move(0, MOVE);
                case DOWN -> move(0, -MOVE);
                default -> {
                    return;
                }
            }
            event.consume();
        }

        private void move(double dx, double dy) {
            Drawing shown = drawing;
            if (shown != null) {
                double k = scale(shown, getWidth(), getHeight());
                across -= dx / (k * shown.width());
                down -= dy / (k * shown.height());
                hold();
            }
        }

        /** Keeps the page in sight: where all of it fits, it lies in the middle. */
        private void hold() {
            Drawing shown = drawing;
            if (shown != null) {
                double k = scale(shown, getWidth(), getHeight());
                across = held(across, (getWidth() / 2 - AROUND) / (k * shown.width()));
                down = held(down, (getHeight() / 2 - AROUND) / (k * shown.height()));
            }
            repaint();
        }

        private static double held(double at, double half) {
            return half >= 0.5 ? 0.5 : Math.max(half, Math.min(1 - half, at));
        }

        private double scale(Drawing shown, double width, double height) {
            double fits =
                    Math.min(
                            (width - 2 * AROUND) / shown.width(),
                            (height - 2 * AROUND) / shown.height());
            return larger * Math.max(1e-3, fits);
        }

        @Override
        protected Picture picture(double width, double height) {
            // Paper is paper, also in the evening.
            var picture =
                    new Picture(Theme.LIGHT)
                            .table(theme() == Theme.DARK ? DARK_TABLE : theme().rgb(0xE1DCCF));
            Drawing shown = drawing;
            if (shown == null) {
                return picture;
            }
            double k = scale(shown, width, height);
            double left = width / 2 - across * k * shown.width();
            double top = height / 2 - down * k * shown.height();
            var paper = new Pen().fill(Role.PLATE, new Box(0, 0, shown.width(), shown.height()));
            return picture.drawing(paper.drawing(shown.width(), shown.height()), left, top, k)
                    .drawing(shown, left, top, k);
        }
    }
}
