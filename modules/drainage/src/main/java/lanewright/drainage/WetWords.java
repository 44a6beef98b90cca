package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.drainage.pond.LowSpot;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/** What is said of a wet place, and what to do about it. */
final class WetWords {

    /**
     * A pool that the lane holds back and that is this deep is treated as one behind a dam, m. Our
     * choice, well under what the law calls a dam: a child drowns in it, and a bank of lane fill is
     * not built to hold it.
     */
    static final double DAM_DEPTH = 0.9;

    /** The same for its volume, m³. Our choice. */
    static final double DAM_VOLUME = 1000;

    /** Why an area of land may be more, to follow it and end the sentence. */
    static final String OR_MORE = " or more: the survey ends before the top of that land.";

    /** What a pool that is treated as one behind a dam can do. */
    static final Saying DAM =
            Saying.plain(
                    "So the lane stands as a dam. Lane fill is not built to hold water: it can soak,"
                            + " slide and give way all at once.");

    /** Land smaller than this is told as an area, m²: a tenth of an acre. */
    private static final double SMALL_LAND = 404.68564224;

    /** Heights closer than this are equal, m. */
    private static final double SAME = 0.001;

    /** Lower ground is worth a slanted pipe from this much on, m. Our choice. */
    private static final double WORTH = 0.1;

    /** Water this near to an end of the lane lies where its ditch stops, m. Our choice. */
    private static final double AT_END = 1;

    private final Lane lane;
    private final Limits limits;
    private final List<DitchReach> ditches;

    WetWords(Lane lane, Limits limits, List<DitchReach> ditches) {
        this.lane = lane;
        this.limits = limits;
        this.ditches = ditches;
    }

    /** Whether the lane would hold this water back as a dam does. */
    static boolean isDam(Pool pool) {
        Pool.Beside beside = pool.beside();
        return pool.isMade()
                && beside != null
                && beside.zone() == Pool.Zone.GROUND
                && (pool.spot().depth() >= DAM_DEPTH || pool.spot().volume() >= DAM_VOLUME);
    }

    /** A name, then a sentence. */
    static Saying after(String name, Saying says) {
        return new Saying(name + " " + says.pattern(), says.quantities());
    }

    /** A sentence, then another. */
    static Saying then(Saying first, Saying second) {
        if (second.pattern().isEmpty()) {
            return first;
        }
        List<Quantity> quantities = new ArrayList<>(first.quantities());
        quantities.addAll(second.quantities());
        String between = first.pattern().isEmpty() ? "" : " ";
        return new Saying(first.pattern() + between + second.pattern(), quantities);
    }

    /** An area of land, small ones as plain areas. */
    static Quantity land(double area) {
        return area < SMALL_LAND ? Quantity.area(area) : Quantity.land(area);
    }

    Saying pastTheEnd(Pool pool) {
        LowSpot spot = pool.spot();
        Saying says =
                Saying.of(
                        "Past an end of the lane water will stand that did not before, or deeper: up"
                                + " to {} over {}, {} in all.",
                        Quantity.depth(spot.depth()),
                        Quantity.area(spot.area()),
                        Quantity.volume(spot.volume()));
        return then(says, then(drains(pool), runsOver(pool)));
    }

    Saying hollow(Pool pool, Pool.Beside beside) {
        LowSpot spot = pool.spot();
        return Saying.of(
                "The work reaches into a hollow of the ground at {}: it fills up to {} deep over {}, "
                        + pool.fate().words()
                        + (spot.atRim()
                                ? ", and runs on beyond the survey, so it may be more."
                                : "."),
                Quantity.station(beside.station()),
                Quantity.depth(spot.depth()),
                Quantity.area(spot.area()));
    }

