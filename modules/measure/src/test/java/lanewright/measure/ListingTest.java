package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ListingTest {

    private static Listing masses(int totals, double... tonnes) {
        var rows = new ArrayList<List<Saying>>();
        for (double each : tonnes) {
            rows.add(List.of(Listing.cell(Quantity.mass(1000 * each))));
        }
        var column = Listing.Column.of("Needed", Kind.MASS);
        return new Listing("made-up", "Made up", List.of(column), rows, totals);
    }

    @Test
    void aSumShowsWhatItsShownPartsAddUpTo() {
        // Two parts of 0.04 more than they show: together they would show 642.4, but 440.8 and
        // 201.5 are 642.3.
        Listing listing = masses(1, 440.84, 201.54, 642.38);
        assertEquals("440.8", listing.shown(0, 0, UnitSystem.METRIC));
        assertEquals("201.5", listing.shown(1, 0, UnitSystem.METRIC));
        assertEquals("642.3", listing.shown(2, 0, UnitSystem.METRIC));
        assertEquals("1,999.8", masses(1, 999.94, 999.94, 1999.88).shown(2, 0, UnitSystem.METRIC));
    }

    @Test
    void whatIsNoSumIsShownAsItIs() {
        // A last row that is more than rounding away from the rows above is not touched.
        assertEquals("700.0", masses(1, 440.84, 201.54, 700).shown(2, 0, UnitSystem.METRIC));
        assertEquals("642.4", masses(0, 440.84, 201.54, 642.38).shown(2, 0, UnitSystem.METRIC));
        assertEquals("–", masses(1, 1, Double.NaN).shown(1, 0, UnitSystem.METRIC));
    }
}
