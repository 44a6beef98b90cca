package lanewright.drainage.hollows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.hollows.Grids.Grid;
import lanewright.drainage.hollows.Rain.After;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Rain on hollows whose filling can be told by hand, and the balance of every rain. */
class RainTest {

    private static List<After> rain(Hollows hollows, double soaks, RainStep... steps) {
        return Rain.on(hollows, List.of(steps), soaks, Progress.NONE);
    }

    /**
     * A trough one cell wide between walls, cells of 1 m, heights 0 1 0.5 over three cells with
     * walls of 3: rain on 5 x 3 cells, of which the walls of the rim drain out.
     */
    private static Hollows trough() {
        double[] z = new double[15];
        Arrays.fill(z, 3);
        z[6] = 0;
        z[7] = 1;
        z[8] = 0.5;
        return Hollows.of(Terrain.of(5, 3, 1, z));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Two puddles fill, the smaller spills into the larger, both become one and that"
                    + " overflows, with infiltration afterwards | by hand | derived")
    void puddlesFillSpillJoinAndSink() {
        Hollows hollows = trough();
        assertEquals(3, hollows.size());
        Downhill downhill = hollows.downhill();
        // Steepest drops send walls and bar to the deeper cell where they touch it.
        int deep = downhill.accumulated(6);
        int shallow = downhill.accumulated(8);
        int catchDeep = (int) hollows.hollow(0).catchment();
        int catchShallow = (int) hollows.hollow(1).catchment();
        assertTrue(hollows.hollow(0).bottom() == 6 || hollows.hollow(1).bottom() == 6);
        if (hollows.hollow(0).bottom() == 8) {
            int spare = catchDeep;
            catchDeep = catchShallow;
            catchShallow = spare;
        }
        assertEquals(15, Math.max(deep, shallow));
        assertEquals(15, catchDeep + catchShallow);
        // room: deep one 1 m3 up to the bar, shallow one 0.5 m3; joined three cells more to 3 m
        double first = 0.3 / 15; // 0.3 m3 on the whole land
        List<After> after =
                rain(
                        hollows,
                        0,
                        new RainStep("a little", first, 3600),
                        new RainStep("more", 1.5 / 15 - first, 3600),
                        new RainStep("to half", 3.0 / 15, 3600),
                        new RainStep("over", 10.0 / 15, 3600));
        assertEquals(0.3, after.get(0).ponded(), 1e-12);
        assertEquals(2, after.get(0).pools().size());
        for (Pooled pool : after.get(0).pools()) {
            int land = hollows.hollow(pool.hollow()).bottom() == 6 ? catchDeep : catchShallow;
            assertEquals(land * first, pool.volume(), 1e-12);
            assertEquals(land * first, pool.depth(), 1e-12); // one cell each
        }
        // 1.5 m3 fill both to the bar, whichever way they came
        assertEquals(1.5, after.get(1).ponded(), 1e-9);
        // 3 m3 more over three cells: a metre above the bar
        assertEquals(1, after.get(2).pools().size());
        Pooled joined = after.get(2).pools().get(0);
        assertEquals(2, joined.level(), 1e-9);
        assertEquals(2, joined.depth(), 1e-9);
        assertEquals(3, joined.area());
        assertFalse(joined.isFull());
        // full at 3 m: 7.5 m3; the rest leaves
        Pooled full = after.get(3).pools().get(0);
        assertTrue(full.isFull());
        assertEquals(7.5, after.get(3).ponded(), 1e-12);
        assertEquals(14.5 - 7.5, after.get(3).out(), 1e-9);
        // sinking: a metre a day; after two days it stands 1 m deep in the deep cell alone, at the
        // bar, and half a metre in the other; after two and three quarters only in the deep one
        double day = 86400;
        List<After> dry =
                rain(
                        hollows,
                        1 / day,
                        new RainStep("cloudburst", 2, 1),
                        new RainStep("two days", 0, 2 * day),
                        new RainStep("most of another", 0, 0.75 * day),
                        new RainStep("rest", 0, 0.25 * day + 1));
        assertEquals(7.5, dry.get(0).ponded(), 1e-9);
        assertEquals(1.5, dry.get(1).ponded(), 1e-9);
        assertEquals(0.25, dry.get(2).ponded(), 1e-9);
        assertEquals(
                6,
                dry.get(2).pools().stream()
                        .mapToInt(p -> hollows.hollow(p.hollow()).bottom())
                        .sum());
        assertEquals(0, dry.get(3).pools().size());
        assertEquals(3 * day, Rain.stands(3, 1 / day), 1e-6);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Rain in = ponded + soaked + out to 1e-9 of the rain, after every step, on 120 random"
                    + " grids and an open elevation model | conservation of mass | derived")
    void balancesEveryRain() {
        for (int seed = 0; seed <= 120; seed++) {
            Grid grid = seed == 0 ? Grids.jacksboro() : Grids.rough(seed);
            Hollows hollows = Hollows.of(grid.terrain(4));
            var random = new SplittableRandom(seed);
            List<RainStep> steps = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double depth = random.nextInt(3) == 0 ? 0 : random.nextDouble(seed == 0 ? 20 : 3);
                steps.add(new RainStep("step " + i, depth, random.nextDouble(100, 5000)));
            }
            double soaks = seed % 3 == 0 ? 0 : random.nextDouble(0.0008);
            double out = 0;
            for (After after : Rain.on(hollows, steps, soaks, Progress.NONE)) {
                assertEquals(0, after.imbalance(), 1e-9 * after.rain(), "seed " + seed);
                assertTrue(after.out() >= out);
                out = after.out();
                double stands = 0;
                for (Pooled pool : after.pools()) {
                    Hollow hollow = hollows.hollow(pool.hollow());
                    assertTrue(pool.level() <= hollow.spillHeight());
                    assertTrue(pool.depth() > 0);
                    double volume = 0;
                    for (int cell : hollows.cells(pool.hollow())) {
                        volume += Math.max(0, pool.level() - grid.z()[cell]) * 4;
                    }
                    assertEquals(volume, pool.volume(), 1e-9 * Math.max(1, volume));
                    stands += volume;
                }
                assertEquals(stands, after.ponded(), 1e-9 * Math.max(1, stands));
            }
        }
    }

    @Test
    void endlessRainFillsEverythingAndOneStepIsAsGoodAsMany() {
        for (int seed = 1; seed < 60; seed++) {
            Grid grid = Grids.rough(seed);
            Hollows hollows = Hollows.of(grid.terrain(3));
            double all =
                    hollows.all().stream()
                            .filter(Hollow::isOutermost)
                            .mapToDouble(Hollow::volume)
                            .sum();
            After after = rain(hollows, 0, new RainStep("flood", 1e4, 1)).get(0);
            assertEquals(all, after.ponded(), 1e-9 * Math.max(1, all));
            List<After> parts =
                    rain(
                            hollows,
                            0,
                            new RainStep("a", 0.3, 100),
                            new RainStep("b", 0.4, 10),
                            new RainStep("c", 0.5, 1));
            After whole = rain(hollows, 0, new RainStep("whole", 1.2, 7)).get(0);
            assertEquals(whole.ponded(), parts.get(2).ponded(), 1e-9 * whole.rain());
            assertEquals(whole.pools().size(), parts.get(2).pools().size());
            for (int i = 0; i < whole.pools().size(); i++) {
                assertEquals(
                        whole.pools().get(i).level(), parts.get(2).pools().get(i).level(), 1e-9);
            }
        }
    }

    @Test
    void hollowsOverflowInTheOrderThatTheirRainSays() {
        for (int seed = 1; seed < 60; seed++) {
            Hollows hollows = Hollows.of(Grids.rough(seed).terrain(3));
            List<Rain.Overflow> order = Rain.overflows(hollows);
            assertEquals(hollows.size(), order.size());
            double before = 0;
            for (Rain.Overflow next : order) {
                assertTrue(next.rain() >= before);
                before = next.rain();
                Hollow hollow = hollows.hollow(next.hollow());
                for (int part : hollow.parts()) {
                    double fills =
                            order.stream()
                                    .filter(o -> o.hollow() == part)
                                    .findAny()
                                    .orElseThrow()
                                    .rain();
                    assertTrue(fills <= next.rain());
                }
                // with a little more rain it stands full, with a little less it does not
                if (seed < 20) {
                    assertTrue(isFull(hollows, next.hollow(), next.rain() * (1 + 1e-6)));
                    assertFalse(isFull(hollows, next.hollow(), next.rain() * (1 - 1e-6)));
                }
            }
        }
    }

    /** Whether a hollow or one that it is a part of stands full, or joined in such a one. */
    private static boolean isFull(Hollows hollows, int number, double rain) {
        double level = Double.NEGATIVE_INFINITY;
        for (Pooled pool : rain(hollows, 0, new RainStep("once", rain, 1)).get(0).pools()) {
            for (int at = number; at != Hollow.OUTSIDE; at = hollows.hollow(at).parent()) {
                if (at == pool.hollow()) {
                    level = pool.level();
                }
            }
        }
        return level >= hollows.hollow(number).spillHeight() - 1e-12;
    }

    @Test
    void rainSlowerThanTheGroundTakesItLeavesNothing() {
        After after = rain(trough(), 1e-5, new RainStep("drizzle", 0.01, 3600)).get(0);
        assertEquals(0, after.ponded());
        assertEquals(0, after.out());
        assertEquals(after.rain(), after.soaked());
    }

    @Test
    void whatIsNoRainIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new RainStep(" ", 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new RainStep("a", -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new RainStep("a", 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new RainStep("a", Double.NaN, 1));
        Hollows hollows = trough();
        assertThrows(IllegalArgumentException.class, () -> rain(hollows, -1));
        assertThrows(IllegalArgumentException.class, () -> Rain.stands(1, Double.NaN));
        assertEquals(Double.POSITIVE_INFINITY, Rain.stands(1, 0));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Probability that a hollow holds water, 200,000 draws of normal errors of its two"
                    + " heights, alone and correlated | Monte Carlo, seeded | derived")
    void holdsAsOftenAsDrawnErrorsSay() {
        double[] z = new double[25 * 3];
        Arrays.fill(z, 1);
        for (int column = 1; column < 24; column++) {
            z[25 + column] = 0.05 * Math.abs(column - 20) / 20.0;
        }
        z[25] = 0.05;
        Hollow hollow = Hollows.of(Terrain.of(25, 3, 1, z)).hollow(0);
        assertEquals(0.05, hollow.depth());
        assertEquals(20, hollow.apart());
        var random = new java.util.Random(5);
        for (double error : new double[] {0.01, 0.03, 0.06, 0.2}) {
            for (double length : new double[] {0, 15, 60}) {
                double likeness = length == 0 ? 0 : Math.exp(-20 / length);
                int wet = 0;
                int draws = 200_000;
                for (int i = 0; i < draws; i++) {
                    double one = random.nextGaussian();
                    double two =
                            likeness * one
                                    + Math.sqrt(1 - likeness * likeness) * random.nextGaussian();
                    wet += 0.05 + error * (one - two) > 0 ? 1 : 0;
                }
                // four standard deviations of such a count
                assertEquals((double) wet / draws, hollow.holds(error, length), 0.0045);
            }
        }
        assertEquals(1, hollow.holds(0));
        // Φ(1) = 0.8413447, where depth is one standard deviation of the difference
        assertEquals(0.8413447, hollow.holds(0.05 / Math.sqrt(2)), 1e-7);
        assertThrows(IllegalArgumentException.class, () -> hollow.holds(-1));
        assertThrows(IllegalArgumentException.class, () -> hollow.holds(1, Double.NaN));
    }
}
