package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Limit;
import lanewright.drainage.along.Limits;
import lanewright.drainage.pond.LowSpot;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** What low spots say about the lane. */
final class PoolFindings {

    /**
     * A pool that the lane holds back and that is this deep is treated as one behind a dam, m. Our
     * choice, well under what the law calls a dam: a child drowns in it, and a bank of lane fill is
     * not built to hold it.
     */
    static final double DAM_DEPTH = 0.9;

    /** The same for its volume, m³. Our choice. */
    static final double DAM_VOLUME = 1000;

    /** A pool this near to an end of the lane lies where its ditch stops, m. Our choice. */
    private static final double AT_END = 1;

    private PoolFindings() {}

    /**
     * What they say.
     *
     * @param length of the lane, m
     */
    static List<Finding> of(List<Pool> pools, Limits limits, double length) {
        List<Finding> findings = new ArrayList<>();
        for (Pool pool : pools) {
            Pool.Beside beside = pool.beside();
            LowSpot spot = pool.spot();
            if (beside == null) {
                if (pool.isMade()) {
                    findings.add(pastTheEnd(pool));
                }
                continue;
            }
            Where where = Where.beside(beside.station(), beside.offset()).at(spot.x(), spot.y());
            if (pool.isMade()) {
                findings.add(made(pool, beside, where, length));
                if (beside.zone() == Pool.Zone.GROUND
                        && (spot.depth() >= DAM_DEPTH || spot.volume() >= DAM_VOLUME)) {
                    findings.add(dam(spot, beside, where, limits));
                }
            } else if (beside.inLimits()) {
                findings.add(asBefore(pool, beside, where));
            }
        }
        return findings;
    }

    private static Finding pastTheEnd(Pool pool) {
        LowSpot spot = pool.spot();
        return Finding.of(
                "lane-dams-water",
                Level.LOOK,
                Topic.WATER,
                Where.map(spot.x(), spot.y()),
                Saying.of(
                        "Past an end of the lane water will stand that did not before, or deeper: up"
                                + " to {} over {}, {}, from at least {} of land.",
                        Quantity.depth(spot.depth()),
                        Quantity.area(spot.area()),
                        Quantity.volume(spot.volume()),
                        Quantity.land(pool.drained())),
                Saying.plain("Shape the ground there so that it runs off, or end the lane lower."));
    }

    private static Finding made(Pool pool, Pool.Beside beside, Where where, double length) {
        LowSpot spot = pool.spot();
        String code =
                switch (beside.zone()) {
                    case LANE -> "water-stands-on-lane";
                    case DITCH -> "water-stands-in-ditch";
                    case GROUND -> "lane-dams-water";
                };
        String what =
                switch (beside.zone()) {
                    case LANE -> "Water will stand on the lane at {}";
                    case DITCH ->
                            "Water will stand in the " + beside.side().word() + " ditch at {}";
                    case GROUND ->
                            "The lane holds back water on the " + beside.side().word() + " at {}";
                };
        String size = ", up to {} deep over {}: {}, from at least {} of land";
        String rest =
                pool.fate() == Pool.Fate.DEEPER
                        ? "; before the lane the hollow held {}."
                        : spot.atRim()
                                ? ". It reaches the edge of the survey: it may be deeper."
                                : ".";
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(beside.station()));
        quantities.add(Quantity.depth(spot.depth()));
        quantities.add(Quantity.area(spot.area()));
        quantities.add(Quantity.volume(spot.volume()));
        quantities.add(Quantity.land(pool.drained()));
        if (pool.fate() == Pool.Fate.DEEPER) {
            quantities.add(Quantity.volume(pool.volumeBefore()));
        }
        return new Finding(
                code,
                Level.LOOK,
                Topic.WATER,
                where,
                new Saying(what + size + rest, quantities),
                Quantity.depth(spot.depth()),
                null,
                "",
                way(pool, beside, length));
    }

    private static Saying way(Pool pool, Pool.Beside beside, double length) {
        CulvertLine culvert = pool.culvert();
        if (beside.zone() == Pool.Zone.DITCH && beside.station() < AT_END) {
            return Saying.plain(
                    "The ditch ends against the ground where the lane leaves the road. Turn its"
                            + " water out sideways before, or lead it into the road's own ditch,"
                            + " with the road owner's leave only.");
        }
        if (beside.zone() == Pool.Zone.DITCH && beside.station() > length - AT_END) {
            return Saying.plain(
                    "The ditch ends against the ground at the end of the lane. Dig it on past the"
                            + " end until its bottom comes out on lower ground, or turn it out"
                            + " sideways before.");
        }
        if (beside.zone() == Pool.Zone.LANE || culvert == null) {
            return Saying.plain(
                    "Give the lane a cross slope and a grade that lead the water off here.");
        }
        String or =
                beside.zone() == Pool.Zone.DITCH
                        ? ", or lead the ditch on to lower ground."
                        : ", or move the grade or the line.";
        if (!culvert.falls()) {
            return Saying.of(
                    "Across the lane the ground is not lower at {}, so a pipe there would not fall."
                            + " Lead the water on along the lane"
                            + or,
                    Quantity.station(culvert.station()));
        }
        return Saying.of(
                "Let it through by a pipe of about {} under the lane at {}, its bottom at the low"
                        + " ground"
                        + or
                        + " How wide a pipe is not worked out here.",
                Quantity.length(culvert.length()),
                Quantity.station(culvert.station()));
    }

    private static Finding dam(LowSpot spot, Pool.Beside beside, Where where, Limits limits) {
        Limit height = limits.damHeight();
        boolean large = spot.depth() > height.value() || spot.volume() > limits.damVolume().value();
        return new Finding(
                "lane-is-a-dam",
                large ? Level.STOP : Level.LOOK,
                Topic.WATER,
                where,
                Saying.of(
                        "At {} the lane stands as a dam, with {} of water up to {} deep behind it."
                                + " Lane fill is not built to hold water: it can soak, slide and"
                                + " let go at once.",
                        Quantity.station(beside.station()),
                        Quantity.volume(spot.volume()),
                        Quantity.depth(spot.depth())),
                Quantity.depth(spot.depth()),
                Quantity.height(height.value()),
                height.source(),
                Saying.plain(
                        "Do not build it so. Let the water through, or have a licensed engineer"
                                + " design it, and ask the state's dam office: states set their own"
                                + " limits, often lower than the federal one, and a house or a road"
                                + " below makes any dam dangerous."));
    }

    private static Finding asBefore(Pool pool, Pool.Beside beside, Where where) {
        LowSpot spot = pool.spot();
        return Finding.of(
                "lane-in-low-spot",
                Level.NOTE,
                Topic.WATER,
                where,
                Saying.of(
                        "The work reaches into a low spot of the ground at {}: it fills up to {}"
                                + " deep over {}, "
                                + pool.fate().words()
                                + (spot.atRim()
                                        ? ", and runs on beyond the survey, so it may be more."
                                        : "."),
                        Quantity.station(beside.station()),
                        Quantity.depth(spot.depth()),
                        Quantity.area(spot.area())),
                Saying.plain(
                        "Look at it after rain. Ground that stays wet may be a wetland: ask before"
                                + " filling it."));
    }
}
