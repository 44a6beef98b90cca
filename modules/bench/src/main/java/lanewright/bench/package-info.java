/**
 * Measurements of our speed against other ways to do the same work; may know everything, and
 * nothing may know it.
 */
@NullMarked
package lanewright.bench;

import org.jspecify.annotations.NullMarked;
