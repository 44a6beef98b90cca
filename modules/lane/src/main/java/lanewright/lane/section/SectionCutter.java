package lanewright.lane.section;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Section.Face;
import lanewright.lane.shape.HalfShape;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.TypicalSection;
import org.jspecify.annotations.Nullable;

/**
 * Cuts sections: the lane at a station against the ground across it. The result depends on nothing
 * but the arguments; the memory is used again. For one thread.
 *
 * <p>Areas come by integrating the piecewise-linear lines, exactly but for rounding. On a side that
 * never meets the ground no earth is counted from the alignment outward; its stone is.
 */
public final class SectionCutter {

    /** How far past the limits the ground is shown, m. Our choice: enough to see its lie. */
    private static final double SHOWN = 5;

    private @Nullable LaneAt shaped;
    private HalfShape leftShape;
    private HalfShape rightShape;
    private final SideTrace left;
    private final SideTrace right;
    private final SideAreas leftAreas = new SideAreas();
    private final SideAreas rightAreas = new SideAreas();
    private final Corners leftLine = new Corners();
    private final Corners rightLine = new Corners();

    /**
     * A cutter.
     *
     * @param first any lane that will be cut
     */
    public SectionCutter(LaneAt first) {
        leftShape = HalfShape.of(first, false);
        rightShape = HalfShape.of(first, true);
        left = new SideTrace(leftShape);
        right = new SideTrace(rightShape);
    }

    /**
     * A section.
     *
     * @param station m along the alignment
     * @param face which side of a jump it stands on
     * @param lane what the lane is there
     * @param margin how far the limits of work lie beyond the catch points, m, zero or more
     * @param ground the ground across the lane
     */
    public Section cut(double station, Face face, LaneAt lane, double margin, GroundAcross ground) {
        follow(lane, margin, ground);
        return take(station, face, lane, ground);
    }

    /** Follows both sides to the ground and measures nothing yet. */
    void follow(LaneAt lane, double margin, GroundAcross ground) {
        shape(lane);
        TypicalSection typical = lane.typical();
        left.follow(
                leftShape,
                lane.height(),
                typical,
                typical.left(),
                lane.leftBottom(),
                margin,
                ground.left());
        right.follow(
                rightShape,
                lane.height(),
                typical,
                typical.right(),
                lane.rightBottom(),
                margin,
                ground.right());
    }

    /** The section of what was followed last. */
    Section take(double station, Face face, LaneAt lane, GroundAcross ground) {
        boolean strip = lane.typical().strip();
        measure(left, leftAreas, strip);
        measure(right, rightAreas, strip);
        return new Section(
                station,
                face,
                lane.height(),
                groundLine(ground),
                strippedLine(strip),
                Corners.join(left.subgrade, right.subgrade),
                Corners.join(left.finished, right.finished),
                bearingLine(),
                left.result(-1),
                right.result(1),
                areas(lane.typical().layers().size()),
                !left.isOpen() && !right.isOpen());
    }

    SideTrace left() {
        return left;
    }

    SideTrace right() {
        return right;
    }

    /** Compares to the last bit, zeros too: what came before must not show in what comes out. */
    private void shape(LaneAt lane) {
        LaneAt last = shaped;
        if (last == null
                || !last.typical().equals(lane.typical())
                || Double.compare(last.leftFall(), lane.leftFall()) != 0
                || Double.compare(last.rightFall(), lane.rightFall()) != 0
                || Double.compare(last.leftUnder(), lane.leftUnder()) != 0
                || Double.compare(last.rightUnder(), lane.rightUnder()) != 0) {
            leftShape = HalfShape.of(lane, false);
            rightShape = HalfShape.of(lane, true);
            shaped = lane;
        }
    }

    private static void measure(SideTrace side, SideAreas areas, boolean strip) {
        if (side.isOpen()) {
            areas.clear();
        } else {
            areas.measure(side, strip);
        }
    }

    private Areas areas(int layers) {
        List<Part> stone = new ArrayList<>(layers);
        for (int i = 0; i < layers; i++) {
            stone.add(
                    part(
                            leftShape.layerArea(i),
                            rightShape.layerArea(i),
                            leftShape.layerMoment(i),
                            rightShape.layerMoment(i)));
        }
        return new Areas(
                part(SideAreas.STRIP),
                part(SideAreas.CUT),
                part(SideAreas.FILL),
                part(SideAreas.EDGE_REFILL),
                part(SideAreas.TOPSOIL_BACK),
                part(SideAreas.UNDERCUT),
                stone);
    }

    private Part part(int which) {
        return part(
                leftAreas.area(which),
                rightAreas.area(which),
                leftAreas.moment(which),
                rightAreas.moment(which));
    }

    private static Part part(
            double areaLeft, double areaRight, double momentLeft, double momentRight) {
        double area = areaLeft + areaRight;
        return area > 0 ? new Part(area, (momentRight - momentLeft) / area) : Part.NONE;
    }

    private SectionLine groundLine(GroundAcross ground) {
        ground(ground.left(), left, leftLine);
        ground(ground.right(), right, rightLine);
        return Corners.join(leftLine, rightLine);
    }

    private static void ground(GroundSide ground, SideTrace side, Corners line) {
        line.clear();
        double end = Math.min(side.limit() + SHOWN, ground.end());
        for (int i = 0; i < ground.out.length && ground.out[i] < end; i++) {
            line.add(ground.out[i], ground.height[i]);
        }
        if (!ground.isEmpty()) {
            line.add(end, ground.heightAt(end));
        }
    }

    private SectionLine strippedLine(boolean strip) {
        stripped(left, strip, leftLine);
        stripped(right, strip, rightLine);
        return Corners.join(leftLine, rightLine);
    }

    /** Ground less topsoil as far as the limit, where a vertical step leads back to the ground. */
    private static void stripped(SideTrace side, boolean strip, Corners line) {
        GroundSide ground = side.ground();
        line.clear();
        if (ground.isEmpty()) {
            return;
        }
        double end = side.limit();
        for (int i = 0; i < ground.out.length && ground.out[i] < end; i++) {
            line.add(ground.out[i], ground.height[i] - (strip ? ground.topsoil[i] : 0));
        }
        int k = ground.segment(end);
        double top = ground.heightAt(end);
        double soil =
                strip
                        ? GroundSide.lerp(
                                ground.out[k],
                                ground.out[k + 1],
                                ground.topsoil[k],
                                ground.topsoil[k + 1],
                                end)
                        : 0;
        line.add(end, top - soil);
        line.addNew(end, top);
    }

    /** The bearing line about the alignment as far as it is known without a gap, or null. */
    private @Nullable SectionLine bearingLine() {
        bearing(left, leftLine);
        bearing(right, rightLine);
        return leftLine.size == 0 || rightLine.size == 0 ? null : Corners.join(leftLine, rightLine);
    }

    private static void bearing(SideTrace side, Corners line) {
        GroundSide ground = side.ground();
        line.clear();
        for (int i = 0; i < ground.out.length && !Double.isNaN(ground.bearing[i]); i++) {
            line.add(ground.out[i], ground.height[i] - ground.bearing[i]);
            if (ground.out[i] > side.limit()) {
                break;
            }
        }
    }
}
