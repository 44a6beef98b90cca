package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lanewright.drainage.along.BoxedBeds;
import lanewright.drainage.along.CrossSlopes;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchChecks;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Ditches;
import lanewright.drainage.along.EdgeHeights;
import lanewright.drainage.along.Sags;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.ExistingPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.LowSpotSearch;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Progress;

/** Puts the report together: surfaces first, then along the lane. */
final class Water {

    /** Cells are no larger and no smaller than this where memory allows, m. Our choice. */
    private static final double WIDEST = 1;

    private static final double NARROWEST = 0.25;

    /** No more cells than this: some 45 MB while they are worked on. Our choice. */
    private static final int MOST_CELLS = 750_000;

    private final Lane lane;
    private final Mesh ground;
    private final Mesh finished;
    private final DoubleBinaryOperator groundHeight;
    private final List<ExistingPipe> pipes;
    private final WaterOptions options;
    private final WaterTables tables;

    Water(
            Lane lane,
            Mesh ground,
            Mesh finished,
            DoubleBinaryOperator groundHeight,
            List<ExistingPipe> pipes,
            WaterOptions options,
            WaterTables tables) {
        this.lane = lane;
        this.ground = ground;
        this.finished = finished;
        this.groundHeight = groundHeight;
        this.pipes = pipes;
        this.options = options;
        this.tables = tables;
    }

    WaterReport report(Progress progress) {
        List<Section> sections = lane.sections();
        var corridor = new Corridor(lane.line(), sections);
        progress.report(0, "looking for low spots");
        var searchBefore = new LowSpotSearch(ground, pipes);
        LowSpots before = searchBefore.all(options.listed());
        LowSpotSearch.Exits exits = searchBefore.exits();
        LowSpots heldBefore = searchBefore.within(exits, options.listed());
        progress.check();
        progress.report(0.2, "looking for low spots");
        var searchAfter = new LowSpotSearch(finished, pipes);
        LowSpots after = searchAfter.all(options.listed());
        LowSpots heldAfter = searchAfter.within(exits, options.listed());
        progress.check();
        double cell = cell(sections);
        Cells cells = Cells.over(ground, cell, MOST_CELLS);
        FlowGrid flowBefore = FlowGrid.of(ground, cells, before.pipes(), progress.part(0.4, 0.6));
        List<FlowGrid.Drained> drainedBefore = flowBefore.drainedTo(before.listed());
        List<Inflow> inflows = Inflows.of(flowBefore, corridor, options.flowArea());
        progress.check();
        FlowGrid flowAfter = FlowGrid.of(finished, cells, after.pipes(), progress.part(0.6, 0.9));
        progress.check();
        progress.report(0.9, "following water along the lane");

        var matching = new Pools(lane, corridor, tables.limits(), before.listed(), after.listed());
        List<Pool> pools =
                Pools.withHeld(
                        matching.finished(flowAfter.drainedTo(after.listed())),
                        new Pools(
                                lane,
                                corridor,
                                tables.limits(),
                                heldBefore.listed(),
                                heldAfter.listed()),
                        flowAfter.drainedTo(heldAfter.listed()),
                        spot -> crossesLane(flowBefore, corridor, spot));
        List<Pool> gone = matching.gone(drainedBefore);

        List<ExistingPipe> open =
                after.pipes().stream()
                        .filter(pipe -> pipe.state() == PlacedPipe.State.OPEN)
                        .map(PlacedPipe::pipe)
                        .toList();
        Ditches.Standing standing =
                (x, y) -> pools.stream().anyMatch(pool -> pool.spot().covers(x, y));
        Ditches.Standing crossable =
                (x, y) ->
                        pools.stream()
                                .anyMatch(pool -> pool.isCrossable() && pool.spot().covers(x, y));
        List<DitchReach> ditches = Ditches.of(sections, lane.line(), standing, crossable, open);
        List<CrossSlopes.CrossSlope> slopes = CrossSlopes.of(sections, lane.grades());
        List<EdgeHeights.EdgeHeight> edges = EdgeHeights.of(sections, ditches, standing);
        List<Sags.Sag> sags =
                Sags.of(lane.lows(), sections, slopes, ditches, lane.line(), standing);
        List<Descents.Descent> descents =
                Descents.of(
                        slopes,
                        sections.stream().map(Section::profileHeight).toList(),
                        ditches,
                        tables.crossDrains(),
                        tables.waterBars(),
                        options.soil() != WaterOptions.Soil.FIRM);
        RoadEnd roadEnd = RoadEnds.of(lane, groundHeight, open);
        List<WetStretch> stretches = new ArrayList<>();
        stretches.addAll(DitchChecks.wet(ditches, tables.limits()));
        stretches.addAll(EdgeHeights.wet(edges, ditches, tables.limits()));
        stretches.addAll(Sags.wet(sags));
        List<WetPlace> places =
                new WetPlaces(lane, tables.limits(), pools, ditches)
                        .of(stretches, inflows, roadEnd);

        List<Finding> findings = new ArrayList<>();
        places.forEach(place -> findings.add(place.finding()));
        findings.addAll(PlaceFindings.pipes(after.pipes()));
        findings.addAll(
                PlaceFindings.roadEnd(
                        roadEnd,
                        lane.typical().apply(sections.get(0).station()).width(),
                        lane.line().length()));
        findings.addAll(DitchChecks.check(ditches, tables.limits(), standing));
        findings.addAll(EdgeHeights.notes(edges, tables.limits()));
        findings.addAll(CrossSlopes.check(sections, lane.grades(), tables.limits()));
        findings.addAll(BoxedBeds.check(sections, lane.typical()));
        findings.addAll(Descents.check(descents));
        return new WaterReport(
                matching.asTheyAre(drainedBefore),
                pools,
                gone,
                before.small(),
                after.small(),
                flowBefore.paths(options.flowArea()),
                flowAfter.paths(options.flowArea()),
                inflows,
                ditches,
                slopes,
                edges,
                sags,
                descents,
                roadEnd,
                places,
                after.pipes(),
                cells.size(),
                findings,
                WaterAssumptions.of(options, tables, cells.size(), cell));
    }

    /** Whether water on the ground as it is ran from the spot to the other side of the lane. */
    private static boolean crossesLane(FlowGrid flow, Corridor corridor, LowSpot spot) {
        Place deepest = corridor.place(spot.x(), spot.y());
        int cell = flow.cells().at(spot.x(), spot.y());
        while (deepest != null && cell >= 0) {
            Place place = corridor.place(flow.cells().x(cell), flow.cells().y(cell));
            if (place != null && Side.at(place.offset()) != Side.at(deepest.offset())) {
                return true;
            }
            cell = flow.next(cell); // leaving is -1
        }
        return false;
    }

    /** A third of the narrowest ditch's top. */
    private double cell(List<Section> sections) {
        double narrowest = 3 * WIDEST;
        for (Section section : sections) {
            TypicalSection typical = lane.typical().apply(section.station());
            for (SideShape side : List.of(typical.left(), typical.right())) {
                Ditch ditch = side.ditch();
                if (ditch.rule() != DitchRule.NEVER) {
                    narrowest =
                            Math.min(
                                    narrowest,
                                    ditch.bottom()
                                            + ditch.depth()
                                                    * (side.foreslope() + side.backslope()));
                }
            }
        }
        return Math.max(NARROWEST, narrowest / 3);
    }
}
