/** What leaves the screen: sheets looked at and put into a folder, and plans set side by side. */
@NullMarked
package lanewright.desktop.paper;

import org.jspecify.annotations.NullMarked;
