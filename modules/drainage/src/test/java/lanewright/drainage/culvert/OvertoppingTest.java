package lanewright.drainage.culvert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Water over the lane, alone and beside a pipe. */
class OvertoppingTest {

    private static final double FT = 0.3048;
    private static final double CFS = FT * FT * FT;
    private static final Barrel PIPE =
            new Barrel(Material.METAL, new Circle(18 * FT / 12), 0.024, 0.0127);
    private static final Culvert CULVERT =
            new Culvert(PIPE, Inlet.of(PIPE, Inlet.End.PROJECTING), 10, 0.02, 1);
    private static final Overtopping SAG =
            new Overtopping(List.of(0.0, 10.0, 25.0), List.of(1.4, 1.0, 1.5), 1.5);

    private static final double FREE = Double.POSITIVE_INFINITY;

    @Test
    @Tag("outside")
    @DisplayName(
            "Flow over a gravel road and with the barrel's | FHWA HDS-5, 2001, chapter III, example"
                    + " 4 | read")
    void overAGravelRoad() {
        double cd = 2.70 * 0.552;
        assertEquals(5.8, Overtopping.flat(60.96, 4, cd).discharge(4.16), 0.05);
        double more = 2.92 * 0.552;
        assertEquals(29.7, Overtopping.flat(60.96, 4, more).discharge(4.45), 0.05);
        assertEquals(28.454, 22.654 + 5.8, 0.001);
        assertEquals(53.769, 24.069 + 29.7, 0.001);
        double head = 0.5 * FT;
        double over = Overtopping.flat(200 * FT, 1, Overtopping.gravel(head)).discharge(1 + head);
        assertEquals(191, over / CFS, 0.5);
        assertEquals(991, 800 + over / CFS, 0.5);
        head = 1.5 * FT;
        over = Overtopping.flat(200 * FT, 1, Overtopping.gravel(head)).discharge(1 + head);
        assertEquals(1073, over / CFS, 1);
        assertEquals(1923, 850 + over / CFS, 1);
    }

