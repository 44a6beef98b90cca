package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Side;
import lanewright.lane.section.Corner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Which pipe stands in a plan while nobody says how much it rains. */
class UsualPipeTest {

    private static final double INCH = 0.0254;

    private static double wide(double roomInches) {
        var pipe =
                new CulvertLine(
                        100,
                        100,
                        Side.LEFT,
                        new Corner(-4, 9),
                        new Corner(4, 8.9),
                        8,
                        roomInches * INCH);
        return UsualPipe.under(pipe, 18 * INCH).inside().span() / INCH;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A pipe under a lane keeps 12 in of earth over its wall of half an inch | least cover"
                    + " over corrugated metal, and sizes sold, 12, 15 and 18 in | common practice")
    void aTightPlaceHasANarrowerPipe() {
        assertEquals(18, wide(40), 1e-9);
        assertEquals(18, wide(30.6), 1e-9);
        assertEquals(15, wide(30.4), 1e-9);
        assertEquals(15, wide(27.6), 1e-9);
        assertEquals(12, wide(27.4), 1e-9);
        assertEquals(12, wide(24.6), 1e-9);
    }

    @Test
    void whereNoneHasRoomItIsTheSmallestSold() {
        assertEquals(12, wide(20), 1e-9);
    }
}
