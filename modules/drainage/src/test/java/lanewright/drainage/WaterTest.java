package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.Spacing;
import lanewright.drainage.along.StraightLane;
import lanewright.drainage.culvert.OutletControl;
import lanewright.drainage.hollows.RainStep;
import lanewright.drainage.pond.ArrayMesh;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.SoilGroup;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.StormAsked;
import lanewright.drainage.storm.StormReport;
import lanewright.lane.section.Section;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The whole report, on land that can be drawn from the test. */
class WaterTest {

    private static final Spacing SPACING =
            new Spacing(
                    List.of(new Spacing.Row(0.03, 120, 75, "s"), new Spacing.Row(1, 50, 30, "s")));

    private static final WaterTables TABLES =
            new WaterTables(StraightLane.LIMITS, SPACING, SPACING);

    /** A valley that falls south (y down) and is lowest at x = 50. */
    private static double valley(double x, double y) {
        return 0.05 * Math.abs(x - 50) + 0.03 * y;
    }

    /** A level lane across it, on up to 2.2 m of fill. */
    private static final StraightLane FILL =
            new StraightLane(100, WaterTest::valley, s -> 2.2, 4, 0.04, 2, 0);

    /** What it does without a pipe. */
    private static final WaterReport FILLED = report(FILL, List.of());

    @Test
    void aFillAcrossAHollowHoldsWaterBack() {
        WaterReport report = FILLED;
        List<Pool> made = report.made();
        assertEquals(1, made.size());
        Pool pool = made.get(0);
        assertEquals(Pool.Fate.NEW, pool.fate());
        Pool.Beside beside = pool.beside();
        assertNotNull(beside);
        assertEquals(50, beside.station(), 0.6);
        assertEquals(Side.LEFT, beside.side());
        assertEquals(Pool.Zone.GROUND, beside.zone());
        assertTrue(beside.inLimits());
        // It spills over the lane, at its crown or, lower, round its end: 2.1 to 2.2 m.
        assertEquals(2.15, pool.spot().level(), 0.06);
        // Toe of the fill: 2.5 + 2 (2.1 − 0.03 y) = y, so y = 6.7 / 1.06 and 0.19 m high.
        assertEquals(6.7 / 1.06 * 0.03, pool.spot().bottom(), 0.03);
        CulvertLine culvert = pool.culvert();
        assertNotNull(culvert);
        // The other toe: 2.5 + 2 (2.1 + 0.03 o) = o, so o = 6.7 / 0.94.
        double length = Math.hypot(6.7 / 1.06 + 6.7 / 0.94, 0.03 * (6.7 / 1.06 + 6.7 / 0.94));
        assertEquals(length, culvert.length(), 0.1);
        assertTrue(culvert.falls());
        List<String> codes = codes(report);
        assertTrue(codes.contains("lane-is-a-dam"), codes.toString());
        assertFalse(codes.contains("lane-dams-water"), "one place, one finding");
        assertTrue(pool.drained() > 0.8 * 100 * 40, "drained " + pool.drained());
    }

    /**
     * A V valley with sides of 1 in 5 whose floor falls 7.5 %, dammed by a flat lane at 2.2 m on a
     * fill of 2:1. The water's cross-section at y is the V up to its level less the V up to the
     * fill, so area and volume are sums of cones cut by planes.
     */
    @Test
    void whatALaneDamsInAValleyIsKnownInClosedForm() {
        double level = 2.2;
        double hinge = 2.5;
        double floor = 0.075;
        DoubleBinaryOperator v = (x, y) -> 0.2 * Math.abs(x - 50) + floor * y;
        var lane = new StraightLane(100, v, s -> level, 4, 0, 2, 0);
        WaterReport report = report(lane, List.of());
        List<WetPlace> pools =
                report.places().stream()
                        .filter(place -> place.kind() == WetPlace.Kind.DAMMED)
                        .toList();
        assertEquals(1, pools.size(), report.places().toString());
        WetPlace place = pools.get(0);
        // Toe: 2.2 − (y − 2.5) / 2 = 0.075 y, so y = 6.
        double toe = (level + hinge / 2) / (floor + 0.5);
        assertEquals(50, place.station(), 0.5);
        assertEquals(level - floor * toe, place.depth(), 0.02);
        // Half the water's width is (2.2 − 0.075 y) / 0.2, from the hinge to y = 2.2 / 0.075.
        double most = level - floor * hinge;
        assertEquals(most * most / (0.2 * floor), place.area(), 0.01 * place.area());
        // Less the prism of fill under water: its V is (0.075 + 0.5)(6 − y) high.
        double volume = Math.pow(most, 3) / (3 * 0.2 * floor);
        double fill = Math.pow(most, 3) / (3 * 0.2 * (floor + 0.5));
        assertEquals(volume - fill, place.volume(), 0.01 * place.volume());
        assertEquals(level, place.pool().spot().level(), 1e-6);
        assertTrue(place.runsOverLane(), place.toString());
        assertTrue(place.isDam());
        String says = place.finding().says().in(UnitSystem.METRIC);
        assertTrue(says.contains("runs over the lane"), says);
        // Straight across, from toe to toe of the two fills.
        CulvertLine pipe = place.pipe();
        assertNotNull(pipe);
        double other = (level + hinge / 2) / (0.5 - floor);
        assertEquals(floor * (toe + other), pipe.fall(), 0.02);
        assertEquals(floor, pipe.fall() / (toe + other), 0.002);
        // The invert lies under the far edge, 2 m out, at the valley's floor, 0.15 m under its
        // bottom at
        // the lane's line; it rises as much towards the near one.
        assertEquals(level - floor * 2, pipe.room(), 0.03);
    }

