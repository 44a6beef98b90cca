package lanewright.lane.section;

/**
 * A corner of a section.
 *
 * @param offset m from the alignment, positive right
 * @param height m above the datum
 */
public record Corner(double offset, double height) {}
