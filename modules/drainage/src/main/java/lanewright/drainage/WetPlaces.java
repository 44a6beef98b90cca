package lanewright.drainage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.drainage.pond.LowSpot;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * Joins what the checks found into one list of wet places.
 *
 * <p>Standing water comes first, since it was measured. A ditch that ends in it, an edge of the
 * lane that only such a ditch keeps dry, a watercourse that runs into it and the lane's low point
 * beside it are told with it. What is left then makes places of its own, joined in the same way.
 */
final class WetPlaces {

    /** A watercourse this near to a place comes to it, m. Our choice: it wanders. */
    private static final double NEAR = 10;

    /** Stretches shorter than this are told as a single place, m. Our choice: a stride. */
    private static final double SINGLE = 0.5;

    private final Lane lane;
    private final WetWords words;
    private final Cures cures;
    private final List<WetDraft> drafts = new ArrayList<>();

    WetPlaces(
            Lane lane,
            Limits limits,
            List<Pool> pools,
            List<DitchReach> ditches,
            ServingPipes pipes) {
        this.lane = lane;
        words = new WetWords(lane, limits, ditches);
        cures = new Cures(lane, limits, ditches, pipes);
        for (Pool pool : pools) {
            Pool.Beside beside = pool.beside();
            if (pool.isMade() || (beside != null && beside.inLimits())) {
                drafts.add(standing(pool, beside));
            }
        }
    }

    /** The list, in station order. */
    List<WetPlace> of(List<WetStretch> stretches, List<Inflow> inflows, RoadEnd roadEnd) {
        for (WetStretch stretch : stretches) {
            join(stretch);
        }
        RoadEnd.RoadDitch ditch = roadEnd.ditch();
        if (ditch != null && ditch.pipe() == null) {
            roadDitch(ditch);
        }
        for (Inflow inflow : inflows) {
            join(inflow);
        }
        // Those off the ends have no station: NaN goes last.
        drafts.sort(
                Comparator.comparingDouble((WetDraft draft) -> Math.rint(draft.station / SINGLE))
                        .thenComparingInt(draft -> draft.side == Side.RIGHT ? 1 : 0)
                        .thenComparing(draft -> draft.kind));
        List<WetPlace> places = new ArrayList<>();
        for (WetDraft draft : drafts) {
            places.add(place(draft, places.size() + 1));
        }
        return places;
    }

    private static WetPlace place(WetDraft draft, int number) {
        boolean single = !(draft.to - draft.from > SINGLE);
        Where where =
                Double.isNaN(draft.station)
                        ? Where.map(draft.x, draft.y)
                        : (single
                                        ? Where.station(draft.station)
                                        : Where.stretch(draft.from, draft.to))
                                .at(draft.x, draft.y);
        Saying says = WetWords.after("W" + number + ":", WetWords.then(draft.says, draft.last));
        return new WetPlace(
                number,
                draft.kind,
                draft.side,
                draft.station,
                draft.from,
                draft.to,
                draft.x,
                draft.y,
                draft.depth,
                draft.pool,
                draft.drained,
                draft.isLeast,
                draft.pipe,
                draft.fit,
                new Finding(
                        draft.code,
                        draft.level,
                        Topic.WATER,
                        where,
                        says,
                        draft.measured,
                        draft.limit == null ? null : draft.limitShown(),
                        draft.limit == null ? "" : draft.limit.source(),
                        draft.remedy),
                draft.cure);
    }

    private WetDraft standing(Pool pool, Pool.@Nullable Beside beside) {
        LowSpot spot = pool.spot();
        var draft = new WetDraft(spot.x(), spot.y());
        draft.depth = spot.depth();
        draft.pool = pool;
        draft.measured = Quantity.depth(spot.depth());
        draft.drained = pool.drained();
        draft.isLeast = pool.isLeast();
        if (beside == null) {
            draft.kind = WetPlace.Kind.DAMMED;
            draft.code = "lane-dams-water";
            draft.says = words.pastTheEnd(pool);
            draft.cure =
                    Cure.of(
                            Cure.Kind.SHAPE,
                            Saying.plain("shape the ground there so that it runs off"));
            draft.remedy = WetWords.todo(draft.cure);
            return draft;
        }
        draft.side = beside.zone() == Pool.Zone.LANE ? null : beside.side();
        draft.station = beside.station();
        draft.from = Math.min(beside.from(), beside.station());
        draft.to = Math.max(beside.to(), beside.station());
        if (!pool.isMade()) {
            draft.kind = WetPlace.Kind.HOLLOW;
            draft.code = "lane-in-low-spot";
            draft.level = Level.NOTE;
            draft.says = words.hollow(pool, beside);
            draft.remedy =
                    WetWords.then(
                            WetWords.todo(draft.cure),
                            Saying.plain(
                                    "Ground that stays wet may be a wetland: ask before filling"
                                            + " it."));
            return draft;
        }
        draft.kind =
                switch (beside.zone()) {
                    case LANE -> WetPlace.Kind.ON_LANE;
                    case DITCH -> WetPlace.Kind.DITCH;
                    case GROUND -> WetPlace.Kind.DAMMED;
                };
        boolean dam = WetWords.isDam(pool);
        draft.code =
                switch (beside.zone()) {
                    case LANE -> "water-stands-on-lane";
                    case DITCH -> "water-stands-in-ditch";
                    case GROUND -> dam ? "lane-is-a-dam" : "lane-dams-water";
                };
        draft.level = dam ? Level.STOP : Level.LOOK;
        draft.says = words.made(pool, beside);
        draft.last = dam ? WetWords.DAM : Saying.plain("");
        draft.cure = cures.standing(pool, beside);
        if (draft.cure.kind() == Cure.Kind.PIPED) {
            draft.remedy = words.left(pool, draft.cure);
            return draft;
        }
        draft.pipe = pool.culvert() == null ? pool.across() : pool.culvert();
        draft.fit = words.fit(draft.pipe);
        draft.remedy = words.remedy(pool, beside, draft.cure);
        return draft;
    }

