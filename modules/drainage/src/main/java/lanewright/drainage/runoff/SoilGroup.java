package lanewright.drainage.runoff;

/** How readily soil takes water, by the groups of the NRCS (NEH 630, chapter 7, 2009). */
public enum SoilGroup {
    /** Deep sand and gravel: takes much. */
    A,
    /** Sandy loam and the like. */
    B,
    /** Finer or with a tight layer: takes little. */
    C,
    /** Clay, or water near the surface: takes next to none. */
    D
}
