package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class PatchTest {

    private static Ground ground(int seed) {
        var random = new SplittableRandom(seed);
        int n = 400;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = random.nextDouble(100);
            y[i] = random.nextDouble(100);
            z[i] = random.nextDouble(5);
        }
        return Ground.of(
                Survey.builder().points(x, y, z).build(), GroundOptions.USUAL, Progress.NONE);
    }

    /** A low pyramid of four facets over a turned square, its top at 9 m. */
    private static Patch pyramid(double x, double y, double half, double turn) {
        double[] px = new double[5];
        double[] py = new double[5];
        double[] pz = {0, 0, 0, 0, 9};
        for (int i = 0; i < 4; i++) {
            px[i] = x + half * Math.cos(turn + i * Math.PI / 2);
            py[i] = y + half * Math.sin(turn + i * Math.PI / 2);
        }
        px[4] = x;
        py[4] = y;
        int[] corners = {0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4};
        return new Patch(px, py, pz, corners, new int[] {0, 1, 2, 3}, new BitSet());
    }

    private static double area(Ground ground) {
        double twice = 0;
        for (int t = 0; t < ground.triangleCount(); t++) {
            double one = ground.mesh().twiceArea(t);
            assertTrue(one > 0, "facet " + t);
            twice += one;
        }
        return twice / 2;
    }

    @RepeatedTest(20)
    void aPatchTakesThePlaceOfWhatWasThereAndNothingElse(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        Ground before = ground(seed);
        Patch patch = pyramid(50, 50, 17, seed);
        Patched patched = before.with(List.of(patch), Progress.NONE);
        Ground after = patched.ground();
        assertTrue(patched.refused().isEmpty(), "seed " + seed);
        assertEquals(area(before), area(after), 1e-9 * area(before), "seed " + seed);
        assertEquals(9, after.heightAt(50, 50), 1e-9);
        double laid = 0;
        for (int t = 0; t < after.triangleCount(); t++) {
            laid += patched.origin(t) >= 0 ? after.mesh().twiceArea(t) / 2 : 0;
        }
        assertEquals(2 * 17 * 17, laid, 0.01, "seed " + seed); // diagonal 34 m: half its square
        var random = new SplittableRandom(seed + 99);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble(100);
            double y = random.nextDouble(100);
            if (Math.abs(x - 50) + Math.abs(y - 50) > 25) {
                assertEquals(before.heightAt(x, y), after.heightAt(x, y), 1e-4, "seed " + seed);
            }
        }
    }

    @Test
    void patchesThatCrossAreNotBothLaid() {
        Ground before = ground(1);
        Patched patched =
                before.with(
                        List.of(pyramid(40, 50, 15, 0), pyramid(55, 52, 15, 0.3)), Progress.NONE);
        assertEquals(1, patched.refused().size());
        assertEquals(area(before), area(patched.ground()), 1e-6);
    }

    @Test
    void aPatchOutsideTheSurveyIsRefused() {
        Patched patched = ground(2).with(List.of(pyramid(200, 50, 5, 0)), Progress.NONE);
        assertEquals(0, patched.refused().get(0).patch());
    }

    @Test
    void aPatchMustNameItsOwnVertices() {
        double[] three = {0, 1, 2};
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new Patch(
                                three,
                                three,
                                three,
                                new int[] {0, 1, 3},
                                new int[] {0, 1, 2},
                                new BitSet()));
    }
}
