package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyLine;

/** Small worlds for tests: grounds from formulas, lanes in a line or two. */
final class World {

    private World() {}

    /** A ground with heights from a formula at the nodes of a grid, slightly moved about. */
    static Ground grid(
            double x0, double y0, double x1, double y1, double step, DoubleBinaryOperator height) {
        List<double[]> points = new ArrayList<>();
        int columns = (int) Math.round((x1 - x0) / step);
        int rows = (int) Math.round((y1 - y0) / step);
        for (int r = 0; r <= rows; r++) {
            for (int c = 0; c <= columns; c++) {
                boolean inside = r > 0 && c > 0 && r < rows && c < columns;
                double x = x0 + step * c + (inside ? step * 0.2 * Math.sin(3.0 * c + 7.0 * r) : 0);
                double y = y0 + step * r + (inside ? step * 0.2 * Math.cos(5.0 * c - 2.0 * r) : 0);
                points.add(new double[] {x, y, height.applyAsDouble(x, y)});
            }
        }
        return of(points);
    }

    /** A ground of given points (x, y, z) and breaklines through them. */
    static Ground of(List<double[]> points, int[]... chains) {
        double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
        double[] z = points.stream().mapToDouble(p -> p[2]).toArray();
        var builder = Survey.builder().points(x, y, z);
        for (int[] chain : chains) {
            builder.line(new SurveyLine(SurveyLine.Kind.BREAKLINE, "edge", chain));
        }
        return Ground.of(builder.build(), GroundOptions.WHOLE_HULL, Progress.NONE);
    }

    /** A plain side: shoulder, slopes of one steepness, no ditch. */
    static SideShape plain(double shoulder, double slope) {
        return new SideShape(shoulder, slope, Ditch.NONE, slope, slope);
    }

    static SideShape ditched(double shoulder, double slope, double depth, double bottom) {
        return new SideShape(
                shoulder,
                slope,
                new Ditch(DitchRule.WHERE_BELOW_GROUND, depth, bottom),
                slope,
                slope);
    }

    /** A bare lane, no stone, no topsoil put back. */
    static TypicalSection bare(double width, double crossSlope, SideShape side) {
        return new TypicalSection(
                width,
                CrossFall.CROWN,
                crossSlope,
                Bed.ON_TOP,
                List.of(),
                Double.NaN,
                side,
                side,
                true,
                0,
                false);
    }

    /** Two layers on top, a crown, topsoil put back. */
    static TypicalSection stoned(Bed bed, SideShape left, SideShape right) {
        return new TypicalSection(
                4,
                CrossFall.CROWN,
                0.04,
                bed,
                List.of(new Layer("surface", 0.1, 1.5), new Layer("base", 0.2, 1.5)),
                Double.NaN,
                left,
                right,
                true,
                0.1,
                false);
    }

    static Alignment line(double... xyr) throws DesignRefused {
        List<IntersectionPoint> points = new ArrayList<>();
        for (int i = 0; i < xyr.length; i += 3) {
            points.add(new IntersectionPoint(xyr[i], xyr[i + 1], xyr[i + 2]));
        }
        return Alignment.of(points);
    }

    static Profile grade(double... stationHeightCurve) throws DesignRefused {
        List<VerticalPoint> points = new ArrayList<>();
        for (int i = 0; i < stationHeightCurve.length; i += 3) {
            points.add(
                    new VerticalPoint(
                            stationHeightCurve[i],
                            stationHeightCurve[i + 1],
                            stationHeightCurve[i + 2]));
        }
        return Profile.of(points);
    }

    static LaneDesign lane(Alignment line, Profile grade, TypicalSection shape)
            throws DesignRefused {
        return LaneDesign.on(line, grade)
                .typical(List.of(new Stretch<>(0, line.length(), shape)))
                .build();
    }

    static TrueSolid solid(LaneDesign design, Ground ground, double topsoil) {
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        return TrueSolid.of(built, ground.constant(topsoil), null, Progress.NONE);
    }
}
