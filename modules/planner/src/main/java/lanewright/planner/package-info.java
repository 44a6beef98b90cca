/**
 * The plan document, its schema, and the way from a plan to its outcome, proposals and order of
 * work; does not know how an outcome is drawn, printed or shown.
 */
@NullMarked
package lanewright.planner;

import org.jspecify.annotations.NullMarked;
