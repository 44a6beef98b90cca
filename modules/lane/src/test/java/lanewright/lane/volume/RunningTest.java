package lanewright.lane.volume;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class RunningTest {

    private static Running random(SplittableRandom random) {
        int n = 20;
        double[] stations = new double[n];
        double[] areas = new double[n];
        double[] centroids = new double[n];
        double[] curvature = new double[n - 1];
        for (int i = 1; i < n; i++) {
            stations[i] = stations[i - 1] + (random.nextInt(4) == 0 ? 0 : random.nextDouble(12));
            curvature[i - 1] = (random.nextDouble() - 0.5) / 10;
        }
        for (int i = 0; i < n; i++) {
            areas[i] = random.nextInt(4) == 0 ? 0 : random.nextDouble(5);
            centroids[i] = (random.nextDouble() - 0.5) * 4;
        }
        return Running.of("base", State.COMPACTED, stations, areas, centroids, curvature);
    }

    @RepeatedTest(50)
    void aVolumeIsReachedWhereTheRunningTotalSaysSo(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        Running stone = random(new SplittableRandom(seed));
        for (double part = 0.03; part < 1; part += 0.07) {
            double wanted = part * stone.corrected();
            double station = stone.stationOf(wanted);
            assertEquals(wanted, stone.correctedAt(station), 1e-9, "seed " + seed);
        }
        assertEquals(Double.NaN, stone.stationOf(stone.corrected() + 1e-6));
    }

    @Test
    void runningTotalsGrowBetweenSectionsAsTheAreaDoes() {
        Running cone =
                Running.of(
                        "cut",
                        State.BANK,
                        new double[] {0, 10},
                        new double[] {0, 6},
                        new double[2],
                        new double[1]);
        // Area 0.6 x, volume 0.3 x².
        assertEquals(0.3 * 16, cone.correctedAt(4), 1e-12);
        assertEquals(4, cone.stationOf(0.3 * 16), 1e-12);
        assertEquals(30, cone.plain(), 1e-12);
        assertEquals(new Volume("cut", State.BANK, 30, 30), cone.volume());
    }

    @Test
    void twoSectionsAtOneStationHaveNoVolumeBetween() {
        Running jump =
                Running.of(
                        "fill",
                        State.COMPACTED,
                        new double[] {0, 10, 10, 20},
                        new double[] {1, 1, 5, 5},
                        new double[4],
                        new double[3]);
        assertEquals(60, jump.plain(), 1e-12);
        assertEquals(10, jump.plainTo(2), 1e-12);
        assertEquals(10, jump.stationOf(10), 1e-12);
    }

    @Test
    void impossibleNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> AverageEndArea.volume(-1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> AverageEndArea.volume(1, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> AverageEndArea.volume(Double.NaN, 0, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> AverageEndArea.pyramid(Double.POSITIVE_INFINITY, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> AverageEndArea.alongCurve(1, Double.NaN, 1, 0, 0, 1));
    }

    @Test
    void itBeginsAndEndsWhereThereIsAnyOfIt() {
        Running between =
                Running.of(
                        "base",
                        State.COMPACTED,
                        new double[] {0, 10, 20, 20, 30, 40},
                        new double[] {0, 0, 0, 2, 2, 0},
                        new double[6],
                        new double[5]);
        assertEquals(20, between.begin());
        assertEquals(40, between.end());
        assertEquals(20, between.stationOf(0));
        Running none = Running.even("base", State.COMPACTED, 0, 10, 0);
        assertEquals(Double.NaN, none.begin());
        assertEquals(Double.NaN, none.end());
        assertEquals(Double.NaN, none.stationOf(0));
        assertEquals(30, Running.even("base", State.COMPACTED, 5, 15, 3).corrected(), 1e-12);
    }
}
