package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * The edges of the travelled way against the ground beside them, all along.
 *
 * <p>The ground beside the lane is the ground at the catch point: where the shape of the lane ends
 * and the land as it was begins. A side with a ditch that leads its water away may lie lower.
 */
public final class EdgeHeights {

    /** Heights closer than this are equal, m. Rounding, nothing else. */
    private static final double SAME = 1e-6;

    /** A note about less of the lane than this helps nobody, m. Our choice. */
    private static final double LEAST_NOTE = 5;

    /**
     * Both edges at a section.
     *
     * @param station m
     * @param left the left edge
     * @param right the right edge
     */
    public record EdgeHeight(double station, Beside left, Beside right) {
        /** Lower than the ground on both sides, and nothing leads the water away. */
        public boolean isTrough() {
            return left.takesWater() && right.takesWater();
        }
    }

    /**
     * One edge.
     *
     * @param above height of the edge above the ground beside it, m, negative if lower; NaN where
     *     the side does not meet the ground
     * @param ditched whether a ditch between them leads water away
     */
    public record Beside(double above, boolean ditched) {
        /** Water of the ground beside runs onto the lane. */
        boolean takesWater() {
            return above < -SAME && !ditched;
        }
    }

    private final List<EdgeHeight> heights;
    private final Limits limits;

    private EdgeHeights(List<EdgeHeight> heights, Limits limits) {
        this.heights = heights;
        this.limits = limits;
    }

    /**
     * The edges at all sections, in station order.
     *
     * @param standing where water stands: a ditch that lies in it leads nothing away
     */
    public static List<EdgeHeight> of(
            List<Section> sections, List<DitchReach> ditches, Ditches.Standing standing) {
        return sections.stream()
                .map(
                        section ->
                                new EdgeHeight(
                                        section.station(),
                                        beside(section, Side.LEFT, ditches, standing),
                                        beside(section, Side.RIGHT, ditches, standing)))
                .toList();
    }

    private static Beside beside(
            Section section, Side side, List<DitchReach> ditches, Ditches.Standing standing) {
        SideResult result = side.of(section);
        Corner ground = result.catchPoint();
        double above = ground == null ? Double.NaN : result.edge().height() - ground.height();
        boolean ditched = false;
        if (result.ditchInner() != null) {
            for (DitchReach ditch : ditches) {
                DitchReach.Outlet outlet =
                        ditch.side() == side ? ditch.outletFrom(section.station()) : null;
                ditched |=
                        outlet != null
                                && outlet.kind() != DitchReach.Kind.DEAD_END
                                && !(outlet.kind() == DitchReach.Kind.CROSSING
                                        && drowned(ditch, section.station(), standing));
            }
        }
        return new Beside(above, ditched);
    }

    /** Whether the bottom of a ditch lies in standing water at a station. */
    private static boolean drowned(DitchReach ditch, double station, Ditches.Standing standing) {
        return ditch.points().stream()
                .anyMatch(point -> point.station() == station && standing.at(point.x(), point.y()));
    }

    /** Where the land's water comes onto the lane: the stretches on both sides, then on one. */
    public static List<WetStretch> wet(
            List<EdgeHeight> heights, List<DitchReach> ditches, Limits limits) {
        var edges = new EdgeHeights(heights, limits);
        List<WetStretch> wet = new ArrayList<>();
        edges.troughs(ditches, wet);
        for (Side side : Side.values()) {
            edges.below(side, ditches, wet);
        }
        return wet;
    }

    /** Edges that stand near the ground beside them. */
    public static List<Finding> notes(List<EdgeHeight> heights, Limits limits) {
        var edges = new EdgeHeights(heights, limits);
        List<Finding> findings = new ArrayList<>();
        for (Side side : Side.values()) {
            edges.near(side, findings);
        }
        return findings;
    }

