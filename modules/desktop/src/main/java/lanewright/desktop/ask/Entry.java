package lanewright.desktop.ask;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A field of a form that is put in with one press: its name, and what is wrong with it. */
final class Entry {

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final TextField field = new TextField();
    private final Label wrong = new Label();
    private final VBox box;

    Entry(String id, String words) {
        field.setId(id);
        field.setAccessibleText(words);
        Label label = new Label(words);
        label.getStyleClass().add("control-label");
        label.setLabelFor(field);
        label.setMinWidth(128);
        label.setPrefWidth(128);
        field.setPrefWidth(140);
        field.setMinWidth(110);
        wrong.setId(id + "-wrong");
        wrong.getStyleClass().add("wrong");
        wrong.setWrapText(true);
        HBox line = new HBox(8, label, field);
        line.setAlignment(Pos.CENTER_LEFT);
        box = new VBox(2, line, wrong);
        say("");
    }

    Node node() {
        return box;
    }

    void prompt(String words) {
        field.setPromptText(words);
    }

    void onEnter(Runnable done) {
        field.setOnAction(event -> done.run());
    }

    String text() {
        return field.getText().strip();
    }

    void clear() {
        field.clear();
    }

    void focus() {
        field.requestFocus();
    }

    boolean isWrong() {
        return !wrong.getText().isEmpty();
    }

    /** Tells what is wrong beside the field; nothing is, if empty. */
    void say(String words) {
        wrong.setText(words);
        wrong.setManaged(!words.isEmpty());
        wrong.setVisible(!words.isEmpty());
        field.pseudoClassStateChanged(WRONG, !words.isEmpty());
    }
}
