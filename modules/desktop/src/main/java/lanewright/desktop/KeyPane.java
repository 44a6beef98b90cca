package lanewright.desktop;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import lanewright.desktop.look.Picture;
import lanewright.desktop.look.Theme;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.WordListings;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Legend;

/** What the lines and areas of the views mean, and the words of the trade. */
final class KeyPane {

    private static final List<Role> SHOWN =
            List.of(
                    Role.CONTOUR,
                    Role.SHOT,
                    Role.PROBE,
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.CUT,
                    Role.FILL,
                    Role.CATCH,
                    Role.LIMIT,
                    Role.HEAP,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.WET_MOST,
                    Role.WET_NEXT,
                    Role.WET_DAMP,
                    Role.FLOW,
                    Role.PIPE,
                    Role.DIP,
                    Role.WATER_BAR,
                    Role.TURN_OUT,
                    Role.RELIEF_PIPE,
                    Role.OUTLET_PERMITTED,
                    Role.OUTLET_FORBIDDEN,
                    Role.OUTLET_TO_ASK,
                    Role.WIRE,
                    Role.BURIED,
                    Role.HAZARD,
                    Role.LOOK,
                    Role.FINISHED,
                    Role.GROUND_LINE,
                    Role.SUBGRADE,
                    Role.DITCH_LEFT,
                    Role.DITCH_RIGHT);

    /** A sample is made for paper; on the screen it stands so much larger. */
    private static final double LARGER = 1.6;

    /** Room of a sample, whole pixels, px. */
    private static final double WIDE = 36;

    private static final double TALL = 18;

    private final ScrollPane pane;
    private final List<ImageView> samples = new ArrayList<>();

    /**
     * The key.
     *
     * @param theme light or dark, now and later
     */
    KeyPane(ObservableValue<Theme> theme) {
        VBox body = new VBox(5);
        body.getChildren().add(title("Lines and areas"));
        for (Role role : SHOWN) {
            ImageView sample = new ImageView();
            sample.setFitWidth(WIDE);
            sample.setFitHeight(TALL);
            samples.add(sample);
            HBox row = new HBox(8, sample, words(Legend.meaning(role)));
            row.setAlignment(Pos.CENTER_LEFT);
            body.getChildren().add(row);
        }
        body.getChildren().add(title("Words of the trade"));
        Listing listing = WordListings.words();
        for (List<Saying> row : listing.rows()) {
            Label word = words(row.get(0).in(UnitSystem.METRIC));
            word.getStyleClass().add("proposal-title");
            body.getChildren().addAll(word, words(row.get(1).in(UnitSystem.METRIC)));
        }
        body.getStyleClass().add("key");
        pane = new ScrollPane(body);
        pane.setFitToWidth(true);
        pane.setId("key-pane");
        pane.getStyleClass().add("key-pane");
        pane.setMinWidth(240);
        pane.setPrefWidth(290);
        pane.setMaxWidth(340);
        paint(theme.getValue());
        theme.addListener((seen, was, now) -> paint(now));
    }

    Node node() {
        return pane;
    }

    private void paint(Theme theme) {
        double sharp = Screen.getPrimary().getOutputScaleX();
        for (int i = 0; i < SHOWN.size(); i++) {
            var pen = new Pen();
            Legend.sample(pen, SHOWN.get(i), 1, 0.5);
            var picture = new Picture(theme).drawing(pen.drawing(22, 11), 0, 0, LARGER);
            samples.get(i).setImage(picture.image(WIDE, TALL, sharp));
        }
    }

    private static Label title(String text) {
        Label label = words(text);
        label.getStyleClass().addAll("question-words", "proposal-title");
        return label;
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        return label;
    }
}
