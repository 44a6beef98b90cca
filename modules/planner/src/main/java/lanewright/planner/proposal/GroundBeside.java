package lanewright.planner.proposal;

import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** What the ground beside the lane asks of its height, at even steps along it. */
final class GroundBeside {

    /** Steps between vertical points at which the ground is looked at. */
    private static final int STEPS = 5;

    /**
     * Charge for each metre that an edge lies under the ground beside it, m² of earth: no ditch,
     * ditch.
     */
    private static final double TROUGH = 12;

    private static final double TROUGH_WITH_DITCH = 2.5;

    /** Side slope by which the rough area of a section grows, run over rise. */
    private static final double SPREAD = 2;

    /** How far out lower ground is looked for at a sag, m. */
    private static final double LOOK_OUT = 15;

    private final GradeWish wish;
    private final Ground ground;
    private final double[] station;
    private final double[] level;
    private final double[] aim;
    private final double[] wide;
    private final double[] charge;
    private final double step;

    GroundBeside(GradeWish wish, Ground ground, double spacing) {
        this.wish = wish;
        this.ground = ground;
        double length = wish.alignment().length();
        int n = (int) Math.round(length / spacing) * STEPS + 1;
        step = length / (n - 1);
        station = new double[n];
        level = new double[n];
        aim = new double[n];
        wide = new double[n];
        charge = new double[n];
        for (int i = 0; i < n; i++) {
            look(i, Math.min(length, i * step));
        }
        fillGaps(level);
        fillGaps(aim);
    }

    static int steps() {
        return STEPS;
    }

    private void look(int i, double at) {
        station[i] = at;
        TypicalSection shape = shapeAt(at);
        double half = shape.width() / 2;
        double middle = heightAt(at, 0);
        double left = heightAt(at, -half);
        double right = heightAt(at, half);
        double under = shape.strip() ? wish.topsoil() : 0;
        level[i] = middle + shape.stoneThickness() - under;
        double leftDrop = drop(shape, true) * half;
        double rightDrop = drop(shape, false) * half;
        aim[i] = Math.max(left + leftDrop, right + rightDrop) + wish.edgeAbove();
        wide[i] = shape.width() + 2 * shape.stoneThickness();
        boolean leftHigher = left - middle >= right - middle;
        DitchRule rule = leftHigher ? shape.left().ditch().rule() : shape.right().ditch().rule();
        charge[i] = rule == DitchRule.NEVER ? TROUGH : TROUGH_WITH_DITCH;
    }

    private static double drop(TypicalSection shape, boolean left) {
        if (shape.fall() == CrossFall.CROWN) {
            return shape.crossSlope();
        }
        boolean falls = (shape.fall() == CrossFall.SHED_LEFT) == left;
        return falls ? shape.crossSlope() : -shape.crossSlope();
    }

    private TypicalSection shapeAt(double at) {
        for (Stretch<TypicalSection> stretch : wish.typical()) {
            if (stretch.holds(at)) {
                return stretch.value();
            }
        }
        return wish.typical().get(wish.typical().size() - 1).value();
    }

    private double heightAt(double at, double offset) {
        Alignment line = wish.alignment();
        Place place = new Place(at, offset);
        return ground.heightAt(line.x(place), line.y(place));
    }

    /**
     * Where the ground is not known, the straight line between the known ends; the given heights
     * without any.
     */
    private void fillGaps(double[] values) {
        int last = -1;
        for (int i = 0; i <= values.length; i++) {
            if (i < values.length && Double.isNaN(values[i])) {
                continue;
            }
            for (int k = last + 1; k < Math.min(i, values.length); k++) {
                double from = last < 0 ? wish.startHeight() : values[last];
                double to = i >= values.length ? wish.endHeight() : values[i];
                int begin = Math.max(0, last);
                int end = Math.min(values.length - 1, i);
                values[k] = end == begin ? from : from + (to - from) * (k - begin) / (end - begin);
            }
            last = i;
        }
    }

    int size() {
        return station.length;
    }

    double station(int i) {
        return station[i];
    }

    /** Length of lane that a step stands for, m. */
    double reach(int i) {
        return i == 0 || i == station.length - 1 ? step / 2 : step;
    }

    /** Height at which cut and fill about even out, m. */
    double level(int i) {
        return level[i];
    }

    /** Earth moved for each metre of lane, m²: a level section, {@code b h + s h²}. */
    double earth(int i, double height) {
        double depth = Math.abs(height - level[i]);
        return wide[i] * depth + SPREAD * depth * depth;
    }

    /** Effort for each metre of lane, m². */
    double effort(int i, double height) {
        return earth(i, height) + charge[i] * Math.max(0, aim[i] - height);
    }

    /** Where the water of a sag goes, in words. */
    Saying wayOut(double at, double height) {
        TypicalSection shape = shapeAt(at);
        double lowest = height - shape.stoneThickness();
        for (double out = shape.width() / 2 + 1; out <= LOOK_OUT; out += 1) {
            for (int side = -1; side <= 1; side += 2) {
                double there = heightAt(at, side * out);
                if (there < lowest) {
                    return Saying.of(
                            "Sag at {}: water leaves to the "
                                    + (side < 0 ? "left" : "right")
                                    + ", where the ground lies {} under the lane, {} out",
                            Quantity.station(at),
                            Quantity.height(height - there),
                            Quantity.length(out));
                }
            }
        }
        return Saying.of(
                "Sag at {}: no lower ground within {}; its way out is a pipe or ditch, see where water must pass",
                Quantity.station(at),
                Quantity.length(LOOK_OUT));
    }
}
