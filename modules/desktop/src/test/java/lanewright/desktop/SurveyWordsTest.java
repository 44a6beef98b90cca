package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Label;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Run;
import lanewright.survey.SurveyLine;
import org.junit.jupiter.api.Test;

/** Survey files in their owner's own words, as the window takes them. */
class SurveyWordsTest extends FilesToSheets {

    /** A meadow of 500 by 400 ft with a road edge of two words on its south side. */
    private void meadow() throws IOException {
        StringBuilder rows = new StringBuilder("Pt,North ft,East ft,Elev ft,Note\n");
        int number = 1;
        for (int east = 5000; east <= 5500; east += 25) {
            for (int north = 2000; north <= 2400; north += 25) {
                double height = 620 + (east - 5000) / 40.0 + Math.sin(north / 60.0);
                rows.append(number++).append(',').append(north).append(',').append(east);
                rows.append(',').append(String.format(java.util.Locale.ROOT, "%.2f", height));
                rows.append(",gs\n");
            }
        }
        for (int east = 5010; east <= 5490; east += 40) {
            double height = 620.5 + (east - 5000) / 40.0;
            rows.append(number++).append(",2012,").append(east).append(',').append(height);
            rows.append(",road edge\n");
        }
        Files.writeString(folder.resolve("meadow.csv"), rows.toString());
    }

    private String told(String id) {
        return Hand.on(() -> ((Label) hand.see(id)).getText());
    }

    @Test
    void aTickOfTwoWordsBendsTheGroundAndStandsInThePlan() throws Exception {
        meadow();
        begin(folder, List.of("meadow.csv"));
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertTrue(told("survey-says").startsWith("370 points and 0 lines make"));
        hand.click("code-road edge");
        hand.until("a line", () -> told("survey-says").startsWith("370 points and 1 line make"));
        assertEquals("", told("survey-trouble"));
        hand.look("survey-two-words");
        draw("survey-two-words", Clicks.at(0.3, 0.8, 0.5, 0.5, 0.6, 0.3));
        hand.click("keep");
        Path plan = folder.resolve("survey/plan.json");
        hand.until("the plan's file", () -> Files.isRegularFile(plan));
        PlanFile kept = PlanFile.read("plan.json", Files.readAllBytes(plan));
        assertEquals(List.of("road edge"), kept.plan().survey().codes().breaklines());
        assertEquals(
                List.of("road edge"),
                new Run(plan.getParent())
                        .survey(kept, Progress.NONE).lines().stream()
                                .map(SurveyLine::code)
                                .toList());
    }
}
