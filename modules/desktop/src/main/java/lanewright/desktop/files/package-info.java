/** What the window asks of the machine: choosing files, and a folder to keep things in. */
@NullMarked
package lanewright.desktop.files;

import org.jspecify.annotations.NullMarked;
