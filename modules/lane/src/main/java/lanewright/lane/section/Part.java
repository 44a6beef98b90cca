package lanewright.lane.section;

/**
 * An area in a section, and where its weight lies.
 *
 * @param area m², zero or more
 * @param centroid offset of its centroid, m, positive right; zero where there is no area
 */
public record Part(double area, double centroid) {
    /** No area. */
    public static final Part NONE = new Part(0, 0);
}
