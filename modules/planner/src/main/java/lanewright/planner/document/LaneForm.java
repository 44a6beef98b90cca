package lanewright.planner.document;

import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;

/** The parts of the plan that give the lane its line, its grade and its shape. */
final class LaneForm {

    private LaneForm() {}

    static LinePart line(Form<LinePart> f) {
        return new LinePart(
                f.parts(
                        "points",
                        LinePart::points,
                        LaneForm::linePoint,
                        "Where its straights meet, from the road to the far end."));
    }

    static LinePart.Point linePoint(Form<LinePart.Point> f) {
        return new LinePart.Point(
                f.valueOr("name", Codecs.TEXT, "", LinePart.Point::name, "What it is called."),
                f.spot(LinePart.Point::spot),
                f.valueOr(
                        "radius",
                        Codecs.LENGTH,
                        0.0,
                        LinePart.Point::radius,
                        "Radius of the curve here, none at the ends or for a sharp angle."));
    }

    static EndsPart ends(Form<EndsPart> f) {
        return new EndsPart(
                f.part("road", EndsPart::road, LaneForm::end, "The public road, at the start."),
                f.part("far", EndsPart::far, LaneForm::end, "The far end."),
                f.value(
                        "roadDitch",
                        Codecs.choice(EndsPart.RoadDitch.class),
                        EndsPart::roadDitch,
                        "The public road's own ditch: not known, none, or piped."));
    }

    private static EndsPart.End end(Form<EndsPart.End> f) {
        return new EndsPart.End(
                f.valueOr(
                        "height",
                        Codecs.HEIGHT,
                        Double.NaN,
                        EndsPart.End::height,
                        "Height of what is there; left out, the ground's own."),
                f.valueOr(
                        "grade",
                        Codecs.GRADE,
                        Double.NaN,
                        EndsPart.End::grade,
                        "Its grade along the lane, uphill going in positive."),
                f.valueOr(
                        "crossSlope",
                        Codecs.CROSS_SLOPE,
                        Double.NaN,
                        EndsPart.End::crossSlope,
                        "Its fall across, such as 2 % right or 2 % left, looking up the lane."),
                f.value(
                        "over",
                        Codecs.LENGTH,
                        EndsPart.End::over,
                        "Length over which the lane's cross slope goes over into it."));
    }

    static GradePart grade(Form<GradePart> f) {
        return new GradePart(
                f.value("steepest", Codecs.GRADE, GradePart::steepest, "Steepest grade allowed."),
                f.value(
                        "flattest",
                        Codecs.GRADE,
                        GradePart::flattest,
                        "Flattest grade wanted, so that water runs along."),
                f.value(
                        "edgeAboveGround",
                        Codecs.DEPTH,
                        GradePart::edgeAboveGround,
                        "How high the lane's edge is wanted above the higher ground beside it."),
                f.value(
                        "curvePerPercent",
                        Codecs.LENGTH,
                        GradePart::curvePerPercent,
                        "Least length of vertical curve for each percent that the grade changes."),
                f.parts(
                        "through",
                        GradePart::through,
                        LaneForm::through,
                        "Heights that the lane must pass through, besides its ends."),
                f.parts(
                        "sagOutlets",
                        GradePart::sagOutlets,
                        LaneForm::outlet,
                        "Where water is led away, so that a low point of the lane may lie there."),
                f.parts(
                        "points",
                        GradePart::points,
                        LaneForm::gradePoint,
                        "Where its grades meet. Left out, a first grade is laid."),
                f.words("reasons", GradePart::reasons, "Why the points lie where they do."));
    }

    private static GradePart.Through through(Form<GradePart.Through> f) {
        return new GradePart.Through(
                f.value("station", Codecs.STATION, GradePart.Through::station, "Where."),
                f.value(
                        "height",
                        Codecs.HEIGHT,
                        GradePart.Through::height,
                        "Height of the finished surface at the lane's line."));
    }

    private static GradePart.Outlet outlet(Form<GradePart.Outlet> f) {
        return new GradePart.Outlet(
                f.value("station", Codecs.STATION, GradePart.Outlet::station, "Where."),
                f.value(
                        "how",
                        Codecs.TEXT,
                        GradePart.Outlet::how,
                        "How the water gets away, such as pipe or dip with outlet."));
    }

    private static GradePart.Point gradePoint(Form<GradePart.Point> f) {
        return new GradePart.Point(
                f.value("station", Codecs.STATION_OR_END, GradePart.Point::station, "Where."),
                f.value(
                        "height",
                        Codecs.HEIGHT,
                        GradePart.Point::height,
                        "Height where the two straight grades meet."),
                f.valueOr(
                        "curve",
                        Codecs.LENGTH,
                        0.0,
                        GradePart.Point::curve,
                        "Length of the vertical curve centred here."));
    }

