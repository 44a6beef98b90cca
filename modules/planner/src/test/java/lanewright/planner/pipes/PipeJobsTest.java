package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.drainage.Crossing;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.StormListings;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The pipe of a sample as it is bought, dug in and built. */
class PipeJobsTest {

    private static final double FOOT = 0.3048;
    private static final double YARD3 = Math.pow(0.9144, 3);
    private static final Path AT = Path.of("..", "..", "sample-surveys", "marrow-fold");

    private static Run run;
    private static String text;
    private static Outcome outcome;
    private static PipeJob job;

    @BeforeAll
    static void plan() throws Exception {
        text = Files.readString(AT.resolve("plan-with-pipe.json"));
        run = new Run(AT);
        outcome = of(text);
        job = outcome.pipes().get(0);
    }

    private static Outcome of(String plan) throws Exception {
        byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
        return run.outcome(PlanFile.read("plan.json", bytes), Progress.NONE);
    }

    private static String all(Listing listing) {
        return listing.rows().stream()
                .flatMap(List::stream)
                .map(cell -> cell.in(UnitSystem.US))
                .collect(Collectors.joining(" | "));
    }

    private static CostLine line(CostLine.What what) {
        return job.of(what).orElseThrow();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "bed, riprap, fabric and money of a pipe | HEC-14, 2006, section 10.2, apron classes,"
                    + " and plane geometry, worked by hand | derived")
    void whatIsBoughtIsPlaneGeometry() {
        // 31.6 ft from foot to foot and 6 in beyond each, up to an even number of feet.
        assertEquals(34, job.length().ordered() / FOOT, 1e-9);
        // 18 in of 2 2/3 by 1/2 in corrugations, 16 gauge: 19.128 in outside; 12 in of room beside.
        double width = (19.128 + 24) / 12;
        assertEquals(width, job.trench().width() / FOOT, 1e-6);
        double bed = width * 0.5 * 34;
        assertEquals(bed / 27, job.trench().bedding() / YARD3, bed / 27 * 1e-4);
        // Stone of 5 in: 4 D long, 3.5 D50 deep, 3 D wide at the pipe and 3 D + 2/3 L at the end.
        double area = 6 * (4.5 + 8.5) / 2;
        assertEquals(39, area, 1e-9);
        double rock = area * 17.5 / 12 / 27;
        String riprap = line(CostLine.What.RIPRAP).amount().in(UnitSystem.US);
        assertTrue(riprap.startsWith("2.1 yd³"), riprap);
        assertEquals(34 * 23.50, line(CostLine.What.BARREL).money(), 1e-6);
        assertEquals(bed / 27 * 3700 / 2000 * 24, line(CostLine.What.BEDDING).money(), 0.02);
        assertEquals(rock * 2900 / 2000 * 38, line(CostLine.What.RIPRAP).money(), 0.01);
        assertEquals(area / 9 * 1.80, line(CostLine.What.FABRIC).money(), 0.01);
        assertEquals(
                34 * 23.50
                        + bed / 27 * 3700 / 2000 * 24
                        + rock * 2900 / 2000 * 38
                        + area / 9 * 1.80,
                job.money(),
                0.05);
    }

    @Test
    void withoutAPriceTheQuantityStandsAndNoMoneyIsSaid() throws Exception {
        Outcome bare =
                of(
                        text.replaceAll("(?s)\"pipeWork\": \\{.*?\\},\\s*\"rain\"", "\"rain\"")
                                .replace("\"material\": \"metal\",", ""));
        PipeJob other = bare.pipes().get(0);
        assertTrue(Double.isNaN(other.money()));
        assertFalse(other.hasPrice());
        assertTrue(all(PipeListings.work(bare.pipes())).contains("no price given"));
        assertEquals(job.trench(), other.trench());
        assertFalse(other.laid().stated());
    }

