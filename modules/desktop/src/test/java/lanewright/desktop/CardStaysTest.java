package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** What is pressed in the panel of questions stays under the pointer. */
class CardStaysTest extends WaterCard {

    private static final List<String> HEADS =
            List.of(
                    "rows-hollow-nests",
                    "rows-reliefs",
                    "rows-boundary-water",
                    "rows-reliefs",
                    "rows-hollow-nests");

    private double top(Node part) {
        return Hand.on(() -> part.localToScene(part.getBoundsInLocal()).getMinY());
    }

    @Test
    void aGroupOpensAndClosesWhereItIs() throws Exception {
        show("marrow-fold");
        for (String id : HEADS) {
            // The first press may roll it into sight.
            hand.click(id);
            double before = top(hand.see(id));
            hand.click(id);
            assertEquals(before, top(hand.see(id)), 1, id);
            hand.click(id);
            assertEquals(before, top(hand.see(id)), 1, id);
        }
    }

    @Test
    void theRestOfTheFindingsOpensBelowTheFirst() throws Exception {
        show("marrow-fold");
        Node more = hand.see("more-water");
        Node last =
                Hand.on(
                        () -> {
                            var all = more.getParent().getChildrenUnmodifiable();
                            return all.get(all.indexOf(more) - 1);
                        });
        hand.click("rows-hollow-nests");
        hand.click("rows-hollow-nests");
        // Into sight, as far as a hand rolls it.
        hand.rollTo("more-water");
        double before = top(last);
        assertTrue(before > 0, "in sight");
        hand.click("more-water");
        assertEquals(before, top(last), 1);
    }

    @Test
    void undoFillsTheFieldThatWasJustWritten() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT4);
        String field = "field-shapes[0].width";
        hand.write(field, "11 ft");
        hand.until("the width", () -> text(field).equals("11 ft") && !hand.bar());
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        hand.until("the width of before", () -> session.shown().get().settled());
        assertEquals("12 ft", Hand.on(() -> text(field)));
        hand.keys(KeyCode.TAB);
        hand.until("all at rest", () -> session.shown().get().settled());
        assertEquals("12 ft", Hand.on(() -> session.file().said("shapes[0].width")));
        assertTrue(Hand.on(() -> !hand.see("redo").isDisabled()), "it can be done again");
    }

    private String text(String field) {
        return ((TextField) hand.see(field)).getText();
    }
}
