/**
 * One plan being worked on: its edits, what they lead to, and the thread that works it out. Knows
 * nothing of windows; what it tells, it tells on the thread of the screen.
 */
@NullMarked
package lanewright.desktop.session;

import org.jspecify.annotations.NullMarked;
