package lanewright.desktop.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import lanewright.measure.LengthUnit;
import lanewright.planner.document.SurveyPart;
import lanewright.survey.Reading;
import lanewright.survey.SurveyException;
import lanewright.survey.read.ColumnWords;
import lanewright.survey.read.Holds;
import lanewright.survey.read.UnitOffer;
import org.jspecify.annotations.Nullable;

/**
 * One survey file: what it holds, what the owner says where it does not, and what was understood of
 * it.
 */
final class FileCard {

    /** Is told when something is said of a file. */
    interface Asking {
        /** Reads all files again. */
        void read();

        /** Is told that the owner chose the unit of a file, and reads again. */
        void unitSaid(FileCard card);
    }

    private static final String AS_FILE = "as the file says";

    /** Least width of what was understood, px. */
    private static final double COLUMN = 250;

    /**
     * So many columns that are not used are asked for: a rover writes a dozen of its own, and all
     * of them are named among what was understood.
     */
    static final int MOST_UNUSED = 3;

    private final Path path;
    private final Asking asking;
    private final VBox box = new VBox(5);
    private final ComboBox<String> holds = new ComboBox<>();
    private final ComboBox<String> unit = new ComboBox<>();
    private final TextField columns = new TextField();
    private final Label help = new Label();
    private final VBox understood = new VBox(2);

    /** True if the owner chose its unit. */
    private boolean said;

    /** True if the file itself states its unit. */
    private boolean states;

    /** The offer that the owner took for its unit. */
    private @Nullable UnitOffer taken;

    private boolean filling;

    /** A card that reads again when something is said. */
    FileCard(Path path, Asking asking) {
        this.path = path;
        this.asking = asking;
        String file = path.getFileName().toString();
        Label title = new Label(file);
        title.getStyleClass().add("proposal-title");
        for (Holds each : Holds.values()) {
            holds.getItems().add(words(each));
        }
        holds.setValue(words(guess()));
        holds.setId("holds-" + file);
        holds.setOnAction(
                event -> {
                    help();
                    asking.read();
                });
        unit.getItems().add(AS_FILE);
        for (LengthUnit each : LengthUnit.values()) {
            if (!each.symbol().equals("mm") && !each.symbol().equals("in")) {
                unit.getItems().add(each.symbol());
            }
        }
        unit.setValue(AS_FILE);
        unit.setCellFactory(list -> new UnitCell());
        unit.setId("unit-" + file);
        unit.setOnAction(event -> told());
        columns.setId("columns-" + file);
        columns.setPromptText(AS_FILE);
        columns.setOnAction(event -> asking.read());
        box.getStyleClass().add("card");
        box.getChildren().addAll(title, Parts.named("It holds", holds));
        if (isGeoJson()) {
            box.getChildren().add(Parts.named("Its heights are in", unit));
        } else {
            box.getChildren().add(Parts.named("Its unit", unit));
        }
        if (!isGeoJson() && guess() != Holds.GRID) {
            box.getChildren().addAll(Parts.named("Its columns", columns), help);
            help.setId("columns-help-" + file);
            help.setWrapText(true);
            help.getStyleClass().add("note");
            help();
        }
        understood.setMinWidth(COLUMN);
        HBox.setHgrow(understood, Priority.ALWAYS);
        understood.setMaxWidth(Double.MAX_VALUE);
    }

    private void told() {
        if (!filling) {
            said = true;
            asking.unitSaid(this);
        }
    }

    /** One crew measures in one unit: takes up what is said of another file, if it says nothing. */
    void follow(FileCard other) {
        if (!said && !states && isGeoJson() == other.isGeoJson()) {
            fill(other.unit.getValue());
        }
    }

    private void fill(@Nullable String symbol) {
        filling = true;
        unit.setValue(symbol);
        filling = false;
    }

    /** The file. */
    Path path() {
        return path;
    }

    /** What the owner can say of it. */
    Node card() {
        return box;
    }

    /** What was understood of it. */
    Node understood() {
        return understood;
    }

    /** Says which words its columns can be given, before any is asked for. */
    private void help() {
        help.setText(
                "Only if the file does not say it: the columns in their order, with commas"
                        + " between, in these words: "
                        + String.join(
                                ", ",
                                ColumnWords.of(held()).stream()
                                        .map(ColumnWords.Choice::toString)
                                        .toList())
                        + ".");
    }

