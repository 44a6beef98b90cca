/** The lane unrolled, the section at the place marker, and the stone along it. */
@NullMarked
package lanewright.desktop.lane;

import org.jspecify.annotations.NullMarked;
