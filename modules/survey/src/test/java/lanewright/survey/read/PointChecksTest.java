package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class PointChecksTest {

    /** Rolling ground shot at odd places about 5 m apart. */
    private static SurveyBuilder rolling(SplittableRandom random, int count) {
        double side = 5 * Math.sqrt(count);
        SurveyBuilder survey = Survey.builder();
        for (int i = 0; i < count; i++) {
            double x = side * random.nextDouble();
            double y = side * random.nextDouble();
            survey.point(x, y, height(x, y));
        }
        return survey;
    }

    /** Hills of 8 m, slopes up to 1 in 2. */
    private static double height(double x, double y) {
        return 200 + 4 * Math.sin(x / 9) + 4 * Math.cos(y / 11) + 0.05 * x;
    }

    private static List<String> codes(Survey survey) {
        return PointChecks.of(survey).stream().map(Finding::code).toList();
    }

    @RepeatedTest(20)
    void nothingIsSaidOfCleanRollingGround(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        Survey survey = rolling(new SplittableRandom(seed), 50 + 200 * seed).build();
        assertEquals(List.of(), PointChecks.of(survey), "seed " + seed);
    }

    @RepeatedTest(20)
    void rodReadTenFeetWrongIsFoundOnGentleGround(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        SurveyBuilder survey = Survey.builder();
        for (int i = 0; i < 400; i++) {
            double x = 100 * random.nextDouble();
            double y = 100 * random.nextDouble();
            survey.point(x, y, 200 + 0.04 * x + 0.3 * Math.sin(y / 20));
        }
        survey.point(50, 50, 202.2 + (seed % 2 == 0 ? 3.05 : -3.05));
        List<Finding> findings = PointChecks.of(survey.build());
        assertEquals(1, findings.size(), "seed " + seed + findings);
        assertEquals("height-does-not-fit", findings.get(0).code());
        assertEquals(50.0, findings.get(0).where().x());
        String words = findings.get(0).says().in(UnitSystem.US);
        assertTrue(words.contains(seed % 2 == 0 ? "above" : "below"), words);
    }

    @Test
    void pairsCloserThanAMillimetreAreFoundHoweverTheCellsFall() {
        var random = new SplittableRandom(7);
        SurveyBuilder survey = Survey.builder();
        Set<Integer> expected = new HashSet<>();
        int n = 20_000;
        double[] x = new double[2 * n];
        double[] y = new double[2 * n];
        for (int i = 0; i < n; i++) {
            x[2 * i] = 1000 * random.nextDouble();
            y[2 * i] = 1000 * random.nextDouble();
            double apart = 0.002 * random.nextDouble();
            double angle = 2 * Math.PI * random.nextDouble();
            x[2 * i + 1] = x[2 * i] + apart * Math.cos(angle);
            y[2 * i + 1] = y[2 * i] + apart * Math.sin(angle);
        }
        for (int i = 0; i < 2 * n; i++) {
            survey.point(x[i], y[i], 5);
        }
        Survey made = survey.build();
        for (int i = 0; i < 2 * n; i += 2) {
            if (Math.hypot(x[i] - x[i + 1], y[i] - y[i + 1]) < 0.001) {
                expected.add(i);
            }
        }
        Set<Integer> found = new HashSet<>();
        for (long pair : Twins.of(new Cells(made), 0.001)) {
            assertEquals(Twins.first(pair) + 1, Twins.second(pair));
            assertTrue(found.add(Twins.first(pair)), "told twice");
        }
        assertEquals(expected, found);
    }

    @Test
    void crowdedPointsAreSearchedLikeAllOthers() {
        var random = new SplittableRandom(11);
        SurveyBuilder survey = Survey.builder();
        // Half of the points on one square metre, the rest over a square kilometre.
        for (int i = 0; i < 20_000; i++) {
            double wide = i % 2 == 0 ? 1 : 1000;
            survey.point(wide * random.nextDouble(), wide * random.nextDouble(), 5);
        }
        Survey made = survey.build();
        Set<Integer> gone = new HashSet<>();
        for (long pair : Twins.of(new Cells(made), 0.001)) {
            assertTrue(apart(made, Twins.first(pair), Twins.second(pair)) < 0.001);
            gone.add(Twins.second(pair));
        }
        assertTrue(gone.size() > 50, "few twins: " + gone.size());
        for (int a = 0; a < made.size(); a += 2) {
            if (gone.contains(a)) {
                continue;
            }
            for (int b = a + 2; b < made.size(); b += 2) {
                if (apart(made, a, b) < 0.001) {
                    assertTrue(gone.contains(b), a + " and " + b + " are left");
                }
            }
        }
    }

    private static double apart(Survey survey, int a, int b) {
        double dx = survey.x(a) - survey.x(b);
        double dy = survey.y(a) - survey.y(b);
        return Math.sqrt(dx * dx + dy * dy);
    }

    @Test
    void manyPairsAreToldInFewWords() {
        SurveyBuilder survey = Survey.builder();
        for (int i = 0; i < 50; i++) {
            survey.point(3 * i, i % 7, 10, "").point(3 * i, i % 7, 10, "");
        }
        List<Finding> findings = PointChecks.of(survey.build());
        assertEquals(21, findings.size());
        assertEquals(
                "50 places were shot twice with the same height; the first 20 are told one by one",
                findings.get(20).says().in(UnitSystem.METRIC));
    }

    @Test
    void aPlaceShotTwiceIsToldByItsCodeAndItsPlaceAndNotByALineOfAFile() {
        Survey survey =
                Survey.builder()
                        .point(500, 200, 10, "gate post")
                        .point(500, 200, 10, "gate post")
                        .point(520, 240, 10, "ground")
                        .point(560, 210, 10, "ground")
                        .build();
        assertEquals(
                "One place was shot twice with the same height (gate post), 500 m east and 200 m"
                        + " north",
                PointChecks.of(survey).get(0).says().in(UnitSystem.METRIC));
    }

    @Test
    void linesThatMeetAreNoDuplicates() {
        Survey survey =
                Survey.builder()
                        .point(0, 0, 1)
                        .point(10, 0, 1)
                        .point(10, 0, 1)
                        .point(20, 7, 1)
                        .breakline("edge", 0, 1)
                        .breakline("edge", 2, 3)
                        .build();
        assertEquals(List.of(), codes(survey));
    }

    @Test
    void wrongDigitInACoordinateIsFound() {
        SurveyBuilder survey = rolling(new SplittableRandom(3), 300);
        survey.point(43, 7040, 201);
        List<Finding> findings = PointChecks.of(survey.build());
        assertEquals(1, findings.size(), findings.toString());
        assertEquals("point-far-away", findings.get(0).code());
    }

    @Test
    void heightsThatWereNeverExportedAreFound() {
        Survey survey = Survey.builder().point(0, 0, 0).point(5, 0, 0).point(0, 5, 0).build();
        assertEquals(List.of("all-heights-zero"), codes(survey));
    }

    @Test
    void pointsOnOneLineOrAtOnePlaceDoNotStopTheChecks() {
        SurveyBuilder line = Survey.builder();
        SurveyBuilder heap = Survey.builder();
        for (int i = 0; i < 2000; i++) {
            line.point(i, 0, 1 + 0.01 * (i % 3));
            heap.point(5, 5, 1);
        }
        assertEquals(List.of(), codes(line.build()));
        assertEquals(21, codes(heap.build()).size());
        assertEquals(List.of(), codes(Survey.builder().build()));
    }
}
