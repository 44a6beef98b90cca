/**
 * Layer design, fabric, tons, loads and where each is dropped; does not know earthwork or drainage,
 * and opens no file.
 */
@NullMarked
package lanewright.stone;

import org.jspecify.annotations.NullMarked;
