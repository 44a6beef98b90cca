package lanewright.stone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Assumption;
import lanewright.measure.Saying;
import lanewright.stone.Spread.Span;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static final Assumption FROM =
            new Assumption("weight", Saying.plain("test"), Assumption.Mark.YOURS, "test");

    /** A few operations on doubles, lengths of some hundred metres. */
    private static final double ROUNDING = 1e-9;

    private static Supply supply(double payload, double inHand) {
        return new Supply("base", 2000, FROM, 1.25, FROM, 0.1, payload, Double.NaN, inHand, null);
    }

    @RepeatedTest(100)
    void stationAndVolumeUndoEachOther(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        Spread spread = random(new SplittableRandom(seed));
        for (int i = 0; i <= 50; i++) {
            double volume = spread.volume() * i / 50;
            double back = spread.volumeBefore(spread.stationAt(volume));
            assertEquals(volume, back, ROUNDING * (1 + spread.volume()), "seed " + seed);
        }
    }

    @RepeatedTest(100)
    void loadsFollowEachOtherFromEndToEnd(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        Spread spread = random(random);
        LayerStone layer =
                LayerStone.of(supply(random.nextDouble(5000, 25000), Double.NaN), 0.1, spread);
        double mass = 0;
        double at = spread.begin();
        for (Load load : layer.loads()) {
            assertEquals(at, load.from(), "seed " + seed);
            assertTrue(load.to() >= load.from(), "seed " + seed);
            mass += load.mass();
            at = load.to();
        }
        assertEquals(spread.end(), at, "seed " + seed);
        assertEquals(layer.orderMass(), mass, ROUNDING * layer.orderMass(), "seed " + seed);
        assertEquals(layer.loadCount(), layer.loads().size());
        assertTrue(layer.spare() >= -1e-3 && layer.spare() < layer.supply().payload());
    }

    @Test
    void aWedgeIsHalfLaidAtItsSquareRoot() {
        // A wedge's area grows from nothing, so volume grows with the square of the way.
        Spread wedge = new Spread(List.of(new Span(0, 100, 0, 2, 100)));
        assertEquals(100 * Math.sqrt(0.5), wedge.stationAt(50), ROUNDING);
        assertEquals(25, wedge.volumeBefore(50), ROUNDING);
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
        LayerStone layer = LayerStone.of(supply(20_000, 110_000), 0.1, Spread.even(0, 100, 1));
        LayerStone.Reach reach = layer.reach();
        assertEquals(50, reach.station(), ROUNDING);
        assertEquals(110_000, reach.shortBy(), 1e-6);
        assertEquals(6, reach.loadsShort());
        assertEquals(layer, StoneReport.of(List.of(layer)).firstShort());
        assertNull(LayerStone.of(supply(20_000, Double.NaN), 0.1, Spread.even(0, 100, 1)).reach());
    }

    @Test
    void overlappingSpansAndAnEndlessOrderAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Spread(List.of(Span.even(0, 10, 1), Span.even(9, 20, 1))));
        assertThrows(
                IllegalArgumentException.class,
                () -> LayerStone.of(supply(1, Double.NaN), 0.1, Spread.even(0, 1000, 10)));
    }

    private static Spread random(SplittableRandom random) {
        List<Span> spans = new ArrayList<>();
        double at = random.nextDouble(50);
        for (int i = 0; i < 20; i++) {
            double to = at + random.nextDouble(0.1, 30);
            double a = random.nextInt(5) == 0 ? 0 : random.nextDouble(3);
            double b = random.nextInt(5) == 0 ? 0 : random.nextDouble(3);
            spans.add(
                    new Span(at, to, a, b, (a + b) / 2 * (to - at) * random.nextDouble(0.9, 1.1)));
            at = to + (random.nextInt(4) == 0 ? random.nextDouble(20) : 0);
        }
        return new Spread(spans);
    }
}
