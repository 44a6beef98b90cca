package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * Works out what to do about a wet place. Each way is tried in turn, and the first that holds there
 * is said: a pipe straight under the lane, one slanted to lower ground across, one farther up a
 * ditch, the lane raised until a pipe has room, a pipe's outlet dug lower, and last the water led
 * on beside the lane.
 */
final class Cures {

    /**
     * A lane is raised by whole steps of this, m: an inch, finer than a blade works. Our choice.
     */
    static final double STEP = 0.0254;

    /** A lane is not raised by more than this for a pipe, m. Our choice. */
    static final double MOST_RAISE = 1;

    /**
     * Raising a lane bends its grade towards the nearer end, whose height is given, by no more than
     * this, rise over run. Our choice.
     */
    static final double MOST_BEND = 0.1;

    /** A pipe's outlet is not dug deeper than this, m. Our choice: a small ditch. */
    private static final double MOST_DIG = 0.6;

    /** Lower ground for a pipe's outlet is looked for so far along the lane, m. Our choice. */
    private static final double ASIDE = 30;

    /** Water this near to an end of the lane lies where its ditch stops, m. Our choice. */
    static final double AT_END = 1;

    private final Lane lane;
    private final Limits limits;
    private final List<DitchReach> ditches;
    private final ServingPipes pipes;

    Cures(Lane lane, Limits limits, List<DitchReach> ditches, ServingPipes pipes) {
        this.lane = lane;
        this.limits = limits;
        this.ditches = ditches;
        this.pipes = pipes;
    }

    /** For water that stands beside the lane or on it. */
    Cure standing(Pool pool, Pool.Beside beside) {
        GivenPipe through = pipes.of(pool);
        if (through != null) {
            return through(pool, through);
        }
        CulvertLine across = pool.across();
        if (beside.zone() == Pool.Zone.LANE || across == null) {
            return Cure.of(
                    Cure.Kind.SHAPE,
                    Saying.of(
                            "give the lane a fall of at least {} to a side here, towards lower"
                                    + " ground",
                            Quantity.grade(limits.crossLeast().value())));
        }
        boolean ditch = beside.zone() == Pool.Zone.DITCH;
        Cure piped = piped(across, pool.culvert(), ditch);
        return piped != null
                ? piped
                : leadOn(
                        beside.side(),
                        beside.station(),
                        new double[] {beside.from(), beside.to()},
                        pool.spot().bottom(),
                        ditch,
                        WetWords.isDam(pool));
    }

    /** For what is left standing below the way into a pipe. */
    private static Cure through(Pool pool, GivenPipe pipe) {
        boolean atInlet = pool.spot().level() <= pipe.inletInvert() + STEP;
        Quantity left = Quantity.depth(pool.spot().depth());
        return Cure.of(
                Cure.Kind.PIPED,
                atInlet
                        ? Saying.of(
                                "the "
                                        + pipe.called()
                                        + " takes what comes to it; put its inlet {} lower and the"
                                        + " rest runs out too",
                                left)
                        : Saying.of(
                                "the "
                                        + pipe.called()
                                        + " takes what comes to it; dig the ground free at both its"
                                        + " ends, or {} of water is left standing",
                                left));
    }

    /** For what the checks along the lane found without standing water. */
    Cure along(WetStretch stretch) {
        DitchReach ditch = stretch.ditch();
        DitchReach.Outlet outlet = stretch.outlet();
        Quantity measured = stretch.measured();
        return switch (stretch.kind()) {
            case LEVEL ->
                    Cure.of(
                            Cure.Kind.SHAPE,
                            Saying.of(
                                    "give the ditch bottom a fall of its own of at least {} towards"
                                            + " its outlet",
                                    Quantity.grade(limits.ditchLeast().value())));
            case DEAD_END, EDGE, TROUGH ->
                    ditch != null && outlet != null
                            ? deadEnd(ditch, outlet)
                            : raised(measured == null ? 0 : -measured.value());
            case SAG -> sag(stretch);
        };
    }

    /** A ditch whose lowest place has no way out. */
    private Cure deadEnd(DitchReach ditch, DitchReach.Outlet outlet) {
        Side side = ditch.side();
        Section section = lane.sectionAt().apply(outlet.station());
        Cure piped =
                side.of(section).ditchInner() == null
                        ? null
                        : piped(under(section, side, outlet.height()), null, true);
        return piped != null
                ? piped
                : leadOn(
                        side,
                        outlet.station(),
                        new double[] {outlet.station(), outlet.station()},
                        outlet.height(),
                        true,
                        false);
    }

    /** An edge that lies lower than the ground beside it, without a ditch. */
    private Cure raised(double lower) {
        double by = inches(lower + limits.edgeAbove().value());
        return new Cure(
                Cure.Kind.RAISE,
                null,
                by,
                0,
                Saying.of("raise the lane here by at least {}", Quantity.depth(by)));
    }