    @Test
    void whileTrucksBuildThereIsTooLittleOverItAndTheRemedyIsSaid() {
        assertFalse(job.finished().isThin());
        assertTrue(job.building().isThin());
        String remedy =
                outcome.findings().stream()
                        .filter(finding -> finding.code().equals("pipe-cover-building"))
                        .map(finding -> finding.remedy().in(UnitSystem.US))
                        .findFirst()
                        .orElseThrow();
        assertTrue(remedy.contains("packed earth over it"), remedy);
    }

    @Test
    void theOrderOfWorkAndTheListOfNeedsHaveIt() {
        String ways =
                outcome.order().stream()
                        .filter(step -> step.name().equals("water-ways"))
                        .flatMap(step -> step.amounts().stream())
                        .map(each -> each.in(UnitSystem.US))
                        .collect(Collectors.joining(" | "));
        assertTrue(ways.contains("draw pipe, riprap at the outlet"), ways);
        String also =
                PipeListings.also(outcome.pipes()).stream()
                        .flatMap(List::stream)
                        .map(cell -> cell.in(UnitSystem.US))
                        .collect(Collectors.joining(" | "));
        assertTrue(also.contains("Filter fabric under the riprap"), also);
        assertTrue(also.contains("799.00"), also);
        String stone =
                outcome.answers().stream()
                        .map(answer -> answer.says().in(UnitSystem.US))
                        .filter(says -> says.contains("Besides, a pipe"))
                        .findFirst()
                        .orElse("");
        assertTrue(stone.endsWith("with stone: 1,023.34."), stone);
    }

    @Test
    void aReliefCulvertIsOfferedWithItsMoneyAndNotBought() throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", "wickle-bank");
        String plan =
                Files.readString(at.resolve("plan.json"))
                        .replace(
                                "\"water\": {",
                                "\"water\": { \"pipeWork\": { \"soldBy\": \"1 m\", \"prices\": ["
                                        + " { \"size\": \"12 in\", \"price\": \"30.00 per m\" } ] },");
        byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
        Outcome side = new Run(at).outcome(PlanFile.read("plan.json", bytes), Progress.NONE);
        List<PipeJob> reliefs =
                side.pipes().stream().filter(each -> each.need() == PipeJob.Need.RELIEF).toList();
        assertFalse(reliefs.isEmpty());
        for (PipeJob each : reliefs) {
            assertFalse(each.planned());
            assertFalse(each.finished().isThin(), each.name());
            assertTrue(each.headwater().depth() <= each.sized().allowed(), each.name());
            CostLine barrel = each.of(CostLine.What.BARREL).orElseThrow();
            double metres = Math.ceil(each.line().length() + 2 * each.length().beyond());
            assertEquals(30 * each.laid().count() * metres, barrel.money(), 1e-6);
        }
        assertTrue(PipeListings.also(side.pipes()).isEmpty(), "a proposal is not bought");
        assertTrue(
                side.findings().stream().anyMatch(each -> each.code().equals("relief-size")),
                "and says its sizes");
        assertEquals(
                side.storm().reliefs().size(), StormListings.reliefs(side.storm()).rows().size());
    }

    @Test
    void theOwnersTailwaterBacksWaterUp() throws Exception {
        Outcome deep =
                of(
                        text.replace(
                                "\"state\": \"to lay\",",
                                "\"state\": \"to lay\", \"tailwater\": \"20 in\","));
        PipeJob other = deep.pipes().get(0);
        assertEquals(Crossing.Tailwater.From.OWNER, other.sized().tailwater().from());
        assertEquals(20 * 0.0254, other.sized().tail(), 1e-9);
        assertTrue(other.headwater().depth() > job.headwater().depth());
    }

    @Test
    void waterBelowItsInletStaysAndIsToldAsAPond() throws Exception {
        Outcome high = of(text.replace("\"invert\": \"402.95 ft\"", "\"invert\": \"403.45 ft\""));
        var place =
                high.water().places().stream()
                        .filter(each -> each.name().equals("W2"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(0.5, place.depth() / FOOT, 0.02);
        assertTrue(place.volume() > 0 && place.isServed());
    }
}