    @Test
    void whereAStraightPipeFitsThePipeIsWhatToDo() {
        DoubleBinaryOperator v = (x, y) -> 0.2 * Math.abs(x - 50) + 0.075 * y;
        WetPlace place = dammed(new StraightLane(100, v, s -> 2.2, 4, 0, 2, 0));
        assertEquals(Cure.Kind.PIPE, place.cure().kind());
        assertEquals(place.pipe(), place.cure().pipe());
        // From toe to toe: y = 3.45 / 0.575 and o = 3.45 / 0.425 out, and 7.5 % of that in height.
        double across = 3.45 / 0.575 + 3.45 / 0.425;
        assertEquals(
                "a pipe under the lane at 0+050.0, %.1f m long"
                        .formatted(Math.hypot(across, 0.075 * across)),
                place.brief().in(UnitSystem.METRIC));
        assertEquals("fits", place.fit().in(UnitSystem.METRIC));
    }

    @Test
    void wherePipeHasNoRoomTheLaneIsRaisedByWhatIsMissingAndThenItFits() {
        DoubleBinaryOperator v = (x, y) -> 0.2 * Math.abs(x - 50) + 0.075 * y;
        double low = 0.5;
        WetPlace place = dammed(new StraightLane(100, v, s -> low, 4, 0, 2, 0));
        assertEquals(Cure.Kind.RAISE, place.cure().kind(), place.toString());
        // Under the far edge, 2 m out, the valley's floor lies 0.15 m under its height at the line:
        // 0.5 + 0.15 m there, but only 0.5 - 0.15 m under the near edge, of 0.6096 m.
        double missing = 0.6096 - (low - 0.15);
        double raise = place.cure().raise();
        assertTrue(raise >= missing - 1e-9 && raise < missing + 2 * 0.0254, "raised " + raise);
        assertEquals(0, Math.IEEEremainder(raise, 0.0254), 1e-9, "in whole inches");
        String fit = place.fit().in(UnitSystem.METRIC);
        assertTrue(fit.startsWith("does not fit: "), fit);
        assertFalse(place.cure().hasPipeNow());
        WetPlace then = dammed(new StraightLane(100, v, s -> low + raise, 4, 0, 2, 0));
        assertEquals(Cure.Kind.PIPE, then.cure().kind(), "what was said holds");
        assertEquals(place.cure().pipe().length(), then.cure().pipe().length(), 0.1, "and so long");
    }

