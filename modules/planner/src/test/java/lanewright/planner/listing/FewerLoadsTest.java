package lanewright.planner.listing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Run;
import lanewright.stone.LayerStone;
import org.junit.jupiter.api.Test;

/** What is told of loads that do not come. */
class FewerLoadsTest {

    private static final Path PLAN =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");

    @Test
    void aLayerEndsWhereItsMissingLoadsBegin() throws Exception {
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(PLAN));
        Draft draft = new Run(PLAN.getParent()).draft(file, Progress.NONE);
        Listing told = StoneListings.fewer(draft.stone());
        assertEquals(draft.stone().layers().size(), told.rows().size());
        for (int i = 0; i < told.rows().size(); i++) {
            LayerStone layer = draft.stone().layers().get(i);
            List<Saying> row = told.rows().get(i);
            assertEquals(layer.supply().role(), row.get(0).in(UnitSystem.US));
            // The loads follow one another: what the last two would have covered is bare.
            int last = layer.loads().size() - 1;
            double bare = draft.design().length();
            assertEquals(bare, layer.loads().get(last).to(), 1e-6);
            assertEquals(station(layer.loads().get(last - 1).to()), row.get(2).in(UnitSystem.US));
            assertEquals(station(layer.loads().get(last - 2).to()), row.get(3).in(UnitSystem.US));
        }
    }

    /** 100 ft are a station: 12+34.5 is 1,234.5 ft from the beginning. */
    private static String station(double metres) {
        double feet = metres / 0.3048;
        long tenths = Math.round(feet * 10);
        String rest = String.format(java.util.Locale.ROOT, "%04.1f", tenths % 1000 / 10.0);
        return tenths / 1000 + "+" + rest.replaceAll("\\.0$", "");
    }
}
