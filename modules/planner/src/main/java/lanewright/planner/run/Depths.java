package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.DepthField;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.document.EarthPart;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * Depths of topsoil and to soil that bears, on one ground.
 *
 * @param topsoil m
 * @param bearing m, NaN where not known; null if nowhere known
 * @param holes probe holes that the topsoil rests on, or null if it is the same everywhere
 * @param bearingProbed true if the depth to soil that bears comes from probe holes
 * @param findings what is worth a look
 */
record Depths(
        VertexField topsoil,
        @Nullable VertexField bearing,
        @Nullable DepthField holes,
        boolean bearingProbed,
        List<Finding> findings) {

    /** Steps along the lane in which the distance to the nearest hole is looked at, m. */
    private static final double STEP = 5;

    static Depths of(EarthPart earth, Survey survey, Ground ground) throws SurveyException {
        List<Finding> findings = new ArrayList<>();
        DepthField holes = null;
        VertexField topsoil;
        if (earth.topsoil() == EarthPart.Depth.FROM_PROBES) {
            if (survey.probes().stream().allMatch(probe -> Double.isNaN(probe.topsoil()))) {
                throw new SurveyException(
                        null,
                        0,
                        "the plan takes topsoil from probes, and no probe hole says how deep it is",
                        "Add a file of probe holes to the survey, or write a depth, such as"
                                + " \"topsoil\": \"6 in\".");
            }
            holes = DepthField.topsoil(ground, survey.probes());
            findings.addAll(holes.findings());
            topsoil = holes.field();
        } else {
            topsoil = ground.constant(earth.topsoilDepth());
        }
        VertexField bearing =
                switch (earth.bearing()) {
                    case EVERYWHERE -> ground.constant(earth.bearingDepth());
                    case NOT_KNOWN -> null;
                    case FROM_PROBES -> {
                        DepthField field = DepthField.bearing(ground, survey.probes());
                        findings.addAll(field.findings());
                        yield field.holes().isEmpty() ? null : field.field();
                    }
                };
        return new Depths(
                topsoil, bearing, holes, earth.bearing() == EarthPart.Depth.FROM_PROBES, findings);
    }

    /** Findings where the lane lies farther from any hole than a hole can speak for. */
    List<Finding> alongLane(Alignment line, List<Section> sections) {
        List<Finding> found = new ArrayList<>();
        if (holes != null) {
            found.addAll(topsoil(holes, line));
        }
        if (bearingProbed) {
            found.addAll(bearing(sections));
        }
        return found;
    }

    private static List<Finding> topsoil(DepthField holes, Alignment line) {
        double worst = 0;
        double at = 0;
        for (double s = 0; s <= line.length(); s += STEP) {
            double away = holes.nearestHole(line.x(s), line.y(s));
            if (away > worst) {
                worst = away;
                at = s;
            }
        }
        if (worst <= DepthField.REACH) {
            return List.of();
        }
        return List.of(
                new Finding(
                        "topsoil-far-from-holes",
                        Level.LOOK,
                        Topic.EARTH,
                        Where.station(at),
                        Saying.of(
                                "At {} the nearest probe hole is {} away: the depth of topsoil"
                                        + " there is a guess.",
                                Quantity.station(at),
                                Quantity.length(worst)),
                        Quantity.length(worst),
                        Quantity.length(DepthField.REACH),
                        "our choice",
                        Saying.of("Dig a hole near {}.", Quantity.station(at))));
    }

    /** Stretches under whose stone or shoulders the depth to soil that bears is not known. */
    private static List<Finding> bearing(List<Section> sections) {
        double total = 0;
        double longest = -1;
        double from = 0;
        double to = 0;
        int i = 0;
        while (i < sections.size()) {
            if (isBearingKnown(sections.get(i))) {
                i++;
                continue;
            }
            double begin = sections.get(i).station();
            while (i < sections.size() && !isBearingKnown(sections.get(i))) {
                i++;
            }
            double end = sections.get(i - 1).station();
            total += end - begin;
            if (end - begin > longest) {
                longest = end - begin;
                from = begin;
                to = end;
            }
        }
        if (longest < 0) {
            return List.of();
        }
        return List.of(
                new Finding(
                        "bearing-not-known",
                        Level.LOOK,
                        Topic.EARTH,
                        Where.stretch(from, to),
                        Saying.of(
                                "Along {} of the lane, longest from {} to {}, no probe hole"
                                        + " within {} says how deep soil that bears lies: no"
                                        + " undercut is counted there.",
                                Quantity.length(total),
                                Quantity.station(from),
                                Quantity.station(to),
                                Quantity.length(DepthField.REACH)),
                        Quantity.length(total),
                        Quantity.length(DepthField.REACH),
                        "our choice",
                        Saying.of(
                                "Dig or push a rod near {}.", Quantity.station((from + to) / 2))));
    }

    private static boolean isBearingKnown(Section section) {
        SectionLine line = section.bearing();
        return line != null
                && !Double.isNaN(line.at(section.left().hinge().offset()))
                && !Double.isNaN(line.at(section.right().hinge().offset()));
    }
}
