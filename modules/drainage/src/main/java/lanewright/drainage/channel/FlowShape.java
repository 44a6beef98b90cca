package lanewright.drainage.channel;

/**
 * Inside of a ditch or pipe, square to the flow. Depths are measured from its lowest point, m, and
 * are refused with an {@link IllegalArgumentException} where they are negative or over {@link
 * #deepest()}.
 */
public interface FlowShape {

    /** Area of water, m². */
    double area(double depth);

    /** Length of the line along which water touches the shape, m. */
    double wettedPerimeter(double depth);

    /** Width of the water's surface, m. */
    double topWidth(double depth);

    /** Greatest depth the shape can have, m; infinite for an open one. */
    double deepest();

    /**
     * Depth up to which more depth carries more water, m; infinite for an open shape. In a pipe the
     * last bit below the crown adds more wall than area: between this depth and the crown two
     * depths carry the same flow, and the lower one is taken.
     */
    double risingTo();

    /** Area over wetted perimeter, m; zero where there is no water. */
    default double hydraulicRadius(double depth) {
        double perimeter = wettedPerimeter(depth);
        return perimeter > 0 ? area(depth) / perimeter : 0;
    }
}
