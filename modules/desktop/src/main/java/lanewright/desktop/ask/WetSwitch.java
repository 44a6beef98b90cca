package lanewright.desktop.ask;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;

/** Shows on the land where it stays wet by its shape, and says what that is and is not. */
final class WetSwitch {

    private final VBox box = new VBox(4);

    WetSwitch(Session session) {
        ToggleButton shown = new ToggleButton("Show where the ground stays wet");
        shown.setId("wet-ground");
        shown.setWrapText(true);
        shown.selectedProperty().bindBidirectional(session.wetGround());
        Label what =
                new Label(
                        "By the shape of the land alone, as it is, and not measured: soil, springs,"
                                + " drains and what grows decide as much. The darkest is the"
                                + " wettest tenth, then the next tenth, then the next fifth; in"
                                + " the dark, the palest. Some ground is always the wettest,"
                                + " however dry: go and look after a wet week. Topographic wetness"
                                + " index, Beven and Kirkby, 1979.");
        what.setWrapText(true);
        what.getStyleClass().add("note");
        what.visibleProperty().bind(session.wetGround());
        what.managedProperty().bind(session.wetGround());
        box.getChildren().addAll(shown, what);
    }

    Node node() {
        return box;
    }
}
