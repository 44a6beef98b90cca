package lanewright.desktop.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewright.desktop.land.LandBoard;
import lanewright.desktop.look.Theme;
import lanewright.ground.Ground;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.FirstPlan;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.Spot;
import lanewright.planner.document.SurveyPart;
import lanewright.planner.run.PartSurvey;
import lanewright.planner.run.Run;
import lanewright.survey.LonLat;
import lanewright.survey.Reading;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.GridPlace;
import lanewright.survey.read.Holds;
import org.jspecify.annotations.Nullable;

/**
 * What was understood of survey files, as a picture with a few rows; asks only what the files do
 * not say, and lets the first lane be drawn.
 */
final class SurveyPane implements AutoCloseable {

    private static final String FEET =
            "ft is the international foot, ftUS the U.S. survey foot. They differ by 2 parts in a"
                    + " million, 1 ft in 500,000 ft: nothing that can be measured on one piece of"
                    + " land. If you do not know, take ft. Only where coordinates run to hundreds"
                    + " of thousands, as on a state's map, ask whoever made them.";

    /** Room for what is told, px: nothing below it moves when more is told or less. */
    private static final double TELLING = 148;

    /** Room below the land for what was understood, px. */
    private static final double UNDERSTOOD = 178;

    private final StartPane.Opening opening;
    private final BorderPane root = new BorderPane();
    private final LandBoard land = new LandBoard();
    private final VBox side = new VBox(12);
    private final VBox files = new VBox(12);
    private final HBox understood = new HBox(24);
    private final Label says = new Label();
    private final Label trouble = new Label();

    /** Answers to what the files do not say, each with its reason: one press takes one. */
    private final VBox offers = new VBox(4);

    private final ProgressBar bar = new ProgressBar(0);
    private final TextField name = new TextField("My lane");
    private final ComboBox<String> units = new ComboBox<>();
    private final TextField frame = new TextField();
    private final CodeTicks codes = new CodeTicks(this::read);

    /** Grids that were asked where they lie. */
    private final Set<Path> asked = new HashSet<>();

    private final Button draw = new Button("Draw the lane");
    private final List<FileCard> rows = new ArrayList<>();
    private final AtomicLong newest = new AtomicLong();
    private @Nullable Survey survey;

    SurveyPane(StartPane.Opening opening, Theme theme, Runnable back) {
        this.opening = opening;
        land.themeProperty().set(theme);
        root.setId("survey-pane");
        Label title = new Label("What your files say");
        title.getStyleClass().add("plan-name");
        says.setId("survey-says");
        says.setWrapText(true);
        says.managedProperty().bind(says.textProperty().isNotEmpty());
        trouble.setId("survey-trouble");
        trouble.getStyleClass().add("wrong");
        trouble.setWrapText(true);
        trouble.managedProperty().bind(trouble.textProperty().isNotEmpty());
        offers.managedProperty().bind(Bindings.isNotEmpty(offers.getChildren()));
        units.getItems().setAll("US", "metric");
        units.setValue("US");
        units.setId("plan-units");
        units.setOnAction(event -> read());
        name.setId("plan-name");
        frame.setId("plan-frame");
        frame.setPromptText("local, or EPSG:26916");
        frame.setOnAction(event -> read());
        draw.setId("draw-lane");
        draw.getStyleClass().add("acting");
        draw.setDisable(true);
        draw.setOnAction(event -> draw());
        Button other = new Button("Something else");
        other.setId("other");
        other.setOnAction(event -> back.run());
        VBox told = new VBox(6, trouble, offers, says);
        ScrollPane telling = new ScrollPane(told);
        telling.setFitToWidth(true);
        telling.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        telling.setMinHeight(TELLING);
        telling.setMaxHeight(TELLING);
        telling.setPrefHeight(TELLING);
        telling.setFocusTraversable(false);
        telling.getStyleClass().add("start-scroll");
        VBox head = new VBox(8, title, telling, bar, new HBox(8, draw, other));
        head.getStyleClass().add("survey-head");
        head.setMinHeight(Region.USE_PREF_SIZE);
        // What comes in with the reading stands last, so that what can be clicked stays.
        side.getChildren()
                .addAll(
                        files,
                        Parts.note(FEET),
                        Parts.named("The lane is called", name),
                        Parts.named("Answers in", units),
                        Parts.named("Flat map", frame),
                        codes.node());
        side.getStyleClass().add("page");
        side.setPrefWidth(380);
        ScrollPane scroll = new ScrollPane(side);
        scroll.setFitToWidth(true);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.ALWAYS);
        scroll.getStyleClass().add("questions-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox panel = new VBox(head, scroll);
        panel.setPrefWidth(400);
        root.setLeft(panel);
        ScrollPane strip = new ScrollPane(understood);
        strip.setId("survey-understood");
        strip.setFitToWidth(true);
        strip.setMinHeight(UNDERSTOOD);
        strip.setMaxHeight(UNDERSTOOD);
        strip.setPrefHeight(UNDERSTOOD);
        strip.getStyleClass().add("start-scroll");
        understood.getStyleClass().add("survey-understood");
        BorderPane seen = new BorderPane(land);
        seen.setBottom(strip);
        root.setCenter(seen);
        Label readout = new Label();
        readout.textProperty().bind(land.readout());
        readout.getStyleClass().add("readout");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox foot =
                new HBox(
                        10,
                        readout,
                        gap,
                        quiet("Whole land", "fit", land::fit),
                        quiet("Nearer", "nearer", () -> land.zoom(1.4)),
                        quiet("Farther", "farther", () -> land.zoom(1 / 1.4)));
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("foot");
        root.setBottom(foot);
        bar.setVisible(false);
        bar.setMaxWidth(Double.MAX_VALUE);
    }

