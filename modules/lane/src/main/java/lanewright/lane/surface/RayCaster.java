package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.ground.GroundLine;
import lanewright.ground.LineCutter;
import lanewright.lane.line.Alignment;
import lanewright.lane.shape.HalfShape;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;

/**
 * Casts rays across the lane. They stand square to the alignment, but near a sharp angle they turn
 * little by little into the line that halves the angle, so that the two arms meet there in one
 * seam, with neither a wedge left open outside nor a fold inside; offsets stay square to the arm.
 */
final class RayCaster {

    /** First look beyond the hinge, m, doubled until both sides are certain. */
    private static final double REACH = 12;

    /** So far a side may go of the way to a centre of curvature before it counts as folded. */
    private static final double NEARLY = 0.95;

    /** Half the length over which rays turn at a right angle, m, shorter at lesser angles. */
    private static final double SEAM = 40;

    private final LaneDesign design;
    private final Alignment line;
    private final LineCutter cutter;
    private final List<Seam> seams = new ArrayList<>();
    private double reach = REACH;

    /** Where rays turn: half its length, and the tangent of half the angle, right over zero. */
    private record Seam(double station, double half, double tangent) {}

    RayCaster(LaneDesign design, Ground ground) {
        this.design = design;
        this.line = design.alignment();
        this.cutter = ground.cutter();
        double[] kinks = line.kinks();
        for (double kink : kinks) {
            double tangent = StrictMath.tan(line.kinkAngle(kink) / 2);
            double half =
                    Math.min(
                            Math.min(room(kinks, kink, -1), room(kinks, kink, 1)),
                            1 + SEAM * Math.abs(tangent));
            seams.add(new Seam(kink, half, tangent));
        }
    }

    /** Straight line before or after an angle, shared with the next angle if there is one. */
    private double room(double[] kinks, double kink, int way) {
        double[] joins = line.joins();
        double nearest = way < 0 ? 0 : line.length();
        for (double join : joins) {
            if ((join - kink) * way > 0 && (join - kink) * way < (nearest - kink) * way) {
                nearest = join;
            }
        }
        double room = (nearest - kink) * way;
        return Arrays.binarySearch(kinks, nearest) >= 0 ? room / 2 : room;
    }

    /** Stations where rays begin and cease to turn. */
    double[] seams() {
        double[] stations = new double[2 * seams.size()];
        for (int i = 0; i < seams.size(); i++) {
            stations[2 * i] = seams.get(i).station - seams.get(i).half;
            stations[2 * i + 1] = seams.get(i).station + seams.get(i).half;
        }
        return stations;
    }

    /**
     * Casts a ray.
     *
     * @param station where, m
     * @param lane what the lane is there
     */
    Ray cast(double station, LaneAt lane) {
        double tx = line.directionX(station);
        double ty = line.directionY(station);
        double skew = 0;
        double mostRight = most(station, 1);
        double mostLeft = most(station, -1);
        for (Seam seam : seams) {
            double away = station - seam.station;
            if (Math.abs(away) < seam.half) {
                double share = 1 - Math.abs(away) / seam.half;
                skew = (away < 0 ? -share : share) * seam.tangent;
                double inside = NEARLY * seam.half / Math.abs(seam.tangent);
                if (seam.tangent > 0) {
                    mostRight = Math.min(mostRight, inside);
                } else {
                    mostLeft = Math.min(mostLeft, inside);
                }
            }
        }
        return cast(station, lane, ty + skew * tx, -tx + skew * ty, mostLeft, mostRight);
    }

    private double most(double station, int side) {
        double tightest =
                Math.max(side * line.curvature(station), side * line.curvatureBefore(station));
        return tightest > 0 ? NEARLY / tightest : Double.POSITIVE_INFINITY;
    }

    private Ray cast(
            double station, LaneAt lane, double dx, double dy, double mostLeft, double mostRight) {
        double x = line.x(station);
        double y = line.y(station);
        double scale = Math.sqrt(dx * dx + dy * dy);
        double hinge =
                Math.max(HalfShape.of(lane, false).hingeOut(), HalfShape.of(lane, true).hingeOut());
        double far = Math.max(reach, hinge + REACH);
        while (true) {
            GroundLine across = cutter.cut(x - far * dx, y - far * dy, x + far * dx, y + far * dy);
            Flank left =
                    Flank.of(
                            lane,
                            false,
                            design.margin(),
                            GroundRun.of(across, far * scale, scale, false, far),
                            mostLeft);
            Flank right =
                    Flank.of(
                            lane,
                            true,
                            design.margin(),
                            GroundRun.of(across, far * scale, scale, true, far),
                            mostRight);
            if (left.isKnown() && right.isKnown()) {
                reach = Math.max(left.limit(), right.limit()) + REACH / 2;
                return new Ray(station, x, y, dx, dy, lane, left, right);
            }
            far *= 2;
        }
    }
}
