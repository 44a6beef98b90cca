package lanewright.lane.shape;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import org.junit.jupiter.api.Test;

class LaneDesignTest {

    private static Alignment straight() throws DesignRefused {
        return Alignment.of(
                List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(0, 100, 0)));
    }

    private static Profile level(double to) throws DesignRefused {
        return Profile.of(List.of(new VerticalPoint(0, 10, 0), new VerticalPoint(to, 10, 0)));
    }

    private static LaneDesign.Builder design() throws DesignRefused {
        return LaneDesign.on(straight(), level(100));
    }

    private static Finding refusal(LaneDesign.Builder builder) {
        DesignRefused refused = assertThrows(DesignRefused.class, builder::build);
        return refused.findings().get(0);
    }

    @Test
    void shapesCoverTheWholeLaneOrAreRefused() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).make();
        assertEquals("shape-gap", refusal(design()).code());
        assertEquals(
                "shape-gap",
                refusal(
                                design().typical(
                                                List.of(
                                                        new Stretch<>(0, 40, shape),
                                                        new Stretch<>(41, 100, shape))))
                        .code());
        assertEquals(
                "shape-gap",
                refusal(design().typical(List.of(new Stretch<>(0, 101, shape)))).code());
        Finding overlap =
                refusal(
                        design().typical(
                                        List.of(
                                                new Stretch<>(0, 40, shape),
                                                new Stretch<>(30, 100, shape))));
        assertTrue(overlap.says().in(UnitSystem.METRIC).startsWith("Two shapes"));
    }

    @Test
    void theGradeCoversTheWholeLaneOrIsRefused() throws DesignRefused {
        var builder = LaneDesign.on(straight(), level(99)).typical(Shapes.lane(4).make());
        assertEquals("grade-too-short", refusal(builder).code());
    }

    @Test
    void aCurveTighterThanHalfTheLaneIsRefused() throws DesignRefused {
        Alignment bend =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 50, 3),
                                new IntersectionPoint(50, 50, 0)));
        var wide = LaneDesign.on(bend, level(bend.length())).typical(Shapes.lane(7).make());
        assertEquals("curve-inside-lane", refusal(wide).code());
        LaneDesign.on(bend, level(bend.length())).typical(Shapes.lane(5).make()).build();
    }

    @Test
    void stoneThatDoesNotFitOnWhatIsBelowIsRefusedWithTheWidthItNeeds() throws DesignRefused {
        // Foot of the surface layer: 2 + 0.1 × 1.5 = 2.15 m out; the base reaches 2.1 m.
        Finding narrow =
                refusal(
                        design().typical(
                                        Shapes.lane(4)
                                                .layer("surface", 0.1, 1.5)
                                                .layer("base", 0.2, 1.5, 4.2)
                                                .make()));
        assertEquals("layer-does-not-fit", narrow.code());
        assertEquals(2.15, narrow.measured().value(), 1e-12);
        assertEquals(2.1, narrow.limit().value(), 1e-12);
        assertTrue(narrow.remedy().in(UnitSystem.METRIC).contains("leave its width out"));
        design().typical(
                        Shapes.lane(4)
                                .layer("surface", 0.1, 1.5)
                                .layer("base", 0.2, 1.5, 4.3)
                                .make())
                .build();
    }

    @Test
    void anEdgeAsFlatAsTheLaneNeverReachesTheSubgrade() throws DesignRefused {
        var flat = Shapes.lane(4).crown(0.1).layer("base", 0.2, 10);
        assertEquals("layer-runs-out", refusal(design().typical(flat.make())).code());
        // The subgrade rises through the stone: 0.1 m at the middle less 2 m × 6 %.
        var rising = Shapes.lane(4).crown(0.06).under(-0.01).boxed().layer("base", 0.1, 0);
        assertEquals("layer-runs-out", refusal(design().typical(rising.make())).code());
    }

    @Test
    void earthOverBoxedStoneIsRefused() throws DesignRefused {
        var wide = Shapes.lane(4).boxed().layer("surface", 0.1, 0).layer("base", 0.2, 0, 5);
        assertEquals("earth-over-stone", refusal(design().typical(wide.make())).code());
    }

    @Test
    void ditchBottomsMayNotOverlap() throws DesignRefused {
        var builder =
                design().typical(Shapes.lane(4).make())
                        .leftBottoms(
                                List.of(
                                        new Stretch<>(0, 50, new DitchBottom(9, 8)),
                                        new Stretch<>(49, 60, new DitchBottom(9, 8))));
        assertEquals("ditch-bottoms-overlap", refusal(builder).code());
    }

    @Test
    void crossSlopeGoesOverIntoTheTieInAlongAStraightLine() throws DesignRefused {
        LaneDesign lane =
                design().typical(Shapes.lane(4).crown(0.04).make())
                        .start(new TieIn(Double.NaN, Double.NaN, 0.02, 20))
                        .build();
        // At the road one plane falls 2 % to the right; 20 m on, 4 % both ways.
        assertEquals(-0.02, lane.at(0).leftFall(), 1e-15);
        assertEquals(0.02, lane.at(0).rightFall(), 1e-15);
        assertEquals(0.01, lane.at(10).leftFall(), 1e-15);
        assertEquals(0.03, lane.at(10).rightFall(), 1e-15);
        assertEquals(0.04, lane.at(20).leftFall(), 0);
        assertEquals(0.04, lane.at(100).rightFall(), 0);
        assertArrayEquals(new double[] {20}, lane.joins(), 0);
    }

    @Test
    void shapesChangeAtTheLimitOfTheirStretch() throws DesignRefused {
        TypicalSection narrow = Shapes.lane(3).make();
        TypicalSection wide = Shapes.lane(5).make();
        LaneDesign lane =
                design().typical(
                                List.of(new Stretch<>(0, 40, narrow), new Stretch<>(40, 100, wide)))
                        .rightBottoms(List.of(new Stretch<>(20, 60, new DitchBottom(9, 8))))
                        .build();
        assertEquals(narrow, lane.atBefore(40).typical());
        assertEquals(wide, lane.at(40).typical());
        assertEquals(8.5, lane.at(40).rightBottom(), 1e-12);
        assertEquals(Double.NaN, lane.atBefore(20).rightBottom());
        assertEquals(9, lane.at(20).rightBottom(), 1e-12);
        assertEquals(8, lane.atBefore(60).rightBottom(), 1e-12);
        assertEquals(Double.NaN, lane.at(60).rightBottom());
        assertArrayEquals(new double[] {20, 40, 60}, lane.jumps(), 0);
    }

    @Test
    void madeOfEqualPartsIsEqual() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).make();
        assertEquals(design().typical(shape).build(), design().typical(shape).build());
        assertNotEquals(design().typical(shape).build(), design().typical(shape).margin(1).build());
    }
}
