package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lanewright.drainage.along.Clearance;
import lanewright.drainage.along.Clearance.State;
import lanewright.drainage.along.Side;
import lanewright.lane.line.Profile;
import lanewright.lane.line.TurningPoint;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a laid grade is what the report on water finds along the same lane. */
class LaidNoteTest {

    /** What must not be found beside a ditch that is said to drain. */
    private static final Set<String> NOT_DRAINED =
            Set.of(
                    "ditch-dead-end",
                    "ditch-too-flat",
                    "ditch-to-road",
                    "water-stands-in-ditch",
                    "edge-below-ground",
                    "lane-is-a-trough");

    /** A station or two are one place within this, m: less than sections are found to. */
    private static final double INSIDE = 0.01;

    /**
     * A section speaks for the lane halfway to its neighbours, while the edge of standing water is
     * measured: so far the two may differ, m.
     */
    private static final double HALF_WAY = 5;

    @TempDir private Path folder;

    @RepeatedTest(50)
    void onSeededGroundTheNoteAgreesWithTheWater(RepetitionInfo info) throws Exception {
        int seed = info.getCurrentRepetition();
        Outcome outcome = new Run(folder).outcome(seeded(seed), Progress.NONE);
        agrees(outcome, "seed " + seed);
        GradeKept.check(outcome, "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void onTheSamplesTheNoteAgreesWithTheWater(String sample) throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", sample);
        Plan plan = PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json"))).plan();
        Plan bare = plan.with(plan.grade().laid(List.of(), List.of()));
        PlanFile file =
                PlanFile.read(
                        "plan.json", PlanFile.write(bare, false).getBytes(StandardCharsets.UTF_8));
        var run = new Run(at);
        Outcome outcome = run.outcome(file, Progress.NONE);
        agrees(outcome, sample);
        assertEquals(
                outcome.plan().grade(),
                run.layGrade(file, Progress.NONE).written(),
                "what is said of the grade is what is written into the plan");
    }

