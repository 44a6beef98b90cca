/**
 * Hollows, flow and rain on a grid of heights, holes and all. Knows no lane, no triangles and no
 * plan.
 */
@NullMarked
package lanewright.drainage.hollows;

import org.jspecify.annotations.NullMarked;
