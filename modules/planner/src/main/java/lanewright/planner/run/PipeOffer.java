package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.storm.Sized;
import lanewright.drainage.storm.StormReport;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.Plan;
import lanewright.planner.document.Spot;
import lanewright.planner.document.WaterPart;
import lanewright.planner.pipes.UsualPipe;
import lanewright.survey.LonLat;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/** A pipe that the water of a plan asks for, as a change of the plan that its owner may take. */
public final class PipeOffer {

    /**
     * Clear width that a pipe is given until its owner knows better, m: 18 in. Our choice, a common
     * one under a lane.
     */
    private static final double WIDE_US = 18 * 0.0254;

    /** The same where pipes are sold by the millimetre, m. */
    private static final double WIDE_METRIC = 0.45;

    private PipeOffer() {}

    /** The pipe that fits as the lane is drawn and drains the deepest water, or null. */
    public static @Nullable CulvertLine fitting(Outcome outcome) {
        WetPlace deepest = null;
        for (WetPlace place : outcome.water().places()) {
            if (place.pool() != null
                    && place.cure().hasPipeNow()
                    && (deepest == null || place.depth() > deepest.depth())) {
                deepest = place;
            }
        }
        return deepest == null ? null : deepest.cure().pipe();
    }

    /**
     * Clear width that a pipe is given, m: enough for the storm of the plan, else a usual one, or
     * the widest less than that which has room.
     */
    public static double wide(Outcome outcome, CulvertLine culvert) {
        return enough(outcome, culvert)
                .orElseGet(
                        () ->
                                UsualPipe.under(culvert, usual(outcome.plan().units()))
                                        .inside()
                                        .span());
    }

    /** Whether a pipe of the usual width has no room with the earth over it. */
    public static boolean isTight(Outcome outcome, CulvertLine culvert) {
        double usual = usual(outcome.plan().units());
        return UsualPipe.under(culvert, usual).inside().span() < usual * 0.97;
    }

    /** Clear width that a pipe is given until its owner knows better, m. */
    static double usual(UnitSystem units) {
        return units == UnitSystem.US ? WIDE_US : WIDE_METRIC;
    }

    /**
     * Clear width of one round pipe that carries the storm of the plan whatever it is made of, m;
     * empty if the plan has no storm, or it takes more than one round pipe.
     */
    public static OptionalDouble enough(Outcome outcome, CulvertLine culvert) {
        return enough(outcome.storm(), culvert);
    }

    /** The same of a storm, null if the plan has none. */
    static OptionalDouble enough(@Nullable StormReport storm, CulvertLine culvert) {
        List<PipeChoice> choices =
                storm == null ? List.of() : storm.at(culvert).map(Sized::choices).orElse(List.of());
        if (!choices.stream().allMatch(PipeOffer::isOneRound)) {
            return OptionalDouble.empty();
        }
        return choices.stream()
                .flatMap(choice -> choice.chosen().stream())
                .mapToDouble(option -> option.size().barrel().inside().span())
                .max();
    }

    private static boolean isOneRound(PipeChoice choice) {
        return choice.chosen()
                .map(option -> option.barrels() == 1 && option.size().shape() == Inlet.Shape.ROUND)
                .orElse(false);
    }

    /**
     * The plan with such a pipe in it, to be laid.
     *
     * @throws IllegalArgumentException if the survey's frame cannot say where on earth it lies
     */
    public static Plan taken(Plan plan, Outcome outcome, CulvertLine culvert) {
        Alignment line = outcome.design().alignment();
        Place in = new Place(culvert.station(), culvert.inlet().offset());
        Place out = new Place(culvert.outletStation(), culvert.outlet().offset());
        List<WaterPart.Pipe> pipes = new ArrayList<>(plan.water().pipes());
        pipes.add(
                new WaterPart.Pipe(
                        "pipe at " + Words.of(Quantity.station(culvert.station()), plan.units()),
                        new WaterPart.Mouth(
                                spot(plan, outcome.survey(), line.x(in), line.y(in)),
                                culvert.inlet().height()),
                        new WaterPart.Mouth(
                                spot(plan, outcome.survey(), line.x(out), line.y(out)),
                                culvert.outlet().height()),
                        wide(outcome, culvert),
                        WaterPart.PipeState.TO_LAY));
        return plan.with(plan.water().with(pipes));
    }

    private static Spot spot(Plan plan, Survey survey, double x, double y) {
        if (!plan.line().points().get(0).spot().degrees()) {
            return Spot.at(x + survey.originX(), y + survey.originY());
        }
        try {
            LonLat place = survey.onEarth(x, y);
            return Spot.onEarth(place.longitude(), place.latitude());
        } catch (SurveyException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }
}
