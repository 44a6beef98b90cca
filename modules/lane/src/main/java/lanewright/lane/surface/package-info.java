/**
 * The built surface: the lane as triangles, found on its own against the triangles of the ground,
 * and the true solid between the two. It never looks at a section, so that volumes from sections
 * and volumes from here check each other.
 */
@NullMarked
package lanewright.lane.surface;

import org.jspecify.annotations.NullMarked;
