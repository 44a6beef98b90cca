package lanewright.desktop.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;
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
import lanewright.measure.LengthUnit;
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
import lanewright.planner.run.Run;
import lanewright.survey.LonLat;
import lanewright.survey.Reading;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.GridPlace;
import lanewright.survey.read.Holds;
import lanewright.survey.read.LineCodes;
import org.jspecify.annotations.Nullable;

/**
 * What was understood of survey files, as a picture with a few rows; asks only what the files do
 * not say, and lets the first lane be drawn.
 */
final class SurveyPane implements AutoCloseable {

    private static final String AS_FILE = "as the file says";

    /** Room for what is told, px: nothing below it moves when more is told or less. */
    private static final double TELLING = 112;

    /** Room below the land for what was understood, px. */
    private static final double UNDERSTOOD = 178;

    /** Least width of what was understood of one file, px. */
    private static final double COLUMN = 300;

    /** So many codes are offered as lines; more would be remarks. */
    private static final int MOST_CODES = 40;

    private final StartPane.Opening opening;
    private final BorderPane root = new BorderPane();
    private final LandBoard land = new LandBoard();
    private final VBox side = new VBox(12);
    private final VBox files = new VBox(12);
    private final HBox understood = new HBox(24);
    private final Label says = new Label();
    private final Label trouble = new Label();
    private final ProgressBar bar = new ProgressBar(0);
    private final TextField name = new TextField("My lane");
    private final ComboBox<String> units = new ComboBox<>();
    private final TextField frame = new TextField();
    private final VBox codes = new VBox(4);

    /** Codes that the owner is asked about. */
    private TreeSet<String> asked = new TreeSet<>();

