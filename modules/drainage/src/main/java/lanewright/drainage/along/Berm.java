package lanewright.drainage.along;

/**
 * A windrow or berm that a grader has left along an edge of the lane.
 *
 * @param from station where it begins, m
 * @param to station where it ends, m
 * @param side along which edge
 * @param height above the edge, m
 */
public record Berm(double from, double to, Side side, double height) {}
