package lanewright.lane.surface;

/** What a strip of the built surface is. */
public enum SurfacePart {
    /** The way that is driven on. */
    TRAVELLED,
    /** Edge of a layer of stone, or the top of one that reaches out beyond the one above. */
    STONE_EDGE,
    /** Earth between the stone and the hinge. */
    SHOULDER,
    /** From the hinge down into a ditch. */
    FORESLOPE,
    /** Bottom of a ditch. */
    DITCH_BOTTOM,
    /** From a ditch up to the ground. */
    BACKSLOPE,
    /** From the hinge up, or down, to ground that lies above the hinge. */
    CUT_SLOPE,
    /** From the hinge down to ground that lies below it. */
    FILL_SLOPE,
    /** Ground beyond the catch point that is stripped and made good. */
    MARGIN
}
