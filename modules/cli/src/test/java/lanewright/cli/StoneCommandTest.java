package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class StoneCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    @Test
    void answersInTonsAndLoads() {
        int code =
                run(
                        "stone",
                        "--length",
                        "500 ft",
                        "--width",
                        "12 ft",
                        "--layer",
                        "base 2 in",
                        "--edge",
                        "box",
                        "--density",
                        "163 lb/ft3",
                        "--payload",
                        "20 tons",
                        "--price",
                        "base 30 per ton");
        assertEquals(0, code, err.toString());
        // 500 x 12 x 2/12 ft = 1,000 ft³ at 163 lb/ft³ = 81.5 tons: 5 loads of 20 tons, 100 tons at
        // 30.
        assertTrue(
                out.toString().startsWith("Order 100 tons in 5 loads (81.5 tons needed)"),
                out.toString());
        assertTrue(out.toString().contains("3,000"), out.toString());
    }

    @Test
    void showsNoMoneyWithoutAPrice() {
        run(
                "stone",
                "--length",
                "500 ft",
                "--width",
                "12 ft",
                "--layer",
                "base 2 in",
                "--payload",
                "20 tons");
        assertFalse(out.toString().contains("delivered"), out.toString());
    }

    @Test
    void aBareNumberIsRefusedWithARemedy() {
        int code =
                run(
                        "stone",
                        "--length",
                        "500",
                        "--width",
                        "12 ft",
                        "--layer",
                        "base 2 in",
                        "--payload",
                        "20 tons");
        assertEquals(3, code);
        assertTrue(err.toString().contains("500 ft"), err.toString());
        assertEquals("", out.toString());
    }

    @Test
    void aPriceForNoLayerIsRefused() {
        int code =
                run(
                        "stone",
                        "--length",
                        "500 ft",
                        "--width",
                        "12 ft",
                        "--layer",
                        "base 2 in",
                        "--payload",
                        "20 tons",
                        "--price",
                        "top 20 per ton");
        assertEquals(3, code);
        assertTrue(err.toString().contains("top"), err.toString());
    }

    @Test
    void anUnknownCommandShowsUsage() {
        assertEquals(2, run("stones"));
        assertTrue(err.toString().contains("stone"), err.toString());
    }
}
