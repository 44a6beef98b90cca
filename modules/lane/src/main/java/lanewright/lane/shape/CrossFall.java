package lanewright.lane.shape;

/** Which way the travelled way falls across. */
public enum CrossFall {
    /** One plane each side, falling away from the alignment. */
    CROWN,
    /** One plane right across, falling to the left looking up-station. */
    SHED_LEFT,
    /** One plane right across, falling to the right looking up-station. */
    SHED_RIGHT
}
