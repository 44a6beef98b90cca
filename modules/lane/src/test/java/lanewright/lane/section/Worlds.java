package lanewright.lane.section;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TypicalSection;

/** Simple ground and simple lanes for tests. */
public final class Worlds {

    private Worlds() {}

    /** Ground that is straight across between the given offsets, with constant topsoil. */
    public static GroundAcross across(double topsoil, double[] offsets, double... heights) {
        double[] soil = new double[offsets.length];
        double[] bearing = new double[offsets.length];
        Arrays.fill(soil, topsoil);
        Arrays.fill(bearing, Double.NaN);
        return GroundAcross.of(offsets, heights, soil, bearing, true, true);
    }

    /** Level ground, 50 m each side. */
    public static GroundAcross level(double height, double topsoil) {
        return across(topsoil, new double[] {-50, 50}, height, height);
    }

    /**
     * Ground by station and offset, straight from one offset to the next; it ends at the outermost.
     */
    public static GroundSource by(
            DoubleBinaryOperator height, double topsoil, double bearing, double... offsets) {
        return (station, before, reach) -> {
            double[] heights = new double[offsets.length];
            double[] soil = new double[offsets.length];
            double[] bears = new double[offsets.length];
            for (int i = 0; i < offsets.length; i++) {
                heights[i] = height.applyAsDouble(station, offsets[i]);
                soil[i] = topsoil;
                bears[i] = bearing;
            }
            return GroundAcross.of(offsets, heights, soil, bears, true, true);
        };
    }

    /** A straight alignment north from the origin. */
    public static Alignment straight(double length) throws DesignRefused {
        return Alignment.of(
                List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(0, length, 0)));
    }

    /** A straight grade. */
    public static Profile grade(double from, double to, double length) throws DesignRefused {
        return Profile.of(List.of(new VerticalPoint(0, from, 0), new VerticalPoint(length, to, 0)));
    }

    /** A straight lane with one shape. */
    public static LaneDesign lane(double length, double from, double to, TypicalSection shape)
            throws DesignRefused {
        return LaneDesign.on(straight(length), grade(from, to, length)).typical(shape).build();
    }

    /** One section of a shape at a height on a ground. */
    public static Section cut(TypicalSection shape, double height, GroundAcross ground) {
        return cut(shape, height, 0, ground);
    }

    /** One section with a margin. */
    public static Section cut(
            TypicalSection shape, double height, double margin, GroundAcross ground) {
        LaneAt lane =
                new LaneAt(
                        height,
                        shape,
                        shape.leftFall(),
                        shape.rightFall(),
                        shape.leftUnder(),
                        shape.rightUnder(),
                        Double.NaN,
                        Double.NaN);
        return new SectionCutter(lane).cut(0, Section.Face.SINGLE, lane, margin, ground);
    }
}
