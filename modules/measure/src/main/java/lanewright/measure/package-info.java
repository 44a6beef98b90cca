/**
 * Quantities as people write them and as the engine keeps them, findings and progress; knows
 * nothing else of ours, no file, no screen and no geometry.
 */
@NullMarked
package lanewright.measure;

import org.jspecify.annotations.NullMarked;
