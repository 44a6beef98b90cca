/**
 * Pipes under a lane as hydraulics: what headwater a discharge needs, what goes over the top, stone
 * at the outlet, and which sold size does. SI inside; knows no lane, no ground and no plan.
 */
@NullMarked
package lanewright.drainage.culvert;

import org.jspecify.annotations.NullMarked;