    private void join(WetStretch stretch) {
        for (WetDraft draft : drafts) {
            if (draft.takes(stretch)) {
                draft.join(stretch);
                return;
            }
        }
        DitchReach.Outlet outlet = stretch.outlet();
        DitchReach.Outlet end = stretch.kind() == WetStretch.Kind.DEAD_END ? outlet : null;
        double offset = offset(stretch);
        var place = new Place(stretch.from(), offset);
        LaneLine line = lane.line();
        var draft =
                end != null
                        ? new WetDraft(end.x(), end.y())
                        : new WetDraft(line.x(place), line.y(place));
        draft.kind =
                switch (stretch.kind()) {
                    case DEAD_END -> WetPlace.Kind.DITCH;
                    case LEVEL -> WetPlace.Kind.LEVEL_DITCH;
                    case EDGE, TROUGH -> WetPlace.Kind.EDGE;
                    case SAG -> WetPlace.Kind.LOW_POINT;
                };
        draft.code = stretch.kind().code();
        draft.side = stretch.side();
        draft.station = stretch.from();
        draft.from = stretch.from();
        draft.to = stretch.to();
        draft.outlet = stretch.kind() == WetStretch.Kind.LEVEL ? null : outlet;
        draft.says = stretch.says();
        draft.measured = stretch.measured();
        draft.limit = stretch.limit();
        draft.cure = cures.along(stretch);
        draft.remedy = words.remedy(draft.cure);
        drafts.add(draft);
    }

    /** Where a stretch begins on the map: the ditch, the edge, or the lane's own line. */
    private double offset(WetStretch stretch) {
        Side side = stretch.side();
        if (side == null) {
            return 0;
        }
        Section nearest = lane.sections().get(0);
        for (Section section : lane.sections()) {
            if (Math.abs(section.station() - stretch.from())
                    < Math.abs(nearest.station() - stretch.from())) {
                nearest = section;
            }
        }
        var ditch = side.of(nearest).ditchInner();
        return stretch.kind() == WetStretch.Kind.LEVEL && ditch != null
                ? ditch.offset()
                : side.of(nearest).edge().offset();
    }

    private void roadDitch(RoadEnd.RoadDitch ditch) {
        for (WetDraft draft : drafts) {
            if (draft.pool != null && draft.pool.spot().covers(ditch.x(), ditch.y())) {
                draft.add(Saying.plain("The road's own ditch runs into it."));
                draft.remedy =
                        WetWords.then(
                                draft.remedy,
                                Saying.plain(
                                        "Ask the road's owner first: the road's water must pass"
                                                + " under the lane."));
                return;
            }
        }
        var draft = new WetDraft(ditch.x(), ditch.y());
        draft.kind = WetPlace.Kind.ROAD_DITCH;
        draft.code = "road-ditch";
        draft.station = ditch.station();
        draft.from = ditch.station();
        draft.to = ditch.station();
        draft.depth = ditch.depth();
        draft.measured = Quantity.depth(ditch.depth());
        draft.pipe = ditch.entrance();
        draft.fit = words.fit(draft.pipe);
        draft.cure = cures.entrance(ditch);
        draft.says =
                Saying.of(
                        "At {} the lane crosses a low line {} deep by the road: it looks like the"
                                + " road's own ditch. Its water must pass under the lane.",
                        Quantity.station(ditch.station()),
                        Quantity.depth(ditch.depth()));
        draft.remedy = words.entrance(ditch.entrance(), draft.cure);
        drafts.add(draft);
    }

    private void join(Inflow inflow) {
        for (WetDraft draft : drafts) {
            boolean sameSide = draft.side == null || draft.side == inflow.side();
            if (sameSide
                    && inflow.station() >= draft.from - NEAR
                    && inflow.station() <= draft.to + NEAR) {
                if (draft.pool == null) {
                    draft.add(
                            Saying.of(
                                    "A watercourse comes in there. It drains {}"
                                            + (inflow.isLeast() ? WetWords.OR_MORE : "."),
                                    WetWords.land(inflow.drained())));
                    draft.drained = inflow.drained();
                    draft.isLeast = inflow.isLeast();
                } else {
                    draft.add(Saying.plain("A watercourse runs into it."));
                }
                return;
            }
        }
        var draft = new WetDraft(inflow.x(), inflow.y());
        draft.kind = WetPlace.Kind.WATERCOURSE;
        draft.code = "water-meets-lane";
        draft.side = inflow.side();
        draft.station = inflow.station();
        draft.from = inflow.station();
        draft.to = inflow.station();
        draft.drained = inflow.drained();
        draft.isLeast = inflow.isLeast();
        draft.says =
                Saying.of(
                        "A watercourse meets the lane from the "
                                + inflow.side().word()
                                + " at {}. None of its water stands there. It drains {}"
                                + (inflow.isLeast() ? WetWords.OR_MORE : "."),
                        Quantity.station(inflow.station()),
                        WetWords.land(inflow.drained()));
        draft.cure = cures.watercourse(inflow);
        draft.level = draft.cure.kind() == Cure.Kind.PIPED ? Level.NOTE : Level.LOOK;
        draft.remedy = words.remedy(draft.cure);
        drafts.add(draft);
    }
}
