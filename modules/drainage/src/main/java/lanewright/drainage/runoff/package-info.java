/**
 * How much water comes: rain, the time it takes to gather, and the flow at its height. Knows no
 * lane and no ground. SI throughout; what is published in feet and inches is turned here.
 */
@NullMarked
package lanewright.drainage.runoff;

import org.jspecify.annotations.NullMarked;
