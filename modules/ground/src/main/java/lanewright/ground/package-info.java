/**
 * The surface that is there, as constrained triangles, and the exact lines, contours, grids and
 * depths read from it; does not know any lane, and opens no file.
 */
@NullMarked
package lanewright.ground;

import org.jspecify.annotations.NullMarked;
