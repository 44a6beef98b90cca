package lanewright.planner.listing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneReport;
import lanewright.stone.Supply;
import org.junit.jupiter.api.Test;

class StoneListingsTest {

    private static final Assumption FROM =
            new Assumption("made up", Saying.plain("so"), Assumption.Mark.YOURS, "the test");

    /** 100 m of 1 m² at 2 t and a tenth lost: 220 t, of which 50 t are in hand, in 20 t loads. */
    private static StoneReport report(double inHand) {
        Supply supply = new Supply("base", 2000, FROM, 1.25, FROM, 0.1, 20_000, 0.03, inHand, null);
        Running laid = Running.even("base", State.COMPACTED, 0, 100, 1);
        return StoneReport.of(List.of(LayerStone.of(supply, 0.1, laid)));
    }

    private static String cell(Listing listing, int row, String head) {
        for (int c = 0; c < listing.columns().size(); c++) {
            if (listing.columns().get(c).head().equals(head)) {
                return listing.shown(row, c, UnitSystem.METRIC);
            }
        }
        throw new AssertionError(head);
    }

    @Test
    void whatIsOrderedIsWhatTheLoadsBring() {
        Listing order = StoneListings.order(report(50_000));
        for (int row = 0; row < 2; row++) {
            assertEquals("220.0", cell(order, row, "Needed, loss included"));
            assertEquals("50.0", cell(order, row, "In hand"));
            assertEquals("9", cell(order, row, "Loads to order"));
            assertEquals("180.0", cell(order, row, "ORDER THIS"));
            assertEquals("10.0", cell(order, row, "Left over"));
            assertEquals("5,400.00", cell(order, row, "Cost to pay"));
        }
    }

    @Test
    void eachLoadSaysWhoBringsItAndWhereToTipItAtAWire() {
        Finding wire =
                Finding.of(
                        "load-under-wire",
                        Level.STOP,
                        Topic.ORDER,
                        Where.stretch(25, 29),
                        Saying.plain("A wire."),
                        Saying.plain("Mind it."));
        Listing loads = StoneListings.loads(report(50_000), List.of(wire));
        // Stone in hand lies up to 50 / 2.2 = 22.7 m; the next load goes on to 31.8 m.
        assertEquals("in hand", cell(loads, 2, "Note"));
        assertEquals("to order; tip before 0+025.0, push under the wire", cell(loads, 3, "Note"));
        assertEquals("to order", cell(loads, 4, "Note"));
        assertEquals("", cell(StoneListings.loads(report(Double.NaN), List.of(wire)), 0, "Note"));
    }
}