    private Cure sag(WetStretch stretch) {
        Side side = stretch.side() == null ? Side.LEFT : stretch.side();
        Section section = lane.sectionAt().apply(stretch.from());
        Section lower = lower(side, stretch.from(), side.of(section).edge().height());
        return lower == null
                ? Cure.of(
                        Cure.Kind.SHAPE,
                        Saying.plain("move the low point of the grade to where water can leave"))
                : Cure.of(
                        Cure.Kind.LEAD_ON,
                        Saying.of(
                                "dig a ditch on the "
                                        + side.word()
                                        + " that leads the water on to lower ground at {}",
                                Quantity.station(lower.station())));
    }

    /** For a watercourse none of whose water stands. */
    Cure watercourse(Inflow inflow) {
        GivenPipe pipe = pipes.of(inflow);
        if (pipe != null) {
            return Cure.of(
                    Cure.Kind.PIPED,
                    Saying.plain(
                            pipe.toLay()
                                    ? "lay the " + pipe.called() + ": it takes this water"
                                    : "keep the " + pipe.called() + " open for it"));
        }
        for (DitchReach ditch : ditches) {
            DitchReach.Outlet outlet =
                    ditch.side() == inflow.side() ? ditch.outletFrom(inflow.station()) : null;
            if (outlet != null
                    && outlet.kind() != DitchReach.Kind.DEAD_END
                    && outlet.kind() != DitchReach.Kind.CROSSING) {
                return Cure.of(
                        Cure.Kind.KEEP,
                        Saying.of(
                                "dig the "
                                        + inflow.side().word()
                                        + " ditch first: it leads this water on to {}",
                                Quantity.station(outlet.station())));
            }
        }
        Section section = lane.sectionAt().apply(inflow.station());
        SideResult side = inflow.side().of(section);
        Corner foot = side.kind() == SideResult.Kind.FILL ? side.catchPoint() : null;
        Cure piped =
                foot == null
                        ? null
                        : piped(under(section, inflow.side(), foot.height()), null, false);
        return piped != null
                ? piped
                : Cure.of(
                        Cure.Kind.SHAPE,
                        Saying.plain("build a hardened dip here, for the water to cross the lane"));
    }

    /** For the road's own ditch, whose water must pass under the beginning of the lane. */
    Cure entrance(RoadEnd.RoadDitch ditch) {
        CulvertLine pipe = ditch.entrance();
        String allowed = ", as the road's owner allows";
        if (pipe == null) {
            return Cure.of(
                    Cure.Kind.KEEP,
                    Saying.plain(
                            "have the road's owner say which pipe goes here: its length cannot be"
                                    + " worked out from this survey"));
        }
        if (pipe.fits(limits)) {
            return new Cure(
                    Cure.Kind.PIPE,
                    pipe,
                    0,
                    0,
                    Saying.of("a pipe, {} long" + allowed, Quantity.length(pipe.length())));
        }
        Section section = lane.sectionAt().apply(ditch.station());
        double by = pipe.hasRoom(limits) ? 0 : raise(pipe, true);
        CulvertLine laid =
                by > 0
                        ? raised(pipe, by)
                        : pipe.hasRoom(limits)
                                ? pipe
                                : lower(
                                        section,
                                        pipe,
                                        inches(missingRoom(pipe)),
                                        inches(missingRoom(pipe)));
        double deeper = pipe.inlet().height() - laid.inlet().height();
        double fall = Math.max(0, limits.ditchLeast().value() * laid.length() - laid.fall());
        double dig = inches(fall);
        CulvertLine pipeThen = laid.fallsEnough(limits) ? laid : lower(section, laid, 0, dig);
        if (by > 0) {
            Saying first =
                    Saying.of(
                            "raise the lane here by at least {}; then a pipe of {} fits",
                            Quantity.depth(by),
                            Quantity.length(pipeThen.length()));
            Saying rest =
                    laid.fallsEnough(limits)
                            ? Saying.plain(allowed)
                            : Saying.of(", its outlet dug {} lower" + allowed, Quantity.depth(dig));
            return new Cure(
                    Cure.Kind.RAISE,
                    pipeThen,
                    by,
                    laid.fallsEnough(limits) ? 0 : dig,
                    joined(first, rest));
        }
        boolean same = laid.fallsEnough(limits);
        Saying says =
                deeper > 0 && same
                        ? Saying.of(
                                "dig the road's ditch here {} deeper and lay a pipe of {} in it"
                                        + allowed,
                                Quantity.depth(deeper),
                                Quantity.length(pipeThen.length()))
                        : deeper > 0
                                ? Saying.of(
                                        "dig the road's ditch here {} deeper, {} at the outlet, and lay a"
                                                + " pipe of {} in it"
                                                + allowed,
                                        Quantity.depth(deeper),
                                        Quantity.depth(
                                                pipe.outlet().height()
                                                        - pipeThen.outlet().height()),
                                        Quantity.length(pipeThen.length()))
                                : Saying.of(
                                        "a pipe, {} long, the ditch below its outlet dug {} deeper"
                                                + allowed,
                                        Quantity.length(pipeThen.length()),
                                        Quantity.depth(dig));
        return new Cure(
                Cure.Kind.DIG,
                pipeThen,
                0,
                pipe.outlet().height() - pipeThen.outlet().height(),
                says);
    }

