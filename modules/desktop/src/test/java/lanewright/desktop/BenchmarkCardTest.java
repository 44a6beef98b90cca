package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import lanewright.planner.document.Benchmark;
import org.junit.jupiter.api.Test;

/** A benchmark is named, and taken out again, on the card of the field, by pointer and keys. */
class BenchmarkCardTest extends WaterCard {

    private List<Benchmark> marks() {
        return Hand.on(() -> session.file().plan().benchmarks());
    }

    private String wrong(String field) {
        return Hand.on(() -> ((Labeled) hand.see(field + "-wrong")).getText());
    }

    private String text(String field) {
        return Hand.on(() -> ((TextField) hand.see(field)).getText());
    }

    private void atRest() {
        hand.until("all at rest", () -> session.shown().get().settled());
    }

    private String says() {
        return String.join(" ", words("question-field"));
    }

    @Test
    void aPlanWithoutAnyGetsItsFirst() throws Exception {
        show("wickle-bank");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT9);
        assertTrue(says().contains("no heights, since no benchmark is named"), says());
        hand.look("benchmark-none");
        hand.click("benchmark-offer");
        hand.write("benchmark-name", "bolt in the rock");
        hand.write("benchmark-east", "312 ft 4 m");
        hand.write("benchmark-north", "much");
        hand.look("benchmark-refused");
        assertTrue(
                wrong("benchmark-east").contains("more than one number"), wrong("benchmark-east"));
        assertFalse(wrong("benchmark-north").isEmpty());
        assertTrue(wrong("benchmark-height").contains("missing"), wrong("benchmark-height"));
        assertEquals(List.of(), marks());
        assertEquals("bolt in the rock", text("benchmark-name"));
        // Another edit meanwhile leaves what was written.
        hand.write("field-work.interval", "12 m");
        atRest();
        assertEquals("much", text("benchmark-north"));
        double[] at = Hand.on(() -> flat());
        hand.write("benchmark-east", at[0] + " m");
        hand.write("benchmark-north", at[1] + " m");
        hand.write("benchmark-height", "84.5 m");
        atRest();
        assertEquals(1, marks().size());
        assertEquals("bolt in the rock", marks().get(0).name());
        assertEquals(at[0], marks().get(0).spot().across(), 1e-9);
        assertEquals(at[1], marks().get(0).spot().up(), 1e-9);
        assertEquals(84.5, marks().get(0).height(), 1e-12);
        assertTrue(says().contains("all heights from bolt in the rock"), says());
        hand.look("benchmark-named");
        hand.click("dark");
        hand.look("benchmark-named-dark");
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        atRest();
        assertEquals(List.of(), marks());
        assertEquals("12 m", Hand.on(() -> session.file().said("work.interval")));
    }

    /** A place of the survey in its own coordinates. */
    private double[] flat() {
        var line = session.file().plan().line().points().get(0).spot();
        return new double[] {line.across(), line.up()};
    }

    @Test
    void aBenchmarkIsTakenOutAndComesBack() throws Exception {
        show("marrow-fold");
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT9);
        List<Benchmark> before = marks();
        hand.click("benchmark-out-0");
        atRest();
        assertEquals(List.of(), marks());
        assertTrue(says().contains("no heights"), says());
        hand.keys(KeyCode.CONTROL, KeyCode.Z);
        atRest();
        assertEquals(before, marks());
        // The survey of this sample is in feet throughout, so a bare number is plain.
        hand.click("benchmark-offer");
        hand.write("benchmark-name", "nail in the old post");
        hand.write("benchmark-east", "5010");
        hand.write("benchmark-north", "2030");
        hand.write("benchmark-height", "410.25");
        atRest();
        assertEquals(2, marks().size());
        assertEquals(410.25 * 0.3048, marks().get(1).height(), 1e-9);
        hand.look("benchmark-two");
    }
}
