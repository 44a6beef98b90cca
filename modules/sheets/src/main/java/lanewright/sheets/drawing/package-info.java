/**
 * A drawing as data: lines, areas, words and pictures, each with a role. Knows no file format, no
 * toolkit and no lane; words are measured from the one font that comes along.
 */
@NullMarked
package lanewright.sheets.drawing;

import org.jspecify.annotations.NullMarked;
