/**
 * Alignment, profile, typical sections and the exact cuts through ground and lane together; does
 * not know what earth, water or stone mean for the work, and opens no file.
 */
@NullMarked
package lanewright.lane;

import org.jspecify.annotations.NullMarked;
