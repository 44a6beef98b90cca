package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

/** Prices and depths of stone on the card of stone, by pointer and keys. */
class PriceCardTest extends WaterCard {

    private static final String PRICE = "stone.materials[0].price";

    private String said(String path) {
        return Hand.on(() -> session.file().said(path));
    }

    private void write(String path, String words) {
        hand.write("field-" + path, words);
        hand.until("all at rest", () -> session.shown().get().settled());
    }

    private void clear(String path) {
        hand.click("field-" + path);
        hand.keys(KeyCode.CONTROL, KeyCode.A);
        hand.keys(KeyCode.DELETE);
        hand.keys(KeyCode.ENTER);
        hand.until("all at rest", () -> session.shown().get().settled());
    }

    private String says() {
        return String.join(" ", words("question-stone"));
    }

    @Test
    void moneyIsUnderstoodAsPeopleWriteIt() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        write(PRICE, "$28");
        assertEquals("28 per ton", said(PRICE));
        write(PRICE, "29 $/ton");
        assertEquals("29 per ton", said(PRICE));
        write(PRICE, "30 dollars a ton");
        assertEquals("30 per ton", said(PRICE));
        assertTrue(says().contains(" dollars: "), says());
        hand.look("price-dollars");
        write(PRICE, "31 EUR per ton");
        assertEquals("30 per ton", said(PRICE));
        assertTrue(says().contains("is not the money of your plan, which is dollars"), says());
        hand.look("price-other-money");
    }

    @Test
    void aPlanThatNamesNoMoneyTakesTheFirstOnInOneStep() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        clear("currency");
        assertFalse(Hand.on(() -> session.file().isSaid("currency")));
        write(PRICE, "GBP 22 a ton");
        assertEquals("22 per ton", said(PRICE));
        assertEquals("GBP", said("currency"));
        assertTrue(says().contains("From now on all prices of your plan are in GBP."), says());
        assertTrue(says().contains(" GBP: "), says());
        hand.look("price-takes-money");
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        hand.until("all at rest", () -> session.shown().get().settled());
        assertEquals("27.50 per ton", said(PRICE));
        assertFalse(says().contains("From now on"), says());
        assertFalse(Hand.on(() -> session.file().isSaid("currency")));
    }

    @Test
    void whatAPipeCostsIsAskedWhereOneIsToBeLaid() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        assertFalse(hand.has("field-water.pipeWork.trenchPrice"));
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT5);
        hand.click("see-water");
        hand.until(
                "the proposal",
                () -> session.ghost().get() != null && session.ghost().get().outcome() != null);
        hand.click("take");
        hand.until(
                "the pipe",
                () ->
                        session.plan().water().pipes().size() == 1
                                && session.shown().get().settled());
        double width = Hand.on(() -> session.file().plan().water().pipes().get(0).diameter());
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        String pipe = "price-of-pipe-" + Math.round(width * 1000);
        write(pipe, "$21.50");
        assertEquals("21.50 per ft", said("water.pipeWork.prices[0].price"));
        write("water.pipeWork.beddingPrice", "24");
        write("water.pipeWork.riprapPrice", "$42 / ton");
        write("water.pipeWork.fabricPrice", "2.10");
        write("water.pipeWork.trenchPrice", "6 a yd3");
        assertEquals("6 per yd3", said("water.pipeWork.trenchPrice"));
        double paid =
                Hand.on(
                        () ->
                                outcome().pipes().stream()
                                        .filter(job -> job.planned())
                                        .findFirst()
                                        .orElseThrow()
                                        .money());
        assertTrue(paid > 0, "all of it has a price");
        assertTrue(says().contains("Besides, a pipe under the lane"), says());
        hand.look("price-pipe");
        clear(pipe);
        assertTrue(Hand.on(() -> session.file().plan().water().pipeWork().prices().isEmpty()));
    }

    @Test
    void thinnerStoneOverSoftSoilIsTold() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT7);
        assertFalse(says().contains("the soil is told to be too soft"), says());
        write("shapes[0].layers[1].thickness", "4 in");
        // 3 in of surface on 4 in of base; the depths stand in shared/stone-depth.csv.
        assertTrue(
                says().contains(
                                "the soil is told to be too soft, and the stone over it is 7 in"
                                        + " deep in all. A guide for gravel roads has 8.5 in on"
                                        + " weak soil"),
                says());
        hand.look("stone-thin");
        write("shapes[0].layers[1].thickness", "2 in");
        assertTrue(says().contains("the stone is 5 in deep in all"), says());
    }
}
