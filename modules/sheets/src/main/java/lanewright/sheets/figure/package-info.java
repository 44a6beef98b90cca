/**
 * The drawings of a lane: its profile, its sections, the land from above, the strip of its loads.
 * Draws what the engine found and works out nothing of its own.
 */
@NullMarked
package lanewright.sheets.figure;

import org.jspecify.annotations.NullMarked;
