package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.CancellationException;
import lanewright.drainage.Pool;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.work.HeapPlace;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole way on a plane that falls 5 % east with a hollow across it. */
class RunTest {

    @TempDir static Path folder;

    private static Outcome outcome;

    @BeforeAll
    static void runOnce() throws Exception {
        var points = new StringBuilder("name,easting,northing,height,code\n");
        int number = 1;
        for (int x = -20; x <= 220; x += 10) {
            for (int y = -60; y <= 60; y += 10) {
                double hollow = 3 * Math.max(0, 1 - Math.abs(x - 100) / 30.0);
                double height = 100 + 0.05 * x - hollow + 0.01 * y;
                points.append(number++)
                        .append(',')
                        .append(x)
                        .append(',')
                        .append(y)
                        .append(',')
                        .append(Math.rint(height * 1000) / 1000)
                        .append(",ground\n");
            }
        }
        Files.writeString(folder.resolve("points.csv"), points);
        outcome = new Run(folder).outcome(plan("\"75 mm\""), Progress.NONE);
    }

    private static PlanFile plan(String surface) throws PlanException {
        String json =
                """
                {
                  "version": 1, "name": "Hollow lane", "units": "metric",
                  "survey": { "files": [ { "path": "points.csv", "holds": "points", "unit": "m" } ] },
                  "benchmarks": [ { "name": "peg", "east": "0 m", "north": "20 m", "height": "100.2 m" } ],
                  "line": { "points": [ { "east": "0 m", "north": "0 m" }, { "east": "100 m", "north": "5 m", "radius": "40 m" }, { "east": "190 m", "north": "0 m" } ] },
                  "shapes": [ { "name": "lane", "layers": [
                    { "role": "surface", "thickness": SURFACE }, { "role": "base", "thickness": "150 mm" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "stone": { "payload": "14 t", "materials": [
                    { "role": "surface", "kind": "crushed surfacing, top course", "price": "20 per t" },
                    { "role": "base", "kind": "crushed limestone, dense graded" } ] },
                  "hazards": { "wires": [ { "name": "wire", "clearance": "6 m",
                    "points": [ { "east": "50 m", "north": "-30 m" }, { "east": "50 m", "north": "30 m" } ] } ] }
                }
                """
                        .replace("SURFACE", surface);
        return PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void allNineQuestionsAreAnswered() {
        assertEquals(
                List.of(Finding.Topic.values()),
                outcome.answers().stream().map(Answer::topic).toList());
        for (Answer answer : outcome.answers()) {
            for (UnitSystem units : UnitSystem.values()) {
                assertTrue(answer.says().in(units).matches(".*[0-9].*"), answer.question());
            }
        }
    }

    @Test
    void theHollowIsFoundAndTheWireToo() {
        assertTrue(
                outcome.findings().stream().anyMatch(each -> each.code().equals("load-under-wire")),
                "a wire at 6 m over a lane with a raised bed of 6 m");
        assertTrue(outcome.mustStop());
        assertTrue(outcome.water().made().size() > 0, "the lane dams the hollow");
    }

    @Test
    void namesInNoTableAreRefusedWithTheirPlaceAndTheNearestName() throws PlanException {
        String json =
                """
                {
                  "version": 1, "name": "Lane", "units": "metric",
                  "survey": { "files": [ { "path": "points.csv", "holds": "points", "unit": "m" } ] },
                  "line": { "points": [ { "east": "0 m", "north": "0 m" }, { "east": "190 m", "north": "0 m" } ] },
                  "shapes": [ { "name": "lane", "layers": [ { "role": "base", "thickness": "150 mm" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "earth": {
                    "soil": "comon earth"
                  },
                  "stone": { "payload": "14 t", "materials": [
                    { "role": "base",
                      "kind": "crushed limestone, dens graded",
                      "loose": "plain gravl" } ] }
                }
                """;
        PlanFile file = PlanFile.read("lane.json", json.getBytes(StandardCharsets.UTF_8));
        var run = new Run(folder);
        PlanException refused =
                assertThrows(PlanException.class, () -> run.outcome(file, Progress.NONE));
        assertEquals("lane.json", refused.file());
        List<String> words = String.valueOf(refused.getMessage()).lines().toList();
        assertEquals(3, words.size(), words.toString());
        assertTrue(
                words.get(0)
                        .startsWith(
                                "lane.json, line 8, column 13: earth.soil: \"comon earth\" is not in"
                                        + " the table. Did you mean \"common earth\"?"),
                words.get(0));
        assertTrue(
                words.get(1).startsWith("lane.json, line 12, column 15: stone.materials[0].kind: "),
                words.get(1));
        assertTrue(
                words.get(1).contains("Did you mean \"crushed limestone, dense graded\"?"),
                words.get(1));
        assertTrue(
                words.get(2)
                        .startsWith("lane.json, line 13, column 16: stone.materials[0].loose: "),
                words.get(2));
    }

    @Test
    void findingsComeWorstFirst() {
        for (int i = 1; i < outcome.findings().size(); i++) {
            assertTrue(
                    outcome.findings()
                                    .get(i - 1)
                                    .level()
                                    .compareTo(outcome.findings().get(i).level())
                            <= 0);
        }
    }

    @Test
    void aMissingGradeIsLaidWithItsReasons() {
        assertNotNull(outcome.laid());
        assertTrue(outcome.plan().grade().points().size() >= 2);
        assertTrue(
                outcome.plan().grade().reasons().stream()
                        .anyMatch(each -> each.contains("straight grade")));
    }

    @Test
    void onlyWhatAnEditTouchesIsComputedAgainAndTheResultIsTheSame() throws Exception {
        var run = new Run(folder);
        Outcome first = run.outcome(plan("\"75 mm\""), Progress.NONE);
        Outcome same = run.outcome(plan("\"75 mm\""), Progress.NONE);
        assertSame(first.ground(), same.ground());
        assertSame(first.sections(), same.sections());
        assertSame(first.water(), same.water());
        Outcome edited = run.outcome(plan("\"50 mm\""), Progress.NONE);
        assertSame(first.ground(), edited.ground());
        Outcome fresh = new Run(folder).outcome(plan("\"50 mm\""), Progress.NONE);
        assertArrayEquals(OutcomeJson.of(fresh, List.of()), OutcomeJson.of(edited, List.of()));
        Outcome back = run.outcome(plan("\"75 mm\""), Progress.NONE);
        assertArrayEquals(OutcomeJson.of(outcome, List.of()), OutcomeJson.of(back, List.of()));
    }

    @Test
    void theOutcomeFileKeepsToItsPublishedSchema() throws IOException {
        String schema = Files.readString(Path.of("../../docs/outcome.schema.json"));
        assertEquals(schema, OutcomeJson.schema());
        var sheet =
                new DrawnSheet(
                        1,
                        "Cover",
                        0.2159,
                        0.2794,
                        List.of(new DrawnSheet.Said("sheet", "sheet 1 of 1", List.of(1.0, 1.0))));
        var problems =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema)
                        .validate(
                                new String(
                                        OutcomeJson.of(outcome, List.of(sheet)),
                                        StandardCharsets.UTF_8),
                                InputFormat.JSON);
        assertEquals(List.of(), problems);
    }

