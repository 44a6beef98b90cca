package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.KeptLand;
import lanewright.drainage.pond.LowSpotSearch;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.WholeSearch;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.ground.Patch;
import lanewright.ground.Patched;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Water raised only where a lane changed the land against water raised over all of it. */
class KeptLandTest {

    private static final LowSpots.Threshold ALL = new LowSpots.Threshold(0, 0);

    /** Rough ground, its heights in steps: many are equal. */
    private static Ground ground(SplittableRandom random, int points, double step) {
        double[] x = new double[points];
        double[] y = new double[points];
        double[] z = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = random.nextDouble(200);
            y[i] = random.nextDouble(100);
            double hills = 3 * StrictMath.sin(x[i] / 17) + 2 * StrictMath.cos(y[i] / 13);
            z[i] = step * Math.rint((hills + random.nextDouble(0.8)) / step);
        }
        return Ground.of(
                Survey.builder().points(x, y, z).build(), GroundOptions.USUAL, Progress.NONE);
    }

    /** A bank or a cut from near one place to near another, its rim rough. */
    private static Patch strip(
            SplittableRandom random, double x0, double y0, double x1, double y1) {
        int posts = 6;
        double length = Math.hypot(x1 - x0, y1 - y0);
        double acrossX = -(y1 - y0) / length;
        double acrossY = (x1 - x0) / length;
        double[] x = new double[3 * posts];
        double[] y = new double[3 * posts];
        double[] z = new double[3 * posts];
        for (int i = 0; i < posts; i++) {
            double part = (double) i / (posts - 1);
            for (int k = 0; k < 3; k++) {
                double out = k == 1 ? 0 : (k - 1) * random.nextDouble(2, 4);
                x[3 * i + k] = x0 + part * (x1 - x0) + out * acrossX;
                y[3 * i + k] = y0 + part * (y1 - y0) + out * acrossY;
                z[3 * i + k] = random.nextDouble(-3, 4);
            }
        }
        int[] corner = new int[12 * (posts - 1)];
        int at = 0;
        for (int i = 0; i + 1 < posts; i++) {
            for (int k = 0; k < 2; k++) {
                int a = 3 * i + k;
                int[] two = {a, a + 3, a + 4, a, a + 4, a + 1};
                System.arraycopy(two, 0, corner, at, 6);
                at += 6;
            }
        }
        int[] rim = new int[2 * posts + 2];
        int r = 0;
        for (int i = 0; i < posts; i++) {
            rim[r++] = 3 * i;
        }
        rim[r++] = 3 * posts - 2;
        for (int i = posts - 1; i >= 0; i--) {
            rim[r++] = 3 * i + 2;
        }
        rim[r] = 1;
        return new Patch(x, y, z, corner, rim, new BitSet());
    }

    @RepeatedTest(6)
    void poolsOfOneLaneAfterAnotherAreThoseOfAllTheLand(RepetitionInfo run) {
        var random = new SplittableRandom(run.getCurrentRepetition());
        double step = run.getCurrentRepetition() % 3 == 0 ? 0.25 : 1e-3;
        Ground ground = ground(random, 3000, step);
        var kept = new KeptLand(new GroundMesh(ground), Progress.NONE);
        LowSpotSearch.Exits exits = new WholeSearch(new GroundMesh(ground), List.of()).exits();
        double y0 = random.nextDouble(20, 80);
        double y1 = random.nextDouble(20, 80);
        int laid = 0;
        int pools = 0;
        for (int edit = 0; edit < 15; edit++) {
            // Near by as a rule, somewhere else now and then.
            if (edit % 5 == 4) {
                y0 = random.nextDouble(20, 80);
                y1 = random.nextDouble(20, 80);
            }
            double shift = random.nextDouble(2);
            Patch patch = strip(random, 12, y0 + shift, 188, y1 + shift);
            Patched patched = ground.with(List.of(patch), Progress.NONE);
            laid += patched.refused().isEmpty() ? 1 : 0;
            var mesh = new GroundMesh(patched.ground());
            List<PlacedPipe> pipes = pipes(random, mesh, edit);
            LowSpotSearch near = kept.search(mesh, patched::untouched, pipes, Progress.NONE);
            LowSpotSearch whole = new WholeSearch(mesh, pipes, Progress.NONE);
            String which = "run " + run.getCurrentRepetition() + ", edit " + edit;
            LowSpots all = whole.all(ALL);
            assertEquals(all, near.all(ALL), which);
            assertEquals(whole.within(exits, ALL), near.within(exits, ALL), which);
            pools += all.listed().size();
        }
        assertTrue(laid > 10, "laid " + laid);
        assertTrue(pools > 100, "pools " + pools);
    }

    /** Pipes through the land anywhere, and one off it. */
    private static List<PlacedPipe> pipes(SplittableRandom random, Mesh mesh, int edit) {
        List<PlacedPipe> pipes = new ArrayList<>();
        for (int i = 0; i < edit % 3; i++) {
            double x = random.nextDouble(20, 180);
            double y = random.nextDouble(20, 80);
            double toX = edit % 2 == 0 ? x + 9 : 500;
            pipes.add(PlacedPipe.on(mesh, new GivenPipe("p", x, y, -2, toX, y, -2.1, 9, false)));
        }
        return pipes;
    }

    @Test
    void groundThatNothingChangedIsAskedToo() {
        Ground ground = ground(new SplittableRandom(3), 400, 1e-3);
        var mesh = new GroundMesh(ground);
        LowSpotSearch near =
                new KeptLand(mesh, Progress.NONE)
                        .search(mesh, triangle -> triangle, List.of(), Progress.NONE);
        assertEquals(new WholeSearch(mesh, List.of()).all(ALL), near.all(ALL));
    }
}
