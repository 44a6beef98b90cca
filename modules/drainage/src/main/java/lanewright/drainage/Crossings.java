package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import org.jspecify.annotations.Nullable;

/** Finds where water is led under the lane, with what comes there. */
final class Crossings {

    /** Water that comes over the lane is looked for this far to both sides of a pipe, m. */
    private static final double CREST = 60;

    private final List<Section> sections;
    private final FlowGrid flow;
    private final LaneLine line;
    private final List<Pool> pools;
    private final SpillAt spillAt;
    private final List<Draft> drafts = new ArrayList<>();

    /** A crossing whose water's way is not yet known; cells that it has are of its pool or one. */
    private record Draft(
            String name,
            CulvertLine line,
            double diameter,
            @Nullable Material material,
            boolean toLay,
            double raise,
            double drained,
            boolean isLeast,
            double tailwater,
            Inlet.End ends,
            @Nullable Overflow overflow) {}

    /** What water runs over at a place. */
    @FunctionalInterface
    interface SpillAt {

        /**
         * What water runs over.
         *
         * @param away whether it leaves the survey there
         */
        Pool.Spill of(double x, double y, boolean away);
    }

    private Crossings(
            List<Section> sections,
            FlowGrid flow,
            LaneLine line,
            List<Pool> pools,
            SpillAt spillAt) {
        this.sections = sections;
        this.flow = flow;
        this.line = line;
        this.pools = pools;
        this.spillAt = spillAt;
    }

    /**
     * Pipes of the plan that pass under the lane, then those that wet places want.
     *
     * @param flow water on the finished surface, with the plan's pipes in it
     * @param line where the lane runs
     * @param pools water that sits on that surface
     * @param spillAt what water runs over at a place of that surface
     */
    static List<Crossing> of(
            List<Section> sections,
            FlowGrid flow,
            LaneLine line,
            List<Pool> pools,
            SpillAt spillAt,
            List<PipeCourse> courses,
            List<WetPlace> places) {
        return new Crossings(sections, flow, line, pools, spillAt).found(courses, places);
    }

    private List<Crossing> found(List<PipeCourse> courses, List<WetPlace> places) {
        List<WetPlace> wanting =
                places.stream()
                        .filter(place -> place.cure().pipe() != null)
                        .filter(place -> place.drained() > 0)
                        .toList();
        List<LowSpot> spots = new ArrayList<>();
        List<Integer> spotOf = new ArrayList<>();
        for (int i = 0; i < wanting.size(); i++) {
            Pool pool = wanting.get(i).pool();
            if (pool != null) {
                spots.add(pool.spot());
                spotOf.add(i);
            }
        }
        int[] in = flow.cellsOf(spots);
        for (int cell = 0; cell < in.length; cell++) {
            in[cell] = in[cell] < 0 ? -1 : spotOf.get(in[cell]);
        }
        for (int i = 0; i < wanting.size(); i++) {
            WetPlace place = wanting.get(i);
            if (place.pool() == null) {
                mark(in, place.x(), place.y(), i);
            }
            wants(place);
        }
        for (PipeCourse course : courses) {
            CulvertLine under = course.under();
            int cell = flow.cells().at(course.pipe().inletX(), course.pipe().inletY());
            if (under != null && cell >= 0 && !Double.isNaN(flow.height(cell))) {
                int stands = flow.standsAt(cell);
                in[cell] = drafts.size();
                in[stands] = drafts.size();
                has(course.pipe(), under, stands);
            }
        }
        List<FlowGrid.Gathered> comes =
                drafts.isEmpty() ? List.of() : flow.gathered(in, drafts.size());
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            crossings.add(crossing(drafts.get(i), comes.get(i).way()));
        }
        return crossings;
    }

    private void mark(int[] in, double x, double y, int number) {
        int cell = flow.cells().at(x, y);
        if (cell >= 0) {
            in[cell] = number;
        }
    }

    private void wants(WetPlace place) {
        CulvertLine pipe = place.cure().pipe();
        if (pipe != null) {
            drafts.add(
                    new Draft(
                            place.name(),
                            pipe,
                            Double.NaN,
                            null,
                            true,
                            place.cure().raise(),
                            place.drained(),
                            place.isLeast(),
                            Double.NaN,
                            Inlet.End.PROJECTING,
                            overflow(place.pool(), pipe)));
        }
    }

    private void has(GivenPipe pipe, CulvertLine under, int cell) {
        drafts.add(
                new Draft(
                        pipe.name(),
                        under,
                        pipe.diameter(),
                        pipe.material(),
                        pipe.toLay(),
                        0,
                        flow.drained(cell),
                        flow.reachesRim(cell),
                        pipe.tailwater(),
                        pipe.ends(),
                        overflow(pipe)));
    }

    /** Where the water runs over that a pipe is offered for. */
    private static @Nullable Overflow overflow(@Nullable Pool pool, CulvertLine pipe) {
        return pool == null
                ? null
                : overflow(pool.spot().level() - pipe.inlet().height(), pool.spill());
    }

    /** Where water would go if a pipe of the plan took none. */
    private @Nullable Overflow overflow(GivenPipe pipe) {
        FlowGrid.Over over = flow.without(pipe);
        return over == null
                ? null
                : overflow(
                        over.level() - pipe.inletInvert(),
                        spillAt.of(over.x(), over.y(), over.isAway()));
    }

    private static @Nullable Overflow overflow(double depth, Pool.Spill spill) {
        return depth > 0 ? new Overflow(depth, spill) : null;
    }

    /** Water over an outlet: what its owner says, else a pool that it runs into. */
    private Crossing.Tailwater tailwater(Draft draft) {
        if (!Double.isNaN(draft.tailwater)) {
            return new Crossing.Tailwater(Crossing.Tailwater.From.OWNER, draft.tailwater);
        }
        CulvertLine pipe = draft.line;
        var out = new Place(pipe.outletStation(), pipe.outlet().offset());
        double x = line.x(out);
        double y = line.y(out);
        double deepest = 0;
        for (Pool pool : pools) {
            if (pool.spot().covers(x, y)) {
                deepest = Math.max(deepest, pool.spot().level() - pipe.outlet().height());
            }
        }
        return deepest > 0
                ? new Crossing.Tailwater(Crossing.Tailwater.From.POOL, deepest)
                : Crossing.Tailwater.FREE;
    }

    private Crossing crossing(Draft draft, FlowGrid.Way way) {
        double at = draft.line.crossing();
        double invert = draft.line.inlet().height();
        List<Double> stations = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Section section : sections) {
            if (Math.abs(section.station() - at) <= CREST && section.station() > last) {
                last = section.station();
                stations.add(last);
                heights.add(section.profileHeight() - invert);
            }
        }
        return new Crossing(
                draft.name,
                draft.line,
                draft.diameter,
                draft.material,
                draft.toLay,
                draft.raise,
                draft.drained,
                draft.isLeast,
                way,
                stations,
                heights,
                tailwater(draft),
                draft.ends,
                draft.overflow);
    }
}
