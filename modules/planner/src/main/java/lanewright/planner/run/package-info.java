/**
 * The way from a plan to its outcome: pure stages one after the other, each kept as long as what
 * went into it is equal. Knows the plan document, the engine rooms, proposals and the order of
 * work; knows no sheet and no screen.
 */
@NullMarked
package lanewright.planner.run;

import org.jspecify.annotations.NullMarked;
