package lanewright.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.FallAdvice;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Reliefs;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** Puts the lane's own drainage together. */
final class LaneDrainages {

    /** Water is caught no nearer to the road than this, m: room for its verge. Our choice. */
    private static final double VERGE = 6;

    /** And no farther from it than this, m. Our choice: what falls beyond would arrive anyway. */
    private static final double REACH = 40;

    private static final double STEP = 2;

    private final Lane lane;
    private final Limits limits;
    private final Reliefs reliefs;

    LaneDrainages(Lane lane, DoubleBinaryOperator ground, Limits limits) {
        this.lane = lane;
        this.limits = limits;
        reliefs = new Reliefs(lane.line(), lane.sectionAt(), lane.typical(), ground, limits);
    }

    LaneDrainage of(
            List<DitchReach> ditches,
            List<Descents.Descent> descents,
            List<WetPlace> places,
            RoadEnd road,
            List<GivenPipe> pipes,
            WaterOptions options) {
        List<Relief> proposed = reliefs.of(descents);
        return new LaneDrainage(
                DitchEnd.of(ditches, pipes, options.outlets()),
                proposed,
                descents.stream()
                        .filter(each -> each.way() == Descents.Way.LANE && each.isTooLong())
                        .toList(),
                places.stream().filter(LaneDrainages::comesAcross).toList(),
                FallAdvice.of(
                        lane.sections(),
                        lane.typical(),
                        lane.grades(),
                        limits,
                        options.soil() != WaterOptions.Soil.FIRM),
                caught(road));
    }

    private static boolean comesAcross(WetPlace place) {
        boolean comes =
                switch (place.kind()) {
                    case DAMMED, WATERCOURSE -> true;
                    case ON_LANE, DITCH, LEVEL_DITCH, EDGE, LOW_POINT, ROAD_DITCH, HOLLOW ->
                            place.runsOverLane();
                };
        return comes && !place.isServed();
    }

    private LaneDrainage.RoadCatch caught(RoadEnd road) {
        double width = lane.typical().apply(lane.sections().get(0).station()).width();
        double gravel = road.fallingToRoad() * width;
        for (double at = VERGE; at <= Math.min(REACH, lane.line().length()); at += STEP) {
            Section section = lane.sectionAt().apply(at);
            for (Side side : Side.values()) {
                Corner ditch = side.of(section).ditchInner();
                double height = ditch == null ? side.of(section).edge().height() : ditch.height();
                if (!Double.isNaN(reliefs.turnsOut(section, side, height))) {
                    return new LaneDrainage.RoadCatch(gravel, at, side);
                }
            }
        }
        return new LaneDrainage.RoadCatch(gravel, Double.NaN, null);
    }

    /** How the lane had better fall, where that is not how it is drawn. */
    static List<Finding> falls(LaneDrainage drainage, Limits limits) {
        List<FallAdvice> changes = drainage.falls().stream().filter(FallAdvice::isChange).toList();
        List<Finding> findings = new ArrayList<>();
        for (FallAdvice advice : changes) {
            List<Quantity> quantities = new ArrayList<>();
            quantities.add(Quantity.grade(Math.abs(advice.across())));
            quantities.addAll(advice.why().quantities());
            findings.add(
                    new Finding(
                            "fall-across",
                            Level.NOTE,
                            Topic.SHAPE,
                            Where.stretch(advice.from(), advice.to()),
                            new Saying(
                                    "The ground falls {} across, to the "
                                            + (advice.across() > 0 ? "right" : "left")
                                            + ", and the lane "
                                            + now(advice)
                                            + ": it had better "
                                            + better(advice)
                                            + ", for "
                                            + advice.why().pattern()
                                            + ".",
                                    quantities),
                            Quantity.grade(Math.abs(advice.across())),
                            null,
                            limits.outslopeMost().source(),
                            Saying.of(
                                    "A proposal: see it on the water sheet, and give the shape"
                                            + " there a fall of {} if you agree.",
                                    Quantity.grade(advice.slope()))));
        }
        return findings;
    }

    private static String now(FallAdvice advice) {
        return switch (advice.now()) {
            case CROWN -> "has a crown";
            case SHED_LEFT -> "falls to the left in one plane";
            case SHED_RIGHT -> "falls to the right in one plane";
        };
    }

    private static String better(FallAdvice advice) {
        return switch (advice.better()) {
            case CROWN -> "have a crown";
            case SHED_LEFT -> "fall to the left in one plane";
            case SHED_RIGHT -> "fall to the right in one plane";
        };
    }
}
