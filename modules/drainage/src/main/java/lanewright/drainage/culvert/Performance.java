package lanewright.drainage.culvert;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Rising;

/**
 * Headwater over discharge of one culvert, and back.
 *
 * @param culvert which
 * @param tailwater depth above the outlet invert, m, the same for every discharge
 */
public record Performance(Culvert culvert, double tailwater) {

    /**
     * A point of the curve.
     *
     * @param discharge m³/s
     * @param headwater what goes with it
     */
    public record Point(double discharge, Headwater headwater) {}

    /**
     * @throws IllegalArgumentException if the tailwater is negative
     */
    public Performance {
        Check.notNegative("tailwater, m above the outlet invert,", tailwater);
    }

    /** Depth above the inlet invert, m; with no discharge that of the standing tailwater. */
    public double depth(double discharge) {
        if (Check.notNegative("discharge, m³/s,", discharge) == 0) {
            return Math.max(0, tailwater - culvert.length() * culvert.slope());
        }
        return Headwater.of(culvert, tailwater, discharge).depth();
    }

    /**
     * Points at given discharges.
     *
     * @param discharges m³/s, each over zero
     */
    public List<Point> curve(List<Double> discharges) {
        List<Point> points = new ArrayList<>();
        for (double discharge : discharges) {
            points.add(new Point(discharge, Headwater.of(culvert, tailwater, discharge)));
        }
        return List.copyOf(points);
    }

    /**
     * Discharge of all barrels at a headwater, m³/s; never falls as the headwater rises.
     *
     * <p>Zero where the headwater does not stand over the tailwater. Where outlet control goes from
     * the water surface in the barrel to the full-flow formula the curve has a small step up; all
     * headwaters in the step go with the discharge at it.
     *
     * @param headwater depth above the inlet invert, m, zero or more
     */
    public double discharge(double headwater) {
        Check.notNegative("headwater, m above the inlet invert,", headwater);
        return Rising.where(this::depth, headwater, Double.POSITIVE_INFINITY);
    }
}
