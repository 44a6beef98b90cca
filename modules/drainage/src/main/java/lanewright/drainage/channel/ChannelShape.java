package lanewright.drainage.channel;

/**
 * An open channel with a flat bottom and two straight sides: a trapezoid, with no bottom a
 * triangle, with upright sides a rectangle.
 *
 * @param bottom width of the bottom, m, zero or more
 * @param left run over rise of the left side, zero or more
 * @param right run over rise of the right side, zero or more
 */
public record ChannelShape(double bottom, double left, double right) implements FlowShape {

    /**
     * @throws IllegalArgumentException if a figure is negative or not finite, or there is no width
     *     at all
     */
    public ChannelShape {
        Check.notNegative("width of the bottom, m,", bottom);
        Check.notNegative("left side slope, run over rise,", left);
        Check.notNegative("right side slope, run over rise,", right);
        if (bottom + left + right <= 0) {
            throw new IllegalArgumentException(
                    "a channel without bottom needs a side that leans; give a bottom width or a"
                            + " side slope such as 3");
        }
    }

    /** Both sides alike. */
    public static ChannelShape trapezoid(double bottom, double side) {
        return new ChannelShape(bottom, side, side);
    }

    /** A triangle with both sides alike. */
    public static ChannelShape triangle(double side) {
        return new ChannelShape(0, side, side);
    }

    /** Upright sides. */
    public static ChannelShape rectangle(double bottom) {
        return new ChannelShape(bottom, 0, 0);
    }

    @Override
    public double area(double depth) {
        Check.notNegative("depth, m,", depth);
        return (bottom + (left + right) / 2 * depth) * depth;
    }

    @Override
    public double wettedPerimeter(double depth) {
        Check.notNegative("depth, m,", depth);
        return bottom + depth * (Math.hypot(1, left) + Math.hypot(1, right));
    }

    @Override
    public double topWidth(double depth) {
        Check.notNegative("depth, m,", depth);
        return bottom + (left + right) * depth;
    }

    @Override
    public double deepest() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double risingTo() {
        return Double.POSITIVE_INFINITY;
    }
}
