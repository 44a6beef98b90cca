package lanewright.drainage.along;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.section.Areas;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Part;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Checks along a lane whose ground and shape can be drawn from the test. */
class AlongTest {

    private static final double FOOT = 0.3048;

    @Test
    @Tag("outside")
    @DisplayName(
            "Length of a pipe through a fill: from foreslope to foreslope | US Army subcourse"
                    + " EN5465, chapter 5, culvert geometry | read")
    void pipeThroughAFill() {
        // Runway 100 ft wide, edges at 607.00 ft, fill 10:1, inverts 600.80 and 599.62 ft.
        Section section =
                section(
                        fill(-50 * FOOT, 607 * FOOT, -112 * FOOT, 600.80 * FOOT),
                        fill(50 * FOOT, 607 * FOOT, 123.8 * FOOT, 599.62 * FOOT));
        CulvertLine pipe = CulvertLine.under(section, Side.LEFT, 600.80 * FOOT, 10, 10);
        assertEquals(-112, pipe.inlet().offset() / FOOT, 1e-9, "50 + 62.0");
        assertEquals(123.8, pipe.outlet().offset() / FOOT, 1e-9, "50 + 73.8");
        // Printed 237.8, of which 2 ft are for want of a headwall downstream.
        assertEquals(237.8, pipe.length() / FOOT + 2, 0.01);
        assertTrue(pipe.falls());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Spacing of cross drains by grade | Keller and Sherar, Low-Volume Roads Engineering,"
                    + " table 7.1 | read")
    void spacingOfCrossDrains() {
        assertEquals(120, SPACING.row(0.02).lowErosion());
        assertEquals(50, SPACING.row(-0.05).erosive());
        assertEquals(75, SPACING.row(0.08).lowErosion());
        assertEquals(35, SPACING.row(0.11).erosive());
        assertEquals(30, SPACING.row(0.20).erosive());
        assertEquals(90, SPACING.row(0.035).lowErosion(), "a gap takes the steeper row");
        assertEquals(60, SPACING.row(0.12).lowErosion(), "12 % ends its row");
    }

    private static final Spacing SPACING =
            new Spacing(
                    List.of(
                            new Spacing.Row(0.03, 120, 75, "s"),
                            new Spacing.Row(0.06, 90, 50, "s"),
                            new Spacing.Row(0.09, 75, 40, "s"),
                            new Spacing.Row(0.12, 60, 35, "s"),
                            new Spacing.Row(1, 50, 30, "s")));

    @Test
    void aDitchThatRunsOutOverLowerGroundIsFine() {
        // The lane climbs 4 %; the ground is 0.5 m higher past station 40, 1 m lower before it.
        StraightLane lane = lane((x, y) -> 0.04 * x + (x < 40 ? -1 : 0.5), s -> 0.04 * s, 0.5);
        List<DitchReach> ditches = ditches(lane);
        assertEquals(2, ditches.size());
        DitchReach left = ditches.get(0);
        assertEquals(Side.LEFT, left.side());
        assertEquals(40, left.from());
        assertEquals(DitchReach.Kind.DAYLIGHT, left.outlets().get(0).kind());
        assertEquals(40, left.outlets().get(0).station());
        assertEquals(0.04, left.legs().get(3).grade(), 1e-9);
        assertEquals(
                List.of("ditch-wants-checks"),
                codes(DitchChecks.check(List.of(left), StraightLane.LIMITS, (x, y) -> false)));
    }

    @Test
    void aDitchThatFallsToTheRoadIsSaid() {
        StraightLane lane = lane((x, y) -> 0.015 * x + 0.5, s -> 0.015 * s, 0.5);
        List<DitchReach> ditches = ditches(lane);
        assertEquals(DitchReach.Kind.ROAD, ditches.get(0).outlets().get(0).kind());
        assertEquals(
                List.of("ditch-to-road", "ditch-to-road"),
                codes(DitchChecks.check(ditches, StraightLane.LIMITS, (x, y) -> false)));
    }

