package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.CheckDams;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Concentration;
import lanewright.drainage.runoff.Peak;
import org.jspecify.annotations.Nullable;

/**
 * Leads a storm down the ditches, from their high points to their low ones and on into the next.
 *
 * <p>At every piece the flow is that of all that drains through its foot, gathered in the longest
 * of the times that its parts need: down the ditch so far, or over the land beside it. Water runs
 * down a ditch at its normal speed there. A flow never gets less on its way down, until a proposal
 * that is looked at takes it out of the ditch.
 */
final class DitchStorm {

    /** Reaches are parted where grades within one would differ by more, rise over run. */
    private static final double GRADE_BREAK = 0.01;

    /** Reaches are no longer than this, m, so that a long ditch is not sized for its foot alone. */
    private static final double LONGEST = 60;

    /** Land of more than this that comes in at one place parts reaches, m²: a tenth of an acre. */
    private static final double COMES_IN = 404.68564224;

    /** Flatter than this water stands, rise over run: the rounding of heights, nothing else. */
    private static final double LEVEL = 1e-6;

    /** Flatter ways are taken as this steep, rise over run. */
    private static final double FLATTEST = 0.001;

    /** Check dams are no higher than this, m: a foot. Common practice. */
    private static final double DAM = 0.3048;

    /** Lower ones are not worth building, m. */
    private static final double LOW_DAM = 0.1;

    /**
     * What comes out so little under the bottom of a ditch comes out in it, m: heights are rough.
     */
    private static final double BED = 0.01;

    /** A ditch steeper than this wants a lining and no dams (US Army, EN5465), rise over run. */
    private static final double LINED = 0.08;

    private final StormAsked asked;
    private final List<DitchWater> ditches;
    private final List<Run> runs = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();
    private final Function<AtRelief, SizedRelief> sizing;
    private final int[][] runOf;

    /** Water on its way: what it drained, in what time, and how much it was at its most. */
    private record Water(
            double lane,
            double slopes,
            double land,
            boolean isLeast,
            double time,
            double fall,
            double way,
            double flow) {
        static final Water NONE = new Water(0, 0, 0, false, 0, 0, 0, 0);

        double area() {
            return lane + slopes + land;
        }

        double slope() {
            return way > 0 ? Math.max(FLATTEST, Math.min(1, fall / way)) : FLATTEST;
        }

        Water with(Water other) {
            Water longer = other.way > way ? other : this;
            return new Water(
                    lane + other.lane,
                    slopes + other.slopes,
                    land + other.land,
                    isLeast || other.isLeast,
                    Math.max(time, other.time),
                    longer.fall,
                    longer.way,
                    Math.max(flow, other.flow));
        }
    }

    /** Pieces of one ditch that fall the same way, from the top down. */
    private static final class Run {
        final int ditch;
        final int[] pieces;
        final boolean up;
        final List<List<Water>> into = new ArrayList<>();
        final Water[] at;
        final List<List<Source>> sources = new ArrayList<>();
        final boolean[] cut;
        int outlet = -1;
        int done;
        boolean busy;
        Water out = Water.NONE;

        Run(int ditch, int[] pieces, boolean up) {
            this.ditch = ditch;
            this.up = up;
            this.pieces = pieces;
            at = new Water[pieces.length];
            for (int i = 0; i < pieces.length; i++) {
                into.add(new ArrayList<>());
                sources.add(new ArrayList<>());
            }
            cut = new boolean[pieces.length];
        }
    }

    /**
     * Where water comes from that comes into a piece besides what is beside it.
     *
     * @param run the run
     * @param at number of its piece
     * @param by the proposal that takes it out of that piece; null if it is what leaves the piece
     */
    private record Source(Run run, int at, @Nullable Taken by) {}

    /** A proposal that takes water out of a run, if it can be built. */
    private static final class Taken {
        final Relief relief;
        final Run run;
        final int at;

        /** The run beside which a pipe comes out on the other side, if there is one. */
        final @Nullable Run into;

        final int intoAt;

        /** How a pipe is sized, once its water is known. */
        @Nullable SizedRelief sized;

        /** What it takes, as it comes out again; null if it is not built and takes nothing. */
        @Nullable Water water;

        Taken(Relief relief, Run run, int at, @Nullable Run into, int intoAt) {
            this.relief = relief;
            this.run = run;
            this.at = at;
            this.into = into;
            this.intoAt = intoAt;
        }
    }

