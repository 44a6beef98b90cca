/**
 * Checks of water along the lane, section by section: its cross slope, its ditches and where they
 * lead, its edges against the ground beside it, its sags, its road end. Reads finished sections;
 * knows no surface and no grid.
 */
@NullMarked
package lanewright.drainage.along;

import org.jspecify.annotations.NullMarked;