    @Test
    void theOutcomeFileIsTheSameInEveryLocale() {
        byte[] here = OutcomeJson.of(outcome, List.of());
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG", "de-DE", "hi-IN")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(here, OutcomeJson.of(outcome, List.of()), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void heapsKeepOutOfTheWaterThatTheLaneDams() {
        assertTrue(outcome.heaps().heaps().size() >= 3);
        double least = 10 * 0.3048 - 1e-3; // 10 ft from water; the round ends are drawn by chords
        for (HeapPlace heap : outcome.heaps().heaps()) {
            double[][] outline = heap.outline();
            for (Pool pool : outcome.water().after()) {
                assertFalse(pool.spot().covers(heap.x(), heap.y()));
                for (Trace edge : pool.spot().outline()) {
                    for (int i = 0; i < edge.size(); i++) {
                        for (int k = 0; k < outline[0].length; k++) {
                            double dx = edge.x(i) - outline[0][k];
                            double dy = edge.y(i) - outline[1][k];
                            assertTrue(Math.hypot(dx, dy) >= least);
                        }
                    }
                }
            }
        }
        String order =
                outcome.order().stream()
                        .filter(step -> step.name().equals("strip"))
                        .findFirst()
                        .orElseThrow()
                        .amounts()
                        .toString();
        assertTrue(order.contains("Heap 1 of {} loose"), order);
    }

