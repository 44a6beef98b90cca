package lanewright.drainage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Side;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.Trace;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.shape.TypicalSection;
import org.jspecify.annotations.Nullable;

/**
 * Low spots after the lane is built against those before.
 *
 * <p>A low spot of the finished surface is matched with every low spot of the ground whose deepest
 * point it covers or whose water covers its own deepest point. Its level and volume against theirs
 * tell its fate.
 */
final class Pools {

    /** Levels closer than this are equal, m: the depth under which a pool is rounding. */
    private static final double SAME_LEVEL = 0.001;

    /** Volumes within this part of each other are equal. Our choice: far finer than any survey. */
    private static final double SAME_VOLUME = 0.01;

    /** Places along the lane closer than this are one, m. Our choice: a stride. */
    private static final double ONE_PLACE = 0.5;

    /** So far up a ditch a pipe is looked for that would take its water, m. Our choice. */
    private static final double UP_THE_DITCH = 30;

    private final Lane lane;
    private final Corridor corridor;
    private final Limits limits;
    private final List<LowSpot> before;
    private final List<LowSpot> after;
    private final boolean[] seen;

    Pools(Lane lane, Corridor corridor, Limits limits, List<LowSpot> before, List<LowSpot> after) {
        this.lane = lane;
        this.limits = limits;
        this.corridor = corridor;
        this.before = before;
        this.after = after;
        seen = new boolean[before.size()];
    }

    /** Low spots of the finished surface, in the order given. */
    List<Pool> finished(List<FlowGrid.Drained> drained) {
        List<Pool> pools = new ArrayList<>();
        Box[] boxes = before.stream().map(Box::of).toArray(Box[]::new);
        for (int i = 0; i < after.size(); i++) {
            LowSpot spot = after.get(i);
            Box box = Box.of(spot);
            double volume = 0;
            double level = Double.NEGATIVE_INFINITY;
            for (int b = 0; b < boxes.length; b++) {
                LowSpot old = before.get(b);
                if (box.meets(boxes[b])
                        && (spot.covers(old.x(), old.y()) || old.covers(spot.x(), spot.y()))) {
                    seen[b] = true;
                    volume += old.volume();
                    level = Math.max(level, old.level());
                }
            }
            Pool.Fate fate = fate(spot, volume, level);
            Pool.Beside beside = beside(spot);
            boolean made = fate == Pool.Fate.NEW || fate == Pool.Fate.DEEPER;
            CulvertLine across = made && beside != null ? across(spot, beside) : null;
            pools.add(
                    new Pool(
                            spot,
                            fate,
                            drained.get(i).area(),
                            drained.get(i).isLeast(),
                            volume,
                            beside,
                            spill(spot),
                            across,
                            beside == null || across == null
                                    ? null
                                    : culvert(across, spot, beside)));
        }
        return pools;
    }

    /**
     * The same with what the lane holds back against the rim of the survey, from searches with the
     * rim closed but for its exits. Such a pool stands for the smaller one that an open rim shows.
     *
     * @param shown the low spots of the finished surface with the rim open
     * @param held low spots with the rim closed, of the ground and of the finished surface
     * @param drained what drains to each of the finished surface's
     * @param blocked whether water on the ground as it is took its way across the lane from a place
     */
    static List<Pool> withHeld(
            List<Pool> shown,
            Pools held,
            List<FlowGrid.Drained> drained,
            Predicate<LowSpot> blocked) {
        List<Pool> together = new ArrayList<>(shown);
        for (Pool pool : held.finished(drained)) {
            LowSpot spot = pool.spot();
            Pool.Beside beside = pool.beside();
            if (!pool.isMade()
                    || !spot.atRim()
                    || beside == null
                    || !beside.inLimits()
                    || !blocked.test(spot)) {
                continue;
            }
            boolean higher = true;
            for (Pool other : shown) {
                higher &= !covers(spot, other) || other.spot().level() < spot.level();
            }
            if (higher) {
                together.removeIf(other -> covers(spot, other));
                together.add(pool);
            }
        }
        together.sort(Comparator.comparingDouble(pool -> pool.spot().level()));
        return together;
    }

