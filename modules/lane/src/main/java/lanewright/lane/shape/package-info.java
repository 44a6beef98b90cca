/** The shape that a lane is given across and its stone; knows no ground. */
@NullMarked
package lanewright.lane.shape;

import org.jspecify.annotations.NullMarked;