    Saying made(Pool pool, Pool.Beside beside) {
        LowSpot spot = pool.spot();
        String what =
                switch (beside.zone()) {
                    case LANE -> "Water will stand on the lane from {} to {}";
                    case DITCH ->
                            "Water will stand in the "
                                    + beside.side().word()
                                    + " ditch from {} to {}";
                    case GROUND ->
                            "The lane dams a pool on the "
                                    + beside.side().word()
                                    + " from {} to {}";
                };
        Saying says =
                Saying.of(
                        what + ": when full, {} deep at {}, over {}, {} of water.",
                        Quantity.station(Math.min(beside.from(), beside.station())),
                        Quantity.station(Math.max(beside.to(), beside.station())),
                        Quantity.depth(spot.depth()),
                        Quantity.station(beside.station()),
                        Quantity.area(spot.area()),
                        Quantity.volume(spot.volume()));
        if (pool.fate() == Pool.Fate.DEEPER) {
            says =
                    then(
                            says,
                            Saying.of(
                                    "Before the lane the hollow held {}.",
                                    Quantity.volume(pool.volumeBefore())));
        }
        says = then(says, runsOver(pool));
        says = then(says, drains(pool));
        says = then(says, endingIn(pool));
        says = then(says, baseInWater(pool, beside));
        return says;
    }

    private static Saying runsOver(Pool pool) {
        Saying way = pool.spill().words();
        List<Quantity> quantities = new ArrayList<>(way.quantities());
        quantities.add(Quantity.height(pool.spot().level()));
        return new Saying("Then it runs " + way.pattern() + ", at height {}.", quantities);
    }

    private static Saying drains(Pool pool) {
        return Saying.of(
                "It takes the water of {}" + (pool.isLeast() ? OR_MORE : "."),
                land(pool.drained()));
    }

    /** The ditches that end in the water. */
    private Saying endingIn(Pool pool) {
        Saying says = Saying.plain("");
        for (DitchReach ditch : ditches) {
            for (DitchReach.Outlet outlet : ditch.outlets()) {
                if (ditch.standsIn(outlet, (x, y) -> pool.spot().covers(x, y))) {
                    double[] sheds = ditch.sheds(outlet);
                    says =
                            then(
                                    says,
                                    Saying.of(
                                            "The "
                                                    + ditch.side().word()
                                                    + " ditch from {} to {} ends in it and has no"
                                                    + " outlet.",
                                            Quantity.station(sheds[0]),
                                            Quantity.station(sheds[1])));
                }
            }
        }
        return says;
    }

    /** Where the water is deeper than the ditch, and stands in the stone. */
    private Saying baseInWater(Pool pool, Pool.Beside beside) {
        if (beside.zone() == Pool.Zone.LANE) {
            return Saying.plain("");
        }
        double from = Double.NaN;
        double to = Double.NaN;
        double deepest = 0;
        for (Section section : lane.sections()) {
            Corner low = beside.side().of(section).stoneLow();
            if (low.height() < pool.spot().level() - SAME && covers(pool, section, low)) {
                from = Double.isNaN(from) ? section.station() : from;
                to = section.station();
                deepest = Math.max(deepest, pool.spot().level() - low.height());
            }
        }
        if (Double.isNaN(from)) {
            return Saying.plain("");
        }
        boolean ditch = beside.zone() == Pool.Zone.DITCH;
        String deeper = ditch ? "The water is deeper than the ditch: the" : "The";
        return to - from > SAME
                ? Saying.of(
                        deeper + " stone then stands up to {} deep in water from {} to {}.",
                        Quantity.depth(deepest),
                        Quantity.station(from),
                        Quantity.station(to))
                : Saying.of(
                        deeper + " stone then stands up to {} deep in water at {}.",
                        Quantity.depth(deepest),
                        Quantity.station(from));
    }

    private boolean covers(Pool pool, Section section, Corner corner) {
        LaneLine line = lane.line();
        double inward = section.station() > line.length() / 2 ? -INWARD : INWARD;
        var place = new Place(section.station() + inward, corner.offset());
        return pool.spot().covers(line.x(place), line.y(place));
    }

    /** Asked this far in from a section, for the water's edge runs along the lane's ends, m. */
    private static final double INWARD = 0.01;