    private static void agrees(Outcome outcome, String where) {
        assertNotNull(outcome.laid(), where);
        double wanted = outcome.plan().grade().edgeAboveGround();
        List<Clearance.Stretch> stretches =
                outcome.water().clearance(outcome.sections().sections(), wanted);
        double length = 0;
        for (Clearance.Stretch stretch : stretches) {
            length += stretch.length();
            if (stretch.state() != State.DRAINED) {
                continue;
            }
            for (Side side : Side.values()) {
                if (stretch.edge(side).state() != State.DRAINED) {
                    continue;
                }
                for (Finding finding : outcome.water().findings()) {
                    assertTrue(
                            !NOT_DRAINED.contains(finding.code())
                                    || !says(finding, side)
                                    || !meets(finding, stretch),
                            () -> where + ": " + stretch + " is called drained, but " + finding);
                }
            }
        }
        assertEquals(outcome.design().length(), length, 0.01, where);
        String reasons = String.join(" ", outcome.plan().grade().reasons());
        for (Clearance.Stretch stretch : stretches) {
            if (stretch.state() == State.DRAINED) {
                assertTrue(reasons.contains("a ditch that drains"), where + ": " + reasons);
            }
            if (stretch.state() == State.UNDRAINED) {
                assertTrue(reasons.contains("no ditch drains it"), where + ": " + reasons);
            }
        }
        Finding note =
                outcome.findings().stream()
                        .filter(each -> each.code().equals("grade-laid"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(note.says().in(UnitSystem.METRIC).contains("higher ground beside it"), where);
    }

    private static boolean says(Finding finding, Side side) {
        String words = finding.says().in(UnitSystem.METRIC);
        return words.contains(" " + side.word() + " ") || finding.code().equals("lane-is-a-trough");
    }

    /** Whether a finding lies in a stretch, more than where they touch. */
    private static boolean meets(Finding finding, Clearance.Stretch stretch) {
        Double from = finding.where().from();
        Double to = finding.where().to();
        if (from == null || to == null) {
            return false;
        }
        double low = Math.max(from, stretch.from());
        double high = Math.min(to, stretch.to());
        return from.equals(to)
                ? from > stretch.from() + INSIDE && from < stretch.to() - INSIDE
                : high > low + (finding.code().startsWith("water-stands") ? HALF_WAY : INSIDE);
    }

    /** Rolling ground of some trend, swell and side slope, shot about every 8 m. */
    private PlanFile seeded(int seed) throws Exception {
        var random = new SplittableRandom(seed);
        double length = 110 + random.nextDouble(90);
        double slope = (random.nextDouble() - 0.5) * 0.16;
        double side = (random.nextDouble() - 0.5) * 0.24;
        double high = random.nextDouble(2.5);
        double wave = 60 + random.nextDouble(120);
        double phase = random.nextDouble(6.3);
        double turn = (random.nextDouble() - 0.5) * 1.2;
        var points = new StringBuilder("name,easting,northing,height,code\n");
        int number = 1;
        for (int x = -24; x <= length + 24; x += 8) {
            for (int y = -40; y <= 40; y += 8) {
                double east = x + random.nextDouble(3);
                double north = y + random.nextDouble(3);
                double height =
                        100
                                + slope * east
                                + side * north
                                + high
                                        * StrictMath.sin(
                                                phase + (east + turn * north) * 6.283 / wave)
                                + random.nextDouble(0.06);
                points.append(number++)
                        .append(',')
                        .append(Math.rint(east * 1000) / 1000)
                        .append(',')
                        .append(Math.rint(north * 1000) / 1000)
                        .append(',')
                        .append(Math.rint(height * 1000) / 1000)
                        .append(",ground\n");
            }
        }
        Files.writeString(folder.resolve("points.csv"), points);
        String ditch = random.nextInt(4) == 0 ? ", \"left\": { \"ditch\": \"never\" }" : "";
        String json =
                """
                {
                  "version": 1, "name": "Seeded lane", "units": "metric",
                  "survey": { "files": [ { "path": "points.csv", "holds": "points", "unit": "m" } ] },
                  "line": { "points": [ { "east": "0 m", "north": "0 m" },
                    { "east": "MIDDLE m", "north": "6 m", "radius": "40 m" },
                    { "east": "FAR m", "north": "0 m" } ] },
                  "shapes": [ { "name": "lane"DITCH, "layers": [
                    { "role": "surface", "thickness": "75 mm" },
                    { "role": "base", "thickness": "150 mm" } ] } ],
                  "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
                  "stone": { "payload": "14 t", "materials": [
                    { "role": "surface", "kind": "crushed surfacing, top course" },
                    { "role": "base", "kind": "crushed surfacing, base course" } ] }
                }
                """
                        .replace("MIDDLE", Long.toString(Math.round(length / 2)))
                        .replace("FAR", Long.toString(Math.round(length)))
                        .replace("DITCH", ditch);
        return PlanFile.read("plan.json", json.getBytes(StandardCharsets.UTF_8));
    }

    /** The limits that a laid grade keeps, or names. */
    private static final class GradeKept {

        private GradeKept() {}

        static void check(Outcome outcome, String where) {
            Profile profile = outcome.design().profile();
            boolean named =
                    outcome.findings().stream()
                            .anyMatch(
                                    each ->
                                            each.code().startsWith("grade-")
                                                    && !each.code().equals("grade-laid"));
            double steepest = outcome.plan().grade().steepest() + 1e-6;
            double flattest = outcome.plan().grade().flattest() - 1e-6;
            for (double s = 0; s <= profile.to(); s += 0.5) {
                double grade = Math.abs(profile.grade(s));
                double station = s;
                assertTrue(named || grade <= steepest, () -> where + " steep at " + station);
                assertTrue(
                        named || profile.rate(s) != 0 || grade >= flattest,
                        () -> where + " flat at " + station);
            }
            long sags = profile.turningPoints().stream().filter(TurningPoint::sag).count();
            assertNotNull(outcome.laid());
            assertTrue(named || sags == outcome.laid().ways().size(), where + " low points");
        }
    }
}
