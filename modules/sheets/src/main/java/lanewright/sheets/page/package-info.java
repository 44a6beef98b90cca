/**
 * Lays words, tables and drawings out on pages. Knows paper and the typeface, and neither a lane
 * nor a file format.
 */
@NullMarked
package lanewright.sheets.page;

import org.jspecify.annotations.NullMarked;
