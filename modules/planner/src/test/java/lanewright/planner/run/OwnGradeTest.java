package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Grade points that stand in the plan, on a lane of 200 m over a plane that rises 5 % east. */
class OwnGradeTest {

    @TempDir private Path folder;

    @BeforeEach
    void survey() throws Exception {
        var points = new StringBuilder("name,easting,northing,height,code\n");
        int number = 1;
        for (int x = -20; x <= 220; x += 10) {
            for (int y = -40; y <= 40; y += 10) {
                points.append(number++).append(',').append(x).append(',').append(y);
                points.append(',').append(Math.rint((100 + 0.05 * x) * 1000) / 1000);
                points.append(",ground\n");
            }
        }
        Files.writeString(folder.resolve("points.csv"), points);
    }

    private Draft draft(String limits, String points) throws Exception {
        String json =
                """
                {
                  "version": 1, "name": "Plane lane", "units": "metric",
                  "survey": { "files": [ { "path": "points.csv", "holds": "points", "unit": "m" } ] },
                  "line": { "points": [ { "east": "0 m", "north": "0 m" }, { "east": "200 m", "north": "0 m" } ] },
                  "grade": { LIMITS, "points": [ POINTS ] },
                  "shapes": [ { "name": "lane", "layers": [ { "role": "base", "thickness": "150 mm" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "stone": { "payload": "14 t", "materials": [
                    { "role": "base", "kind": "crushed limestone, dense graded" } ] }
                }
                """
                        .replace("LIMITS", limits)
                        .replace("POINTS", points);
        PlanFile file = PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
        return new Run(folder).draft(file, Progress.NONE);
    }

    private static List<Finding> of(Draft draft, String code) {
        return draft.findings().stream().filter(each -> each.code().equals(code)).toList();
    }

    private static Answer answer(Draft draft) {
        return draft.answers().stream()
                .filter(each -> each.topic() == Topic.GRADE)
                .findFirst()
                .orElseThrow();
    }

    /** 4 % over 100 m, then 12 % over 50 m, then level. */
    private static final String STEEP =
            """
            { "station": "start", "height": "100 m" },
            { "station": "0+100", "height": "104 m" },
            { "station": "0+150", "height": "110 m" },
            { "station": "end", "height": "110 m" }
            """;

    @Test
    void aGradeOfThePlansOwnOverItsSteepestIsSomethingToLookAt() throws Exception {
        Draft draft = draft("\"steepest\": \"10 %\", \"flattest\": \"0 %\"", STEEP);
        List<Finding> found = of(draft, OwnGrade.STEEP);
        assertEquals(1, found.size(), draft.findings().toString());
        Finding steep = found.get(0);
        assertEquals(Level.LOOK, steep.level());
        assertEquals(Topic.GRADE, steep.topic());
        assertEquals(100.0, steep.where().from(), 1e-6);
        assertEquals(0.12, steep.measured().value(), 1e-9);
        assertEquals(0.10, steep.limit().value(), 1e-9);
        String says = steep.says().in(UnitSystem.METRIC);
        assertTrue(says.contains("12 %") && says.contains("10 % allowed"), says);
        assertTrue(steep.remedy().in(UnitSystem.METRIC).contains("new grade"), "what to do");
        assertEquals(Answer.Mark.LOOK, answer(draft).mark());
        String answer = answer(draft).says().in(UnitSystem.METRIC);
        assertTrue(answer.contains("10 % allowed"), answer);
    }

    @Test
    void aGradeAtItsSteepestIsNotOver() throws Exception {
        Draft draft = draft("\"steepest\": \"12 %\", \"flattest\": \"0 %\"", STEEP);
        assertEquals(List.of(), of(draft, OwnGrade.STEEP));
        assertTrue(!answer(draft).says().in(UnitSystem.METRIC).contains("allowed"));
    }

    @Test
    void aGradeOfThePlansOwnUnderItsFlattestIsSomethingToLookAt() throws Exception {
        Draft draft = draft("\"steepest\": \"12 %\", \"flattest\": \"1 %\"", STEEP);
        List<Finding> found = of(draft, OwnGrade.FLAT);
        assertEquals(1, found.size());
        assertEquals(150.0, found.get(0).where().from(), 1e-6);
        assertEquals(200.0, found.get(0).where().to(), 1e-6);
        assertEquals(0.01, found.get(0).limit().value(), 1e-9);
        assertEquals(Answer.Mark.LOOK, answer(draft).mark());
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void aLaidGradeThatIsWrittenIntoThePlanBreaksNoLimit(String sample) throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", sample);
        PlanFile bare = PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json")));
        var run = new Run(at);
        Draft laid = run.draft(bare, Progress.NONE);
        Draft own = run.draft(bare.with(laid.plan()), Progress.NONE);
        assertEquals(null, own.laid());
        assertEquals(List.of(), of(own, OwnGrade.STEEP));
        assertEquals(List.of(), of(own, OwnGrade.FLAT));
    }

    @Test
    void whileThePlanMovesTheGradeThatWasLaidLastStays() throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", "marrow-fold");
        PlanFile bare = PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json")));
        PlanFile wider = bare.with("shapes[0].width", "16 ft");
        var run = new Run(at);
        Draft before = run.draft(bare, Progress.NONE);
        Draft moving = run.moving(wider, Progress.NONE);
        assertEquals(before.plan().grade().points(), moving.plan().grade().points());
        assertEquals(4.8768, moving.plan().shapes().get(0).width(), 1e-9, "16 ft");
        Draft after = run.draft(wider, Progress.NONE);
        Draft fresh = new Run(at).draft(wider, Progress.NONE);
        assertEquals(fresh.plan().grade(), after.plan().grade(), "as from a fresh start");
        assertEquals(
                fresh.plan().grade(),
                new Run(at).moving(wider, Progress.NONE).plan().grade(),
                "none was laid before");
    }
}
