/** Designs that the owner may take into the plan, each with its reasons. Knows no plan document. */
@NullMarked
package lanewright.planner.proposal;

import org.jspecify.annotations.NullMarked;