    Saying remedy(Pool pool, Pool.Beside beside) {
        CulvertLine across = pool.across();
        if (beside.zone() == Pool.Zone.LANE || across == null) {
            return Saying.plain(
                    "Give the lane a cross slope and a grade that lead the water off here.");
        }
        Saying says = Saying.plain("");
        if (isDam(pool)) {
            says = Saying.plain("Do not build it so.");
        }
        CulvertLine pipe = pool.culvert();
        if (beside.zone() == Pool.Zone.DITCH && beside.station() < AT_END) {
            says =
                    Saying.plain(
                            "The ditch ends against the ground where the lane leaves the road. Its"
                                    + " water may go into the road's own ditch only with the leave"
                                    + " of the road's owner.");
        }
        if (pipe == null) {
            says = then(says, leadOn(across, pool, beside));
        } else {
            if (pipe.station() != across.station()) {
                says = then(says, Saying.plain("No pipe straight across would drain it:"));
                says = then(says, why(across));
                says =
                        then(
                                says,
                                Saying.of(
                                        "Take the ditch's water across before it gets there, at {}."
                                                + " Lead on what gathers below that place.",
                                        Quantity.station(pipe.station())));
            }
            says = then(says, laid(pipe));
            says = then(says, slanted(pipe, pool, beside));
        }
        if (isDam(pool)) {
            says = then(says, damLaw(pool));
        }
        return says;
    }

    private static Saying why(CulvertLine across) {
        return across.falls()
                ? Saying.of(
                        "it would fall only {} in {}.",
                        Quantity.depth(across.fall()),
                        Quantity.length(across.length()))
                : Saying.plain("the ground across the lane is not lower.");
    }

    private Saying leadOn(CulvertLine across, Pool pool, Pool.Beside beside) {
        Quantity at = Quantity.station(across.station());
        Quantity bottom = Quantity.height(pool.spot().bottom());
        String no = "A pipe would not drain it: across the lane at {} the ground is not lower. ";
        if (beside.zone() != Pool.Zone.DITCH) {
            return Saying.of(
                    no
                            + "Lead the water on along the lane to ground lower than {}, the bottom"
                            + " of the water, or fill the hollow with earth.",
                    at,
                    bottom);
        }
        if (beside.station() > lane.line().length() - AT_END) {
            return Saying.of(
                    no
                            + "The ditch ends against the ground at the end of the lane: dig it on"
                            + " past the end until its bottom comes out on ground lower than {}, or"
                            + " turn it out sideways before.",
                    at,
                    bottom);
        }
        return Saying.of(
                no + "Lead the ditch on to ground lower than {}, the bottom of the water.",
                at,
                bottom);
    }

    /** How a pipe lies. */
    private Saying laid(CulvertLine pipe) {
        Saying says =
                Saying.of(
                        "Lay a pipe of about {} under the lane at {}: from {} at its inlet to {} at"
                                + " its outlet it falls {} ({}), and the lane's edge stands {} above"
                                + " its bottom.",
                        Quantity.length(pipe.length()),
                        Quantity.station(pipe.station()),
                        Quantity.height(pipe.inlet().height()),
                        Quantity.height(pipe.outlet().height()),
                        Quantity.depth(pipe.fall()),
                        Quantity.grade(pipe.grade()),
                        Quantity.depth(pipe.room()));
        double least = limits.ditchLeast().value();
        if (pipe.grade() < least) {
            says =
                    then(
                            says,
                            Saying.of(
                                    "That fall is less than {}: it will silt up.",
                                    Quantity.grade(least)));
        }
        return then(then(says, room(pipe)), Saying.plain("How wide it must be is sized later."));
    }

    private Saying room(CulvertLine pipe) {
        double needed = limits.pipeRoom().value();
        return pipe.room() >= needed - SAME
                ? Saying.plain("")
                : Saying.of(
                        "That is less room than the {} that the smallest pipe and the earth over it"
                                + " need: raise the lane there, or build a hardened dip.",
                        Quantity.depth(needed));
    }