    private static boolean covers(LowSpot spot, Pool other) {
        return spot.covers(other.spot().x(), other.spot().y())
                || other.spot().covers(spot.x(), spot.y());
    }

    /** Low spots of the ground that no low spot of the finished surface took over. */
    List<Pool> gone(List<FlowGrid.Drained> drained) {
        List<Pool> pools = new ArrayList<>();
        for (int b = 0; b < before.size(); b++) {
            if (!seen[b]) {
                LowSpot spot = before.get(b);
                pools.add(asItIs(spot, Pool.Fate.GONE, drained.get(b)));
            }
        }
        return pools;
    }

    /** Low spots of the ground as it is. */
    List<Pool> asTheyAre(List<FlowGrid.Drained> drained) {
        List<Pool> pools = new ArrayList<>();
        for (int b = 0; b < before.size(); b++) {
            pools.add(asItIs(before.get(b), Pool.Fate.AS_BEFORE, drained.get(b)));
        }
        return pools;
    }

    private Pool asItIs(LowSpot spot, Pool.Fate fate, FlowGrid.Drained drained) {
        return new Pool(
                spot,
                fate,
                drained.area(),
                drained.isLeast(),
                spot.volume(),
                beside(spot),
                spill(spot),
                null,
                null);
    }

    private Pool.Spill spill(LowSpot spot) {
        return spot.spillPipe() >= 0
                ? spillBy(Pool.SpillWay.PIPE, corridor.place(spot.spillX(), spot.spillY()))
                : spill(spot.spillX(), spot.spillY(), spot.atRim());
    }

    /**
     * What water runs over at a place.
     *
     * @param atRim whether it leaves the survey there
     */
    Pool.Spill spill(double x, double y, boolean atRim) {
        Place over = corridor.place(x, y);
        Pool.SpillWay way =
                over != null && corridor.onTop(over)
                        ? Pool.SpillWay.LANE
                        : atRim
                                ? Pool.SpillWay.RIM
                                : over == null
                                        ? Pool.SpillWay.END
                                        : corridor.zone(over) == Pool.Zone.DITCH
                                                ? Pool.SpillWay.DITCH
                                                : Pool.SpillWay.BESIDE;
        return spillBy(way, over);
    }

    private static Pool.Spill spillBy(Pool.SpillWay way, @Nullable Place over) {
        double station = over == null ? Double.NaN : over.station();
        Side side = over == null ? Side.RIGHT : Side.at(over.offset());
        return new Pool.Spill(way, station, side);
    }

    private static Pool.Fate fate(LowSpot spot, double volumeBefore, double levelBefore) {
        if (levelBefore == Double.NEGATIVE_INFINITY) {
            return Pool.Fate.NEW;
        }
        double more = spot.volume() - volumeBefore;
        if (spot.level() > levelBefore + SAME_LEVEL || more > SAME_VOLUME * volumeBefore) {
            return Pool.Fate.DEEPER;
        }
        return spot.level() < levelBefore - SAME_LEVEL || more < -SAME_VOLUME * volumeBefore
                ? Pool.Fate.LESS
                : Pool.Fate.AS_BEFORE;
    }

    /** Where a low spot lies along the lane, or null off its ends. */
    Pool.@Nullable Beside beside(LowSpot spot) {
        Place deepest = corridor.place(spot.x(), spot.y());
        if (deepest == null) {
            deepest = nearestOfEdge(spot); // it lies past an end of the lane
        }
        if (deepest == null) {
            return null;
        }
        double from = deepest.station();
        double to = from;
        double leftmost = deepest.offset();
        double rightmost = leftmost;
        boolean inLimits = corridor.holds(deepest);
        for (Trace ring : spot.outline()) {
            for (int i = 0; i < ring.size(); i++) {
                Place at = corridor.place(ring.x(i), ring.y(i));
                if (at != null) {
                    from = Math.min(from, at.station());
                    to = Math.max(to, at.station());
                    leftmost = Math.min(leftmost, at.offset());
                    rightmost = Math.max(rightmost, at.offset());
                    inLimits |= corridor.holds(at);
                }
            }
        }
        double station = deepest.station();
        for (double low : lane.lows()) {
            // So near the lane's own low point the two are one place, and it has one station.
            if (Math.abs(low - station) <= ONE_PLACE) {
                station = low;
            }
        }
        return new Pool.Beside(
                station,
                deepest.offset(),
                from,
                to,
                leftmost,
                rightmost,
                inLimits,
                corridor.zone(deepest));
    }

