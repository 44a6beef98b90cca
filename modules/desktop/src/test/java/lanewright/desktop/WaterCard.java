package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import org.junit.jupiter.api.AfterEach;

/** A sample in the window with the question open that asks where water goes. */
abstract class WaterCard {

    static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    Hand hand;
    Session session;
    DeskWindow window;

    void show(String sample) throws Exception {
        Path plan = SAMPLES.resolve(sample).resolve("plan.json");
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(plan));
        Hand.ready();
        session = Hand.on(() -> new Session(file, plan.getParent(), Platform::runLater));
        hand =
                Hand.open(
                        () -> {
                            Type.ready();
                            return new javafx.scene.layout.StackPane();
                        },
                        1440,
                        900);
        window =
                Hand.on(
                        () -> {
                            DeskWindow made = new DeskWindow(session);
                            hand.show(made.root());
                            return made;
                        });
        hand.until("the whole outcome", () -> session.shown().get().settled());
        Hand.pause(500);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
    }

    @AfterEach
    void close() {
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    /** All words under a part of the window. */
    List<String> words(String id) {
        Node part = hand.see(id);
        return Hand.on(
                () -> {
                    List<String> words = new ArrayList<>();
                    for (Node each : part.lookupAll(".label")) {
                        words.add(((Labeled) each).getText());
                    }
                    return words;
                });
    }

    Outcome outcome() {
        return session.shown().get().outcome();
    }

    /** Opens a group of rows and finds every cell of a table of the sheet in it. */
    void holds(String group, Listing table) {
        UnitSystem units = session.file().plan().units();
        String all = String.join("\n", words("water-rows"));
        for (List<Saying> row : table.rows()) {
            for (Saying cell : row) {
                // A lone dash is the sign of nothing.
                String said = cell.in(units).replaceFirst("^–( |$)", "");
                assertTrue(all.contains(said), group + " does not tell: " + said);
            }
        }
        assertFalse(table.rows().isEmpty(), group);
    }
}
