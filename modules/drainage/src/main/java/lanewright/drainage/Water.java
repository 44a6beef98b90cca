package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntUnaryOperator;
import lanewright.drainage.along.BoxedBeds;
import lanewright.drainage.along.CrossSlopes;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchChecks;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Ditches;
import lanewright.drainage.along.EdgeDams;
import lanewright.drainage.along.EdgeHeights;
import lanewright.drainage.along.Sags;
import lanewright.drainage.along.Side;
import lanewright.drainage.along.WetStretch;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.LowSpotSearch;
import lanewright.drainage.pond.LowSpots;
import lanewright.drainage.pond.Mesh;
import lanewright.drainage.pond.PlacedPipe;
import lanewright.drainage.pond.WholeSearch;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.SideBySide;
import org.jspecify.annotations.Nullable;

/** Puts the report together: surfaces first, then along the lane. */
final class Water {

    /** Cells are no larger and no smaller than this where memory allows, m. Our choice. */
    private static final double WIDEST = 1;

    private static final double NARROWEST = 0.25;

    private final Lane lane;
    private final Mesh ground;
    private final Mesh finished;
    private final DoubleBinaryOperator groundHeight;
    private final List<GivenPipe> pipes;
    private final WaterOptions options;
    private final WaterTables tables;
    private final BareGround bare;
    private final @Nullable IntUnaryOperator unchanged;

    Water(
            Lane lane,
            Mesh ground,
            Mesh finished,
            DoubleBinaryOperator groundHeight,
            List<GivenPipe> pipes,
            WaterOptions options,
            WaterTables tables) {
        this(lane, ground, finished, groundHeight, pipes, options, tables, new BareGround(), null);
    }

    Water(
            Lane lane,
            Mesh ground,
            Mesh finished,
            DoubleBinaryOperator groundHeight,
            List<GivenPipe> pipes,
            WaterOptions options,
            WaterTables tables,
            BareGround bare,
            @Nullable IntUnaryOperator unchanged) {
        this.lane = lane;
        this.ground = ground;
        this.finished = finished;
        this.groundHeight = groundHeight;
        this.pipes = pipes;
        this.options = options;
        this.tables = tables;
        this.bare = bare;
        this.unchanged = unchanged;
    }

    WaterReport report(Progress progress) {
        List<Section> sections = lane.sections();
        var corridor = new Corridor(lane.line(), sections);
        progress.report(0, "looking for low spots");
        BareGround.Spots spots =
                bare.spots(ground, there(), options.listed(), progress.part(0, 0.2));
        LowSpots before = spots.all();
        LowSpots heldBefore = spots.held();
        double cell = cell(sections);
        FlowGrid.Base base = bare.cells(ground, cell, progress.part(0.2, 0.3));
        Cells cells = base.cells();
        FlowGrid flowBefore = bare.flow(base, before.pipes(), progress.part(0.3, 0.4));
        List<FlowGrid.Drained> drainedBefore = bare.drained(flowBefore, before);
        progress.check();
        progress.report(0.4, "looking for low spots");
        var land = new LandWaters(cells, options, bare.within(cells, options.wetting().boundary()));
        var built = new Built(base, flowBefore, land, spots.exits(), progress);
        built.find();
        LowSpots after = built.after();
        LowSpots heldAfter = built.held();
        FlowGrid flowAfter = built.flow();
        List<Inflow> inflows = Inflows.of(flowBefore, corridor, options.flowArea());
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

        List<GivenPipe> open =
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
        var words = new WetWords(lane, tables.limits(), ditches);
        List<PipeCourse> courses =
                after.pipes().stream()
                        .map(
                                placed -> {
                                    CulvertLine under =
                                            PipeCourse.under(
                                                    lane.line(), placed.pipe(), lane.sectionAt());
                                    return new PipeCourse(
                                            placed.pipe(), placed.state(), under, words.fit(under));
                                })
                        .toList();
        List<WetPlace> places =
                new WetPlaces(
                                lane,
                                tables.limits(),
                                pools,
                                ditches,
                                new ServingPipes(courses, flowAfter, lane.line()))
                        .of(stretches, inflows, roadEnd);

        var along = new LaneDrainages(lane, groundHeight, tables.limits());
        LaneDrainage drainage = along.of(ditches, descents, places, roadEnd, open, options);
        List<Finding> findings = new ArrayList<>();
        places.forEach(place -> findings.add(place.finding()));
        findings.addAll(PlaceFindings.pipes(courses, lane.line(), words));
        findings.addAll(
                PlaceFindings.roadEnd(
                        roadEnd,
                        lane.typical().apply(sections.get(0).station()).width(),
                        lane.line().length()));
        findings.addAll(DitchChecks.check(ditches, tables.limits(), standing));
        findings.addAll(EdgeHeights.notes(edges, tables.limits()));
        findings.addAll(CrossSlopes.check(sections, lane.grades(), tables.limits()));
        findings.addAll(BoxedBeds.check(sections, lane.typical()));
        findings.addAll(
                EdgeDams.check(
                        sections,
                        slopes,
                        lane.grades(),
                        options.berms(),
                        tables.waterBars(),
                        options.soil() != WaterOptions.Soil.FIRM));
        findings.addAll(Descents.check(descents));
        progress.report(0.95, "filling hollows");
        LandWater standingWater =
                land.of(
                        bare.border(flowBefore, options, land),
                        built.border(),
                        flowAfter.hollows(),
                        pools,
                        lane.line(),
                        progress);
        findings.addAll(DitchEnd.check(drainage.ends(), options.outlets()));
        findings.addAll(LaneDrainages.falls(drainage, tables.limits()));
        return new WaterReport(
                matching.asTheyAre(drainedBefore),
                pools,
                gone,
                before.small(),
                after.small(),
                bare.paths(flowBefore, options.flowArea()),
                flowAfter.paths(options.flowArea()),
                inflows,
                ditches,
                slopes,
                edges,
                sags,
                descents,
                roadEnd,
                places,
                courses,
                Crossings.of(
                        sections, flowAfter, lane.line(), pools, matching::spill, courses, places),
                DitchWaters.of(ditches, sections, lane.line(), flowAfter, lane.typical()),
                standingWater,
                drainage,
                bare.wet(flowBefore),
                cells.size(),
                findings,
                WaterAssumptions.of(options, tables, cells.size(), cell));
    }