    @Test
    @Tag("outside")
    @DisplayName("Parabolic sag as a weir, Q = 3π/8 C h^1.5 w | closed form | derived")
    void parabolicSag() {
        List<Double> offsets = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        for (int i = -200; i <= 200; i++) {
            double part = i / 200.0;
            offsets.add(part * 100 * FT);
            heights.add(2 + part * part * FT);
        }
        Overtopping sag = new Overtopping(offsets, heights, 3.0 * Math.sqrt(FT));
        assertEquals(353.429, sag.discharge(2 + FT) / CFS, 0.02);
        assertEquals(2, sag.lowest());
        assertEquals(0, sag.lowestAt(), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName("Weir coefficient 3.0 in feet is 1.6563 in metres | identity | derived")
    void coefficient() {
        assertEquals(1.6563, 3.0 * lanewright.drainage.channel.Imperial.WEIR, 0.00005);
    }

    @Test
    void aSlopingPieceIsTheLimitOfShortLevelOnes() {
        double level = 1.3;
        double sum = 0;
        int count = 20000;
        for (int i = 0; i < count; i++) {
            double at = 25.0 * (i + 0.5) / count;
            double height = at < 10 ? 1.4 - 0.04 * at : 1.0 + (at - 10) * 0.5 / 15;
            sum += 1.5 * Math.pow(Math.max(0, level - height), 1.5) * 25.0 / count;
        }
        assertEquals(sum, SAG.discharge(level), 1e-6);
        assertEquals(level, SAG.level(SAG.discharge(level)), 1e-9);
        assertEquals(10, SAG.lowestAt());
    }

    @Test
    void nearlyLevelAndLevelPiecesAgree() {
        double flat = Overtopping.flat(10, 1, 1.5).discharge(1.5);
        for (double tilt = 1e-12; tilt < 1e-3; tilt *= 10) {
            Overtopping crest =
                    new Overtopping(List.of(0.0, 10.0), List.of(1 - tilt, 1 + tilt), 1.5);
            assertEquals(flat, crest.discharge(1.5), 1e-5 * flat + 10 * tilt * tilt);
        }
    }

    @Test
    void performanceGoesThereAndBack() {
        Performance curve = new Performance(CULVERT, 0.2);
        double last = 0;
        for (double flow = 0.05; flow < 1; flow += 0.05) {
            double depth = curve.depth(flow);
            assertEquals(flow, curve.discharge(depth), 1e-6);
            assertTrue(curve.discharge(depth) >= last);
            last = flow;
        }
        assertEquals(0, curve.discharge(0));
        assertEquals(2, curve.curve(List.of(0.1, 0.2)).size());
        assertEquals(curve.depth(0.2), curve.curve(List.of(0.2)).get(0).headwater().depth());
    }

    @Test
    void aCleanPipeTakesWhatItCanBelowTheCrest() {
        Blocked small = Blocked.of(CULVERT, 0, SAG, FREE, 0.1, Blocked.Share.CLEAR);
        assertEquals(0.1, small.through());
        assertEquals(0, small.over());
        assertEquals(0, small.overDepth());
        assertEquals(0, small.overSpeed());
    }

    @Test
    void pipeAndCrestShareOneHeadwater() {
        double storm = 1.5;
        Blocked clear = Blocked.of(CULVERT, 0, SAG, FREE, storm, Blocked.Share.CLEAR);
        assertEquals(storm, clear.through() + clear.over(), 1e-12);
        assertEquals(SAG.discharge(clear.headwater()), clear.over(), 1e-6);
        assertEquals(clear.headwater(), new Performance(CULVERT, 0).depth(clear.through()), 1e-6);
    }

    @Test
    void theMoreIsBlockedTheMoreGoesOver() {
        double storm = 1.5;
        Blocked clear = Blocked.of(CULVERT, 0, SAG, FREE, storm, Blocked.Share.CLEAR);
        Blocked half = Blocked.of(CULVERT, 0, SAG, FREE, storm, Blocked.Share.HALF);
        Blocked wholly = Blocked.of(CULVERT, 0, SAG, FREE, storm, Blocked.Share.WHOLLY);
        assertTrue(clear.over() < half.over() && half.over() < wholly.over());
        assertTrue(clear.overDepth() < half.overDepth());
        assertTrue(half.overSpeed() < wholly.overSpeed());
        assertEquals(storm, wholly.over());
        assertEquals(0, wholly.through());
        assertEquals(10, wholly.overAt());
        // Critical depth on the crest is two thirds of the head.
        assertEquals(Math.sqrt(9.80665 * wholly.overDepth() * 2 / 3), wholly.overSpeed(), 1e-12);
    }

    @Test
    void waterStopsAtALowerWayOutThanTheLane() {
        double storm = 1.5;
        Blocked wholly = Blocked.of(CULVERT, 0, SAG, 0.8, storm, Blocked.Share.WHOLLY);
        assertTrue(wholly.elsewhere());
        assertEquals(0.8, wholly.headwater());
        assertEquals(storm, wholly.over());
        assertEquals(0, wholly.overDepth());
        Blocked half = Blocked.of(CULVERT, 0, SAG, 0.8, storm, Blocked.Share.HALF);
        assertTrue(half.elsewhere());
        assertEquals(storm, half.through() + half.over(), 1e-12);
        assertEquals(0.8, Headwater.of(CULVERT.withOpen(0.5), 0, half.through()).depth(), 1e-6);
        // A way out that is higher than the water changes nothing.
        assertEquals(
                Blocked.of(CULVERT, 0, SAG, FREE, 0.1, Blocked.Share.CLEAR),
                Blocked.of(CULVERT, 0, SAG, 0.8, 0.1, Blocked.Share.CLEAR));
        assertEquals(
                Blocked.of(CULVERT, 0, SAG, FREE, storm, Blocked.Share.WHOLLY),
                Blocked.of(CULVERT, 0, SAG, 3, storm, Blocked.Share.WHOLLY));
    }

    @Test
    void halfAnInletIsAWholeOneAtTwiceTheFlow() {
        Headwater half = Headwater.of(CULVERT.withOpen(0.5), 0, 0.15);
        assertEquals(Headwater.of(CULVERT, 0, 0.3).byInlet(), half.byInlet(), 1e-12);
        // A rectangle can be halved in truth: half as wide, the same height.
        Inlet inlet = Inlet.named("box, wings at 90 or 15 degrees");
        Barrel whole = new Barrel(Material.CONCRETE, new Box(1, 1), 0.012, 0.1);
        Barrel narrow = new Barrel(Material.CONCRETE, new Box(0.5, 1), 0.012, 0.1);
        assertEquals(
                InletControl.headwater(narrow, inlet, 0.02, 0.8),
                Headwater.of(new Culvert(whole, inlet, 10, 0.02, 1, 0.5), 0, 0.8).byInlet(),
                1e-9);
    }
}
