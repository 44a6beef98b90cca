package lanewright.lane.section;

/**
 * A station that is known beforehand to have a section.
 *
 * @param station m along the alignment
 * @param mayJump whether the section may be another one just before
 */
record Stop(double station, boolean mayJump) {}