    private void troughs(List<DitchReach> ditches, List<WetStretch> wet) {
        for (Run run : Run.of(heights.size(), i -> heights.get(i).isTrough())) {
            double lowest = 0;
            for (int i = run.first(); i <= run.last(); i++) {
                EdgeHeight at = heights.get(i);
                lowest = Math.min(lowest, Math.max(at.left().above(), at.right().above()));
            }
            Dead left = dead(Side.LEFT, run, ditches);
            Dead right = dead(Side.RIGHT, run, ditches);
            boolean ditched = left.ditched() && right.ditched();
            wet.add(
                    new WetStretch(
                            WetStretch.Kind.TROUGH,
                            null,
                            run.from(this::station),
                            run.to(this::station, heights.size()),
                            left.ditch() == null ? right.ditch() : left.ditch(),
                            left.outlet() == null ? right.outlet() : left.outlet(),
                            Saying.of(
                                    "The lane lies up to {} lower than the ground on both sides, "
                                            + (ditched
                                                    ? "and its ditches have no outlet"
                                                    : "and no ditch leads the water away")
                                            + ": the lane itself becomes the ditch.",
                                    Quantity.depth(-lowest)),
                            Quantity.depth(lowest),
                            limits.edgeAbove()));
        }
    }

    private void below(Side side, List<DitchReach> ditches, List<WetStretch> wet) {
        for (Run run : runs(side, at -> at.takesWater(), at -> !at.isTrough())) {
            double lowest = lowest(side, run);
            Dead dead = dead(side, run, ditches);
            wet.add(
                    new WetStretch(
                            WetStretch.Kind.EDGE,
                            side,
                            run.from(this::station),
                            run.to(this::station, heights.size()),
                            dead.ditch(),
                            dead.outlet(),
                            Saying.of(
                                    "The lane's "
                                            + side.word()
                                            + " edge lies up to {} lower than the ground beside"
                                            + " it, and "
                                            + (dead.ditched()
                                                    ? "its ditch has no outlet"
                                                    : "no ditch lies between")
                                            + ": water comes onto the lane.",
                                    Quantity.depth(-lowest)),
                            Quantity.depth(lowest),
                            limits.edgeAbove()));
        }
    }

    /** The ditch along a stretch that has no outlet, if any, and whether one lies all along it. */
    private record Dead(
            @Nullable DitchReach ditch, DitchReach.@Nullable Outlet outlet, boolean ditched) {}

    private Dead dead(Side side, Run run, List<DitchReach> ditches) {
        DitchReach found = null;
        DitchReach.Outlet at = null;
        boolean ditched = true;
        for (int i = run.first(); i <= run.last(); i++) {
            boolean here = false;
            for (DitchReach ditch : ditches) {
                DitchReach.Outlet outlet =
                        ditch.side() == side ? ditch.outletFrom(station(i)) : null;
                if (outlet != null) {
                    here = true;
                    found = found == null ? ditch : found;
                    at = at == null ? outlet : at;
                }
            }
            ditched &= here;
        }
        return new Dead(found, at, ditched);
    }

    private void near(Side side, List<Finding> findings) {
        double wanted = limits.edgeAbove().value();
        for (Run run :
                runs(
                        side,
                        at -> at.above() >= -SAME && at.above() < wanted - SAME && !at.ditched(),
                        at -> true)) {
            if (length(run) < LEAST_NOTE) {
                continue; // where a fill turns into a cut, the edge passes through this height
            }
            double lowest = lowest(side, run);
            findings.add(
                    new Finding(
                            "edge-near-ground",
                            Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    "The "
                                            + side.word()
                                            + " edge stands only {} above the ground beside it, at"
                                            + " the least, over {}.",
                                    Quantity.depth(Math.max(0, lowest)),
                                    Quantity.length(length(run))),
                            Quantity.depth(lowest),
                            Quantity.depth(wanted),
                            limits.edgeAbove().source(),
                            Saying.of(
                                    "Better {} or more, so that grass and worn stone do not make a"
                                            + " trough of it.",
                                    Quantity.depth(wanted))));
        }
    }

    private List<Run> runs(Side side, Predicate<Beside> holds, Predicate<EdgeHeight> also) {
        return Run.of(
                heights.size(),
                i -> holds.test(of(side, heights.get(i))) && also.test(heights.get(i)));
    }

    private static Beside of(Side side, EdgeHeight at) {
        return side == Side.LEFT ? at.left() : at.right();
    }

    private double lowest(Side side, Run run) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = run.first(); i <= run.last(); i++) {
            lowest = Math.min(lowest, of(side, heights.get(i)).above());
        }
        return lowest;
    }

    private double length(Run run) {
        return run.to(this::station, heights.size()) - run.from(this::station);
    }

    private Where where(Run run) {
        return Where.stretch(run.from(this::station), run.to(this::station, heights.size()));
    }

    private double station(int i) {
        return heights.get(i).station();
    }
}