    @Test
    void aDitchWithASagHasADeadEndUnlessAPipeTakesIt() {
        DoubleUnaryOperator sag = s -> 0.02 * Math.abs(s - 50);
        StraightLane lane = lane((x, y) -> sag.applyAsDouble(x) + 0.5, sag, 0.5);
        DitchReach left = ditches(lane).get(0);
        assertEquals(1, left.outlets().size());
        assertEquals(50, left.outlets().get(0).station());
        assertEquals(DitchReach.Kind.DEAD_END, left.outlets().get(0).kind());
        double bottom = left.outlets().get(0).height();
        var pipe = GivenPipe.there("a", 51, 4.5, bottom, 51, -6, bottom - 0.3, 0.3);
        DitchReach piped =
                Ditches.of(lane.sections(5), lane, (x, y) -> true, (x, y) -> false, List.of(pipe))
                        .get(0);
        assertEquals(DitchReach.Kind.PIPE, piped.outlets().get(0).kind());
        DitchReach later =
                Ditches.of(
                                lane.sections(5),
                                lane,
                                (x, y) -> true,
                                (x, y) -> false,
                                List.of(pipe.laidLater()))
                        .get(0);
        assertEquals(DitchReach.Kind.PIPE_TO_LAY, later.outlets().get(0).kind());
    }

    @Test
    void standingWaterAtItsEndMakesADeadEnd() {
        StraightLane lane = lane((x, y) -> 0.04 * x + (x < 40 ? -1 : 0.5), s -> 0.04 * s, 0.5);
        DitchReach left =
                Ditches.of(lane.sections(5), lane, (x, y) -> x < 45, (x, y) -> false, List.of())
                        .get(0);
        assertEquals(DitchReach.Kind.DEAD_END, left.outlets().get(0).kind());
    }

    @Test
    void aDeadEndWhoseWaterAPipeWouldLetThroughIsACrossing() {
        DoubleUnaryOperator sag = s -> 0.02 * Math.abs(s - 50);
        StraightLane lane = lane((x, y) -> sag.applyAsDouble(x) + 0.5, sag, 0.5);
        Ditches.Standing pool = (x, y) -> Math.abs(x - 50) <= 12;
        List<DitchReach> ditches = Ditches.of(lane.sections(5), lane, pool, pool, List.of());
        assertEquals(DitchReach.Kind.CROSSING, ditches.get(0).outlets().get(0).kind());
        // The ditch works up to the water: the lane is a trough only where it lies in it.
        List<WetStretch> wet =
                EdgeHeights.wet(
                        EdgeHeights.of(lane.sections(5), ditches, pool),
                        ditches,
                        StraightLane.LIMITS);
        assertEquals(List.of(WetStretch.Kind.TROUGH), kinds(wet));
        assertEquals(37.5, wet.get(0).from());
        assertEquals(62.5, wet.get(0).to());
    }

    @Test
    void aDitchThatStopsInStandingWaterAtTheFarEndDoesNotRunOutThere() {
        StraightLane lane = lane((x, y) -> 10.5 - 0.02 * x, s -> 10 - 0.02 * s, 0.5);
        Ditches.Standing pool = (x, y) -> x > 90 && x < 99.99;
        DitchReach left = Ditches.of(lane.sections(5), lane, pool, pool, List.of()).get(0);
        assertEquals(DitchReach.Kind.DEAD_END, left.outlets().get(0).kind());
        assertTrue(pool.at(left.outlets().get(0).x(), left.outlets().get(0).y()));
    }

