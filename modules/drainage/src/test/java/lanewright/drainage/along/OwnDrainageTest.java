package lanewright.drainage.along;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.section.Section;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Outlets, reliefs, berms and the fall across, on lanes drawn by hand. */
class OwnDrainageTest {

    private static final Spacing DRAINS =
            new Spacing(
                    List.of(
                            new Spacing.Row(0.03, 120, 75, "s"),
                            new Spacing.Row(0.06, 90, 50, "s"),
                            new Spacing.Row(0.09, 75, 40, "s"),
                            new Spacing.Row(0.12, 60, 35, "s"),
                            new Spacing.Row(1, 50, 30, "s")));

    private static final Spacing BARS =
            new Spacing(
                    List.of(
                            new Spacing.Row(0.05, 75, 40, "b"),
                            new Spacing.Row(0.10, 60, 30, "b"),
                            new Spacing.Row(0.15, 45, 20, "b"),
                            new Spacing.Row(1, 35, 15, "b")));

    private static final Ditches.Standing DRY = (x, y) -> false;

    private static StraightLane lane(
            DoubleBinaryOperator ground, DoubleUnaryOperator profile, double ditch) {
        return new StraightLane(200, ground, profile, 4, 0.04, 2, ditch);
    }

    private static TypicalSection typical(CrossFall fall, double ditch) {
        var side =
                new SideShape(
                        0.5,
                        2,
                        ditch > 0 ? new Ditch(DitchRule.WHERE_BELOW_GROUND, ditch, 0) : Ditch.NONE,
                        2,
                        2);
        return new TypicalSection(
                4,
                fall,
                0.04,
                Bed.ON_TOP,
                List.of(new Layer("base", 0.2, 1)),
                Double.NaN,
                side,
                side,
                true,
                0,
                false);
    }

    private static List<Descents.Descent> descents(StraightLane lane, boolean erosive) {
        List<Section> sections = lane.sections(5);
        return Descents.of(
                CrossSlopes.of(sections, lane::grade),
                sections.stream().map(Section::profileHeight).toList(),
                Ditches.of(sections, lane, DRY, DRY, List.of()),
                DRAINS,
                BARS,
                erosive);
    }

    private static List<Relief> reliefs(StraightLane lane, boolean erosive) {
        return new Reliefs(
                        lane,
                        lane::section,
                        station -> typical(CrossFall.CROWN, lane.ditch()),
                        lane.ground(),
                        StraightLane.LIMITS)
                .of(descents(lane, erosive));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "dips on a lane of 8 % on soil that does not wash, no farther apart than 75 m | Keller"
                    + " and Sherar, Low-Volume Roads Engineering, table 7.1 | read")
    void dipsStandNoFartherApartThanTheTableAllows() {
        StraightLane lane = lane((x, y) -> 0.08 * x - 1, s -> 0.08 * s, 0);
        List<Relief> dips = reliefs(lane, false);
        assertEquals(2, dips.size(), "200 m in three parts of 75 m or less");
        assertTrue(dips.stream().allMatch(d -> d.device() == Relief.Device.ROLLING_DIP));
        assertEquals(200.0 * 2 / 3, dips.get(0).station(), 1e-6);
        assertEquals(200.0 / 3, dips.get(1).station(), 1e-6);
        // Soil that washes: 40 m.
        assertEquals(4, reliefs(lane, true).size());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "water bars on a lane of 14 % on soil that washes, no farther apart than 20 m | Keller"
                    + " and Sherar, Low-Volume Roads Engineering, table 7.2 | read")
    void aLaneTooSteepForDipsGetsBars() {
        StraightLane lane = lane((x, y) -> 0.14 * x - 1, s -> 0.14 * s, 0);
        List<Relief> bars = reliefs(lane, true);
        assertTrue(bars.stream().allMatch(d -> d.device() == Relief.Device.WATER_BAR));
        assertEquals(9, bars.size(), "200 m in ten parts of 20 m");
        assertEquals("b", bars.get(0).source());
    }

