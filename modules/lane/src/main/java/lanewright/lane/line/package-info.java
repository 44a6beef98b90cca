/** The line of the lane in plan and in height; knows no ground and no width. */
@NullMarked
package lanewright.lane.line;

import org.jspecify.annotations.NullMarked;