    @Test
    void theTopOfATurningPointIsNoFlatDitch() {
        // A parabola that is flatter than the least ditch grade for 5 m on either side of its top.
        DoubleUnaryOperator hill =
                s ->
                        Math.abs(s - 50) < 10
                                ? -0.001 * (s - 50) * (s - 50)
                                : -0.02 * Math.abs(s - 50) + 0.1;
        StraightLane lane = lane((x, y) -> hill.applyAsDouble(x) + 0.5, hill, 0.5);
        assertEquals(List.of(), DitchChecks.wet(ditches(lane), StraightLane.LIMITS));
        DoubleUnaryOperator level = s -> 0.02 * (Math.abs(s - 50) < 10 ? -10 : -Math.abs(s - 50));
        StraightLane table = lane((x, y) -> level.applyAsDouble(x) + 0.5, level, 0.5);
        assertTrue(
                kinds(DitchChecks.wet(ditches(table), StraightLane.LIMITS))
                        .contains(WetStretch.Kind.LEVEL));
    }

    @Test
    void aFlatDitchAndAShallowOneAreFlagged() {
        StraightLane lane = lane((x, y) -> 0.002 * x + 0.5, s -> 0.002 * s, 0.25);
        List<Finding> findings =
                DitchChecks.check(
                        ditches(lane).subList(0, 1), StraightLane.LIMITS, (x, y) -> false);
        assertEquals(List.of("ditch-to-road", "ditch-shallow"), codes(findings));
        List<WetStretch> wet = DitchChecks.wet(ditches(lane).subList(0, 1), StraightLane.LIMITS);
        assertEquals(List.of(WetStretch.Kind.LEVEL), kinds(wet));
        assertEquals(0.002, wet.get(0).measured().value(), 1e-9);
        // Hinge 0.5 m outside the edge at 4 %: 0.02 lower; ditch 0.25 below it; stone 0.2 thick.
        assertEquals(0.07, measured(findings.get(1)), 1e-9);
    }

    @Test
    void aDitchThatIsLevelOnlyAtItsTopHoldsNoWater() {
        // Up 3 % to 45, level for 10 m, down 3 %: water parts at the top and none comes to it.
        DoubleUnaryOperator top = s -> -0.03 * Math.max(0, Math.abs(s - 50) - 5);
        StraightLane lane = lane((x, y) -> top.applyAsDouble(x) + 0.5, top, 0.5);
        List<DitchReach> left = ditches(lane).subList(0, 1);
        assertEquals(0, left.get(0).legs().get(9).grade(), 1e-12);
        assertEquals(List.of(), DitchChecks.wet(left, StraightLane.LIMITS));
        // Level for 10 m half-way down, it is one.
        DoubleUnaryOperator step = s -> 0.03 * Math.min(s, 45) + 0.03 * Math.max(0, s - 55);
        StraightLane stepped = lane((x, y) -> step.applyAsDouble(x) + 0.5, step, 0.5);
        List<WetStretch> wet = DitchChecks.wet(ditches(stepped).subList(0, 1), StraightLane.LIMITS);
        assertEquals(List.of(WetStretch.Kind.LEVEL), kinds(wet));
        assertEquals(45, wet.get(0).from());
        assertEquals(55, wet.get(0).to());
        assertTrue(wet.get(0).says().pattern().contains("is level"));
    }

    @Test
    void aDitchAboveTheStoneIsFlagged() {
        StraightLane lane = lane((x, y) -> 0.01 * x + 0.5, s -> 0.01 * s, 0.1);
        assertTrue(
                codes(DitchChecks.check(ditches(lane), StraightLane.LIMITS, (x, y) -> false))
                        .contains("ditch-above-stone"));
    }

    @Test
    void aLaneLowerThanBothSidesIsATrough() {
        StraightLane lane = lane((x, y) -> 0.03 * x + 0.3, s -> 0.03 * s, 0);
        List<WetStretch> wet = wetEdges(lane, List.of());
        assertEquals(List.of(WetStretch.Kind.TROUGH), kinds(wet));
        assertEquals(100, wet.get(0).to());
        // The edge lies 0.08 below the lane's middle, the ground 0.3 above it.
        assertEquals(-0.38, wet.get(0).measured().value(), 1e-6);
    }