    @Test
    void aDitchIsTurnedOutWhereTheLandFallsAwayElseTakenAcross() {
        // The left ditch lies in a cut on the hillside; across, the ground falls away.
        StraightLane hill = lane((x, y) -> 0.03 * x + 0.2 * y, s -> 0.03 * s, 0.5);
        List<Relief> left =
                reliefs(hill, true).stream()
                        .filter(each -> each.way() == Descents.Way.LEFT_DITCH)
                        .toList();
        assertFalse(left.isEmpty());
        assertTrue(left.stream().allMatch(d -> d.device() == Relief.Device.RELIEF_PIPE));
        assertEquals(Side.RIGHT, left.get(0).side());
        // A low bank on the left, and lower ground behind it.
        StraightLane bank =
                lane((x, y) -> 0.03 * x + (y > 6 ? -2 : y > 0 ? 0.5 : 2), s -> 0.03 * s, 0.5);
        List<Relief> out =
                reliefs(bank, true).stream()
                        .filter(each -> each.way() == Descents.Way.LEFT_DITCH)
                        .toList();
        assertFalse(out.isEmpty());
        assertTrue(out.stream().allMatch(d -> d.device() == Relief.Device.TURN_OUT));
        assertEquals(Side.LEFT, out.get(0).side());
        // A cutting: no lower ground on either side, and none is made up.
        StraightLane cutting = lane((x, y) -> 0.03 * x + 3, s -> 0.03 * s, 0.5);
        List<Relief> none = reliefs(cutting, true);
        assertFalse(none.isEmpty());
        assertTrue(none.stream().allMatch(d -> d.device() == Relief.Device.NONE));
        assertNull(none.get(0).side());
    }

    private static List<DitchReach> runsOut() {
        StraightLane lane = lane((x, y) -> 0.04 * x + (x < 40 ? -1 : 0.5), s -> 0.04 * s, 0.5);
        return Ditches.of(lane.sections(5), lane, DRY, DRY, List.of());
    }

    private static List<String> codes(List<NamedOutlet> named) {
        List<DitchEnd> ends = DitchEnd.of(runsOut(), List.of(), named);
        return DitchEnd.check(ends, named).stream().map(Finding::code).sorted().toList();
    }

    private static NamedOutlet at(double station, Side side, NamedOutlet.Permitted permitted) {
        return new NamedOutlet("brook", station, side, Double.NaN, Double.NaN, permitted);
    }

    @Test
    void everyDitchEndsAtANamedAndPermittedOutlet() {
        assertEquals(2, DitchEnd.of(runsOut(), List.of(), List.of()).size());
        assertEquals(List.of("outlet-not-named"), codes(List.of()), "told together");
        NamedOutlet left = at(45, Side.LEFT, NamedOutlet.Permitted.YES);
        assertEquals(List.of("outlet-not-named"), codes(List.of(left)), "the right one");
        NamedOutlet either = at(45, null, NamedOutlet.Permitted.YES);
        assertEquals(List.of(), codes(List.of(either)));
        assertEquals(
                List.of("outlet-not-permitted"),
                codes(List.of(at(45, null, NamedOutlet.Permitted.NOT_KNOWN))));
        assertEquals(
                List.of("outlet-not-permitted"),
                codes(List.of(at(45, null, NamedOutlet.Permitted.NO))));
        assertEquals(
                List.of("outlet-not-named", "outlet-not-named", "outlet-not-reached"),
                codes(List.of(at(100, null, NamedOutlet.Permitted.YES))));
        assertEquals(
                List.of("outlet-not-named", "outlet-not-named", "outlet-without-place"),
                codes(List.of(at(Double.NaN, null, NamedOutlet.Permitted.YES))));
        NamedOutlet map =
                new NamedOutlet("brook", Double.NaN, null, 40, 4, NamedOutlet.Permitted.YES);
        assertEquals(List.of(), codes(List.of(map)), "both ends lie within reach of it");
    }

