package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.WaterOptions;
import lanewright.drainage.WaterReport;
import lanewright.drainage.Wetting;
import lanewright.drainage.along.Berm;
import lanewright.drainage.along.NamedOutlet;
import lanewright.drainage.along.Side;
import lanewright.drainage.hollows.RainStep;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.LowSpots;
import lanewright.ground.Ground;
import lanewright.planner.document.Benchmark;
import lanewright.planner.document.EarthPart;
import lanewright.planner.document.HazardPart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;
import lanewright.planner.document.Spot;
import lanewright.planner.document.WaterPart;
import lanewright.planner.document.WorkPart;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.HeapLand;
import lanewright.planner.work.Stakes;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/** Turns what a plan says of water, hazards and benchmarks into what the rooms take. */
final class LandInputs {

    private LandInputs() {}

    /** The pipes of the plan, those that are there and those to be laid. */
    static List<GivenPipe> pipes(WaterPart water, Places places) throws SurveyException {
        List<GivenPipe> pipes = new ArrayList<>();
        for (WaterPart.Pipe pipe : water.pipes()) {
            double[] in = places.local(pipe.inlet().spot());
            double[] out = places.local(pipe.outlet().spot());
            pipes.add(
                    new GivenPipe(
                            pipe.name(),
                            in[0],
                            in[1],
                            pipe.inlet().invert(),
                            out[0],
                            out[1],
                            pipe.outlet().invert(),
                            pipe.diameter(),
                            pipe.state() == WaterPart.PipeState.TO_LAY,
                            pipe.material().known(),
                            pipe.tailwater(),
                            pipe.ends().known()));
        }
        return pipes;
    }

    /** What the owner chose about water, on a land that was measured so. */
    static WaterOptions water(Plan plan, Survey survey, Places places) throws SurveyException {
        List<NamedOutlet> outlets = new ArrayList<>();
        for (WaterPart.Outlet outlet : plan.water().outlets()) {
            Spot spot = outlet.spot();
            double[] at = spot == null ? new double[] {Double.NaN, Double.NaN} : places.local(spot);
            ShapePart.Hand side = outlet.side();
            outlets.add(
                    new NamedOutlet(
                            outlet.name(),
                            outlet.station(),
                            side == null ? null : Side.valueOf(side.name()),
                            at[0],
                            at[1],
                            NamedOutlet.Permitted.valueOf(outlet.permitted().name())));
        }
        return new WaterOptions(
                new LowSpots.Threshold(plan.water().spotDepth(), plan.water().spotArea()),
                plan.water().flowArea(),
                soil(plan.earth().washes()),
                wetting(plan.water(), survey),
                outlets,
                plan.water().berms().stream()
                        .map(
                                berm ->
                                        new Berm(
                                                berm.from(),
                                                berm.to(),
                                                Side.valueOf(berm.side().name()),
                                                berm.height()))
                        .toList());
    }

    private static Wetting wetting(WaterPart water, Survey survey) {
        return new Wetting(
                water.rain().steps().stream()
                        .map(step -> RainStep.ofHours(step.name(), step.rain(), step.hours()))
                        .toList(),
                water.soaksIn(),
                survey.heightError(),
                survey.boundary());
    }

    private static WaterOptions.Soil soil(EarthPart.Washes washes) {
        return switch (washes) {
            case LITTLE -> WaterOptions.Soil.FIRM;
            case EASILY -> WaterOptions.Soil.WASHES;
            case NOT_KNOWN -> WaterOptions.Soil.NOT_KNOWN;
        };
    }

    /** Things that can hurt, local metres. */
    static List<Hazard> hazards(HazardPart part, Places places) throws SurveyException {
        List<Hazard> hazards = new ArrayList<>();
        for (HazardPart.Wire wire : part.wires()) {
            hazards.add(
                    new Hazard(
                            Hazard.Kind.WIRE,
                            wire.name(),
                            spots(wire.points(), places),
                            wire.clearance(),
                            0,
                            0));
        }
        for (HazardPart.Buried buried : part.buried()) {
            Hazard.Kind kind =
                    switch (buried.owner()) {
                        case PUBLIC -> Hazard.Kind.BURIED_PUBLIC;
                        case PRIVATE -> Hazard.Kind.BURIED_PRIVATE;
                        case NOT_KNOWN -> Hazard.Kind.BURIED;
                    };
            hazards.add(
                    new Hazard(
                            kind,
                            buried.name(),
                            spots(buried.points(), places),
                            buried.depth(),
                            0,
                            0));
        }
        for (HazardPart.KeepOff keepOff : part.keepOff()) {
            hazards.add(
                    new Hazard(
                            Hazard.Kind.valueOf(keepOff.kind().name()),
                            keepOff.name(),
                            spots(keepOff.outline(), places),
                            Double.NaN,
                            keepOff.radius(),
                            keepOff.away()));
        }
        return hazards;
    }

    /** The land that heaps stand on, with the owner's places for them. */
    static HeapLand heaps(
            Plan plan,
            Survey survey,
            Ground ground,
            WaterReport water,
            List<Hazard> hazards,
            Places places)
            throws SurveyException {
        List<HeapLand.Chosen> chosen = new ArrayList<>();
        for (WorkPart.HeapSpot heap : plan.work().heaps()) {
            double[] at = places.local(heap.spot());
            chosen.add(new HeapLand.Chosen(heap.name(), at[0], at[1]));
        }
        List<Spot> benchmarks = plan.benchmarks().stream().map(Benchmark::spot).toList();
        return new HeapLand(
                ground,
                survey.boundary(),
                water,
                hazards,
                spots(benchmarks, places),
                plan.work().stakesBeyond(),
                chosen);
    }

    private static List<Hazard.Spot> spots(List<Spot> spots, Places places) throws SurveyException {
        List<Hazard.Spot> local = new ArrayList<>();
        for (Spot spot : spots) {
            double[] at = places.local(spot);
            local.add(new Hazard.Spot(at[0], at[1]));
        }
        return local;
    }

    /** What heights are taken from, or null without a benchmark. */
    static Stakes.@Nullable Levels levels(Plan plan, Places places) throws SurveyException {
        if (plan.benchmarks().isEmpty()) {
            return null;
        }
        Benchmark first = plan.benchmarks().get(0);
        double[] at = places.local(first.spot());
        return new Stakes.Levels(
                first.name(), first.height(), plan.work().instrumentHeight(), at[0], at[1]);
    }
}
