package lanewright.sheets.figure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ApartTest {

    @Test
    void whatStandsFarEnoughApartStaysWhereItIs() {
        assertArrayEquals(
                new double[] {0, 12, 40}, Apart.spread(List.of(0.0, 12.0, 40.0), 10, -5, 45), 1e-9);
    }

    @Test
    void twoThatStandTooCloseGiveWayByEqualParts() {
        // 4 apart and 10 wanted: each gives way by 3.
        assertArrayEquals(
                new double[] {47, 57}, Apart.spread(List.of(50.0, 54.0), 10, 0, 100), 1e-9);
    }

    @Test
    void theLastOneStaysWithinTheEnd() {
        assertArrayEquals(
                new double[] {40, 50}, Apart.spread(List.of(48.0, 50.0), 10, 0, 50), 1e-9);
    }

    @RepeatedTest(50)
    void nothingStandsCloserThanAskedOrOutside(RepetitionInfo run) {
        var random = new SplittableRandom(run.getCurrentRepetition());
        var wanted = new ArrayList<Double>();
        for (int i = 0; i < 12; i++) {
            wanted.add(random.nextDouble(100));
        }
        wanted.sort(null);
        double[] places = Apart.spread(wanted, 8, 0, 100);
        String seed = "seed " + run.getCurrentRepetition();
        assertTrue(places[0] >= -1e-9 && places[11] <= 100 + 1e-9, seed);
        for (int i = 1; i < places.length; i++) {
            assertTrue(places[i] - places[i - 1] >= 8 - 1e-9, seed);
        }
    }
}
