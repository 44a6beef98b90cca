/** Where everybody begins: a survey, a plan, a sample, or stone without any of them. */
@NullMarked
package lanewright.desktop.start;

import org.jspecify.annotations.NullMarked;
