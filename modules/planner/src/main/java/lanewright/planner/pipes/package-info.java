/**
 * A pipe under the lane as a thing that is bought, dug in and built: how long it is ordered, its
 * trench, bed, cover and stone, and what that costs. Joins what rooms that do not know each other
 * say of one pipe. Knows the plan document and engine results, but not how a run is made.
 */
@NullMarked
package lanewright.planner.pipes;

import org.jspecify.annotations.NullMarked;
