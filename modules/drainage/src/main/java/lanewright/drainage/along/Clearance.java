package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section;

/**
 * How the edges of the lane are kept clear of the ground's water: they stand high enough over the
 * ground beside them, or lie lower beside a ditch that drains, or neither.
 *
 * <p>A ditch drains at a section if it falls all along, at least at the least grade, from there to
 * a place where its water runs out on lower ground, goes into a pipe, or stands where a pipe under
 * the lane lets it through. What arrives at the public road does not drain: it may not run onto it.
 * The short flat top of a turning point is no break in the fall.
 */
public final class Clearance {

    /** Heights are built to this, m: an edge that misses its height by less has it. */
    private static final double BUILT = 0.01;

    private static final double SAME = 1e-9;

    /** How an edge is kept clear, from the best to the worst. */
    public enum State {
        /** It stands as high as is wanted over the ground beside it. */
        HIGH,
        /** It lies lower, and a ditch beside it drains. */
        DRAINED,
        /** It stands over the ground beside it, but not as high as is wanted, without a ditch. */
        NEAR,
        /** It lies lower, and no ditch drains. */
        UNDRAINED
    }

    /** Why an edge is in its state. */
    public enum Why {
        /** It stands high enough. */
        HIGH,
        /** Its ditch runs out over lower ground. */
        RUNS_OUT,
        /** Its ditch leads to a pipe. */
        PIPE,
        /** Its ditch leads to where water must pass under the lane. */
        CROSSING,
        /** There is no ditch, and the edge stands over the ground. */
        NO_DITCH_NEAR,
        /** There is no ditch, and the edge lies under the ground. */
        NO_DITCH,
        /** The bottom of the ditch lies in standing water. */
        IN_WATER,
        /** Its ditch is too flat somewhere on the way. */
        FLAT,
        /** Its ditch arrives at the public road. */
        ROAD,
        /** Its ditch has no way out. */
        DEAD_END
    }

    /**
     * One edge.
     *
     * @param state how it is kept clear
     * @param why why
     * @param place station where its ditch's water goes, or where the ditch is too flat, m; NaN
     *     where that is not asked
     */
    public record Edge(State state, Why why, double place) {}

    /**
     * A stretch of the lane along which both edges are alike.
     *
     * @param from where it begins, m
     * @param to where it ends, m
     * @param left the left edge
     * @param right the right edge
     */
    public record Stretch(double from, double to, Edge left, Edge right) {
        /** The worse of the two. */
        public State state() {
            return left.state().compareTo(right.state()) > 0 ? left.state() : right.state();
        }

        /** Its length, m. */
        public double length() {
            return to - from;
        }

        /** An edge. */
        public Edge edge(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }

    private static final Edge HIGH = new Edge(State.HIGH, Why.HIGH, Double.NaN);

    private final List<Section> sections;
    private final List<EdgeHeights.EdgeHeight> edges;
    private final List<DitchReach> ditches;
    private final Ditches.Standing standing;
    private final double wanted;
    private final double least;

    private Clearance(
            List<Section> sections,
            List<EdgeHeights.EdgeHeight> edges,
            List<DitchReach> ditches,
            Ditches.Standing standing,
            double wanted,
            double least) {
        this.sections = sections;
        this.edges = edges;
        this.ditches = ditches;
        this.standing = standing;
        this.wanted = wanted;
        this.least = least;
    }

    /**
     * The whole lane, in station order, each section speaking for it halfway to its neighbours.
     *
     * @param edges the edges at the sections, as many
     * @param standing where water stands
     * @param wanted height of an edge over the ground beside it, m
     * @param least least grade of a ditch, rise over run
     */
    public static List<Stretch> of(
            List<Section> sections,
            List<EdgeHeights.EdgeHeight> edges,
            List<DitchReach> ditches,
            Ditches.Standing standing,
            double wanted,
            double least) {
        return new Clearance(sections, edges, ditches, standing, wanted, least).stretches();
    }

    private List<Stretch> stretches() {
        List<Edge> left = edges(Side.LEFT);
        List<Edge> right = edges(Side.RIGHT);
        List<Stretch> stretches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= sections.size(); i++) {
            if (i < sections.size()
                    && left.get(i).equals(left.get(first))
                    && right.get(i).equals(right.get(first))) {
                continue;
            }
            var run = new Run(first, i - 1);
            double from = run.from(k -> sections.get(k).station());
            double to = run.to(k -> sections.get(k).station(), sections.size());
            if (to > from) {
                stretches.add(new Stretch(from, to, left.get(first), right.get(first)));
            }
            first = i;
        }
        return stretches;
    }

    private List<Edge> edges(Side side) {
        List<Edge> all = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            all.add(edge(side, i));
        }
        return all;
    }

    private Edge edge(Side side, int i) {
        EdgeHeights.EdgeHeight both = edges.get(i);
        EdgeHeights.Beside at = side == Side.LEFT ? both.left() : both.right();
        if (!(at.above() < wanted - BUILT)) {
            return HIGH; // or the ground is not met, which is a finding of its own
        }
        double station = sections.get(i).station();
        if (side.of(sections.get(i)).ditchInner() != null) {
            for (DitchReach ditch : ditches) {
                DitchReach.Outlet outlet = ditch.side() == side ? ditch.outletFrom(station) : null;
                if (outlet != null) {
                    return ditched(ditch, station, outlet);
                }
            }
        }
        return at.above() < 0
                ? new Edge(State.UNDRAINED, Why.NO_DITCH, Double.NaN)
                : new Edge(State.NEAR, Why.NO_DITCH_NEAR, Double.NaN);
    }

    private Edge ditched(DitchReach ditch, double station, DitchReach.Outlet outlet) {
        if (ditch.points().stream()
                .anyMatch(p -> p.station() == station && standing.at(p.x(), p.y()))) {
            return new Edge(State.UNDRAINED, Why.IN_WATER, outlet.station());
        }
        double flat = flat(ditch, station, outlet.station());
        if (!Double.isNaN(flat)) {
            return new Edge(State.UNDRAINED, Why.FLAT, flat);
        }
        return switch (outlet.kind()) {
            case DAYLIGHT, FAR_END -> new Edge(State.DRAINED, Why.RUNS_OUT, outlet.station());
            case PIPE, PIPE_TO_LAY -> new Edge(State.DRAINED, Why.PIPE, outlet.station());
            case CROSSING -> new Edge(State.DRAINED, Why.CROSSING, outlet.station());
            case ROAD -> new Edge(State.UNDRAINED, Why.ROAD, outlet.station());
            case DEAD_END -> new Edge(State.UNDRAINED, Why.DEAD_END, outlet.station());
        };
    }

    /** Where the ditch is too flat at a station or between it and its outlet, or NaN. */
    private double flat(DitchReach ditch, double station, double outlet) {
        double from = Math.min(station, outlet) - SAME;
        double to = Math.max(station, outlet) + SAME;
        for (List<DitchReach.Leg> run : ditch.flat(least)) {
            for (DitchReach.Leg leg : run) {
                boolean touches = leg.from() <= station + SAME && leg.to() >= station - SAME;
                boolean onTheWay = leg.from() >= from && leg.to() <= to;
                if (touches || (onTheWay && !underWater(ditch, leg))) {
                    return leg.from();
                }
            }
        }
        return Double.NaN;
    }

    private boolean underWater(DitchReach ditch, DitchReach.Leg leg) {
        return ditch.points().stream()
                .filter(p -> p.station() >= leg.from() && p.station() <= leg.to())
                .allMatch(p -> standing.at(p.x(), p.y()));
    }
}
