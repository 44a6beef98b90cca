/**
 * Volumes between sections: by average end area, plain and along curves. Says how much; what it
 * means for the work is said elsewhere.
 */
@NullMarked
package lanewright.lane.volume;

import org.jspecify.annotations.NullMarked;
