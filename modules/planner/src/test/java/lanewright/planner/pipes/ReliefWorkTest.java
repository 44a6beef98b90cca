package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.storm.SizedRelief;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.DitchListings;
import lanewright.planner.listing.SettingOut;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.Run;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Relief culverts of a lane on a side hill with a deep ditch on either side, as work to be done.
 */
class ReliefWorkTest {

    private static final Path AT = Path.of("..", "..", "sample-surveys", "wickle-bank");

    private static Run run;
    private static String text;
    private static Outcome deep;
    private static List<PipeJob> reliefs;

    @BeforeAll
    static void plan() throws Exception {
        text =
                Files.readString(AT.resolve("plan.json"))
                        .replace(
                                "\"water\": {",
                                "\"water\": { \"pipeWork\": { \"riprapPrice\": \"20.00 per t\","
                                        + " \"trenchPrice\": \"10.00 per m3\" },");
        run = new Run(AT);
        deep = of(ditched("900 mm", "1100 mm"));
        reliefs = deep.pipes().stream().filter(each -> each.need() == PipeJob.Need.RELIEF).toList();
    }

    /** The plan with a ditch on either side, so deep. */
    private static String ditched(String left, String right) {
        return text.replace("\"shed right\"", "\"crown\"")
                .replace("400 mm", left)
                .replace(
                        "\"right\": { \"shoulder\": \"0.5 m\", \"ditch\": \"never\","
                                + " \"foreslope\": \"2:1\" }",
                        "\"right\": { \"shoulder\": \"0.3 m\", \"ditch\": \"always\","
                                + " \"ditchDepth\": \""
                                + right
                                + "\", \"ditchBottom\": \"0.3 m\" }");
    }

    private static Outcome of(String plan) throws Exception {
        byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
        return run.outcome(PlanFile.read("plan.json", bytes), Progress.NONE);
    }

    static List<List<String>> ends(Outcome outcome) {
        return words(
                SettingOut.pipes(
                        outcome.design().alignment(),
                        outcome.survey(),
                        outcome.plan().units(),
                        outcome.stakes(),
                        outcome.water(),
                        outcome.ground(),
                        outcome.pipes()));
    }

    private static List<List<String>> words(Listing listing) {
        return listing.rows().stream()
                .map(row -> row.stream().map(cell -> cell.in(UnitSystem.METRIC)).toList())
                .toList();
    }

