package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WetGroundTest {

    /** Ground through a lattice of points a metre apart, 40 m square. */
    private static WetGround ground(java.util.function.DoubleBinaryOperator height, double cell) {
        SurveyBuilder survey = Survey.builder();
        for (int x = 0; x <= 40; x++) {
            for (int y = 0; y <= 40; y++) {
                survey.point(x, y, height.applyAsDouble(x, y));
            }
        }
        survey.origin(0, 0);
        Ground made = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        var mesh = new GroundMesh(made);
        Cells cells = Cells.over(mesh, cell, 1_000_000);
        return WetGround.of(FlowGrid.of(mesh, cells, List.of(), Progress.NONE));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "wetness of an even slope | Beven and Kirkby, Hydrological Sciences Bulletin 24, 1979,"
                    + " ln(a / tan b), a the distance to the top of an even slope | derived")
    void anEvenSlopeIsAsWetAsItIsLong() {
        double fall = 0.05;
        for (double cell : new double[] {2, 1, 0.5}) {
            WetGround.Squares squares = ground((x, y) -> 10 + fall * y, cell).squares();
            assertEquals(2, squares.cells().size(), 1e-12);
            for (double down = 5; down < 35; down += 2) {
                // Water runs south; to the foot of a square it has come from the northern edge.
                int square = squares.cells().at(21, 40 - down);
                double length = 40 - Math.floor((40 - down) / 2) * 2;
                assertEquals(Math.log(length / fall), squares.index(square), 1e-6, "at " + down);
            }
        }
    }

    @Test
    void theFootOfAValleyIsTheWettest() {
        WetGround.Squares squares =
                ground((x, y) -> 10 + 0.02 * y + 0.1 * Math.abs(x - 20.5), 0.5).squares();
        assertSame(WetGround.Step.WETTEST, squares.at(20.5, 5));
        assertNull(squares.at(2, 5));
        assertNull(squares.at(-50, 5));
        double all = 40 * 40;
        double tenth = all / 10;
        assertEquals(tenth, squares.area(WetGround.Step.WETTEST), tenth / 2);
        assertTrue(
                squares.from(WetGround.Step.WETTEST) >= squares.from(WetGround.Step.NEXT)
                        && squares.from(WetGround.Step.NEXT) >= squares.from(WetGround.Step.DAMP));
    }

    @Test
    void withoutLandNothingIsWet() {
        assertNull(WetGround.NONE.squares().at(0.5, 0.5));
        assertEquals(0, WetGround.NONE.squares().area(WetGround.Step.WETTEST));
        assertTrue(Double.isNaN(WetGround.NONE.squares().from(WetGround.Step.DAMP)));
    }
}