    @Test
    void whereAStraightPipeIsTooFlatItIsSlantedToLowerGroundAcross() {
        // Upstream a valley lowest at x = 50; across the lane the ground falls only along it.
        DoubleBinaryOperator turned =
                (x, y) ->
                        y > 0
                                ? 0.05 * Math.abs(x - 50) + Math.max(0.001 * y, 0.05 * (y - 10))
                                : x < 50 ? 0.05 * (50 - x) : -0.03 * (x - 50);
        WetPlace place = dammed(new StraightLane(100, turned, s -> 2.2, 4, 0, 2, 0));
        assertTrue(place.fit().in(UnitSystem.US).contains("falls less than 0.5 %"));
        CulvertLine pipe = place.cure().pipe();
        assertNotNull(pipe);
        assertEquals(Cure.Kind.PIPE, place.cure().kind());
        assertTrue(pipe.isSlanted());
        assertTrue(pipe.outletStation() > 50, "down the ground: " + pipe);
        // Its outlet lies on the ground there, and it falls by at least 0.5 % of its own length.
        assertEquals(-0.03 * (pipe.outletStation() - 50), pipe.outlet().height(), 0.01);
        double plan =
                Math.hypot(
                        pipe.outletStation() - pipe.station(),
                        pipe.outlet().offset() - pipe.inlet().offset());
        assertEquals(Math.hypot(plan, pipe.fall()), pipe.length(), 1e-6);
        assertTrue(pipe.fall() >= 0.005 * pipe.length());
        assertTrue(pipe.room() > 0.6096);
        String says = place.brief().in(UnitSystem.METRIC);
        assertTrue(says.startsWith("a pipe slanted under the lane from 0+050.0 left to "), says);
    }

    @Test
    void whereNothingLiesLowerALaneIsNotToBeADam() {
        // A bowl: the ground across the lane is as high as on this side, and so it is all along.
        DoubleBinaryOperator bowl = (x, y) -> 0.04 * Math.abs(x - 50) + 0.05 * Math.abs(y);
        WetPlace place = dammed(new StraightLane(100, bowl, s -> 2.2, 4, 0, 2, 0));
        assertTrue(place.isDam());
        assertEquals(Cure.Kind.MOVE, place.cure().kind(), place.toString());
        assertNull(place.cure().pipe());
        String remedy = place.finding().remedy().in(UnitSystem.METRIC);
        assertTrue(remedy.startsWith("Do not build it so. What to do: move the lane off"), remedy);
        assertTrue(remedy.contains("a licensed engineer must design the dam"), remedy);
    }

    @Test
    void everyWetPlaceSaysOneThingThatHolds() {
        DoubleBinaryOperator rough = (x, y) -> 0.4 * Math.sin(x / 7) * Math.cos(y / 9) + 0.02 * x;
        for (double high : new double[] {0, 0.4, 1.5}) {
            var lane = new StraightLane(100, rough, s -> high + 0.01 * s, 4, 0.02, 2, 0.3);
            for (WetPlace place : report(lane, List.of()).places()) {
                String says = place.brief().in(UnitSystem.US);
                assertFalse(says.isEmpty() || says.contains(". ") || says.endsWith("."), says);
                String remedy = place.finding().remedy().in(UnitSystem.US);
                assertTrue(remedy.contains("What to do: " + says + "."), remedy);
                CulvertLine pipe = place.cure().pipe();
                if (pipe != null) {
                    assertTrue(pipe.fall() >= 0.005 * pipe.length() - 1e-9, place.toString());
                    assertTrue(pipe.room() >= 0.6096 - 1e-9, place.toString());
                }
            }
        }
    }

    private static WetPlace dammed(StraightLane lane) {
        return report(lane, List.of()).places().stream()
                .filter(place -> place.kind() == WetPlace.Kind.DAMMED)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyPlaceHasOneFindingAndItsOwnName() {
        DoubleBinaryOperator rough = (x, y) -> 0.4 * Math.sin(x / 7) * Math.cos(y / 9) + 0.02 * x;
        var lane = new StraightLane(100, rough, s -> 0.01 * s, 4, 0.02, 2, 0.3);
        WaterReport report = report(lane, List.of());
        assertTrue(report.places().size() > 2, report.places().toString());
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < report.places().size(); i++) {
            WetPlace place = report.places().get(i);
            assertEquals("W" + (i + 1), place.name());
            assertEquals(1, report.findings().stream().filter(place.finding()::equals).count());
            assertTrue(
                    place.finding().says().pattern().startsWith(place.name() + ": "),
                    place.toString());
            assertTrue(Double.isNaN(place.station()) || place.station() > before - 0.51);
            before = place.station();
        }
    }

    @Test
    void aPoolThatReachesTheSurveysRimIsSaidToBeLargerStill() {
        Pool pool = FILLED.made().get(0);
        // The valley's floor comes in over the rim at 1.2 m; the water stands a metre higher.
        assertTrue(pool.spot().atRim());
        assertTrue(pool.spot().area() > 1000, "area " + pool.spot().area());
    }

