package lanewright.sheets.figure;

/**
 * A proposal to lead water off the lane, as a sign in drawings.
 *
 * @param station m
 * @param words its sign, and which way it leads
 */
public record ReliefMark(double station, String words) {}
