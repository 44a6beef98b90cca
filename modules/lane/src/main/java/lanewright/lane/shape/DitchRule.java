package lanewright.lane.shape;

/** When a ditch is dug. */
public enum DitchRule {
    /** Where the inner end of its bottom lies below the ground. */
    WHERE_BELOW_GROUND,
    /** All along the stretch. */
    ALWAYS,
    /** Nowhere: the foreslope runs on to the ground. */
    NEVER
}