    /** Water on the finished surface, found on as many cores as are free; lives for one call. */
    private final class Built {
        private final FlowGrid.Base base;
        private final FlowGrid before;
        private final LandWaters land;
        private final LowSpotSearch.Exits exits;
        private final Progress progress;
        private final List<PlacedPipe> placed;
        private @Nullable LowSpotSearch search;
        private double @Nullable [] heights;
        private @Nullable LowSpots after;
        private @Nullable LowSpots held;
        private @Nullable FlowGrid flow;
        private LandWater.@Nullable Border border;

        Built(
                FlowGrid.Base base,
                FlowGrid before,
                LandWaters land,
                LowSpotSearch.Exits exits,
                Progress progress) {
            this.base = base;
            this.before = before;
            this.land = land;
            this.exits = exits;
            this.progress = progress;
            placed = pipes.stream().map(pipe -> PlacedPipe.on(finished, pipe)).toList();
        }

        void find() {
            SideBySide.each(2, () -> this, Built::ready);
            progress.report(0.6, "finding the ways of water");
            SideBySide.each(3, () -> this, Built::follow);
        }

        private void ready(int part) {
            IntUnaryOperator same = unchanged;
            if (part == 0) {
                search =
                        same == null
                                ? new WholeSearch(finished, placed, progress)
                                : bare.land(ground, progress)
                                        .search(finished, same, placed, progress);
            } else {
                heights = base.heights(finished, same == null ? t -> -1 : same, progress);
            }
        }

        private void follow(int part) {
            LowSpotSearch ready = Objects.requireNonNull(search);
            switch (part) {
                case 0 -> after = ready.all(options.listed());
                case 1 -> held = ready.within(exits, options.listed());
                default -> {
                    FlowGrid made =
                            bare.built(
                                    base,
                                    before,
                                    Objects.requireNonNull(heights),
                                    placed,
                                    progress);
                    flow = made;
                    border = land.border(made);
                }
            }
        }

        LowSpots after() {
            return Objects.requireNonNull(after);
        }

        LowSpots held() {
            return Objects.requireNonNull(held);
        }

        FlowGrid flow() {
            return Objects.requireNonNull(flow);
        }

        LandWater.Border border() {
            return Objects.requireNonNull(border);
        }
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

    /** The pipes that are there before anything is built. */
    private List<GivenPipe> there() {
        return pipes.stream().filter(pipe -> !pipe.toLay()).toList();
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
