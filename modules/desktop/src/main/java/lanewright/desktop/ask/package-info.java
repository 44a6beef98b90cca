/**
 * The owner's questions down the side: answers, controls with their reasons, findings, proposals.
 */
@NullMarked
package lanewright.desktop.ask;

import org.jspecify.annotations.NullMarked;
