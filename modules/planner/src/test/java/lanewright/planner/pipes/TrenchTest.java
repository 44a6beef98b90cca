package lanewright.planner.pipes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Circle;
import lanewright.drainage.culvert.Load;
import lanewright.drainage.culvert.Material;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class TrenchTest {

    private static final double INCH = 0.0254;
    private static final double WALL = 0.05;

    /** A metre outside, so that areas are easy to see. */
    private static final Laid ROUND =
            new Laid(new Barrel(Material.CONCRETE, new Circle(0.9), 0.012, WALL), 1, true);

    private static PipeWay.Stand stand(double along, double stripped, double subgrade) {
        return new PipeWay.Stand(
                along, 50, along - 5, stripped + 0.2, stripped, subgrade, subgrade + 0.25, true);
    }

    private static PipeWay level(double stripped, double subgrade) {
        return new PipeWay(
                List.of(stand(0, stripped, subgrade), stand(10, stripped, subgrade)), 10, 100, 0);
    }

    @Test
    @Tag("outside")
    @DisplayName("a level trench with a round pipe | box less cylinder, worked by hand | derived")
    void aLevelTrenchIsABoxWithACylinderInIt() {
        // Underside of the pipe at 99.95, of the bed at 99.75; stripped ground at 102.
        Trench trench = Trench.of(level(102, 102), ROUND, 0.3, 0.2);
        assertEquals(1.6, trench.width(), 1e-9);
        assertEquals(2.25, trench.deepest(), 1e-9);
        assertEquals(36, trench.dug(), 1e-9);
        assertEquals(3.2, trench.bedding(), 1e-9);
        assertEquals(10 * Math.PI / 4, trench.barrel(), 1e-9);
        assertEquals(36 - 3.2 - 10 * Math.PI / 4, trench.back(), 1e-9);
        assertEquals(0, trench.displaced(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName("a pipe half in the ground | half a cylinder, worked by hand | derived")
    void whatStandsOutOfTheGroundTakesThePlaceOfFill() {
        // Stripped ground at the pipe's axis, 100.45, and a fill over all of it.
        Trench trench = Trench.of(level(100.45, 103), ROUND, 0.3, 0.2);
        assertEquals(10 * 1.6 * 0.7, trench.dug(), 1e-9);
        assertEquals(10 * Math.PI / 8, trench.barrel(), 1e-9);
        assertEquals(10 * Math.PI / 8, trench.displaced(), 1e-9);
    }

    @Test
    void aTrenchUnderACutBeginsAtTheSubgrade() {
        assertEquals(
                Trench.of(level(102, 102), ROUND, 0.3, 0.2),
                Trench.of(level(105, 102), ROUND, 0.3, 0.2));
    }

    @Test
    void aPipeOnFillDigsNothing() {
        Trench trench = Trench.of(level(99.5, 102), ROUND, 0.3, 0.2);
        assertFalse(trench.isDug());
        assertEquals(10 * (Math.PI / 4 + 1.6 * 0.2), trench.displaced(), 1e-9);
    }

    @Test
    void groundThatRunsDownToThePipeIsFollowed() {
        // A wedge: from 2 m over the underside of the bed to level with it.
        var way =
                new PipeWay(List.of(stand(0, 101.75, 101.75), stand(10, 99.75, 99.75)), 10, 100, 0);
        Trench trench = Trench.of(way, ROUND, 0.3, 0.2);
        assertEquals(1.6 * 10, trench.dug(), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "length to order | US Army engineer course EN5465, lesson on drainage, up to an even"
                    + " number of feet | derived")
    void aLengthIsRoundedUpToWhatIsSold() {
        double foot = 0.3048;
        var length = new PipeLength(31.6 * foot, 0.5 * foot, 2 * foot);
        assertEquals(34, length.ordered() / foot, 1e-9);
        assertEquals(1.9, length.after() / foot, 1e-9);
        assertEquals(32, new PipeLength(31 * foot, 0.5 * foot, 2 * foot).ordered() / foot, 1e-9);
    }

    @Test
    void coverIsLookedForWhereItIsLeastUnderTheTravelledWay() {
        var way =
                new PipeWay(
                        List.of(
                                stand(0, 99, 101.4),
                                stand(5, 99, 101.6),
                                new PipeWay.Stand(10, 50, 5, 99, 99, 100, 100, false)),
                        10,
                        100,
                        0);
        PipeCover building = PipeCover.of(way, ROUND, false, Load.AXLE_50);
        assertEquals(101.4 - 100.95, building.least(), 1e-9);
        assertEquals(36 * INCH, building.needed(), 1e-9);
        assertTrue(building.isThin());
        PipeCover finished = PipeCover.of(way, ROUND, true, Load.ROAD);
        assertEquals(0.7, finished.least(), 1e-9);
        assertFalse(finished.isThin());
    }

    @Test
    void pipesSideBySideTakeAWiderTrench() {
        var two = new Laid(ROUND.barrel(), 2, true);
        assertEquals(2.5, two.across(), 1e-9);
        assertEquals(2 * ROUND.below(10), two.below(10), 1e-12);
        assertEquals(0, ROUND.below(-1), 1e-12);
    }
}
