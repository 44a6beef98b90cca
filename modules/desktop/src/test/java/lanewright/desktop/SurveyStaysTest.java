package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** What can be clicked beside a survey stays where it is, whatever is told meanwhile. */
class SurveyStaysTest extends FilesToSheets {

    private static final List<String> CLICKED =
            List.of(
                    "draw-lane",
                    "other",
                    "holds-points.csv",
                    "unit-points.csv",
                    "columns-points.csv",
                    "holds-probes.csv",
                    "unit-probes.csv",
                    "plan-name",
                    "plan-units",
                    "plan-frame");

    private Map<String, Bounds> places(List<String> ids) {
        Map<String, Bounds> places = new LinkedHashMap<>();
        for (String id : ids) {
            Node part = hand.see(id);
            places.put(id, Hand.on(() -> part.localToScene(part.getBoundsInLocal())));
        }
        return places;
    }

    private String told(String id) {
        return ((Label) hand.see(id)).getText();
    }

    @Test
    void nothingMovesUnderThePointerWhileTroubleIsTold() throws IOException {
        begin(SAMPLES.resolve("marrow-fold"), List.of("points.csv", "probes.csv"));
        hand.until("what is asked", () -> told("survey-trouble").contains("Choose its unit"));
        Map<String, Bounds> asked = places(CLICKED);
        hand.choose("unit-points.csv", "ft");
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertEquals("", told("survey-trouble"));
        assertEquals(asked, places(CLICKED));
        hand.write("columns-points.csv", "shape of the moon");
        hand.until("trouble", () -> !told("survey-trouble").isEmpty());
        hand.look("survey-trouble");
        assertEquals(asked, places(CLICKED));
        assertTrue(hand.see("draw-lane").isVisible());
    }

    @Test
    void aTickLeavesTheOthersWhereTheyAre() throws IOException {
        begin(Path.of("..", "..", "sample-surveys", "marrow-fold"), List.of("points.csv"));
        hand.choose("unit-points.csv", "ft");
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        List<String> boxes =
                Hand.on(
                        () ->
                                hand.see("survey-pane").lookupAll(".check-box").stream()
                                        .map(Node::getId)
                                        .sorted()
                                        .toList());
        assertTrue(boxes.size() > 1, boxes.toString());
        hand.click(boxes.get(0));
        Map<String, Bounds> before = places(boxes);
        hand.click(boxes.get(0));
        hand.until("the ground again", () -> !hand.bar());
        assertEquals(before, places(boxes));
    }
}