    @Test
    void ditchesThatWorkMakeItNoTrough() {
        StraightLane lane = lane((x, y) -> 0.03 * x + 0.3, s -> 0.03 * s, 0.5);
        assertEquals(List.of(), wetEdges(lane, ditches(lane)));
        List<DitchReach> dead =
                Ditches.of(lane.sections(5), lane, (x, y) -> true, (x, y) -> false, List.of())
                        .stream()
                        .map(AlongTest::deadEnded)
                        .toList();
        List<WetStretch> wet = wetEdges(lane, dead);
        assertEquals(List.of(WetStretch.Kind.TROUGH), kinds(wet));
        String says = wet.get(0).says().in(UnitSystem.METRIC);
        assertTrue(says.contains("its ditches have no outlet"), says);
    }

    @Test
    void oneHighSideAndOneNearSideAreTold() {
        StraightLane lane = lane((x, y) -> y > 0 ? 0.3 : -0.15, s -> 0, 0);
        assertEquals(List.of(WetStretch.Kind.EDGE), kinds(wetEdges(lane, List.of())));
        List<Finding> findings =
                EdgeHeights.notes(
                        EdgeHeights.of(lane.sections(5), List.of(), (x, y) -> false),
                        StraightLane.LIMITS);
        assertEquals(List.of("edge-near-ground"), codes(findings));
        assertEquals(0.07, measured(findings.get(0)), 1e-6);
    }

    private static DitchReach deadEnded(DitchReach reach) {
        return new DitchReach(
                reach.side(),
                reach.points(),
                reach.outlets().stream()
                        .map(
                                o ->
                                        new DitchReach.Outlet(
                                                o.station(),
                                                o.x(),
                                                o.y(),
                                                o.height(),
                                                DitchReach.Kind.DEAD_END))
                        .toList());
    }

    private static List<WetStretch> wetEdges(StraightLane lane, List<DitchReach> ditches) {
        return EdgeHeights.wet(
                EdgeHeights.of(lane.sections(5), ditches, (x, y) -> false),
                ditches,
                StraightLane.LIMITS);
    }