    private static String words(Holds holds) {
        return holds.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What it holds, as it stands on the card. */
    Holds held() {
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

    /**
     * The file as a plan names it.
     *
     * @param folder folder of the plan
     * @param local true if the flat map is the files' own
     */
    SurveyPart.File file(Path folder, boolean local) {
        String relative = folder.relativize(path).toString().replace('\\', '/');
        Holds held = held();
        SurveyPart.File bare = SurveyPart.File.of(relative, held);
        boolean geographic = isGeoJson();
        boolean plain = geographic && local;
        String given = columns.getText().strip();
        return new SurveyPart.File(
                relative,
                held,
                geographic && !plain ? null : unit(),
                geographic ? unit() : null,
                bare.depthUnit(),
                given.isEmpty() ? null : given,
                bare.separator(),
                bare.decimal(),
                bare.epsg(),
                plain ? SurveyPart.Coordinates.LOCAL : bare.coordinates(),
                bare.heightProperty(),
                bare.kindProperty());
    }

    /** Tells what was understood. */
    void tell(List<Reading> readings) {
        begin();
        states = false;
        for (Reading reading : readings) {
            if (path.endsWith(Path.of(reading.file()))) {
                tell(reading);
            }
        }
    }

    private void begin() {
        understood.getChildren().clear();
        Label file = new Label("Understood of " + path.getFileName());
        file.getStyleClass().add("row-title");
        understood.getChildren().add(file);
    }

    private void tell(Reading reading) {
        states = reading.understood("unit") != null && unit() == null;
        // What is lost if nobody looks comes first.
        int asked = 0;
        for (int k = 0; k < reading.columns().size(); k++) {
            if (reading.columns().get(k).unused() && asked++ < MOST_UNUSED) {
                add(unused(reading.columns(), k));
            }
        }
        for (Reading.Understood each : reading.understood()) {
            add(Parts.note(each.what() + ": " + each.answer() + " (" + why(each) + ")"));
        }
        int shown = 0;
        for (Reading.Sample sample : reading.samples()) {
            if (shown++ < 3) {
                add(Parts.note("line " + sample.line() + ": " + sample.text()));
                add(Parts.note("    is " + sample.meaning()));
            }
        }
    }

    /** How something is known; of a unit that was offered and taken, why it was offered. */
    private String why(Reading.Understood each) {
        UnitOffer took = taken;
        return took != null && took.unit() == unit() && each.what().equals("unit")
                ? "you took it, " + took.reason()
                : each.why();
    }

    private void add(Node told) {
        understood.getChildren().add(told);
    }

    /** Tells that a column of numbers is not used, and lets the owner say what it is. */
    private Node unused(List<Reading.Column> all, int k) {
        Label says = new Label("Not used: " + all.get(k).heading());
        says.getStyleClass().add("row-title");
        List<ColumnWords.Choice> choices =
                ColumnWords.left(held(), all.stream().map(Reading.Column::meaning).toList());
        ComboBox<String> meant = new ComboBox<>();
        choices.forEach(choice -> meant.getItems().add(choice.toString()));
        meant.setPromptText("What is it?");
        meant.setMinWidth(120);
        meant.setPrefWidth(120);
        meant.setId("use-" + path.getFileName() + "-" + (k + 1));
        meant.setOnAction(
                event -> {
                    int at = meant.getSelectionModel().getSelectedIndex();
                    columns.setText(inOrder(all, k, choices.get(at).word()));
                    asking.read();
                });
        HBox line = new HBox(8, says, meant);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** All columns in their order, one of them now named. */
    private static String inOrder(List<Reading.Column> all, int k, String word) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            words.add(i == k ? word : all.get(i).unused() ? "?" : all.get(i).meaning());
        }
        return String.join(", ", words);
    }

    /** Tells what is asked of a file that could not be read, and makes a button of each offer. */
    List<Button> ask(SurveyException refused, List<UnitOffer> offered) {
        List<Button> takes = new ArrayList<>();
        begin();
        add(Parts.note("Not read yet: " + refused.what() + "."));
        for (UnitOffer each : offered) {
            add(Parts.note("unit: not said; " + each.unit().symbol() + " " + each.reason() + "."));
            takes.add(button(each));
        }
        return takes;
    }

    private Button button(UnitOffer offer) {
        Button take = new Button("Take " + offer.unit().symbol() + ", " + offer.reason());
        take.setId("take-" + offer.unit().symbol() + "-" + path.getFileName());
        take.setWrapText(true);
        take.setMaxWidth(Double.MAX_VALUE);
        take.setOnAction(
                event -> {
                    taken = offer;
                    said = true;
                    fill(offer.unit().symbol());
                    asking.read();
                });
        return take;
    }

    /** True if it is GeoJSON, by its name. */
    boolean isGeoJson() {
        String lower = path.toString().toLowerCase(Locale.ROOT);
        return lower.endsWith(".geojson") || lower.endsWith(".json");
    }

    /** What a file holds, by its ending and the words at its head. */
    private Holds guess() {
        String lower = path.getFileName().toString().toLowerCase(Locale.ROOT);
        if (lower.endsWith(".tif") || lower.endsWith(".tiff") || lower.endsWith(".asc")) {
            return Holds.GRID;
        }
        try (var in = Files.newInputStream(path)) {
            String head =
                    new String(in.readNBytes(4000), StandardCharsets.UTF_8)
                            .toLowerCase(Locale.ROOT);
            if (isGeoJson()) {
                return head.contains("\"point\"") ? Holds.POINTS : Holds.CONTOURS;
            }
            return ColumnWords.headsDepths(head) ? Holds.PROBES : Holds.POINTS;
        } catch (IOException e) {
            // The reader says what is wrong with the file, better than a guess could.
            return Holds.POINTS;
        }
    }

    /** A unit in the list, with what it is called. */
    private static final class UnitCell extends ListCell<String> {
        @Override
        protected void updateItem(String symbol, boolean empty) {
            super.updateItem(symbol, empty);
            setText(
                    empty || symbol == null
                            ? ""
                            : switch (symbol) {
                                case "ft" -> "ft: international foot";
                                case "ftUS" -> "ftUS: U.S. survey foot";
                                case "m" -> "m: metre";
                                default -> symbol;
                            });
        }
    }
}
