package lanewright.planner.run;

import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Survey;

/** Says where the lane runs over ground that was measured too thinly. */
final class GroundTrust {

    /**
     * Shots further apart than this say little of the ground between them, m. Our choice: a little
     * over the diagonal of a grid of 50 ft, which is as wide as cross-sections are usually taken.
     */
    static final double FARTHEST = 25;

    /** Steps along the lane, and how far out to either side is looked, m. Our choice. */
    private static final double STEP = 2;

    private static final double BESIDE = 5;

    private GroundTrust() {}

    /** A finding at the longest facet under the lane or just beside it, if that is too long. */
    static List<Finding> alongLane(Ground ground, Alignment line) {
        double worst = 0;
        double at = 0;
        for (double s = 0; s <= line.length(); s += STEP) {
            for (double offset = -BESIDE; offset <= BESIDE; offset += BESIDE) {
                Place place = new Place(s, offset);
                double side = ground.longestSideAt(line.x(place), line.y(place));
                if (side > worst) {
                    worst = side;
                    at = s;
                }
            }
        }
        if (worst <= FARTHEST) {
            return List.of();
        }
        return List.of(
                new Finding(
                        "ground-thinly-measured",
                        Level.LOOK,
                        Topic.GROUND,
                        Where.station(at),
                        Saying.of(
                                "At {} the lane runs over a facet {} long: what lies between its"
                                        + " shots is a guess.",
                                Quantity.station(at),
                                Quantity.length(worst)),
                        Quantity.length(worst),
                        Quantity.length(FARTHEST),
                        "our choice",
                        Saying.of(
                                "Shoot more points near {}, at breaks of slope first.",
                                Quantity.station(at))));
    }

    /** Probe holes along the lane this far apart tell topsoil and firm soil, m. Our choice. */
    private static final double HOLES = 30;

    /** A finding if nobody has dug a hole to see how deep the topsoil is and what bears. */
    static List<Finding> underTheGrass(Survey survey, double length) {
        if (!survey.probes().isEmpty()) {
            return List.of();
        }
        double holes = Math.floor(length / HOLES) + 1;
        return List.of(
                Finding.of(
                        "no-probe-holes",
                        Level.LOOK,
                        Topic.GROUND,
                        Where.stretch(0, length),
                        Saying.plain(
                                "No probe hole was dug: nobody has seen how deep the topsoil is or"
                                        + " where firm soil begins."),
                        Saying.of(
                                "Dig {} "
                                        + Saying.number(holes, "hole", "holes")
                                        + " with a spade or auger along the lane, one every {~}, and"
                                        + " note at each how deep topsoil and firm soil lie. Until"
                                        + " then topsoil and soft soil are a guess.",
                                Quantity.count(holes),
                                Quantity.length(HOLES))));
    }
}