    Node node() {
        return root;
    }

    private static Button quiet(String words, String id, Runnable does) {
        Button button = new Button(words);
        button.setId(id);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> does.run());
        return button;
    }

    private final FileCard.Asking asking =
            new FileCard.Asking() {
                @Override
                public void read() {
                    SurveyPane.this.read();
                }

                @Override
                public void unitSaid(FileCard card) {
                    rows.forEach(row -> row.follow(card));
                    SurveyPane.this.read();
                }
            };

    /** Adds files and reads all. */
    void add(List<Path> paths) {
        for (Path path : paths) {
            Path whole = path.toAbsolutePath().normalize();
            if (rows.stream().noneMatch(row -> row.path().equals(whole))) {
                var row = new FileCard(whole, asking);
                rows.add(row);
                files.getChildren().add(row.card());
                understood.getChildren().add(row.understood());
            }
        }
        read();
    }

    private UnitSystem system() {
        return "metric".equals(units.getValue()) ? UnitSystem.METRIC : UnitSystem.US;
    }

    /** Folder that holds all files. */
    private Path folder() {
        Path shared = rows.get(0).path().getParent();
        for (FileCard row : rows) {
            while (shared != null && !row.path().startsWith(shared)) {
                shared = shared.getParent();
            }
        }
        Path none = rows.get(0).path().getRoot();
        return shared == null ? none : shared;
    }

    private PlanFile plan(List<Spot> places) throws PlanException {
        Path folder = folder();
        List<SurveyPart.File> parts = new ArrayList<>();
        String map = frame.getText().strip();
        rows.forEach(row -> parts.add(row.file(folder, map.equals("local"))));
        String called = name.getText().isBlank() ? "My lane" : name.getText().strip();
        double radius = system() == UnitSystem.US ? 60 * 0.3048 : 20;
        return FirstPlan.of(
                new FirstPlan.Wanted(
                        called,
                        system(),
                        map.isEmpty() ? null : map,
                        parts,
                        codes.chosen(),
                        places,
                        radius));
    }

    /** Reads all files as they are declared now; the newest order wins. */
    private void read() {
        long number = newest.incrementAndGet();
        trouble.setText("");
        offers.getChildren().clear();
        FileCard unasked = unasked();
        if (unasked != null) {
            askPlace(number, unasked);
            return;
        }
        PlanFile first;
        try {
            suggestFrame();
            // A plan needs a line; until one is drawn, any will do.
            first = plan(List.of(Spot.at(0, 0), Spot.at(1, 1)));
        } catch (PlanException | IllegalArgumentException e) {
            trouble.setText(String.valueOf(e.getMessage()));
            return;
        }
        Path folder = folder();
        says.setText("Reading …");
        bar.setVisible(true);
        Progress progress =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {
                        Platform.runLater(
                                () -> {
                                    if (newest.get() == number) {
                                        bar.setProgress(done);
                                        says.setText(doing);
                                    }
                                });
                    }

                    @Override
                    public boolean isCancelled() {
                        return newest.get() != number;
                    }
                };
        Thread reader =
                new Thread(
                        () -> {
                            try {
                                read(number, folder, first, progress);
                            } catch (CancellationException e) {
                                // A newer reading has begun, and will tell.
                            } catch (RuntimeException e) {
                                System.getLogger(SurveyPane.class.getName())
                                        .log(System.Logger.Level.ERROR, "reading failed", e);
                                Platform.runLater(
                                        () -> trouble.setText("The program failed: " + e));
                            }
                        },
                        "lanewright-read");
        reader.setDaemon(true);
        reader.start();
    }

    /** Reads on a thread of its own; what can be read is shown if not all can. */
    private void read(long number, Path folder, PlanFile first, Progress progress) {
        try {
            Run run = new Run(folder);
            Survey measured = run.survey(first, progress.part(0, 0.5));
            Platform.runLater(() -> readings(number, measured));
            Ground ground = run.ground(first, progress);
            Platform.runLater(() -> made(number, measured, ground));
        } catch (SurveyException e) {
            Platform.runLater(() -> wrong(number, e));
            PartSurvey part = PartSurvey.of(folder, first, e, progress);
            Platform.runLater(() -> known(number, part, e));
        }
    }

    /** A grid that was not asked yet where it lies, or null. */
    private @Nullable FileCard unasked() {
        if (frame.getText().isBlank()) {
            for (FileCard row : rows) {
                if (!asked.contains(row.path()) && row.held() == Holds.GRID) {
                    return row;
                }
            }
        }
        return null;
    }

    /** Asks a grid which flat map it is drawn on, suggests that one, and reads on. */
    private void askPlace(long number, FileCard row) {
        asked.add(row.path());
        says.setText("Looking where " + row.path().getFileName() + " lies …");
        bar.setVisible(true);
        bar.setProgress(-1);
        Thread asking =
                new Thread(
                        () -> {
                            GridPlace told = place(row.path());
                            Platform.runLater(() -> placed(number, told));
                        },
                        "lanewright-place");
        asking.setDaemon(true);
        asking.start();
    }

    private static GridPlace place(Path path) {
        try {
            return GridPlace.of(path);
        } catch (SurveyException e) {
            // No suggestion; reading the file will say what is wrong with it.
            return GridPlace.UNKNOWN;
        }
    }

    private void placed(long number, GridPlace told) {
        LonLat middle = told.middle();
        if (frame.getText().isBlank()) {
            if (told.code().isPresent()) {
                frame.setText("EPSG:" + told.code().getAsInt());
            } else if (middle != null) {
                frame.setText(FirstPlan.frameAround(middle.longitude(), middle.latitude()));
            }
        }
        if (newest.get() == number) {
            read();
        }
    }

    /** Degrees need a flat map: a zone around the first place is suggested, and shown. */
    private void suggestFrame() throws PlanException {
        if (!frame.getText().isBlank()) {
            return;
        }
        for (FileCard row : rows) {
            if (row.isGeoJson()) {
                double[] first = FirstPlace.of(row.path());
                if (first != null
                        && Math.abs(first[0]) <= 180
                        && Math.abs(first[1]) <= 90
                        && frame.getText().isBlank()) {
                    frame.setText(FirstPlan.frameAround(first[0], first[1]));
                }
            }
        }
    }

    private void readings(long number, Survey measured) {
        if (newest.get() != number) {
            return;
        }
        rows.forEach(row -> row.tell(measured.readings()));
        codes.offer(measured);
    }

    private void made(long number, Survey measured, Ground ground) {
        if (newest.get() != number) {
            return;
        }
        survey = measured;
        bar.setVisible(false);
        int points = measured.size();
        int lines = measured.lines().size();
        says.setText(
                counted(points, "point", "points")
                        + " and "
                        + counted(lines, "line", "lines")
                        + " make the ground."
                        + (measured.lines().isEmpty() && codes.any()
                                ? " No line bends it yet: tick the codes below that run along one."
                                : "")
                        + unused(measured.readings())
                        + " Look whether the picture is your land, then draw the lane.");
        land.show(measured, ground, system());
        draw.setDisable(false);
    }

    /** A word on columns of numbers that nothing is done with, or nothing. */
    private static String unused(List<Reading> readings) {
        List<String> unused = new ArrayList<>();
        for (Reading reading : readings) {
            reading.columns().stream()
                    .filter(Reading.Column::unused)
                    .forEach(each -> unused.add(each.heading() + " (" + reading.file() + ")"));
        }
        int more = unused.size() - FileCard.MOST_UNUSED;
        return unused.isEmpty()
                ? ""
                : " Not used: "
                        + String.join(
                                ", ",
                                unused.subList(0, Math.min(FileCard.MOST_UNUSED, unused.size())))
                        + (more > 0 ? " and " + more + " more" : "")
                        + ". If it is needed, say below the map what it is.";
    }

    private String counted(int count, String one, String many) {
        return Words.of(Quantity.count(count), system()) + " " + Saying.number(count, one, many);
    }

    /** What is asked of a file is answered here, not in the plan's text. */
    private static String remedy(SurveyException e) {
        return switch (e.asks()) {
            case UNIT, UNIT_OF_HEIGHTS, WHICH_FOOT -> "Choose its unit below.";
            case COLUMNS -> "Write what its columns are below, in their order.";
            case NOTHING ->
                    e.what().contains("has no frame there")
                            ? "Write the code of a flat map below, such as EPSG:26916, or a zone"
                                    + " around the land."
                            : e.remedy();
        };
    }

    private void known(long number, PartSurvey part, SurveyException refused) {
        if (newest.get() != number) {
            return;
        }
        Survey measured = part.survey();
        bar.setVisible(false);
        says.setText("");
        if (measured == null) {
            return;
        }
        for (FileCard row : rows) {
            row.tell(measured.readings());
            if (row.path().equals(refused.file())) {
                offers.getChildren().addAll(row.ask(refused, part.offers()));
            }
        }
        Ground ground = part.ground();
        if (ground != null) {
            says.setText("Meanwhile you see the ground of the other files.");
            land.show(measured, ground, system());
        }
    }

    private void wrong(long number, SurveyException e) {
        if (newest.get() != number) {
            return;
        }
        bar.setVisible(false);
        says.setText("");
        draw.setDisable(true);
        Path file = e.file();
        trouble.setText(
                (file == null
                                ? ""
                                : file.getFileName()
                                        + (e.line() > 0 ? ", line " + e.line() : "")
                                        + ": ")
                        + e.what()
                        + ". "
                        + remedy(e));
    }

    private void draw() {
        says.setText(
                "Click where the lane leaves the road, then each bend, then where it must arrive;"
                        + " there double-click, or press Enter.");
        land.draw(this::drawn);
        land.requestFocus();
    }

    private void drawn(List<double[]> points) {
        Survey measured = survey;
        if (measured == null) {
            return;
        }
        double step = system() == UnitSystem.US ? 0.3048 : 0.1;
        List<Spot> places = new ArrayList<>();
        for (double[] point : points) {
            places.add(
                    Spot.at(
                            Math.rint((point[0] + measured.originX()) / step) * step,
                            Math.rint((point[1] + measured.originY()) / step) * step));
        }
        try {
            opening.openNew(plan(places), free(folder()));
        } catch (PlanException | IllegalArgumentException e) {
            trouble.setText(String.valueOf(e.getMessage()));
        }
    }

    /** A file beside the survey that is not there yet. */
    private static Path free(Path folder) {
        Path plan = folder.resolve("plan.json");
        for (int i = 2; Files.exists(plan); i++) {
            plan = folder.resolve("plan-" + i + ".json");
        }
        return plan;
    }

    @Override
    public void close() {
        newest.incrementAndGet();
        land.close();
    }
}
