package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;

/**
 * What a grade line needs to know of the land under and beside it.
 *
 * @param looks in station order, the first at zero and the last at the end of the lane
 */
public record GroundAlong(List<Look> looks) {

    /** At least so far outside the shoulder the ground beside is looked at, m. Our choice. */
    private static final double BESIDE = 2;

    /**
     * Ground this much lower beside the lane than under it sends no water onto it, m. Our choice.
     */
    private static final double FALLS_AWAY = 0.25;

    /** Copies the list and checks the order. */
    public GroundAlong {
        looks = List.copyOf(looks);
        if (looks.size() < 2) {
            throw new IllegalArgumentException("the land must be looked at twice or more");
        }
        for (int i = 1; i < looks.size(); i++) {
            if (!(looks.get(i).station() > looks.get(i - 1).station())) {
                throw new IllegalArgumentException("looks out of order");
            }
        }
    }

    /**
     * A look at the land at one station. Heights are m above the datum, NaN where there is no
     * ground.
     *
     * @param station m
     * @param centre height of the ground on the line
     * @param left height of the ground beside the lane, left
     * @param right height of the ground beside the lane, right
     * @param level height of the finished surface at which the subgrade lies on the stripped ground
     * @param drop from the line to the lower edge of the travelled way, m
     * @param width of the earth that is shaped, m
     * @param ditched whether, wherever the lane lies low, a ditch is dug on each side from which
     *     the land does not fall away
     */
    public record Look(
            double station,
            double centre,
            double left,
            double right,
            double level,
            double drop,
            double width,
            boolean ditched) {

        Look undrained() {
            return new Look(station, centre, left, right, level, drop, width, false);
        }

        /** Height of the higher ground beside the lane, m; NaN where neither side has ground. */
        public double higher() {
            return Double.isNaN(left) ? right : Double.isNaN(right) ? left : Math.max(left, right);
        }

        /** Height of the lower ground beside the lane, m; NaN where neither side has ground. */
        public double lower() {
            return Double.isNaN(left) ? right : Double.isNaN(right) ? left : Math.min(left, right);
        }
    }

    /** The same land with no ditch to be counted on between two stations. */
    public GroundAlong undrained(double from, double to) {
        return new GroundAlong(
                looks.stream()
                        .map(
                                look ->
                                        look.station() >= from && look.station() <= to
                                                ? look.undrained()
                                                : look)
                        .toList());
    }

    /**
     * The share of the looks between two stations at which no grade within its limits can stand as
     * high over the ground as is wanted, since a height that it must meet is too near.
     */
    public double outOfReach(double from, double to, GradeLimits limits) {
        List<GradeLimits.Fixed> met = new ArrayList<>(limits.through());
        met.add(new GradeLimits.Fixed(0, limits.start()));
        if (!Double.isNaN(limits.end())) {
            met.add(new GradeLimits.Fixed(length(), limits.end()));
        }
        double all = 0;
        double out = 0;
        for (Look look : looks) {
            if (look.station() >= from && look.station() <= to) {
                double highest = Double.POSITIVE_INFINITY;
                for (GradeLimits.Fixed fixed : met) {
                    double away = Math.abs(fixed.station() - look.station());
                    highest = Math.min(highest, fixed.height() + limits.steepest() * away);
                }
                all++;
                out += look.higher() + limits.edgeAbove() + look.drop() > highest ? 1 : 0;
            }
        }
        return all == 0 ? 0 : out / all;
    }

    /** Last station, m. */
    public double length() {
        return looks.get(looks.size() - 1).station();
    }

    /** The look nearest to a station. */
    Look nearest(double station) {
        Look nearest = looks.get(0);
        for (Look look : looks) {
            if (Math.abs(look.station() - station) < Math.abs(nearest.station() - station)) {
                nearest = look;
            }
        }
        return nearest;
    }

    /**
     * Looks at the land along a line.
     *
     * @param typical shape of the lane by station
     * @param topsoil depth of topsoil by place along the line, m
     * @param step distance between looks, m, over zero
     */
    public static GroundAlong of(
            Alignment alignment,
            Ground ground,
            DoubleFunction<TypicalSection> typical,
            DoubleFunction<Double> topsoil,
            double step) {
        double length = alignment.length();
        int count = Math.max(1, (int) Math.ceil(length / step));
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            double station = i == count ? length : length * i / count;
            looks.add(
                    look(
                            alignment,
                            ground,
                            station,
                            typical.apply(station),
                            topsoil.apply(station)));
        }
        return new GroundAlong(looks);
    }

    private static Look look(
            Alignment line, Ground ground, double station, TypicalSection shape, double soil) {
        double half = shape.width() / 2;
        double leftBeside = half + shape.left().shoulder() + beside(shape.left());
        double rightBeside = half + shape.right().shoulder() + beside(shape.right());
        double centre = height(line, ground, station, 0);
        double left = height(line, ground, station, -leftBeside);
        double right = height(line, ground, station, rightBeside);
        double leftEdge = height(line, ground, station, -half);
        double rightEdge = height(line, ground, station, half);
        double middle = middle(leftEdge, centre, rightEdge);
        double stripped = shape.strip() && !Double.isNaN(soil) ? middle - soil : middle;
        double drop =
                shape.fall() == CrossFall.CROWN
                        ? half * shape.crossSlope() / 2
                        : 0; // a crown lies half its height lower on the whole
        return new Look(
                station,
                centre,
                left,
                right,
                stripped + shape.stoneThickness() + drop,
                half * Math.abs(shape.crossSlope()),
                shape.width() + shape.left().shoulder() + shape.right().shoulder(),
                keepsWaterOff(shape.left(), left, centre)
                        && keepsWaterOff(shape.right(), right, centre));
    }

    /** About as far outside the shoulder as a ditch meets the ground, where one is dug, m. */
    private static double beside(SideShape side) {
        double ditch =
                side.ditch().bottom()
                        + side.ditch().depth() * (side.foreslope() + side.backslope());
        return isDitched(side) ? Math.max(BESIDE, ditch) : BESIDE;
    }

    /** A side-hill needs a ditch on its uphill side only: from the other the land falls away. */
    private static boolean keepsWaterOff(SideShape side, double beside, double centre) {
        return isDitched(side) || beside <= centre - FALLS_AWAY;
    }

    private static boolean isDitched(SideShape side) {
        return side.ditch().rule() != DitchRule.NEVER;
    }

    private static double middle(double left, double centre, double right) {
        if (Double.isNaN(left) || Double.isNaN(right)) {
            return centre;
        }
        return Double.isNaN(centre) ? (left + right) / 2 : (left + 2 * centre + right) / 4;
    }

    private static double height(Alignment line, Ground ground, double station, double offset) {
        Place place = new Place(station, offset);
        return ground.heightAt(line.x(place), line.y(place));
    }
}
