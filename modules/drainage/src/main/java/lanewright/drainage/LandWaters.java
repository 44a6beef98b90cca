package lanewright.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.hollows.Hollow;
import lanewright.drainage.hollows.Hollows;
import lanewright.drainage.hollows.Pooled;
import lanewright.drainage.hollows.Rain;
import lanewright.drainage.pond.LowSpot;
import lanewright.lane.line.Place;
import lanewright.measure.Progress;
import lanewright.survey.Boundary;
import org.jspecify.annotations.Nullable;

/** Finds what stands where on the land and what crosses its border. */
final class LandWaters {

    /**
     * Ways out that are told, and ways out that are kept to find the same one again. Our choice.
     */
    private static final int TOLD = 6;

    private static final int KEPT = 24;

    /** Ways out nearer than this to each other, before and after, are one, m. Our choice. */
    private static final double SAME = 10;

    private final Cells cells;
    private final WaterOptions options;
    private final BitSet within;

    /**
     * For land of these cells.
     *
     * @param within cells {@link #within} the border
     */
    LandWaters(Cells cells, WaterOptions options, BitSet within) {
        this.cells = cells;
        this.options = options;
        this.within = within;
    }

    /** The cells whose middles lie within a border; all if there is none. */
    static BitSet within(Cells cells, @Nullable Boundary border) {
        var within = new BitSet(cells.count());
        for (int cell = 0; cell < cells.count(); cell++) {
            within.set(cell, border == null || border.contains(cells.x(cell), cells.y(cell)));
        }
        return within;
    }

    /**
     * What stands on the land as it will be, and what crosses its border.
     *
     * @param before what crosses the border of the land as it is
     * @param after what crosses it then
     * @param hollows of the land as it will be
     */
    LandWater of(
            LandWater.Border before,
            LandWater.Border after,
            Hollows hollows,
            List<Pool> pools,
            LaneLine line,
            Progress progress) {
        Wetting asked = options.wetting();
        return new LandWater(
                spots(hollows, pools, progress),
                asked.steps(),
                asked.soaks(),
                asked.boundary() != null,
                before,
                after,
                waysOut(before, after, line));
    }

    /** The largest ways out, each with the one that is nearest to it on the other surface. */
    private List<LandWater.WayOut> waysOut(
            LandWater.Border before, LandWater.Border after, LaneLine line) {
        List<LandWater.Exit> was = new ArrayList<>(before.exits());
        List<LandWater.Exit> is = new ArrayList<>(after.exits());
        List<LandWater.WayOut> ways = new ArrayList<>();
        while (ways.size() < TOLD && !(was.isEmpty() && is.isEmpty())) {
            boolean now =
                    was.isEmpty() || (!is.isEmpty() && is.get(0).drained() > was.get(0).drained());
            LandWater.Exit largest = (now ? is : was).remove(0);
            if (largest.drained() < options.flowArea()) {
                break;
            }
            LandWater.Exit other = near(now ? was : is, largest);
            Place place = line.place(largest.x(), largest.y());
            ways.add(
                    new LandWater.WayOut(
                            "B" + (ways.size() + 1),
                            largest.x(),
                            largest.y(),
                            place == null ? Double.NaN : place.station(),
                            place == null ? Double.NaN : place.offset(),
                            now ? other : largest,
                            now ? largest : other));
        }
        return ways;
    }

    /** Takes the largest way out near another out of a list; null if none is near. */
    private static LandWater.@Nullable Exit near(List<LandWater.Exit> exits, LandWater.Exit to) {
        for (int i = 0; i < exits.size(); i++) {
            LandWater.Exit exit = exits.get(i);
            if (Math.hypot(exit.x() - to.x(), exit.y() - to.y()) <= SAME) {
                return exits.remove(i);
            }
        }
        return null;
    }