    /** A pipe under the lane, with what must be done for it; null where none can be made to fit. */
    private @Nullable Cure piped(CulvertLine across, @Nullable CulvertLine other, boolean ditch) {
        if (across.fits(limits)) {
            return new Cure(Cure.Kind.PIPE, across, 0, 0, pipe(across));
        }
        CulvertLine slanted = slanted(across);
        if (slanted != null) {
            return new Cure(
                    Cure.Kind.PIPE,
                    slanted,
                    0,
                    0,
                    Saying.of(
                            "a pipe slanted under the lane from {} "
                                    + slanted.from().word()
                                    + " to {} "
                                    + slanted.from().across().word()
                                    + ", {} long",
                            Quantity.station(slanted.station()),
                            Quantity.station(slanted.outletStation()),
                            Quantity.length(slanted.length())));
        }
        CulvertLine up = other == null || other.station() == across.station() ? null : other;
        if (up != null && up.fits(limits)) {
            return new Cure(Cure.Kind.PIPE, up, 0, 0, pipe(up));
        }
        for (CulvertLine pipe : up == null ? List.of(across) : List.of(across, up)) {
            double by = raise(pipe, false);
            if (by > 0) {
                CulvertLine then = raised(pipe, by);
                return new Cure(
                        Cure.Kind.RAISE,
                        then,
                        by,
                        0,
                        Saying.of(
                                "raise the lane at {} by at least {}"
                                        + (ditch ? ", its ditch left as low as it is" : "")
                                        + "; then a pipe of {} fits there",
                                Quantity.station(pipe.station()),
                                Quantity.depth(by),
                                Quantity.length(then.length())));
            }
        }
        return dug(across);
    }

    private static Saying pipe(CulvertLine pipe) {
        return Saying.of(
                "a pipe under the lane at {}, {} long",
                Quantity.station(pipe.station()),
                Quantity.length(pipe.length()));
    }

    /**
     * The shortest pipe from the same inlet to lower ground across, at most as far along the lane
     * as across it, that fits; or null.
     */
    private @Nullable CulvertLine slanted(CulvertLine across) {
        double reach = Math.abs(across.outlet().offset() - across.inlet().offset());
        CulvertLine best = null;
        for (Section section : lane.sections()) {
            SideResult side = across.from().across().of(section);
            Corner foot = side.kind() == SideResult.Kind.FILL ? side.catchPoint() : null;
            double along = Math.abs(section.station() - across.station());
            if (along == 0
                    || along > reach
                    || foot == null
                    || !(foot.height() < across.outlet().height())) {
                continue;
            }
            CulvertLine pipe =
                    across.slanted(lane.line(), section.station(), foot, lane.sectionAt());
            if (pipe.fits(limits) && (best == null || pipe.length() < best.length())) {
                best = pipe;
            }
        }
        return best;
    }

    /**
     * The least raise of the lane, in whole inches, with which a pipe fits that has too little room
     * now; zero where none does.
     *
     * @param anyFall whether its fall is seen to by other means
     */
    private double raise(CulvertLine pipe, boolean anyFall) {
        if (pipe.isSlanted() || pipe.hasRoom(limits) || !(anyFall || pipe.fallsEnough(limits))) {
            return 0;
        }
        double end = Math.min(pipe.station(), lane.line().length() - pipe.station());
        double most = Math.min(MOST_RAISE, MOST_BEND * end);
        for (double by = inches(missingRoom(pipe)); by <= most; by += STEP) {
            CulvertLine then = raised(pipe, by);
            if (then.hasRoom(limits) && (anyFall || then.fallsEnough(limits))) {
                return by;
            }
        }
        return 0;
    }

    private double missingRoom(CulvertLine pipe) {
        return limits.pipeRoom().value() - pipe.room();
    }

    /** In whole inches, rounded up. */
    private static double inches(double depth) {
        return STEP * Math.max(1, Math.ceil(depth / STEP - 1e-6));
    }

