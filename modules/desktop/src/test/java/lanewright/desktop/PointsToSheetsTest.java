package lanewright.desktop;

import java.util.List;
import org.junit.jupiter.api.Test;

/** From points and probe holes in feet to sheets. */
class PointsToSheetsTest extends FilesToSheets {

    @Test
    void pointsAndProbesInFeetBecomeSheets() throws Exception {
        begin(SAMPLES.resolve("marrow-fold"), List.of("points.csv", "probes.csv"));
        hand.look("marrow-fold-survey-asked");
        hand.choose("unit-points.csv", "ft");
        ground("marrow-fold");
        draw("marrow-fold", Clicks.at(0.10, 0.55, 0.5, 0.5, 0.9, 0.5));
        widen("11 ft", "11 ft wide");
        print("marrow-fold");
    }
}