    @Test
    void aDitchThatAPipeTakesEndsWhereThePipeDoes() {
        DoubleUnaryOperator sag = s -> 0.02 * Math.abs(s - 50);
        StraightLane lane = lane((x, y) -> sag.applyAsDouble(x) + 0.5, sag, 0.5);
        DitchReach dead = Ditches.of(lane.sections(5), lane, DRY, DRY, List.of()).get(0);
        double bottom = dead.outlets().get(0).height();
        var pipe = GivenPipe.there("a", 50, 3.5, bottom, 50, -40, bottom - 0.5, 0.3);
        List<DitchReach> ditches =
                Ditches.of(lane.sections(5), lane, (x, y) -> true, DRY, List.of(pipe));
        var far = new NamedOutlet("brook", Double.NaN, null, 50, -45, NamedOutlet.Permitted.YES);
        List<DitchEnd> ends = DitchEnd.of(ditches, List.of(pipe), List.of(far));
        assertTrue(
                ends.stream()
                        .filter(end -> end.side() == Side.LEFT)
                        .filter(end -> end.outlet().kind() == DitchReach.Kind.PIPE)
                        .allMatch(DitchEnd::isPermitted));
    }

    private static List<FallAdvice> advice(
            double across, double grade, CrossFall now, boolean washes) {
        StraightLane lane = lane((x, y) -> grade * x + across * y, s -> grade * s, 0.4);
        return FallAdvice.of(
                lane.sections(5),
                station -> typical(now, 0.4),
                lane::grade,
                StraightLane.LIMITS,
                washes);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "outward fall only on soil that bears it, never over 8 %, and 1 % steeper than the grade"
                    + " | USDA Forest Service, FSH 7709.56, R1 supplement 1, 10/85, section 4.84 |"
                    + " read")
    void aSideSlopeAsksForAFallAcross() {
        // y is left: ground that rises to the left falls to the right.
        FallAdvice out = advice(0.2, 0.04, CrossFall.CROWN, false).get(0);
        assertEquals(CrossFall.SHED_RIGHT, out.better());
        assertEquals(0.05, out.slope(), 1e-6, "1 % over the grade");
        assertTrue(out.isChange());
        assertEquals(CrossFall.SHED_LEFT, advice(0.2, 0.04, CrossFall.CROWN, true).get(0).better());
        assertEquals(
                CrossFall.SHED_LEFT,
                advice(0.2, 0.085, CrossFall.CROWN, false).get(0).better(),
                "over 8 %");
        assertEquals(
                CrossFall.SHED_RIGHT, advice(-0.2, 0.085, CrossFall.CROWN, false).get(0).better());
        List<FallAdvice> level = advice(0.01, 0.04, CrossFall.CROWN, true);
        assertEquals(1, level.size());
        assertFalse(level.get(0).isChange());
        assertEquals(0, level.get(0).from());
        assertEquals(200, level.get(0).to());
    }

    @Test
    void bermsKeepTheLanesWaterOnIt() {
        StraightLane lane = lane((x, y) -> 0.08 * x - 1, s -> 0.08 * s, 0);
        List<Section> sections = lane.sections(5);
        List<CrossSlopes.CrossSlope> slopes = CrossSlopes.of(sections, lane::grade);
        List<Finding> none = EdgeDams.check(sections, slopes, lane::grade, List.of(), BARS, true);
        assertEquals(List.of(), none, "the shoulder falls away");
        List<Finding> berm =
                EdgeDams.check(
                        sections,
                        slopes,
                        lane::grade,
                        List.of(new Berm(20, Double.POSITIVE_INFINITY, Side.LEFT, 0.1)),
                        BARS,
                        true);
        assertEquals(1, berm.size());
        assertEquals("berm-holds-water", berm.get(0).code());
        assertEquals(Finding.Level.LOOK, berm.get(0).level());
        assertEquals(180, berm.get(0).measured().value(), 1e-9);
        assertEquals(30, berm.get(0).limit().value(), 1e-9, "gaps as bars at 8 %");
        List<Finding> off =
                EdgeDams.check(
                        sections,
                        slopes,
                        lane::grade,
                        List.of(new Berm(300, 400, Side.LEFT, 0.1)),
                        BARS,
                        true);
        assertEquals("berm-off-lane", off.get(0).code());
    }
}
