/**
 * From quantities to work: in which order, with what care, where topsoil is heaped, and which
 * stakes to set. Knows engine results, but neither the plan document nor how a run is made.
 */
@NullMarked
package lanewright.planner.work;

import org.jspecify.annotations.NullMarked;
