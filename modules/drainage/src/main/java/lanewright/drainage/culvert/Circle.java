package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;

/**
 * A round barrel, partly full by the angle that the water's surface spans at the centre (Chow,
 * Open-Channel Hydraulics, 1959, table 2-1).
 *
 * @param diameter inside, m
 */
public record Circle(double diameter) implements BarrelShape {

    /**
     * Depth over diameter at which a circle carries most by Manning with one n: from the root θ =
     * 302.41° of {@code 5θ(1 − cos θ) = 2(θ − sin θ)}. Above it two depths carry the same flow.
     */
    private static final double MOST = 0.938181;

    /**
     * @throws IllegalArgumentException if it is not over zero
     */
    public Circle {
        Check.positive("diameter, m,", diameter);
    }

    /** Angle that the surface spans at the centre, radians. */
    private double angle(double depth) {
        return 2 * Math.acos(1 - 2 * part(depth));
    }

    @Override
    public double area(double depth) {
        double angle = angle(depth);
        return diameter * diameter / 8 * (angle - Math.sin(angle));
    }

    @Override
    public double wettedPerimeter(double depth) {
        return diameter / 2 * angle(depth);
    }

    @Override
    public double topWidth(double depth) {
        double part = part(depth);
        return 2 * diameter * Math.sqrt(part * (1 - part));
    }

    @Override
    public double risingTo() {
        return MOST * diameter;
    }

    @Override
    public double rise() {
        return diameter;
    }

    @Override
    public double span() {
        return diameter;
    }
}
