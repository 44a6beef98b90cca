package lanewright.planner.document;

import java.util.List;
import lanewright.measure.UnitSystem;

/**
 * A whole plan as its owner wrote it. SI inside; stations in metres, with positive infinity for "to
 * the end of the lane". Never changes; an edit makes another plan.
 *
 * @param name what the lane is called
 * @param note anything the owner wants to keep with it; may be empty
 * @param date a date to print on the sheets, as the owner writes it; may be empty
 * @param units the units in which sheets and answers are written
 * @param currency word printed beside money
 * @param survey where the measured ground comes from
 * @param benchmarks points of known height
 * @param line where the lane runs
 * @param ends how it fits what is at its ends
 * @param grade what grade it takes
 * @param shapes shapes across, at least one
 * @param along which shape holds where
 * @param ditchBottoms ditch bottoms with a grade of their own
 * @param stone stone, trucks, prices
 * @param earth soil
 * @param water pipes and what is asked about water
 * @param hazards what can hurt
 * @param work how it is measured and staked
 */
public record Plan(
        String name,
        String note,
        String date,
        UnitSystem units,
        String currency,
        SurveyPart survey,
        List<Benchmark> benchmarks,
        LinePart line,
        EndsPart ends,
        GradePart grade,
        List<ShapePart> shapes,
        List<ShapePart.Along> along,
        List<ShapePart.OwnDitch> ditchBottoms,
        StonePart stone,
        EarthPart earth,
        WaterPart water,
        HazardPart hazards,
        WorkPart work) {

    /** The version of the document that this program writes. */
    public static final int VERSION = 1;

    /** Copies the lists and checks that shapes are named once and stretches name them. */
    public Plan {
        benchmarks = List.copyOf(benchmarks);
        shapes = List.copyOf(shapes);
        along = List.copyOf(along);
        ditchBottoms = List.copyOf(ditchBottoms);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a plan needs a name");
        }
    }

    /** The same plan with another grade. */
    public Plan with(GradePart newGrade) {
        return new Plan(
                name,
                note,
                date,
                units,
                currency,
                survey,
                benchmarks,
                line,
                ends,
                newGrade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /** The shape of a name, which exists. */
    public ShapePart shape(String wanted) {
        for (ShapePart shape : shapes) {
            if (shape.name().equals(wanted)) {
                return shape;
            }
        }
        throw new IllegalArgumentException("no shape is called " + wanted);
    }
}