    /**
     * The same pipe with its outlet dug lower, if lower ground to lead it to lies near; or null.
     */
    private @Nullable Cure dug(CulvertLine across) {
        double missing = limits.ditchLeast().value() * across.length() - across.fall();
        double dig = inches(missing);
        if (!(missing > 0) || dig > MOST_DIG) {
            return null;
        }
        Section section = lane.sectionAt().apply(across.station());
        CulvertLine then = lower(section, across, 0, dig);
        Section ground = lower(across.from().across(), across.station(), then.outlet().height());
        return ground == null
                        || Math.abs(ground.station() - across.station()) > ASIDE
                        || !then.fits(limits)
                ? null
                : new Cure(
                        Cure.Kind.DIG,
                        then,
                        0,
                        dig,
                        Saying.of(
                                "a pipe under the lane at {}, {} long, its outlet dug {} deeper and"
                                        + " led on to lower ground at {}",
                                Quantity.station(then.station()),
                                Quantity.length(then.length()),
                                Quantity.depth(dig),
                                Quantity.station(ground.station())));
    }

    private static CulvertLine lower(
            Section section, CulvertLine pipe, double inletBy, double outletBy) {
        return pipe.lower(section, inletBy, outletBy);
    }

    /**
     * The water led on beside the lane.
     *
     * @param wet first and last station of the water: lower ground within it is under water too
     */
    private Cure leadOn(
            Side side, double station, double[] wet, double bottom, boolean ditch, boolean dam) {
        String what = ditch ? "lead the " + side.word() + " ditch on" : "lead the water on";
        Quantity height = Quantity.height(bottom);
        Section lower = lower(side, station, wet[0], wet[1], bottom);
        if (lower != null) {
            return Cure.of(
                    Cure.Kind.LEAD_ON,
                    Saying.of(
                            what
                                    + (ditch ? "" : " along the " + side.word() + " of the lane")
                                    + " to {}, where the ground lies lower than {}",
                            Quantity.station(lower.station()),
                            height));
        }
        if (dam) {
            return Cure.of(
                    Cure.Kind.MOVE,
                    Saying.plain(
                            "move the lane off this low ground, for no pipe fits and no lower"
                                    + " ground lies beside it"));
        }
        if (ditch && station > lane.line().length() - AT_END) {
            return Cure.of(
                    Cure.Kind.LEAD_ON,
                    Saying.of(
                            "dig the "
                                    + side.word()
                                    + " ditch on past the end of the lane until it comes out on"
                                    + " ground lower than {}",
                            height));
        }
        if (ditch && station < AT_END) {
            return Cure.of(
                    Cure.Kind.LEAD_ON,
                    Saying.of(
                            "lead the "
                                    + side.word()
                                    + " ditch into the road's own, to lower than {}, as the road's"
                                    + " owner allows",
                            height));
        }
        return Cure.of(Cure.Kind.LEAD_ON, Saying.of(what + " to ground lower than {}", height));
    }

    /**
     * The nearest section where the ground on a side lies lower than a height, by enough that a
     * ditch falls to it; or null.
     */
    private @Nullable Section lower(Side side, double station, double height) {
        return lower(side, station, Double.NaN, Double.NaN, height);
    }

    /** The same, outside a stretch. */
    private @Nullable Section lower(
            Side side, double station, double from, double to, double height) {
        Section nearest = null;
        for (Section section : lane.sections()) {
            SideResult result = side.of(section);
            Corner foot = result.kind() == SideResult.Kind.FILL ? result.catchPoint() : null;
            double along = Math.abs(section.station() - station);
            if (foot != null
                    && !(section.station() >= from && section.station() <= to)
                    && foot.height() < height - limits.ditchLeast().value() * along
                    && (nearest == null || along < Math.abs(nearest.station() - station))) {
                nearest = section;
            }
        }
        return nearest;
    }

    private CulvertLine raised(CulvertLine pipe, double by) {
        TypicalSection typical = lane.typical().apply(pipe.station());
        double left = typical.left().foreslope();
        double right = typical.right().foreslope();
        boolean fromLeft = pipe.from() == Side.LEFT;
        return pipe.raised(
                lane.sectionAt().apply(pipe.station()),
                by,
                fromLeft ? left : right,
                fromLeft ? right : left);
    }

    private CulvertLine under(Section section, Side side, double bottom) {
        TypicalSection typical = lane.typical().apply(section.station());
        double left = typical.left().foreslope();
        double right = typical.right().foreslope();
        boolean fromLeft = side == Side.LEFT;
        return CulvertLine.under(
                section, side, bottom, fromLeft ? left : right, fromLeft ? right : left);
    }

    /** Two parts of a sentence without a space between. */
    private static Saying joined(Saying first, Saying rest) {
        List<Quantity> quantities = new ArrayList<>(first.quantities());
        quantities.addAll(rest.quantities());
        return new Saying(first.pattern() + rest.pattern(), quantities);
    }
}
