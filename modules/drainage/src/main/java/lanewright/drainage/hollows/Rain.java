package lanewright.drainage.hollows;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Progress;

/**
 * What stands where after each step of a rain.
 *
 * <p>Assumed: rain is even over the land and over each step. It runs to its hollow, and from a full
 * one to the next, at once: no water is on its way. The ground takes water in at one rate
 * everywhere, wet or dry, and never tires; so rain up to that rate soaks in where it falls, and
 * only what is beyond it runs off, none of which soaks in on its way; and standing water sinks at
 * that rate under all of its area, less the rain that falls on it. Nothing evaporates. Before the
 * first step all hollows are dry. No water comes from beyond the survey.
 *
 * <p>From this follows: while it rains faster than the ground takes in, every hollow fills with the
 * excess over its catchment, whatever its wet area; and otherwise all water falls at one rate, so
 * that it stands over a hollow's deepest cell for its depth by that rate.
 */
public final class Rain {

    private Rain() {}

    /**
     * The land after a step.
     *
     * @param step the step
     * @param pools water that stands then; water that has joined over several hollows once, for the
     *     one of which they are parts
     * @param rain all that has fallen so far, m³
     * @param ponded what stands, m³
     * @param soaked what has soaked in so far, m³
     * @param out what has left the survey so far, m³
     */
    public record After(
            RainStep step,
            List<Pooled> pools,
            double rain,
            double ponded,
            double soaked,
            double out) {

        /** Copies the list. */
        public After {
            pools = List.copyOf(pools);
        }

        /** What is missing of the rain or too much, m³; rounding. */
        public double imbalance() {
            return rain - ponded - soaked - out;
        }
    }

    /**
     * Rains.
     *
     * @param steps the rain, in order
     * @param soaks how fast the ground takes water in, m/s, zero or more
     * @return the land after each step
     * @throws IllegalArgumentException if {@code soaks} is negative or not finite
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public static List<After> on(
            Hollows hollows, List<RainStep> steps, double soaks, Progress progress) {
        checkSoaks(soaks);
        var filling = new Filling(hollows);
        Terrain terrain = hollows.terrain();
        double land = 0;
        for (int cell = 0; cell < terrain.cells(); cell++) {
            land += Double.isNaN(terrain.height(cell)) ? 0 : 1;
        }
        land *= terrain.cellSize() * terrain.cellSize();
        double rain = 0;
        double soaked = 0;
        double before = 0;
        List<After> all = new ArrayList<>();
        for (RainStep step : steps) {
            progress.check();
            double excess = step.rate() - soaks;
            rain += step.depth() * land;
            if (excess > 0) {
                filling.run(excess, step.seconds());
                soaked += soaks * step.seconds() * land;
            } else if (excess < 0) {
                filling.sink(-excess * step.seconds());
            } else {
                soaked += step.depth() * land;
            }
            List<Pooled> pools = pools(hollows, filling);
            double ponded = 0;
            for (Pooled pool : pools) {
                ponded += pool.volume();
            }
            if (excess < 0) {
                soaked += step.depth() * land + before - ponded;
            }
            before = ponded;
            all.add(new After(step, pools, rain, ponded, soaked, filling.left()));
        }
        return List.copyOf(all);
    }

    private static void checkSoaks(double soaks) {
        if (!(soaks >= 0) || Double.isInfinite(soaks)) {
            throw new IllegalArgumentException(
                    "what soaks in must be zero or more, was " + soaks + " m/s");
        }
    }

    private static List<Pooled> pools(Hollows hollows, Filling filling) {
        List<Pooled> pools = new ArrayList<>();
        for (int pool = 0; pool < hollows.nest().count(); pool++) {
            Filling.Stand stand = filling.isAlive(pool) ? filling.stand(pool) : null;
            if (stand == null) {
                continue;
            }
            if (!hollows.nest().isThin(pool)) {
                pools.add(pooled(hollows, pool, stand, filling.isFull(pool)));
                continue;
            }
            // No hollow of its own: its parts are, and stand full beside each other.
            for (int part : hollows.solid(pool)) {
                pools.add(pooled(hollows, part, Filling.full(hollows, part), true));
            }
        }
        return pools;
    }

    private static Pooled pooled(Hollows hollows, int pool, Filling.Stand stand, boolean full) {
        double cell = hollows.terrain().cellSize() * hollows.terrain().cellSize();
        return new Pooled(
                hollows.number(pool),
                stand.level(),
                stand.level() - hollows.terrain().height(hollows.nest().bottom(pool)),
                stand.cells() * cell,
                stand.volume(),
                full);
    }

    /**
     * How long water goes on standing over the deepest cell of a hollow once no more comes, s;
     * infinite where nothing soaks in.
     *
     * @param depth over that cell, m, zero or more
     * @param soaks how fast the ground takes water in, m/s, zero or more
     */
    public static double stands(double depth, double soaks) {
        checkSoaks(soaks);
        return depth > 0 ? depth / soaks : 0;
    }

    /**
     * When a hollow overflows.
     *
     * @param hollow its number
     * @param rain how much even rain it takes on dry land from which nothing soaks in, m
     */
    public record Overflow(int hollow, double rain) {}

    /**
     * The order in which hollows overflow under even rain from which nothing soaks in, and how much
     * it takes; of those at one moment, parts come before wholes.
     */
    public static List<Overflow> overflows(Hollows hollows) {
        var filling = new Filling(hollows);
        filling.run(1, Double.POSITIVE_INFINITY);
        List<Overflow> order = new ArrayList<>();
        for (int number = 0; number < hollows.size(); number++) {
            order.add(new Overflow(number, filling.filledAt(hollows.pool(number))));
        }
        order.sort(
                (a, b) -> {
                    int byRain = Double.compare(a.rain(), b.rain());
                    return byRain != 0 ? byRain : Integer.compare(a.hollow(), b.hollow());
                });
        return List.copyOf(order);
    }
}