    /** Lower ground across, somewhere along the pool, where a straight pipe falls little. */
    private Saying slanted(CulvertLine pipe, Pool pool, Pool.Beside beside) {
        if (beside.zone() != Pool.Zone.GROUND) {
            return Saying.plain("");
        }
        Section lowest = null;
        double height = pipe.outlet().height() - WORTH;
        for (Section section : lane.sections()) {
            Corner foot = foot(section, beside.side().across());
            if (section.station() >= beside.from()
                    && section.station() <= beside.to()
                    && foot != null
                    && foot.height() < height) {
                lowest = section;
                height = foot.height();
            }
        }
        return lowest == null || height >= pool.spot().bottom()
                ? Saying.plain("")
                : Saying.of(
                        "Lower ground across, {}, lies at {}: slant the pipe that way for more"
                                + " fall.",
                        Quantity.height(height),
                        Quantity.station(lowest.station()));
    }

    private static @Nullable Corner foot(Section section, Side side) {
        SideResult result = side.of(section);
        return result.kind() == SideResult.Kind.FILL ? result.catchPoint() : null;
    }

    private Saying damLaw(Pool pool) {
        boolean large =
                pool.spot().depth() > limits.damHeight().value()
                        || pool.spot().volume() > limits.damVolume().value();
        return Saying.plain(
                "If water is to be held back, a licensed engineer must design the dam. Ask the"
                        + " state's dam office: "
                        + (large
                                ? "it is large enough for federal dam law (33 USC 467), and states"
                                        + " set limits of their own."
                                : "states set limits of their own, many lower than the federal"
                                        + " one.")
                        + " A house or a road below makes any dam dangerous.");
    }

    Saying entrance(@Nullable CulvertLine pipe) {
        if (pipe == null) {
            return Saying.plain(
                    "Ask the road's owner for the permit and for the pipe to be used. Its length"
                            + " cannot be worked out from this survey.");
        }
        Saying says =
                Saying.of(
                        "Ask the road's owner for the permit and for the pipe to be used; most want"
                                + " the entrance wider than the lane. Under the lane as drawn it is"
                                + " {} long,",
                        Quantity.length(pipe.length()));
        Saying lies =
                pipe.falls()
                        ? Saying.of(
                                "from {} to {}, falls {} ({}),",
                                Quantity.height(pipe.inlet().height()),
                                Quantity.height(pipe.outlet().height()),
                                Quantity.depth(pipe.fall()),
                                Quantity.grade(pipe.grade()))
                        : Saying.of("and level, at {},", Quantity.height(pipe.inlet().height()));
        Saying under =
                Saying.of(
                        "and the lane's edge stands {} above its bottom.",
                        Quantity.depth(pipe.room()));
        return then(then(then(says, lies), under), room(pipe));
    }

    Saying brief(Pool pool, Pool.Beside beside) {
        CulvertLine pipe = pool.culvert();
        if (pipe != null && pipe.grade() < limits.ditchLeast().value()) {
            return Saying.of(
                    "a straight pipe at {} falls too little, read on",
                    Quantity.station(pipe.station()));
        }
        if (pipe != null) {
            return Saying.of(
                    "pipe, {} at {}",
                    Quantity.length(pipe.length()),
                    Quantity.station(pipe.station()));
        }
        return Saying.plain(
                switch (beside.zone()) {
                    case LANE -> "give the lane a fall here";
                    case DITCH -> "lead the ditch on";
                    case GROUND -> "lead the water on";
                });
    }

    static Saying brief(WetStretch stretch, Limits limits) {
        boolean ditch = stretch.ditch() != null;
        return switch (stretch.kind()) {
            case DEAD_END -> Saying.plain("give the ditch an outlet");
            case LEVEL ->
                    Saying.of("give its bottom {}", Quantity.grade(limits.ditchLeast().value()));
            case EDGE, TROUGH ->
                    Saying.plain(ditch ? "give the ditch an outlet" : "raise the lane, or a ditch");
            case SAG -> Saying.plain("lead it away by a ditch");
        };
    }
}
