package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanewright.lane.line.Profile;
import lanewright.lane.line.TurningPoint;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** First grades on the two sample surveys. */
class SampleGradesTest {

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void theFirstGradeKeepsItsLimitsAndMovesLessEarthThanAStraightOne(String sample)
            throws Exception {
        Path folder = SAMPLES.resolve(sample);
        Plan plan =
                PlanFile.read("plan.json", Files.readAllBytes(folder.resolve("plan.json"))).plan();
        var run = new Run(folder);
        Outcome laid =
                run.outcome(
                        file(plan.with(plan.grade().laid(List.of(), List.of()))), Progress.NONE);
        assertNotNull(laid.laid());
        assertEquals(List.of(), laid.laid().collisions());

        Profile profile = laid.design().profile();
        for (double s = 0; s <= profile.to(); s += 0.25) {
            double grade = Math.abs(profile.grade(s));
            double station = s;
            assertTrue(grade <= plan.grade().steepest() + 1e-6, () -> "steep at " + station);
            assertTrue(
                    profile.rate(s) != 0 || grade >= plan.grade().flattest() - 1e-6,
                    () -> "flat at " + station);
        }
        long sags = profile.turningPoints().stream().filter(TurningPoint::sag).count();
        assertEquals(sags, laid.laid().ways().size(), "every low point has a stated way out");

        var first = new GradePart.Point(0, profile.height(0), 0);
        var last = new GradePart.Point(Double.POSITIVE_INFINITY, profile.height(profile.to()), 0);
        Outcome straight =
                run.outcome(
                        file(plan.with(plan.grade().laid(List.of(first, last), List.of()))),
                        Progress.NONE);
        assertTrue(moved(laid) < moved(straight), moved(laid) + " against " + moved(straight));
        assertTrue(
                laid.findings().stream()
                        .map(Finding::code)
                        .noneMatch("grade-sag-no-way-out"::equals));
    }

    private static PlanFile file(Plan plan) throws Exception {
        return PlanFile.read(
                "plan.json", PlanFile.write(plan, false).getBytes(StandardCharsets.UTF_8));
    }

    private static double moved(Outcome outcome) {
        return outcome.volumes().cut().corrected() + outcome.volumes().earthFill();
    }
}
