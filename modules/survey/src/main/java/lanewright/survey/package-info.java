/**
 * Measured ground read from files into one immutable survey in one projected metre frame, and
 * written back; does not know what the ground between the points or a lane looks like, and shows no
 * type of its reference system library to anyone.
 */
@NullMarked
package lanewright.survey;

import org.jspecify.annotations.NullMarked;
