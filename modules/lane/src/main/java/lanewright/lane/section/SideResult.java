package lanewright.lane.section;

import org.jspecify.annotations.Nullable;

/**
 * One side of a section as it came out on this ground.
 *
 * @param kind how the side meets the ground
 * @param edge edge of the travelled way, at the finished surface
 * @param stoneLow lowest point of the stone on this side (the underside's outer edge), on the
 *     subgrade
 * @param hinge where the foreslope begins, at the finished surface
 * @param ditchInner inner end of the ditch bottom, finished surface, or null without ditch
 * @param ditchOuter outer end of the ditch bottom, finished surface, or null without ditch
 * @param catchPoint first meeting with the ground going outward, or null where the ground ends
 *     first
 * @param limit offset of the limit of work, m: the catch point widened by the margin; where there
 *     is no catch point, the end of the ground
 */
public record SideResult(
        Kind kind,
        Corner edge,
        Corner stoneLow,
        Corner hinge,
        @Nullable Corner ditchInner,
        @Nullable Corner ditchOuter,
        @Nullable Corner catchPoint,
        double limit) {

    /** How a side meets the ground. */
    public enum Kind {
        /** A ditch, and a backslope up to the ground. */
        DITCH,
        /** A slope up to the ground without a ditch. */
        CUT,
        /** The foreslope runs down to the ground. */
        FILL,
        /** The ground ends before the side meets it. */
        OPEN
    }
}
