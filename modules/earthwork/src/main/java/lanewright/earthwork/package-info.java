/**
 * Strip, cut, fill, balance, haul and machine hours; does not know drainage or stone, and opens no
 * file.
 */
@NullMarked
package lanewright.earthwork;

import org.jspecify.annotations.NullMarked;
