/**
 * What the program suggests and the owner accepts or not: a first grade. Each suggestion says why
 * it is as it is and what it beat. Knows the engine's lane and ground, not the pipeline and no
 * sheet.
 */
@NullMarked
package lanewright.planner.proposal;

import org.jspecify.annotations.NullMarked;
