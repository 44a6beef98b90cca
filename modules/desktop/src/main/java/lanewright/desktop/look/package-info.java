/**
 * How the window looks: type, colours by light and dark, and the boards, whose pictures are painted
 * in memory beside the thread of the screen. No other package of the window paints.
 */
@NullMarked
package lanewright.desktop.look;

import org.jspecify.annotations.NullMarked;
