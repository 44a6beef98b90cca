package lanewright.drainage.culvert;

import lanewright.drainage.channel.Check;

/**
 * A rectangular barrel. Running full it has its lid as wall too, so that it carries less than just
 * before.
 *
 * @param span width inside, m
 * @param rise height inside, m
 */
public record Box(double span, double rise) implements BarrelShape {

    /** Deepest that still has a free surface, over the rise. */
    private static final double FREE = 1 - 1e-9;

    /**
     * @throws IllegalArgumentException if a figure is not over zero
     */
    public Box {
        Check.positive("span of a box, m,", span);
        Check.positive("rise of a box, m,", rise);
    }

    @Override
    public double area(double depth) {
        return span * rise * part(depth);
    }

    @Override
    public double wettedPerimeter(double depth) {
        double part = part(depth);
        return part >= 1 ? 2 * (span + rise) : span + 2 * rise * part;
    }

    @Override
    public double topWidth(double depth) {
        part(depth);
        return span;
    }

    @Override
    public double risingTo() {
        return rise * FREE;
    }
}
