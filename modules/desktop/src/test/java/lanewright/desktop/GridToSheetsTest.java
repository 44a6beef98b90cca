package lanewright.desktop;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From an open elevation grid in degrees to sheets. */
class GridToSheetsTest extends FilesToSheets {

    @Test
    void anOpenElevationGridBecomesSheets() throws Exception {
        Path grid = Path.of("..", "survey", "src", "test", "resources", "open-data");
        begin(grid, List.of("jacksboro-fault.tif"));
        hand.choose("plan-units", "metric");
        hand.choose("unit-jacksboro-fault.tif", "m");
        ground("open-grid");
        for (int i = 0; i < 10; i++) {
            hand.click("nearer");
        }
        Hand.pause(800);
        draw("open-grid", Clicks.at(0.03, 0.465, 0.18, 0.462, 0.34, 0.468));
        print("open-grid");
    }
}