    private final Button draw = new Button("Draw the lane");
    private final List<Row> rows = new ArrayList<>();
    private final AtomicLong newest = new AtomicLong();
    private boolean filling;
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
        VBox told = new VBox(6, says, trouble);
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
                        named("The lane is called", name),
                        named("Answers in", units),
                        named("Flat map", frame),
                        codes);
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

    private static Node named(String words, Region field) {
        Label label = new Label(words);
        label.setMinWidth(130);
        label.setLabelFor(field);
        field.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox line = new HBox(8, label, field);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** Adds files and reads all. */
    void add(List<Path> paths) {
        for (Path path : paths) {
            Path whole = path.toAbsolutePath().normalize();
            if (rows.stream().noneMatch(row -> row.path.equals(whole))) {
                Row row = new Row(whole);
                rows.add(row);
                files.getChildren().add(row.box);
                understood.getChildren().add(row.understood);
            }
        }
        read();
    }

    /** One file: what it holds, and what the owner says where it does not. */
    private final class Row {
        private final Path path;
        private final VBox box = new VBox(5);
        private final ComboBox<String> holds = new ComboBox<>();
        private final ComboBox<String> unit = new ComboBox<>();
        private final TextField columns = new TextField();
        private final VBox understood = new VBox(2);
        private boolean said;
        private boolean asked;

        Row(Path path) {
            this.path = path;
            String file = path.getFileName().toString();
            Label title = new Label(file);
            title.getStyleClass().add("proposal-title");
            for (Holds each : Holds.values()) {
                holds.getItems().add(words(each));
            }
            holds.setValue(words(guess(path)));
            holds.setId("holds-" + file);
            holds.setOnAction(event -> read());
            unit.getItems().add(AS_FILE);
            for (LengthUnit each : LengthUnit.values()) {
                if (!each.symbol().equals("mm") && !each.symbol().equals("in")) {
                    unit.getItems().add(each.symbol());
                }
            }
            unit.setValue(AS_FILE);
            unit.setId("unit-" + file);
            unit.setOnAction(event -> told());
            columns.setId("columns-" + file);
            columns.setPromptText(AS_FILE);
            columns.setOnAction(event -> read());
            box.getStyleClass().add("card");
            box.getChildren().addAll(title, named("It holds", holds));
            if (isGeoJson(path)) {
                box.getChildren().add(named("Its heights are in", unit));
            } else {
                box.getChildren().add(named("Its unit", unit));
            }
            if (!isGeoJson(path) && guess(path) != Holds.GRID) {
                box.getChildren().add(named("Its columns", columns));
            }
            understood.setMinWidth(COLUMN);
            HBox.setHgrow(understood, Priority.ALWAYS);
            understood.setMaxWidth(Double.MAX_VALUE);
        }

        /** One crew measures in one unit: what is said of one file is taken up for the others. */
        private void told() {
            if (filling) {
                return;
            }
            filling = true;
            said = true;
            for (Row row : rows) {
                if (!row.said && isGeoJson(row.path) == isGeoJson(path)) {
                    row.unit.setValue(unit.getValue());
                }
            }
            filling = false;
            read();
        }

        private static String words(Holds holds) {
            return holds.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        private Holds held() {
            for (Holds each : Holds.values()) {
                if (words(each).equals(holds.getValue())) {
                    return each;
                }
            }
            return Holds.POINTS;
        }

        private @Nullable LengthUnit unit() {
            for (LengthUnit each : LengthUnit.values()) {
                if (each.symbol().equals(unit.getValue())) {
                    return each;
                }
            }
            return null;
        }

        SurveyPart.File file(Path folder) {
            String relative = folder.relativize(path).toString().replace('\\', '/');
            Holds held = held();
            SurveyPart.File bare = SurveyPart.File.of(relative, held);
            boolean geographic = isGeoJson(path);
            String given = columns.getText().strip();
            return new SurveyPart.File(
                    relative,
                    held,
                    geographic ? null : unit(),
                    geographic ? unit() : null,
                    bare.depthUnit(),
                    given.isEmpty() ? null : given,
                    bare.separator(),
                    bare.decimal(),
                    bare.epsg(),
                    geographic && frame.getText().strip().equals("local")
                            ? SurveyPart.Coordinates.LOCAL
                            : bare.coordinates(),
                    bare.heightProperty(),
                    bare.kindProperty());
        }

        void tell(List<Reading> readings) {
            understood.getChildren().clear();
            Label file = new Label("Understood of " + path.getFileName());
            file.getStyleClass().add("row-title");
            understood.getChildren().add(file);
            for (Reading reading : readings) {
                if (!path.endsWith(Path.of(reading.file()))) {
                    continue;
                }
                for (Reading.Understood each : reading.understood()) {
                    note(each.what() + ": " + each.answer() + " (" + each.why() + ")");
                }
                int shown = 0;
                for (Reading.Sample sample : reading.samples()) {
                    if (shown++ < 3) {
                        note("line " + sample.line() + ": " + sample.text());
                        note("    is " + sample.meaning());
                    }
                }
            }
        }

        private void note(String words) {
            Label label = new Label(words);
            label.setWrapText(true);
            label.getStyleClass().add("note");
            understood.getChildren().add(label);
        }
    }

    private static boolean isGeoJson(Path path) {
        String lower = path.toString().toLowerCase(Locale.ROOT);
        return lower.endsWith(".geojson") || lower.endsWith(".json");
    }

    /** What a file holds, by its ending and the words at its head. */
    private static Holds guess(Path path) {
        String lower = path.getFileName().toString().toLowerCase(Locale.ROOT);
        if (lower.endsWith(".tif") || lower.endsWith(".tiff") || lower.endsWith(".asc")) {
            return Holds.GRID;
        }
        try (var in = Files.newInputStream(path)) {
            String head =
                    new String(in.readNBytes(4000), StandardCharsets.UTF_8)
                            .toLowerCase(Locale.ROOT);
            if (isGeoJson(path)) {
                return head.contains("\"point\"") ? Holds.POINTS : Holds.CONTOURS;
            }
            return head.contains("topsoil") || head.contains("bearing")
                    ? Holds.PROBES
                    : Holds.POINTS;
        } catch (IOException e) {
            // The reader says what is wrong with the file, better than a guess could.
            return Holds.POINTS;
        }
    }

    private UnitSystem system() {
        return "metric".equals(units.getValue()) ? UnitSystem.METRIC : UnitSystem.US;
    }

    /** Folder that holds all files. */
    private Path folder() {
        Path shared = rows.get(0).path.getParent();
        for (Row row : rows) {
            while (shared != null && !row.path.startsWith(shared)) {
                shared = shared.getParent();
            }
        }
        Path none = rows.get(0).path.getRoot();
        return shared == null ? none : shared;
    }

    private List<String> chosenCodes() {
        List<String> chosen = new ArrayList<>();
        for (Node node : codes.getChildren()) {
            if (node instanceof javafx.scene.control.CheckBox box && box.isSelected()) {
                chosen.add(box.getText());
            }
        }
        return chosen;
    }

    private PlanFile plan(List<Spot> places) throws PlanException {
        Path folder = folder();
        List<SurveyPart.File> parts = new ArrayList<>();
        rows.forEach(row -> parts.add(row.file(folder)));
        String called = name.getText().isBlank() ? "My lane" : name.getText().strip();
        String map = frame.getText().strip();
        double radius = system() == UnitSystem.US ? 60 * 0.3048 : 20;
        return FirstPlan.of(
                new FirstPlan.Wanted(
                        called,
                        system(),
                        map.isEmpty() ? null : map,
                        parts,
                        chosenCodes(),
                        places,
                        radius));
    }

    /** Reads all files as they are declared now; the newest order wins. */
    private void read() {
        long number = newest.incrementAndGet();
        trouble.setText("");
        Row unasked = unasked();
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
                                Run run = new Run(folder);
                                Survey measured = run.survey(first, progress.part(0, 0.5));
                                Platform.runLater(() -> readings(number, measured));
                                Ground ground = run.ground(first, progress);
                                Platform.runLater(() -> made(number, measured, ground));
                            } catch (CancellationException e) {
                                // A newer reading has begun, and will tell.
                            } catch (SurveyException e) {
                                Platform.runLater(() -> wrong(number, e));
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

    /** A grid that was not asked yet where it lies, or null. */
    private @Nullable Row unasked() {
        if (frame.getText().isBlank()) {
            for (Row row : rows) {
                if (!row.asked && row.held() == Holds.GRID) {
                    return row;
                }
            }
        }
        return null;
    }

    /** Asks a grid which flat map it is drawn on, suggests that one, and reads on. */
    private void askPlace(long number, Row row) {
        row.asked = true;
        says.setText("Looking where " + row.path.getFileName() + " lies …");
        bar.setVisible(true);
        bar.setProgress(-1);
        Thread asking =
                new Thread(
                        () -> {
                            GridPlace told = place(row.path);
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
        for (Row row : rows) {
            if (isGeoJson(row.path)) {
                double[] first = FirstPlace.of(row.path);
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
        // Capitals do not count in codes, so one tick is enough for both spellings.
        TreeSet<String> found = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        Set<String> met = new HashSet<>(Set.of(""));
        boolean all = true;
        for (int i = 0; i < measured.size(); i++) {
            String code = measured.code(i).strip();
            if (!met.add(code) || found.contains(code)) {
                continue;
            }
            if (found.size() < MOST_CODES && code.length() <= LineCodes.LONGEST) {
                found.add(code);
            } else {
                all = false;
            }
        }
        if (found.equals(asked)) {
            return; // the boxes stay as they are, and so does what the panel shows
        }
        asked = found;
        List<String> chosen = chosenCodes();
        codes.getChildren().clear();
        if (!found.isEmpty()) {
            Label asks =
                    new Label(
                            "Which codes were walked along a line, shot after shot, such as the"
                                    + " edge of a road or the bottom of a ditch? The ground bends"
                                    + " there and nowhere between.");
            asks.setWrapText(true);
            codes.getChildren().add(asks);
            for (String code : found) {
                var box = new javafx.scene.control.CheckBox(code);
                box.setId("code-" + code);
                box.setSelected(chosen.contains(code));
                box.setOnAction(event -> read());
                codes.getChildren().add(box);
            }
            if (!all) {
                Label more =
                        new Label(
                                "These are the first "
                                        + MOST_CODES
                                        + " codes of your files, and none longer than "
                                        + LineCodes.LONGEST
                                        + " letters. Others can be written into the plan, under"
                                        + " survey, codes, breaklines.");
                more.setWrapText(true);
                more.getStyleClass().add("note");
                codes.getChildren().add(more);
            }
        }
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
                        + (measured.lines().isEmpty() && !codes.getChildren().isEmpty()
                                ? " No line bends it yet: tick the codes below that run along one."
                                : "")
                        + " Look whether the picture is your land, then draw the lane.");
        land.show(measured, ground, system());
        draw.setDisable(false);
    }

    private String counted(int count, String one, String many) {
        return Words.of(Quantity.count(count), system()) + " " + Saying.number(count, one, many);
    }

    /** A file that does not tell its unit is asked for it here, not in the plan's text. */
    private static String remedy(SurveyException e) {
        if (e.what().contains("says the unit")) {
            return "Choose its unit below.";
        }
        return e.what().contains("has no frame there")
                ? "Write the code of a flat map below, such as EPSG:26916, or a zone around the land."
                : e.remedy();
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
