package lanewright.planner.document;

import lanewright.measure.LengthUnit;
import lanewright.survey.read.DepthUnit;
import lanewright.survey.read.Holds;

/** The plan, field by field. What stands here once is read, written and published as the schema. */
final class PlanForm {

    private PlanForm() {}

    static Plan plan(Form<Plan> f) {
        return new Plan(
                f.value("name", Codecs.TEXT, Plan::name, "What the lane is called."),
                f.valueOr("note", Codecs.TEXT, "", Plan::note, "Anything to keep with the plan."),
                f.valueOr("date", Codecs.TEXT, "", Plan::date, "A date to print on the sheets."),
                f.value(
                        "units",
                        Codecs.UNITS,
                        Plan::units,
                        "Units of sheets and answers: us (feet, inches, cubic yards, short tons) or"
                                + " metric."),
                f.value(
                        "currency",
                        Codecs.TEXT,
                        Plan::currency,
                        "Word printed beside money, such as dollars."),
                f.part(
                        "survey",
                        Plan::survey,
                        PlanForm::survey,
                        "Where the measured ground comes from. Survey files are never altered."),
                f.parts(
                        "benchmarks",
                        Plan::benchmarks,
                        PlanForm::benchmark,
                        "Points of known height that will not move. Without one no height is"
                                + " staked."),
                f.part("line", Plan::line, LaneForm::line, "Where the lane runs."),
                f.part("ends", Plan::ends, LaneForm::ends, "How the lane fits what is there."),
                f.part("grade", Plan::grade, LaneForm::grade, "What grade the lane takes."),
                f.parts("shapes", Plan::shapes, LaneForm::shape, "Shapes across, by name."),
                f.parts("along", Plan::along, LaneForm::along, "Which shape holds where."),
                f.parts(
                        "ditchBottoms",
                        Plan::ditchBottoms,
                        LaneForm::ownDitch,
                        "Ditch bottoms with a grade of their own; elsewhere they follow the lane."),
                f.part("stone", Plan::stone, LandForm::stone, "Stone, trucks and prices."),
                f.part("earth", Plan::earth, LandForm::earth, "Topsoil and soil."),
                f.part("water", Plan::water, LandForm::water, "Pipes, and what counts as water."),
                f.part("hazards", Plan::hazards, LandForm::hazards, "Things that can hurt."),
                f.part("work", Plan::work, LandForm::work, "How the work is measured and staked."));
    }

    private static SurveyPart survey(Form<SurveyPart> f) {
        return new SurveyPart(
                f.value(
                        "frame",
                        Codecs.FRAME,
                        SurveyPart::frame,
                        "The flat map: local for plain coordinates, EPSG:26916 or the like for a"
                                + " projected system, or zone at longitude 10.5, latitude 45.2."),
                f.parts("files", SurveyPart::files, PlanForm::file, "The survey files."),
                f.part("codes", SurveyPart::codes, PlanForm::codes, "What codes of points mean."),
                f.valueOr(
                        "heightError",
                        Codecs.DEPTH,
                        Double.NaN,
                        SurveyPart::heightError,
                        "How far a height may be off, one standard deviation."),
                f.value(
                        "corridor",
                        Codecs.LENGTH,
                        SurveyPart::corridor,
                        "How far to either side of the lane elevation grids are read."));
    }

    static SurveyPart.File file(Form<SurveyPart.File> f) {
        return new SurveyPart.File(
                f.value(
                        "path",
                        Codecs.TEXT,
                        SurveyPart.File::path,
                        "Where it lies, seen from the folder of the plan."),
                f.value(
                        "holds",
                        Codecs.choice(Holds.class),
                        SurveyPart.File::holds,
                        "What it holds."),
                f.valueIfAny(
                        "unit",
                        Codecs.units(LengthUnit.values(), LengthUnit::symbol),
                        SurveyPart.File::unit,
                        "Unit of its coordinates: m, ft (international) or ftUS (US survey)."),
                f.valueIfAny(
                        "heightUnit",
                        Codecs.units(LengthUnit.values(), LengthUnit::symbol),
                        SurveyPart.File::heightUnit,
                        "Unit of its heights, if another."),
                f.valueIfAny(
                        "depthUnit",
                        Codecs.units(DepthUnit.values(), DepthUnit::symbol),
                        SurveyPart.File::depthUnit,
                        "Unit of bare depths in probe holes."),
                f.valueIfAny(
                        "columns",
                        Codecs.TEXT,
                        SurveyPart.File::columns,
                        "Order of its columns, such as name, northing, easting, height, code;"
                                + " skip for one that is not used."),
                f.valueIfAny(
                        "separator",
                        Codecs.choice(SurveyPart.Separator.class),
                        SurveyPart.File::separator,
                        "What stands between fields."),
                f.valueIfAny(
                        "decimal",
                        Codecs.choice(SurveyPart.Decimal.class),
                        SurveyPart.File::decimal,
                        "Decimal sign."),
                f.wholeIfAny(
                        "epsg",
                        SurveyPart.File::epsg,
                        "EPSG code of its own system, if other than the frame's."),
                f.valueIfAny(
                        "coordinates",
                        Codecs.choice(SurveyPart.Coordinates.class),
                        SurveyPart.File::coordinates,
                        "GeoJSON only: longitude latitude (RFC 7946, the default) or local."),
                f.valueIfAny(
                        "heightProperty",
                        Codecs.TEXT,
                        SurveyPart.File::heightProperty,
                        "GeoJSON only: the property that holds the height."),
                f.valueIfAny(
                        "kindProperty",
                        Codecs.TEXT,
                        SurveyPart.File::kindProperty,
                        "GeoJSON only: the property that tells point, breakline, contour and"
                                + " boundary apart."));
    }

    private static SurveyPart.Codes codes(Form<SurveyPart.Codes> f) {
        return new SurveyPart.Codes(
                f.words(
                        "breaklines",
                        SurveyPart.Codes::breaklines,
                        "Codes that make breaklines, each one whole word or several."),
                f.valueIfAny(
                        "start",
                        Codecs.TEXT,
                        SurveyPart.Codes::start,
                        "Code beside a breakline code that begins a new line."),
                f.valueIfAny(
                        "end",
                        Codecs.TEXT,
                        SurveyPart.Codes::end,
                        "Code beside a breakline code that ends its line."),
                f.words(
                        "notGround",
                        SurveyPart.Codes::notGround,
                        "Codes of shots that do not lie on the ground."));
    }

    private static Benchmark benchmark(Form<Benchmark> f) {
        return new Benchmark(
                f.value("name", Codecs.TEXT, Benchmark::name, "What it is, to find it again."),
                f.spot(Benchmark::spot),
                f.value("height", Codecs.HEIGHT, Benchmark::height, "Its height."));
    }
}
