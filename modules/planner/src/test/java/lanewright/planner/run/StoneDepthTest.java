package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.Test;

/**
 * The depths are those of the FHWA and South Dakota LTAP manual on gravel roads, appendix A (from
 * memory): 6.5 in and 8.5 in on weak soil, 5.5 in on middling.
 */
class StoneDepthTest {

    private static final double LENGTH = 232;
    private static final Running FIRM = Running.even("soft", State.BANK, 0, LENGTH, 0);
    private static final Running SOFT = Running.even("soft", State.BANK, 0, LENGTH, 1);

    private static List<Finding> of(String base, Running soft) throws Exception {
        Path plan = Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");
        PlanFile file =
                PlanFile.read("plan.json", Files.readAllBytes(plan))
                        .with("shapes[0].layers[1].thickness", base);
        return StoneDepth.of(file.plan(), LENGTH, soft);
    }

    private static List<String> codes(List<Finding> found) {
        return found.stream().map(Finding::code).toList();
    }

    @Test
    void stoneAsDeepAsTheGuideIsNotTold() throws Exception {
        // 3 in of surface lie on it.
        assertEquals(List.of(), of("2.5 in", FIRM));
        assertEquals(List.of(), of("5.5 in", SOFT));
    }

    @Test
    void thinnerStoneIsTold() throws Exception {
        assertEquals(List.of("stone-thin"), codes(of("2.4 in", FIRM)));
        assertEquals(List.of("stone-thin-on-soft"), codes(of("5.4 in", SOFT)));
        assertEquals(List.of("stone-thin", "stone-thin-on-soft"), codes(of("2 in", SOFT)));
    }

    @Test
    void itTellsTheGuidesDepths() throws Exception {
        Finding found = of("4 in", SOFT).get(0);
        String said = found.says().in(UnitSystem.US);
        assertEquals(
                "From 0+00 to 7+61.2 the soil is told to be too soft, and the stone over it is 7 in"
                        + " deep in all. A guide for gravel roads has 8.5 in on weak soil for 5 to"
                        + " 10 loaded trucks a day, as come while a lane is built, and 6.5 in for"
                        + " fewer.",
                said);
    }
}
