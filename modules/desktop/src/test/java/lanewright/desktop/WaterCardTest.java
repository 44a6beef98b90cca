package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
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
import lanewright.drainage.WetGround;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.run.Outcome;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The card of water and its signs on the land, by pointer and keys. */
class WaterCardTest {

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    private Hand hand;
    private Session session;
    private DeskWindow window;

    private void show(String sample) throws Exception {
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
    private List<String> words(String id) {
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

    private Outcome outcome() {
        return session.shown().get().outcome();
    }

    /** Opens a group of rows and finds every cell of a table of the sheet in it. */
    private void holds(String group, Listing table) {
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

    @Test
    void rowsTellWhatTheSheetTellsAndShowTheirPlaces() throws Exception {
        show("marrow-fold");
        hand.click("rows-hollow-nests");
        holds("hollows", StandingListings.nests(outcome().water()));
        holds("rain", StandingListings.rain(outcome().water()));
        hand.click("place-hollow-nests-0");
        hand.look("water-row-place");
        double[] middle =
                Hand.on(
                        () -> {
                            var spot = outcome().water().after().get(0).spot();
                            return window.land().place(spot.x(), spot.y());
                        });
        Node land = hand.see("land");
        assertEquals(land.getBoundsInLocal().getWidth() / 2, middle[0], 1);
        assertEquals(land.getBoundsInLocal().getHeight() / 2, middle[1], 1);
        hand.click("rows-hollow-nests");
        hand.click("rows-boundary-water");
        holds("boundary", StandingListings.border(outcome().water(), outcome().storm()));
        hand.look("water-row-boundary");
        hand.click("rows-boundary-water");
        hand.click("rows-down-and-across");
        holds("down and across", LaneDrainageListings.downAndAcross(outcome().water()));
        hand.click("rows-down-and-across");
        hand.click("rows-ditch-ends");
        holds("ends", LaneDrainageListings.ends(outcome().water()));
        hand.click("place-ditch-ends-0");
        hand.click("dark");
        hand.click("key");
        hand.look("water-row-ends-dark");
    }

    @Test
    void aStepOfTheRainIsChosenAndTheLandTellsWhatStandsThen() throws Exception {
        show("marrow-fold");
        hand.click("fit");
        Listing rain = StandingListings.rain(outcome().water());
        UnitSystem units = session.file().plan().units();
        String last = rain.rows().get(0).get(3).in(units);
        assertTrue(said().startsWith("After second day") && said().contains(last), said());
        hand.click("rain-step-0");
        String first = rain.rows().get(0).get(1).in(units);
        assertTrue(said().startsWith("After first day") && said().contains(first), said());
        hand.look("water-rain-first");
        // The chosen one stays chosen when it is pressed again.
        hand.click("rain-step-0");
        assertTrue(said().startsWith("After first day"), said());
        hand.keys(KeyCode.RIGHT);
        hand.keys(KeyCode.RIGHT);
        hand.keys(KeyCode.SPACE);
        assertTrue(said().startsWith("After second day"), said());
        hand.click("dark");
        hand.look("water-rain-dark");
    }

    private String said() {
        return Hand.on(() -> ((Labeled) hand.see("rain-says")).getText());
    }

    @Test
    void withoutRainTheCardSaysWhereToGiveIt() throws Exception {
        show("wickle-bank");
        assertTrue(said().startsWith("No rain is given in steps"), said());
        hand.click("rain-give");
        hand.write("rain-step-name", "wet day");
        hand.write("rain-step-rain", "much");
        hand.write("rain-step-hours", "8");
        hand.look("water-rain-refused");
        assertTrue(session.file().plan().water().rain().steps().isEmpty());
        hand.write("rain-step-rain", "40 mm");
        hand.write("rain-step-hours", "8");
        hand.until(
                "the rain",
                () ->
                        session.shown().get().settled()
                                && !outcome().water().land().steps().isEmpty());
        assertEquals(0.040, session.file().plan().water().rain().steps().get(0).rain(), 1e-12);
        assertTrue(said().startsWith("After wet day"), said());
        hand.look("water-rain-given");
        hand.click("rain-give");
        hand.click("rain-out");
        hand.until("no rain", () -> said().startsWith("No rain is given in steps"));
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        assertEquals(1, session.file().plan().water().rain().steps().size());
    }

    @Test
    void wetGroundIsShownWhenAskedForAndSurvivesAnEditOfTheLane() throws Exception {
        show("marrow-fold");
        hand.click("fit");
        WetGround wet = outcome().water().wet();
        double[] wettest = place(wet.squares(), WetGround.Step.WETTEST);
        Node land = hand.see("land");
        double[] at = Hand.on(() -> window.land().place(wettest[0], wettest[1]));
        hand.moveTo(land, at[0], at[1]);
        hand.settle();
        assertFalse(readout().contains("the wettest tenth"), readout());
        hand.click("wet-ground");
        hand.moveTo(land, at[0] + 1, at[1]);
        hand.until(
                "what the pointer is on",
                () -> {
                    hand.moveTo(land, at[0], at[1]);
                    return readout().contains("among the wettest tenth by its shape");
                });
        hand.look("water-wet");
        hand.click("key");
        hand.click("dark");
        hand.look("water-wet-dark");
        hand.click("dark");
        hand.click("key");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT4);
        long before = session.shown().get().edit();
        hand.write("field-shapes[0].width", "13 ft");
        hand.until(
                "the wider lane",
                () -> session.shown().get().settled() && session.shown().get().edit() > before);
        // The ground is as it was: nothing of it is worked out again.
        assertSame(wet, outcome().water().wet());
        hand.look("water-wet-not-under-shape");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
        hand.click("wet-ground");
        hand.moveTo(land, at[0], at[1]);
        hand.settle();
        assertFalse(readout().contains("by its shape"), readout());
    }

    private String readout() {
        return Hand.on(() -> ((Labeled) hand.see("readout")).getText());
    }

    /** A place in the middle of three wet squares, north of the middle of the land. */
    private static double[] place(WetGround.Squares squares, WetGround.Step step) {
        var cells = squares.cells();
        for (int square = cells.count() / 2; square < cells.count() - 1; square++) {
            if (squares.step(square - 1) == step
                    && squares.step(square) == step
                    && squares.step(square + 1) == step) {
                return new double[] {cells.x(square), cells.y(square)};
            }
        }
        throw new AssertionError("nowhere is so wet");
    }

    @Test
    void theKeyboardOpensRowsAndStaysOnThemOverAnEdit() throws Exception {
        show("wickle-bank");
        hand.click("fit");
        hand.look("water-wickle-land");
        Node head = hand.see("rows-reliefs");
        hand.click("rows-reliefs");
        hand.keys(KeyCode.SPACE);
        hand.keys(KeyCode.SPACE);
        holds("reliefs", LaneDrainageListings.reliefs(outcome().water()));
        holds("their pipes", StormListings.reliefs(outcome().storm()));
        hand.keys(KeyCode.TAB);
        Node on = Hand.on(() -> head.getScene().getFocusOwner());
        assertEquals("place-reliefs-0", on.getId());
        assertTrue(Hand.on(on::getAccessibleText).startsWith("Show the place of "));
        hand.keys(KeyCode.ENTER);
        hand.look("water-row-relief");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT3);
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
        assertTrue(hand.has("place-reliefs-0"), "a group that was opened stays open");
    }
}
