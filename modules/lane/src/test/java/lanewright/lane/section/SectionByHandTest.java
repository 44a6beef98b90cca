package lanewright.lane.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import lanewright.lane.section.SideResult.Kind;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.Shapes;
import lanewright.lane.shape.TypicalSection;
import org.junit.jupiter.api.Test;

/** Sections on level and sloping ground; every expected value is worked by hand beside it. */
class SectionByHandTest {

    private static final double EXACT = 1e-12;

    @Test
    void cutWithFlatBottomedDitches() {
        TypicalSection shape =
                Shapes.lane(4)
                        .shoulder(0.5)
                        .ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0.3)
                        .slopes(2, 1.5, 1)
                        .make();
        Section section = Worlds.cut(shape, -1, Worlds.level(0, 0));
        // Each side: 2.5 × 1, then 0.8 × 1.2, then 0.3 × 1.4, then 1.4 × 2.1 / 2.
        assertEquals(2 * (2.5 + 0.96 + 0.42 + 1.47), section.areas().cut().area(), EXACT);
        assertEquals(0, section.areas().cut().centroid(), EXACT);
        assertEquals(0, section.areas().fill().area(), 0);
        assertEquals(Kind.DITCH, section.left().kind());
        assertEquals(5.7, section.right().catchPoint().offset(), EXACT);
        assertEquals(new Corner(-3.3, -1.4), section.left().ditchInner());
        assertEquals(-3.6, section.left().ditchOuter().offset(), EXACT);
        assertTrue(section.complete());
    }

    @Test
    void sideHillIsHalfCutAndHalfFill() {
        TypicalSection shape = Shapes.lane(4).slopes(2, 1, 1).make();
        double m = 0.2; // falls to the right
        double[] offsets = {-50, 50};
        Section section = Worlds.cut(shape, 0, Worlds.across(0, offsets, 50 * m, -50 * m));
        // Fill: triangle on 2 m of lane with its tip at the catch, (u − 2)/2 = m u.
        double fillCatch = 1 / (0.5 - m);
        assertEquals(m * fillCatch, section.areas().fill().area(), EXACT);
        assertEquals(fillCatch, section.right().catchPoint().offset(), EXACT);
        assertEquals(Kind.FILL, section.right().kind());
        // Cut: triangle on the other 2 m, (u − 2)/1 = m u.
        double cutCatch = 2 / (1 - m);
        assertEquals(m * cutCatch, section.areas().cut().area(), EXACT);
        assertEquals(-cutCatch, section.left().catchPoint().offset(), EXACT);
        assertEquals(Kind.CUT, section.left().kind());
        // Centroid of a triangle: the mean of its corners.
        assertEquals((0 + 2 + fillCatch) / 3, section.areas().fill().centroid(), EXACT);
        assertEquals(-(0 + 2 + cutCatch) / 3, section.areas().cut().centroid(), EXACT);
    }

    @Test
    void stripReachesTheLimitsAndTheMarginIsPutBack() {
        TypicalSection shape = Shapes.lane(4).strip().topsoilBack(0.1, false).make();
        Section section = Worlds.cut(shape, 1, 1, Worlds.level(0, 0.2));
        // Catch 2 + 2 = 4 m out, limit 5 m out.
        assertEquals(2 * 5 * 0.2, section.areas().strip().area(), EXACT);
        assertEquals(5, section.right().limit(), EXACT);
        // 4 × 1 + 2 × 1 above ground, 8 × 0.2 below it, less 0.1 on 4 m of slopes.
        assertEquals(6 + 1.6 - 0.4, section.areas().fill().area(), EXACT);
        assertEquals(0.4 + 2 * 1 * 0.2, section.areas().topsoilBack().area(), EXACT);
        assertEquals(0, section.areas().edgeRefill().area(), 0);
        assertEquals(-5, section.stripped().offset(0), EXACT);
        assertEquals(0, section.stripped().height(0), EXACT, "the step at the limit is vertical");
        assertEquals(-5, section.stripped().offset(1), EXACT);
        assertEquals(-0.2, section.stripped().height(1), EXACT);
    }

    @Test
    void theSliverAtACutsEdgeIsShownApart() {
        TypicalSection shape = Shapes.lane(4).strip().make();
        Section section = Worlds.cut(shape, -1, Worlds.level(0, 0.2));
        Areas areas = section.areas();
        assertEquals(2 * (2 * 0.8 + 0.8 * 1.6 / 2), areas.cut().area(), EXACT);
        assertEquals(8 * 0.2, areas.strip().area(), EXACT);
        assertEquals(2 * 0.2 * 0.4 / 2, areas.edgeRefill().area(), EXACT);
        assertEquals(areas.edgeRefill().area(), areas.fill().area(), EXACT);
        // Finished less ground: 4 × 1 and two triangles of 2 × 1.
        assertEquals(-6, areas.fill().area() - areas.cut().area() - areas.strip().area(), EXACT);
    }

    @Test
    void fillUnderStoneIsEarthEvenWhereTheStoneEndsBelowTheOldGround() {
        TypicalSection shape =
                Shapes.lane(4).strip().boxed().layer("base", 0.1, 0).slopes(1, 1, 1).make();
        // Stripped 0.3 down, subgrade 0.2 down: a tenth of fill under the stone must be placed.
        Section section = Worlds.cut(shape, -0.1, Worlds.level(0, 0.3));
        assertEquals(0.4, section.areas().layers().get(0).area(), EXACT);
        double sliver = 2 * 0.1 * (0.2 + 0.3) / 2;
        assertEquals(0.4 + sliver, section.areas().fill().area(), EXACT);
        assertEquals(sliver, section.areas().edgeRefill().area(), EXACT);
    }

    @Test
    void buildingUpOnTopStripsNothing() {
        TypicalSection shape = Shapes.lane(4).make();
        Section section = Worlds.cut(shape, 1, 1, Worlds.level(0, 0.2));
        assertEquals(0, section.areas().strip().area(), 0);
        assertEquals(6, section.areas().fill().area(), EXACT);
        assertEquals(0, section.areas().topsoilBack().area(), 0);
    }

    @Test
    void topsoilOnSlopesStopsAtTheDitchBottomUnlessAsked() {
        Shapes shapes =
                Shapes.lane(4)
                        .ditch(DitchRule.ALWAYS, 0.5, 1)
                        .slopes(2, 2, 2)
                        .topsoilBack(0.1, false);
        Section without = Worlds.cut(shapes.make(), -1, Worlds.level(0, 0));
        // Foreslope 1 m, backslope 3 m wide.
        assertEquals(2 * 0.1 * 4, without.areas().topsoilBack().area(), EXACT);
        Section with = Worlds.cut(shapes.topsoilBack(0.1, true).make(), -1, Worlds.level(0, 0));
        assertEquals(2 * 0.1 * 5, with.areas().topsoilBack().area(), EXACT);
        // The ditch is as deep as was said once the topsoil lies on it.
        assertEquals(-1.5, with.right().ditchInner().height(), EXACT);
        // Digging goes as much deeper: 0.1 under slopes and, if asked, under the bottom.
        double bare = 2 * (2 * 1 + 1.25 + 1.5 + 1.5 * 3 / 2);
        assertEquals(bare + 2 * 0.1 * 4, without.areas().cut().area(), EXACT);
        assertEquals(0.2, with.areas().cut().area() - without.areas().cut().area(), EXACT);
    }

    @Test
    void undercutGoesFromTheLowerOfSubgradeAndStrippedGroundToSoilThatBears() {
        double[] offsets = {-50, 50};
        double[] soil = {0.2, 0.2};
        double[] bearing = {0.7, 0.7};
        GroundAcross ground = GroundAcross.of(offsets, new double[2], soil, bearing, true, true);
        TypicalSection shape = Shapes.lane(4).strip().shoulder(0.5).make();
        // In a cut of 0.4 below ground: 0.3 more down to soil that bears, 5 m wide.
        Section cut = Worlds.cut(shape, -0.4, ground);
        assertEquals(5 * 0.3, cut.areas().undercut().area(), EXACT);
        // In fill it starts at the stripped ground: 0.5 down, 5 m wide.
        Section fill = Worlds.cut(shape, 1, ground);
        assertEquals(5 * 0.5, fill.areas().undercut().area(), EXACT);
        // Deep enough already.
        Section deep = Worlds.cut(shape, -0.8, ground);
        assertEquals(0, deep.areas().undercut().area(), 0);
        assertNotNull(fill.bearing());
        assertNull(Worlds.cut(shape, 1, Worlds.level(0, 0)).bearing());
    }

    @Test
    void aDitchIsDugWhereItsInnerBottomLiesBelowTheGround() {
        Shapes shapes = Shapes.lane(4).slopes(2, 2, 2);
        TypicalSection auto = shapes.ditch(DitchRule.WHERE_BELOW_GROUND, 0.5, 0).make();
        assertEquals(Kind.DITCH, Worlds.cut(auto, 0.49, Worlds.level(0, 0)).left().kind());
        assertEquals(Kind.FILL, Worlds.cut(auto, 0.51, Worlds.level(0, 0)).left().kind());
        TypicalSection never = shapes.ditch(DitchRule.NEVER, 0.5, 0).make();
        assertEquals(Kind.FILL, Worlds.cut(never, 0.49, Worlds.level(0, 0)).left().kind());
        assertEquals(Kind.CUT, Worlds.cut(never, -0.1, Worlds.level(0, 0)).left().kind());
        TypicalSection always = shapes.ditch(DitchRule.ALWAYS, 0.5, 0).make();
        assertEquals(Kind.OPEN, Worlds.cut(always, 0.51, Worlds.level(0, 0)).left().kind());
    }

    @Test
    void whereTheGroundFallsAwayADitchBottomRunsOutIntoTheOpen() {
        TypicalSection shape =
                Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 0.5, 2).slopes(2, 2, 2).make();
        // Ground falls 1 in 4 to the right through −0.25 at 3 m, so through −0.5 at 4 m.
        double[] offsets = {-50, 50};
        Section section = Worlds.cut(shape, 0, Worlds.across(0, offsets, 13, -12));
        assertEquals(Kind.DITCH, section.right().kind());
        assertEquals(new Corner(3, -0.5), section.right().ditchInner());
        assertEquals(4, section.right().catchPoint().offset(), EXACT);
        assertEquals(-0.5, section.right().catchPoint().height(), EXACT);
        assertEquals(section.right().catchPoint(), section.right().ditchOuter());
    }

    @Test
    void aHingeBelowGroundThatFallsAwayLetsTheForeslopeRunOut() {
        TypicalSection shape =
                Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 1, 0).slopes(4, 2, 2).make();
        // Ground 0.2 above the hinge there, falling 1 in 2: meets 1 in 4 after 0.2 / 0.25 m.
        double[] offsets = {-50, 2, 50};
        Section section = Worlds.cut(shape, 0, Worlds.across(0, offsets, 0.2, 0.2, 0.2 - 24));
        assertEquals(Kind.CUT, section.right().kind());
        assertEquals(2.8, section.right().catchPoint().offset(), EXACT);
        assertEquals(-0.2, section.right().catchPoint().height(), EXACT);
    }

    @Test
    void theCatchPointIsTheFirstMeetingWithTheGround() {
        TypicalSection shape = Shapes.lane(4).make();
        // A knoll meets the slope before the plain does.
        double[] offsets = {-50, 2, 3, 4, 50};
        Section section = Worlds.cut(shape, 2, Worlds.across(0, offsets, 0, 0, 1.5, 0, 0));
        // Down 2 − (u − 2)/2 from the hinge, up 1.5 (u − 2): they meet 1 m out.
        assertEquals(3, section.right().catchPoint().offset(), EXACT);
        assertEquals(1.5, section.right().catchPoint().height(), EXACT);
        assertEquals(-6, section.left().catchPoint().offset(), EXACT);
    }

    @Test
    void aSideThatNeverMeetsTheGroundCountsNoEarth() {
        TypicalSection shape = Shapes.lane(4).strip().layer("base", 0.2, 1).make();
        double[] offsets = {-5, 50};
        Section section = Worlds.cut(shape, 3, 1, Worlds.across(0.1, offsets, 0, 0));
        assertFalse(section.complete());
        assertEquals(Kind.OPEN, section.left().kind());
        assertNull(section.left().catchPoint());
        assertEquals(-5, section.left().limit(), 0);
        // Right half only: subgrade 2.8 up to its hinge at 2.2, slope of 5.6, 0.1 of strip below.
        double up = 2.8;
        double fill = 2.2 * up + up * up + (2.2 + 5.6) * 0.1;
        assertEquals(fill, section.areas().fill().area(), EXACT);
        assertEquals(0.1 * (2.2 + 5.6 + 1), section.areas().strip().area(), EXACT);
        assertEquals(0.84, section.areas().layers().get(0).area(), EXACT, "stone on both sides");
    }

    @Test
    void withoutGroundThereIsNoEarthAtAll() {
        GroundAcross none = GroundAcross.of(new double[] {3, 9}, new double[] {0, 0});
        Section section = Worlds.cut(Shapes.lane(4).make(), 1, none);
        assertTrue(none.isEmpty());
        assertFalse(section.complete());
        assertEquals(0, section.areas().fill().area(), 0);
        assertEquals(0, section.ground().size());
        assertEquals(1, section.finished().at(0), EXACT);
    }

    @Test
    void aDitchBottomMayHaveItsOwnHeight() {
        TypicalSection shape =
                Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 0.3, 0).slopes(2, 2, 2).make();
        LaneAt lane = new LaneAt(-1, shape, 0, 0, 0, 0, -1.8, 5);
        Section section =
                new SectionCutter(lane).cut(0, Section.Face.SINGLE, lane, 0, Worlds.level(0, 0));
        assertEquals(new Corner(-3.6, -1.8), section.left().ditchInner());
        assertNull(section.right().ditchInner(), "a bottom above the hinge is no ditch");
    }

    @Test
    void coincidingWithTheGroundIsNeitherCutNorFill() {
        TypicalSection shape = Shapes.lane(4).make();
        double[] offsets = {-50, -7.3, 1.1, 13, 50};
        double[] heights = new double[offsets.length];
        Arrays.fill(heights, 0.1 + 0.2);
        Section section = Worlds.cut(shape, 0.3, Worlds.across(0, offsets, heights));
        assertEquals(2, section.right().catchPoint().offset(), EXACT);
        assertEquals(-2, section.left().catchPoint().offset(), EXACT);
        assertEquals(0, section.areas().fill().area(), 1e-15);
        assertEquals(0, section.areas().cut().area(), 1e-15);
    }
}
