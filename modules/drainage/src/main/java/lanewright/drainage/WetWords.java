package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Limits;
import lanewright.drainage.pond.LowSpot;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
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

    /** "What to do" and the one thing that holds. */
    static Saying todo(Cure cure) {
        return new Saying("What to do: " + cure.says().pattern() + ".", cure.says().quantities());
    }

    /** What to do where no water was measured. */
    Saying remedy(Cure cure) {
        return then(todo(cure), laid(cure));
    }

    /** What to do about standing water. */
    Saying remedy(Pool pool, Pool.Beside beside, Cure cure) {
        Saying says = isDam(pool) ? Saying.plain("Do not build it so.") : Saying.plain("");
        says = then(says, todo(cure));
        CulvertLine across = pool.across();
        if (beside.zone() == Pool.Zone.LANE || across == null) {
            return says;
        }
        if (!across.fits(limits)) {
            says = then(says, whyNot(across));
        }
        CulvertLine pipe = cure.pipe();
        boolean up =
                beside.zone() == Pool.Zone.DITCH
                        && pipe != null
                        && pipe.station() != across.station();
        if (up) {
            says = then(says, Saying.plain("Lead on what gathers in the ditch below that place."));
        }
        says = then(says, laid(cure));
        if (beside.zone() == Pool.Zone.DITCH && beside.station() < Cures.AT_END) {
            says =
                    then(
                            says,
                            Saying.plain(
                                    "The ditch ends where the lane leaves the road: its water may"
                                            + " go into the road's own ditch only with the leave of"
                                            + " the road's owner."));
        }
        return isDam(pool) ? then(says, damLaw(pool)) : says;
    }

    /** What to do about water that is left standing below the way into a pipe. */
    Saying left(Pool pool, Cure cure) {
        return isDam(pool)
                ? then(then(Saying.plain("Do not build it so."), todo(cure)), damLaw(pool))
                : todo(cure);
    }

    /** Why a pipe straight under the lane cannot be laid as things are. */
    private Saying whyNot(CulvertLine across) {
        Saying why = lacks(across);
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.station(across.station()));
        quantities.addAll(why.quantities());
        return new Saying(
                "A pipe straight under the lane as drawn, at {}, does not fit: "
                        + why.pattern()
                        + ".",
                quantities);
    }

    /** Whether a pipe can be laid so as things are. */
    boolean fits(CulvertLine pipe) {
        return pipe.fits(limits);
    }

    /** What a pipe lacks, without a full stop. */
    Saying lacks(CulvertLine pipe) {
        Saying fall =
                pipe.fallsEnough(limits)
                        ? Saying.plain("")
                        : pipe.falls()
                                ? Saying.of(
                                        "it would fall only {}, under the {} that keep it from"
                                                + " silting up",
                                        Quantity.grade(pipe.grade()),
                                        Quantity.grade(limits.ditchLeast().value()))
                                : Saying.plain("the ground at its outlet is not lower");
        Saying room =
                pipe.hasRoom(limits)
                        ? Saying.plain("")
                        : Saying.of(
                                "it would have {} under the lane's edge, of the {} that the"
                                        + " smallest pipe and the earth over it need",
                                Quantity.depth(Math.max(0, pipe.room())),
                                Quantity.depth(limits.pipeRoom().value()));
        boolean both = !fall.pattern().isEmpty() && !room.pattern().isEmpty();
        return then(both ? new Saying(fall.pattern() + ", and", fall.quantities()) : fall, room);
    }

    /** Whether a pipe fits, as a cell of a table. */
    Saying fit(@Nullable CulvertLine pipe) {
        if (pipe == null) {
            return Saying.plain("");
        }
        if (pipe.fits(limits)) {
            return Saying.plain(PipeCourse.FITS);
        }
        Saying fall =
                pipe.fallsEnough(limits)
                        ? Saying.plain("")
                        : Saying.of(
                                "falls less than {}", Quantity.grade(limits.ditchLeast().value()));
        Saying room =
                pipe.hasRoom(limits)
                        ? Saying.plain("")
                        : Saying.of(
                                "{} too little room",
                                Quantity.depth(limits.pipeRoom().value() - pipe.room()));
        boolean both = !fall.pattern().isEmpty() && !room.pattern().isEmpty();
        Saying lacks =
                then(both ? new Saying(fall.pattern() + ",", fall.quantities()) : fall, room);
        return new Saying("does not fit: " + lacks.pattern(), lacks.quantities());
    }

    /** How the pipe of a cure lies once all is done. */
    private static Saying laid(Cure cure) {
        CulvertLine pipe = cure.pipe();
        return pipe == null
                ? Saying.plain("")
                : Saying.of(
                        "The pipe lies from {} at its inlet to {} at its outlet and falls {} ({})."
                                + " The lane's edge then stands {} above its bottom. How wide it"
                                + " must be hangs on the storm.",
                        Quantity.height(pipe.inlet().height()),
                        Quantity.height(pipe.outlet().height()),
                        Quantity.depth(pipe.fall()),
                        Quantity.grade(pipe.grade()),
                        Quantity.depth(pipe.room()));
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

    /** What to do about the road's own ditch. */
    Saying entrance(@Nullable CulvertLine pipe, Cure cure) {
        Saying says = todo(cure);
        if (pipe != null && !pipe.fits(limits)) {
            Saying why = lacks(pipe);
            says =
                    then(
                            says,
                            new Saying(
                                    "Under the lane as drawn a pipe does not fit: "
                                            + why.pattern()
                                            + ".",
                                    why.quantities()));
        }
        return then(
                then(says, laid(cure)),
                Saying.plain(
                        "Ask the road's owner for the permit and for the pipe to be used; most want"
                                + " the entrance wider than the lane, and its pipe longer."));
    }
}