    private @Nullable Place nearestOfEdge(LowSpot spot) {
        Place nearest = null;
        for (Trace ring : spot.outline()) {
            for (int i = 0; i < ring.size(); i++) {
                Place at = corridor.place(ring.x(i), ring.y(i));
                if (at != null
                        && (nearest == null
                                || Math.abs(at.offset()) < Math.abs(nearest.offset()))) {
                    nearest = at;
                }
            }
        }
        return nearest;
    }

    /** A pipe helps where water stands beside the lane, not on it. */
    private @Nullable CulvertLine across(LowSpot spot, Pool.Beside beside) {
        return beside.zone() == Pool.Zone.LANE
                ? null
                : under(lane.sectionAt().apply(beside.station()), beside.side(), spot.bottom());
    }

    private CulvertLine under(Section section, Side side, double bottom) {
        TypicalSection typical = lane.typical().apply(section.station());
        double here = side == Side.LEFT ? typical.left().foreslope() : typical.right().foreslope();
        double there = side == Side.LEFT ? typical.right().foreslope() : typical.left().foreslope();
        return CulvertLine.under(section, side, bottom, here, there);
    }

    private @Nullable CulvertLine culvert(CulvertLine across, LowSpot spot, Pool.Beside beside) {
        boolean falls = across.grade() >= limits.ditchLeast().value();
        if (!falls && beside.zone() == Pool.Zone.DITCH) {
            CulvertLine up = upTheDitch(spot, beside);
            if (up != null) {
                return up;
            }
        }
        return across.falls() ? across : null;
    }

    /**
     * The nearest pipe up the ditch from the water that falls enough, one with room for its earth
     * before others, or null.
     */
    private @Nullable CulvertLine upTheDitch(LowSpot spot, Pool.Beside beside) {
        CulvertLine best = null;
        for (Section section : lane.sections()) {
            Corner ditch = beside.side().of(section).ditchInner();
            if (Math.abs(section.station() - beside.station()) > UP_THE_DITCH
                    || ditch == null
                    || ditch.height() < spot.bottom()
                    || !ditched(section.station(), beside)) {
                continue;
            }
            CulvertLine pipe = under(section, beside.side(), ditch.height());
            if (pipe.grade() >= limits.ditchLeast().value()
                    && (best == null || isBetter(pipe, best, beside.station()))) {
                best = pipe;
            }
        }
        return best;
    }

    private boolean isBetter(CulvertLine pipe, CulvertLine best, double station) {
        return hasRoom(pipe) == hasRoom(best)
                ? Math.abs(pipe.station() - station) < Math.abs(best.station() - station)
                : hasRoom(pipe);
    }

    private boolean hasRoom(CulvertLine pipe) {
        return pipe.room() >= limits.pipeRoom().value() - SAME_LEVEL;
    }

    /** Whether a ditch runs without a break from a station to the water. */
    private boolean ditched(double station, Pool.Beside beside) {
        double from = Math.min(station, beside.station());
        double to = Math.max(station, beside.station());
        return lane.sections().stream()
                .filter(section -> section.station() >= from && section.station() <= to)
                .allMatch(section -> beside.side().of(section).ditchInner() != null);
    }

    /** The rectangle around a low spot. */
    private record Box(double west, double south, double east, double north) {
        static Box of(LowSpot spot) {
            double west = spot.x();
            double east = west;
            double south = spot.y();
            double north = south;
            for (Trace ring : spot.outline()) {
                for (int i = 0; i < ring.size(); i++) {
                    west = Math.min(west, ring.x(i));
                    east = Math.max(east, ring.x(i));
                    south = Math.min(south, ring.y(i));
                    north = Math.max(north, ring.y(i));
                }
            }
            return new Box(west, south, east, north);
        }

        boolean meets(Box other) {
            return west <= other.east
                    && other.west <= east
                    && south <= other.north
                    && other.south <= north;
        }
    }
}
