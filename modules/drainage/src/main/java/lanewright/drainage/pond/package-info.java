/**
 * Low spots of a triangulated surface: where water stands, how high it can rise, where it spills.
 * Found and measured exactly on the triangles; knows surfaces, not lanes.
 */
@NullMarked
package lanewright.drainage.pond;

import org.jspecify.annotations.NullMarked;
