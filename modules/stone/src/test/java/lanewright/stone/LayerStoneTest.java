package lanewright.stone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.lane.volume.Running;
import lanewright.lane.volume.State;
import lanewright.measure.Assumption;
import lanewright.measure.Saying;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class LayerStoneTest {

    private static final Assumption FROM =
            new Assumption("weight", Saying.plain("test"), Assumption.Mark.YOURS, "test");

    /** A few operations on doubles, lengths of some hundred metres. */
    private static final double ROUNDING = 1e-9;

    private static Supply supply(double payload, double inHand) {
        return new Supply("base", 2000, FROM, 1.25, FROM, 0.1, payload, Double.NaN, inHand, null);
    }

    @RepeatedTest(100)
    void loadsFollowEachOtherFromEndToEnd(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        Running laid = random(random);
        LayerStone layer =
                LayerStone.of(supply(random.nextDouble(5000, 25000), Double.NaN), 0.1, laid);
        double mass = 0;
        double at = laid.begin();
        for (Load load : layer.loads()) {
            assertEquals(at, load.from(), "seed " + seed);
            assertTrue(load.to() >= load.from(), "seed " + seed);
            mass += load.mass();
            at = load.to();
        }
        assertEquals(laid.end(), at, "seed " + seed);
        assertEquals(layer.needed(), mass, ROUNDING * layer.needed(), "seed " + seed);
        assertEquals(layer.loadCount(), layer.loads().size());
        assertTrue(layer.leftOver() >= -1e-3 && layer.leftOver() < layer.supply().payload());
    }

    @Test
    void aWedgeIsHalfLaidAtItsSquareRoot() {
        // A wedge's area grows from nothing, so volume grows with the square of the way: four loads
        // of 55 t take 100 m³ of 2 t with a tenth lost.
        Running wedge =
                Running.of(
                        "base",
                        State.COMPACTED,
                        new double[] {0, 100},
                        new double[] {0, 2},
                        new double[2],
                        new double[1]);
        LayerStone layer = LayerStone.of(supply(55_000, Double.NaN), 0.1, wedge);
        assertEquals(4, layer.loadCount());
        assertEquals(50, layer.loads().get(0).to(), 1e-6);
        assertEquals(100 * Math.sqrt(0.5), layer.loads().get(1).to(), 1e-6);
    }

    @Test
    void layersThatAreNotThereTakeNoLoads() {
        LayerStone none = LayerStone.of(supply(20_000, 5_000), 0.1, even(100, 0));
        assertEquals(0, none.loadCount());
        assertEquals(List.of(), none.loads());
        assertEquals(0, none.needed());
    }

    @Test
    void noTruckIsCalledForRounding() {
        // 0.1 × 3 is a hair over 0.3 in doubles.
        assertEquals(3, LayerStone.wholeLoads(0.1 + 0.1 + 0.1, 0.1));
        assertEquals(4, LayerStone.wholeLoads(0.301, 0.1));
        assertEquals(0, LayerStone.wholeLoads(0, 0.1));
    }

    @Test
    void stoneInHandReachesWhereItsVolumeEnds() {
        // 100 m of 1 m² at 2000 kg/m³ and 10 % lost take 220 t; 110 t reach half way.
        LayerStone layer = LayerStone.of(supply(20_000, 110_000), 0.1, even(100, 1));
        LayerStone.Reach reach = layer.reach();
        assertEquals(50, reach.station(), ROUNDING);
        assertEquals(110_000, reach.shortBy(), 1e-6);
        assertEquals(6, layer.loadsToOrder());
        assertEquals(layer, StoneReport.of(List.of(layer)).firstShort());
        assertNull(LayerStone.of(supply(20_000, Double.NaN), 0.1, even(100, 1)).reach());
    }

    @Test
    void loadsToOrderBeginFullWhereTheStoneInHandEnds() {
        // 220 t over 100 m, 2.2 t to the metre. 50 t in hand: two loads of 20 t and one of 10 t,
        // up to 50 / 2.2 m. The other 170 t want nine loads, the last of them half used.
        LayerStone layer = LayerStone.of(supply(20_000, 50_000), 0.1, even(100, 1));
        assertEquals(12, layer.loadCount());
        assertEquals(3, layer.loadsInHand());
        assertEquals(9, layer.loadsToOrder());
        assertEquals(10_000, layer.loads().get(2).mass(), 1e-6);
        assertEquals(50 / 2.2, layer.loads().get(2).to(), 1e-9);
        assertEquals(layer.reach().station(), layer.loads().get(2).to());
        assertEquals(20_000, layer.loads().get(3).mass(), 1e-6);
        assertEquals(10_000, layer.loads().get(11).mass(), 1e-6);
        for (Load load : layer.loads()) {
            assertEquals(load.number() <= 3, load.inHand());
        }
    }

    @Test
    void whatIsInHandAndOrderedIsWhatIsNeededAndLeftOver() {
        // 220 t needed, 50 t in hand, nine loads of 20 t: 10 t are left.
        LayerStone layer = LayerStone.of(supply(20_000, 50_000), 0.1, even(100, 1));
        assertEquals(220_000, layer.needed(), 1e-6);
        assertEquals(50_000, layer.inHand());
        assertEquals(180_000, layer.toOrder());
        assertEquals(10_000, layer.leftOver(), 1e-6);
        // More in hand than is needed: nothing to order, nothing to pay, also without a price.
        LayerStone enough = LayerStone.of(supply(20_000, 300_000), 0.1, even(100, 1));
        assertEquals(0, enough.toOrder());
        assertEquals(0, enough.cost());
        assertEquals(80_000, enough.leftOver(), 1e-6);
    }

    @Test
    void moneyIsPaidForWhatTheLoadsBring() {
        // 220 t less 50 t are 170 t; nine loads bring 180 t, at 30 for the tonne 5,400.
        Supply supply = new Supply("base", 2000, FROM, 1.25, FROM, 0.1, 20_000, 0.03, 50_000, null);
        LayerStone layer = LayerStone.of(supply, 0.1, even(100, 1));
        assertEquals(5400, layer.cost(), 1e-9);
        assertEquals(5400, StoneReport.of(List.of(layer)).cost(), 1e-9);
    }

    @Test
    void anEndlessOrderIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> LayerStone.of(supply(1, Double.NaN), 0.1, even(1000, 10)));
    }

    private static Running even(double length, double area) {
        return Running.even("base", State.COMPACTED, 0, length, area);
    }

    /** Stretches of stone with gaps, jumps and curves. */
    private static Running random(SplittableRandom random) {
        int n = 40;
        double[] station = new double[n];
        double[] area = new double[n];
        double[] centroid = new double[n];
        double[] curvature = new double[n - 1];
        double at = random.nextDouble(50);
        for (int i = 0; i < n; i += 2) {
            station[i] = at;
            station[i + 1] = at + random.nextDouble(0.1, 30);
            at = station[i + 1];
            boolean gap = random.nextInt(4) == 0;
            area[i] = gap || random.nextInt(5) == 0 ? 0 : random.nextDouble(3);
            area[i + 1] = gap || random.nextInt(5) == 0 ? 0 : random.nextDouble(3);
            centroid[i] = random.nextDouble(-1, 1);
            centroid[i + 1] = random.nextDouble(-1, 1);
            curvature[i] = random.nextDouble(-0.05, 0.05);
        }
        return Running.of("base", State.COMPACTED, station, area, centroid, curvature);
    }
}
