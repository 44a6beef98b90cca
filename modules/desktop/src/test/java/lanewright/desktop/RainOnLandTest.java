package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import lanewright.drainage.WetGround;
import lanewright.measure.Listing;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.StandingListings;
import org.junit.jupiter.api.Test;

/** Rain in steps and wet ground on the card of water and on the land, by pointer and keys. */
class RainOnLandTest extends WaterCard {

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
}
