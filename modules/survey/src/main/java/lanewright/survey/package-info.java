/**
 * Measured ground as values: one immutable survey in one projected metre frame; does not know what
 * the ground between the points or a lane looks like, and shows no type of its reference system
 * library to anyone. How files are read lies in {@code lanewright.survey.read}.
 */
@NullMarked
package lanewright.survey;

import org.jspecify.annotations.NullMarked;