    @Test
    void aStripBetweenTheLaneAndALowerRimIsNoDam() {
        // A side-hill that falls south; the fill's lower foot comes near the survey's rim.
        DoubleBinaryOperator hill = (x, y) -> 0.1 * y + 0.01 * x;
        var lane = new StraightLane(100, hill, s -> 1.5 + 0.01 * s, 4, 0.04, 6, 0);
        for (Pool pool : report(lane, List.of()).made()) {
            assertTrue(pool.spot().y() > 0, "below the lane: " + pool.spot());
        }
    }

    @Test
    void whatTheValleyBringsMeetsTheLane() {
        WaterReport report = FILLED;
        assertEquals(1, report.inflows().size());
        Inflow inflow = report.inflows().get(0);
        assertEquals(50, inflow.station(), 1.5);
        assertEquals(Side.LEFT, inflow.side());
        assertTrue(inflow.isLeast(), "the survey ends upstream");
        // It runs into the pool, and is told with it.
        assertFalse(codes(report).contains("water-meets-lane"));
        WetPlace place = report.places().get(0);
        assertEquals(WetPlace.Kind.DAMMED, place.kind());
        String says = place.finding().says().in(UnitSystem.METRIC);
        assertTrue(says.contains("A watercourse runs into it."), says);
    }

    @Test
    void anExistingPipeLetsItThrough() {
        double toe = 6.7 / 1.06;
        double foot = 6.7 / 0.94;
        var pipe = GivenPipe.there("old", 50, toe + 0.1, 0.03 * toe, 50, -foot - 0.1, -0.3, 0.4);
        WaterReport report = report(FILL, List.of(pipe));
        assertEquals(PlacedPipe.State.OPEN, report.pipes().get(0).state());
        assertEquals(List.of(), report.made());
        assertTrue(!codes(report).contains("lane-dams-water"));
        assertTrue(codes(report).contains("water-meets-lane"), "it comes all the same");
    }

    /** Level lane on top of a bank that stands across the valley already. */
    private static final StraightLane BANK =
            new StraightLane(
                    100,
                    (x, y) -> valley(x, y) + Math.max(0, 1.5 - 0.5 * Math.abs(y)),
                    s -> 2.2,
                    4,
                    0.04,
                    2,
                    0);

    private static GivenPipe through(double inletHigher) {
        double toe = 6.7 / 1.06;
        double foot = 6.7 / 0.94;
        return GivenPipe.there(
                "p", 50, toe + 0.1, 0.03 * toe + inletHigher, 50, -foot - 0.1, -0.3, 0.4);
    }

    @Test
    void aPipeThatIsToBeLaidCarriesWaterOnlyOnceTheLaneIsBuilt() {
        WaterReport there = report(BANK, List.of(through(0)));
        // The bank's foot lies 3 m out and 0.09 m high, the pipe's mouth 6.4 m out at 0.19 m.
        assertEquals(0.1, there.before().get(0).spot().depth(), 0.02, "drained to its mouth");
        WaterReport later = report(BANK, List.of(through(0).laidLater()));
        // The bank is 1.5 m high; the land's upper rim, 40 m out, lies at 0.03 x 40 m.
        assertEquals(1.2, later.before().get(0).spot().level(), 0.02, "nothing drains it yet");
        assertEquals(List.of(), later.made());
        assertEquals(1, later.gone().size());
        PipeCourse course = later.pipes().get(0);
        assertTrue(course.isToLay());
        assertFalse(there.pipes().get(0).isToLay());
        CulvertLine under = course.under();
        assertNotNull(under);
        assertEquals(50, under.crossing(), 1e-9);
        assertEquals(Side.LEFT, under.from());
        double plan = 6.7 / 1.06 + 6.7 / 0.94 + 0.2;
        assertEquals(Math.hypot(plan, 0.03 * 6.7 / 1.06 + 0.3), under.length(), 1e-9);
        assertTrue(course.fit().in(UnitSystem.METRIC).equals("fits"), course.toString());
    }

    @Test
    void waterThatAPipeTakesIsToldAsServedByIt() {
        for (GivenPipe pipe : List.of(through(0), through(0).laidLater())) {
            WaterReport report = report(FILL, List.of(pipe));
            WetPlace place =
                    report.places().stream()
                            .filter(each -> each.kind() == WetPlace.Kind.WATERCOURSE)
                            .findFirst()
                            .orElseThrow();
            assertTrue(place.isServed());
            assertEquals(Finding.Level.NOTE, place.finding().level());
            String says = place.brief().in(UnitSystem.METRIC);
            assertEquals(
                    pipe.toLay()
                            ? "lay the new pipe \"p\": it takes this water"
                            : "keep the existing pipe \"p\" open for it",
                    says);
            assertNull(place.cure().pipe(), "no second pipe is asked for");
        }
    }