    private List<LandWater.InSpot> spots(Hollows hollows, List<Pool> pools, Progress progress) {
        Wetting asked = options.wetting();
        double soaks = Double.isNaN(asked.soaks()) ? 0 : asked.soaks();
        List<Map<Integer, Pooled>> standing = new ArrayList<>();
        for (Rain.After after : Rain.on(hollows, asked.steps(), soaks, progress)) {
            Map<Integer, Pooled> byHollow = new HashMap<>();
            after.pools().forEach(pool -> byHollow.put(pool.hollow(), pool));
            standing.add(byHollow);
        }
        double[] runsOver = new double[hollows.size()];
        for (Rain.Overflow overflow : Rain.overflows(hollows)) {
            runsOver[overflow.hollow()] = overflow.rain();
        }
        int[] worth = new int[hollows.size()];
        int[] deep = new int[hollows.size()];
        for (Hollow hollow : hollows.all()) {
            boolean counts =
                    hollow.depth() >= options.listed().depth()
                            && hollow.area() >= options.listed().area();
            int inner = 0;
            for (int part : hollow.parts()) {
                worth[hollow.number()] += worth[part];
                inner = Math.max(inner, deep[part]);
            }
            worth[hollow.number()] += counts ? 1 : 0;
            deep[hollow.number()] = inner + (counts ? 1 : 0);
        }
        List<LandWater.InSpot> found = new ArrayList<>();
        for (Pool pool : pools) {
            LowSpot spot = pool.spot();
            int cell = cells.at(spot.x(), spot.y());
            int innermost = cell < 0 ? Hollow.OUTSIDE : hollows.at(cell);
            int outermost = innermost;
            while (outermost >= 0 && !hollows.hollow(outermost).isOutermost()) {
                outermost = hollows.hollow(outermost).parent();
            }
            List<Double> depths = new ArrayList<>();
            for (Map<Integer, Pooled> step : standing) {
                depths.add(depth(hollows, step, innermost, cell));
            }
            double last = depths.isEmpty() ? 0 : depths.get(depths.size() - 1);
            found.add(
                    new LandWater.InSpot(
                            outermost < 0 ? 0 : Math.max(0, worth[outermost] - 1),
                            outermost < 0 ? 1 : Math.max(1, deep[outermost]),
                            holds(spot),
                            outermost < 0 ? Double.NaN : runsOver[outermost],
                            depths,
                            Double.isNaN(asked.soaks()) || asked.steps().isEmpty()
                                    ? Double.NaN
                                    : Rain.stands(last, asked.soaks())));
        }
        return found;
    }

    private double holds(LowSpot spot) {
        double error = options.wetting().heightError();
        double apart = Math.hypot(spot.spillX() - spot.x(), spot.spillY() - spot.y());
        return Double.isNaN(error) ? error : Hollow.holds(spot.depth(), apart, error, 0);
    }

    /** Depth of what stands over a cell in its hollow or in one that this has become a part of. */
    private static double depth(
            Hollows hollows, Map<Integer, Pooled> standing, int innermost, int cell) {
        for (int at = innermost; at >= 0; at = hollows.hollow(at).parent()) {
            Pooled pooled = standing.get(at);
            if (pooled != null) {
                return Math.max(0, pooled.level() - hollows.terrain().height(cell));
            }
        }
        return 0;
    }

    /** What crosses the border of a land, or the edge of the survey if no border is given. */
    LandWater.Border border(FlowGrid flow) {
        double enters = 0;
        double leaves = 0;
        int ways = 0;
        List<Integer> exits = new ArrayList<>();
        for (int cell = 0; cell < cells.count(); cell++) {
            if (Double.isNaN(flow.height(cell))) {
                continue;
            }
            int next = flow.next(cell);
            boolean from = within.get(cell);
            boolean to = next != FlowGrid.LEAVES && within.get(next);
            if (from == to) {
                continue;
            }
            if (to) {
                enters += flow.drained(cell);
                continue;
            }
            leaves += flow.drained(cell);
            ways += flow.drained(cell) >= options.flowArea() ? 1 : 0;
            exits.add(cell);
        }
        exits.sort(
                Comparator.comparingDouble((Integer cell) -> -flow.drained(cell))
                        .thenComparingInt(cell -> cell));
        List<LandWater.Exit> kept = exits(flow, exits.subList(0, Math.min(KEPT, exits.size())));
        if (kept.isEmpty()) {
            return LandWater.Border.NONE;
        }
        LandWater.Exit largest = kept.get(0);
        return new LandWater.Border(
                enters,
                leaves,
                ways,
                largest.x(),
                largest.y(),
                largest.drained(),
                largest.isLeast(),
                largest.way(),
                kept);
    }

    /** Ways out with the longest way of water to each that comes through no other of them. */
    private List<LandWater.Exit> exits(FlowGrid flow, List<Integer> at) {
        if (at.isEmpty()) {
            return List.of();
        }
        int[] places = new int[cells.count()];
        Arrays.fill(places, -1);
        for (int i = 0; i < at.size(); i++) {
            places[at.get(i)] = i;
        }
        List<FlowGrid.Gathered> gathered = flow.gathered(places, at.size());
        List<LandWater.Exit> exits = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            int cell = at.get(i);
            exits.add(
                    new LandWater.Exit(
                            cells.x(cell),
                            cells.y(cell),
                            flow.drained(cell),
                            flow.reachesRim(cell),
                            gathered.get(i).way()));
        }
        return exits;
    }
}