    @Test
    void aHeapThatTheOwnerPutsInThePondIsFound() throws Exception {
        Pool pond = outcome.water().made().get(0);
        double east = outcome.survey().originX() + pond.spot().x();
        double north = outcome.survey().originY() + pond.spot().y();
        String json =
                PlanFile.write(plan("\"75 mm\"").plan(), false)
                        .replace(
                                "\"work\": {",
                                "\"work\": { \"heaps\": [ { \"name\": \"pond\", \"east\": \""
                                        + east
                                        + " m\", \"north\": \""
                                        + north
                                        + " m\" } ],");
        PlanFile file = PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
        Outcome wet = new Run(folder).outcome(file, Progress.NONE);
        assertEquals(1, wet.heaps().heaps().size());
        assertEquals("pond", wet.heaps().heaps().get(0).name());
        assertTrue(
                wet.findings().stream()
                        .anyMatch(
                                each ->
                                        each.code().equals("heap-in-water")
                                                && each.level() == Finding.Level.STOP),
                wet.findings().toString());
    }

    @Test
    void everyTableHasANameOfItsOwn() {
        Set<String> names = new HashSet<>();
        for (Listing table : OutcomeJson.listings(outcome)) {
            assertTrue(names.add(table.name()), table.name());
        }
    }

    @Test
    void cancellingLeavesAtOnce() {
        var cancelled =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {}

                    @Override
                    public boolean isCancelled() {
                        return true;
                    }
                };
        assertThrows(
                CancellationException.class,
                () -> new Run(folder).outcome(plan("\"75 mm\""), cancelled));
    }

    @Test
    void aSurveyThatIsNotThereIsNamed(@TempDir Path empty) {
        var thrown =
                assertThrows(
                        SurveyException.class,
                        () -> new Run(empty).outcome(plan("\"75 mm\""), Progress.NONE));
        assertTrue(thrown.getMessage().contains("points.csv"), thrown.getMessage());
    }

    @Test
    void aStretchPastTheEndIsRefusedWithTheLength() throws PlanException {
        String json =
                PlanFile.write(outcome.plan(), false)
                        .replace(
                                "{ \"from\": \"start\", \"to\": \"end\", \"shape\": \"lane\" }",
                                "{ \"from\": \"start\", \"to\": \"0+900\", \"shape\": \"lane\" },"
                                        + " { \"from\": \"0+900\", \"to\": \"end\", \"shape\":"
                                        + " \"lane\" }");
        PlanFile file = PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
        var thrown =
                assertThrows(
                        DesignRefused.class, () -> new Run(folder).outcome(file, Progress.NONE));
        assertEquals("past-the-end", thrown.findings().get(0).code());
    }

    @Test
    void withAGradeInThePlanNoneIsLaid() throws Exception {
        PlanFile file =
                PlanFile.read(
                        "plan.json",
                        PlanFile.write(outcome.plan(), true).getBytes(StandardCharsets.UTF_8));
        Outcome again = new Run(folder).outcome(file, Progress.NONE);
        assertNull(again.laid());
        assertEquals(outcome.volumes().cut().corrected(), again.volumes().cut().corrected(), 1e-6);
    }
}
