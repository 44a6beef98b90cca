package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.channel.CheckDams;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Concentration;

/**
 * Leads a storm down the ditches, from their high points to their low ones and on into the next.
 *
 * <p>At every piece the flow is that of all that drains through its foot, gathered in the longest
 * of the times that its parts need: down the ditch so far, or over the land beside it. Water runs
 * down a ditch at its normal speed there. A flow never gets less on its way down.
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

    /** A ditch steeper than this wants a lining and no dams (US Army, EN5465), rise over run. */
    private static final double LINED = 0.08;

    private final StormAsked asked;
    private final List<DitchWater> ditches;
    private final List<Run> runs = new ArrayList<>();
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
        int outlet = -1;
        int state;

        Run(int ditch, int[] pieces, boolean up) {
            this.ditch = ditch;
            this.up = up;
            this.pieces = pieces;
            at = new Water[pieces.length];
            for (int i = 0; i < pieces.length; i++) {
                into.add(new ArrayList<>());
            }
        }
    }

    private DitchStorm(StormAsked asked, List<DitchWater> ditches) {
        this.asked = asked;
        this.ditches = ditches;
        runOf = new int[ditches.size()][];
    }

    static List<SizedDitch> of(StormAsked asked, List<DitchWater> ditches) {
        return new DitchStorm(asked, ditches).sized();
    }

    private List<SizedDitch> sized() {
        for (int i = 0; i < ditches.size(); i++) {
            part(i);
        }
        for (Run run : runs) {
            lead(run);
        }
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
                        ends[run.outlet] = ends[run.outlet].with(run.at[run.at.length - 1]);
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

    /**
     * Leads water down a run, after all runs that come into it; a circle is cut where it is met.
     */
    private void lead(Run run) {
        if (run.state != 0) {
            return;
        }
        run.state = 1;
        for (Run other : runs) {
            for (DitchWater.Onward onward : ditches.get(other.ditch).onward()) {
                boolean comes =
                        onward.outlet() == other.outlet
                                && runs.get(runOf[onward.ditch()][onward.piece()]) == run;
                if (!comes) {
                    continue;
                }
                lead(other);
                if (other.state == 2) {
                    for (int i = 0; i < run.pieces.length; i++) {
                        if (run.pieces[i] == onward.piece()) {
                            run.into.get(i).add(other.at[other.at.length - 1]);
                        }
                    }
                }
            }
        }
        Water water = Water.NONE;
        for (int i = 0; i < run.pieces.length; i++) {
            DitchWater.Piece piece = ditches.get(run.ditch).pieces().get(run.pieces[i]);
            double before = water.time();
            for (Water other : run.into.get(i)) {
                water = water.with(other);
            }
            water = water.with(beside(piece));
            water = down(water, Math.max(before, water.time()), piece);
            run.at[i] = water;
        }
        run.state = 2;
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
