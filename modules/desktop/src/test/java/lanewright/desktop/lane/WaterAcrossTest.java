package lanewright.desktop.lane;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.lane.section.SectionLine;
import org.junit.jupiter.api.Test;

/** Water lies in pieces, each between the two places where its surface meets the land. */
class WaterAcrossTest {

    /** Two ditches with bottoms at 0 and a crown at 2, all slopes one to one. */
    private static final SectionLine LAND =
            SectionLine.of(
                    new double[] {-6, -4, -3, -1, 1, 3, 4, 6},
                    new double[] {2, 0, 0, 2, 2, 0, 0, 2});

    @Test
    void twoDitchesHoldTwoPieces() {
        List<double[]> pieces = WaterAcross.under(LAND, 1);
        assertEquals(2, pieces.size());
        assertArrayEquals(new double[] {-5, -2}, pieces.get(0), 1e-12);
        assertArrayEquals(new double[] {2, 5}, pieces.get(1), 1e-12);
    }

    @Test
    void overTheCrownTheyAreOneFromEndToEnd() {
        List<double[]> pieces = WaterAcross.under(LAND, 3);
        assertEquals(1, pieces.size());
        assertArrayEquals(new double[] {-6, 6}, pieces.get(0), 1e-12);
    }

    @Test
    void belowTheBottomsThereIsNone() {
        assertEquals(List.of(), WaterAcross.under(LAND, 0));
    }
}