    /**
     * The storm with every proposal for the ditches built.
     *
     * @param reliefs every relief culvert on a ditch, in the order of the proposals
     * @param turnOuts every turn-out likewise
     * @param ditches the ditches, in their own order
     */
    record Relieved(
            List<SizedRelief> reliefs, List<TurnedOut> turnOuts, List<SizedDitch> ditches) {}

    private DitchStorm(
            StormAsked asked, List<DitchWater> ditches, Function<AtRelief, SizedRelief> sizing) {
        this.asked = asked;
        this.ditches = ditches;
        this.sizing = sizing;
        runOf = new int[ditches.size()][];
        for (int i = 0; i < ditches.size(); i++) {
            part(i);
        }
    }

    /** The ditches as they run with no proposal built. */
    static List<SizedDitch> of(StormAsked asked, List<DitchWater> ditches) {
        var storm =
                new DitchStorm(
                        asked,
                        ditches,
                        at -> {
                            throw new IllegalStateException("no proposal was asked for");
                        });
        storm.lead();
        return storm.sized();
    }

    /**
     * The ditches with every proposal built that can be: a pipe that no size serves is not, and
     * leaves its water in the ditch. A pipe is sized when the water has come to it, and what it
     * carries goes on in the ditch that it comes out in, to the pipes there. Proposals that lie on
     * no ditch are left out.
     *
     * @param sizing the pipe for what comes to a relief culvert
     */
    static Relieved relieved(
            StormAsked asked,
            List<DitchWater> ditches,
            List<Relief> reliefs,
            Function<AtRelief, SizedRelief> sizing) {
        return new DitchStorm(asked, ditches, sizing).relieved(reliefs);
    }

    private Relieved relieved(List<Relief> reliefs) {
        for (Relief relief : reliefs) {
            Side side =
                    switch (relief.way()) {
                        case LEFT_DITCH -> Side.LEFT;
                        case RIGHT_DITCH -> Side.RIGHT;
                        case LANE -> null;
                    };
            if (side != null && relief.takesDitch()) {
                take(relief, side);
            }
        }
        lead();
        List<SizedRelief> pipes = new ArrayList<>();
        List<TurnedOut> turnOuts = new ArrayList<>();
        for (Taken each : taken) {
            Water water = each.water;
            if (each.sized != null) {
                pipes.add(each.sized);
            } else if (water != null) {
                turnOuts.add(
                        new TurnedOut(each.relief, flow(water), water.area(), water.isLeast()));
            }
        }
        return new Relieved(List.copyOf(pipes), List.copyOf(turnOuts), sized());
    }

    private void take(Relief relief, Side side) {
        CulvertLine pipe = relief.pipe();
        for (Run run : runs) {
            int at = ditches.get(run.ditch).ditch().side() == side ? in(run, relief.station()) : -1;
            if (at < 0) {
                continue;
            }
            Run into = null;
            int intoAt = -1;
            for (Run other : runs) {
                boolean across = ditches.get(other.ditch).ditch().side() == side.across();
                int there = across && pipe != null ? in(other, pipe.outletStation()) : -1;
                if (there >= 0 && into == null) {
                    into = other;
                    intoAt = there;
                }
            }
            boolean round = into != null && comesTo(into, intoAt, run, at, new HashSet<>());
            taken.add(new Taken(relief, run, at, round ? null : into, intoAt));
            return;
        }
    }

