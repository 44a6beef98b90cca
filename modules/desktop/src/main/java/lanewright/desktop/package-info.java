/**
 * The window: the owner's questions, answered on the ground itself. The only room that knows
 * JavaFX. Nothing here works out a figure; it asks {@code planner} and draws what comes back.
 */
@NullMarked
package lanewright.desktop;

import org.jspecify.annotations.NullMarked;
