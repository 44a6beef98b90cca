package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.pond.GivenPipe;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.document.WaterPart;
import lanewright.planner.listing.SettingOut;
import lanewright.planner.listing.WaterListings;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A pipe that is taken into the plan is one to buy and lay, wherever the plan speaks of it. */
class PipeOfferTest {

    private static final Path AT = Path.of("..", "..", "sample-surveys", "marrow-fold");

    private static Run run;
    private static CulvertLine offered;
    private static Outcome before;
    private static PlanFile taken;
    private static Outcome after;

    @BeforeAll
    static void take() throws Exception {
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(AT.resolve("plan.json")));
        run = new Run(AT);
        before = run.outcome(file, Progress.NONE);
        offered = PipeOffer.fitting(before);
        assertNotNull(offered);
        taken = file.with(PipeOffer.taken(file.plan(), before, offered));
        after = run.outcome(taken, Progress.NONE);
    }

    private static String all(Listing listing) {
        return listing.rows().stream()
                .flatMap(List::stream)
                .map(cell -> cell.in(UnitSystem.US))
                .collect(Collectors.joining(" | "));
    }

    private static String waterWays(Outcome outcome) {
        return outcome.order().stream()
                .filter(step -> step.name().equals("water-ways"))
                .flatMap(step -> step.amounts().stream())
                .map(each -> each.in(UnitSystem.US))
                .collect(Collectors.joining(" | "));
    }

    @Test
    void itIsInTheTableOfPipesWithItsLength() {
        WaterPart.Pipe pipe = taken.plan().water().pipes().get(0);
        assertEquals(WaterPart.PipeState.TO_LAY, pipe.state());
        List<String> row =
                WaterListings.pipes(after.water()).rows().get(0).stream()
                        .map(cell -> cell.in(UnitSystem.US))
                        .toList();
        assertEquals(pipe.name(), row.get(0));
        // 9.632 m from end to end is 31.6 ft.
        assertEquals(9.632, offered.length(), 0.001);
        assertTrue(row.get(7).startsWith("31.6"), row.toString());
        String last = row.get(row.size() - 1);
        assertTrue(last.startsWith("fits") && last.contains("to lay, 18"), last);
    }

    @Test
    void theOrderOfWorkHasItBoughtAndLaidAndNothingSaysThatItIsThere() {
        String amounts = waterWays(after);
        assertTrue(amounts.contains("Buy and lay the new pipe"), amounts);
        // Half a foot more at each end, up to a whole length: what is ordered.
        assertTrue(amounts.contains("34 ft long"), amounts);
        assertFalse(amounts.contains("there already"), amounts);
        String told =
                Stream.of(
                                all(WaterListings.ditches(after.water())),
                                all(WaterListings.places(after.water())),
                                all(WaterListings.sags(after.water())),
                                after.findings().stream()
                                        .map(each -> each.says().in(UnitSystem.US))
                                        .collect(Collectors.joining(" ")))
                        .collect(Collectors.joining(" "));
        assertFalse(told.contains("existing pipe"), told);
    }

    @Test
    void itsEndsAreStaked() {
        List<List<String>> rows =
                SettingOut.first(
                                after.design().alignment(),
                                after.survey(),
                                after.plan().units(),
                                after.stakes(),
                                after.water())
                        .rows()
                        .stream()
                        .map(row -> row.stream().map(cell -> cell.in(UnitSystem.US)).toList())
                        .toList();
        List<String> names = rows.stream().map(row -> row.get(1)).toList();
        assertEquals("start, at the road", names.get(0));
        assertEquals(2, names.stream().filter("corner of a bend"::equals).count());
        assertTrue(names.contains("low point of the grade") && names.contains("far end"));
        List<String> inlet = ends(after).get(0);
        // Half a foot beyond where the plan has it, in the survey's own feet.
        GivenPipe pipe = after.water().pipes().get(0).pipe();
        double out = 0.5 * 0.3048 / Math.sqrt(1 + offered.grade() * offered.grade());
        double dx = pipe.inletX() - pipe.outletX();
        double dy = pipe.inletY() - pipe.outletY();
        double plan = Math.hypot(dx, dy);
        double east = (pipe.inletX() + out * dx / plan + after.survey().originX()) / 0.3048;
        double north = (pipe.inletY() + out * dy / plan + after.survey().originY()) / 0.3048;
        assertEquals(pipe.name() + ", inlet", inlet.get(0));
        assertEquals("in the plan", inlet.get(1));
        assertEquals(east, Double.parseDouble(inlet.get(8)), 0.006);
        assertEquals(north, Double.parseDouble(inlet.get(9)), 0.006);
        assertEquals(
                "offered, once the ground is 18 in deeper at its outlet",
                ends(before).get(0).get(1));
        assertTrue(ends(before).stream().anyMatch(row -> row.get(1).equals("offered")));
    }

    private static List<List<String>> ends(Outcome outcome) {
        return SettingOut.pipes(
                        outcome.design().alignment(),
                        outcome.survey(),
                        outcome.plan().units(),
                        outcome.stakes(),
                        outcome.water(),
                        outcome.ground(),
                        outcome.pipes())
                .rows()
                .stream()
                .map(row -> row.stream().map(cell -> cell.in(UnitSystem.US)).toList())
                .toList();
    }

    @Test
    void aPipeThatDoesNotFitIsNotBought() throws Exception {
        // With an outlet as high as its inlet it does not fall.
        double inlet = taken.plan().water().pipes().get(0).inlet().invert();
        PlanFile level = taken.with("water.pipes[0].outlet.invert", inlet + " m");
        Outcome outcome = run.outcome(level, Progress.NONE);
        assertTrue(
                outcome.findings().stream()
                        .anyMatch(each -> each.code().equals("pipe-does-not-fit")));
        String amounts = waterWays(outcome);
        assertFalse(amounts.contains("Buy and lay"), amounts);
        assertTrue(amounts.contains("Do not buy the new pipe"), amounts);
        List<String> unstaked = ends(outcome).get(ends(outcome).size() - 1);
        assertTrue(
                ends(outcome).stream()
                        .anyMatch(
                                row ->
                                        row.get(0).startsWith("pipe at")
                                                && row.get(1).startsWith("no stakes")
                                                && row.get(8).isEmpty()),
                unstaked.toString());
    }

    @Test
    void aPipeThatIsThereIsOpenedAndNotBought() throws Exception {
        PlanFile there = taken.with("water.pipes[0].state", "there");
        Outcome outcome = run.outcome(there, Progress.NONE);
        String amounts = waterWays(outcome);
        assertTrue(amounts.contains("1 pipe is there already: open both ends"), amounts);
        assertFalse(amounts.contains("Buy and lay"), amounts);
        assertFalse(
                all(WaterListings.pipes(outcome.water())).contains("to lay"),
                "it is not among those to buy");
    }

    @Test
    void itsWaterIsServedAndNothingMoreIsOffered() {
        assertEquals(1, before.water().places().stream().filter(WetPlace::isDam).count());
        assertTrue(after.water().places().stream().noneMatch(WetPlace::isDam));
        assertEquals(1, after.water().places().stream().filter(WetPlace::isServed).count());
        assertNull(PipeOffer.fitting(after));
        String answer =
                after.answers().stream()
                        .filter(each -> each.topic() == Topic.WATER)
                        .findFirst()
                        .orElseThrow()
                        .says()
                        .in(UnitSystem.US);
        assertFalse(answer.contains("to settle"), answer);
        assertTrue(answer.contains("1 served by a pipe of your plan"), answer);
    }

    @Test
    void aLaneThatWasMovedOffItsPipeSaysSo() throws Exception {
        PlanFile moved =
                taken.with("line.points[1].north", "2050 ft")
                        .with("line.points[2].north", "2090 ft");
        Outcome outcome = run.outcome(moved, Progress.NONE);
        Finding found =
                outcome.findings().stream()
                        .filter(each -> each.code().equals("pipe-off-lane"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Level.LOOK, found.level());
        assertFalse(waterWays(outcome).contains("Buy and lay"), "it is not bought for nothing");
    }

    @Test
    void theOutcomeFileKeepsToItsPublishedSchema() throws Exception {
        var sheet = new DrawnSheet(1, "Cover", 0.2159, 0.2794, List.of());
        var problems =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(OutcomeJson.schema())
                        .validate(
                                new String(
                                        OutcomeJson.of(after, List.of(sheet)),
                                        StandardCharsets.UTF_8),
                                InputFormat.JSON);
        assertEquals(List.of(), problems);
    }
}