    /**
     * Whether water in a piece may come to another one, down ditches and through the proposals so
     * far: a pipe that led it there again would lead it round.
     */
    private boolean comesTo(Run from, int piece, Run run, int at, Set<Source> seen) {
        if (from == run && piece <= at) {
            return true;
        }
        if (!seen.add(new Source(from, piece, null))) {
            return false;
        }
        for (Taken each : taken) {
            if (each.run == from
                    && each.at >= piece
                    && each.into != null
                    && comesTo(each.into, each.intoAt, run, at, seen)) {
                return true;
            }
        }
        for (DitchWater.Onward onward : ditches.get(from.ditch).onward()) {
            if (onward.outlet() == from.outlet) {
                Run next = runs.get(runOf[onward.ditch()][onward.piece()]);
                if (comesTo(next, place(next, onward.piece()), run, at, seen)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Number of a ditch's piece in a run that has it. */
    private static int place(Run run, int piece) {
        int i = 0;
        while (run.pieces[i] != piece) {
            i++;
        }
        return i;
    }

    /** Number of the first piece of a run, from its top, that a station lies in; else -1. */
    private int in(Run run, double station) {
        for (int i = 0; i < run.pieces.length; i++) {
            DitchWater.Piece piece = ditches.get(run.ditch).pieces().get(run.pieces[i]);
            if (station >= piece.from() && station <= piece.to()) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Builds a proposal, if it can be, for the water that has come to it, and takes that out of the
     * ditch; of several at one piece the first that can be built takes all.
     */
    private void build(Taken each) {
        Run run = each.run;
        Water water = run.cut[each.at] ? Water.NONE : run.at[each.at];
        if (each.relief.pipe() == null) {
            each.water = water;
            run.cut[each.at] = true;
            return;
        }
        SizedRelief sized = sizing.apply(arriving(each, water));
        each.sized = sized;
        if (sized.isBuilt()) {
            each.water = timed(water, water.time() + sized.through());
            run.cut[each.at] = true;
        }
    }

    private AtRelief arriving(Taken each, Water water) {
        DitchWater.Piece piece = ditches.get(each.run.ditch).pieces().get(each.run.pieces[each.at]);
        double runoff =
                water.area() > 0
                        ? asked.peak(
                                        water.lane(),
                                        water.slopes() + water.land(),
                                        Math.min(LONG, water.time()),
                                        water.slope())
                                .runoff()
                        : 0;
        CulvertLine pipe = Objects.requireNonNull(each.relief.pipe());
        return new AtRelief(
                each.relief,
                water.area(),
                water.isLeast(),
                new FlowGrid.Way(water.way(), water.fall()),
                water.time(),
                new Gathered(flow(water), runoff),
                Double.isNaN(piece.bank()) ? piece.depth() : Math.min(piece.depth(), piece.bank()),
                each.into == null
                        ? Double.NaN
                        : Sizing.bottom(ditches.get(each.into.ditch), pipe.outletStation()));
    }

    private List<SizedDitch> sized() {
        List<SizedDitch> all = new ArrayList<>();
        for (int i = 0; i < ditches.size(); i++) {
            List<SizedReach> reaches = new ArrayList<>();
            DitchWater ditch = ditches.get(i);
            Water[] ends = new Water[ditch.ditch().outlets().size()];
            Arrays.fill(ends, Water.NONE);
            for (Run run : runs) {
                if (run.ditch == i) {
                    reaches.addAll(reaches(run));
                    if (run.outlet >= 0) {
                        ends[run.outlet] = ends[run.outlet].with(run.out);
                    }
                }
            }
            reaches.sort((a, b) -> Double.compare(a.from(), b.from()));
            all.add(
                    new SizedDitch(
                            ditch,
                            reaches,
                            Arrays.stream(ends)
                                    .map(
                                            end ->
                                                    new SizedDitch.Arriving(
                                                            flow(end), end.area(), end.isLeast()))
                                    .toList()));
        }
        return all;
    }

    /** Parts a ditch into runs. */
    private void part(int number) {
        DitchWater ditch = ditches.get(number);
        int count = ditch.pieces().size();
        int[] way = new int[count];
        for (int i = 0; i < count; i++) {
            double grade = ditch.pieces().get(i).grade();
            way[i] = grade > LEVEL ? -1 : grade < -LEVEL ? 1 : i > 0 && way[i - 1] > 0 ? 1 : 0;
        }
        for (int i = count - 1; i >= 0; i--) {
            way[i] = way[i] != 0 ? way[i] : i + 1 < count && way[i + 1] < 0 ? -1 : 1;
        }
        runOf[number] = new int[count];
        int first = 0;
        for (int i = 1; i <= count; i++) {
            if (i < count && way[i] == way[first]) {
                continue;
            }
            int[] pieces = new int[i - first];
            for (int k = 0; k < pieces.length; k++) {
                pieces[k] = way[first] > 0 ? first + k : i - 1 - k;
                runOf[number][pieces[k]] = runs.size();
            }
            var run = new Run(number, pieces, way[first] > 0);
            DitchWater.Piece last = ditch.pieces().get(pieces[pieces.length - 1]);
            run.outlet = nearest(ditch, way[first] > 0 ? last.to() : last.from());
            runs.add(run);
            first = i;
        }
    }

    private static int nearest(DitchWater ditch, double station) {
        List<DitchReach.Outlet> outlets = ditch.ditch().outlets();
        int nearest = -1;
        for (int i = 0; i < outlets.size(); i++) {
            if (nearest < 0
                    || Math.abs(outlets.get(i).station() - station)
                            < Math.abs(outlets.get(nearest).station() - station)) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** Notes for each piece of each run what comes into it from elsewhere. */
    private void join() {
        for (Run source : runs) {
            for (DitchWater.Onward onward : ditches.get(source.ditch).onward()) {
                if (onward.outlet() == source.outlet) {
                    Run run = runs.get(runOf[onward.ditch()][onward.piece()]);
                    run.sources
                            .get(place(run, onward.piece()))
                            .add(new Source(source, source.pieces.length - 1, null));
                }
            }
        }
        for (Taken each : taken) {
            Run into = each.into;
            if (into != null) {
                into.sources.get(each.intoAt).add(new Source(each.run, each.at, each));
            }
        }
    }

    private void lead() {
        join();
        for (Run run : runs) {
            lead(run, run.pieces.length - 1);
        }
    }

    /**
     * Leads water down a run to one of its pieces, after what comes into it; a circle is cut where
     * it is met.
     */
    private void lead(Run run, int last) {
        while (run.done <= last && !run.busy) {
            run.busy = true;
            int i = run.done;
            for (Source source : run.sources.get(i)) {
                lead(source.run(), source.at());
                Water comes = source.run().done > source.at() ? comes(source) : null;
                if (comes != null) {
                    run.into.get(i).add(comes);
                }
            }
            DitchWater.Piece piece = ditches.get(run.ditch).pieces().get(run.pieces[i]);
            Water water = run.out;
            double before = water.time();
            for (Water other : run.into.get(i)) {
                water = water.with(other);
            }
            water = water.with(beside(piece));
            water = down(water, Math.max(before, water.time()), piece);
            run.at[i] = water;
            for (Taken each : taken) {
                if (each.run == run && each.at == i) {
                    build(each);
                }
            }
            run.out = run.cut[i] ? Water.NONE : water;
            run.done++;
            run.busy = false;
        }
    }

    /** What comes from a source; null if nothing of it is led here. */
    private static @Nullable Water comes(Source source) {
        Taken by = source.by();
        if (by == null) {
            return source.run().out;
        }
        return by.sized != null && by.sized.intoDitch() ? by.water : null;
    }

    /** What comes into a piece from beside it. */
    private static Water beside(DitchWater.Piece piece) {
        FlowGrid.Way way = piece.way();
        double time =
                piece.land() > 0
                        ? StormReport.time(way)
                        : Concentration.LEAST; // off the lane and its slopes
        return new Water(
                piece.lane(),
                piece.slopes(),
                piece.land(),
                piece.isLeast(),
                time,
                way.fall(),
                way.length(),
                0);
    }

    private Water down(Water water, double time, DitchWater.Piece piece) {
        Water timed = timed(water, time);
        double flow = flow(timed);
        if (!(flow > 0)) {
            return timed;
        }
        double slope = Math.max(FLATTEST, Math.min(1, Math.abs(piece.grade())));
        double speed =
                Lining.least(piece.shape(), flow, slope, asked.soil())
                        .orElseGet(
                                () -> Lining.named(asked.soil()).flow(piece.shape(), flow, slope))
                        .velocity();
        Water later = timed(water, time + piece.length() / speed);
        return new Water(
                later.lane(),
                later.slopes(),
                later.land(),
                later.isLeast(),
                later.time(),
                later.fall(),
                later.way(),
                Math.max(water.flow(), flow(later)));
    }

    /** The flow at its height, and the depth that runs off. */
    private record Gathered(double discharge, double runoff) implements Peak {}

    /**
     * What comes to a relief culvert.
     *
     * @param relief the culvert
     * @param drained land that drains to it, the lane's own included, m²
     * @param isLeast whether more may drain there from beyond the survey
     * @param way the longest way of that water over the land
     * @param time in which it gathers, s
     * @param peak the flow at its height
     * @param brim how deep water may stand in the ditch there before it runs out over a bank, m
     * @param across height of the bottom of the ditch across, where the culvert comes to it, m; NaN
     *     without one, or if that ditch led the water round to the culvert again
     */
    record AtRelief(
            Relief relief,
            double drained,
            boolean isLeast,
            FlowGrid.Way way,
            double time,
            Peak peak,
            double brim,
            double across) {

        /** Whether a pipe comes out in the ditch across, and not under it on lower ground. */
        boolean intoDitch(CulvertLine line) {
            return line.outlet().height() >= across - BED;
        }
    }

    private static Water timed(Water water, double time) {
        return new Water(
                water.lane(),
                water.slopes(),
                water.land(),
                water.isLeast(),
                time,
                water.fall(),
                water.way(),
                water.flow());
    }

    /** The flow of what has gathered, m³/s; never less than it was farther up. */
    private double flow(Water water) {
        return water.area() > 0
                ? Math.max(
                        water.flow(),
                        asked.peak(
                                        water.lane(),
                                        water.slopes() + water.land(),
                                        Math.min(LONG, water.time()),
                                        water.slope())
                                .discharge())
                : 0;
    }

    /** The graphical method ends at ten hours, s. */
    private static final double LONG = 36_000;

    private List<SizedReach> reaches(Run run) {
        DitchWater ditch = ditches.get(run.ditch);
        List<SizedReach> reaches = new ArrayList<>();
        int first = 0;
        double length = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int i = 0; i < run.pieces.length; i++) {
            DitchWater.Piece piece = ditch.pieces().get(run.pieces[i]);
            double grade = Math.abs(piece.grade());
            boolean comesIn =
                    (piece.land() > COMES_IN && piece.land() > run.at[i].area() / 2)
                            || !run.into.get(i).isEmpty();
            boolean breaks =
                    i > first
                            && (Math.max(high, grade) - Math.min(low, grade) > GRADE_BREAK
                                    || length + piece.length() > LONGEST
                                    || comesIn
                                    || run.cut[i - 1]
                                    || (grade > LEVEL) != (high > LEVEL)
                                    || !piece.shape()
                                            .equals(ditch.pieces().get(run.pieces[first]).shape()));
            if (breaks) {
                reaches.add(reach(run, first, i));
                first = i;
                length = 0;
                low = Double.POSITIVE_INFINITY;
                high = 0;
            }
            length += piece.length();
            low = Math.min(low, grade);
            high = Math.max(high, grade);
        }
        reaches.add(reach(run, first, run.pieces.length));
        return reaches;
    }

    /** A reach of the pieces from {@code first} to before {@code end} of a run. */
    private SizedReach reach(Run run, int first, int end) {
        List<DitchWater.Piece> all = ditches.get(run.ditch).pieces();
        DitchWater.Piece top = all.get(run.pieces[first]);
        DitchWater.Piece foot = all.get(run.pieces[end - 1]);
        double length = 0;
        double flattest = Double.NaN;
        double steepest = Double.NaN;
        double depth = Double.POSITIVE_INFINITY;
        double bank = Double.NaN;
        for (int i = first; i < end; i++) {
            DitchWater.Piece piece = all.get(run.pieces[i]);
            double grade = Math.abs(piece.grade());
            length += piece.length();
            if (grade > LEVEL) {
                flattest = grade < flattest || Double.isNaN(flattest) ? grade : flattest;
                steepest = grade > steepest || Double.isNaN(steepest) ? grade : steepest;
            }
            depth = Math.min(depth, piece.depth());
            bank = piece.bank() < bank || Double.isNaN(bank) ? piece.bank() : bank;
        }
        Water water = run.at[end - 1];
        double flow = flow(water);
        Optional<Lining.Flow> steep =
                flow > 0 && !Double.isNaN(steepest)
                        ? Lining.least(top.shape(), flow, Math.min(1, steepest), asked.soil())
                        : Optional.empty();
        double flat = flattest;
        double most = steepest;
        double room = depth;
        double whole = length;
        return new SizedReach(
                run.up ? top.from() : top.to(),
                run.up ? foot.to() : foot.from(),
                length,
                flattest,
                steepest,
                water.lane(),
                water.slopes(),
                water.land(),
                water.isLeast(),
                water.time(),
                flow,
                top.shape(),
                depth,
                bank,
                steep,
                steep.map(each -> each.lining().flow(top.shape(), flow, Math.min(1, flat))),
                steep.filter(each -> each.lining().kind() != Lining.Kind.SOIL)
                        .flatMap(each -> dams(top, flow, most, room))
                        .filter(each -> each.spacing().spacing() <= whole));
    }

    private Optional<SizedReach.Dams> dams(
            DitchWater.Piece at, double flow, double steepest, double depth) {
        double height = Math.min(DAM, depth - SizedReach.ROOM);
        Lining soil = Lining.named(asked.soil());
        if (steepest > LINED || height < LOW_DAM || !soil.flow(at.shape(), flow, LEVEL).holds()) {
            return Optional.empty();
        }
        double holds = LEVEL;
        double washes = steepest;
        for (int i = 0; i < 50; i++) {
            double middle = (holds + washes) / 2;
            if (soil.flow(at.shape(), flow, middle).holds()) {
                holds = middle;
            } else {
                washes = middle;
            }
        }
        CheckDams spacing = CheckDams.of(height, steepest, holds);
        return spacing.tooClose()
                ? Optional.empty()
                : Optional.of(new SizedReach.Dams(height, holds, spacing));
    }
}
