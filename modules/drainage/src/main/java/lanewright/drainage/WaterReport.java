package lanewright.drainage;

import java.util.List;
import java.util.function.IntUnaryOperator;
import lanewright.drainage.along.Clearance;
import lanewright.drainage.along.CrossSlopes.CrossSlope;
import lanewright.drainage.along.Descents.Descent;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.EdgeHeights.EdgeHeight;
import lanewright.drainage.along.Sags.Sag;
import lanewright.drainage.flow.FlowPath;
import lanewright.drainage.pond.GivenPipe;
import lanewright.ground.Ground;
import lanewright.lane.line.TurningPoint;
import lanewright.lane.section.Section;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Where water goes, before and after the lane is built. How wide a pipe must be hangs on a storm
 * and is not in it.
 *
 * @param before low spots of the ground as it is, listed ones, in the order of their level
 * @param after low spots of the finished surface with their fate, listed ones, in the same order
 * @param gone low spots of the ground that the lane drains or fills
 * @param smallBefore low spots of the ground that are too shallow or too small to list
 * @param smallAfter the same, of the finished surface
 * @param pathsBefore ways of water on the ground as it is that drain at least the stated area
 * @param pathsAfter the same on the finished surface
 * @param inflows where such ways come into the limits of work, in station order
 * @param ditches ditches, left ones first, each side in station order
 * @param crossSlopes cross slope at every section
 * @param edges edges against the ground beside, at every section
 * @param sags low points of the profile and their ways out
 * @param descents unbroken ways down the lane and its ditches
 * @param roadEnd the end at the public road
 * @param places every wet place once, in station order, with what to do about each
 * @param pipes the plan's pipes on the finished surface, in the plan's order
 * @param crossings where water is led under the lane, with what comes there
 * @param channels ditches as channels, with the land that drains through them
 * @param land water that stands in hollows and crosses the owner's boundary
 * @param drainage the lane's own drainage
 * @param wet where the ground as it is stays wet by its shape
 * @param cell side of the grid's cells, m
 * @param findings what deserves a look: one for each wet place first, then along the lane by check
 * @param assumptions what the answers rest on
 */
public record WaterReport(
        List<Pool> before,
        List<Pool> after,
        List<Pool> gone,
        int smallBefore,
        int smallAfter,
        List<FlowPath> pathsBefore,
        List<FlowPath> pathsAfter,
        List<Inflow> inflows,
        List<DitchReach> ditches,
        List<CrossSlope> crossSlopes,
        List<EdgeHeight> edges,
        List<Sag> sags,
        List<Descent> descents,
        RoadEnd roadEnd,
        List<WetPlace> places,
        List<PipeCourse> pipes,
        List<Crossing> crossings,
        List<DitchWater> channels,
        LandWater land,
        LaneDrainage drainage,
        WetGround wet,
        double cell,
        List<Finding> findings,
        List<Assumption> assumptions) {

    /** Copies the lists. */
    public WaterReport {
        before = List.copyOf(before);
        after = List.copyOf(after);
        gone = List.copyOf(gone);
        pathsBefore = List.copyOf(pathsBefore);
        pathsAfter = List.copyOf(pathsAfter);
        inflows = List.copyOf(inflows);
        ditches = List.copyOf(ditches);
        crossSlopes = List.copyOf(crossSlopes);
        edges = List.copyOf(edges);
        sags = List.copyOf(sags);
        descents = List.copyOf(descents);
        places = List.copyOf(places);
        pipes = List.copyOf(pipes);
        crossings = List.copyOf(crossings);
        channels = List.copyOf(channels);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** The wet place that a low spot makes, or null if it makes none. */
    public @Nullable WetPlace placeOf(Pool pool) {
        for (WetPlace place : places) {
            if (pool.equals(place.pool())) {
                return place;
            }
        }
        return null;
    }

    /** The low spots that the lane makes, or makes deeper. */
    public List<Pool> made() {
        return after.stream().filter(Pool::isMade).toList();
    }

    /**
     * How the edges of the lane are kept clear, standing water considered.
     *
     * @param sections those that the report was made from
     * @param edgeAbove wanted height of the edge over the ground beside it, m
     */
    public List<Clearance.Stretch> clearance(List<Section> sections, double edgeAbove) {
        return Clearance.of(
                sections,
                edges,
                ditches,
                (x, y) -> after.stream().anyMatch(pool -> pool.spot().covers(x, y)),
                edgeAbove,
                WaterTables.published().limits().ditchLeast().value());
    }

    /**
     * Follows the water.
     *
     * @param ground the ground as it is
     * @param design the lane
     * @param sections its sections, in station order, at least one
     * @param finished the land as it will be: the ground with the finished surface in it, as one
     *     triangulation
     * @param pipes pipes that are there already and stay, and pipes that are to be laid
     * @param options what the owner chose
     * @throws IllegalArgumentException if there are no sections
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public static WaterReport of(
            Ground ground,
            LaneDesign design,
            List<Section> sections,
            Ground finished,
            List<GivenPipe> pipes,
            WaterOptions options,
            Progress progress) {
        return of(
                ground,
                design,
                sections,
                finished,
                null,
                pipes,
                options,
                new BareGround(),
                progress);
    }

    /**
     * The same.
     *
     * @param unchanged for each triangle of {@code finished} the one of {@code ground} that it is,
     *     or -1, the vertices of which keep their numbers; null if nothing is known of them
     * @param bare what is known of the ground as it is
     */
    static WaterReport of(
            Ground ground,
            LaneDesign design,
            List<Section> sections,
            Ground finished,
            @Nullable IntUnaryOperator unchanged,
            List<GivenPipe> pipes,
            WaterOptions options,
            BareGround bare,
            Progress progress) {
        var lane =
                new Lane(
                        new OnAlignment(design.alignment()),
                        sections,
                        design.profile()::grade,
                        design.profile().turningPoints().stream()
                                .filter(TurningPoint::sag)
                                .map(TurningPoint::station)
                                .filter(station -> station > 0 && station < design.length())
                                .toList(),
                        station -> design.at(station).typical(),
                        new SectionAnywhere(design, ground, sections)::at);
        return new Water(
                        lane,
                        new GroundMesh(ground),
                        new GroundMesh(finished),
                        ground::heightAt,
                        pipes,
                        options,
                        WaterTables.published(),
                        bare,
                        unchanged)
                .report(progress);
    }
}
