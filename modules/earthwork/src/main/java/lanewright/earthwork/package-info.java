/**
 * Strip, cut and fill given their meaning: which state each volume is in, whether earth balances,
 * what is hauled away or brought in, how the topsoil is heaped. Does not know drainage or stone,
 * and opens no file.
 */
@NullMarked
package lanewright.earthwork;

import org.jspecify.annotations.NullMarked;
