package lanewright.ground;

import java.util.BitSet;

/**
 * The ground along a straight line: exact on the triangles, with a point wherever the line crosses
 * a side of one. Immutable.
 */
public final class GroundLine {

    /** In place of a vertex: the point lies inside a triangle, as only an end of the line can. */
    static final int INSIDE = -1;

    private final double startX;
    private final double startY;
    private final double dirX;
    private final double dirY;
    private final double[] distance;
    private final double[] height;
    private final int[] from;
    private final int[] to;
    private final double[] share;
    private final BitSet gaps;

    GroundLine(
            double startX,
            double startY,
            double dirX,
            double dirY,
            double[] distance,
            double[] height,
            int[] from,
            int[] to,
            double[] share,
            BitSet gaps) {
        this.startX = startX;
        this.startY = startY;
        this.dirX = dirX;
        this.dirY = dirY;
        this.distance = distance;
        this.height = height;
        this.from = from;
        this.to = to;
        this.share = share;
        this.gaps = gaps;
    }

    /** Number of points; zero if there is no ground under the line. */
    public int size() {
        return distance.length;
    }

    /** Distance of point {@code i} from the start of the line, m, never decreasing. */
    public double distance(int i) {
        return distance[i];
    }

    /** Height of point {@code i}, m. */
    public double z(int i) {
        return height[i];
    }

    /** Local easting of point {@code i}, m. */
    public double x(int i) {
        return startX + distance[i] * dirX;
    }

    /** Local northing of point {@code i}, m. */
    public double y(int i) {
        return startY + distance[i] * dirY;
    }

    /** True if there is no ground between point {@code i} and the next. */
    public boolean gapAfter(int i) {
        return gaps.get(i);
    }

    /** True if ground lies under the line without a gap between its first and last point. */
    public boolean isWhole() {
        return gaps.isEmpty();
    }

    /** Vertex at one end of the side that point {@code i} lies on, or {@link #INSIDE}. */
    int from(int i) {
        return from[i];
    }

    /**
     * Vertex at the other end, the same if the point is that vertex; the triangle if {@link
     * #INSIDE}.
     */
    int to(int i) {
        return to[i];
    }

    /** How far from the first vertex to the other the point lies, 0 to 1. */
    double share(int i) {
        return share[i];
    }
}