    @Test
    void theDitchThatTakesTheirWaterSaysSo() {
        assertFalse(reliefs.isEmpty());
        assertTrue(deep.storm().reliefs().stream().allMatch(SizedRelief::intoDitch));
        assertEquals(1, deep.storm().receiving().size());
        assertEquals(Side.RIGHT, deep.storm().receiving().get(0).water().ditch().side());
        Finding found =
                deep.findings().stream()
                        .filter(each -> each.code().equals("relief-into-ditch"))
                        .findFirst()
                        .orElseThrow();
        String says = found.says().in(UnitSystem.METRIC);
        assertTrue(says.contains("come out in the right ditch"), says);
        assertTrue(found.measured().value() > found.limit().value());
        List<List<String>> rows = words(DitchListings.relieved(deep.storm()));
        for (PipeJob each : reliefs) {
            String sign = each.name().substring(each.name().lastIndexOf(' ') + 1);
            assertEquals(1, rows.stream().filter(row -> row.get(3).contains(sign)).count(), sign);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "stakes at both ends of a relief culvert: where, how high, how deep below ground |"
                    + " straight lines through its feet, worked by hand | derived")
    void bothEndsOfEachAreStaked() {
        Alignment line = deep.design().alignment();
        for (PipeJob each : reliefs) {
            CulvertLine under = each.line();
            List<PipeStake> both = PipeStake.of(line, deep.ground(), List.of(each));
            assertEquals(2, both.size());
            double across = Math.abs(under.outlet().offset() - under.inlet().offset());
            double slant = Math.hypot(1, under.fall() / across);
            double before = 0.15 / slant;
            PipeStake inlet = both.get(0);
            double sign = Math.signum(under.inlet().offset());
            assertEquals(under.inlet().offset() + sign * before, inlet.offset(), 1e-6);
            assertEquals(
                    under.inlet().height() + before * under.fall() / across, inlet.invert(), 1e-6);
            // What is ordered lies from there, straight down the fall.
            PipeStake outlet = both.get(1);
            double apart = Math.hypot(outlet.x() - inlet.x(), outlet.y() - inlet.y());
            assertEquals(
                    each.length().ordered(),
                    Math.hypot(apart, inlet.invert() - outlet.invert()),
                    1e-6);
            var place = new Place(inlet.station(), inlet.offset());
            assertEquals(line.x(place), inlet.x(), 1e-6);
            assertEquals(
                    inlet.invert() - deep.ground().heightAt(inlet.x(), inlet.y()),
                    inlet.up(),
                    1e-12);
            List<List<String>> rows =
                    ends(deep).stream().filter(row -> row.get(0).startsWith(each.name())).toList();
            assertEquals(2, rows.size());
            assertEquals("offered", rows.get(0).get(1));
        }
    }

    @Test
    void aProposalWithoutAPipeSaysWhyItHasNoStakes() throws Exception {
        Outcome shallow = of(ditched("400 mm", "300 mm"));
        List<String> placed =
                shallow.pipes().stream()
                        .filter(each -> each.need() == PipeJob.Need.RELIEF)
                        .map(PipeJob::name)
                        .toList();
        int told = 0;
        for (Relief relief : shallow.water().drainage().reliefs()) {
            if (relief.pipe() != null && !placed.contains(relief.name())) {
                List<List<String>> rows =
                        ends(shallow).stream()
                                .filter(row -> row.get(0).equals(relief.name()))
                                .toList();
                assertEquals(1, rows.size(), relief.name());
                assertTrue(rows.get(0).get(1).startsWith("no stakes: "), rows.toString());
                told++;
            }
        }
        assertTrue(told > 0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "stone of a ditch's dam and its price | area of the drawn ditch to its brim, a foot on"
                    + " top and faces of 2:1, at the table's density of riprap | derived")
    void theDamIsCountedWithItsMoney() throws Exception {
        Outcome side = of(text);
        List<PipeJob> jobs =
                side.pipes().stream().filter(each -> each.need() == PipeJob.Need.RELIEF).toList();
        assertFalse(jobs.isEmpty());
        for (PipeJob each : jobs) {
            // The ditch is 0.4 m deep, 0.3 m wide at its bottom; its sides are those of the plan.
            double sides =
                    side.water().channels().stream()
                            .filter(water -> water.ditch().side() == each.line().from())
                            .map(water -> water.shapeAt(each.line().station()))
                            .mapToDouble(shape -> shape.left() + shape.right())
                            .findFirst()
                            .orElseThrow();
            EndWorks.Dam dam = each.works().dam().orElseThrow();
            double h = dam.high();
            assertTrue(h > 0.2 && h <= 0.4 + 1e-6, "no higher than the ditch is deep: " + h);
            double stone =
                    0.3048 * (0.3 * h + sides / 2 * h * h)
                            + 4 * (0.3 * h * h / 2 + sides / 6 * h * h * h);
            assertEquals(stone, dam.stone(), 1e-6);
            CostLine line = each.of(CostLine.What.DAM).orElseThrow();
            // 2,900 lb a cubic yard.
            double tonnes = stone * 2900 * 0.45359237 / Math.pow(0.9144, 3) / 1000;
            assertEquals(20 * tonnes, line.money(), 0.01);
            EndWorks.Basin basin = each.works().basin().orElseThrow();
            assertEquals(
                    10 * basin.dug(), each.of(CostLine.What.BASIN).orElseThrow().money(), 1e-9);
            assertTrue(each.of(CostLine.What.BASIN_STONE).orElseThrow().money() > 0);
        }
        String assumed =
                side.assumptions().stream()
                        .map(each -> each.name())
                        .collect(Collectors.joining(" | "));
        assertTrue(assumed.contains("what is built at the ends of pipes"), assumed);
    }
}
