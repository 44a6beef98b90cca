package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewright.planner.listing.LaneDrainageListings;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.listing.StormListings;
import org.junit.jupiter.api.Test;

/** The rows of the card of water and their places on the land, by pointer and keys. */
class WaterCardTest extends WaterCard {

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
