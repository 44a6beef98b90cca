package lanewright.drainage.pond;

/**
 * A surface of triangles that share their corners, as far as water needs to know it. Corners run
 * counter-clockwise seen from above; two triangles meet in a whole edge, in a corner, or not at
 * all.
 */
public interface Mesh {

    /** How many vertices there are, numbered from zero. */
    int vertexCount();

    /** Local easting of a vertex, m. */
    double x(int vertex);

    /** Local northing of a vertex, m. */
    double y(int vertex);

    /** Height of a vertex, m above the datum. */
    double z(int vertex);

    /** How many triangles there are, numbered from zero. */
    int triangleCount();

    /** The vertex at corner {@code k} (0, 1 or 2) of a triangle. */
    int corner(int triangle, int k);

    /** The triangle across the edge opposite corner {@code k}, or -1 at the rim and at holes. */
    int neighbour(int triangle, int k);

    /**
     * Whether the edge opposite corner {@code k} was measured or designed as a line: a breakline, a
     * ditch bottom, an edge of the lane.
     */
    boolean isLine(int triangle, int k);
}
