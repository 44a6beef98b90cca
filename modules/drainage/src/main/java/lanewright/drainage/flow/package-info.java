/**
 * Which way water runs over a surface, and how much land drains through each place: a grid of cells
 * that takes its ditch bottoms and crests from the exact lines. Levels of pools come from the
 * triangles, not from here.
 */
@NullMarked
package lanewright.drainage.flow;

import org.jspecify.annotations.NullMarked;
