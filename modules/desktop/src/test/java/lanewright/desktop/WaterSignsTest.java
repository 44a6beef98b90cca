package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.Bounds;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import lanewright.measure.Finding.Topic;
import lanewright.planner.listing.StandingListings;
import lanewright.sheets.drawing.Mark;
import org.junit.jupiter.api.Test;

/** A sign of water on the land opens its row in the card, by pointer. */
class WaterSignsTest extends WaterCard {

    @Test
    void aSignOfWaterOnTheLandOpensItsRow() throws Exception {
        show("marrow-fold");
        hand.click("fit");
        Hand.pause(200);
        clickWords("RD ");
        marked("row-reliefs-");
        hand.look("sign-relief");
        clickWords("east bank");
        marked("row-ditch-ends-");
        clickWords("W2");
        marked("row-hollow-nests-0");
        hand.look("sign-hollow");
        // A hollow without a word under the pointer is its own sign.
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT1);
        hand.click("fit");
        Hand.pause(200);
        double[] deep =
                Hand.on(
                        () -> {
                            var spot = outcome().water().after().get(0).spot();
                            return window.land().place(spot.x(), spot.y());
                        });
        hand.clickAt(hand.see("land"), deep[0], deep[1] - 12);
        assertEquals(Topic.WATER, session.open().get());
        marked("row-hollow-nests-0");
    }

    @Test
    void aWayOutOfTheLandOpensItsRow() throws Exception {
        show("wickle-bank");
        hand.click("fit");
        hand.click("farther");
        Hand.pause(200);
        clickWords("B1");
        marked("row-boundary-ways-out-0");
        hand.look("sign-way-out");
        holds("ways out", StandingListings.waysOut(outcome().water(), outcome().storm()));
        hand.click("place-boundary-ways-out-0");
        double[] middle =
                Hand.on(
                        () -> {
                            var way = outcome().water().land().waysOut().get(0);
                            return window.land().place(way.x(), way.y());
                        });
        assertEquals(
                hand.see("land").getBoundsInLocal().getWidth() / 2, middle[0], 1, "in the middle");
    }

    /** Clicks words on the land, over which the pointer is a hand. */
    private void clickWords(String begin) {
        Mark.Words words =
                Hand.on(
                        () ->
                                window.land().drawnWords().stream()
                                        .filter(mark -> mark instanceof Mark.Words)
                                        .map(mark -> (Mark.Words) mark)
                                        .filter(mark -> mark.text().startsWith(begin))
                                        .findFirst()
                                        .orElseThrow(() -> new AssertionError("no sign " + begin)));
        Node land = hand.see("land");
        double x = words.start() + words.width() / 2;
        hand.moveTo(land, x, words.y() - 4);
        hand.settle();
        assertEquals(Cursor.HAND, Hand.on(land::getCursor), begin);
        hand.clickAt(land, x, words.y() - 4);
        Hand.pause(200);
    }

    /** A row is marked, and the whole of it or its head is in sight. */
    private void marked(String id) {
        assertEquals(Topic.WATER, session.open().get());
        Node row =
                Hand.on(
                        () ->
                                window.root().lookupAll(".evidence-note").stream()
                                        .filter(
                                                each ->
                                                        each.getPseudoClassStates().stream()
                                                                .anyMatch(
                                                                        of ->
                                                                                of.getPseudoClassName()
                                                                                        .equals(
                                                                                                "pointed")))
                                        .findFirst()
                                        .orElseThrow(() -> new AssertionError("no row is marked")));
        assertTrue(row.getId().startsWith(id), row.getId() + " for " + id);
        Node panel = Hand.on(() -> window.root().lookup(".questions-scroll"));
        Bounds seen = Hand.on(() -> panel.localToScene(panel.getBoundsInLocal()));
        Bounds at = Hand.on(() -> row.localToScene(row.getBoundsInLocal()));
        assertTrue(
                at.getMinY() >= seen.getMinY() - 1 && at.getMaxY() <= seen.getMaxY() + 1,
                at + " in " + seen);
    }
}
