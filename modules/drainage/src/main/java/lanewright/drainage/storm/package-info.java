/**
 * What a storm brings to each place where water is led under the lane, and which pipe carries it.
 */
@NullMarked
package lanewright.drainage.storm;

import org.jspecify.annotations.NullMarked;
