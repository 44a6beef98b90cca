package lanewright.drainage.storm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.drainage.Crossing;
import lanewright.drainage.DitchWater;
import lanewright.drainage.Overflow;
import lanewright.drainage.Pool;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.SoilGroup;
import lanewright.lane.section.Corner;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class StormTest {

    private static final double ACRE = 4046.8564224;
    private static final double CFS = Math.pow(0.3048, 3);
    private static final double INCH = 0.0254;

    private static final StormAsked STORM =
            new StormAsked(
                    4.2 * INCH,
                    25,
                    GraphicalPeak.Storm.II,
                    new Cover("pasture, fair", SoilGroup.C),
                    "silt loam");

    private static Crossing crossing(double acres, double room, double diameter) {
        var line =
                new CulvertLine(
                        100, 100, Side.LEFT, new Corner(-5, 50), new Corner(5, 49.9), 10, room);
        return new Crossing(
                "pipe",
                line,
                diameter,
                null,
                true,
                0,
                acres * ACRE,
                false,
                new FlowGrid.Way(150, 10),
                List.of(40.0, 100.0, 160.0),
                List.of(room + 0.6, room, room + 0.6),
                Crossing.Tailwater.FREE);
    }

    private static Sized sized(double acres, double room, double diameter) {
        return StormReport.of(STORM, List.of(crossing(acres, room, diameter)), List.of())
                .sized()
                .get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "flow of two acres of pasture | SCS, TR-55, 1986, chapters 2 and 4, worked by hand |"
                    + " derived")
    void twoAcresOfPasture() {
        // CN 79: S = 1000/79 - 10 = 2.658 in, Ia = 0.532 in, Q = 3.668^2 / 6.327 = 2.127 in.
        // Ia/P = 0.127; at 0.1 h log qu is 2.5532 + 0.6151 - 0.1640 at 0.10 and 2.4653 + 0.6226
        // - 0.1166 at 0.30: 1010.7 and 936.2, so 1000.8 csm/in; 2/640 mi2 x 1000.8 x 2.127.
        Sized sized = sized(2, 1.0, Double.NaN);
        assertTrue(sized.time() < 360, "quicker than the chart begins");
        assertEquals(2.127, sized.peak().runoff() / INCH, 0.001);
        assertEquals(6.652, sized.peak().discharge() / CFS, 0.01);
    }

    /** A ditch across from the inlet, 3:1 both ways, that falls 1 % past the outlet. */
    private static DitchWater across(double bottomAtOutlet) {
        var reach =
                new DitchReach(
                        Side.RIGHT,
                        List.of(
                                new DitchReach.Point(0, 0, 0, bottomAtOutlet + 1, 0.1),
                                new DitchReach.Point(200, 200, 0, bottomAtOutlet - 1, 0.1)),
                        List.of());
        var piece =
                new DitchWater.Piece(
                        0,
                        200,
                        200,
                        -0.01,
                        0,
                        0,
                        0,
                        false,
                        new FlowGrid.Way(1, 0.1),
                        ChannelShape.triangle(3),
                        1,
                        Double.NaN);
        return new DitchWater(reach, List.of(piece), List.of());
    }

    private static Sized into(double bottomAtOutlet) {
        return StormReport.of(
                        STORM,
                        List.of(crossing(2, 1.5, 24 * INCH)),
                        List.of(across(bottomAtOutlet)))
                .sized()
                .get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "tailwater from a ditch, and headwater over it by outlet control | Manning for a"
                    + " triangle in closed form; FHWA HDS-5, 2001, chapter III, H = (1 + Ke + 19.63"
                    + " n2 L / R^1.33) V2/2g with Ke 0.9 of a projecting metal pipe, worked by hand"
                    + " | read")
    void aDitchStandsAsDeepOverAnOutletAsItRuns() {
        // 6.652 cfs come, 0.18836 m3/s. In silt loam, n 0.020: (0.18836 0.020 3.4203 / (6.2403
        // 0.1))^(3/8) = 0.2334 m.
        double flow = 6.652 * CFS;
        double deep =
                Math.pow(
                        flow
                                * 0.020
                                * Math.pow(2 * Math.sqrt(10), 2.0 / 3)
                                / (Math.pow(3, 5.0 / 3) * Math.sqrt(0.01)),
                        3.0 / 8);
        assertEquals(0.2334, deep, 1e-3);
        // Its bottom lies 0.3 m over the outlet's invert at 49.9 m.
        Sized high = into(50.2);
        assertEquals(Crossing.Tailwater.From.DITCH, high.tailwater().from());
        assertEquals(0.3 + deep, high.tail(), 1e-3);
        // The pipe, 24 in, 10 m long and 1 % steep, runs full: R = D / 4.
        double d = 24 * INCH;
        double speed = flow / (Math.PI * d * d / 4);
        double friction = 19.63 * 0.024 * 0.024 * 10 / Math.pow(d / 4, 1.33);
        double head = (1 + 0.9 + friction) * speed * speed / (2 * 9.80665);
        double water = head + 0.3 + deep - 0.1;
        assertEquals(water, high.given().orElseThrow().depth(), 2e-3);
        assertTrue(water > into(48).given().orElseThrow().depth());
    }

    @Test
    void aDitchThatRunsLowerThanTheOutletBacksNothingUp() {
        Sized low = into(49.6);
        assertEquals(Crossing.Tailwater.From.NOWHERE, low.tailwater().from());
        assertEquals(0, low.tail());
    }

    @Test
    void aPipeThatCarriesIsTheLeastThatDoes() {
        Sized sized = sized(2, 1.0, Double.NaN);
        var plastic = sized.choices().get(0);
        assertTrue(plastic.chosen().orElseThrow().does());
        assertFalse(plastic.smaller().orElseThrow().does());
        assertTrue(sized.given().isEmpty() && Double.isNaN(sized.carries()));
        assertTrue(sized.raised().isEmpty());
    }

    @Test
    void thePlansOwnPipeIsHeldAgainstTheStorm() {
        assertFalse(sized(2, 1.0, 12 * INCH).isEnough());
        Sized wide = sized(2, 1.0, 24 * INCH);
        assertTrue(wide.isEnough());
        assertTrue(wide.carries() > wide.peak().discharge());
    }

    @Test
    void whatIsBlockedGoesOverTheLowestPlaceOfTheLane() {
        Sized sized = sized(2, 1.0, 18 * INCH);
        Blocked wholly = sized.blocked().get(2);
        assertEquals(Blocked.Share.WHOLLY, wholly.share());
        assertEquals(0, wholly.through());
        assertEquals(sized.peak().discharge(), wholly.over(), 1e-12);
        assertEquals(100, wholly.overAt());
        assertTrue(wholly.headwater() > 1.0);
        assertTrue(sized.blocked().get(1).headwater() <= wholly.headwater());
        assertEquals(Blocked.Share.CLEAR, sized.blocked().get(0).share());
    }

    @Test
    void whatIsBlockedGoesOverTheGroundWhereThatIsLowerThanTheLane() {
        var ground = new Pool.Spill(Pool.SpillWay.BESIDE, 80, Side.LEFT);
        Crossing lane = crossing(2, 1.0, 18 * INCH);
        Blocked wholly = at(lane, new Overflow(0.7, ground)).blocked().get(2);
        assertTrue(wholly.elsewhere());
        assertEquals(0.7, wholly.headwater());
        assertEquals(0, wholly.overDepth());
        // Higher ground, and the lane's own sag, leave it as it is with neither.
        List<Blocked> over = at(lane, null).blocked();
        assertEquals(over, at(lane, new Overflow(3, ground)).blocked());
        var sag = new Pool.Spill(Pool.SpillWay.LANE, 100, Side.LEFT);
        assertEquals(over, at(lane, new Overflow(0.7, sag)).blocked());
    }

    private static Sized at(Crossing lane, @Nullable Overflow overflow) {
        var crossing =
                new Crossing(
                        lane.name(),
                        lane.line(),
                        lane.diameter(),
                        lane.material(),
                        lane.toLay(),
                        lane.raise(),
                        lane.drained(),
                        lane.isLeast(),
                        lane.way(),
                        lane.crestStations(),
                        lane.crestHeights(),
                        lane.tailwater(),
                        lane.ends(),
                        overflow);
        return StormReport.of(STORM, List.of(crossing), List.of()).sized().get(0);
    }

    @Test
    void aLaneTooLowSaysHowMuchHigherItMustBe() {
        for (double room : new double[] {0.1, 0.4}) {
            Sized low = sized(2, room, Double.NaN);
            assertTrue(low.least().isEmpty());
            var raised = low.raised().orElseThrow();
            Sized high = sized(2, room + raised.by(), Double.NaN);
            assertTrue(high.least().isPresent());
            assertTrue(sized(2, room + raised.by() - 0.05, Double.NaN).least().isEmpty());
        }
    }

    @Test
    void aRainThatSoaksInAsksForNoPipe() {
        var light =
                new StormAsked(
                        0.4 * INCH,
                        0,
                        GraphicalPeak.Storm.II,
                        new Cover("meadow", SoilGroup.A),
                        "silt loam");
        Sized sized = StormReport.of(light, List.of(crossing(2, 1, 0.3)), List.of()).sized().get(0);
        assertTrue(sized.isDry() && sized.isEnough());
    }

    @Test
    void aStormThatCannotBeIsRefused() {
        Cover cover = new Cover("meadow", SoilGroup.A);
        for (double rain : new double[] {0, -0.1, Double.NaN, 4.2}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new StormAsked(rain, 25, GraphicalPeak.Storm.II, cover, "silt loam"));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> new StormAsked(0.1, -1, GraphicalPeak.Storm.II, cover, "silt loam"));
    }

    /** A ditch of one piece a hundred metres long, into which land drains at its foot. */
    private static SizedReach ditch(double acres, double grade, double depth) {
        var reach =
                new DitchReach(
                        Side.LEFT,
                        List.of(
                                new DitchReach.Point(0, 0, 0, 50, 0.1),
                                new DitchReach.Point(100, 100, 0, 50 - 100 * grade, 0.1)),
                        List.of());
        var piece =
                new DitchWater.Piece(
                        0,
                        100,
                        100,
                        -grade,
                        0,
                        0,
                        acres * ACRE,
                        false,
                        new FlowGrid.Way(150, 10),
                        ChannelShape.triangle(3),
                        depth,
                        Double.NaN);
        var water = new DitchWater(reach, List.of(piece), List.of());
        List<SizedReach> reaches =
                StormReport.of(STORM, List.of(), List.of(water)).ditches().get(0).reaches();
        assertEquals(1, reaches.size());
        return reaches.get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "depth in a ditch at the flow of a storm | Manning's equation for a triangle, closed"
                    + " form | derived")
    void aDitchRunsAtItsNormalDepth() {
        SizedReach gentle = ditch(0.05, 0.008, 0.5);
        assertFalse(gentle.wantsLining());
        double flow = gentle.flow();
        double n = 0.020;
        double normal =
                Math.pow(
                        flow
                                * n
                                * Math.pow(2 * Math.sqrt(10), 2.0 / 3)
                                / (Math.pow(3, 5.0 / 3) * Math.sqrt(0.008)),
                        3.0 / 8);
        assertEquals(normal, gentle.deep(), 1e-6);
        assertEquals(0.5 - normal, gentle.left(), 1e-6);
    }

    @Test
    void steepDitchesWantALiningAndSmallOnesOverflow() {
        assertTrue(ditch(2, 0.03, 0.5).wantsLining());
        assertTrue(ditch(20, 0.005, 0.15).left() < 0);
        assertTrue(ditch(60, 0.5, 1).steep().isEmpty(), "nothing published holds that");
    }
}
