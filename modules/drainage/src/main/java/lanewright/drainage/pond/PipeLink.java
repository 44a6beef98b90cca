package lanewright.drainage.pond;

/**
 * A pipe as the flood sees it: a way between two places of the surface.
 *
 * @param inletVertex lowest corner of the triangle that its inlet lies in
 * @param inletHeight the height that water must reach to enter, m: its invert there, or the surface
 *     if that covers it
 * @param outletVertex lowest corner of the triangle that its outlet lies in, or -1 where it leaves
 *     the surface
 * @param outletHeight the height that water must reach to come out, m
 */
public record PipeLink(
        int inletVertex, double inletHeight, int outletVertex, double outletHeight) {}