    @Test
    void waterBelowTheWayIntoAPipeIsLeftAndToldWithThePipe() {
        WaterReport report = report(FILL, List.of(through(0.5).laidLater()));
        WetPlace place =
                report.places().stream()
                        .filter(each -> each.pool() != null)
                        .findFirst()
                        .orElseThrow();
        assertTrue(place.isServed(), place.toString());
        // What is left stands up to the inlet's bottom, half a metre over the ground there.
        assertEquals(0.5, place.depth(), 0.03);
        assertNull(place.pipe());
        assertNull(place.cure().pipe());
        String says = place.brief().in(UnitSystem.METRIC);
        assertTrue(says.contains("put its inlet") && says.contains("\"p\""), says);
        assertEquals(Finding.Level.LOOK, place.finding().level());
    }

    @Test
    void aPipeThatDoesNotPassUnderTheLaneIsSomethingToLookAt() {
        var beside = GivenPipe.there("a", 40, 20, 1.2, 40, 12, 0.9, 0.3);
        var past = GivenPipe.there("b", 104, 6, 2.8, 104, -6, 2.5, 0.3);
        for (GivenPipe pipe : List.of(beside, past)) {
            Finding later = offLane(report(FILL, List.of(pipe.laidLater())));
            assertEquals(Finding.Level.LOOK, later.level());
            assertTrue(later.remedy().in(UnitSystem.METRIC).startsWith("Take it out of the plan"));
            Finding there = offLane(report(FILL, List.of(pipe)));
            assertEquals(Finding.Level.NOTE, there.level(), "it may serve other ground");
        }
        String says = offLane(report(FILL, List.of(beside))).says().in(UnitSystem.METRIC);
        assertTrue(says.endsWith("both its ends lie on the left of the lane."), says);
        assertFalse(codes(report(FILL, List.of(through(0)))).contains("pipe-off-lane"));
        assertFalse(report(FILL, List.of(beside.laidLater())).pipes().get(0).isToLay());
    }

