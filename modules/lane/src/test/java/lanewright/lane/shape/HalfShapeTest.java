package lanewright.lane.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Expected values are worked by hand beside each. */
class HalfShapeTest {

    private static HalfShape right(TypicalSection shape) {
        return HalfShape.of(shape, shape.right(), shape.rightFall(), shape.rightUnder());
    }

    private static HalfShape left(TypicalSection shape) {
        return HalfShape.of(shape, shape.left(), shape.leftFall(), shape.leftUnder());
    }

    private static double toe(double top, double thick, double edge, double fall) {
        return top + thick * edge / (1 - fall * edge);
    }

    @Test
    void levelLayersOnTopAreTrapezoids() {
        HalfShape half =
                right(
                        Shapes.lane(4)
                                .layer("surface", 0.1, 1.5)
                                .layer("base", 0.2, 1.5)
                                .shoulder(0.5)
                                .make());
        assertEquals(0.1 * (2 + 2.15) / 2, half.layerArea(0), 1e-12);
        assertEquals(0.2 * (2.15 + 2.45) / 2, half.layerArea(1), 1e-12);
        // Moment of a trapezoid: box plus triangle.
        assertEquals(0.2 + 0.0075 * (2 + 0.05), half.layerMoment(0), 1e-12);
        assertEquals(2.45, half.stoneOut(), 1e-12);
        assertEquals(-0.3, half.stoneRise(), 1e-12);
        assertEquals(2.95, half.hingeOut(), 1e-12);
        assertEquals(-0.3, half.hingeRise(), 1e-12);
        assertEquals(2, half.edgeOut(), 1e-12);
    }

    @Test
    void aCrownedEdgeMeetsThePlaneBelowFartherOut() {
        HalfShape half = right(Shapes.lane(4).crown(0.05).layer("base", 0.2, 2).make());
        double toe = toe(2, 0.2, 2, 0.05);
        assertEquals(2.4444444444444446, toe, 1e-12);
        assertEquals(toe, half.stoneOut(), 1e-12);
        // Down the edge from the travelled way, and down the subgrade from the alignment.
        assertEquals(-0.1 - (toe - 2) / 2, half.stoneRise(), 1e-12);
        assertEquals(-0.2 - 0.05 * toe, half.stoneRise(), 1e-12);
        // Between parallel planes 0.2 apart, out to a slanting edge: shear changes no area.
        assertEquals(0.2 * (2 + toe) / 2, half.layerArea(0), 1e-12);
    }

    @Test
    void theHighSideOfAShedRises() {
        TypicalSection shape =
                Shapes.lane(4).shed(CrossFall.SHED_RIGHT, 0.05).layer("base", 0.2, 2).make();
        assertEquals(toe(2, 0.2, 2, -0.05), left(shape).stoneOut(), 1e-12);
        assertEquals(0.1, left(shape).edgeRise(), 1e-12);
        assertEquals(-0.1, right(shape).edgeRise(), 1e-12);
    }

    @Test
    void onlyTheLowestLayerTakesUpTheSubgradesOwnFall() {
        HalfShape half =
                right(
                        Shapes.lane(4)
                                .layer("surface", 0.1, 0)
                                .layer("base", 0.2, 0)
                                .under(0.05)
                                .make());
        assertEquals(0.2, half.layerArea(0), 1e-12);
        // 0.2 at the middle, 0.3 at the edge.
        assertEquals(2 * 0.25, half.layerArea(1), 1e-12);
        assertEquals(-0.4, half.stoneRise(), 1e-12);
    }

    @Test
    void aWiderLayerBelowLeavesALedge() {
        HalfShape half =
                right(Shapes.lane(4).layer("surface", 0.1, 1).layer("base", 0.2, 1, 5).make());
        assertEquals(0.2 * (2.5 + 2.7) / 2, half.layerArea(1), 1e-12);
        assertEquals(2.1, half.finishedOut(2), 1e-12);
        assertEquals(-0.1, half.finishedRise(2), 1e-12);
        assertEquals(2.5, half.finishedOut(3), 1e-12);
        assertEquals(-0.1, half.finishedRise(3), 1e-12);
    }

    @Test
    void boxedStoneEndsStraightDownAndTheShoulderRunsOnInThePlane() {
        HalfShape half =
                right(
                        Shapes.lane(4)
                                .crown(0.04)
                                .boxed()
                                .layer("base", 0.25, 3)
                                .shoulder(0.75)
                                .make());
        assertEquals(0.5, half.layerArea(0), 1e-12);
        assertEquals(2, half.stoneOut(), 1e-12);
        assertEquals(-0.33, half.stoneRise(), 1e-12);
        assertEquals(2.75, half.hingeOut(), 1e-12);
        assertEquals(-0.11, half.hingeRise(), 1e-12);
        assertEquals(2, half.subgradeOut(1), 1e-12);
        assertEquals(2, half.subgradeOut(2), 1e-12);
        assertEquals(-0.08, half.subgradeRise(2), 1e-12);
    }
}
