package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Does water leave the travelled way sideways? Cross slopes as they came out in the sections,
 * transitions at the ends included, against published limits.
 *
 * <p>On a grade the steepest way down is {@code sqrt(cross slope² + grade²)}, and water runs {@code
 * sqrt(1 + (grade / cross slope)²)} times the half width before it is off the lane.
 */
public final class CrossSlopes {

    /** Cross slopes are compared to this, so that a plan's 3 % is not "under 3 %" by rounding. */
    private static final double SAME = 1e-9;

    private final List<Section> sections;
    private final GradeAt grades;
    private final Limits limits;

    /** Grade of the lane by station, rise over run. */
    public interface GradeAt {
        /** The grade at a station, m. */
        double at(double station);
    }

    /**
     * A section's cross slopes.
     *
     * @param station m
     * @param left fall from the alignment to the left edge, rise over run, negative if it rises
     * @param right fall to the right edge
     * @param steepest slope of the steepest way down, whatever its direction
     */
    public record CrossSlope(double station, double left, double right, double steepest) {
        /** The gentler of the two falls, regardless of their direction. */
        double gentler() {
            return Math.min(Math.abs(left), Math.abs(right));
        }

        /** The steeper of the two, regardless of direction. */
        double steeper() {
            return Math.max(Math.abs(left), Math.abs(right));
        }
    }

    private CrossSlopes(List<Section> sections, GradeAt grades, Limits limits) {
        this.sections = sections;
        this.grades = grades;
        this.limits = limits;
    }

    /** The cross slopes of all sections, in station order. */
    public static List<CrossSlope> of(List<Section> sections, GradeAt grades) {
        return sections.stream().map(section -> slope(section, grades)).toList();
    }

    /** What is wrong with them. */
    public static List<Finding> check(List<Section> sections, GradeAt grades, Limits limits) {
        return new CrossSlopes(sections, grades, limits).findings();
    }

    private static CrossSlope slope(Section section, GradeAt grades) {
        double left = fall(section, section.left());
        double right = fall(section, section.right());
        double cross = Math.min(Math.abs(left), Math.abs(right));
        double grade = grades.at(section.station());
        return new CrossSlope(
                section.station(), left, right, Math.sqrt(cross * cross + grade * grade));
    }

    private static double fall(Section section, SideResult side) {
        return (section.profileHeight() - side.edge().height()) / Math.abs(side.edge().offset());
    }

    private List<Finding> findings() {
        List<CrossSlope> slopes = of(sections, grades);
        List<Finding> findings = new ArrayList<>();
        double least = limits.crossLeast().value();
        for (Run run :
                Run.of(
                        slopes.size(),
                        i ->
                                slopes.get(i).gentler() < least - SAME
                                        && slopes.get(i).steepest() < least - SAME)) {
            CrossSlope worst = slopes.get(run.first());
            for (int i = run.first(); i <= run.last(); i++) {
                if (slopes.get(i).steepest() < worst.steepest()) {
                    worst = slopes.get(i);
                }
            }
            findings.add(
                    new Finding(
                            "surface-too-flat",
                            Level.LOOK,
                            Topic.WATER,
                            where(slopes, run),
                            Saying.of(
                                    "The stone falls only {} at its steepest, at {}: water will"
                                            + " stand on it and soak in.",
                                    Quantity.grade(worst.steepest()),
                                    Quantity.station(worst.station())),
                            Quantity.grade(worst.steepest()),
                            Quantity.grade(least),
                            limits.crossLeast().source(),
                            Saying.of(
                                    "Give the lane a cross slope of at least {} here.",
                                    Quantity.grade(least))));
        }
        for (Run run :
                Run.of(
                        slopes.size(),
                        i ->
                                slopes.get(i).gentler() < least - SAME
                                        && slopes.get(i).steepest() >= least - SAME)) {
            CrossSlope worst = slopes.get(run.first());
            for (int i = run.first(); i <= run.last(); i++) {
                if (slopes.get(i).gentler() < worst.gentler()) {
                    worst = slopes.get(i);
                }
            }
            findings.add(
                    new Finding(
                            "cross-slope-low",
                            Level.LOOK,
                            Topic.WATER,
                            where(slopes, run),
                            Saying.of(
                                    "The cross slope is only {} at {}, on a grade of {}: water runs"
                                            + " down the lane and takes stone along.",
                                    Quantity.grade(worst.gentler()),
                                    Quantity.station(worst.station()),
                                    Quantity.grade(Math.abs(grades.at(worst.station())))),
                            Quantity.grade(worst.gentler()),
                            Quantity.grade(least),
                            limits.crossLeast().source(),
                            Saying.of(
                                    "Give the lane a cross slope of at least {} here.",
                                    Quantity.grade(least))));
        }
        double most = limits.crossMost().value();
        for (Run run : Run.of(slopes.size(), i -> slopes.get(i).steeper() > most + SAME)) {
            CrossSlope worst = slopes.get(run.first());
            for (int i = run.first(); i <= run.last(); i++) {
                if (slopes.get(i).steeper() > worst.steeper()) {
                    worst = slopes.get(i);
                }
            }
            findings.add(
                    new Finding(
                            "cross-slope-high",
                            Level.LOOK,
                            Topic.WATER,
                            where(slopes, run),
                            Saying.of(
                                    "The cross slope is {} at {}: wheels slide sideways on ice and"
                                            + " a loaded bed leans when it is raised.",
                                    Quantity.grade(worst.steeper()),
                                    Quantity.station(worst.station())),
                            Quantity.grade(worst.steeper()),
                            Quantity.grade(most),
                            limits.crossMost().source(),
                            Saying.of(
                                    "Keep the cross slope to {} or less.", Quantity.grade(most))));
        }
        return findings;
    }

    private static Where where(List<CrossSlope> slopes, Run run) {
        return Where.stretch(
                run.from(i -> slopes.get(i).station()),
                run.to(i -> slopes.get(i).station(), slopes.size()));
    }
}
