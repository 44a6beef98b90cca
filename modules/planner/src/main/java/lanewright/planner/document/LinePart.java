package lanewright.planner.document;

import java.util.List;

/**
 * Where the lane runs.
 *
 * @param points where its tangents meet, from the road to the far end, at least two
 */
public record LinePart(List<Point> points) {
    /** Copies the list. */
    public LinePart {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "a lane needs two points: where it leaves the road and where it arrives");
        }
    }

    /**
     * A point where two tangents meet, or an end.
     *
     * @param name how the owner calls it; may be empty
     * @param spot where it lies
     * @param radius of the arc that joins the tangents, m; zero for a sharp angle or an end
     */
    public record Point(String name, Spot spot, double radius) {
        /** Checks the radius. */
        public Point {
            if (!(radius >= 0 && radius <= 10_000)) {
                throw new IllegalArgumentException("the radius must be 0 to 10,000 m");
            }
        }
    }
}
