package lanewright.drainage.culvert;

import lanewright.drainage.channel.FlowShape;

/** The inside of a closed barrel. */
public sealed interface BarrelShape extends FlowShape permits Circle, PipeArch, Box {

    /** Height inside, m. */
    double rise();

    /** Width inside, m. */
    double span();

    @Override
    default double deepest() {
        return rise();
    }

    /** Area inside, m². */
    default double fullArea() {
        return area(rise());
    }

    /** Hydraulic radius of the barrel running full, m. */
    default double fullRadius() {
        return hydraulicRadius(rise());
    }

    /** The same with a depth that lies over the crown by no more than rounding put on the crown. */
    private double within(double depth) {
        if (!(depth >= 0) || depth > rise() * (1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "depth in a barrel must lie between 0 and its rise of "
                            + rise()
                            + " m, was "
                            + depth
                            + "; treat more water as a full barrel");
        }
        return Math.min(depth, rise());
    }

    /** Depth over rise, 0 to 1. */
    default double part(double depth) {
        return within(depth) / rise();
    }
}
