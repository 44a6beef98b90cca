/** Cross-sections of ground and lane together, exact on the triangles. */
@NullMarked
package lanewright.lane.section;

import org.jspecify.annotations.NullMarked;
