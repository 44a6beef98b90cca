package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** What rooms say to each other about the design and their work. */
class FindingTest {

    private static Finding finding(String code, Quantity limit, String source) {
        return new Finding(
                code,
                Finding.Level.LOOK,
                Finding.Topic.WATER,
                Where.station(12),
                Saying.of("The ditch falls only {}.", Quantity.grade(0.004)),
                Quantity.grade(0.004),
                limit,
                source,
                Saying.plain("Dig it deeper at the low end."));
    }

    @Test
    void aFindingHasAStableNameAndALimitHasASource() {
        assertEquals("ditch-too-flat", finding("ditch-too-flat", null, "").code());
        for (String bad : List.of("", "Ditch", "ditch too flat", "-ditch", "ditch_flat", "9")) {
            assertThrows(IllegalArgumentException.class, () -> finding(bad, null, ""), bad);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> finding("ditch-too-flat", Quantity.grade(0.005), " "));
    }

    @Test
    void aSayingHasAsManyGapsAsQuantities() {
        assertThrows(
                IllegalArgumentException.class, () -> Saying.of("{} and {}", Quantity.count(1)));
        assertThrows(IllegalArgumentException.class, () -> Saying.of("none", Quantity.count(1)));
        assertEquals("a { } b", Saying.plain("a {} b").in(UnitSystem.US));
    }

    @Test
    void aPartOfTheWorkReportsIntoTheWhole() {
        List<String> heard = new ArrayList<>();
        Progress whole =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {
                        heard.add(done + " " + doing);
                    }

                    @Override
                    public boolean isCancelled() {
                        return heard.size() > 2;
                    }
                };
        Progress half = whole.part(0.5, 1);
        half.report(0, "cutting");
        half.check();
        half.report(0.5, "cutting");
        half.part(0.5, 1).report(1, "cut");
        assertEquals(List.of("0.5 cutting", "0.75 cutting", "1.0 cut"), heard);
        assertThrows(CancellationException.class, half::check);
        Progress.NONE.check();
    }
}
