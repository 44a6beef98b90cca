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

    /** The same plan in other units. */
    public Plan with(UnitSystem newUnits) {
        return new Plan(
                name,
                note,
                date,
                newUnits,
                currency,
                survey,
                benchmarks,
                line,
                ends,
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /** The same plan on another survey. */
    public Plan with(SurveyPart newSurvey) {
        return new Plan(
                name,
                note,
                date,
                units,
                currency,
                newSurvey,
                benchmarks,
                line,
                ends,
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /** The same plan on another line. */
    public Plan with(LinePart newLine) {
        return new Plan(
                name,
                note,
                date,
                units,
                currency,
                survey,
                benchmarks,
                newLine,
                ends,
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /** The same plan with other ends. */
    public Plan with(EndsPart newEnds) {
        return new Plan(
                name,
                note,
                date,
                units,
                currency,
                survey,
                benchmarks,
                line,
                newEnds,
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
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

    /** The same plan with other stone. */
    public Plan with(StonePart newStone) {
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
                grade,
                shapes,
                along,
                ditchBottoms,
                newStone,
                earth,
                water,
                hazards,
                work);
    }

    /** The same plan with other soil. */
    public Plan with(EarthPart newEarth) {
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
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                newEarth,
                water,
                hazards,
                work);
    }

    /** The same plan with other water. */
    public Plan with(WaterPart newWater) {
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
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                newWater,
                hazards,
                work);
    }

    /** The same plan with other hazards. */
    public Plan with(HazardPart newHazards) {
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
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                newHazards,
                work);
    }

    /** The same plan, measured and staked another way. */
    public Plan with(WorkPart newWork) {
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
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                newWork);
    }

    /** The same plan with other shapes across and along. */
    public Plan shaped(
            List<ShapePart> newShapes,
            List<ShapePart.Along> newAlong,
            List<ShapePart.OwnDitch> newBottoms) {
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
                grade,
                newShapes,
                newAlong,
                newBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /** The same plan under another name. */
    public Plan called(String newName) {
        return new Plan(
                newName,
                note,
                date,
                units,
                currency,
                survey,
                benchmarks,
                line,
                ends,
                grade,
                shapes,
                along,
                ditchBottoms,
                stone,
                earth,
                water,
                hazards,
                work);
    }

    /**
     * What stands after an amount of money: the plan's word for it, or that it is its owner's own
     * where the plan has no word.
     */
    public String afterMoney() {
        return currency.isBlank() || currency.equals("money") ? " in your money" : " " + currency;
    }

    /** The same plan with other points of known height. */
    public Plan levelled(List<Benchmark> newBenchmarks) {
        return new Plan(
                name,
                note,
                date,
                units,
                currency,
                survey,
                newBenchmarks,
                line,
                ends,
                grade,
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
