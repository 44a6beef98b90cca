/**
 * Low spots, flow paths, catchments, runoff, ditches and culverts, before and after the lane
 * exists; does not know earthwork or stone, and opens no file.
 */
@NullMarked
package lanewright.drainage;

import org.jspecify.annotations.NullMarked;
