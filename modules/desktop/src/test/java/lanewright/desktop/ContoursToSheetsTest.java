package lanewright.desktop;

import java.util.List;
import org.junit.jupiter.api.Test;

/** From contours and spots in degrees to sheets. */
class ContoursToSheetsTest extends FilesToSheets {

    @Test
    void contoursInDegreesBecomeSheets() throws Exception {
        begin(SAMPLES.resolve("wickle-bank"), List.of("contours.geojson", "spots.geojson"));
        hand.choose("plan-units", "metric");
        hand.choose("unit-contours.geojson", "m");
        ground("wickle-bank");
        draw("wickle-bank", Clicks.at(0.12, 0.5, 0.4, 0.45, 0.85, 0.5));
        widen("3.2 m", "3.2 m wide");
        print("wickle-bank");
    }
}
