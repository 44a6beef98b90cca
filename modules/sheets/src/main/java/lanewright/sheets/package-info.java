/**
 * Drawings as data and their painters, tables, stake lists and exports; does not know the command
 * line or any window, and works out no quantity of its own.
 */
@NullMarked
package lanewright.sheets;

import org.jspecify.annotations.NullMarked;
