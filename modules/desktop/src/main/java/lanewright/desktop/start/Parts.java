package lanewright.desktop.start;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Small parts of what stands beside a survey. */
final class Parts {

    private Parts() {}

    /** A field with what it is called before it. */
    static Node named(String words, Region field) {
        Label label = new Label(words);
        label.setMinWidth(130);
        label.setLabelFor(field);
        field.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(field, Priority.ALWAYS);
        HBox line = new HBox(8, label, field);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** Words in small print. */
    static Label note(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add("note");
        return label;
    }
}