    private static Finding offLane(WaterReport report) {
        return report.findings().stream()
                .filter(each -> each.code().equals("pipe-off-lane"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNewPipeThatDoesNotFitIsNotToBeBought() {
        // Its bottom would lie 0.3 m under the lane's edge; the smallest pipe needs 24 in of room.
        var high = GivenPipe.there("h", 50, 6.5, 1.86, 50, -7.3, 1.7, 0.3);
        WaterReport report = report(FILL, List.of(high.laidLater()));
        assertTrue(codes(report).contains("pipe-does-not-fit"), codes(report).toString());
        assertFalse(codes(report(FILL, List.of(high))).contains("pipe-does-not-fit"));
        assertFalse(
                codes(report(FILL, List.of(through(0).laidLater()))).contains("pipe-does-not-fit"));
    }

    @Test
    void aPipeUnderTheFillIsSaidToBeCovered() {
        var pipe = GivenPipe.there("short", 50, 2, 0.05, 50, -2, -0.1, 0.3);
        WaterReport report = report(FILL, List.of(pipe));
        assertTrue(codes(report).contains("pipe-covered"));
        assertEquals(1, report.made().size());
    }

    @Test
    void aFilledHollowIsGone() {
        DoubleBinaryOperator dish =
                (x, y) -> Math.min(0.3, 0.1 * Math.hypot(x - 50, y)) + 0.001 * x;
        var lane = new StraightLane(100, dish, s -> 1.2, 8, 0.04, 2, 0);
        WaterReport report = report(lane, List.of());
        assertEquals(1, report.before().size());
        assertEquals(1, report.gone().size());
        assertEquals(Pool.Fate.GONE, report.gone().get(0).fate());
    }

    @Test
    void aHollowFarFromTheLaneIsAsBefore() {
        DoubleBinaryOperator far =
                (x, y) -> 0.05 * y + Math.min(0, 0.2 * Math.hypot(x - 50, y - 30) - 1);
        var lane = new StraightLane(100, far, s -> 0.5, 4, 0.04, 2, 0);
        WaterReport report = report(lane, List.of());
        Pool pool =
                report.after().stream().filter(p -> p.spot().y() > 20).findFirst().orElseThrow();
        assertEquals(Pool.Fate.AS_BEFORE, pool.fate());
        assertNull(pool.culvert());
        assertEquals(pool.volumeBefore(), pool.spot().volume(), 1e-9);
    }

    @Test
    void aHollowRaisedByTheLaneIsDeeper() {
        // A dish half a metre deep in the valley's floor, upstream of the lane.
        DoubleBinaryOperator dished =
                (x, y) -> valley(x, y) - Math.max(0, 0.8 - 0.1 * Math.hypot(x - 50, y - 16));
        var lane = new StraightLane(100, dished, s -> 2.2, 4, 0.04, 2, 0);
        WaterReport report = report(lane, List.of());
        Pool pool = report.made().get(0);
        assertEquals(Pool.Fate.DEEPER, pool.fate());
        assertTrue(pool.volumeBefore() > 1);
        assertTrue(pool.spot().volume() > 10 * pool.volumeBefore());
    }

    @Test
    void theRoadsDitchIsFound() {
        DoubleBinaryOperator road = (x, y) -> 0.02 * x - Math.max(0, 0.5 - 0.4 * Math.abs(x - 4));
        var lane = new StraightLane(100, road, s -> 0.3 + 0.02 * s, 4, 0.04, 2, 0);
        WaterReport report = report(lane, List.of());
        RoadEnd.RoadDitch ditch = report.roadEnd().ditch();
        assertNotNull(ditch);
        assertEquals(4, ditch.station(), 0.3);
        assertTrue(codes(report).contains("road-ditch"));
        assertEquals(100, report.roadEnd().fallingToRoad());
        assertEquals(0, report.roadEnd().fallingToEnd());
        assertTrue(codes(report).contains("lane-falls-to-road"));
        var pipe = GivenPipe.there("drive pipe", 4, 6, -0.4, 4, -6, -0.5, 0.4);
        assertTrue(codes(report(lane, List.of(pipe))).contains("road-ditch-piped"));
    }

    @Test
    void aRoadWithoutADitchIsAskedAbout() {
        WaterReport report = FILLED;
        assertNull(report.roadEnd().ditch());
        assertTrue(codes(report).contains("road-ditch-not-found"));
        assertEquals(0, report.roadEnd().fallingToRoad());
    }

    @Test
    void everyFindingCanBeSaidInBothUnits() {
        DoubleBinaryOperator rough = (x, y) -> 0.4 * Math.sin(x / 7) * Math.cos(y / 9) + 0.02 * x;
        var lane = new StraightLane(100, rough, s -> 0.01 * s, 4, 0.02, 2, 0.3);
        List<Finding> findings = report(lane, List.of()).findings();
        assertTrue(findings.size() > 4, "found " + findings.size());
        for (Finding finding : findings) {
            for (UnitSystem units : UnitSystem.values()) {
                String words = finding.says().in(units) + finding.remedy().in(units);
                assertTrue(!words.contains("{}") && !words.contains("NaN"), words);
            }
            assertEquals(Finding.Topic.WATER, finding.topic());
        }
    }

    @Test
    void theReportIsTheSameEveryTime() {
        assertEquals(FILLED, report(FILL, List.of()));
    }

    private static final double FLOOR = 0.075;

    private static WaterReport dam(Wetting wetting, List<GivenPipe> pipes) {
        DoubleBinaryOperator v = (x, y) -> 0.2 * Math.abs(x - 50) + FLOOR * y;
        return report(new StraightLane(100, v, s -> 2.2, 4, 0, 2, 0), pipes, wetting);
    }

    private static LandWater.InSpot dammed(WaterReport report) {
        for (int i = 0; i < report.after().size(); i++) {
            WetPlace place = report.placeOf(report.after().get(i));
            if (place != null && place.kind() == WetPlace.Kind.DAMMED) {
                return report.land().spots().get(i);
            }
        }
        throw new AssertionError(report.places().toString());
    }

    /** How deep it stands over the toe once so much is held, by the closed form above. */
    private static double depthOf(double volume) {
        double toe = (2.2 + 2.5 / 2) / (FLOOR + 0.5);
        double low = 0;
        double high = 2.2 - FLOOR * toe;
        while (high - low > 1e-9) {
            double depth = (low + high) / 2;
            double level = FLOOR * toe + depth;
            double most = level - FLOOR * (2.5 + 2 * (2.2 - level));
            double cone = Math.pow(most, 3) / (3 * 0.2);
            boolean more = cone / FLOOR - cone / (FLOOR + 0.5) > volume;
            low = more ? low : depth;
            high = more ? depth : high;
        }
        return low;
    }

    @Test
    void rainFillsWhatALaneDamsAsItsClosedFormSaysAndSinksWithTime() {
        double soaks = 1e-6;
        var steps =
                List.of(
                        RainStep.ofHours("shower", 0.01, 1),
                        RainStep.ofHours("flood", 0.5, 1),
                        RainStep.ofHours("two dry days", 0, 48));
        WaterReport report = dam(new Wetting(steps, soaks, 0.05, null), List.of());
        Pool pool = report.made().get(0);
        LandWater.InSpot spot = dammed(report);
        double runsOff = (0.01 - soaks * 3600) * pool.drained();
        // cells of a metre on slopes of 1 in 5
        assertEquals(depthOf(runsOff), spot.depths().get(0), 0.1);
        assertEquals(pool.spot().depth(), spot.depths().get(1), 0.1);
        assertEquals(spot.depths().get(1) - soaks * 48 * 3600, spot.depths().get(2), 1e-9);
        assertEquals(spot.depths().get(2) / soaks, spot.stands(), 1e-3);
        // 0.05 m of error in each of two heights against more than 1.5 m of depth
        assertEquals(1, spot.holds(), 1e-9);
        assertEquals(pool.spot().volume() / pool.drained(), spot.runsOver(), 0.1 * spot.runsOver());
        assertEquals(0, spot.inside());
        assertEquals(1, spot.deep());
    }

    @Test
    void aPipeThroughTheDamLeavesOnlyWhatStandsBelowItsInlet() {
        var pipe = new GivenPipe("pipe", 50, 7, 0.6, 50, -9, -0.6, 0.5, false);
        var steps = List.of(RainStep.ofHours("flood", 0.5, 1));
        WaterReport report = dam(new Wetting(steps, 0, Double.NaN, null), List.of(pipe));
        for (LandWater.InSpot spot : report.land().spots()) {
            assertTrue(spot.depths().get(0) < 0.2, spot.toString());
            assertTrue(Double.isNaN(spot.holds()), "nobody said how far heights may be off");
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "tailwater from a pool that a ridge holds below the outlet | height of the ridge less"
                    + " that of the outlet; outlet control after FHWA HDS-5, 2001, chapter III,"
                    + " worked by hand | derived")
    void aPoolStandsOverAnOutletUpToWhereItRunsOver() {
        // A ridge across the valley, 20 to 22 m below the lane, level at -0.2 m; the outlet lies at
        // -0.6 m, 0.075 m over the valley's floor.
        DoubleBinaryOperator v =
                (x, y) -> {
                    double land = 0.2 * Math.abs(x - 50) + FLOOR * y;
                    return y <= -20 && y >= -22 ? Math.max(land, -0.2) : land;
                };
        var lane = new StraightLane(100, v, s -> 2.2, 4, 0, 2, 0);
        var pipe = new GivenPipe("pipe", 50, 7, 0.6, 50, -9, -0.6, 0.5, false);
        Crossing crossing =
                report(lane, List.of(pipe)).crossings().stream()
                        .filter(each -> each.name().equals("pipe"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Crossing.Tailwater.From.POOL, crossing.tailwater().from());
        assertEquals(-0.2 + 0.6, crossing.tailwater().depth(), 1e-6);
        var storm =
                new StormAsked(
                        0.1,
                        25,
                        GraphicalPeak.Storm.II,
                        new Cover("pasture, fair", SoilGroup.C),
                        "silt loam");
        Sized sized = StormReport.of(storm, List.of(crossing), List.of()).sized().get(0);
        OutletControl out = sized.given().orElseThrow().byOutlet();
        // ho is the greater of tailwater and (dc + D) / 2; full flow of a metal pipe of 0.5 m that
        // sticks out, n 0.024, from 7 m to 9 m beyond the lane.
        double flow = sized.peak().discharge();
        double half = (sized.given().orElseThrow().critical() + 0.5) / 2;
        assertEquals(Math.max(0.4, half), out.outlet(), 1e-6);
        double speed = flow / (Math.PI * 0.25 / 4);
        double length = Math.hypot(16, 1.2);
        double friction = 19.63 * 0.024 * 0.024 * length / Math.pow(0.125, 1.33);
        double head = (1 + 0.9 + friction) * speed * speed / (2 * 9.80665);
        assertEquals(head, out.head(), 1e-3 * head);
        // Without the ridge it runs out freely.
        Crossing free =
                dam(Wetting.NONE, List.of(pipe)).crossings().stream()
                        .filter(each -> each.name().equals("pipe"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Crossing.Tailwater.FREE, free.tailwater());
    }

    @Test
    void whatCrossesABoundaryIsTheLandAboveIt() {
        double[] x = {-100, 200, 200, -100};
        double[] y = {10, 10, 100, 100};
        var boundary = new Boundary(new Ring(x, y));
        LandWater land =
                dam(new Wetting(List.of(), Double.NaN, Double.NaN, boundary), List.of()).land();
        assertTrue(land.isOwn());
        // all 124 m by 30 m above y = 10 fall to the valley and out over that line
        assertEquals(124 * 30, land.before().leaves(), 0.02 * 124 * 30);
        assertEquals(0, land.before().enters());
        assertEquals(50, land.before().x(), 1);
        assertTrue(land.before().isLeast(), "the survey ends above");
        assertTrue(land.before().way().length() > 30);
        assertEquals(land.before().leaves(), land.after().leaves(), 0.02 * 124 * 30);
        // The valley's bottom carries nearly all of it over the line y = 10 at x = 50; once the
        // lane
        // dams it, what runs through the pool does not all cross in one cell.
        LandWater.WayOut largest = land.waysOut().get(0);
        assertEquals("B1", largest.name());
        assertEquals(50, largest.station(), 1);
        assertEquals(-10, largest.offset(), 1.5);
        assertEquals(land.before().most(), largest.before().drained());
        assertEquals(land.after().most(), largest.after().drained());
        assertEquals(land.before().way(), largest.before().way());
        for (int i = 1; i < land.waysOut().size(); i++) {
            assertTrue(drained(land.waysOut().get(i)) <= drained(land.waysOut().get(i - 1)));
            assertTrue(drained(land.waysOut().get(i)) >= 500, "worth showing");
        }
        LandWater survey = dam(Wetting.NONE, List.of()).land();
        assertFalse(survey.isOwn());
        assertEquals(124 * 80, survey.before().leaves(), 0.02 * 124 * 80);
        assertTrue(survey.spots().get(0).depths().isEmpty());
    }

    private static double drained(LandWater.WayOut way) {
        return Math.max(
                way.before() == null ? 0 : way.before().drained(),
                way.after() == null ? 0 : way.after().drained());
    }

    @Test
    void whatCannotBeAskedOfStandingWaterIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new Wetting(List.of(), -1, Double.NaN, null));
        assertThrows(IllegalArgumentException.class, () -> new Wetting(List.of(), 0, -0.1, null));
    }

    private static WaterReport report(StraightLane line, List<GivenPipe> pipes) {
        return report(line, pipes, Wetting.NONE);
    }

    private static WaterReport report(StraightLane line, List<GivenPipe> pipes, Wetting wetting) {
        // Land 40 m either side of the lane and 12 m past its ends, in half-metre cells.
        ArrayMesh ground = ArrayMesh.sheet(-12, -40, 248, 160, 0.5, line.ground());
        ArrayMesh finished = ArrayMesh.sheet(-12, -40, 248, 160, 0.5, line.finished());
        List<Section> sections = line.sections(5);
        var side =
                new SideShape(
                        0.5,
                        line.foreslope(),
                        line.ditch() > 0
                                ? new Ditch(DitchRule.WHERE_BELOW_GROUND, line.ditch(), 0)
                                : Ditch.NONE,
                        2,
                        2);
        var typical =
                new TypicalSection(
                        line.width(),
                        CrossFall.CROWN,
                        line.crown(),
                        Bed.ON_TOP,
                        List.of(new Layer("base", 0.2, 1)),
                        Double.NaN,
                        side,
                        side,
                        true,
                        0,
                        false);
        var lane = new Lane(line, sections, line::grade, List.of(), s -> typical, line::section);
        return new Water(
                        lane,
                        ground,
                        finished,
                        (x, y) ->
                                x < -12 || x > 112 || Math.abs(y) > 40
                                        ? Double.NaN
                                        : line.ground().applyAsDouble(x, y),
                        pipes,
                        new WaterOptions(
                                LowSpots.Threshold.USUAL,
                                500,
                                WaterOptions.Soil.NOT_KNOWN,
                                wetting,
                                List.of(),
                                List.of()),
                        TABLES)
                .report(Progress.NONE);
    }

    private static List<String> codes(WaterReport report) {
        return Stream.concat(report.findings().stream(), Stream.<Finding>empty())
                .map(Finding::code)
                .toList();
    }
}
