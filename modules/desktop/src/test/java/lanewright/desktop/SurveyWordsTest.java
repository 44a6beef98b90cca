package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Run;
import lanewright.survey.Probe;
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
        PlanFile kept = kept();
        assertEquals(List.of("road edge"), kept.plan().survey().codes().breaklines());
        assertEquals(
                List.of("road edge"),
                new Run(folder.resolve("survey"))
                        .survey(kept, Progress.NONE).lines().stream()
                                .map(SurveyLine::code)
                                .toList());
    }

    /** All words that are told of what was understood. */
    private String understood() {
        return Hand.on(
                () ->
                        hand.see("survey-understood").lookupAll(".label").stream()
                                .filter(node -> node instanceof Label)
                                .map(node -> ((Label) node).getText())
                                .collect(Collectors.joining("\n")));
    }

    private PlanFile kept() throws Exception {
        hand.click("keep");
        Path plan = folder.resolve("survey/plan.json");
        hand.until("the plan's file", () -> Files.isRegularFile(plan));
        return PlanFile.read("plan.json", Files.readAllBytes(plan));
    }

    @Test
    void aUnitIsOfferedWithItsReasonAndTakenByOnePress() throws Exception {
        meadow();
        Files.writeString(
                folder.resolve("holes.csv"),
                """
                hole,north,east,topsoil in,soft to in,note
                1,2080,5150,7,7,loam below
                2,2200,5400,9,14,soft and wet
                3,2350,5300,6,6,firm clay
                """);
        begin(folder, List.of("holes.csv", "meadow.csv"));
        hand.until("the question", () -> told("survey-trouble").contains("Choose its unit"));
        hand.until("the offer", () -> hand.has("take-ft-holes.csv"));
        assertEquals(
                "Take ft, as meadow.csv says: then its 3 holes lie on that land",
                Hand.on(() -> ((Button) hand.see("take-ft-holes.csv")).getText()));
        // The other file's land is seen meanwhile, and no lane can be drawn yet.
        assertTrue(told("survey-says").contains("Meanwhile you see the ground"));
        assertTrue(understood().contains("columns: name, northing, easting, height, code"));
        assertTrue(understood().contains("unit: not said; ft as meadow.csv says"));
        assertTrue(hand.see("draw-lane").isDisabled());
        hand.look("survey-unit-offered");
        assertTrue(edge("take-ft-holes.csv", 1) <= edge("draw-lane", 0), "the offer is in sight");
        hand.click("take-ft-holes.csv");
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertFalse(hand.has("take-ft-holes.csv"));
        assertTrue(
                understood()
                        .contains(
                                "unit: ft (you took it, as meadow.csv says: then its 3 holes lie"
                                        + " on that land)"),
                understood());
        assertTrue(
                understood().contains("columns: name, northing, easting, topsoil, bearing, met"));
        assertFalse(understood().contains("Not used"));
        hand.look("survey-unit-taken");
        draw("survey-holes", Clicks.at(0.3, 0.8, 0.5, 0.5, 0.6, 0.3));
        PlanFile plan = kept();
        List<Probe> holes = new Run(folder.resolve("survey")).survey(plan, Progress.NONE).probes();
        assertEquals(14 * 0.0254, holes.get(1).bearing(), 1e-12);
        assertEquals("soft and wet", holes.get(1).met());
        assertEquals(null, plan.plan().survey().files().get(1).unit());
    }

    /** Where a part begins (0) or ends (1) from the top of the window, px. */
    private double edge(String id, int end) {
        return Hand.on(
                () -> {
                    Node part = hand.see(id);
                    Bounds bounds = part.localToScene(part.getBoundsInLocal());
                    return end == 0 ? bounds.getMinY() : bounds.getMaxY();
                });
    }

    @Test
    void aColumnThatIsNotUsedIsToldAndCanBeNamed() throws Exception {
        meadow();
        Files.writeString(
                folder.resolve("holes.csv"),
                """
                hole,north ft,east ft,topsoil in,muck in,water in,note
                1,2080,5150,7,7,30,loam below
                2,2200,5400,9,14,20,soft and wet
                """);
        begin(folder, List.of("meadow.csv", "holes.csv"));
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertTrue(understood().contains("Not used: muck in\n"), understood());
        assertTrue(understood().contains("Not used: water in\n"), understood());
        assertTrue(told("columns-help-holes.csv").contains("soft to (how deep the soft soil goes"));
        assertTrue(told("columns-help-meadow.csv").contains("name (name or number), east, north"));
        assertTrue(
                told("survey-says")
                        .contains("Not used: muck in (holes.csv), water in (holes.csv)."),
                told("survey-says"));
        hand.look("survey-not-used");
        hand.choose(
                "use-holes.csv-5",
                "soft to (how deep the soft soil goes, down to soil that bears)");
        hand.until("what is left", () -> !understood().contains("Not used: muck in"));
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertEquals(
                "name, northing, easting, topsoil, soft to, ?, met",
                Hand.on(() -> ((TextField) hand.see("columns-holes.csv")).getText()));
        assertTrue(understood().contains("Not used: water in\n"), understood());
        hand.choose("use-holes.csv-6", "skip (not to be read)");
        hand.until("nothing left", () -> !understood().contains("Not used"));
        assertTrue(understood().contains("bearing soil 14 in or 356 mm"), understood());
        assertEquals("", told("survey-trouble"));
    }

    @Test
    void whatARoverWritesBesideItsPointsIsToldShortly() throws Exception {
        Files.writeString(
                folder.resolve("rover.csv"),
                """
                Pt,North ft,East ft,Elev ft,HRMS,VRMS,PDOP,Sats,Age
                1,2080,5150,620,0.02,0.03,1.2,14,1
                2,2210,5420,621,0.02,0.03,1.3,14,1
                3,2390,5170,622,0.02,0.04,1.2,13,1
                """);
        begin(folder, List.of("rover.csv"));
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertTrue(
                told("survey-says")
                        .contains(
                                "HRMS (rover.csv), VRMS (rover.csv), PDOP (rover.csv) and 2 more."),
                told("survey-says"));
        assertTrue(understood().contains("not used: HRMS, VRMS, PDOP, Sats, Age ("), understood());
        assertFalse(hand.has("use-rover.csv-8"));
        hand.look("survey-rover");
    }

    @Test
    void theSurveyIsReadInANarrowWindowToo() throws Exception {
        meadow();
        Files.writeString(
                folder.resolve("holes.csv"),
                """
                hole,north,east,topsoil in,muck in,note
                1,2080,5150,7,7,loam below
                2,2200,5400,9,14,soft and wet
                """);
        begin(folder, List.of("meadow.csv", "holes.csv"), 1000, 700);
        hand.until("the offer", () -> hand.has("take-ft-holes.csv"));
        hand.look("survey-narrow-offered");
        hand.click("take-ft-holes.csv");
        hand.until("the ground", () -> !hand.see("draw-lane").isDisabled());
        assertTrue(understood().contains("Not used: muck in\n"), understood());
        hand.look("survey-narrow-not-used");
        Node strip = hand.see("survey-understood");
        assertTrue(
                Hand.on(
                        () ->
                                hand.see("use-holes.csv-5")
                                                .localToScene(
                                                        hand.see("use-holes.csv-5")
                                                                .getBoundsInLocal())
                                                .getMaxX()
                                        <= strip.localToScene(strip.getBoundsInLocal()).getMaxX()),
                "what is not used is in sight");
    }
}
