/** How the window looks: type, colours by light and dark, and the brush that paints drawings. */
@NullMarked
package lanewright.desktop.look;

import org.jspecify.annotations.NullMarked;
