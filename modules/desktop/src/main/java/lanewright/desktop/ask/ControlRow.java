package lanewright.desktop.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown.Wrong;
import lanewright.measure.QuantityException;
import lanewright.planner.document.PlanFile;
import org.jspecify.annotations.Nullable;

/** One value with its name, a place to write it, the reason for it, and what is wrong with it. */
final class ControlRow {

    private final Session session;
    private final Control control;
    private final VBox box = new VBox(2);
    private final @Nullable TextField field;
    private final @Nullable ComboBox<String> choice;
    private final Label why = new Label();
    private final Label wrong = new Label();
    private boolean filling;

    /** The money that the plan took on by what was written here last; empty if it took none on. */
    private String took = "";

    /** What the plan said when the field was filled last. */
    private String shown = "";

    ControlRow(Session session, Control control) {
        this.session = session;
        this.control = control;
        Label label = new Label(control.label());
        label.getStyleClass().add("control-label");
        label.setWrapText(true);
        why.getStyleClass().add("note");
        why.setWrapText(true);
        wrong.getStyleClass().add("wrong");
        wrong.setWrapText(true);
        wrong.setManaged(false);
        wrong.setVisible(false);
        Node input;
        if (control.choices().isEmpty()) {
            TextField text = new TextField();
            text.setOnAction(event -> commit());
            text.focusedProperty()
                    .addListener(
                            (seen, was, now) -> {
                                if (!now) {
                                    commit();
                                }
                            });
            text.setOnKeyPressed(
                    event -> {
                        if (event.getCode() == KeyCode.ESCAPE) {
                            fill();
                            event.consume();
                        }
                    });
            field = text;
            choice = null;
            input = text;
        } else {
            ComboBox<String> combo = new ComboBox<>();
            combo.getItems().setAll(control.choices());
            combo.setMaxWidth(Double.MAX_VALUE);
            combo.setOnAction(
                    event -> {
                        if (!filling && combo.getValue() != null) {
                            tell(session.write(control.label(), control.path(), combo.getValue()));
                        }
                    });
            field = null;
            choice = combo;
            input = combo;
        }
        input.setId("field-" + control.id());
        input.setAccessibleText(control.label());
        label.setLabelFor(input);
        label.setMinWidth(128);
        label.setPrefWidth(128);
        HBox line = new HBox(8, label, input);
        line.setAlignment(Pos.CENTER_LEFT);
        if (input instanceof javafx.scene.layout.Region region) {
            region.setPrefWidth(140);
            region.setMinWidth(110);
        }
        box.getChildren().addAll(line, why, wrong);
        fill();
    }

    Node node() {
        return box;
    }

    Control control() {
        return control;
    }

    /** Shows what the plan says, unless the owner is just writing here. */
    void fill() {
        filling = true;
        String said = session.file().said(control.path());
        TextField text = field;
        ComboBox<String> combo = choice;
        if (text != null) {
            text.setPromptText(Typed.example(control.path(), session.file().plan()));
        }
        // What the owner is just writing is left; what was written and taken is not.
        if (text != null && (!text.isFocused() || text.getText().equals(shown))) {
            text.setText(said);
            shown = said;
        }
        if (combo != null) {
            combo.setValue(said.isEmpty() ? null : said);
        }
        explain();
        filling = false;
    }

    private void explain() {
        String given = session.file().why(control.path());
        String reason = given.isEmpty() ? control.note() : given;
        if (!took.isEmpty() && took.equals(session.file().plan().currency())) {
            reason = "From now on all prices of your plan are in " + took + ".";
        }
        why.setText(reason);
        why.setManaged(!reason.isEmpty());
        why.setVisible(!reason.isEmpty());
    }

    private void commit() {
        TextField text = field;
        if (text == null || filling) {
            return;
        }
        String said = session.file().said(control.path());
        if (text.getText().strip().equals(said) || text.getText().equals(shown)) {
            tell(null);
            return;
        }
        try {
            tell(session.write(control.label(), values(text.getText(), said)));
        } catch (QuantityException e) {
            tell(new Wrong(e.what(), e.remedy(), List.of()));
        }
    }

    /** What is written into the plan for what stands in the field. */
    private Map<String, String> values(String typed, String said) throws QuantityException {
        took = "";
        String path = control.path();
        PlanFile file = session.file();
        if (typed.isBlank() && !control.row().isEmpty()) {
            return Map.of(path.substring(0, path.lastIndexOf('.')), "");
        }
        String meant = Typed.meant(typed, said, path, file.plan());
        Map<String, String> values = new LinkedHashMap<>();
        control.row()
                .forEach(
                        (place, value) -> {
                            if (file.said(place).isEmpty()) {
                                values.put(place, value);
                            }
                        });
        if (control.isPrice()) {
            String like = said.isEmpty() ? Typed.example(path, file.plan()) : said;
            String currency = file.plan().currency();
            var price = TypedPrice.of(meant, like, currency, file.isSaid("currency"));
            values.put(path, price.price());
            if (!price.currency().isEmpty()) {
                values.put("currency", price.currency());
                took = price.currency();
            }
        } else {
            values.put(path, meant.strip());
        }
        return values;
    }

    private void tell(@Nullable Wrong found) {
        boolean bad = found != null;
        if (bad) {
            took = "";
        }
        explain();
        String now = session.file().said(control.path());
        String such = now.isEmpty() || choice != null ? "" : " Now it is " + now + ".";
        wrong.setText(
                found == null
                        ? ""
                        : sentence(found.what()) + " " + sentence(found.remedy()) + such);
        wrong.setManaged(bad);
        wrong.setVisible(bad);
        TextField text = field;
        if (text != null) {
            text.pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("wrong"), bad);
            if (!bad) {
                String said = session.file().said(control.path());
                text.setText(said);
                shown = said;
            }
        }
    }

    private static String sentence(String words) {
        if (words.isBlank()) {
            return "";
        }
        String first = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        return first + words.substring(1) + (words.endsWith(".") ? "" : ".");
    }
}