    private static List<WetStretch.Kind> kinds(List<WetStretch> wet) {
        return wet.stream().map(WetStretch::kind).toList();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Steepest way down a crowned grade: 4 % and 8 % give 8.94 % | closed form | derived")
    void steepestWayDown() {
        StraightLane lane = lane((x, y) -> 0.08 * x - 1, s -> 0.08 * s, 0);
        CrossSlopes.CrossSlope slope = CrossSlopes.of(lane.sections(50), lane::grade).get(1);
        assertEquals(0.04, slope.left(), 1e-12);
        assertEquals(0.04, slope.right(), 1e-12);
        assertEquals(Math.sqrt(0.0080), slope.steepest(), 1e-9);
    }

    @Test
    void crossSlopesOutsideTheLimitsAreFlagged() {
        assertEquals(List.of("surface-too-flat"), crossSlope(0.01, 0.002));
        assertEquals(List.of("cross-slope-low"), crossSlope(0.01, 0.05));
        assertEquals(List.of(), crossSlope(0.03, 0));
        assertEquals(List.of(), crossSlope(0.07, 0));
        assertEquals(List.of("cross-slope-high"), crossSlope(0.08, 0));
    }

    private static List<String> crossSlope(double crown, double grade) {
        var lane = new StraightLane(100, (x, y) -> grade * x - 1, s -> grade * s, 4, crown, 3, 0);
        return codes(CrossSlopes.check(lane.sections(10), lane::grade, StraightLane.LIMITS));
    }

    @Test
    void aSagNeedsAWayOut() {
        DoubleUnaryOperator sag = s -> 0.03 * Math.abs(s - 50);
        StraightLane fill = lane((x, y) -> sag.applyAsDouble(x) - 1, sag, 0);
        assertEquals(List.of(), sags(fill));
        StraightLane cut = lane((x, y) -> sag.applyAsDouble(x) + 1, sag, 0);
        assertEquals(List.of(WetStretch.Kind.SAG), kinds(sags(cut)));
        StraightLane halfCut = lane((x, y) -> sag.applyAsDouble(x) + (y > 0 ? 1 : -1), sag, 0);
        List<WetStretch> wet = sags(halfCut);
        assertTrue(wet.get(0).says().pattern().contains("the left"));
        assertEquals(Side.LEFT, wet.get(0).side());
    }

    private static List<WetStretch> sags(StraightLane lane) {
        List<Section> sections = lane.sections(5);
        return Sags.wet(
                Sags.of(
                        List.of(50.0),
                        sections,
                        CrossSlopes.of(sections, lane::grade),
                        ditches(lane),
                        lane,
                        (x, y) -> false));
    }

    @Test
    void waterDownTheLaneIsHeldAgainstTheTable() {
        // 8 % for 100 m with a 4 % crown; the table allows 40 m on soil that washes.
        StraightLane lane = lane((x, y) -> 0.08 * x - 1, s -> 0.08 * s, 0);
        List<Descents.Descent> found = descents(lane, true);
        assertEquals(1, found.size());
        assertEquals(100, found.get(0).top());
        assertEquals(0, found.get(0).foot());
        assertEquals(40, found.get(0).spacing(), 1e-9);
        assertEquals(8, found.get(0).fall(), 1e-9);
        assertEquals(List.of("water-down-lane"), codes(Descents.check(found)));
        assertEquals(75, descents(lane, false).get(0).spacing(), 1e-9);
    }

    @Test
    void gradesThatChangeUseUpTheirShares() {
        // Half at 5 % (50 m allowed), half at 8 % (40 m): 50/50 + 50/40 lengths used up.
        DoubleUnaryOperator grade = s -> s < 50 ? 0.05 * s : 2.5 + 0.08 * (s - 50);
        StraightLane lane = lane((x, y) -> grade.applyAsDouble(x) - 1, grade, 0);
        Descents.Descent descent = descents(lane, true).get(0);
        assertEquals(100 / 2.25, descent.spacing(), 1e-9);
        // Three parts of 0.75 each: the upper two at 8 % are 0.75 x 40 m = 30 m long, so at 70 and,
        // 20 m of it left at 8 % (0.5) and 0.25 x 50 m at 5 %, at 37.5.
        assertEquals(2, descent.turnOuts().size());
        assertEquals(70, descent.turnOuts().get(0), 1e-9);
        assertEquals(37.5, descent.turnOuts().get(1), 1e-9);
    }

    @Test
    void theRemedyForWaterDownTheLaneNamesOneSpacingAndKeepsTheShapeThatIsThere() {
        StraightLane crown = lane((x, y) -> 0.08 * x - 1, s -> 0.08 * s, 0);
        Finding finding = Descents.check(descents(crown, true)).get(0);
        // 100 m where 40 m are allowed: three parts, so two dips.
        assertEquals(
                "Set 2 dips across the lane: 0+066.7 and 0+033.3; then no part is longer than the"
                        + " table allows on its own grade, 40 m on the whole. Between them keep its crown.",
                finding.remedy().in(UnitSystem.METRIC));
        assertNull(finding.limit(), "a second target for one thing");
        var shed = new CrossSlopes.CrossSlope(0, -0.04, 0.04, 0.09);
        var there = new CrossSlopes.CrossSlope(100, -0.04, 0.04, 0.09);
        String says =
                Descents.check(
                                Descents.of(
                                        List.of(shed, there),
                                        List.of(0.0, 8.0),
                                        List.of(),
                                        SPACING,
                                        SPACING,
                                        true))
                        .get(0)
                        .remedy()
                        .in(UnitSystem.METRIC);
        assertTrue(says.endsWith("keep its fall to the right in one plane."), says);
    }

    @Test
    void waterThatGoesAcrossIsNotCounted() {
        StraightLane lane = lane((x, y) -> 0.03 * x - 1, s -> 0.03 * s, 0);
        assertEquals(List.of(), descents(lane, true));
    }

    private static List<Descents.Descent> descents(StraightLane lane, boolean erosive) {
        List<Section> sections = lane.sections(5);
        return Descents.of(
                CrossSlopes.of(sections, lane::grade),
                sections.stream().map(Section::profileHeight).toList(),
                ditches(lane),
                SPACING,
                SPACING,
                erosive);
    }

    @Test
    void aBoxShutInBySoilHoldsWater() {
        StraightLane lane = lane((x, y) -> 0.03 * x - 1, s -> 0.03 * s, 0);
        assertEquals(
                List.of("bed-holds-water"),
                codes(BoxedBeds.check(lane.sections(5), s -> typical(Bed.BOXED, 0.5))));
        assertEquals(List.of(), BoxedBeds.check(lane.sections(5), s -> typical(Bed.ON_TOP, 0.5)));
        assertEquals(
                List.of(),
                BoxedBeds.check(lane.sections(5), s -> typical(Bed.BOXED, 0)),
                "open to a slope that goes on below it");
    }

    private static TypicalSection typical(Bed bed, double shoulder) {
        var side = new SideShape(shoulder, 3, Ditch.NONE, 2, 2);
        return new TypicalSection(
                4,
                CrossFall.CROWN,
                0.04,
                bed,
                List.of(new Layer("base", 0.2, bed == Bed.BOXED ? 0 : 1)),
                Double.NaN,
                side,
                side,
                true,
                0,
                false);
    }

    @Test
    void waterInADitchFindsItsOutlet() {
        DoubleUnaryOperator hill = s -> 0.02 * (50 - Math.abs(s - 50));
        StraightLane lane = lane((x, y) -> hill.applyAsDouble(x) + 0.5, hill, 0.5);
        DitchReach left = ditches(lane).get(0);
        assertEquals(2, left.outlets().size());
        DitchReach.Outlet west = left.outletFrom(30);
        DitchReach.Outlet east = left.outletFrom(80);
        assertNotNull(west);
        assertNotNull(east);
        assertEquals(0, west.station());
        assertEquals(100, east.station());
        assertEquals(DitchReach.Kind.FAR_END, east.kind());
        assertNull(left.outletFrom(101));
    }

    @Test
    void aCulvertThatWouldNotFallIsKnown() {
        Section section = section(fill(-2, 2, -6, 0), fill(2, 2, 4, 1));
        assertFalse(CulvertLine.under(section, Side.LEFT, 0, 2, 2).falls());
    }

    private static StraightLane lane(
            DoubleBinaryOperator ground, DoubleUnaryOperator profile, double ditch) {
        return new StraightLane(100, ground, profile, 4, 0.04, 3, ditch);
    }

    private static List<DitchReach> ditches(StraightLane lane) {
        return Ditches.of(lane.sections(5), lane, (x, y) -> false, (x, y) -> false, List.of());
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    private static double measured(Finding finding) {
        assertNotNull(finding.measured());
        return finding.measured().value();
    }

    private static SideResult fill(double hinge, double top, double toe, double ground) {
        Corner at = new Corner(hinge, top);
        return new SideResult(
                SideResult.Kind.FILL, at, at, at, null, null, new Corner(toe, ground), toe);
    }

    private static Section section(SideResult left, SideResult right) {
        var empty = SectionLine.of(new double[0], new double[0]);
        return new Section(
                0,
                Section.Face.SINGLE,
                0,
                empty,
                empty,
                empty,
                empty,
                null,
                left,
                right,
                new Areas(
                        Part.NONE, Part.NONE, Part.NONE, Part.NONE, Part.NONE, Part.NONE,
                        List.of()),
                true);
    }
}