    static ShapePart shape(Form<ShapePart> f) {
        return new ShapePart(
                f.value("name", Codecs.TEXT, ShapePart::name, "What stretches call it."),
                f.value(
                        "width",
                        Codecs.LENGTH,
                        ShapePart::width,
                        "Travelled width at the top of the stone."),
                f.value(
                        "fall",
                        Codecs.choice(CrossFall.class),
                        ShapePart::fall,
                        "Crown (falling both ways), shed left or shed right."),
                f.value(
                        "crossSlope",
                        Codecs.GRADE,
                        ShapePart::crossSlope,
                        "How much it falls across."),
                f.value(
                        "bed",
                        Codecs.choice(Bed.class),
                        ShapePart::bed,
                        "How the stone sits: on top, or boxed between soil shoulders."),
                f.parts("layers", ShapePart::layers, LaneForm::layer, "Stone, from the top down."),
                f.valueOr(
                        "subgradeFall",
                        Codecs.GRADE,
                        Double.NaN,
                        ShapePart::subgradeFall,
                        "Fall across of the soil under the stone; left out, the same as above."),
                f.part("left", ShapePart::left, LaneForm::side, "Left, looking up the lane."),
                f.part("right", ShapePart::right, LaneForm::side, "Right, looking up the lane."),
                f.flag(
                        "strip",
                        ShapePart::strip,
                        "Whether topsoil is stripped first; false builds up on top of it."),
                f.value(
                        "topsoilBack",
                        Codecs.DEPTH,
                        ShapePart::topsoilBack,
                        "Topsoil put back on slopes outside the stone."),
                f.flag(
                        "topsoilInDitch",
                        ShapePart::topsoilInDitch,
                        "Whether topsoil is put back in ditch bottoms too."));
    }

    private static ShapePart.Layer layer(Form<ShapePart.Layer> f) {
        return new ShapePart.Layer(
                f.value(
                        "role",
                        Codecs.TEXT,
                        ShapePart.Layer::role,
                        "The plain role that names it, such as surface, intermediate or base."),
                f.value(
                        "thickness",
                        Codecs.DEPTH,
                        ShapePart.Layer::thickness,
                        "Compacted thickness."),
                f.value(
                        "edgeSlope",
                        Codecs.SIDE_SLOPE,
                        ShapePart.Layer::edgeSlope,
                        "Slope of its edges where stone lies on top."),
                f.valueOr(
                        "width",
                        Codecs.LENGTH,
                        Double.NaN,
                        ShapePart.Layer::width,
                        "Width of its top; left out, it begins where the layer above ends."));
    }

    private static ShapePart.Side side(Form<ShapePart.Side> f) {
        return new ShapePart.Side(
                f.value(
                        "shoulder",
                        Codecs.LENGTH,
                        ShapePart.Side::shoulder,
                        "Soil shoulder outside the stone."),
                f.value(
                        "foreslope",
                        Codecs.SIDE_SLOPE,
                        ShapePart.Side::foreslope,
                        "Slope down from the shoulder."),
                f.value(
                        "ditch",
                        Codecs.choice(DitchRule.class),
                        ShapePart.Side::ditch,
                        "When a ditch is dug: where below ground, always or never."),
                f.value(
                        "ditchDepth",
                        Codecs.DEPTH,
                        ShapePart.Side::ditchDepth,
                        "From the shoulder's outer edge down to the bottom."),
                f.value(
                        "ditchBottom",
                        Codecs.LENGTH,
                        ShapePart.Side::ditchBottom,
                        "Width of the flat bottom; 0 makes a V."),
                f.value(
                        "backslope",
                        Codecs.SIDE_SLOPE,
                        ShapePart.Side::backslope,
                        "Slope from the ditch up to the ground."),
                f.value(
                        "cutSlope",
                        Codecs.SIDE_SLOPE,
                        ShapePart.Side::cutSlope,
                        "Slope up to the ground where no ditch is dug."));
    }

    static ShapePart.Along along(Form<ShapePart.Along> f) {
        return new ShapePart.Along(
                f.value("from", Codecs.STATION, ShapePart.Along::from, "First station."),
                f.value("to", Codecs.STATION_OR_END, ShapePart.Along::to, "Last station."),
                f.value("shape", Codecs.TEXT, ShapePart.Along::shape, "Name of the shape."));
    }

    static ShapePart.OwnDitch ownDitch(Form<ShapePart.OwnDitch> f) {
        return new ShapePart.OwnDitch(
                f.value(
                        "side",
                        Codecs.choice(ShapePart.Hand.class),
                        ShapePart.OwnDitch::side,
                        "Left or right, looking up the lane."),
                f.value("from", Codecs.STATION, ShapePart.OwnDitch::from, "First station."),
                f.value("to", Codecs.STATION_OR_END, ShapePart.OwnDitch::to, "Last station."),
                f.value(
                        "fromHeight",
                        Codecs.HEIGHT,
                        ShapePart.OwnDitch::fromHeight,
                        "Height of the bottom at the first station."),
                f.value(
                        "toHeight",
                        Codecs.HEIGHT,
                        ShapePart.OwnDitch::toHeight,
                        "Height of the bottom at the last station."));
    }
}
