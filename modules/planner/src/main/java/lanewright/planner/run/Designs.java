package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchBottom;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TieIn;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.document.EndsPart;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.ShapePart;
import lanewright.survey.SurveyException;

/** Turns the plan's line, grade and shapes into a lane. */
final class Designs {

    private Designs() {}

    /** Where the line's tangents meet, local metres. */
    static List<IntersectionPoint> corners(LinePart line, Places places) throws SurveyException {
        List<IntersectionPoint> points = new ArrayList<>();
        for (LinePart.Point point : line.points()) {
            double[] at = places.local(point.spot());
            points.add(new IntersectionPoint(at[0], at[1], point.radius()));
        }
        return points;
    }

    /** The grade on a lane of some length, m. */
    static Profile profile(List<GradePart.Point> points, double length) throws DesignRefused {
        List<VerticalPoint> vertical = new ArrayList<>();
        for (GradePart.Point point : points) {
            vertical.add(
                    new VerticalPoint(end(point.station(), length), point.height(), point.curve()));
        }
        return Profile.of(vertical);
    }

    /** The whole lane. */
    static LaneDesign design(Plan plan, Alignment alignment, Profile profile) throws DesignRefused {
        double length = alignment.length();
        return LaneDesign.on(alignment, profile)
                .typical(typical(plan, length))
                .leftBottoms(bottoms(plan, ShapePart.Hand.LEFT, length))
                .rightBottoms(bottoms(plan, ShapePart.Hand.RIGHT, length))
                .margin(plan.work().margin())
                .interval(plan.work().interval())
                .start(tieIn(plan.ends().road()))
                .end(tieIn(plan.ends().far()))
                .build();
    }

    /** The typical sections along a lane of some length, m. */
    static List<Stretch<TypicalSection>> typical(Plan plan, double length) throws DesignRefused {
        List<Stretch<TypicalSection>> stretches = new ArrayList<>();
        for (ShapePart.Along along : plan.along()) {
            double to = end(along.to(), length);
            if (along.from() >= length) {
                throw past(along.from(), length, "A stretch of shape");
            }
            stretches.add(new Stretch<>(along.from(), to, typical(plan.shape(along.shape()))));
        }
        return stretches;
    }

    private static List<Stretch<DitchBottom>> bottoms(Plan plan, ShapePart.Hand side, double length)
            throws DesignRefused {
        List<Stretch<DitchBottom>> stretches = new ArrayList<>();
        for (ShapePart.OwnDitch own : plan.ditchBottoms()) {
            if (own.side() == side) {
                if (own.from() >= length) {
                    throw past(own.from(), length, "A ditch bottom");
                }
                stretches.add(
                        new Stretch<>(
                                own.from(),
                                end(own.to(), length),
                                new DitchBottom(own.fromHeight(), own.toHeight())));
            }
        }
        return stretches;
    }

    private static double end(double station, double length) {
        return Double.isInfinite(station) ? length : station;
    }

    private static DesignRefused past(double station, double length, String what) {
        return new DesignRefused(
                List.of(
                        new Finding(
                                "past-the-end",
                                Level.STOP,
                                Topic.SHAPE,
                                Where.station(length),
                                Saying.of(
                                        what + " begins at {}, past the end of the lane at {}.",
                                        Quantity.station(station),
                                        Quantity.station(length)),
                                Quantity.station(station),
                                Quantity.station(length),
                                "your plan",
                                Saying.plain("Take it out, or make the lane longer."))));
    }

    private static TieIn tieIn(EndsPart.End end) {
        return new TieIn(end.height(), end.grade(), end.crossSlope(), end.over());
    }

    private static TypicalSection typical(ShapePart shape) {
        List<Layer> layers = new ArrayList<>();
        for (ShapePart.Layer layer : shape.layers()) {
            layers.add(
                    new Layer(layer.role(), layer.thickness(), layer.edgeSlope(), layer.width()));
        }
        return new TypicalSection(
                shape.width(),
                shape.fall(),
                shape.crossSlope(),
                shape.bed(),
                layers,
                shape.subgradeFall(),
                side(shape.left()),
                side(shape.right()),
                shape.strip(),
                shape.topsoilBack(),
                shape.topsoilInDitch());
    }

    private static SideShape side(ShapePart.Side side) {
        return new SideShape(
                side.shoulder(),
                side.foreslope(),
                new Ditch(side.ditch(), side.ditchDepth(), side.ditchBottom()),
                side.backslope(),
                side.cutSlope());
    }
}
